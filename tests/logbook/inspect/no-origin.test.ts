import {describe, expect, it} from 'vitest'
import {around, linkFiles} from '../around.ts'

const HATCH = {'hatches/2024-01.md': '---\npen: 2024-A\nset: 2024-03-01\non: 2024-03-22\nchicks:\n  - {band: 24-107, sex: male}\n  - {band: 24-555, sex: female}\n---\n'}
const alone = (band: string, ...more: string[]) => ({[`birds/${band}.md`]: ['---', `band: ${band}`, ...more, '---', ''].join('\n')})
const remedies = (files: Readonly<Record<string, string>>) => linkFiles(around({...HATCH, ...files})).problems.filter(({code}) => code === 'no-origin').map(({remedy}) => remedy)
const WRITE = 'write strain: for a founder; list it in its hatch, or write its sire: and dam:'

describe('a bird that comes from nowhere', () => {
  it('may be a chick of a hatch whose band was mistyped over its test', () => {
    expect(remedies(alone('24-170', 'tested: {}'))).toEqual([`did you mean 24-107 (hatches/2024-01.md)? If not, ${WRITE}`])
  })
  it('is not taken for one that has a file of its own, nor for a founder', () => {
    expect(remedies({...alone('24-170'), ...alone('24-107')})).toEqual([WRITE])
    expect(remedies(alone('H-4'))).toEqual([WRITE])
  })
})
