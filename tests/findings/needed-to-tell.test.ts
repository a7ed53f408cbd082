import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import type {Chick} from '../../src/findings/ladder-chicks.ts'
import {neededToTell, type NeededToTell} from '../../src/findings/needed-to-tell.ts'
import {study} from '../../src/findings/study.ts'
import type {Logbook, Step} from '../../src/logbook/book.ts'
import {at, bird, comb, date, F1, F2, hatch, logbook, looks, parents, score, trait, weekOld, weight} from '../pages/small-logbook.ts'
import {evenBook, F3, LADDER} from './evenness-book.ts'

const shank = trait('shank', 'Shank', {kind: 'measured', unit: 'mm', measure: 'shank', atAge: 140, window: 10})

interface Season {
  readonly year: number
  readonly step: Step
  /** cocks, each with as many chicks as there are weights; all scored pea unless `scored` says otherwise */
  readonly cocks: number
  readonly grams?: readonly number[]
  readonly shanks?: readonly number[]
  readonly scored?: boolean
  /** of the other sex, reared with them */
  readonly hens?: readonly number[]
}

function bookOf(seasons: readonly Season[]): Logbook {
  const made = seasons.map(({year, step, cocks, grams = [], shanks = [], scored = true, hens = []}) => {
    const on = date(`${year}-03-01`), due = {text: '', first: on.first + 140, last: on.first + 140}, from = hatch(`${year}-${step.label}`, {on, step})
    const sires = Array.from({length: cocks}, (_, place) => bird(`${year}-${step.label}-C${place}`, 'male'))
    const chicks = sires.flatMap((sire, family) => Array.from({length: Math.max(1, grams.length, shanks.length) + hens.length}, (_, place) => {
      const hen = place >= Math.max(1, grams.length, shanks.length)
      const heavy = hen ? hens[place - Math.max(1, grams.length, shanks.length)] : grams[place], long = hen ? undefined : shanks[place]
      return bird(`${from.id}-${family}-${place}`, hen ? 'female' : 'male', {
        hatched: on, hatch: from, step, strain: null, parentage: parents([[sire, 1]], null), looks: scored ? looks(score(comb, 'pea')) : new Map(),
        weighings: [...(heavy === undefined ? [] : [{measure: 'weight', value: heavy, on: due, at}]), ...(long === undefined ? [] : [{measure: 'shank', value: long, on: due, at}])],
      })
    }))
    return {from: Object.assign(from, {chicks, hatched: chicks.length}), birds: [...sires, ...chicks]}
  })
  return logbook('2026-06-01', {traits: [comb, weight, shank], birds: made.flatMap(({birds}) => birds), hatches: made.map(({from}) => from), project: LADDER})
}

const of = (...seasons: readonly Season[]): NeededToTell | null => neededToTell(study(bookOf(seasons)).summaries)
const EVEN = [1990, 1995, 2000, 2005, 2010], UNEVEN = [1600, 1800, 2000, 2200, 2400]

/** Families with a chick judged. Cocks that may be the father of one chick, judged or not, are joined over and over till nothing joins any more. */
function familiesJudged(chicks: readonly Chick[], judged: (chick: Chick) => boolean): number {
  const namesOf = ({parentage: {sires}, hatch: from}: Chick) => (sires.length > 0 ? sires.map(({bird: {id}}) => id) : [`of ${from?.id}`]), named = new Set(chicks.filter(judged).flatMap(namesOf))
  let sets = chicks.map(namesOf)
  for (let before = Infinity; sets.length < before;) {
    before = sets.length
    sets = sets.reduce<string[][]>((kept, own) => [...kept.filter(other => !other.some(id => own.includes(id))), [...own, ...kept.filter(other => other.some(id => own.includes(id))).flat()]], [])
  }
  return sets.filter(own => own.some(id => named.has(id))).length
}

describe('neededToTell(summaries)', () => {
  it('gives by hand the birds that tell a fifth less: ((1.9600 + 0.8416)/ln 0.8)² = 157.6, and five cocks', () => {
    const found = of({year: 2024, step: F2, cocks: 2, grams: EVEN}, {year: 2025, step: F3, cocks: 3, grams: EVEN})
    expect(found).toMatchObject({season: '2025', families: {have: 2, need: 5}, spread: {trait: {id: 'weight-20'}, have: 15, ratio: 0.8, need: 158}})
    expect(found?.spread?.need).toBe(Math.ceil(((1.959964 + 0.841621) / Math.log(0.8)) ** 2))
  })

  it('speaks of the last season, held against the one before it', () => {
    expect(of({year: 2023, step: F2, cocks: 1}, {year: 2024, step: F2, cocks: 4}, {year: 2025, step: F3, cocks: 6})).toMatchObject({season: '2025', families: {have: 4}})
  })

  it('counts the cocks of the poorer season, whichever that is', () => {
    const have = (before: number, after: number) => of({year: 2024, step: F2, cocks: before}, {year: 2025, step: F3, cocks: after})?.families?.have ?? null
    expect([have(5, 1), have(1, 5), have(4, 6), have(5, 5), have(7, 6)]).toEqual([1, 1, 4, null, null])
  })

  it('asks for no birds where the change is told, nothing was measured, or only the season before was', () => {
    expect(of({year: 2024, step: F2, cocks: 5, grams: UNEVEN}, {year: 2025, step: F3, cocks: 5, grams: EVEN})).toEqual({season: '2025', families: null, spread: null})
    // told of both sexes together, though cocks alone are as they were
    expect(of({year: 2024, step: F2, cocks: 6, grams: EVEN, hens: UNEVEN}, {year: 2025, step: F3, cocks: 6, grams: EVEN, hens: EVEN})?.spread).toBeNull()
    expect(of({year: 2024, step: F2, cocks: 5}, {year: 2025, step: F3, cocks: 5})?.spread).toBeNull()
    expect(of({year: 2024, step: F2, cocks: 5, grams: EVEN}, {year: 2025, step: F3, cocks: 5})?.spread).toBeNull()
  })

  it('names the measure of most birds, and counts nobody in a class of fewer than five', () => {
    const both = (shanks: readonly number[]) => of({year: 2024, step: F2, cocks: 2, grams: EVEN, shanks: [80, 81]}, {year: 2025, step: F3, cocks: 2, grams: EVEN.slice(0, 3), shanks})?.spread
    expect(both([80, 81, 82, 83])).toMatchObject({trait: {id: 'shank'}, have: 8})
    expect(both([])).toMatchObject({trait: {id: 'weight-20'}, have: 6})
    // one bird measured of each cock: two in a class are none
    expect(of({year: 2024, step: F2, cocks: 2, grams: EVEN}, {year: 2025, step: F3, cocks: 2, grams: [2000]})?.spread).toMatchObject({have: 0, need: 158})
  })

  it('cannot tell of birds all of one weight, however many', () => {
    const alike = Array<number>(40).fill(2000)
    expect(of({year: 2024, step: F2, cocks: 5, grams: alike}, {year: 2025, step: F3, cocks: 5, grams: alike})).toMatchObject({families: null, spread: {have: 200, need: 158}})
  })

  it('asks for no cocks where nobody was scored, and passes over a season not mated inside the line', () => {
    expect(of({year: 2024, step: F2, cocks: 2, scored: false, grams: EVEN}, {year: 2025, step: F3, cocks: 2, scored: false, grams: EVEN})).toMatchObject({families: null, spread: {have: 10}})
    expect(of({year: 2023, step: F2, cocks: 2}, {year: 2024, step: F3, cocks: 3}, {year: 2025, step: F1, cocks: 6})).toMatchObject({season: '2024', families: {have: 2}})
  })

  it('has nothing to say of a week-old project, of one season, or of crosses alone', () => {
    expect([neededToTell(study(weekOld()).summaries), of(), of({year: 2025, step: F2, cocks: 3}), of({year: 2024, step: F1, cocks: 3}, {year: 2025, step: F1, cocks: 3}), of({year: 2024, step: F1, cocks: 3}, {year: 2025, step: F2, cocks: 3}), neededToTell({seasons: []})]).toEqual([null, null, null, null, null, null])
  })

  it('agrees with cocks and birds counted from the records', () => {
    let spoken = 0
    fc.assert(fc.property(evenBook, book => {
      for (const from of book.hatches) Object.assign(from, {pens: []})
      const {summaries, trueBred} = study(book), found = neededToTell(summaries)
      if (!found) return
      spoken++
      const chicks = book.birds.filter(one => one.step.interSe >= 1 && one.hatch && one.hatch.id.startsWith(found.season))
      const classes: Record<string, number> = {}
      for (const {sex, hatch: from, hatched, weighings: [weighing]} of chicks) {
        if (sex !== 'unknown' && from && hatched && weighing && Math.abs(weighing.on.first - hatched.first - 140) <= 10) classes[`${sex}/${from.rearing}`] = 1 + (classes[`${sex}/${from.rearing}`] ?? 0)
      }
      // weight is the one measure of these books
      if (found.spread) expect([found.spread.trait.id, found.spread.have]).toEqual([weight.id, Object.values(classes).filter(n => n >= 5).reduce((sum, n) => sum + n, 0)])
      else expect(Object.keys(classes).length === 0 || Object.values(classes).some(n => n >= 5)).toBe(true)
      const inside = [...trueBred.verdicts.keys()].filter(({step}) => step.interSe >= 1)
      const sires = (year: string) => familiesJudged(inside.filter(chick => chick.hatch?.id.startsWith(year)), chick => /right|off/.test(trueBred.verdicts.get(chick)?.is ?? ''))
      const before = inside.flatMap(({hatch: from}) => (from && from.id.slice(0, 4) < found.season ? [from.id.slice(0, 4)] : [])).sort().at(-1) ?? ''
      const few = Math.min(sires(found.season), sires(before)), nobody = sires(found.season) + sires(before) === 0
      expect(found.families).toEqual(nobody || few >= 5 ? null : {have: few, need: 5})
    }), {numRuns: 25})
    expect(spoken).toBeGreaterThan(3)
  })
})
