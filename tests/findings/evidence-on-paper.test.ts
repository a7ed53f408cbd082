import {describe, expect, it} from 'vitest'
import type {Evidence} from '../../src/findings/evidence.ts'
import {study} from '../../src/findings/study.ts'
import type {Paper, Requirement, RequirementKind} from '../../src/logbook/book.ts'
import {isoDay} from '../../src/records/dates.ts'
import {at, date, logbook} from '../pages/small-logbook.ts'
import {plainPaper, plainRequirement} from '../paper-parts.ts'

const [NORTH, SOUTH] = ['north', 'south'].map(id => ({at, body: '', id, name: id, consents: true, since: null, region: null}))
function shown(kind: RequirementKind, papers: readonly Paper[], more: Partial<Requirement> = {}): Evidence {
  const keepers = [NORTH, SOUTH].filter(keeper => keeper !== undefined)
  const [only] = study(logbook('2025-11-15', {keepers, requirements: {at, body: '', association: null, items: [plainRequirement(kind, more)], papers, distinctness: null}})).evidence.items
  return only ?? expect.fail('no evidence')
}
const signed = (keeper = NORTH, until: string | null = null) => plainPaper('statements', '2025-03-01', until, {keeper: keeper ?? null})

describe('statementPapers(requirement, sources)', () => {
  it('counts each keeper once, and asks for every keeper where no number is named', () => {
    expect([shown('statements', [signed(), signed()], {atLeast: 2}).state, shown('statements', [signed(), signed(SOUTH)], {atLeast: 2}).state, shown('statements', [signed()]).state, shown('statements', [signed(), signed(SOUTH)]).state]).toEqual(['not-yet', 'met', 'not-yet', 'met'])
  })
  it('cannot tell whose a paper is that does not say so', () => {
    const whose = plainPaper('statements', '2025-03-01')
    expect(shown('statements', [signed(), whose])).toMatchObject({state: 'cannot-tell', ways: [{kind: 'name-signers', papers: [{title: 'statements'}]}]})
    expect(shown('statements', [whose], {atLeast: 3})).toMatchObject({state: 'not-yet', ways: [{kind: 'name-signers'}, {kind: 'paper', more: 2}]})
  })
  it('leaves out what holds no more', () => expect(shown('statements', [signed(NORTH, '2025-11-14')], {atLeast: 1})).toMatchObject({state: 'not-yet', shown: {keepers: {without: [{id: 'north'}, {id: 'south'}]}}}))
})

describe('veterinaryPaper(requirement, sources)', () => {
  const visit = (on: string, until: string | null = null) => plainPaper('veterinary', on, until)
  const until = ({shown: of}: Evidence) => (of.kind === 'papers' && of.until !== null ? isoDay(of.until) : null)
  it('holds to its last day, and to the age that is allowed', () => {
    expect([shown('veterinary', [visit('2025-01-01', '2025-11-15')]).state, shown('veterinary', [visit('2025-01-01', '2025-11-14')]).state]).toEqual(['met', 'not-yet'])
    const found = shown('veterinary', [visit('2025-01-01')], {within: 365})
    expect([found.state, until(found)]).toEqual(['met', '2026-01-01'])
    expect(until(shown('veterinary', [visit('2025-01-01', '2025-12-01')], {within: 365}))).toBe('2025-12-01')
    expect(until(shown('veterinary', [visit('2025-01-01')]))).toBeNull()
  })
  it('asks for one in place of the last', () => expect(shown('veterinary', [visit('2023-01-01', '2023-12-31'), visit('2024-01-01', '2024-12-31')])).toMatchObject({ways: [{kind: 'paper', more: 1, instead: {on: {text: '2024-01-01'}}, held: date('2024-12-31').last}]}))
})

describe('paperOrWord(requirement, sources)', () => {
  it('goes by a paper that holds, else by the keeper’s word; a paper that has run out is not yet', () => {
    const paper = plainPaper('name-free', '2024-01-01', '2024-12-31')
    expect([shown('name-free', []).state, shown('name-free', [paper]).state, shown('name-free', [paper], {stated: 'None is known.'}).state, shown('name-free', [plainPaper('name-free', '2024-01-01')]).state]).toEqual(['cannot-tell', 'not-yet', 'met', 'met'])
  })
})
