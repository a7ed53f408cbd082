/** Years, generations, people, stock and records, where the records leave something open: the flock of known gaps with a line changed. */
import {describe, expect, it} from 'vitest'
import {study} from '../../src/findings/study.ts'
import type {Bird, Requirement, RequirementKind} from '../../src/logbook/book.ts'
import {at, bird, F2, logbook, weekOld} from '../pages/small-logbook.ts'
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
  it('has a gap in a year in which nothing more can hatch, though it is not over', () => {
    // by hand: eggs of 20 December hatch on 10 January; without 2025 the run ends with 2024, and three more are 2026 to 2028
    const late = {'project.md': (GAPS['project.md'] ?? '').replace('2025-11-15', '2025-12-20'), 'hatches/2025-1.md': '---\npen: 2025-A\nset: 2025-03-21\non: 2025-04-11\neggs: 12\nhatched: 0\n---\n', ...NO_SHOWS}
    expect(evidenceFor('kind: years-bred, at-least: 3, in-a-row: yes', late)).toMatchObject({shown: {gaps: [2022, 2025], run: []}, ways: [{more: 3, earliest: {season: 2028}}]})
    const early = {...late, 'project.md': (GAPS['project.md'] ?? '').replace('2025-11-15', '2025-12-01')}
    expect(evidenceFor('kind: years-bred, at-least: 3, in-a-row: yes', early)).toMatchObject({shown: {gaps: [2022], run: [2023, 2024]}, ways: [{more: 1, earliest: {season: 2025}}]})
  })
  it('names the seasons of crosses alone, which count unless only matings inside the breed are asked for', () => {
    expect(evidenceFor('kind: years-bred, at-least: 4')).toMatchObject({state: 'met', shown: {crossesOnly: [2021]}})
    expect(evidenceFor('kind: years-bred, at-least: 4, inside: yes')).toMatchObject({state: 'not-yet', shown: {seasons: [2023, 2024, 2025], crossesOnly: [2021]}})
  })
  it('leaves a cross beside the ladder out, as test matings are, and a line of the breed that the ladder does not name in', () => {
    const ladder = (steps: string) => ({'project.md': (GAPS['project.md'] ?? '').replace('strains:', `ladder: [${steps}]\nstrains:`)})
    const test = {'pens/2022-T.md': '---\nseason: 2022\nmales: [21-001]\nfemales: [H-9]\nfrom: 2022-02-01\nto: 2022-06-01\nkeeper: north\n---\n', 'birds/H-9.md': '---\nband: H-9\nsex: female\nstrain: holm-white\nhatched: 2019-04-01\n---\n',
      'hatches/2022-1.md': '---\npen: 2022-T\nset: 2022-03-21\non: 2022-04-11\neggs: 9\nhatched: 4\n---\n'}
    expect(evidenceFor('kind: years-bred, at-least: 5', {...test, ...ladder('F1, F2, F3')})).toMatchObject({state: 'not-yet', shown: {seasons: [2021, 2023, 2024, 2025], beside: 1}})
    expect(evidenceFor('kind: years-bred, at-least: 5', test)).toMatchObject({state: 'met', shown: {seasons: {length: 5}, beside: 0}})
    expect(evidenceFor('kind: independent-keepers, at-least: 1', {...test, ...ladder('F1, F2, F3')})).toMatchObject({state: 'met', shown: {beside: 0}})
    expect(evidenceFor('kind: independent-keepers, at-least: 1, seasons: 4', {...test, ...ladder('F1, F2, F3')})).toMatchObject({shown: {seasons: [2022, 2023, 2024, 2025], short: {length: 2}, beside: 1}})
  })
})

describe('interSeGenerations(requirement, sources)', () => {
  it('asks the living breeders where nothing was shown, and says so', () => {
    expect(evidenceFor('kind: inter-se-generations, at-least: 2', NO_SHOWS)).toMatchObject({state: 'met', shown: {of: 'breeders', year: null, least: 2, birds: [{bird: {band: '24-001'}}, {bird: {band: '24-002'}}]}})
    expect(evidenceFor('kind: inter-se-generations, at-least: 4', NO_SHOWS)).toMatchObject({state: 'not-yet', ways: [{kind: 'generations', more: 1, earliest: {season: 2026}}]})
  })
  it('counts what was shown too long ago where the living breeders are asked for it', () => {
    expect(evidenceFor('kind: inter-se-generations, at-least: 2, within: 1 day')).toMatchObject({state: 'met', shown: {of: 'breeders'}, aged: {older: 4}})
    expect(evidenceFor('kind: inter-se-generations, at-least: 2, within: 1 day, classes: [cockerel], varieties: [Light]')).toMatchObject({state: 'cannot-tell', aged: {older: 4}})
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
    // one hatch of nobody knows whose makes a keeper in 2025 alone: the south has 2024 and could be a second, nobody a third
    expect(evidenceFor('kind: independent-keepers, at-least: 2, seasons: 2', nobody).state).toBe('not-yet')
    expect(evidenceFor('kind: independent-keepers, at-least: 1, seasons: 2', nobody).state).toBe('cannot-tell')
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
  it('can tell that it is not yet where those of an unknown variety are too few', () => expect(evidenceFor('kind: breeders-alive, males: 2, varieties: [Light]').state).toBe('not-yet'))
})

describe('aliveBreeders(requirement, sources) of birds whose sex nobody knows', () => {
  const of = (sexes: readonly Bird['sex'][], asked: Partial<Requirement>) => study(logbook('2025-11-15', {
    birds: sexes.map((sex, index) => bird(`b${index}`, sex, {step: F2, strain: null, kept: {on: null, why: 'To breed from.'}})),
    requirements: {at, body: '', association: null, items: [plainRequirement('breeders-alive', asked)], papers: [], distinctness: null},
  })).evidence.items[0]?.state
  it('takes each for either, and none for both', () => {
    const pair = {males: 1, females: 1}
    expect([of(['unknown'], pair), of(['unknown', 'unknown'], pair), of(['male', 'unknown'], pair), of(['male', 'male'], pair), of(['male', 'female'], pair)]).toEqual(['not-yet', 'cannot-tell', 'cannot-tell', 'not-yet', 'met'])
    expect([of(['unknown', 'unknown'], {atLeast: 2}), of(['unknown'], {atLeast: 2})]).toEqual(['met', 'not-yet'])
  })
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
