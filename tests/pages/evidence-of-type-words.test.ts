import {describe, expect, it} from 'vitest'
import {study} from '../../src/findings/study.ts'
import type {Requirement} from '../../src/logbook/book.ts'
import {shownWords} from '../../src/pages/evidence-words.ts'
import {bookOfFamilies, type Family} from '../findings/evenness-book.ts'
import {requirement} from './shown-logbook.ts'
import {at, F2} from './small-logbook.ts'

function words(families: readonly Family[], more: Partial<Requirement>): string {
  const book = bookOfFamilies(families, {requirements: {at, body: '', association: null, papers: [], distinctness: null, items: [requirement('true-to-type', 'True', 'Half', more)]}})
  const [item] = study(book).evidence.items
  return item ? shownWords(item, book) : expect.fail('no evidence')
}
const many = (count: number, family: Family): Family[] => Array.from({length: count}, () => family)

describe('the words for a requirement of trueness', () => {
  it('read it by sire families where there are five, and say that the rate decides', () => {
    expect(words(many(6, {step: F2, pea: 8, single: 2}), {atLeast: 0.5}))
      .toMatch(/^48 of 60 \(80\.0%, 68\.2 to 88\.2\) showed .*, in 2024, culls counted\. By 6 sire families, as a committee should read it, the interval is \d\d\.\d to \d\d\.\d\. The rate decides; the lower limit, \d\d\.\d%, reaches what is asked too\.$/)
  })

  it('say that it is of these chicks only where there are fewer', () => {
    expect(words([{step: F2, pea: 8, single: 2}], {atLeast: 0.5})).toMatch(/They come of one sire family, so the interval speaks of these chicks only\. The rate decides; the lower limit, 49\.0%, does not reach what is asked\.$/)
    expect(words([{step: F2, pea: 8, single: 2}], {atLeast: 0.5, interval: 'families'})).toMatch(/The lower limit by families has to reach what is asked, and under five families there is none\.$/)
  })

  it('give the interval of Clopper and Pearson where the requirement asks for it', () => {
    // R 4, binom.test(8, 10): 0.4439 to 0.9748 (from memory)
    expect(words([{step: F2, pea: 8, single: 2}], {atLeast: 0.5, interval: 'exact'})).toMatch(/By Clopper and Pearson the interval is 44\.4 to 97\.5\. The lower limit, 44\.4%, has to reach what is asked, and does not\.$/)
  })
})
