/** Drawn books are books: valid, of the size asked for, and the same for the same seed. */
import {describe, expect, it} from 'vitest'
import {link} from '../../src/logbook/link.ts'
import {folderInMemory} from '../../src/records/folder.ts'
import {readRecords} from '../../src/records/read.ts'
import {drawBook} from './draw-book.ts'

describe('drawBook(seed, size)', () => {
  it.each([
    [1, {birds: 300, seasons: 8, chicksPerHatch: 14, hensPerPen: 6}], [2, {birds: 1000}], [3, {birds: 3000}],
  ])('of seed %i draws a book without a problem, %o', (seed, size) => {
    const reading = readRecords(folderInMemory(Object.fromEntries(drawBook(seed, size))))
    const {book, slips} = link(reading, {})
    expect([...reading.slips, ...slips].map(({code, reason, at}) => `${at.file} ${code} ${reason}`)).toEqual([])
    expect(Math.abs((book?.birds.length ?? 0) / size.birds - 1)).toBeLessThan(0.1)
  })

  it('draws the same bytes for the same seed, and others for another', () => {
    const book = (seed: number) => JSON.stringify([...drawBook(seed, {birds: 300})])
    expect(book(7)).toBe(book(7))
    expect(book(7)).not.toBe(book(8))
  })
})
