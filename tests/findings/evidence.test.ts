import {describe, expect, it} from 'vitest'
import {study} from '../../src/findings/study.ts'
import type {Evidence} from '../../src/findings/evidence.ts'
import {REQUIREMENT_KINDS, type Logbook, type Requirement, type Requirements, type Show, type ShowEntry} from '../../src/logbook/book.ts'
import {bookOfFamilies} from './evenness-book.ts'
import {at, bird, date, F2, hatch, logbook, smallBook, weekOld, weight} from '../pages/small-logbook.ts'
import {plainPaper, plainRequirement} from '../paper-parts.ts'

const asks = plainRequirement
const asked = (items: readonly Requirement[], more: Partial<Requirements> = {}): Requirements => ({at, body: '', association: null, items, papers: [], distinctness: null, ...more})
const shown = (book: Logbook, item: Requirement, more: Partial<Requirements> = {}): Evidence => {
  const [only] = study({...book, requirements: asked([item], more)}).evidence.items
  if (!only) throw new Error('no evidence')
  return only
}
const state = (...of: Parameters<typeof shown>): string => shown(...of).state
const paper = plainPaper
const entry = (id: string, more: Partial<ShowEntry> = {}): ShowEntry => ({
  bird: bird(id, 'female', {step: F2}), class: 'pullet', judge: 'judge 1', place: null, shared: false, of: null, award: null, points: null, grade: null, remark: null, about: [], disqualified: false, draft: null, at, ...more,
})
const show = (on: string, entries: ShowEntry[], cancelled: string | null = null): Show => ({at, body: '', id: on, name: on, on: date(on), place: null, cancelled, entries})

describe('evidence', () => {
  const book = smallBook()

  it('answers every kind of requirement, and says nothing on an empty book that it cannot know', () => {
    for (const of of [book, weekOld(), logbook('2024-01-01')]) {
      const found = study({...of, requirements: asked(REQUIREMENT_KINDS.map(kind => asks(kind, {atLeast: 1})))}).evidence
      expect(found.items.length).toBe(REQUIREMENT_KINDS.length)
      expect(found.counts.met + found.counts.notYet + found.counts.cannotTell + found.counts.waived).toBe(found.counts.all)
      expect(JSON.stringify(found.items.map(item => item.state))).not.toContain('null')
    }
    expect(study(logbook('2024-01-01')).evidence.counts.all).toBe(0)
  })

  it('leaves a waived one waived, with its numbers', () => {
    expect(shown(book, asks('years-bred', {atLeast: 9, waived: {because: 'all shows were forbidden', by: null, on: null, until: null}}))).toMatchObject({state: 'waived', shown: {seasons: [2024, 2025]}})
  })

  it('counts years with a hatch, and the gaps', () => {
    expect(shown(book, asks('years-bred', {atLeast: 2}))).toMatchObject({state: 'met', shown: {seasons: [2024, 2025], gaps: []}})
    const later = {...book, hatches: [...book.hatches, hatch('2027-01', {on: date('2027-03-20'), step: F2, hatched: 3})]}
    expect(shown(later, asks('years-bred', {atLeast: 4}))).toMatchObject({state: 'not-yet', shown: {seasons: [2024, 2025, 2027], gaps: [2026]}})
    expect(state(book, asks('years-bred'))).toBe('cannot-tell')
  })

  it('counts generations inter se and breeders alive', () => {
    expect(shown(book, asks('inter-se-generations', {atLeast: 1}))).toMatchObject({state: 'not-yet', shown: {of: 'breeders', least: 0}})
    expect(state(book, asks('inter-se-generations', {atLeast: 2}))).toBe('not-yet')
    expect(state(book, asks('breeders-alive', {males: 1, females: 2}))).toBe('met')
    expect(state(book, asks('breeders-alive', {males: 1, females: 3}))).toBe('not-yet')
  })

  it('holds the share of inter se chicks that are true against what is asked', () => {
    // six F2 chicks, one with a single comb and one scored pea and then single, whose latest score counts
    const found = shown(book, asks('true-to-type', {atLeast: 0.5}))
    expect(found).toMatchObject({state: 'met', shown: {kind: 'true-to-type', seasons: [2025], sure: true}})
    expect(state(book, asks('true-to-type', {atLeast: 0.9}))).toBe('not-yet')
    expect(state(weekOld(), asks('true-to-type', {atLeast: 0.5}))).toBe('cannot-tell')
  })

  it('lets the lower limit decide where the requirement names an interval', () => {
    // 29 of 32 right; by Clopper and Pearson the lower limit is 75.0% (R 4, binom.test(29, 32), from memory), by six families lower
    const six = bookOfFamilies([...Array.from({length: 5}, () => ({step: F2, pea: 6})), {step: F2, pea: 1, single: 1}]), few = bookOfFamilies([{step: F2, pea: 29, single: 3}])
    const type = (book: Logbook, atLeast: number, interval: Requirement['interval']) => shown(book, asks('true-to-type', {atLeast, interval}))
    expect([0.74, 0.76].map(atLeast => type(few, atLeast, 'exact').state)).toEqual(['met', 'not-yet'])
    expect([0.76, 0.95].map(atLeast => type(few, atLeast, null).state)).toEqual(['met', 'not-yet'])
    expect(type(few, 0.5, 'families').state).toBe('cannot-tell')
    const found = type(six, 0.5, 'families')
    expect(found.shown).toMatchObject({part: {family: {kind: 'families', families: 6}}})
    const low = found.shown.kind === 'true-to-type' ? found.shown.part.family?.low ?? NaN : NaN
    expect([low - 0.001, low, low + 0.001].map(atLeast => type(six, atLeast, 'families').state)).toEqual(['met', 'met', 'not-yet'])
  })

  it('wants every sex even, and cannot tell of one with too few', () => {
    expect(shown(book, asks('even-weight', {trait: weight, atMost: 0.1})).state).toBe('cannot-tell')
    expect(state(book, asks('even-weight', {trait: weight, atMost: 0.001}))).toBe('not-yet')
  })

  it('counts different birds shown in each class, judges, and years without a gap but for cancelled ones', () => {
    const shows = [show('2021-10-01', [entry('1'), entry('2', {judge: 'judge 2'})]), show('2022-10-01', [], 'all gatherings were forbidden'), show('2023-10-01', [entry('1', {disqualified: true}), entry('3')])]
    const of = logbook('2024-01-01', {shows})
    expect(shown(of, asks('shown-per-class', {perClass: 1}))).toMatchObject({state: 'not-yet', shown: {classes: [{class: 'cock', birds: 0}, {birds: 0}, {birds: 0}, {class: 'pullet', birds: 3}]}})
    expect(state(of, asks('shows-and-judges', {atLeast: 2, judges: 2}))).toBe('met')
    expect(state(of, asks('shows-and-judges', {atLeast: 2, judges: 3}))).toBe('not-yet')
    expect(shown(of, asks('show-result'))).toMatchObject({state: 'not-yet', shown: {entries: 4, disqualified: 1}})
    expect(shown(of, asks('consecutive-shows', {atLeast: 2}))).toMatchObject({state: 'met', shown: {years: [2021, 2023], cancelledYears: [2022], longestRun: 2}})
    expect(state({...of, shows: shows.filter(each => each.cancelled === null)}, asks('consecutive-shows', {atLeast: 2}))).toBe('not-yet')
  })

  it('goes by papers that hold on the day, and by a person’s word where only a person can say', () => {
    const papers = [paper('veterinary', '2023-08-12', '2024-08-12')]
    expect(shown(book, asks('veterinary'), {papers})).toMatchObject({state: 'not-yet', shown: {kind: 'papers', valid: []}})
    expect(state(book, asks('veterinary'), {papers: [...papers, paper('veterinary', '2025-08-12', '2026-08-12')]})).toBe('met')
    expect(state(book, asks('statements', {atLeast: 2}), {papers: [paper('statements', '2025-01')]})).toBe('not-yet')
    expect(state(book, asks('name-free'))).toBe('cannot-tell')
    expect(state(book, asks('name-free', {stated: 'No breed of that name is known to us.'}))).toBe('met')
  })

  it('counts differing characters against the nearest neighbour', () => {
    const distinctness = {breeds: ['Skerry Fowl', 'Holm White', 'Fell Buff'], rows: [
      {character: 'Comb', values: ['pea', 'single', 'pea'], at}, {character: 'Skin', values: ['white', 'white', 'yellow'], at}, {character: 'Ground', values: ['silver', 'Silver ', 'gold'], at},
      {character: 'Shank', values: ['short', '', 'long'], at},
    ]}
    // one differs, and the cell that is not filled in might
    expect(shown(book, asks('distinct', {atLeast: 2}), {distinctness})).toMatchObject({
      state: 'cannot-tell', shown: {breeds: [{breed: 'Holm White', differing: ['Comb']}, {breed: 'Fell Buff', differing: ['Skin', 'Ground', 'Shank']}]},
    })
    expect(state(book, asks('distinct', {atLeast: 1}), {distinctness})).toBe('met')
    expect(state(book, asks('distinct', {atLeast: 3}), {distinctness})).toBe('not-yet')
  })

  it('takes a sign for nothing known for no difference, and a character named twice for one', () => {
    const row = (character: string, ...values: string[]) => ({character, values, at}), breeds = ['Skerry Fowl', 'Holm White']
    const table = (...rows: ReturnType<typeof row>[]) => shown(book, asks('distinct', {atLeast: 2}), {distinctness: {breeds, rows}})
    expect(table(row('Comb', 'pea', 'single'), row('Down', 'cream', '?'))).toMatchObject({state: 'cannot-tell', shown: {breeds: [{differing: ['Comb'], unfilled: ['Down']}]}})
    expect(table(row('Comb', 'pea', 'single'), row('comb ', 'pea', 'single'), row('Tail', '45°', '45 degrees'))).toMatchObject({state: 'not-yet', shown: {breeds: [{differing: ['Comb'], unfilled: []}]}})
    // two rows that do not agree show nothing
    expect(table(row('Comb', 'pea', 'single'), row('Comb', 'pea', 'pea'), row('Egg', 'white', 'tinted'))).toMatchObject({state: 'not-yet', shown: {breeds: [{differing: ['Egg']}]}})
  })

  it('looks at how the living are banded and whether both parents are certain', () => {
    const found = shown(book, asks('identity', {atLeast: 0.95}))
    expect(found).toMatchObject({state: 'not-yet', shown: {banded: {kind: 'share', count: 13, total: 13}, bothParents: {count: 0, total: 13}}})
  })
})
