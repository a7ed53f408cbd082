import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {study} from '../../src/findings/study.ts'
import type {Trends} from '../../src/findings/trends.ts'
import type {Logbook} from '../../src/logbook/book.ts'
import {familyShare} from '../../src/statistics/family-bootstrap.ts'
import {wilsonInterval} from '../../src/statistics/wilson-interval.ts'
import {expectClose} from '../expect-close.ts'
import {F1, F2} from '../pages/small-logbook.ts'
import {bookOfFamilies, evenBook, F3, F4} from './evenness-book.ts'

const trends = (book: Logbook): Trends => study(book).trends
const ofComb = (book: Logbook) => trends(book).shares.find(({by}) => by !== 'true-bred' && by.id === 'comb') ?? expect.fail('no comb')
const evenness = (book: Logbook, sex = 'male') => trends(book).spreads.find(each => each.sex === sex) ?? expect.fail('no weight')

describe('trendsOf(book): shares', () => {
  // the first two: Newcombe 1998, Stat. Med. 17:857–872, table I, methods 3 and 5; the others worked by implementations apart from this one
  it.each([
    [81, 263, 0.255289, 0.366210, 0.252737, 0.367622], [0, 20, 0, 0.161125, 0, 0.168433], [3, 50, 0.020615, 0.162171, 0.012549, 0.165482], [5, 5, 0.565518, 1, 0.478176, 1],
    [0, 1, 0, 0.793451, 0, 0.975], [28, 40, 0.5457, 0.819252, 0.534684, 0.834373],
  ])('gives %i of %i Wilson’s and Clopper and Pearson’s limits', (k, n, low, high, exactLow, exactHigh) => {
    const [step] = ofComb(bookOfFamilies([{step: F2, pea: k, single: n - k}])).steps
    if (step?.share.kind !== 'share' || !step.exact) return expect.fail('no share')
    expect([step.share.count, step.share.total]).toEqual([k, n])
    for (const [is, should] of [[step.share.interval.low, low], [step.share.interval.high, high], [step.exact.low, exactLow], [step.exact.high, exactHigh]] as const) expectClose(is, should, 1e-6)
  })

  it('speaks of these chicks only under five families, and of birds bred like these from five on', () => {
    const families = (count: number) => Array.from({length: count}, (_, place) => ({step: F2, pea: 4 + (place % 3), single: place % 2}))
    expect([4, 5].map(count => ofComb(bookOfFamilies(families(count))).steps[0]?.family?.kind)).toEqual(['these-chicks', 'families'])
  })

  it('counts every order of a small book: 1 of 4, 2 of 4 and 4 of 4', () => {
    // every one of the 792 ways to deal seven of twelve is laid out below; the slope by hand: 3 more right of 4 over two steps
    const {plain, verdict, speaksOf} = ofComb(bookOfFamilies([{step: F2, pea: 1, single: 3}, {step: F3, pea: 2, single: 2}, {step: F4, pea: 4}]))
    expect([plain.how, plain.n, speaksOf]).toEqual(['exact', 12, 'these-chicks'])
    expectClose(plain.p, waysAsFar([[1, 4], [2, 4], [4, 4]]), 1e-12)
    expectClose(plain.slope ?? NaN, 3 / 8, 1e-12)
    expect(verdict).toBe(plain.p <= 0.05 ? 'rises' : 'cannot-tell')
  })

  it('tells a strong rise of many families from the families', () => {
    const many = (step: typeof F2, pea: number, single: number) => Array.from({length: 6}, (_, place) => ({step, pea: pea + (place % 2), single}))
    const {speaksOf, verdict, families} = ofComb(bookOfFamilies([...many(F2, 4, 6), ...many(F3, 7, 3), ...many(F4, 10, 0)]))
    expect([speaksOf, verdict, families.families]).toEqual(['families', 'rises', 18])
    expect(ofComb(bookOfFamilies([...many(F4, 4, 6), ...many(F3, 7, 3), ...many(F2, 10, 0)])).verdict).toBe('falls')
  })

  it('leaves F1 out, since what it shows is the plan', () => {
    const {steps, plain} = ofComb(bookOfFamilies([{step: F1, pea: 9}, {step: F2, pea: 6, single: 3}, {step: F3, pea: 7, single: 2}]))
    expect(steps.map(({step, inTrend}) => [step, inTrend])).toEqual([['F1', false], ['F2', true], ['F3', true]])
    expect(plain.n).toBe(18)
  })

  it('says what it can of little: three birds, one step, all right, nobody scored', () => {
    expect(ofComb(bookOfFamilies([{step: F2, pea: 3}]))).toMatchObject({verdict: 'too-few-steps', plain: {slope: null}})
    expect(ofComb(bookOfFamilies([{step: F2, pea: 3}, {step: F3, pea: 2}]))).toMatchObject({verdict: 'all-alike'})
    expect(ofComb(bookOfFamilies([{step: F2, grams: [2000]}])).steps).toMatchObject([{share: {kind: 'cannot-say', why: 'none-scored'}, exact: null, family: null, leftOut: 1, inTrend: false}])
    expect(trends(bookOfFamilies([], {traits: []}))).toEqual({shares: [], spreads: []})
  })

  it('agrees with a slow recount, family by family', () => {
    fc.assert(fc.property(evenBook, book => {
      const {required, verdicts} = study(book).trueBred
      for (const {by, steps, plain} of trends(book).shares) {
        let all = 0
        for (const {step, share, family, inTrend, leftOut} of steps) {
          const chicks = [...verdicts].filter(([chick]) => chick.step.label === step)
          const right = chicks.filter(([, verdict]) => (by === 'true-bred' ? verdict.is === 'right' : verdict.right.includes(by))).reduce((sum, [{count}]) => sum + count, 0)
          const off = chicks.filter(([, verdict]) => (by === 'true-bred' ? verdict.is === 'off' : verdict.off.includes(by))).reduce((sum, [{count}]) => sum + count, 0)
          const hatched = chicks.reduce((sum, [{count}]) => sum + count, 0) + book.hatches.filter(each => each.step.label === step).reduce((sum, {unlisted}) => sum + unlisted, 0)
          expect(leftOut).toBe(hatched - right - off)
          if (inTrend) all += right + off
          if (share.kind === 'cannot-say') expect([right + off, family]).toEqual([0, null])
          else {
            expect([share.count, share.total, family?.n]).toEqual([right, right + off, right + off])
            expect(share.interval).toEqual(wilsonInterval(right, right + off))
          }
        }
        expect(plain.n).toBe(all)
        expect(required.length).toBeGreaterThan(0)
      }
    }), {numRuns: 60})
  })

  it('draws the families with the seed that is named: the same as asked of the numbers', () => {
    const families = [[9, 1], [12, 0], [5, 3], [11, 0], [9, 0]] as const
    const [step] = ofComb(bookOfFamilies(families.map(([pea, single]) => ({step: F2, pea, single})))).steps
    expect(step?.family).toEqual(familyShare(families.map(([pea, single]) => ({k: pea, n: pea + single})), {seed: 1}))
  })
})

describe('trendsOf(book): evenness', () => {
  const GRAMS = [1900, 1950, 2000, 2050, 2100], spread = (by: number) => GRAMS.map(grams => 2000 + (grams - 2000) * by)

  it('says of three steps that they can never show a trend', () => {
    // Gilbert 1987, table A18: with three values the smallest one-sided P is 1/6
    const {order, verdict, slope} = evenness(bookOfFamilies([{step: F2, grams: spread(3)}, {step: F3, grams: spread(2)}, {step: F4, grams: spread(1)}]))
    expect(verdict).toBe('too-few-steps')
    expectClose(order.kind === 'tested' ? order.smallestP : NaN, 1 / 3, 1e-12)
    // by hand: SD of GRAMS √6250, CV a third of that apart from step to step
    expectClose(slope?.slope ?? NaN, -Math.sqrt(6250) / 2000, 1e-12)
  })

  it('takes five steps each more even than the last for a trend', () => {
    const steps = [5, 4, 3, 2, 1].map((by, place) => ({step: {...F2, label: `F${place + 2}`, interSe: place + 1}, grams: spread(by)}))
    const book = bookOfFamilies(steps)
    const found = evenness({...book, project: {...book.project, ladder: steps.map(({step}) => step.label)}})
    // of 120 orders 1 falls and 1 rises throughout
    expectClose(found.order.kind === 'tested' ? found.order.p : NaN, 2 / 120, 1e-12)
    expect(found.verdict).toBe('falls')
  })

  it('says what it can of equal weights, of four birds, of no males', () => {
    expect(evenness(bookOfFamilies([{step: F2, grams: [2000, 2000, 2000, 2000, 2000]}, {step: F3, grams: [2000, 2000, 2000, 2000, 2000]}, {step: F4, grams: [1, 1, 1, 1, 1]}])))
      .toMatchObject({verdict: 'all-alike', apart: {kind: 'no-spread'}, slope: {slope: 0}})
    expect(evenness(bookOfFamilies([{step: F2, grams: [1, 2, 3, 4]}])).steps).toMatchObject([{spread: {kind: 'cannot-say', have: 4, need: 5}, inTrend: false}])
    expect(trends(bookOfFamilies([{step: F2, grams: GRAMS, sex: 'female'}])).spreads.map(({sex}) => sex)).toEqual(['female', 'all'])
  })
})

/** Of all ways to deal the bearers over the chicks, the share as far from the mean: chick by chick. */
function waysAsFar(steps: readonly (readonly [k: number, n: number])[]): number {
  const places = steps.flatMap(([, n], place) => Array<number>(n).fill(place)), k = steps.reduce((sum, [each]) => sum + each, 0)
  const seen = steps.reduce((sum, [each], place) => sum + place * each, 0), mean = (k * places.reduce((sum, place) => sum + place, 0)) / places.length
  let all = 0, far = 0
  for (let mask = 0; mask < 2 ** places.length; mask++) {
    const dealt = places.filter((_, chick) => (mask >> chick) & 1)
    if (dealt.length !== k) continue
    all += 1
    if (Math.abs(dealt.reduce((sum, place) => sum + place, 0) - mean) >= Math.abs(seen - mean) - 1e-9) far += 1
  }
  return far / all
}
