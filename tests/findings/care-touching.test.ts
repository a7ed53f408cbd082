import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {careTouching} from '../../src/findings/care-touching.ts'
import type {Bird, CareEntry, Hatch, Pen} from '../../src/logbook/book.ts'
import {isoDay} from '../../src/records/dates.ts'
import {at, bird, date, hatch, logbook, pen, stay, weekOld} from '../pages/small-logbook.ts'

const entry = (id: string, on: string, more: Partial<CareEntry> = {}): CareEntry =>
  ({at, body: '', id, care: 'feed', on: date(on), to: null, pens: [], birds: [], hatches: [], with: null, eggsWithheldUntil: null, meatWithheldUntil: null, ...more})
const ids = (entries: readonly CareEntry[]) => entries.map(({id}) => id)

const cock = bird('H-1', 'male'), hen = bird('B-1', 'female'), stranger = bird('B-9', 'female')
const A = pen('2024-A', 2024, {males: [stay(cock)], females: [stay(hen)]}), B = pen('2024-B', 2024)
// set on 2 March: laid from 17 February on; hatched on 23 March
const eggs = hatch('2024-01', {pens: [{pen: A, eggs: null}], set: date('2024-03-02'), on: date('2024-03-23')}), other = hatch('2024-02', {pens: [{pen: B, eggs: null}], set: date('2024-03-02'), on: date('2024-03-23')})
const chick = bird('24-001', 'male', {hatch: eggs, hatched: eggs.on})
const touching = (...care: CareEntry[]) => careTouching(logbook('2025-01-01', {care, pens: [A, B], hatches: [eggs, other], birds: [cock, hen, stranger, chick]}))

describe('what bore on the eggs of a hatch', () => {
  it('touched its breeders from a fortnight before the first egg to the last', () => {
    const days = ['2024-02-02', '2024-02-03', '2024-03-02', '2024-03-03']
    for (const of of [{pens: [A]}, {birds: [hen]}, {birds: [cock]}]) expect(ids(touching(...days.map(on => entry(on, on, of))).eggsOf(eggs))).toEqual(['2024-02-03', '2024-03-02'])
  })
  it('touched everybody, from the first egg to the hatch', () => {
    const days = ['2024-02-16', '2024-02-17', '2024-03-23', '2024-03-24']
    expect(ids(touching(...days.map(on => entry(on, on))).eggsOf(eggs))).toEqual(['2024-02-17', '2024-03-23'])
  })
  it('was done to the setting itself, until it hatched', () => {
    const days = ['2024-03-02', '2024-03-23', '2024-03-24']
    expect(ids(touching(...days.map(on => entry(on, on, {hatches: [eggs]}))).eggsOf(eggs))).toEqual(['2024-03-02', '2024-03-23'])
  })
  it('is nothing of other pens, birds and hatches', () => {
    const found = touching(entry('pen', '2024-02-20', {pens: [B]}), entry('bird', '2024-02-20', {birds: [stranger]}), entry('hatch', '2024-03-10', {hatches: [other]}))
    expect(found.eggsOf(eggs)).toEqual([])
    expect(ids(found.eggsOf(other))).toEqual(['pen', 'hatch'])
  })
  it('goes by the days written, and where none are, counts back from the hatch', () => {
    const unset = hatch('3', {pens: [{pen: A, eggs: null}], on: date('2024-03-23')}), laid = hatch('4', {...unset, id: '4', laid: {from: date('2024-03-01').first, to: date('2024-03-02').first}}), only = hatch('5', {pens: [{pen: A, eggs: null}], set: date('2024-03-02')})
    const found = touching(entry('early', '2024-02-10', {pens: [A]}), entry('late', '2024-02-20', {pens: [A]}), entry('gale', '2024-03-23'))
    expect([unset, laid, only].map(one => ids(found.eggsOf(one)))).toEqual([['early', 'late', 'gale'], ['late', 'gale'], ['early', 'late', 'gale']])
  })
  it('of a hatch without a day is only what names it', () => {
    const undated = hatch('6', {pens: [{pen: A, eggs: null}]}), found = touching(entry('pen', '2024-02-20', {pens: [A]}), entry('gale', '2024-03-10'), entry('it', '2024-03-11', {hatches: [undated]}))
    expect([ids(found.eggsOf(undated)), ids(found.chicksOf(undated, 56))]).toEqual([['it'], []])
  })
})

describe('what bore on the chicks of a hatch', () => {
  it('touched them, their hatch or everybody from the day after the hatch to the age', () => {
    const days = ['2024-03-23', '2024-03-24', '2024-04-02', '2024-04-03']
    for (const of of [{hatches: [eggs]}, {birds: [chick]}, {}]) expect(ids(touching(...days.map(on => entry(on, on, of))).chicksOf(eggs, 10))).toEqual(['2024-03-24', '2024-04-02'])
    expect(touching(entry('hers', '2024-04-01', {birds: [hen]}), entry('pen', '2024-04-01', {pens: [A]})).chicksOf(eggs, 56)).toEqual([])
  })
})

describe('an entry', () => {
  it('that lasted meets the days it shares with what is asked', () => {
    const days = {from: date('2024-03-10').first, to: date('2024-03-12').first}
    const lasting = [['a', '2024-03-01', '2024-03-09'], ['b', '2024-03-01', '2024-03-10'], ['c', '2024-03-01', '2024-05-01'], ['d', '2024-03-12', '2024-05-01'], ['e', '2024-03-13', '2024-05-01']] as const
    expect(ids(touching(...lasting.map(([id, on, to]) => entry(id, on, {to: date(to), pens: [A]})), entry('f', '2024-03', {pens: [A]})).onPen(A, [], days))).toEqual(['b', 'c', 'f', 'd'])
  })
  it('that names a bird, her pen and her hatch is told once, and the oldest first', () => {
    const all = {pens: [A], birds: [hen, cock, hen], hatches: [eggs]}
    const found = touching(entry('b', '2024-03-01', all), entry('a', '2024-03-01', all), entry('c', '2024-02-20', all))
    expect([ids(found.eggsOf(eggs)), ids(found.onPen(A, [hen, cock], {from: 0, to: 99_999}))]).toEqual([['c', 'a', 'b'], ['c', 'a', 'b']])
  })
  it('there is none where nothing was written, or nothing is asked about', () => {
    const none = careTouching(weekOld()), always = {from: 0, to: 99_999}
    expect([none.eggsOf(eggs), none.chicksOf(eggs, 56), none.onPen(A, [hen], always), touching(entry('pen', '2024-02-20', {pens: [A]})).onPen(null, [], always)]).toEqual([[], [], [], []])
  })
  it('is found where asking every entry finds it, whatever was done to whom', () => {
    const FIRST = date('2024-02-01').first, some = <Thing>(...of: readonly Thing[]) => fc.subarray([...of])
    const care = fc.array(fc.record({day: fc.nat(120), days: fc.nat(30), pens: some<Pen>(A, B), birds: some<Bird>(cock, hen, stranger, chick), hatches: some<Hatch>(eggs, other), none: fc.boolean()}), {maxLength: 8})
    fc.assert(fc.property(care, fc.nat(80), fc.nat(60), (drawn, age, from) => {
      const all = drawn.map(({day, days, none, ...of}, place) => entry(`care-${place}`, isoDay(FIRST + day), {to: date(isoDay(FIRST + day + days)), ...(none ? {} : of)})), found = touching(...all)
      const told = (is: (one: CareEntry) => boolean) => all.filter(is).map(({id}) => id).sort()
      const meets = (one: CareEntry, first: number, last: number) => Array.from({length: last - first + 1}, (_, place) => first + place).some(day => day >= one.on.first && day <= (one.to?.last ?? 0))
      const everybody = ({pens, birds, hatches}: CareEntry) => pens.length + birds.length + hatches.length === 0
      const set = date('2024-03-02').first, on = date('2024-03-23').first
      expect(ids(found.eggsOf(eggs)).sort()).toEqual(told(one => ((one.pens.includes(A) || one.birds.includes(cock) || one.birds.includes(hen)) && meets(one, set - 28, set)) || (one.hatches.includes(eggs) && one.on.first <= on) || (everybody(one) && meets(one, set - 14, on))))
      expect(ids(found.chicksOf(eggs, age)).sort()).toEqual(told(one => (one.hatches.includes(eggs) || one.birds.includes(chick) || everybody(one)) && meets(one, on + 1, on + age)))
      expect(ids(found.onPen(B, [stranger], {from: FIRST + from, to: FIRST + from + age})).sort()).toEqual(told(one => (one.pens.includes(B) || one.birds.includes(stranger) || everybody(one)) && meets(one, FIRST + from, FIRST + from + age)))
      const firsts = found.eggsOf(eggs).map(one => one.on.first)
      expect(firsts).toEqual([...firsts].sort((a, b) => a - b))
    }), {numRuns: 60})
  })
})
