import {describe, expect, it} from 'vitest'
import {recordReferences} from '../../src/findings/record-references.ts'

const book = {tellableFiles: new Set(['scores/2025 autumn.csv', 'shows/a.md', 'hatches/2024-01.md'])}
const row = (file: string, line: number) => ({file, line, column: 1, width: 1})

describe('recordReferences(spots, book)', () => {
  it('names files and lines once, in order, and none that may not be named', () => {
    expect(recordReferences([row('scores/2025 autumn.csv', 10), row('scores/2025 autumn.csv', 9), {file: 'shows/a.md', path: ['entries', 0]}, {file: 'shows/a.md', path: ['entries', 1]}, row('scores/secret.csv', 4)], book))
      .toBe('scores/2025%20autumn.csv:9 scores/2025%20autumn.csv:10 shows/a.md')
  })
  it('is nothing where nothing may be named', () => expect(recordReferences([row('scores/secret.csv', 4)], book)).toBeNull())
})
