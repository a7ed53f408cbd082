import {describe, expect, it} from 'vitest'
import {careTouching} from '../../src/findings/care-touching.ts'
import {keptOfHatch, rearedAlike, type Kept} from '../../src/findings/reared-alike.ts'
import type {CareEntry} from '../../src/logbook/book.ts'
import {at, bird, date, hatch, logbook, pen, stay} from '../pages/small-logbook.ts'

const entry = (id: string, on: string, more: Partial<CareEntry> = {}): CareEntry =>
  ({at, body: '', id, care: 'feed', on: date(on), to: null, pens: [], birds: [], hatches: [], with: null, eggsWithheldUntil: null, meatWithheldUntil: null, ...more})
const kept = (more: Partial<Kept> = {}): Kept => ({season: 2024, way: 'incubator', machine: 'I1', keeper: null, care: [], ...more})
const told = (one: Kept[], other: Kept[]) => (({verdict, unlike}) => [verdict, ...unlike.map(({what, one: a, other: b}) => `${what}: ${a.join('+')} / ${b.join('+')}`)])(rearedAlike(one, other))

describe('were two groups kept alike?', () => {
  it('yes, where nothing on record differs', () => {
    expect(told([kept(), kept()], [kept()])).toEqual(['alike'])
    expect(rearedAlike([], [])).toMatchObject({verdict: 'alike', unlike: [], untold: 0})
  })
  it('no, by season, way, machine, time of year, age and feed', () => {
    expect(told([kept()], [kept({season: 2025})])).toEqual(['not-alike', 'season: 2024 / 2025'])
    expect(told([kept({way: 'broody', machine: null})], [kept()])).toEqual(['not-alike', 'way: broody / incubator'])
    expect(told([kept()], [kept({machine: 'I2'}), kept()])).toEqual(['not-alike', 'machine: I1 / I1+I2'])
    expect(told([kept({months: ['03'], ages: ['hens']})], [kept({months: ['11'], ages: ['pullets']})])).toEqual(['not-alike', 'months: 03 / 11', 'ages: hens / pullets'])
    expect(told([kept({care: [entry('a', '2024-03', {with: 'Breeder pellets'})]})], [kept()])).toEqual(['not-alike', 'feed: breeder pellets / '])
  })
  it('takes one feed written in two years for the same feed', () => {
    expect(told([kept({care: [entry('a', '2024-03', {with: 'Breeder pellets'})]})], [kept({care: [entry('b', '2025-03', {with: 'breeder pellets'})]})])).toEqual(['alike'])
  })
  it('cannot be told, where nothing differs and it is not written how some were hatched', () => {
    expect(rearedAlike([kept({way: 'not-stated', machine: null})], [kept()])).toMatchObject({verdict: 'not-alike', untold: 1})
    expect(rearedAlike([kept({way: 'not-stated', machine: null}), kept()], [kept()])).toMatchObject({verdict: 'not-told', untold: 1})
  })
})

describe('what was done to whom', () => {
  const hen = bird('B-1', 'female'), A = pen('2024-A', 2024, {females: [stay(hen)]})
  const eggs = hatch('2024-01', {pens: [{pen: A, eggs: null}], set: date('2024-03-02'), on: date('2024-03-23'), machine: 'I1'})
  const chick = bird('24-001', 'male', {hatch: eggs, hatched: eggs.on})
  eggs.chicks = [chick]
  const ids = (care: CareEntry[]) => {
    const touching = careTouching(logbook('2025-01-01', {care, pens: [A], hatches: [eggs], birds: [hen, chick]}))
    return {eggs: touching.eggsOf(eggs).map(({id}) => id), chicks: touching.chicksOf(eggs, 56).map(({id}) => id)}
  }
  it('bears on eggs while they were laid and set, on chicks after they hatched', () => {
    expect(ids([
      entry('breeders', '2024-02-10', {to: date('2024-05-31'), pens: [A]}), entry('last-year', '2023-03-01', {pens: [A]}), entry('her', '2024-02-25', {birds: [hen]}), entry('thermometer', '2024-03-10', {care: 'loss', hatches: [eggs]}),
      entry('cough', '2024-04-20', {care: 'illness', hatches: [eggs]}), entry('his-leg', '2024-05-01', {care: 'illness', birds: [chick]}), entry('gale', '2024-03-15', {care: 'loss'}), entry('grown', '2024-10-05', {care: 'loss'}),
    ])).toEqual({eggs: ['breeders', 'her', 'thermometer', 'gale'], chicks: ['cough', 'his-leg']})
  })
  it('is asked of the eggs alone or of the chicks as well', () => {
    const touching = careTouching(logbook('2025-01-01', {care: [entry('cough', '2024-04-20', {care: 'illness', hatches: [eggs]})], hatches: [eggs]}))
    expect(keptOfHatch(eggs, touching, 'hatch').care).toEqual([])
    expect(keptOfHatch(eggs, touching, 56)).toMatchObject({way: 'incubator', machine: 'I1', season: 2024, care: [{id: 'cough'}]})
  })
  it('touches a pen by itself, by its birds, or everybody', () => {
    const care = [entry('mites', '2024-03-08', {care: 'treatment', pens: [A]}), entry('wing', '2024-03-09', {care: 'illness', birds: [hen]}), entry('gale', '2024-03-10', {care: 'loss'}), entry('later', '2024-07-01', {pens: [A]})]
    const touching = careTouching(logbook('2025-01-01', {care, pens: [A], birds: [hen]})), days = {from: date('2024-03-01').first, to: date('2024-03-31').last}
    expect(touching.onPen(A, [hen], days).map(({id}) => id)).toEqual(['mites', 'wing', 'gale'])
    expect(touching.onPen(null, [], days).map(({id}) => id)).toEqual(['gale'])
  })
})
