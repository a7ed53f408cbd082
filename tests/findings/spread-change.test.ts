import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {ladderOf} from '../../src/findings/ladder.ts'
import {changeOfSpread, correctedSpreads, spreadsCompared, type ChangeOfSpread} from '../../src/findings/spread-change.ts'
import {spreadOfMeasures, type SpreadRow} from '../../src/findings/spread.ts'
import type {Logbook} from '../../src/logbook/book.ts'
import {varianceRatio} from '../../src/statistics/variance-ratio.ts'
import {expectClose} from '../expect-close.ts'
import {F2, trait, weight} from '../pages/small-logbook.ts'
import {bookOfFamilies, evenBook, F3, type Family} from './evenness-book.ts'

const rowsOf = (book: Logbook): readonly SpreadRow[] => spreadOfMeasures(book, ladderOf(book)).rows

function compared(families: readonly Family[], sex: SpreadRow['sex'] = 'male'): ChangeOfSpread {
  const rows = rowsOf(bookOfFamilies(families)), of = (step: string) => rows.find(row => row.step === step && row.sex === sex) ?? null
  return changeOfSpread(weight, sex, of('F2'), of('F3'))[0] ?? expect.fail('nothing compared')
}

const EVEN = [90, 95, 100, 105, 110], UNEVEN = [80, 90, 100, 110, 120]

describe('changeOfSpread(from, to)', () => {
  it('gives what a hatch of five against another gives by hand', () => {
    const {from, to, test, p, variances, variations, speaksOf, verdict} = compared([{step: F2, grams: UNEVEN}, {step: F3, grams: EVEN}])
    // strayings 0.2 0.1 0.1 0.2 and half of that, over 0.82899: between 0.01125, within 0.0125 on 6
    expectClose(test?.kind === 'compared' ? test.f : NaN, 5.4, 1e-9)
    // Student's t of √5.4 on 6 by its closed form: 1 − sin θ·(1 + ½cos²θ + ⅜cos⁴θ), cos²θ = 6/11.4
    const cos2 = 6 / 11.4
    expectClose(p ?? NaN, 1 - Math.sqrt(1 - cos2) * (1 + cos2 / 2 + (3 * cos2 ** 2) / 8), 1e-9)
    expectClose(from.straying ?? NaN, 0.15 / 0.82899, 1e-5)
    expectClose(to.straying ?? NaN, 0.075 / 0.82899, 1e-5)
    expectClose(variances?.ratio ?? NaN, 0.25, 1e-12)
    // CV² 0.00625 and 0.025, bent: T = 0.00625/1.005 and 0.025/1.02
    const later = 0.00625 / 1.005, earlier = 0.025 / 1.02
    expectClose(variations?.ratio ?? NaN, Math.sqrt((later * (1 - earlier)) / (earlier * (1 - later))), 1e-9)
    expect([from.measured, to.families, speaksOf, verdict]).toEqual([5, 1, 'these-chicks', 'cannot-tell'])
  })

  it('tells a step more even or less even, of its birds and from five cocks on of its families, and loses a degree of freedom for every class', () => {
    const away = [-4, -3, -2, -1, 0, 1, 2, 3, 4], of = (step: typeof F2, by: number) => ({step, grams: away.map(each => 2000 + by * each)})
    const two = [of(F2, 100), of(F2, 100), of(F3, 40), of(F3, 40)], found = compared(two)
    expect([found.verdict, found.speaksOf, compared([of(F2, 40), of(F2, 40), of(F3, 100), of(F3, 100)]).verdict]).toEqual(['more-even', 'these-chicks', 'less-even'])
    // Σ away² = 60 on 8: SD √7.5 times as many grams, 16 degrees of freedom in two classes
    expectClose(found.variances?.p ?? NaN, varianceRatio({sd: 40 * Math.sqrt(7.5), freedom: 16}, {sd: 100 * Math.sqrt(7.5), freedom: 16})?.p ?? Infinity, 1e-12)
    // five families that all stray alike: no less than two of the C(10, 5) = 252 ways to deal them
    const five = compared([...Array.from({length: 5}, () => of(F2, 100)), ...Array.from({length: 5}, () => of(F3, 40))])
    expectClose(five.p ?? NaN, 2 / 252, 1e-12)
    expect([five.speaksOf, five.verdict, five.from.families]).toEqual(['families', 'more-even', 5])
  })

  it('does not hold the cocks of one step against cocks and hens of another', () => {
    const families: readonly Family[] = [{step: F2, grams: UNEVEN}, {step: F3, grams: EVEN}, {step: F3, grams: EVEN, sex: 'female'}]
    expect(compared(families, 'all')).toMatchObject({test: null, p: null, verdict: 'cannot-tell', to: {measured: 10}})
    expect(compared(families).test).toMatchObject({kind: 'compared'})
  })

  it('has nothing of nobody, and cannot tell of one side, of one bird or of weights all equal', () => {
    expect(changeOfSpread(weight, 'male', null, null)).toEqual([])
    const none = {test: null, byFamilies: null, p: null, correctedP: null, variances: null, variations: null, verdict: 'cannot-tell'}
    expect(compared([{step: F2, grams: EVEN}])).toMatchObject({...none, from: {measured: 5}, to: {spread: null, measured: 0, families: 0, straying: null}})
    expect(compared([{step: F2, grams: [2000]}, {step: F3, grams: EVEN}])).toMatchObject({...none, from: {spread: {kind: 'cannot-say'}, measured: 1, straying: null}})
    const alike = [7, 7, 7, 7, 7]
    expect(compared([{step: F2, grams: alike}, {step: F3, grams: alike}])).toMatchObject({...none, test: {kind: 'no-spread'}, from: {straying: 0}, to: {straying: 0}})
    expect(compared([{step: F2, grams: alike}, {step: F3, grams: EVEN}])).toMatchObject({variances: null, variations: null, from: {straying: 0}})
  })

  it('says the same of a class weighed in another unit, or of a heavier hatch', () => {
    const {from, to, p, variations} = compared([{step: F2, grams: UNEVEN}, {step: F2, grams: EVEN}, {step: F3, grams: EVEN}])
    const other = compared([{step: F2, grams: UNEVEN.map(grams => grams * 30)}, {step: F2, grams: EVEN.map(grams => grams / 4)}, {step: F3, grams: EVEN.map(grams => grams * 28.3495)}])
    expectClose(other.p ?? NaN, p ?? Infinity, 1e-9)
    expectClose(other.from.straying ?? NaN, from.straying ?? Infinity, 1e-12)
    expectClose(other.to.straying ?? NaN, to.straying ?? Infinity, 1e-12)
    expectClose(other.variations?.ratio ?? NaN, variations?.ratio ?? Infinity, 1e-9)
  })

  it('says the opposite when the steps are held the other way round', () => {
    const opposite = {'more-even': 'less-even', 'less-even': 'more-even', 'cannot-tell': 'cannot-tell'} as const
    fc.assert(fc.property(evenBook, book => {
      const rows = rowsOf(book)
      for (const from of rows) {
        for (const to of rows.filter(each => each.sex === from.sex && each.step > from.step)) {
          const [here] = changeOfSpread(weight, from.sex, from, to), [there] = changeOfSpread(weight, from.sex, to, from)
          if (!here || !there) expect.fail('nothing compared')
          expect([there.from, there.to, there.speaksOf, there.verdict]).toEqual([here.to, here.from, here.speaksOf, opposite[here.verdict]])
          if (here.p === null) expect([there.p, here.verdict]).toEqual([null, 'cannot-tell'])
          else expectClose(there.p ?? NaN, here.p, 1e-9)
          if (here.variances) expectClose((there.variances?.ratio ?? NaN) * here.variances.ratio, 1, 1e-9)
          if (!here.variations) continue
          const {ratio, interval: {low, high}} = here.variations
          expectClose((there.variations?.ratio ?? NaN) * ratio, 1, 1e-9)
          expectClose((there.variations?.interval.low ?? NaN) * high, 1, 1e-6)
          expect(low < ratio && ratio < high).toBe(true)
        }
      }
    }), {numRuns: 30})
  })
})

describe('spreadsCompared(spreads), correctedSpreads(spreads)', () => {
  const told = compared([{step: F2, grams: UNEVEN}, {step: F3, grams: EVEN}])
  const length = trait('shank', 'Shank', {kind: 'measured', unit: 'mm'})
  const row = (sex: SpreadRow['sex'], p: number | null, more: Partial<ChangeOfSpread> = {}): ChangeOfSpread =>
    ({...told, sex, p, correctedP: p, test: p === null ? null : told.test, verdict: p !== null && p <= 0.05 ? 'more-even' : 'cannot-tell', ...more})

  it('takes both sexes together where either can be compared, else the one that can, else none', () => {
    const [male, female, all] = [row('male', 0.01), row('female', 0.02), row('all', 0.001)]
    expect(spreadsCompared([male, female, all])).toEqual([all])
    const blank = {female: row('female', null), all: row('all', null)}
    expect(spreadsCompared([male, blank.female, blank.all])).toEqual([male])
    expect(spreadsCompared([row('male', null), blank.female, blank.all])).toEqual([])
    expect(spreadsCompared([])).toEqual([])
  })

  it('corrects by Holm by hand: the least of two counts twice, and a verdict that goes under is taken back', () => {
    const found = correctedSpreads([row('all', 0.04), row('all', 0.01, {trait: length})])
    expect(found.map(({correctedP, verdict, p}) => [p, correctedP, verdict])).toEqual([[0.04, 0.04, 'more-even'], [0.01, 0.02, 'more-even']])
    const under = correctedSpreads([row('all', 0.04), row('all', 0.03, {trait: length})])
    expect(under.map(({correctedP, verdict}) => [correctedP, verdict])).toEqual([[0.06, 'cannot-tell'], [0.06, 'cannot-tell']])
    // cocks alone can be compared in one measure, both sexes in the other: these two rows make one list
    const mixed = correctedSpreads([row('male', 0.03), row('all', null), row('male', 1, {trait: length}), row('female', 1, {trait: length}), row('all', 0.04, {trait: length})])
    expect(mixed.map(({correctedP}) => correctedP)).toEqual([0.06, null, 1, 1, 0.06])
    expect(correctedSpreads([])).toEqual([])
  })

  it('leaves one measure as it was, never lowers a chance, and never gives a verdict that was not there', () => {
    const chance = fc.option(fc.double({min: 0, max: 1, noNaN: true}))
    fc.assert(fc.property(fc.array(fc.tuple(chance, chance, chance), {maxLength: 5}), drawn => {
      const rows = drawn.flatMap(([male, female, all], place) => {
        const of = {trait: {...length, id: `t${place}`}}
        return [row('male', male, of), row('female', female, of), row('all', all, of)]
      })
      const found = correctedSpreads(rows)
      expect(found.length).toBe(rows.length)
      found.forEach(({p, correctedP, verdict}, place) => {
        const before = rows[place]
        if (p === null) expect([correctedP, verdict]).toEqual([null, 'cannot-tell'])
        else expect(correctedP ?? NaN).toBeGreaterThanOrEqual(p)
        if (drawn.length === 1) expect(correctedP).toBe(p)
        expect(['cannot-tell', before?.verdict]).toContain(verdict)
        expect(verdict === 'cannot-tell').toBe((correctedP ?? 1) > 0.05)
      })
    }), {numRuns: 200})
  })
})
