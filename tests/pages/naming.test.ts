/** What people are called: in public by consent to all, to the committee also by consent to it alone. */
import {describe, expect, it} from 'vitest'
import type {Confidential} from '../../src/logbook/confidential.ts'
import {IN_PUBLIC, namedToCommittee, toCommittee} from '../../src/pages/naming.ts'
import {entry, keeper, show} from './shown-logbook.ts'
import {bird, logbook} from './small-logbook.ts'

const open = keeper('kelpgarth', 'The keeper at Kelpgarth', {region: 'the north shore'})
const told = keeper('keeper-a', 'keeper A', {consents: false, region: null})
const silent = keeper('keeper-b', 'keeper B', {consents: false, region: null})
const confidential: Confidential = {keepers: new Map([[told, {name: 'The keeper at Ternhouse', region: 'the south shore'}]]), judges: new Map([['judge 1', 'A judge'], ['judge 3', 'Another']])}

describe('a naming', () => {
  it.each([
    ['in public', IN_PUBLIC, ['The keeper at Kelpgarth', 'keeper A', 'keeper B'], ['the north shore', null, null], [true, false, false], ['judge 1', 'judge 2', 'A third judge']],
    ['to the committee', toCommittee(confidential), ['The keeper at Kelpgarth', 'The keeper at Ternhouse', 'keeper B'], ['the north shore', 'the south shore', null], [true, true, false], ['A judge', 'judge 2', 'A third judge']],
  ])('%s', (_, naming, names, regions, named, judges) => {
    const keepers = [open, told, silent]
    expect(keepers.map(naming.keeper)).toEqual(names)
    expect(keepers.map(naming.region)).toEqual(regions)
    expect(keepers.map(naming.isNamed)).toEqual(named)
    expect(['judge 1', 'judge 2', 'A third judge'].map(naming.judge)).toEqual(judges)
  })
})

describe('namedToCommittee(book)', () => {
  const cock = bird('24-001', 'male')

  it('has keepers, and judges of entries and of score sheets, each once, as the public calls them', () => {
    const shows = [
      show('2024-ness', 'Autumn show', '2024-09-28', {entries: [entry(cock, {judge: 'judge 1'}), entry(cock, {judge: 'judge 2'}), entry(cock, {judge: 'judge 1'}), entry(cock, {judge: null})]}),
      show('2025-ness', 'Autumn show', '2025-09-28', {scores: [{bird: cock, by: 'judge 3', draft: null, headings: [], at: cock.at}, {bird: cock, by: told, draft: null, headings: [], at: cock.at}]}),
    ]
    expect(namedToCommittee(logbook('2025-10-30', {keepers: [open, told, silent], shows}), confidential)).toEqual({keepers: ['keeper A'], judges: ['judge 1', 'judge 3']})
  })

  it('leaves out judges of shows that the book does not hold: those of a later day than it is of', () => {
    expect(namedToCommittee(logbook('2023-10-30', {keepers: [open]}), confidential)).toEqual({keepers: [], judges: []})
  })
})
