import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {ladderOf} from '../../src/findings/ladder.ts'
import {spreadOfMeasures, type SpreadOfMeasures} from '../../src/findings/spread.ts'
import type {Bird, Logbook} from '../../src/logbook/book.ts'
import {looseWeighings} from '../../src/logbook/weighings.ts'
import {isoDay} from '../../src/records/dates.ts'
import {expectClose} from '../expect-close.ts'
import {bird, date, F2, hatch, logbook, weight} from '../pages/small-logbook.ts'
import {drawnBook, turned} from './drawn-book.ts'

const spreads = (book: Logbook): SpreadOfMeasures => spreadOfMeasures(book, ladderOf(book))

/** The slow twin, from the raw weighings: classes as text keys, sums written out. */
function twin(book: Logbook, step: string, sex: 'male' | 'female' | 'all') {
  const classes: Record<string, number[]> = {}
  for (const one of book.birds) {
    const {hatch: from, hatched, weighings: [weighing]} = one
    if (one.step.label !== step || one.step.kind === 'strain' || one.sex === 'unknown' || (sex !== 'all' && one.sex !== sex) || !from || !hatched || !weighing) continue
    if (Math.abs(weighing.on.first - hatched.first - 140) <= 10) (classes[`${one.sex}/${from.rearing}`] ??= []).push(weighing.value)
  }
  const large = Object.values(classes).filter(values => values.length > 4)
  const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0)
  const mean = (values: readonly number[]): number => sum(values) / values.length
  const variance = (values: readonly number[]): number => sum(values.map(value => (value - mean(values)) ** 2)) / (values.length - 1)
  const freedom = sum(large.map(values => values.length - 1))
  return {
    n: large.flat().length, mean: mean(large.flat()), sd: Math.sqrt(sum(large.map(values => (values.length - 1) * variance(values))) / freedom),
    cv: Math.sqrt(sum(large.map(values => ((values.length - 1) * variance(values)) / mean(values) ** 2)) / freedom),
    inside: sum(large.map(values => values.filter(value => 10 * Math.abs(value * values.length - sum(values)) <= sum(values)).length)),
  }
}

describe('spreadOfMeasures(book)', () => {
  it('agrees with a slow recount', () => {
    fc.assert(fc.property(drawnBook, book => {
      for (const {step, sex, spread} of spreads(book).rows) {
        const slow = twin(book, step, sex)
        if (spread.kind === 'cannot-say') {
          expect(slow.n).toBe(0)
          expect(spread.have).toBeLessThan(spread.need)
          continue
        }
        expect([spread.n, spread.within10.count]).toEqual([slow.n, slow.inside])
        expectClose(spread.mean, slow.mean, 1e-9)
        expectClose(spread.sd, slow.sd, 1e-9)
        expectClose(spread.cv, slow.cv, 1e-12)
      }
    }), {numRuns: 80})
  })

  it('does not mind the order of the records', () => {
    fc.assert(fc.property(drawnBook, book => {
      const figures = (of: Logbook) => spreads(of).rows.map(({step, sex, spread}) => ({step, sex, spread}))
      const here = figures(book), there = figures(turned(book))
      expect(there.length).toBe(here.length)
      there.forEach(({step, sex, spread}, index) => {
        const other = here[index]
        expect([other?.step, other?.sex, other?.spread.kind, other?.spread.leftOut]).toEqual([step, sex, spread.kind, spread.leftOut])
        if (spread.kind === 'spread' && other?.spread.kind === 'spread') expectClose(spread.cv, other.spread.cv, 1e-12)
      })
    }), {numRuns: 40})
  })

  it('counts what is measured: n, and every reason for leaving a bird out', () => {
    fc.assert(fc.property(drawnBook, book => {
      for (const {step, sex, spread, values} of spreads(book).rows) {
        if (sex === 'all') continue
        const left = (why: string): number => spread.leftOut.find(each => each.why === why)?.count ?? 0
        expect(values.filter(({counted}) => counted).length).toBe(spread.kind === 'spread' ? spread.n : 0)
        expect(values.filter(({counted}) => !counted).length).toBe(left('small-class'))
        const birds = book.birds.filter(one => one.step.label === step && one.sex === sex).length
        expect(values.length + left('outside-window') + left('unscored') + left('lost-before-scoring') + left('too-young')).toBe(birds)
      }
    }), {numRuns: 60})
  })

  const on = date('2024-03-23')
  const due = on.first + 140
  const weighing = (value: number, off: number): Bird['weighings'][number] => {
    const day = date(isoDay(due + off))
    return {measure: 'weight', value, on: day, at: bird('x', 'male').at}
  }
  const five = (weighings: readonly (readonly Bird['weighings'][number][])[], more: Partial<Bird> = {}): Logbook => {
    const from = hatch('2024-03', {on, step: F2})
    const chicks = weighings.map((own, index) => bird(`24-${index}`, 'male', {hatched: on, hatch: from, step: F2, strain: null, weighings: own, ...more}))
    return logbook('2025-10-30', {traits: [weight], birds: chicks, hatches: [Object.assign(from, {chicks})]})
  }
  const only = (book: Logbook) => spreads(book).rows.find(({sex}) => sex === 'male')

  it('takes the weighing nearest the age, the earlier of two equally near', () => {
    const same = [2000, 2100, 2200, 2300].map(value => [weighing(value, 0)])
    expect(only(five([[weighing(1, -9), weighing(2400, -2), weighing(9999, 2), weighing(7, 8)], ...same]))?.values.map(({value}) => value)).toEqual([2400, 2000, 2100, 2200, 2300])
  })

  it('takes a weighing on the window’s last day and none a day later', () => {
    const same = [2000, 2100, 2200, 2300, 2400].map(value => [weighing(value, 10)])
    const found = only(five([...same, [weighing(3000, 11)], [weighing(3000, -11)]]))?.spread
    expect(found?.kind === 'spread' && found.n).toBe(5)
    expect(found?.leftOut).toEqual([{count: 2, why: 'outside-window'}])
  })

  it('uses no weighing of a bird whose hatch day is not known', () => {
    const same = [2000, 2100, 2200, 2300, 2400].map(value => [weighing(value, 0)])
    expect(only(five(same, {hatched: date('2024-03')}))).toBeUndefined()
  })

  it('says too few of four birds, and that four were there', () => {
    const found = only(five([2000, 2100, 2200, 2300].map(value => [weighing(value, 0)])))
    expect(found?.spread).toMatchObject({kind: 'cannot-say', why: 'too-few', have: 4, need: 5, leftOut: [{count: 4, why: 'small-class'}]})
    expect(found?.values.length).toBe(4)
  })

  it('counts birds weighed without bands with their hatch, each weigh day once', () => {
    const book = five([[weighing(2000, 0)], [weighing(2100, 0)]])
    const [from] = book.hatches
    if (!from) throw new Error('no hatch')
    const loose = [[2200, 0], [2300, 0], [2400, 0], [2150, 3], [2250, 3]].map(([value, off]) => ({...weighing(value ?? 0, off ?? 0), hatch: from, sex: 'male' as const}))
    const found = only({...book, looseWeighings: looseWeighings(loose, book.traits)})
    expect(found?.spread.kind === 'spread' && [found.spread.n, found.spread.mean]).toEqual([5, 2200])
    expect(found?.values.filter(({bird: banded}) => banded === null).length).toBe(3)
  })
})
