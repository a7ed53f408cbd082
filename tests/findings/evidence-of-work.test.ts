/** Years, generations, people, stock and records, where the records leave something open: the flock of known gaps with a line changed. */
import {describe, expect, it} from 'vitest'
import {study} from '../../src/findings/study.ts'
import type {RequirementKind} from '../../src/logbook/book.ts'
import {at, weekOld} from '../pages/small-logbook.ts'
import {plainRequirement} from '../paper-parts.ts'
import {evidenceFor, GAPS} from './gaps-book.ts'

const inPlaceOf = (file: string, from: string, to: string) => {
  const text = GAPS[file] ?? ''
  if (!text.includes(from)) throw new Error(`${file} has no ${from}`)
  return {[file]: text.replace(from, to)}
}
const NO_SHOWS = {'shows/2023-11-04.md': '---\nname: A\non: 2023-11-04\n---\n', 'shows/2025-10-04.md': '---\nname: B\non: 2025-10-04\n---\n'}

describe('a week of records', () => {
  const of = (kind: RequirementKind) => study({...weekOld(), requirements: {at, body: '', association: null, items: [plainRequirement(kind, {atLeast: 1, males: 1})], papers: [], distinctness: null}}).evidence.items[0]
  it.each(['inter-se-generations', 'independent-keepers', 'distinct', 'name-free', 'show-result', 'identity'] as const)('%s cannot be told', kind => expect(of(kind)?.state).toBe('cannot-tell'))
  it.each(['years-bred', 'breeders-alive', 'shown-per-class', 'shows-and-judges', 'consecutive-shows', 'written-standard', 'history', 'photographs', 'statements', 'veterinary'] as const)('%s is not yet', kind => expect(of(kind)?.state).toBe('not-yet'))
})

describe('yearsBred(requirement, sources)', () => {
  it('has a gap at the end where the year that is over had no hatch', () => {
    const still = {'project.md': (GAPS['project.md'] ?? '').replace('2025-11-15', '2027-03-01')}
    expect(evidenceFor('kind: years-bred, at-least: 2, in-a-row: yes', still)).toMatchObject({state: 'not-yet', shown: {gaps: [2022, 2026], run: [], have: 0}, ways: [{kind: 'seasons', more: 2, earliest: {season: 2028}}]})
    expect(evidenceFor('kind: years-bred, at-least: 4', still).state).toBe('met')
  })
})

describe('interSeGenerations(requirement, sources)', () => {
  it('asks the living breeders where nothing was shown, and says so', () => {
    expect(evidenceFor('kind: inter-se-generations, at-least: 2', NO_SHOWS)).toMatchObject({state: 'met', shown: {of: 'breeders', year: null, least: 2, birds: [{bird: {band: '24-001'}}, {bird: {band: '24-002'}}]}})
    expect(evidenceFor('kind: inter-se-generations, at-least: 4', NO_SHOWS)).toMatchObject({state: 'not-yet', ways: [{kind: 'generations', more: 2}]})
  })
  it('cannot tell where a parent is in doubt and one that may be would be enough', () => {
    // sire of the chicks of 2025: 24-001, with two behind it, or 21-001, with none
    const doubt = inPlaceOf('pens/2025-A.md', 'males: [24-001]', 'males: [24-001, 21-001]')
    const of = (atLeast: number) => evidenceFor(`kind: inter-se-generations, at-least: ${atLeast}, classes: [pullet]`, doubt)
    expect(of(1)).toMatchObject({state: 'met', shown: {least: 1, birds: [{least: 1, most: 3}]}})
    expect([of(2).state, of(3).state, of(4).state]).toEqual(['cannot-tell', 'cannot-tell', 'not-yet'])
  })
  it('takes the birds shown from a day on, of the classes asked about', () => {
    expect(evidenceFor('kind: inter-se-generations, at-least: 1, from: 2023')).toMatchObject({shown: {year: null, birds: {length: 4}}})
    expect(evidenceFor('kind: inter-se-generations, at-least: 2, classes: [cock]')).toMatchObject({state: 'met', shown: {birds: [{bird: {band: '24-001'}}]}})
  })
})

describe('independentKeepers(requirement, sources)', () => {
  it('cannot tell whose a hatch is that nobody wrote down, where it could make the number', () => {
    const nobody = inPlaceOf('pens/2025-A.md', 'keeper: north\n', '')
    expect(evidenceFor('kind: independent-keepers, at-least: 1', nobody)).toMatchObject({state: 'cannot-tell', shown: {seasons: [2025], keepers: [], withoutKeeper: 1}})
    expect(evidenceFor('kind: independent-keepers, at-least: 2', nobody).state).toBe('not-yet')
  })
  it('needs of a keeper who has begun only what is wanting', () => {
    // the south has 2025 too, and lacks 2023 of the last three; so a third season running is that of 2026
    const going = {'pens/2025-B.md': '---\nseason: 2025\nmales: [23-004]\nfemales: [23-003]\nfrom: 2025-02-01\nto: 2025-06-01\nkeeper: south\n---\n', 'hatches/2025-2.md': '---\npen: 2025-B\nset: 2025-03-21\non: 2025-04-11\neggs: 3\nhatched: 1\nchicks:\n  - {band: 25-101, sex: male}\n---\n'}
    expect(evidenceFor('kind: independent-keepers, at-least: 2, seasons: 3', going)).toMatchObject({state: 'not-yet', ways: [{kind: 'keepers', more: 1, going: [{keeper: {id: 'south'}, lacks: 1}], earliest: {season: 2026}}]})
    expect(evidenceFor('kind: independent-keepers, at-least: 2, seasons: 2', going).state).toBe('met')
  })
})

describe('aliveBreeders(requirement, sources)', () => {
  it('takes those of an age or class', () => {
    expect(evidenceFor('kind: breeders-alive, at-least: 1, ages: [grown]').state).toBe('met')
    expect(evidenceFor('kind: breeders-alive, at-least: 1, ages: [young]')).toMatchObject({state: 'not-yet', ways: [{either: 1, spare: {males: 1, females: 1}}]})
  })
  it('cannot tell of a variety that nobody can know', () => expect(evidenceFor('kind: breeders-alive, at-least: 1, varieties: [Light]')).toMatchObject({state: 'cannot-tell', shown: {untold: {length: 2}}}))
})

describe('history(requirement, sources) and identity', () => {
  it('wants a founder of every strain crossed in', () => {
    // a third strain, of which only the sire of a chick was, and he is in no book
    const outside = {'strains/sound-grey.md': '---\nname: Sound Grey\nrole: donor\n---\n', 'birds/25-900.md': '---\nband: 25-900\nsex: male\nsire: {strain: sound-grey}\ndam: 24-002\nhatched: 2025-04-01\n---\n'}
    expect(evidenceFor('kind: history', outside)).toMatchObject({state: 'not-yet', shown: {unfounded: [{id: 'sound-grey'}]}, ways: [{kind: 'founders-and-steps', unfounded: [{id: 'sound-grey'}], steps: 0}]})
  })
  it('names the birds of which a parent is in doubt', () => {
    const doubt = inPlaceOf('pens/2025-A.md', 'males: [24-001]', 'males: [24-001, 21-001]')
    // by hand: 9 of 11
    expect(evidenceFor('kind: identity, at-least: 95%', doubt)).toMatchObject({state: 'not-yet', shown: {bothParents: {count: 9, total: 11}, uncertain: [{band: '25-001'}, {band: '25-002'}]}, ways: [{kind: 'parents', more: 2}]})
    expect(evidenceFor('kind: identity, at-least: 80%', doubt).state).toBe('met')
  })
})
