/** Which book a paper was made from, in words. */
import {describe, expect, it} from 'vitest'
import {checksumSentence, recordsWords} from '../../src/pages/checksum-words.ts'
import {logbook} from './small-logbook.ts'

const book = logbook('2025-10-30', {checksum: 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad'})

describe('recordsWords(book)', () => {
  it('says the day and the first sixteen digits, to be read out', () => {
    expect(recordsWords(book)).toBe('Records to 30 October 2025, checksum ba78\u00a016bf 8f01\u00a0cfea')
  })
})

describe('checksumSentence(book)', () => {
  it('says what it is of and how it is worked again, and every digit', () => {
    const words = checksumSentence(book)
    expect(words).toContain('photographs and papers left out')
    expect(words).toContain('pinfeather checksum')
    expect(words.replace(/ /g, '')).toContain(book.checksum)
  })
})
