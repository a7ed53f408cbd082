/** Counts that do not add up are told though another line of the hatch cannot be read. */
import {describe, expect, it} from 'vitest'
import {around, codesAt, linkFiles} from '../around.ts'

const found = (counts: string, sex: string) => codesAt(linkFiles(around({'hatches/2024-09.md': `---\npen: 2024-A\nset: 2024-03-02\n${counts}\non: 2024-03-23\nchicks:\n  - {band: 24-901, sex: ${sex}}\n---\n`})).problems).map(line => line.split(' ')[1])

describe('hatch-counts', () => {
  it('are checked in a file with another fault', () => {
    expect(found('eggs: 18\nhatched: 19', 'male')).toEqual(['hatch-counts'])
    expect(found('eggs: 18\nhatched: 19', 'femal')).toEqual(['hatch-counts', 'unreadable-value'])
  })
  it('leave room for a count that could not be read', () => {
    expect(found('eggs: 18\nclear: 2\ndead-in-germ: 0\ndead-in-shell: 0\nbad: tow\nhatched: 14', 'male')).toEqual(['unreadable-value'])
  })
})
