import {describe, expect, it} from 'vitest'
import type {Evidence} from '../../src/findings/evidence.ts'
import {study} from '../../src/findings/study.ts'
import {neededIn} from '../../src/logbook/manners.ts'
import type {Draft, Requirement, SectionKind} from '../../src/logbook/book.ts'
import {at, comb, logbook} from '../pages/small-logbook.ts'
import {plainClause, plainDraft, plainRequirement, plainSection} from '../paper-parts.ts'

function shown(drafts: readonly Draft[], more: Partial<Requirement> = {}): Evidence {
  const book = logbook('2025-11-15', {drafts, requirements: {at, body: '', association: null, items: [plainRequirement('written-standard', more)], papers: [], distinctness: null}}), [only] = study(book).evidence.items
  return only ?? expect.fail('no evidence')
}
const missing = ({shown: of}: Evidence) => (of.kind === 'written-standard' ? of.missing : [])
const section = (kind: SectionKind, titles: readonly string[] = ['Of it']) => plainSection(kind, titles.map(title => plainClause(`${kind}/${title}`, title, 'Some words.')), {kind, title: kind})

/** By the core: male, female, colour, weights, points, faults. */
const WHOLE: Partial<Draft> = {
  sections: [section('male'), section('female'), section('colour'), section('faults', ['Minor', 'Serious', 'Disqualifications'])], weights: [{class: 'cock', grams: 3200, high: null}],
  points: [{name: 'Type', points: 60}, {name: 'Colour', points: 40}],
}
const draft = (more: Partial<Draft> = {}): Draft => plainDraft(3, '2025-10-01', {...WHOLE, ...more})

describe('writtenStandard(requirement, sources)', () => {
  it('is whole with every section of the core', () => expect(shown([draft()])).toMatchObject({state: 'met', shown: {draft: 3, points: 100, missing: []}, behind: {on: expect.any(Number) as number}}))
  it('is the latest draft’s, and there must be one', () => {
    expect(shown([]).ways).toMatchObject([{kind: 'first-draft'}])
    expect(shown([draft(), plainDraft(4, '2025-11-01')])).toMatchObject({state: 'not-yet', shown: {draft: 4}})
  })
  it('names each section of the core that is not there', () => {
    expect(missing(shown([draft({sections: [section('male')], weights: [], points: []})]))).toEqual(['female', 'colour', 'weights', 'points', 'faults'])
    expect(missing(shown([draft({sections: [section('male'), section('female'), section('colour'), section('disqualifications')]})]))).toEqual([])
  })
  it('needs what its manner needs', () => {
    const all = draft({manner: 'commonwealth'})
    // origin, classification, serious faults and disqualifications; the last two stand as clauses under faults
    expect(missing(shown([all]))).toEqual(['origin', 'classification'])
    expect(missing(shown([draft({manner: 'commonwealth', origin: 'From the isles.', classification: 'Heavy'})]))).toEqual([])
    expect(neededIn('commonwealth').length).toBeGreaterThan(6)
  })
  it('needs those that the requirement names, and no others', () => {
    expect(missing(shown([draft({weights: [], points: []})], {sections: ['male', 'egg', 'rings', 'down']}))).toEqual(['egg', 'rings', 'down'])
    const more = {egg: 'Tinted', rings: {male: '20 mm', female: null}, sections: [...(WHOLE.sections ?? []), section('colour', ['Day-old down'])]}
    expect(shown([draft(more)], {sections: ['male', 'egg', 'rings', 'down']}).state).toBe('met')
  })
  it('wants words in every section and clause', () => {
    const lead = plainSection('female', [], {kind: 'female', title: 'Female', lead: 'As the male.'}), empty = plainSection('female', [plainClause('female/neck', 'Neck', ' ')], {kind: 'female', title: 'Female'})
    const others = [section('male'), section('colour'), section('faults')]
    expect(shown([draft({sections: [...others, lead]})]).state).toBe('met')
    expect(shown([draft({sections: [...others, empty]})])).toMatchObject({state: 'not-yet', shown: {emptySections: ['Female'], emptyClauses: []}, ways: [{kind: 'write-sections', missing: [], empty: ['Female']}]})
    const half = plainSection('female', [plainClause('female/neck', 'Neck', ''), plainClause('female/back', 'Back', 'Broad.')], {kind: 'female', title: 'Female'})
    expect(shown([draft({sections: [...others, half]})])).toMatchObject({state: 'not-yet', shown: {emptySections: [], emptyClauses: [{id: 'female/neck'}]}, ways: [{kind: 'fill-clauses'}]})
  })
  it('wants points that make 100', () => expect(shown([draft({points: [{name: 'Type', points: 60}]})])).toMatchObject({state: 'not-yet', ways: [{kind: 'mend-points', have: 60}]}))
  it('wants the clauses that are asked for by name', () => {
    expect(shown([draft()], {clauses: ['male/Of it']}).state).toBe('met')
    expect(shown([draft()], {clauses: ['male/tail']})).toMatchObject({state: 'not-yet', ways: [{kind: 'write-sections', clauses: ['male/tail']}]})
  })
  it('counts the mandatory clauses, and names those that nobody can score', () => {
    const pea = {kind: 'states', states: ['pea']} as const
    const sections = [...(WHOLE.sections ?? []), plainSection('x', [
      plainClause('x/a', 'A', 'a', {mandatory: true, trait: comb, allows: {male: pea, female: null}}), plainClause('x/b', 'B', 'b', {mandatory: true}), plainClause('x/c', 'C', 'c', {mandatory: true, trait: comb}), plainClause('x/d', 'D', 'd'),
    ])]
    expect(shown([draft({sections})])).toMatchObject({state: 'met', shown: {mandatory: 3, unscored: [{id: 'x/b'}, {id: 'x/c'}]}})
  })
})
