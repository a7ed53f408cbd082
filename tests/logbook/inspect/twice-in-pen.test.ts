/** A bird that went and came back stands twice in a pen rightly. */
import {describe, expect, it} from 'vitest'
import {around, codesAt, linkFiles} from '../around.ts'

const tried = (males: string, females = 'B-2') => codesAt(linkFiles(around({'pens/2024-B.md': `---\nseason: 2024\nmales: [${males}]\nfemales: [${females}]\n---\n`})).problems)

describe('twice-in-pen', () => {
  it.each([['H-2, H-2', 'B-2'], ['{band: H-2, to: 2024-04-01}, H-2', 'B-2'], ['H-2', 'B-2, B-3, B-2, B-2']])('%s × %s', (males, females) => {
    expect(tried(males, females)).toEqual([`pens/2024-B.md:${males === 'H-2' ? 4 : 3} twice-in-pen`])
  })

  it.each(['{band: H-2, to: 2024-03-01}, {band: H-2, from: 2024-03-01}', '{band: H-2, to: 2024-03}, {band: H-2, from: 2024-03}'])('%s is none', males => expect(tried(males)).toEqual([]))
})
