import {describe, expect, it} from 'vitest'
import {study} from '../../src/findings/study.ts'
import type {Bird, Clause, Draft, Logbook, Score, Sex} from '../../src/logbook/book.ts'
import {clausesPage, type ClausesView} from '../../src/pages/clauses.ts'
import {bird, comb, date, F1, F2, logbook, looks, parents, score, trait} from './small-logbook.ts'
import {plainClause, plainDraft, plainSection} from '../paper-parts.ts'

const pea = {kind: 'states', states: ['pea']} as const
const tail = trait('tail-angle', 'Tail angle', {kind: 'measured', unit: 'degrees', measure: 'tail-angle'})
const combClause = (text: string, more: Partial<Clause> = {}): Clause => plainClause('male/comb', 'Comb', text, {trait: comb, allows: {male: pea, female: pea}, mandatory: true, ifMissed: 'disqualifying', ...more})
const tailClause = plainClause('male/tail', 'Tail', 'Up.', {trait: tail, allows: {male: {kind: 'between', low: 40, high: 50}, female: {kind: 'between', low: 30, high: 45}}})
const draft = (number: number, on: string, ...clauses: readonly Clause[]): Draft => plainDraft(number, on, {sections: [plainSection('male', clauses)]})

let number = 0
const chick = (sex: Sex, scores: readonly Score[], more: Partial<Bird> = {}): Bird => bird(`c-${++number}`, sex, {hatched: date('2024-04-01'), step: F2, strain: null, looks: looks(...scores), ...more})
const viewOf = (more: Partial<Logbook>): ClausesView => clausesPage(study(logbook('2025-06-01', {traits: [comb, tail], ...more})))[0]?.view as ClausesView
const seen = (value: string, on = '2025-02-01'): Score => score(comb, value, {on: date(on)})

const first = bird('f1', 'male', {hatched: date('2022-04-01'), step: F1, strain: null, looks: looks(seen('pea'))})
const FLOCK = [first, chick('male', [seen('pea'), score(tail, 52)], {parentage: parents([[first, 1]], null)}), chick('male', [seen('single'), score(tail, 44)]), chick('female', [seen('pea'), score(tail, 31)]), chick('female', [])]

describe('clausesPage(findings)', () => {
  it('lists the worst clause first, each sex that it speaks of with what it allows, its limits and those not scored', () => {
    const {table, lead, unscored} = viewOf({birds: FLOCK, drafts: [draft(1, '2022-01-10', combClause('Pea.'), tailClause, plainClause('male/neck', 'Neck', 'Long.'))]})
    expect(lead).toBe('Draft 1 of 10 January 2022, beside the birds of F2: the lowest share so far is that of “Comb”, which 2 of 3 (66.7%, 20.8 to 93.9) meet; one clause nobody scores.')
    expect(table?.rows.map(row => row.map(cell => (typeof cell === 'string' ? cell : cell.text)))).toEqual([
      ['Comb, males', 'pea', 'disqualifying', '1 of 2', '50.0', '9.5–90.5', '0', '3 of 4'], ['Comb, females', 'pea', 'disqualifying', '1 of 1', '100.0', '20.7–100.0', '1', '–'],
      ['Tail, males', '40 to 50°', '–', '1 of 2', '50.0', '9.5–90.5', '0', '2 of 3'], ['Tail, females', '30 to 45°', '–', '1 of 1', '100.0', '20.7–100.0', '1', '–'],
    ])
    expect(table?.rows[0]?.[0]).toMatchObject({link: 'standard.html#male-comb'})
    expect(unscored).toMatchObject([{head: 'Words alone, no trait shows whether a bird meets them', clauses: [{name: 'Neck', link: 'standard.html#male-neck'}]}])
  })

  it('says what cannot be told apart from the step before', () => {
    expect(viewOf({birds: FLOCK, drafts: [draft(1, '2022-01-10', combClause('Pea.'))]}).since).toBe('Since F1 the two steps cannot be told apart in “Comb” (100.0% then).')
  })

  it('keeps what was scored under other words in a table of its own', () => {
    const {others, table} = viewOf({birds: [chick('male', [seen('pea', '2024-06-01')]), chick('male', [seen('single', '2021-06-01')]), chick('male', [seen('pea')])], drafts: [draft(1, '2022-01-10', combClause('Small.', {allows: {male: pea, female: null}})), draft(2, '2025-01-10', combClause('Pea.'))]})
    expect(table?.rows.map(row => row[3])).toEqual(['1 of 1'])
    expect(others?.rows.map(row => row.map(cell => (typeof cell === 'string' ? cell : cell.text)))).toEqual([['Comb', 'draft 1', '1 of 1', '100.0', '20.7–100.0'], ['Comb', 'no draft that has it', '0 of 1', '0.0', '0.0–79.3']])
  })

  it('tells of what is still accepted, of birds whose variety or sex is not known, and of families', () => {
    const accepted = {what: 'Single combs in old birds', looks: {male: {kind: 'states', states: ['single']}, female: null}, until: 2025, then: 'serious'} as const
    const {notes, table, lead} = viewOf({birds: [chick('male', [seen('single')]), chick('unknown', [seen('pea')])], drafts: [draft(1, '2022-01-10', combClause('Pea.', {accepted, allows: {male: pea, female: null}}))]})
    expect(table?.rows[0]?.slice(3, 5)).toEqual(['0 of 1, 1 more accepted until 2025', '0.0'])
    expect(lead).toContain('the flock meets every clause it was scored for, in part by what is still accepted;')
    expect(notes).toEqual(['Comb: accepted until the season of 2025: single combs in old birds; afterwards a serious fault. One bird of the latest step and 1 of all counts by that alone. One bird of the latest step scored, but not to be judged while unsexed.'])
  })

  it('says of both sexes what either is allowed, where the two differ and nobody of the latest step was scored', () => {
    const allows = (clause: Clause): unknown => viewOf({birds: [bird('f2', 'male', {hatched: date('2022-04-01'), step: F1, strain: null, looks: looks(score(tail, 44))}), chick('female', [])], drafts: [draft(1, '2022-01-10', clause)]}).table?.rows[0]?.[1]
    expect(allows(tailClause)).toBe('males 40 to 50°; females 30 to 45°')
    expect(allows({...tailClause, allows: {...tailClause.allows, female: null}})).toBe('40 to 50°')
  })

  it('is there only where something is drafted', () => {
    expect(clausesPage(study(logbook('2025-06-01', {birds: FLOCK})))).toEqual([])
    expect(viewOf({drafts: [draft(1, '2022-01-10', combClause('Pea.'))]})).toMatchObject({lead: 'Draft 1 of 10 January 2022: one clause nobody scores.', table: null})
  })
})
