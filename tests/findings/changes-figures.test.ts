import {describe, expect, it} from 'vitest'
import {changesTable} from '../../src/findings/changes-figures.ts'
import {changesBetween} from '../../src/findings/standard-changes.ts'
import type {Clause} from '../../src/logbook/book.ts'
import {CHANGES_COLUMN_WORDS} from '../../src/pages/changes-columns.ts'
import {plainClause, plainDraft, plainSection} from '../paper-parts.ts'
import {comb} from '../pages/small-logbook.ts'

const tail = {...comb, id: 'tail-angle', kind: 'measured' as const, states: [], unit: 'degrees'}
const range = (low: number, high: number | null): Partial<Clause> => ({trait: tail, ownRange: true, sex: 'male', allows: {male: high === null ? {kind: 'at-least', value: low} : {kind: 'between', low, high}, female: null}})
const file = (number: number) => ({file: `standard/${number}.md`, path: []})
const draft = (number: number, more: Partial<Clause>, grams: number) => plainDraft(number, `202${number}-01-01`, {
  at: file(number), egg: number === 1 ? 'tinted' : 'white', eggAtLeast: number === 1 ? null : 55, weights: [{class: 'cock', grams, high: null}], points: [{name: 'Type', points: 30 + number}],
  sections: [plainSection('body', [plainClause('body/tail', 'Tail', 'Low.', {...more, at: file(number)})])], reasons: new Map([['body/tail', 'As measured.']]),
})

const rowsOf = (before: Partial<Clause>, after: Partial<Clause>, tellable = ['standard/1.md', 'standard/2.md']) => {
  const {columns, rows} = changesTable(changesBetween(draft(1, before, 3200), draft(2, after, 3100)), new Set(tellable))
  return rows.map(row => Object.fromEntries(columns.map(({name}, index) => [name, row[index] ?? null]).filter(([, cell]) => cell !== null)))
}

describe('changesTable(changes)', () => {
  it('has a row for each thing that changed, amounts in their unit, open ends empty', () => {
    const both = {records: 'standard/1.md standard/2.md'}, clause = {piece: 'body/tail', of: 'clause', title: 'Tail', why: 'As measured.', ...both}
    expect(rowsOf(range(40, 50), {...range(40, null), mandatory: true, ifMissed: 'serious', accepted: {what: 'A high tail', looks: {male: null, female: null}, until: 2026, then: 'minor'}})).toEqual([
      {piece: 'egg', of: 'head', change: 'changed', was: 'tinted', is: 'white', ...both}, {piece: 'egg/at-least', of: 'egg', change: 'added', is_low: 55, unit: 'g', ...both},
      {...clause, change: 'range wider', was_low: 40, was_high: 50, is_low: 40, unit: 'degrees'}, {...clause, change: 'now mandatory'}, {...clause, change: 'if missed', is: 'serious'},
      {...clause, change: 'tolerance added', is: 'A high tail, until 2026, then minor'},
      {piece: 'weights/cock', of: 'weight', title: 'cock', change: 'range down', was_low: 3200, was_high: 3200, is_low: 3100, is_high: 3100, unit: 'g', ...both},
      {piece: 'scale/type', of: 'points', title: 'Type', change: 'changed', was_low: 31, was_high: 31, is_low: 32, is_high: 32, unit: 'points', ...both},
    ])
  })
  it('names no file that may not be named', () => expect(rowsOf({}, {mandatory: true}, ['standard/2.md']).map(({records}) => records)).toEqual(Array.from({length: 5}, () => 'standard/2.md')))
  it('has words for each of its columns', () => expect(changesTable(changesBetween(draft(1, {}, 1), draft(2, {}, 1)), new Set()).columns.map(({name}) => name)).toEqual(Object.keys(CHANGES_COLUMN_WORDS)))
})
