import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {growthOfGroups} from '../../src/findings/growth-of-groups.ts'
import {hatchGroups} from '../../src/findings/hatch-groups.ts'
import type {Bird, Logbook, LooseWeighing, Sex} from '../../src/logbook/book.ts'
import {isoDay} from '../../src/records/dates.ts'
import {studentQuantile} from '../../src/statistics/student-t.ts'
import {expectClose} from '../expect-close.ts'
import {at, bird, date, F1, hatch, logbook} from '../pages/small-logbook.ts'
import {drawnBook} from './drawn-book.ts'

const one = hatch('2024-01', {on: date('2024-03-23'), machine: 'I1', step: F1})
const DAY = date('2024-03-23').first
const weighed = (id: string, sex: Sex, ...at_: (readonly [number, number])[]): Bird => bird(id, sex, {hatch: one, hatched: one.on, step: F1, weighings: at_.map(([age, value]) => ({measure: 'weight', value, on: date(isoDay(DAY + age)), at}))})
const grown = (book: Logbook) => growthOfGroups(book, hatchGroups(book))
const of = (birds: Bird[], loose: LooseWeighing[] = []) => grown(logbook('2026-01-01', {birds, hatches: [one], looseWeighings: loose})).hatches.get(one) ?? []

describe('growth', () => {
  it('has the mean of each weigh day and the gain a day of the birds weighed at both', () => {
    const [males] = of([weighed('1', 'male', [28, 300], [56, 860]), weighed('2', 'male', [28, 340], [56, 1012]), weighed('3', 'male', [56, 900])])
    expect(males?.points.map(({age, n, mean}) => [age, n, mean])).toEqual([[28, 2, 320], [56, 3, 924]])
    // 560/28 = 20 and 672/28 = 24 g a day: mean 22, SD 2√2
    expect(males?.gains).toMatchObject([{from: 28, to: 56, birds: 2, perDay: 22}])
    const [five] = of([300, 320, 340, 360, 380].map((grams, place) => weighed(String(place), 'male', [28, grams], [56, grams + 28 * (18 + 2 * place)])))
    // 18, 20, 22, 24, 26 g a day: SD √10
    expectClose(five?.gains[0]?.interval?.high ?? NaN, 22 + studentQuantile(0.95, 4) * Math.SQRT2, 1e-9)
    expect(males?.gains[0]?.interval).toBeNull()
  })
  it('sets the means beside one another where birds wore no bands, without limits', () => {
    const loose: LooseWeighing[] = [[28, 300], [56, 860]].map(([age = 0, value = 0]) => ({hatch: one, sex: 'unknown', measure: 'weight', value, on: date(isoDay(DAY + age)), at, countsFor: []}))
    expect(of([], loose)).toMatchObject([{sex: 'unknown', gains: [{birds: 0, perDay: 20, interval: null}]}])
  })
  it('keeps sexes apart, and counts a bird weighed twice in a week once', () => {
    const found = of([weighed('1', 'male', [140, 2400], [143, 2420]), weighed('2', 'female', [140, 1900])])
    expect(found.map(({sex, points}) => [sex, points.map(({n, mean}) => [n, mean])])).toEqual([['male', [[1, 2420]]], ['female', [[1, 1900]]]])
    expect(found[0]?.points[0]).toMatchObject({sd: null, interval: null})
  })
  it('takes grown birds weighed within a month of one another for one age, and chicks a week apart for two', () => {
    expect(of([weighed('1', 'male', [7, 70], [14, 130], [330, 3000]), weighed('2', 'male', [355, 3100])])[0]?.points.map(({age, n}) => [age, n])).toEqual([[7, 1], [14, 1], [342.5, 2]])
  })
  it('says nothing of a hatch whose day is not known', () => {
    const vague = hatch('2', {on: date('2024-03')}), chick = bird('9', 'male', {hatch: vague, hatched: vague.on, weighings: [{measure: 'weight', value: 900, on: date('2024-06-01'), at}]})
    expect(grown(logbook('2026-01-01', {birds: [chick], hatches: [vague]})).hatches.get(vague)).toEqual([])
  })
  it('counts every weighed bird in some point of any book', () => {
    fc.assert(fc.property(drawnBook, book => {
      for (const [hatched, growth] of grown(book).hatches) {
        for (const {points, gains, sex} of growth) {
          expect(points.reduce((sum, {n}) => sum + n, 0)).toBe(book.birds.filter(each => each.hatch === hatched && each.sex === sex && each.weighings.length > 0).length)
          expect(gains).toHaveLength(points.length - 1)
          for (const {mean, interval} of points) if (interval) expect(interval.low <= mean && mean <= interval.high).toBe(true)
        }
      }
    }), {numRuns: 40})
  })
})
