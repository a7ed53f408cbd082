import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {FOLLOWED, watchedOf} from '../../src/findings/life-watched.ts'
import type {Leaving} from '../../src/logbook/book.ts'
import type {PartialDate} from '../../src/records/dates.ts'
import {date} from '../pages/small-logbook.ts'

const HOW: readonly Leaving['how'][] = ['died', 'culled', 'sold', 'given', 'lent', 'lost', 'taken']
const left = (how: Leaving['how'], on: string | null): Leaving => ({how, on: on === null ? null : date(on), why: null})
const day = (text: string) => date(text).first

describe('how long a chick was watched', () => {
  it('follows chicks for eight weeks', () => expect(FOLLOWED).toBe(8 * 7))

  it('counts days from the hatch to the leaving, else to the last day of the records', () => {
    const hatched = date('2024-03-23')
    // eight days left of March, 30 of April and 4 of May
    expect(watchedOf({hatched, left: left('died', '2024-05-04')}, day('2025-01-01'))).toEqual({age: 42, died: true})
    expect(watchedOf({hatched, left: null}, day('2024-05-04'))).toEqual({age: 42, died: false})
  })

  it('takes a death alone for a death', () => {
    const told = HOW.map(how => watchedOf({hatched: date('2024-03-01'), left: left(how, '2024-03-31')}, day('2025-01-01')))
    expect(told).toEqual(HOW.map(how => ({age: 30, died: how === 'died'})))
  })

  it('takes the middle of what a date leaves open', () => {
    // 1 to 31 March: the sixteenth; 1 to 30 April: the fifteenth, the half day thrown away
    expect(watchedOf({hatched: date('2024-03'), left: left('sold', '2024-04')}, day('2025-01-01'))).toEqual({age: 30, died: false})
    expect(watchedOf({hatched: date('2024-03'), left: null}, day('2024-03-20'))).toEqual({age: 4, died: false})
  })

  it('is never younger than nothing, where the dates leave that open', () => {
    expect(watchedOf({hatched: date('2024-03'), left: left('died', '2024-03-02')}, day('2025-01-01'))).toEqual({age: 0, died: true})
    expect(watchedOf({hatched: date('2024-03'), left: null}, day('2024-03-05'))).toEqual({age: 0, died: false})
  })

  it('says nothing of a chick whose days are not written, or that is not hatched yet', () => {
    const asOf = day('2024-06-01')
    expect(watchedOf({hatched: null, left: left('died', '2024-04-01')}, asOf)).toBeNull()
    expect(HOW.map(how => watchedOf({hatched: date('2024-03-01'), left: left(how, null)}, asOf))).toEqual(HOW.map(() => null))
    expect(watchedOf({hatched: date('2024-06-02'), left: null}, asOf)).toBeNull()
    expect(watchedOf({hatched: date('2024-06-01'), left: null}, asOf)).toEqual({age: 0, died: false})
  })

  it('is what counting the days one by one gives, and moves with the calendar', () => {
    const span = fc.record({first: fc.integer({min: 0, max: 400}), open: fc.nat(365)}).map(({first, open}): PartialDate => ({text: '', first, last: first + open}))
    const middleOf = ({first, last}: PartialDate) => {
      let [low, high] = [first, last]
      while (high - low > 1) [low, high] = [low + 1, high - 1]
      return low
    }
    fc.assert(fc.property(span, fc.option(span, {nil: null}), fc.constantFrom(...HOW), fc.integer({min: 400, max: 1200}), fc.integer({min: 0, max: 9000}), (hatched, on, how, asOf, later) => {
      const leaving: Leaving | null = on && {how, on, why: null}, end = on ? middleOf(on) : asOf
      let age = 0
      for (let at = middleOf(hatched); at < end; at++) age++
      expect(watchedOf({hatched, left: leaving}, asOf)).toEqual({age, died: on !== null && how === 'died'})
      const moved = (date: PartialDate): PartialDate => ({text: '', first: date.first + later, last: date.last + later})
      expect(watchedOf({hatched: moved(hatched), left: on && {how, on: moved(on), why: null}}, asOf + later)?.age).toBe(age)
    }), {numRuns: 100})
  })
})
