import {describe, expect, it} from 'vitest'
import {study} from '../../src/findings/study.ts'
import {evenFigures} from '../../src/pages/dossier-even.ts'
import {bookOfFamilies, F3, type Family} from '../findings/evenness-book.ts'
import {F2} from './small-logbook.ts'

const many = (count: number, family: Family): Family[] => Array.from({length: count}, () => family)

describe('the dossier’s figure of true-bred chicks', () => {
  it('has the interval by families where there are five, and says what the others speak of', () => {
    const [bred] = evenFigures(study(bookOfFamilies([{step: F2, pea: 9, single: 1}, ...many(6, {step: F3, pea: 9, single: 1})])))
    expect(bred?.table.rows.map(row => row[3])).toEqual(['59.6 to 98.2', expect.stringMatching(/^79\.9 to 95\.3; by 6 families \d\d\.\d–\d\d\.\d$/)])
    expect(bred?.caption).toMatch(/An interval speaks of these chicks only, unless it is drawn by sire families, which takes five of them\.$/)
  })
})
