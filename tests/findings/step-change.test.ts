import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import type {ReachedStep} from '../../src/findings/ladder.ts'
import {correctedSpreads} from '../../src/findings/spread-change.ts'
import type {StepChange} from '../../src/findings/step-change.ts'
import {study} from '../../src/findings/study.ts'
import type {Logbook, Trait} from '../../src/logbook/book.ts'
import {expectClose} from '../expect-close.ts'
import {F1, F2, weight} from '../pages/small-logbook.ts'
import {bookOfFamilies, evenBook, F3, neat} from './evenness-book.ts'

function change(book: Logbook, from = 'F2', to = 'F3'): StepChange {
  const findings = study(book)
  const step = (label: string): ReachedStep => {
    const found = findings.ladder.find(each => each.label === label)
    return found?.kind === 'reached' ? found : expect.fail(`no ${label}`)
  }
  return findings.change(step(from), step(to))
}
const ofComb = (book: Logbook) => change(book).shares.find(({by}) => by !== 'true-bred') ?? expect.fail('no comb')
const ofWeight = (book: Logbook, sex = 'male') => change(book).spreads.find(each => each.sex === sex) ?? expect.fail('no weight')
const ofType = (book: Logbook, sex = 'male') => change(book).marks.find(each => each.sex === sex) ?? expect.fail('no type')

describe('stepChange(from, to): shares', () => {
  it('gives Newcombe’s difference, later less earlier', () => {
    // Newcombe 1998, Stat. Med. 17:873–890, table II, method 10 (from memory): 56/70 less 48/80
    const {plain, speaksOf, verdict} = ofComb(bookOfFamilies([{step: F2, pea: 48, single: 32}, {step: F3, pea: 56, single: 14}]))
    expectClose(plain?.difference ?? NaN, 0.2, 1e-12)
    expectClose(plain?.low ?? NaN, 0.0524, 5e-5)
    expectClose(plain?.high ?? NaN, 0.3339, 5e-5)
    expect([speaksOf, verdict]).toEqual(['these-chicks', 'truer'])
    expect(ofComb(bookOfFamilies([{step: F3, pea: 48, single: 32}, {step: F2, pea: 56, single: 14}])).verdict).toBe('less-true')
  })

  it('lets the families speak where there are five in both steps, whatever the chicks alone would say', () => {
    // all or none by family: 3 of 6 cocks throw pea alone, then 5 of 6; the chicks taken one by one would make much of it
    const all = (step: typeof F2, right: number) => Array.from({length: 6}, (_, place) => (place < right ? {step, pea: 10} : {step, single: 10}))
    const {plain, speaksOf, verdict, byFamilies} = ofComb(bookOfFamilies([...all(F2, 3), ...all(F3, 5)]))
    expect(plain?.low).toBeGreaterThan(0)
    expect(byFamilies?.low).toBeLessThan(0)
    expect([speaksOf, verdict]).toEqual(['families', 'cannot-tell'])
  })

  it('gives no verdict on what the plan of the crosses brings: F1 all pea, F2 not', () => {
    const book = bookOfFamilies([{step: F1, pea: 40}, {step: F2, pea: 30, single: 10}, {step: F3, pea: 40}])
    expect(change(book, 'F1', 'F2')).toMatchObject({outside: ['F1'], shares: [{verdict: 'by-plan'}, {verdict: 'by-plan', plain: {difference: -0.25}}]})
    expect(change(book, 'F1', 'F3')).toMatchObject({outside: ['F1'], shares: [{verdict: 'cannot-tell'}, {verdict: 'cannot-tell'}]})
    expect(change(book)).toMatchObject({outside: [], shares: [{verdict: 'truer'}, {verdict: 'truer'}]})
  })

  it('says nothing of a step with nobody judged, and has no row where neither has one', () => {
    expect(ofComb(bookOfFamilies([{step: F2, pea: 2}, {step: F3, grams: [2000]}]))).toMatchObject({plain: null, byFamilies: null, verdict: 'cannot-tell', to: {count: {k: 0, n: 0}, families: 0}})
    expect(change(bookOfFamilies([{step: F2, grams: [2000]}, {step: F3, grams: [2000]}])).shares).toEqual([])
  })
})

describe('stepChange(from, to): grades of families', () => {
  it('lets the families speak from five in both on, where chicks one by one would tell a change', () => {
    // all of a family alike: 2 of 6 cocks throw nines, then 5 of 6; 48 chicks a step
    const all = (step: typeof F2, high: number) => Array.from({length: 6}, (_, place) => ({step, type: Array<number>(8).fill(place < high ? 9 : 5)}))
    const found = ofType(bookOfFamilies([...all(F2, 2), ...all(F3, 5)]))
    expect(found.test).toMatchObject({kind: 'compared'})
    expect(found.test.kind === 'compared' ? found.test.p : 1).toBeLessThan(0.001)
    expect(found.byFamilies?.p).toBeGreaterThan(0.05)
    expect([found.speaksOf, found.verdict]).toEqual(['families', 'cannot-tell'])
    expect(ofType(bookOfFamilies([...all(F2, 2).slice(0, 4), ...all(F3, 5)]))).toMatchObject({speaksOf: 'these-chicks', byFamilies: null})
  })
})

describe('stepChange(from, to): evenness', () => {
  // chicks at 21 days by diet: R data set ChickWeight (Crowder & Hand 1990); means and SD printed by R
  const DIET1 = [205, 215, 202, 157, 223, 157, 305, 98, 124, 175, 205, 96, 266, 142, 157, 117], DIET3 = [256, 305, 147, 341, 373, 220, 178, 290, 272, 321]

  it('gives the CVs, and the ratios of variances and of CVs', () => {
    const {from, to, variances, verdict} = ofWeight(bookOfFamilies([{step: F2, grams: DIET1}, {step: F3, grams: DIET3}]))
    expectClose(from.spread?.kind === 'spread' ? from.spread.cv : NaN, 0.33025076, 1e-8)
    expectClose(to.spread?.kind === 'spread' ? to.spread.cv : NaN, 0.26497427, 1e-8)
    expectClose(variances?.ratio ?? NaN, (71.622545 / 58.702073) ** 2, 1e-6)
    expect(verdict).toBe('cannot-tell')
  })

  const hatch = (by: number, middle: number, step = F2) => ({step, grams: [-4, -3, -2, -1, 0, 1, 2, 3, 4].map(away => middle + middle * by * away)})
  it('finds a step half as uneven, whatever its weight and hatches, and the other way round', () => {
    const book = bookOfFamilies([hatch(0.05, 2000), hatch(0.05, 1500), hatch(0.05, 2600), hatch(0.02, 3000, F3), hatch(0.02, 1000, F3), hatch(0.02, 900, F3)])
    const found = ofWeight(book)
    expect(found.verdict).toBe('more-even')
    // evenness by hand: CV² of each class 7.5 · by²; bent by McKay's approximation, so near 0.4 and not on it
    expectClose(found.variations?.ratio ?? NaN, 0.4, 0.01)
    expectClose((found.to.straying ?? NaN) / (found.from.straying ?? NaN), 0.4, 1e-12)
    const turned = change(book, 'F3', 'F2').spreads.find(({sex}) => sex === 'male')
    expect(turned?.verdict).toBe('less-even')
    expectClose(turned?.variations?.ratio ?? NaN, 1 / (found.variations?.ratio ?? NaN), 1e-12)
  })

  it('does not hold both sexes of one step against the males of another', () => {
    const book = bookOfFamilies([hatch(0.05, 2000), hatch(0.02, 3000, F3), {...hatch(0.1, 2000, F3), sex: 'female'}])
    expect(ofWeight(book)).toMatchObject({verdict: 'more-even'})
    expect(ofWeight(book, 'all')).toMatchObject({test: null, p: null, verdict: 'cannot-tell'})
  })

  it('takes families as pieces from five in both steps on, and corrects for how many measures were compared', () => {
    const five = [...Array.from({length: 5}, () => hatch(0.05, 2000)), ...Array.from({length: 5}, () => hatch(0.02, 3000, F3))], found = ofWeight(bookOfFamilies(five))
    // every family strays alike, so that chance can only deal them: 2/C(10, 5); one measure is not corrected
    expect([found.speaksOf, found.p, found.correctedP, found.verdict]).toEqual(['families', found.byFamilies?.p, found.byFamilies?.p, 'more-even'])
    // by Holm two of one P each count twice, and two measures of P 0.03 tell nothing any more
    const row = {...found, p: 0.03, correctedP: 0.03}
    expect(correctedSpreads([row, {...row, trait: {...weight, id: 'again'}}]).map(each => [each.correctedP, each.verdict])).toEqual([[0.06, 'cannot-tell'], [0.06, 'cannot-tell']])
    // cocks alone are comparable in one measure, both sexes in the other: the two rows that are told make one list
    const both = {...row, sex: 'all' as const, trait: {...weight, id: 'again'}}, tail = row
    expect(correctedSpreads([tail, {...both, sex: 'male', p: 1}, {...both, sex: 'female', p: 1}, both]).filter(each => each === tail || each.sex === 'all' || each.trait === tail.trait).map(({correctedP}) => correctedP)).toEqual([0.06, 0.06])
  })

  it('cannot tell of four birds, of equal weights, or of a step nobody weighed', () => {
    expect(ofWeight(bookOfFamilies([{step: F2, grams: [1, 2, 3, 4]}, hatch(0.05, 2000, F3)]))).toMatchObject({test: null, variances: null, variations: null, verdict: 'cannot-tell', from: {measured: 4, straying: null}})
    expect(ofWeight(bookOfFamilies([{step: F2, grams: [9, 9, 9, 9, 9]}, {step: F3, grams: [7, 7, 7, 7, 7]}]))).toMatchObject({test: {kind: 'no-spread'}, variances: null, variations: null, verdict: 'cannot-tell'})
    expect(ofWeight(bookOfFamilies([{step: F2, grams: [9, 9, 9, 9, 9]}, {step: F3, pea: 2}]))).toMatchObject({test: null, verdict: 'cannot-tell', to: {spread: null, measured: 0}})
  })

  it('agrees with deviations written out bird by bird', () => {
    fc.assert(fc.property(evenBook, book => {
      const findings = study(book), steps = findings.ladder.filter(step => step.kind === 'reached')
      const [one, other] = steps
      if (!one || !other) return
      for (const {sex, test, from, to} of findings.change(one, other).spreads) {
        if (test?.kind !== 'compared') continue
        const groups = [to, from].map((_, place) => strayingOf(book, (place === 0 ? other : one).label, sex))
        const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length
        const all = groups.flat(), squares = (values: readonly number[]) => values.reduce((sum, value) => sum + (value - mean(values)) ** 2, 0)
        const within = groups.reduce((sum, values) => sum + squares(values), 0)
        expectClose(test.f / (((squares(all) - within) * (all.length - 2)) / within), 1, 1e-5)
        expectClose((from.straying ?? NaN) / mean(groups[1] ?? []), 1, 1e-6)
      }
    }), {numRuns: 40})
  })
})

/** Deviations from class medians as shares, over the mean of |z| in the upper half of n by simulation-free order statistics: a plain sum over a fine grid. */
function strayingOf(book: Logbook, step: string, sex: 'male' | 'female' | 'all'): number[] {
  const classes: Record<string, number[]> = {}
  for (const one of book.birds) {
    const {hatch: from, hatched, weighings: [weighing]} = one
    if (one.step.label !== step || one.sex === 'unknown' || (sex !== 'all' && one.sex !== sex) || !from || !hatched || !weighing) continue
    if (Math.abs(weighing.on.first - hatched.first - 140) <= 10) (classes[`${one.sex}/${from.rearing}`] ??= []).push(weighing.value)
  }
  return Object.values(classes).filter(values => values.length >= 5).flatMap(values => {
    const order = [...values].sort((a, b) => a - b), n = order.length, half = Math.floor(n / 2)
    const middle = n % 2 === 1 ? order[half] ?? 0 : ((order[half - 1] ?? 0) + (order[half] ?? 0)) / 2
    const away = order.map(value => Math.abs(value - middle) / middle / upperHalf(n))
    return n % 2 === 1 ? away.filter((_, place) => place !== half) : away
  })
}

const upper = new Map<number, number>()
/** Expected mean of the greater half of n normal values, order statistic by order statistic. */
function upperHalf(n: number): number {
  const before = upper.get(n)
  if (before !== undefined) return before
  const half = Math.floor(n / 2), step = 0.002
  let sum = 0, below = 0
  const factorial = (k: number): number => (k < 2 ? 1 : k * factorial(k - 1))
  for (let x = -8; x <= 8; x += step) {
    const density = Math.exp((-x * x) / 2) / Math.sqrt(2 * Math.PI)
    below += density * step
    const p = Math.min(1, below - (density * step) / 2)
    for (let r = n - half + 1; r <= n; r++) sum += (x * density * step * p ** (r - 1) * (1 - p) ** (n - r) * factorial(n)) / factorial(r - 1) / factorial(n - r)
  }
  upper.set(n, sum / half)
  return sum / half
}

describe('stepChange(from, to): grades', () => {
  it('compares by rank and shift', () => {
    // every one of the 126 ways to deal the nine grades counted apart in Python 3: 14 as far
    const {test, shift, from, to, verdict} = ofType(bookOfFamilies([{step: F2, type: [5, 6, 7, 7, 8]}, {step: F3, type: [7, 8, 8, 9]}]))
    expect(test).toMatchObject({kind: 'compared', how: 'exact', u: 17, superiority: 0.85})
    expectClose(test.kind === 'compared' ? test.p : NaN, 14 / 126, 1e-12)
    expect([shift?.shift, from.middle?.is, to.middle?.is, verdict]).toEqual([1, [7], [8], 'too-few-families'])
  })

  it('finds higher and lower grades, and nothing in one grade for all', () => {
    const low = [1, 2, 3, 4], high = [7, 8, 9, 10]
    const five = (step: typeof F2, grades: readonly number[]) => Array.from({length: 5}, () => ({step, type: [...grades]}))
    expect(ofType(bookOfFamilies([...five(F2, low), ...five(F3, high)])).verdict).toBe('higher')
    expect(ofType(bookOfFamilies([...five(F2, high), ...five(F3, low)])).verdict).toBe('lower')
    // however far apart, of one cock each there is no verdict
    expect(ofType(bookOfFamilies([{step: F2, type: low}, {step: F3, type: high}]))).toMatchObject({verdict: 'too-few-families', correctedP: null})
    expect(ofType(bookOfFamilies([{step: F2, type: [7, 7]}, {step: F3, type: [7]}]))).toMatchObject({test: {kind: 'all-alike'}, shift: {shift: 0}, verdict: 'cannot-tell'})
    expect(ofType(bookOfFamilies([{step: F2, type: [7, 7]}, {step: F3, pea: 1}]))).toMatchObject({test: {kind: 'few'}, shift: null, to: {scored: 0, middle: null}, verdict: 'cannot-tell'})
  })

  it('agrees with every pair of chicks held against each other, of grades and of states', () => {
    fc.assert(fc.property(evenBook, book => {
      const findings = study(book), [one, other] = findings.ladder.filter(step => step.kind === 'reached')
      if (!one || !other) return
      const places = (of: ReachedStep, trait: Trait, sex: string) => [...of.birds, ...of.tallies].flatMap(chick => {
        const value = chick.looks.get(trait)?.counted?.value
        return value === undefined || (sex !== 'all' && chick.sex !== sex) ? [] : Array(chick.count).fill({sex: chick.sex, place: typeof value === 'number' ? value : neat.states.indexOf(value)}) as {sex: string; place: number}[]
      })
      for (const {trait, sex, test, from, to} of findings.change(one, other).marks) {
        const earlier = places(one, trait, sex), later = places(other, trait, sex)
        expect([from.scored, to.scored]).toEqual([earlier.length, later.length])
        if (test.kind !== 'compared') continue
        const wins = later.flatMap(a => earlier.filter(b => b.sex === a.sex).map(b => (a.place > b.place ? 1 : a.place === b.place ? 0.5 : 0))).reduce<number>((sum, win) => sum + win, 0)
        expectClose(test.u, wins, 1e-9)
      }
    }), {numRuns: 40})
  })
})

describe('stepChange(from, to)', () => {
  it('names how many birds may have sired chicks of both', () => {
    const book = bookOfFamilies([{step: F2, pea: 2}, {step: F3, pea: 2}])
    const [first] = book.birds.filter(({step}) => step.label === 'F2')
    for (const bird of book.birds) if (bird.step.label === 'F3') Object.assign(bird, {parentage: first?.parentage})
    expect(change(book).siresOfBoth).toBe(1)
    expect(change(bookOfFamilies([{step: F2, pea: 2}, {step: F3, pea: 2}])).siresOfBoth).toBe(0)
  })
})
