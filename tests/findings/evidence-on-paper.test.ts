import {describe, expect, it} from 'vitest'
import type {Evidence} from '../../src/findings/evidence.ts'
import {study} from '../../src/findings/study.ts'
import type {Paper, Requirement, RequirementKind} from '../../src/logbook/book.ts'
import {isoDay} from '../../src/records/dates.ts'
import {at, date, logbook} from '../pages/small-logbook.ts'
import {plainPaper, plainRequirement} from '../paper-parts.ts'
import {shownWords} from '../../src/pages/evidence-words.ts'
import {gapsBook} from './gaps-book.ts'

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

describe('a book looked back at', () => {
  // with rules for its genes, for of a look without them the keeper’s word alone tells nothing
  const comb = '---\nname: Comb\nstates: [pea, single]\ntarget: pea\nrequired: yes\nloci:\n  P: {on: autosome, alleles: [P, p+]}\nshows:\n  - {P: P/_, is: pea}\n  - {P: _/_, is: single}\n---\n'
  const then = (line: string, day: string | null) => {
    const [item] = study(gapsBook([line], {'traits/comb.md': comb}, day === null ? {} : {asOf: date(day).first})).evidence.items
    return item ?? expect.fail('no evidence')
  }
  it.each([
    ['kind: name-free, stated: None is known of.', 'met', 'cannot-tell', 'statement'], ['kind: distinct, at-least: 1', 'met', 'cannot-tell', 'table'], ['kind: distinct, at-least: 3', 'not-yet', 'cannot-tell', 'table'],
    ['kind: history, at-least: 9, waived: {because: Grown old.}', 'waived', 'cannot-tell', 'waiver'], ['kind: history, waived: {because: Grown old.}', 'waived', 'met', 'waiver'],
    ['kind: welfare, stated: No clause harms the bird.', 'met', 'cannot-tell', 'statement'],
  ])('does not know whether what bears no day was there: %s', (line, now, before, noDay) => {
    expect([then(line, null), then(line, '2025-11-15'), then(line, '2025-11-14')].map(item => [item.state, item.noDay])).toEqual([[now, null], [now, null], [before, noDay]])
  })
  it('keeps a waiver with a dated paper, and says what bears no day', () => {
    const dated = then('kind: statements, at-least: 9, waived: {because: Grown old., paper: s1.pdf}', '2025-11-14')
    expect([dated.state, dated.noDay]).toEqual(['waived', null])
    const item = then('kind: distinct, at-least: 1', '2025-11-14')
    expect(shownWords(item, gapsBook(['kind: history'], {}, {asOf: date('2025-11-14').first}))).toContain('The table of distinctness bears no day, and may be from after 14 November 2025.')
  })
})
