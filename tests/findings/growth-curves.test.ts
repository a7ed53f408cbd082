import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {ageFor, growthCurves, type GrowthOfMeasure} from '../../src/findings/growth-curves.ts'
import {ladderOf} from '../../src/findings/ladder.ts'
import type {Bird, LooseWeighing, Logbook, Sex} from '../../src/logbook/book.ts'
import {expectClose} from '../expect-close.ts'
import {at, bird, date, F1, F2, hatch, logbook, trait, weight} from '../pages/small-logbook.ts'

const on = date('2024-03-23')
const day = (after: number) => ({text: '', first: on.first + after, last: on.first + after})
const weighed = (after: number, value: number) => ({measure: 'weight', value, on: day(after), at})
const adult = trait('weight-adult', 'Weight at a year', {kind: 'measured', unit: 'g', measure: 'weight', atAge: 364, window: 56})

function bookOf(birds: readonly {readonly sex: Sex; readonly weighings: readonly (readonly [after: number, value: number])[]; readonly hatched?: null}[], loose: readonly (readonly [after: number, value: number, sex: Sex])[] = []): Logbook {
  const from = hatch('2024-03', {on, step: F2})
  const chicks = birds.map(({sex, weighings, hatched = on}, index): Bird => bird(`24-${index}`, sex, {hatched, hatch: from, step: F2, strain: null, weighings: weighings.map(([after, value]) => weighed(after, value))}))
  return logbook('2025-10-30', {
    traits: [weight, adult], birds: chicks, hatches: [Object.assign(from, {chicks})],
    looseWeighings: loose.map(([after, value, sex]): LooseWeighing => ({...weighed(after, value), hatch: from, sex, countsFor: []})),
  })
}
const grown = (book: Logbook): readonly GrowthOfMeasure[] => growthCurves(book, ladderOf(book))
const points = (book: Logbook, sex: Sex = 'male') => grown(book)[0]?.curves.find(curve => curve.sex === sex)?.points ?? []

describe('ageFor(days, traits)', () => {
  it('is the age of a trait in whose days it falls, the nearest of two', () => {
    expect([129, 130, 150, 151].map(days => ageFor(days, [weight]))).toEqual([140, 140, 140, 140])
    expect([307, 308, 420].map(days => ageFor(days, [weight, adult]))).toEqual([273, 364, 364])
    expect(ageFor(145, [{atAge: 140, window: 10}, {atAge: 150, window: 10}])).toBe(140)
  })

  it('is else the nearest by ratio of the fixed ages, then of whole years', () => {
    expect([0, 7, 9, 11, 56, 58, 90, 180, 364, 500, 700, 1100, 1470].map(days => ageFor(days, []))).toEqual([0, 7, 7, 14, 56, 56, 84, 182, 364, 546, 728, 1092, 1456])
  })
})

describe('growthCurves(book, ladder)', () => {
  // chicks of diet 3 of the R data set ChickWeight (Crowder & Hand 1990), chicks 31 to 40 at 21 days; mean 270.3 and sd 71.62 as R prints them (from memory)
  const DIET3 = [256, 305, 147, 341, 373, 220, 178, 290, 272, 321]

  it('gives count, mean, SD and Student’s interval', () => {
    const [point] = points(bookOf(DIET3.map(value => ({sex: 'male', weighings: [[21, value]]}))))
    expect(point).toMatchObject({age: 21, n: 10})
    expectClose(point?.mean ?? NaN, 270.3, 1e-9)
    expectClose(point?.sd ?? NaN, 71.6225, 5e-4)
    // t of 9 degrees at 97.5 % is 2.262157 in every table
    expectClose(point?.interval?.low ?? NaN, 270.3 - (2.262157 * 71.6225) / Math.sqrt(10), 5e-3)
  })

  it('counts a bird once about an age, on the nearest day', () => {
    expect(points(bookOf([{sex: 'male', weighings: [[54, 700], [57, 800], [140, 2000]]}])).map(({age, n, mean}) => [age, n, mean])).toEqual([[56, 1, 800], [140, 1, 2000]])
  })

  it('takes all birds of a hatch weighed without bands on one day, and one day alone about an age', () => {
    const book = bookOf([], [[56, 600, 'female'], [56, 700, 'female'], [60, 900, 'female'], [56, 800, 'male']])
    expect(points(book, 'female').map(({age, n, mean}) => [age, n, mean])).toEqual([[56, 2, 650]])
    expect(points(book).map(({n, interval}) => [n, interval])).toEqual([[1, null]])
  })

  it('leaves out and counts what has no sex or no age', () => {
    const [found] = grown(bookOf([{sex: 'unknown', weighings: [[56, 700]]}, {sex: 'male', weighings: [[56, 700], [140, 2000]], hatched: null}, {sex: 'female', weighings: [[56, 700]]}]))
    expect(found).toMatchObject({measure: 'weight', ages: [56], leftOut: {sexUnknown: 1, ageUnknown: 2}, curves: [{step: 'F2', sex: 'female'}]})
    expect(found?.traits).toEqual([weight, adult])
  })

  it('says nothing where nothing was weighed', () => expect(grown(bookOf([]))).toEqual([]))

  it('loses and doubles no bird: at each age as many as birds with a weighing there, and means between the least and the most', () => {
    const one = fc.record({sex: fc.constantFrom<Sex>('male', 'female', 'unknown'), step: fc.constantFrom(F1, F2), weighings: fc.array(fc.tuple(fc.nat(900), fc.integer({min: 0, max: 4000})), {maxLength: 4})})
    fc.assert(fc.property(fc.array(one, {maxLength: 30}), all => {
      const book = bookOf(all)
      all.forEach(({step}, index) => Object.assign(book.birds[index] ?? {}, {step}))
      for (const {curves} of grown(book)) for (const {step, sex, points: own} of curves) for (const {age, n, mean, sd, interval} of own) {
        const there = all.filter(each => each.sex === sex && each.step.label === step).flatMap(({weighings}) => {
          const near = weighings.filter(([after, value]) => value > 0 && ageFor(after, [weight, adult]) === age)
          return near.length === 0 ? [] : [near.map(([, value]) => value)]
        })
        expect(n).toBe(there.length)
        expect(mean).toBeGreaterThanOrEqual(Math.min(...there.flat()) - 1e-9)
        expect(mean).toBeLessThanOrEqual(Math.max(...there.flat()) + 1e-9)
        expect(sd === null).toBe(n === 1)
        expect(interval === null).toBe(n < 5)
        if (interval) expect(interval.low <= mean && mean <= interval.high).toBe(true)
      }
    }))
  })
})
