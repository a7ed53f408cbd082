import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import type {Share} from '../../src/findings/estimate.ts'
import {shareOf} from '../../src/findings/share-of.ts'
import type {StepChange} from '../../src/findings/step-change.ts'
import {study} from '../../src/findings/study.ts'
import type {Logbook} from '../../src/logbook/book.ts'
import {changeInShort, stepChangeView} from '../../src/pages/step-change-words.ts'
import {bookOfFamilies, evenBook, F3, type Family} from '../findings/evenness-book.ts'
import {F1, F2} from './small-logbook.ts'

function lastChange(book: Logbook): StepChange {
  return study(book).changes.at(-1) ?? expect.fail('no step has one before it')
}
const said = (families: readonly Family[]) => stepChangeView(lastChange(bookOfFamilies(families)))
const many = (count: number, family: Family): Family[] => Array.from({length: count}, () => family)

describe('stepChangeView(change): truer', () => {
  it('says of few families that it holds for these chicks', () => {
    const view = said([{step: F2, pea: 48, single: 32}, {step: F3, pea: 56, single: 14}])
    expect(view.title).toBe('Truer and more even than F2?')
    // Newcombe 1998, Stat. Med. 17:873–890, table II, method 10 (from memory): 56/70 less 48/80
    expect(view.said[0]).toEqual({head: 'Truer, as far as these chicks go.', words: 'Right in all they could show were 56 of 70 (80.0%) of F3 and 48 of 80 (60.0%) of F2: +20.0 points (5.2 to 33.4).'})
    expect(view.believe[0]).toBe('A committee should read the trueness as said of these chicks only: each comes of one sire family, and under five in either nothing can be said of birds bred like these.')
  })

  it('lets five families speak, and says where chicks alone would have told and they do not', () => {
    const sure = said([...many(6, {step: F2, pea: 2, single: 8}), ...many(6, {step: F3, pea: 9, single: 1})])
    expect(sure.said[0]?.head).toBe('Truer.')
    expect(sure.believe[0]).toContain('A committee may read the trueness as said of birds bred like these')
    const open = said([...many(3, {step: F2, pea: 10}), ...many(3, {step: F2, single: 10}), ...many(5, {step: F3, pea: 10}), {step: F3, single: 10}])
    expect(open.said[0]?.head).toBe('Truer? That cannot be told.')
    expect(open.said[0]?.words).toMatch(/by sire families\. Chick by chick it would be told \(.*\), but families differ by as much\.$/)
  })

  it('does not ask it of a cross, nor of a step that nobody scored', () => {
    const cross = said([{step: F1, pea: 40}, {step: F2, pea: 30, single: 10}])
    expect(cross.title).toBe('More even than F1?')
    expect(cross.said[0]?.head).toBe('Truer? Not asked of a cross.')
    expect(cross.table).toBeNull()
    expect(said([{step: F2, pea: 4}, {step: F3, grams: [2000]}]).said[0]).toEqual({head: 'Truer? Nothing to compare.', words: 'No chick of F3 was scored for all it could show of what is required.'})
  })
})

describe('stepChangeView(change): more even, better graded', () => {
  const wide = [1500, 1700, 1900, 2100, 2300, 2500, 2700, 2900], narrow = [2150, 2170, 2190, 2210, 2230, 2250, 2270, 2290]

  it('tells a measure that strays less, and for whom it holds', () => {
    const {said: [, even], table} = said([{step: F2, grams: wide}, {step: F3, grams: narrow}])
    expect(even?.head).toBe('More even, as far as these chicks go.')
    expect(even?.words).toMatch(/^Weight at 20 weeks of males, more even: coefficient of variation 2\.2% in F3, 22\.\d% in F2, 0\.10 times \(.*\), P\u00a0under 0\.001\.$/)
    expect(table?.rows.at(-1)?.at(-1)).toMatch(/: more even$/)
    expect(said([...many(5, {step: F2, grams: wide}), ...many(5, {step: F3, grams: narrow})]).said[1]?.head).toBe('More even.')
  })

  it('says what the records leave open where nothing is told, and what could not be compared', () => {
    expect(said([{step: F2, grams: wide}, {step: F3, grams: wide}]).said[1]).toMatchObject({head: 'More even? That cannot be told.', words: expect.stringMatching(/Anything between the limits in brackets fits the records\.$/) as string})
    const few = said([{step: F2, grams: wide}, {step: F3, grams: [2000, 2100]}])
    expect(few.said[1]?.head).toBe('More even? Nothing to compare.')
    expect(few.left).toBe('Not compared: weight at 20 weeks, for want of five birds of one sex reared alike in both.')
  })

  it('says whether a higher grade is what is wanted', () => {
    const low = [4, 5, 5, 5, 6, 6, 6, 7, 4, 5], high = [7, 8, 8, 8, 9, 9, 9, 10, 7, 8]
    const five = (step: typeof F2, grades: readonly number[]): Family[] => many(5, {step, type: [...grades]})
    expect(said([...five(F2, low), ...five(F3, high)]).said[2]).toMatchObject({head: 'Better graded.', words: expect.stringMatching(/^Type: graded higher, for the better, the middle one 8 in F3, 5 in F2 \(a chick of F3 above one of its sex of F2 in 99\.0%, P\u00a0.* by families\)\.$/) as string})
    expect(said([...five(F2, high), ...five(F3, low)]).said[2]?.head).toBe('Worse graded.')
    expect(said([...five(F2, low), ...five(F3, low)]).said[2]).toEqual({head: 'Better graded? That cannot be told.', words: 'Type cannot be told apart.'})
  })

  it('gives no verdict and no P on grades of under five sire families', () => {
    const low = [4, 5, 5, 5, 6, 6, 6, 7, 4, 5], high = [7, 8, 8, 8, 9, 9, 9, 10, 7, 8], view = said([...many(4, {step: F2, type: low}), ...many(4, {step: F3, type: high})])
    expect(view.said[2]).toEqual({head: 'Better graded? That cannot be told of so few sire families.', words: 'Against those of F2 these chicks of F3 lie higher in type (99.0% above), ties half; of few cocks that may be their doing alone.'})
    expect(view.table?.rows.at(-1)?.at(-1)).toBe('higher in 99.0%: cannot be told of so few sire families')
  })

  it('says where those who grade it agree poorly', () => {
    const low = [4, 5, 5, 5, 6], high = [7, 8, 8, 8, 9], change = lastChange(bookOfFamilies([...many(5, {step: F2, type: low}), ...many(5, {step: F3, type: high})])), trait = change.marks[0]?.trait ?? expect.fail('no grade')
    const view = stepChangeView(change, new Map([[trait, {kappa: 0.19, differing: shareOf(46, 76) as Share}]]))
    expect(view.said[2]?.head).toBe('Better graded, if those who grade can be believed.')
    expect(view.said[2]?.words).toContain('Those who grade type agree poorly (kappa 0.19; 46 of 76 repeated scorings differ): a change may be one of eyes.')
    expect(view.table?.rows.at(-1)?.at(-1)).toMatch(/; scorers agree poorly$/)
  })

  it('says where an odd bird makes the CVs differ and the test not, and where all are alike', () => {
    const even = [1990, 1995, 2000, 2000, 2005, 2010, 1992, 2003], odd = said([{step: F2, grams: [...even, 40]}, {step: F3, grams: even}]).said[1]
    expect(odd?.head).toBe('More even? That cannot be told.')
    expect(odd?.words).toMatch(/The CVs alone would tell a change, but a bird unlike its mates may make it, or the families\.$/)
    expect(said([{step: F2, grams: [9, 9, 9, 9, 9]}, {step: F3, grams: [7, 7, 7, 7, 7]}]).said[1]?.words).toBe('Weight at 20 weeks of males: no bird of either differs from its mates.')
  })
})

describe('changeInShort(change)', () => {
  it('answers both in a sentence', () => {
    expect(changeInShort(lastChange(bookOfFamilies([{step: F2, pea: 48, single: 32}, {step: F3, pea: 56, single: 14}])))).toBe('Against F2, F3 is truer (80.0% after 60.0%), as far as these chicks go; nothing measured can be compared.')
  })

  it('does not ask it of a cross', () => {
    expect(changeInShort(lastChange(bookOfFamilies([{step: F1, pea: 40}, {step: F2, pea: 30, single: 10}])))).toBe('Against F1, F2 is not asked to be truer, one of them being a cross; nothing measured can be compared.')
  })

  it('names what it is more even in, and whose birds that holds for', () => {
    const even = changeInShort(lastChange(bookOfFamilies([{step: F2, grams: [1500, 1700, 1900, 2100, 2300, 2500]}, {step: F3, grams: [1990, 1995, 2000, 2005, 2010, 2015]}])))
    expect(even).toBe('Against F2, F3 cannot be told to be truer; whether it is more even cannot be told of so few sire families.')
    const five = [...many(5, {step: F2, grams: [1500, 1700, 1900, 2100, 2300, 2500]}), ...many(5, {step: F3, grams: [1990, 1995, 2000, 2005, 2010, 2015]})]
    expect(changeInShort(lastChange(bookOfFamilies(five)))).toBe('Against F2, F3 cannot be told to be truer; it is more even in weight at 20 weeks.')
  })
})

it('says no nonsense of any drawn book', () => {
  fc.assert(fc.property(evenBook, book => {
    for (const change of study(book).changes) {
      const view = stepChangeView(change)
      expect(JSON.stringify([view, changeInShort(change)])).not.toMatch(/NaN|undefined|Infinity|null"/)
      expect(view.said.every(({head, words}) => head !== '' && words !== '')).toBe(true)
    }
  }), {numRuns: 40})
})
