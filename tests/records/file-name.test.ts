import {describe, expect, it} from 'vitest'
import * as fc from 'fast-check'
import {fileName} from '../../src/records/file-name.ts'

describe('the file name of a page', () => {
  it.each([
    ['2024-A', '2024-A'], ['2024 A', '2024-A'], ['BC1 to holm-white', 'BC1-to-holm-white'], ['Größe/2', 'Größe-2'], ['.hidden', 'hidden'], ['../x', 'x'],
    ['index', 'named-index'], ['CON', 'named-CON'], ['con.1', 'named-con.1'], ['lpt9', 'named-lpt9'], ['contour', 'contour'], ['com10', 'com10'], ['a'.repeat(80), 'a'.repeat(80)],
  ])('of %j is %j', (text, name) => expect(fileName(text)).toBe(name))

  it('never is empty', () => {
    expect(fileName('')).toMatch(/^named-[0-9a-f]{8}$/)
    expect(fileName('../..')).not.toBe(fileName('??'))
  })

  it('tells long names apart behind their eightieth letter', () => {
    const long = fileName('a'.repeat(300))
    expect(long).toMatch(/^a{80}-[0-9a-f]{8}$/)
    expect(fileName('a'.repeat(301))).not.toBe(long)
  })

  it('is safe whatever it is of, and short enough for every disk', () => {
    fc.assert(fc.property(fc.string({unit: 'binary', maxLength: 300}), text => {
      const name = fileName(text)
      expect(name).toMatch(/^[\p{L}\p{M}\p{N}_][\p{L}\p{M}\p{N}._-]*$/u)
      expect(name).not.toMatch(/[.-]$/)
      expect(new TextEncoder().encode(name).length).toBeLessThanOrEqual(100)
    }))
  })
})
