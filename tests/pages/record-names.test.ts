import {describe, expect, it} from 'vitest'
import {recordNames} from '../../src/pages/record-names.ts'
import type {Spot} from '../../src/records/problem.ts'

const whole = (file: string): Spot => ({file, path: ['chicks', 1]})
const line = (file: string, on: number): Spot => ({file, line: on, column: 1, width: 3})

describe('recordNames(spots, files that may be named)', () => {
  const all = new Set(['requirements.md', 'hatches/2024-01.md', 'hatches/2024-03.md', 'scores/a.csv', 'scores/b.csv', 'keepers/x.md'])
  it('names each file once, by folder, and the lines of a table', () => {
    expect(recordNames([whole('hatches/2024-03.md'), whole('hatches/2024-01.md'), whole('hatches/2024-03.md'), whole('requirements.md')], all)).toBe('requirements.md; hatches/: 2024-01, 2024-03')
    expect(recordNames([line('scores/a.csv', 4), line('scores/a.csv', 2), line('scores/a.csv', 3), line('scores/a.csv', 9)], all)).toBe('scores/a.csv lines 2 to 4 and 9')
    expect(recordNames([line('scores/a.csv', 2), line('scores/b.csv', 7)], all)).toBe('scores/: a.csv line 2, b.csv line 7')
  })
  it('counts what it may not name', () => {
    expect(recordNames([whole('keepers/x.md'), whole('keepers/inga.md')], all)).toBe('keepers/x, and 1 file more')
    expect(recordNames([whole('keepers/y.md'), whole('keepers/inga.md')], all)).toBe('keepers/ (2 files)')
    expect(recordNames([whole(''), whole('keepers/x.md')], all)).toBe('1 file not named here; keepers/x')
  })
  it('calls many birds’ files by their bands', () => {
    expect(recordNames(Array.from({length: 9}, (_, index) => whole(`birds/${index}.md`)), all)).toBe('birds/: a file each, by band')
    expect(recordNames([], all)).toBe('–')
  })
})
