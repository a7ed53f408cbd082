/** Years running, classes, results and keepers at shows, where the records leave something open. */
import {describe, expect, it} from 'vitest'
import type {Evidence} from '../../src/findings/evidence.ts'
import {study} from '../../src/findings/study.ts'
import type {Bird, Logbook, Requirement, RequirementKind, Show, ShowEntry} from '../../src/logbook/book.ts'
import {at, bird, date, F2, logbook} from '../pages/small-logbook.ts'
import {plainRequirement} from '../paper-parts.ts'

const KEEPER = {at, body: '', id: 'north', name: 'north', consents: true, since: null, region: null}
const own = (id: string, sex: Bird['sex'], more: Partial<Bird> = {}): Bird => bird(id, sex, {step: F2, strain: null, hatched: date('2023-04'), ...more})
const entry = (of: Bird, more: Partial<ShowEntry> = {}): ShowEntry => ({bird: of, class: null, judge: 'judge 1', place: null, shared: false, of: null, award: null, points: null, grade: null, remark: null, about: [], disqualified: false, draft: null, at, ...more})
const show = (on: string, entries: readonly ShowEntry[], cancelled: string | null = null): Show => ({at, body: '', id: on, name: on, on: date(on), place: null, cancelled, entries})
const HEN = own('h', 'female', {keptAt: [{keeper: KEEPER, from: null, to: null}]}), COCK = own('c', 'male'), FOUND = own('f', 'unknown', {hatched: null})

function shown(kind: RequirementKind, shows: readonly Show[], more: Partial<Requirement>, book: Partial<Logbook> = {}): Evidence {
  const [only] = study(logbook('2025-11-15', {birds: [HEN, COCK, FOUND], keepers: [KEEPER], shows, requirements: {at, body: '', association: null, items: [plainRequirement(kind, more)], papers: [], distinctness: null}, ...book})).evidence.items
  return only ?? expect.fail('no evidence')
}

describe('consecutiveShows(requirement, sources)', () => {
  const years = (shows: readonly Show[], atLeast = 3) => shown('consecutive-shows', shows, {atLeast})
  const [of2021, of2022, of2023, of2025] = ['2021-10-01', '2022-10-01', '2023-10-01', '2025-10-01'].map(day => show(day, [entry(HEN)])) as [Show, Show, Show, Show]

  it('is broken by a year without a show', () => {
    expect(years([of2021, of2022, of2023, of2025])).toMatchObject({state: 'met', shown: {longest: [2021, 2022, 2023], current: [2025]}})
    expect(years([of2021, of2022, of2025])).toMatchObject({state: 'not-yet', shown: {longestRun: 2, current: [2025]}, ways: [{more: 2, earliest: {season: 2027}}]})
  })
  it('passes over a year whose shows were all cancelled, and only that', () => {
    const cancelled = show('2024-10-01', [], 'Forbidden.')
    expect(years([of2022, of2023, cancelled, of2025])).toMatchObject({state: 'met', shown: {longest: [2022, 2023, 2025], cancelledYears: [2024]}})
    // another was held that year, and the breed was not there
    expect(years([of2022, of2023, cancelled, show('2024-11-01', []), of2025])).toMatchObject({state: 'not-yet', shown: {longestRun: 2, cancelledYears: []}})
  })
  it('lets a run go on into a year that is not over, and counts none as going on after one that was missed', () => {
    expect(years([show('2023-10-01', [entry(HEN)]), show('2024-10-01', [entry(HEN)])])).toMatchObject({shown: {current: [2023, 2024]}, ways: [{more: 1, earliest: {season: 2025}}]})
    expect(years([of2022, of2023])).toMatchObject({shown: {current: []}, ways: [{more: 3, earliest: {season: 2027}}]})
  })
})

describe('entries of birds that are not of the breed', () => {
  const founder = bird('H-1', 'female', {hatched: date('2023-04')}), only = [show('2024-10-01', [entry(founder), entry(founder, {bird: bird('H-2', 'male')})]), show('2025-10-01', [entry(founder, {points: 95})])]
  const KINDS: readonly (readonly [RequirementKind, Partial<Requirement>])[] = [['shown-per-class', {perClass: 1, classes: ['hen']}], ['shows-and-judges', {atLeast: 1}], ['consecutive-shows', {atLeast: 2}], ['birds-per-show', {atLeast: 2}], ['show-result', {atLeast: 90}]]
  it.each(KINDS)('of a pure strain count for nothing in %s, and are counted apart', (kind, more) => {
    const found = shown(kind, only, more)
    expect([found.state, found.aged.pure]).toEqual([kind === 'show-result' ? 'cannot-tell' : 'not-yet', 3])
    expect(found.behind.birds).toEqual([])
  })
})

describe('entries of a variety that nobody knows', () => {
  const light = {varieties: ['Light']}, two = [show('2024-10-01', [entry(HEN)]), show('2025-10-01', [entry(HEN), entry(COCK)])]
  const state = (kind: RequirementKind, more: Partial<Requirement>) => shown(kind, two, {...light, ...more}).state
  it('leave it untold where they could make the number, and only there', () => {
    expect([2, 3].map(atLeast => state('consecutive-shows', {atLeast}))).toEqual(['cannot-tell', 'not-yet'])
    expect([2, 3].map(atLeast => state('birds-per-show', {atLeast}))).toEqual(['cannot-tell', 'not-yet'])
    expect([1, 2].map(exhibitors => state('birds-per-show', {exhibitors}))).toEqual(['cannot-tell', 'cannot-tell'])
    expect(state('birds-per-show', {exhibitors: 3})).toBe('not-yet')
    expect([2, 3].map(atLeast => state('shows-and-judges', {atLeast}))).toEqual(['cannot-tell', 'not-yet'])
    expect([1, 2].map(judges => state('shows-and-judges', {judges}))).toEqual(['cannot-tell', 'not-yet'])
    expect([1, 2].map(perClass => state('shown-per-class', {perClass, classes: ['hen']}))).toEqual(['cannot-tell', 'not-yet'])
    expect([1, 2].map(shows => state('shown-per-class', {perClass: 1, classes: ['cock'], shows}))).toEqual(['cannot-tell', 'not-yet'])
    expect(shown('consecutive-shows', two, {...light, atLeast: 2}).shown).toMatchObject({years: [], untold: 3})
    expect(state('show-result', {})).toBe('cannot-tell')
  })
})

describe('shownPerClass(requirement, sources)', () => {
  it('cannot tell of birds whose class nobody knows, where they could make the number', () => {
    expect(shown('shown-per-class', [show('2025-10-01', [entry(FOUND)])], {perClass: 1, classes: ['hen']})).toMatchObject({state: 'cannot-tell', shown: {untold: 1}})
    expect(shown('shown-per-class', [show('2025-10-01', [entry(HEN), entry(FOUND)])], {perClass: 1, classes: ['hen']}).state).toBe('met')
  })
  it('counts a bird once, and none that was disqualified', () => {
    const twice = [show('2024-10-01', [entry(HEN)]), show('2025-10-01', [entry(HEN)])]
    expect(shown('shown-per-class', twice, {perClass: 2, classes: ['hen']})).toMatchObject({state: 'not-yet', shown: {classes: [{birds: 1}]}})
    expect(shown('shown-per-class', [show('2025-10-01', [entry(HEN, {disqualified: true})])], {perClass: 1, classes: ['hen']}).state).toBe('not-yet')
  })
})

describe('showResult(requirement, sources)', () => {
  const graded = (...grades: (string | null)[]) => shown('show-result', [show('2025-10-01', grades.map(grade => entry(HEN, {grade})))], {grades: ['fair', 'good', 'very good'], leastGrade: 'good'})
  it('holds grades in the order of the requirement, and cannot tell of what is not on record', () => {
    expect([graded('good', 'Very good').state, graded('fair', 'good').state, graded('good', null).state, graded('fair', null).state, graded('splendid').state]).toEqual(['met', 'not-yet', 'cannot-tell', 'not-yet', 'cannot-tell'])
  })
  it('keeps a grade that is none of those named apart from one that nobody wrote down, and asks for its place among them', () => {
    expect(graded('splendid', null, 'good')).toMatchObject({shown: {unwritten: 2, unplaced: [{grade: 'splendid'}]}, ways: [{kind: 'name-grades'}, {kind: 'write-results', entries: [{}]}]})
    expect(graded(null)).toMatchObject({shown: {unwritten: 1, unplaced: []}, ways: [{kind: 'write-results'}]})
  })
  it('is never met where nothing was shown', () => expect(shown('show-result', [], {}).state).toBe('cannot-tell'))
})

describe('showsAndJudges(requirement, sources)', () => {
  it('cannot tell where a judge is not on record and could be the second', () => {
    const shows = [show('2024-10-01', [entry(HEN)]), show('2025-10-01', [entry(HEN, {judge: null})])]
    expect(shown('shows-and-judges', shows, {atLeast: 2, judges: 2})).toMatchObject({state: 'cannot-tell', shown: {unjudged: 1}})
    expect(shown('shows-and-judges', shows, {atLeast: 2, judges: 3}).state).toBe('not-yet')
  })
})

describe('disqualified entries', () => {
  it('make no show, no judge and no year', () => {
    const shows = [show('2024-10-01', [entry(HEN, {disqualified: true, judge: 'judge 2'})]), show('2025-10-01', [entry(HEN)])]
    expect(shown('shows-and-judges', shows, {atLeast: 2, judges: 2})).toMatchObject({state: 'not-yet', shown: {shows: 1, judges: ['judge 1']}})
    expect(shown('consecutive-shows', shows, {atLeast: 2})).toMatchObject({state: 'not-yet', shown: {years: [2025]}})
  })
})

describe('birdsPerShow(requirement, sources)', () => {
  it('cannot tell whose a bird was, where that could make the number of keepers', () => {
    const shows = [show('2025-10-01', [entry(HEN), entry(COCK)])]
    expect(shown('birds-per-show', shows, {atLeast: 2, exhibitors: 1}).state).toBe('met')
    expect(shown('birds-per-show', shows, {atLeast: 2, exhibitors: 2})).toMatchObject({state: 'cannot-tell', shown: {shows: [{birds: 2, keepers: 1, withoutKeeper: 1}]}})
    expect(shown('birds-per-show', shows, {atLeast: 2, exhibitors: 3}).state).toBe('not-yet')
  })
})
