/** Eggs laid while no male was with the hens. */
import {describe, expect, it} from 'vitest'
import {around, linkFiles, type Files} from '../around.ts'

const tried = (males: string, laid: string, more: Files = {}) => linkFiles(around({
  'pens/2023-A.md': `---\nseason: 2023\nmales: [${males}]\nfemales: [B-1, B-2]\n---\n`, 'hatches/2023-09.md': `---\npen: 2023-A\n${laid}\nset: 2023-03-25\non: 2023-04-15\n---\n`, ...more,
})).problems

const GAP = '{band: H-1, to: 2023-02-03}, {band: H-2, from: 2023-04-25}'
const LAID = 'laid: 2023-03-16..2023-03-24'

describe('no-male-then', () => {
  it('names the stays, the laying days, the days of sperm store and what is assumed', () => {
    expect(tried(GAP, LAID).map(({code, severity, reason, place}) => [code, severity, place.start.line, reason])).toEqual([['no-male-then', 'warning', 3,
      'the eggs were laid 2023-03-16 to 2023-03-24, while no male was in pen 2023-A (H-1 to 2023-02-03, H-2 from 2023-04-25); hens keep sperm for 21 days, and each of them is held for a possible sire all the same']])
  })

  it('says how the laying days are reckoned where none are written', () => {
    expect(tried('{band: H-1, to: 2023-02-03}', 'machine: I3')[0]?.reason).toMatch(/laid 2023-03-11 to 2023-03-25 \(at most 14 days before they were set\).* and he is held for the sire all the same$/)
  })

  it.each([
    ['sperm kept', '{band: H-1, to: 2023-02-24}, {band: H-2, from: 2023-04-25}'], ['the second there in time', '{band: H-1, to: 2023-02-03}, {band: H-2, from: 2023-03-24}'],
    ['one without dates', '{band: H-1, to: 2023-02-03}, H-2'],
  ])('is silent for %s', (_, males) => expect(tried(males, LAID)).toEqual([]))

  it('leaves a male that had died to the rule of dead parents', () => {
    const dead = {'birds/H-1.md': '---\nband: H-1\nsex: male\nstrain: holm-white\nhatched: 2022-03-20\nleft: 2023-01-03 died\n---\n'}
    expect(tried('{band: H-1, from: 2022-12-01}', LAID, dead).map(({code}) => code)).toEqual(['parent-dead'])
  })

  it('leaves hens that had met a male of another pen', () => {
    const other = {'pens/2023-B.md': '---\nseason: 2023\nmales: [H-2]\nfemales: [{band: B-1, to: 2023-03-10}]\nfrom: 2023-02-10\nto: 2023-04-01\n---\n'}
    expect(tried('{band: H-1, to: 2023-02-03}', LAID, other)).toEqual([])
  })
})
