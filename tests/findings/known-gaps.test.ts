/** A flock with gaps made on purpose: each requirement comes out in the state that the records give it by construction, lacking what they lack and nothing else. */
import {describe, expect, it} from 'vitest'
import type {Evidence} from '../../src/findings/evidence.ts'
import type {Way} from '../../src/findings/ways.ts'
import {isoDay} from '../../src/records/dates.ts'
import {evidenceFor, evidenceOf} from './gaps-book.ts'

/** Birds as bands, keepers as ids, papers and clauses by name; the earliest as a year or a day. */
const plainly = (ways: readonly Way[]): unknown[] => ways.map(({earliest, ...way}) => ({
  ...JSON.parse(JSON.stringify(way, (_, value: unknown) => named(value))) as object,
  earliest: earliest === null ? null : earliest.kind === 'season' ? earliest.season : isoDay(earliest.day),
}))

function named(value: unknown): unknown {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return value
  if ('band' in value) return value.band
  if ('consents' in value && 'id' in value) return value.id
  if ('allows' in value && 'id' in value) return value.id
  return 'proves' in value && 'title' in value ? value.title : value
}

const TODAY = '2025-11-15'

/** requirement · its state · the shortest way, by hand */
const GAPS: readonly (readonly [string, Evidence['state'], readonly object[]])[] = [
  // 2021, 2023, 2024 and 2025: four seasons, three since the gap of 2022. 2025 has hatched, so the next is 2026
  ['kind: years-bred, at-least: 4', 'met', []],
  ['kind: years-bred, at-least: 6', 'not-yet', [{kind: 'seasons', more: 2, inARow: false, earliest: 2027}]],
  ['kind: years-bred, at-least: 3, in-a-row: yes', 'met', []],
  ['kind: years-bred, at-least: 5, in-a-row: yes', 'not-yet', [{kind: 'seasons', more: 2, inARow: true, earliest: 2027}]],
  ['kind: years-bred', 'cannot-tell', [{kind: 'name-figure', earliest: null}]],
  // F1 0, F2 1, F3 2, F4 3: of those shown in 2025 the hen of 2023 has one; both chicks of 2025 live and have three
  ['kind: inter-se-generations, at-least: 1', 'met', []],
  ['kind: inter-se-generations, at-least: 3', 'not-yet', [{kind: 'show-these', birds: ['25-001', '25-002'], earliest: null}]],
  ['kind: inter-se-generations, at-least: 3, classes: [pullet]', 'met', []],
  // both chicks of 2025 have three, and are bred from in 2026: their own have four
  ['kind: inter-se-generations, at-least: 4', 'not-yet', [{kind: 'generations', more: 1, short: ['23-003', '24-001', '25-002'], earliest: 2026}]],
  // north in both, south in 2024 alone: whoever is second needs 2026 and 2027
  ['kind: independent-keepers, at-least: 1, seasons: 2', 'met', []],
  ['kind: independent-keepers, at-least: 2, seasons: 2', 'not-yet', [{kind: 'keepers', more: 1, seasons: 2, going: [], earliest: 2027}]],
  ['kind: independent-keepers, at-least: 2', 'not-yet', [{kind: 'keepers', more: 1, seasons: 1, going: [], earliest: 2026}]],
  // of eleven living, two bred from; 24-102 was sold
  ['kind: breeders-alive, males: 1, females: 1', 'met', []],
  ['kind: breeders-alive, males: 2, females: 3', 'not-yet', [{kind: 'keep', males: 1, females: 2, either: 0, spare: {males: 5, females: 4}, earliest: TODAY}]],
  ['kind: breeders-alive, at-least: 20', 'not-yet', [{kind: 'keep', males: 0, females: 0, either: 18, spare: {males: 5, females: 4}, earliest: 2026}]],
  // the only hen was disqualified; four hens of earlier years live: 21-002, 23-002, 23-003 and 24-002
  ['kind: shown-per-class, per-class: 1', 'not-yet', [{kind: 'show-birds', class: 'hen', more: 1, living: 4, earliest: 2025}]],
  ['kind: shown-per-class, per-class: 1, classes: [cock, pullet], shows: 1', 'met', []],
  // one cockerel of the year lives, and two are wanted
  ['kind: shown-per-class, per-class: 2, classes: [cockerel], shows: 1', 'not-yet', [{kind: 'full-shows', more: 1, each: 2, classes: [{class: 'cockerel', living: 1}], earliest: 2026}]],
  ['kind: shows-and-judges, at-least: 3, judges: 2', 'not-yet', [{kind: 'shows', more: 1, earliest: null}, {kind: 'judges', more: 1, earliest: null}]],
  ['kind: shows-and-judges, at-least: 2, judges: 1', 'met', []],
  ['kind: show-result', 'not-yet', [{kind: 'show-again', birds: ['23-003'], earliest: null}]],
  // 2025-10-04 and a hundred days, and the day after
  ['kind: show-result, within: 100 days', 'not-yet', [{kind: 'show-again', birds: ['23-003'], earliest: '2026-01-13'}]],
  ['kind: show-result, classes: [cock, cockerel], at-least: 91', 'met', []],
  ['kind: show-result, classes: [cock, cockerel], at-least: 92', 'not-yet', [{kind: 'show-again', birds: ['23-001'], earliest: null}]],
  // 2023 and 2025, the show of 2024 cancelled
  ['kind: consecutive-shows, at-least: 2', 'met', []],
  ['kind: consecutive-shows, at-least: 4', 'not-yet', [{kind: 'show-years', more: 2, earliest: 2027}]],
  ['kind: birds-per-show, at-least: 2, exhibitors: 1', 'met', []],
  ['kind: birds-per-show, at-least: 3, exhibitors: 1', 'not-yet', [{kind: 'large-shows', more: 1, birds: 3, keepers: 1, earliest: null}]],
  ['kind: written-standard', 'not-yet', [{kind: 'write-sections', missing: ['female', 'weights'], empty: [], clauses: [], earliest: TODAY}, {kind: 'fill-clauses', clauses: ['male/neck'], earliest: TODAY}]],
  // from Fell Buff in skin alone, and the egg at most
  ['kind: distinct, at-least: 1', 'met', []],
  ['kind: distinct, at-least: 2', 'cannot-tell', [{kind: 'fill-cells', breed: 'Fell Buff', characters: ['Egg'], more: 1, earliest: TODAY}]],
  ['kind: distinct, at-least: 3', 'not-yet', [{kind: 'fill-cells', breed: 'Holm White', characters: ['Egg'], more: 1, earliest: TODAY}, {kind: 'differ', breed: 'Fell Buff', more: 1, unfilled: ['Egg'], earliest: null}]],
  ['kind: name-free', 'cannot-tell', [{kind: 'statement', earliest: TODAY}]],
  ['kind: name-free, stated: None is known of.', 'met', []],
  ['kind: history', 'met', []],
  ['kind: history, at-least: 6', 'not-yet', [{kind: 'founders-and-steps', founders: false, unfounded: [], steps: 2, earliest: TODAY}]],
  ['kind: photographs, ages: [young], males: 1', 'cannot-tell', [{kind: 'date-photographs', birds: ['24-002'], earliest: TODAY}]],
  ['kind: photographs, males: 2', 'not-yet', [{kind: 'date-photographs', birds: ['24-002'], earliest: TODAY}, {
    kind: 'photographs', wanted: [{sex: 'male', age: 'grown', variety: null, living: 5}, {sex: 'female', age: 'young', variety: null, living: 1}, {sex: 'female', age: 'grown', variety: null, living: 4}],
    males: 1, females: 0, all: 0, earliest: TODAY,
  }]],
  ['kind: statements', 'not-yet', [{kind: 'paper', more: 2, instead: null, held: null, keepers: ['south', 'keeper-a'], earliest: TODAY}]],
  ['kind: statements, at-least: 1', 'met', []],
  // it ended on 2025-08-12
  ['kind: veterinary', 'not-yet', [{kind: 'paper', more: 1, instead: 'Visit', held: expect.any(Number) as number, keepers: [], earliest: TODAY}]],
  ['kind: identity, at-least: 95%', 'met', []],
]

describe('a flock with known gaps', () => {
  const found = evidenceOf(GAPS.map(([line]) => line))

  it.each(GAPS.map((gap, index) => [...gap, index] as const))('%s is %s', (_, state, ways, index) => {
    const item = found[index]
    expect(item && [item.state, plainly(item.ways)]).toEqual([state, ways])
  })

  it('names the birds, the records and the day behind what it counted', () => {
    const {behind} = evidenceFor('kind: shown-per-class, per-class: 1')
    expect(behind.birds.map(({band}) => band)).toEqual(['23-001', '24-001', '25-002'])
    expect(behind.records).toEqual([{file: 'shows/2023-11-04.md', path: ['entries', 0]}, {file: 'shows/2025-10-04.md', path: ['entries', 0]}, {file: 'shows/2025-10-04.md', path: ['entries', 1]}])
    expect(behind.on && isoDay(behind.on)).toBe('2025-10-04')
  })

  it('keeps what a waived one shows, and lets a waiver that has run out waive no more', () => {
    expect(evidenceFor('kind: years-bred, at-least: 6, waived: {because: Grown old., until: 2025-12-31}')).toMatchObject({state: 'waived', found: 'not-yet', lapsed: false, shown: {have: 4}, ways: [{more: 2}]})
    expect(evidenceFor('kind: years-bred, at-least: 6, waived: {because: Grown old., until: 2025-11-14}')).toMatchObject({state: 'not-yet', lapsed: true})
    expect(evidenceFor('kind: years-bred, at-least: 6, waived: {because: Grown old., until: 2025-11-15}')).toMatchObject({state: 'waived', lapsed: false})
  })

  it('says when the day for it is past, and when the way leads beyond it', () => {
    expect(evidenceFor('kind: years-bred, at-least: 6, by: 2025-11-14')).toMatchObject({late: true, beyond: true})
    expect(evidenceFor('kind: years-bred, at-least: 6, by: 2026')).toMatchObject({late: false, beyond: true})
    expect(evidenceFor('kind: years-bred, at-least: 6, by: 2027')).toMatchObject({late: false, beyond: false})
    expect(evidenceFor('kind: years-bred, at-least: 4, by: 2025')).toMatchObject({late: false, beyond: false})
    // the fourth season came after the day
    expect(evidenceFor('kind: years-bred, at-least: 4, by: 2024')).toMatchObject({state: 'not-yet', late: true, aged: {later: 1}, shown: {have: 3}})
  })

  it('counts and names what is older than the rule allows', () => {
    // a paper of spring, 259 days old
    expect(evidenceFor('kind: statements, at-least: 1, within: 259 days')).toMatchObject({state: 'met', aged: {older: 0}})
    const {aged, ...rest} = evidenceFor('kind: statements, at-least: 1, within: 258 days')
    expect([rest.state, aged.older, aged.records, aged.last === null ? null : isoDay(aged.last)]).toEqual(['not-yet', 1, [{file: 'requirements.md', path: ['papers', 1]}], '2025-03-01'])
    expect(evidenceFor('kind: years-bred, at-least: 4, from: 2023')).toMatchObject({state: 'not-yet', aged: {earlier: 1}, shown: {seasons: [2023, 2024, 2025]}})
  })
})
