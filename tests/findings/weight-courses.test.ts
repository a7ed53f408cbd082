import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {weighedChicks, weightAtDay, weightCourses, weightMeasures, type WeightCourse} from '../../src/findings/weight-courses.ts'
import type {Bird, Hatch, Logbook, Sex, Weighing} from '../../src/logbook/book.ts'
import {expectClose} from '../expect-close.ts'
import {at, bird, comb, date, F1, hatch, logbook, smallBook, trait, weekOld, weight} from '../pages/small-logbook.ts'
import {turned} from './drawn-book.ts'
import {lifeBook} from './life-book.ts'

const setting = hatch('2024-01', {on: date('2024-04-01')})
const weighed = (on: string, value: number, measure = 'weight'): Weighing => ({measure, value, on: date(on), at})
const chick = (id: string, sex: Sex, ...weighings: Weighing[]): Bird => bird(id, sex, {hatch: setting, hatched: setting.on, step: F1, weighings})
const bookOf = (birds: readonly Bird[], more: Partial<Logbook> = {}) => logbook('2025-01-01', {birds, hatches: [setting], ...more})
const courseOf = (book: Logbook, of: Hatch = setting) => weightCourses(book).get(of)?.map(({day, n, mean}) => [day - date('2024-04-01').first, n, mean])
const pounds = trait('weight-grown', 'Weight grown', {kind: 'measured', unit: 'lb', measure: 'heft'}), long = trait('shank', 'Shank', {kind: 'measured', unit: 'mm', measure: 'shank'})

describe('which measures are weights', () => {
  it('are those in a unit of mass, with its grams', () => expect([...weightMeasures([comb, weight, pounds, long])]).toEqual([['weight', 1], ['heft', 453.59237]]))
  it('are none where nothing is weighed', () => expect([weightMeasures([]).size, weightMeasures([comb, long]).size]).toEqual([0, 0]))
})

describe('the weighings of chicks', () => {
  it('are read from the measure called weight, else from the first that is one, in grams', () => {
    const one = chick('1', 'male', weighed('2024-05-01', 2, 'heft'), weighed('2024-06-01', 1500))
    expect(weighedChicks(bookOf([one], {traits: [pounds, weight]})).map(({grams}) => grams)).toEqual([1500])
    expect(weighedChicks(bookOf([one], {traits: [long, pounds]})).map(({grams}) => grams)).toEqual([2 * 453.59237])
    expect(weighedChicks(bookOf([one], {traits: [comb, long]}))).toEqual([])
  })
  it('leave out those of no hatch, of no whole day, and from before the hatch', () => {
    const one = chick('1', 'male', weighed('2024-03-31', 30), weighed('2024-04-01', 40), weighed('2024-05', 300), weighed('2024-05-01', 310))
    const loose = [weighed('2024-03-31', 31), weighed('2024-06', 700), weighed('2024-06-01', 720)].map(each => ({...each, hatch: setting, sex: 'unknown' as const, countsFor: []}))
    expect(weighedChicks(bookOf([one, bird('H-1', 'male', {weighings: [weighed('2024-05-01', 2500)]})], {looseWeighings: loose})).map(({bird: of, grams}) => [of, grams])).toEqual([['1', 40], ['1', 310], [null, 720]])
  })
})

describe('the weight course of a hatch', () => {
  it('has the mean of a day, the oldest first', () => {
    const birds = [chick('1', 'male', weighed('2024-05-31', 900), weighed('2024-05-01', 320)), chick('2', 'female', weighed('2024-05-01', 280), weighed('2024-05-31', 700)), chick('3', 'female', weighed('2024-05-01', 270))]
    // (320 + 280 + 270)/3 thirty days old, (900 + 700)/2 at sixty
    expect(courseOf(bookOf(birds))).toEqual([[30, 3, 290], [60, 2, 800]])
  })
  it('leaves out the days on which one sex alone of two was weighed', () => {
    const birds = [chick('1', 'male', weighed('2024-05-01', 320), weighed('2024-05-31', 900)), chick('2', 'female', weighed('2024-05-01', 280))]
    expect(courseOf(bookOf(birds))).toEqual([[30, 2, 300]])
    const unsexed = {...weighed('2024-05-31', 700), hatch: setting, sex: 'unknown' as const, countsFor: []}
    expect(courseOf(bookOf(birds, {looseWeighings: [unsexed]}))).toEqual([[30, 2, 300], [60, 2, 800]])
  })
  it('keeps every day of a hatch of which one sex was ever weighed', () => {
    expect(courseOf(bookOf([chick('1', 'male', weighed('2024-05-01', 320), weighed('2024-05-31', 900))]))).toEqual([[30, 1, 320], [60, 1, 900]])
    // the sexes on different days: no day on which both were
    expect(courseOf(bookOf([chick('1', 'male', weighed('2024-05-01', 320)), chick('2', 'female', weighed('2024-05-31', 700))]))).toEqual([[30, 1, 320], [60, 1, 700]])
  })
  it('is none where nothing was weighed', () => {
    expect([weightCourses(weekOld()).size, weightCourses(logbook('2025-01-01')).size, weightCourses(bookOf([chick('1', 'male')])).size]).toEqual([0, 0, 0])
    expect([...weightCourses(smallBook()).keys()].map(({id}) => id)).toEqual(['2024-01'])
  })
  it('is what adding up day by day gives, in whatever order the book was written', () => {
    fc.assert(fc.property(lifeBook, book => {
      const courses = weightCourses(book), other = weightCourses(turned(book))
      for (const own of book.hatches) {
        const rows = own.chicks.flatMap(({sex, weighings}) => weighings.map(({value, on}) => ({sex, value, day: on.first}))), days = [...new Set(rows.map(({day}) => day))].sort((a, b) => a - b)
        const has = (day: number, sex: Sex) => rows.some(row => row.day === day && row.sex === sex), both = days.some(day => has(day, 'male') && has(day, 'female'))
        const kept = days.filter(day => !both || has(day, 'unknown') || (has(day, 'male') && has(day, 'female')))
        const course = courses.get(own) ?? []
        expect(course.map(({day}) => day)).toEqual(kept)
        for (const [place, {day, n, mean}] of course.entries()) {
          const values = rows.filter(row => row.day === day).map(({value}) => value)
          expect(n).toBe(values.length)
          expectClose(mean, values.reduce((sum, value) => sum + value, 0) / values.length, 1e-9)
          expectClose(other.get(own)?.[place]?.mean ?? NaN, mean, 1e-9)
        }
      }
    }), {numRuns: 40})
  })
})

describe('the mean weight on a day', () => {
  const course: WeightCourse = [{day: 100, n: 5, mean: 300}, {day: 110, n: 5, mean: 500}, {day: 140, n: 4, mean: 1400}]
  it('lies on the straight line between weigh days, and stands still outside them', () => {
    // a fifth of ten days on the way from 300 to 500, half of thirty from 500 to 1400
    expect([102, 125].map(day => weightAtDay(course, day))).toEqual([340, 950])
    expect([100, 110, 140].map(day => weightAtDay(course, day))).toEqual([300, 500, 1400])
    expect([0, 99, 141, 999].map(day => weightAtDay(course, day))).toEqual([300, 300, 1400, 1400])
  })
  it('is the same on every day of a single weighing, and nought of none', () => {
    expect([50, 100, 150].map(day => weightAtDay(course.slice(0, 1), day))).toEqual([300, 300, 300])
    expect(weightAtDay([], 100)).toBe(0)
  })
  it('never leaves what was weighed, and its daily gains add up to the whole', () => {
    const points = fc.uniqueArray(fc.nat(60), {minLength: 1, maxLength: 6}).chain(days => fc.tuple(...days.sort((a, b) => a - b).map(day => fc.integer({min: 30, max: 3000}).map(mean => ({day, n: 1, mean})))))
    fc.assert(fc.property(points, own => {
      const means = own.map(({mean}) => mean)
      let gain = 0
      for (let day = -5; day < 65; day++) {
        const now = weightAtDay(own, day)
        expect(now >= Math.min(...means) - 1e-9 && now <= Math.max(...means) + 1e-9).toBe(true)
        gain += weightAtDay(own, day + 1) - now
      }
      expectClose(gain, (means.at(-1) ?? NaN) - (means[0] ?? NaN), 1e-6)
    }), {numRuns: 50})
  })
})
