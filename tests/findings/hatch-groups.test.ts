import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {hatchGroups, type HatchGroup} from '../../src/findings/hatch-groups.ts'
import type {Hatch, Logbook, Pen, Step} from '../../src/logbook/book.ts'
import {bird, date, F1, F2, fell, hatch, holm, logbook, pen, strainStep, weekOld} from '../pages/small-logbook.ts'
import {BC1, drawnBook, turned} from './drawn-book.ts'
import {lifeBook} from './life-book.ts'

const hen = bird('B-1', 'female')
const [A23, A24, B24] = [pen('2023-A', 2023), pen('2024-A', 2024), pen('2024-B', 2024)]
const of = (...pens: readonly Pen[]): Hatch['pens'] => pens.map(each => ({pen: each, eggs: null}))
const joined: Step = {label: 'Joined', kind: 'named', to: null, strains: [holm, fell], backcrosses: 1, interSe: 0, depth: 4}, mixed: Step = {...joined, label: 'mixed', kind: 'mixed'}
const bookOf = (...hatches: readonly Hatch[]): Logbook => logbook('2025-06-01', {hatches})
const told = (groups: readonly HatchGroup[]) => groups.map(({by, name, hatches}) => `${by} ${name}: ${hatches.map(({id}) => id).join(' ')}`)
const pairsOf = (book: Logbook) => hatchGroups(book).pairs.map(({one, other}) => `${told([one])[0]} / ${told([other])[0]}`)

describe('which hatches are judged together', () => {
  it('are those of a step, a season, a way and a pen, as sorted by hand', () => {
    const book = bookOf(
      hatch('5', {pens: of(B24), step: BC1, machine: 'I1'}), hatch('1', {pens: of(A23), step: F1, machine: 'I1'}), hatch('2', {pens: of(A23), step: F1, broody: hen}),
      hatch('3', {pens: of(A24), step: F2, machine: 'I2'}), hatch('4', {pens: of(A24, B24), step: F2}), hatch('6', {pens: of(A24), step: strainStep(holm), machine: 'I1'}),
    )
    const {steps, seasons, ways, pens, pairs} = hatchGroups(book)
    expect(told(steps)).toEqual(['step F1: 1 2', 'step F2: 3 4', 'step BC1: 5'])
    expect(told(seasons)).toEqual(['season 2023: 1 2', 'season 2024: 3 4 5'])
    // of the fourth it is not written how it was hatched, and its eggs are of two pens
    expect(told(ways)).toEqual(['way broody: 2', 'way incubator: 1 3 5'])
    expect(told(pens)).toEqual(['pen 2023-A: 1 2', 'pen 2024-A: 3', 'pen 2024-B: 5'])
    expect(pairs).toHaveLength(5)
    expect(pairsOf(book)).toEqual(['step F2: 3 4 / step F1: 1 2', 'step BC1: 5 / step F2: 3 4', 'season 2024: 3 4 5 / season 2023: 1 2', 'way broody: 2 / way incubator: 1', 'pen 2024-B: 5 / pen 2024-A: 3'])
  })

  it('takes a hen for the way where a machine is written as well', () => {
    expect(told(hatchGroups(bookOf(hatch('1', {broody: hen, machine: 'I1'}))).ways)).toEqual(['way broody: 1'])
  })

  it('sets hens beside machines of their own seasons only', () => {
    expect(pairsOf(bookOf(hatch('1', {pens: of(A23), broody: hen}), hatch('2', {pens: of(A24), machine: 'I1'}))).filter(pair => pair.startsWith('way'))).toEqual([])
  })

  it('sets each of three pens of a season beside the two others', () => {
    const C24 = pen('2024-C', 2024)
    expect(pairsOf(bookOf(hatch('1', {pens: of(A24)}), hatch('2', {pens: of(B24)}), hatch('3', {pens: of(C24)}))))
      .toEqual(['pen 2024-A: 1 / pen others: 2 3', 'pen 2024-B: 2 / pen others: 1 3', 'pen 2024-C: 3 / pen others: 1 2'])
  })

  it('compares the pens of the last season that had several', () => {
    const A25 = pen('2025-A', 2025)
    expect(pairsOf(bookOf(hatch('1', {pens: of(A24)}), hatch('2', {pens: of(B24)}), hatch('3', {pens: of(A25)}))).filter(pair => pair.startsWith('pen'))).toEqual(['pen 2024-B: 2 / pen 2024-A: 1'])
  })

  it('keeps named and mixed steps as groups, and compares them with none', () => {
    const book = bookOf(hatch('1', {step: F1}), hatch('2', {step: joined}), hatch('3', {step: mixed}), hatch('4', {step: BC1}))
    expect(told(hatchGroups(book).steps)).toEqual(['step F1: 1', 'step BC1: 4', 'step Joined: 2', 'step mixed: 3'])
    expect(pairsOf(book)).toEqual(['step BC1: 4 / step F1: 1'])
  })

  it('knows no season of a hatch without pen and date, or with one that two years share', () => {
    const year = {text: '', first: date('2023-12-01').first, last: date('2024-01-31').last}
    expect(told(hatchGroups(bookOf(hatch('1'), hatch('2', {on: year}), hatch('3', {set: date('2024-03')}))).seasons)).toEqual(['season 2024: 3'])
  })

  it('are none where nothing was set, or only a pure strain, and one hatch stands against nothing', () => {
    for (const book of [weekOld(), bookOf(), bookOf(hatch('1', {step: strainStep(holm), machine: 'I1', pens: of(A24)}))]) expect(hatchGroups(book)).toEqual({steps: [], seasons: [], ways: [], pens: [], pairs: []})
    const {steps, seasons, ways, pens, pairs} = hatchGroups(bookOf(hatch('1', {machine: 'I1', pens: of(A24)})))
    expect([steps, seasons, ways, pens].map(({length}) => length)).toEqual([1, 1, 1, 1])
    expect(pairs).toEqual([])
  })

  it('puts every hatch of the ladder in one step and at most one season, way and pen, in whatever order they were written', () => {
    fc.assert(fc.property(fc.oneof(drawnBook, lifeBook), book => {
      const found = hatchGroups(book), ladder = book.hatches.filter(({step}) => step.kind !== 'strain')
      const times = (groups: readonly HatchGroup[], own: Hatch) => groups.filter(({hatches}) => hatches.includes(own)).length
      for (const own of book.hatches) {
        const counts = [found.steps, found.seasons, found.ways, found.pens].map(groups => times(groups, own))
        expect(counts).toEqual(ladder.includes(own) ? [1, 1, own.broody || own.machine ? 1 : 0, 1] : [0, 0, 0, 0])
      }
      for (const [by, groups] of Object.entries({step: found.steps, season: found.seasons, way: found.ways, pen: found.pens})) for (const group of groups) {
        expect(group.by).toBe(by)
        expect(group.hatches.length).toBeGreaterThan(0)
        for (const own of group.hatches) expect(group.name).toBe(by === 'step' ? own.step.label : by === 'season' ? String(own.pens[0]?.pen.season) : by === 'way' ? (own.broody ? 'broody' : 'incubator') : own.pens[0]?.pen.id)
      }
      for (const {one, other} of found.pairs) {
        expect(one.by).toBe(other.by)
        expect(one.hatches.filter(own => other.hatches.includes(own))).toEqual([])
        expect(Math.min(one.hatches.length, other.hatches.length)).toBeGreaterThan(0)
      }
      expect(pairsOf(turned(book))).toEqual(pairsOf(book))
    }), {numRuns: 60})
  })
})
