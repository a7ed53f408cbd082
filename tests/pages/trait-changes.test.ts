import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {study} from '../../src/findings/study.ts'
import type {Logbook, Trait} from '../../src/logbook/book.ts'
import {agreementView, gradeChangesTable, gradesTable, spreadChangesTable} from '../../src/pages/trait-changes.ts'
import {traitPage, type TraitView} from '../../src/pages/trait.ts'
import {bookOfFamilies, evenBook, F3, keeper, neat, type} from '../findings/evenness-book.ts'
import {F2, looks, score, weight} from './small-logbook.ts'

const low = [4, 5, 5, 5, 6, 6, 6, 7, 4, 5], high = [7, 8, 8, 8, 9, 9, 9, 10, 7, 8]
const viewOf = (of: Trait, book: Logbook): TraitView => traitPage(of, study(book)).view as TraitView

describe('a graded trait', () => {
  const book = bookOfFamilies([{step: F2, type: low}, {step: F3, type: high}])

  it('has its middle mark and the share at the mark, step by step', () => {
    expect(gradesTable(type, study(book))?.rows.map(row => row.slice(1))).toEqual([['10', '5', '1 of 10', '10.0', '1.8 to 40.4'], ['10', '8', '10 of 10', '100.0', '72.2 to 100.0']])
    expect(viewOf(type, book).lead).toBe('Marks on a scale. Latest in F3: the middle mark 8, 10 of 10 as wanted, 100.0%.')
  })

  it('has its move against the step before, with what is told of it', () => {
    const [row, ...more] = gradeChangesTable(type, study(book))?.rows ?? []
    expect(more).toEqual([])
    expect(row).toEqual([{text: 'F3 against F2', link: 'steps/F3.html'}, '+3', '99.0%', 'cannot be told of so few sire families'])
    const five = (step: typeof F2, grades: readonly number[]) => Array.from({length: 5}, () => ({step, type: grades}))
    expect(gradeChangesTable(type, study(bookOfFamilies([...five(F2, low), ...five(F3, high)])))?.rows[0]).toEqual(
      [{text: 'F3 against F2', link: 'steps/F3.html'}, '+3 (3 to 3)', '99.0%', expect.stringMatching(/^graded higher, for the better, P.*0\.008 by families$/) as string])
  })

  it('has no tables where nobody was graded', () => {
    const findings = study(bookOfFamilies([{step: F2, pea: 2}]))
    expect([gradesTable(type, findings), gradeChangesTable(type, findings), agreementView(type, findings)]).toEqual([null, null, null])
  })
})

describe('a measured trait', () => {
  it('has its spread against the step before', () => {
    const book = bookOfFamilies([{step: F2, grams: [1500, 1700, 1900, 2100, 2300, 2500]}, {step: F3, grams: [1900, 1950, 2000, 2050, 2100, 2150]}])
    expect(spreadChangesTable(weight, study(book))?.rows).toEqual([[{text: 'F3 against F2, males', link: 'steps/F3.html'}, '4.6% after 18.7%', expect.stringMatching(/^0\.25 times \(.*\); variance 0\.06 \(.*\)$/) as string, expect.stringMatching(/^more even, P/) as string]])
    expect(spreadChangesTable(weight, study(bookOfFamilies([{step: F2, grams: [1500]}, {step: F3, grams: [1900]}])))).toBeNull()
  })
})

describe('two who grade the same birds', () => {
  it('are set beside each other, with how far they agree', () => {
    const book = bookOfFamilies([{step: F2, type: low}]), [inga, rasmus] = [{...keeper('inga'), name: 'Inga'}, keeper('rasmus')]
    const chicks = book.birds.filter(({step}) => step === F2)
    chicks.forEach((chick, index) => Object.assign(chick, {looks: looks(score(type, low[index] ?? 5, {by: inga}), score(type, (low[index] ?? 5) + (index === 0 ? 1 : 0), {by: rasmus}))}))
    const view = agreementView(type, study({...book, keepers: [inga, rasmus]}))
    expect(view?.table.rows).toEqual([['Inga and rasmus', '9 of 10', '1, 0', expect.stringMatching(/^0\.89 \(.* to .*\)$/) as string]])
    expect(view?.words).toMatch(/^Kappa is 1 where two agree in all/)
  })
})

it('says no nonsense of any drawn book', () => {
  fc.assert(fc.property(evenBook, book => {
    for (const each of [type, neat, weight]) expect(JSON.stringify(viewOf(each, book), (key, value: unknown) => (key === 'spec' ? undefined : value))).not.toMatch(/NaN|undefined|Infinity/)
  }), {numRuns: 8})
})
