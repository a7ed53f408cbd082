import type {Clause, Draft, Tolerance, Trait, Wanted} from '../logbook/book.ts'
import {plainWords} from '../logbook/plain-words.ts'
import type {Spot} from '../records/problem.ts'
import type {AskChange} from './ask-changes.ts'
import type {FigureColumn, FiguresTable} from './figures.ts'
import {spanOf} from './range-change.ts'
import {recordPlaces} from './record-places.ts'
import {rowId, type StandardChanges} from './standard-changes.ts'

type Cell = string | number | null

const NAMES = ['piece', 'of', 'title', 'change', 'sex', 'was', 'is', 'was_low', 'was_high', 'is_low', 'is_high', 'unit', 'why', 'records'] as const
type Row = Partial<Record<(typeof NAMES)[number], Cell>>

const columns = (as: FigureColumn['as'], ...names: string[]): FigureColumn[] => names.map(name => ({name, as}))
const COLUMNS = [...columns('text', 'piece', 'of', 'title', 'change', 'sex', 'was', 'is'), ...columns('measure', 'was_low', 'was_high', 'is_low', 'is_high'), ...columns('text', 'unit', 'why', 'records')]

/** An end that is open, and what names no limits, has none. */
const finite = (value: number): number | null => (Number.isFinite(value) ? value : null)

function limits(side: 'was' | 'is', wanted: Wanted | null, trait: Trait): Row {
  if (wanted?.kind === 'states') return {[side]: wanted.states.join(' or ')}
  const span = wanted && spanOf(wanted, trait.scale)
  if (span) return {[`${side}_low`]: finite(span.low), [`${side}_high`]: finite(span.high)}
  return wanted?.kind === 'about' ? {[side]: `about ${wanted.value}`} : {}
}

const tolerated = (tolerance: Tolerance | null): string | null => tolerance && `${tolerance.what}, until ${tolerance.until}${tolerance.then === null ? '' : `, then ${tolerance.then}`}`

function askRow(ask: AskChange): Row {
  switch (ask.what) {
    case 'trait': return {change: 'other trait', was: ask.before.id, is: ask.after.id}
    case 'range': return {change: `range ${ask.is}`, sex: ask.sex, ...limits('was', ask.before, ask.trait), ...limits('is', ask.after, ask.trait), unit: ask.trait.unit}
    case 'mandatory': return {change: ask.after ? 'now mandatory' : 'now desirable'}
    case 'if-missed': return {change: 'if missed', was: ask.before, is: ask.after}
    case 'sex': return {change: 'other sex', was: ask.before ?? 'both', is: ask.after ?? 'both'}
    case 'tolerance': return {change: `tolerance ${ask.is}`, was: tolerated(ask.before), is: tolerated(ask.after)}
  }
}

const cameOrWent = (before: unknown, after: unknown): string => (before === null ? 'added' : after === null ? 'dropped' : 'changed')

function clauseRows({clauses, rows}: StandardChanges): readonly (Row & {readonly at: readonly Spot[]})[] {
  const at = (before: Clause | null, after: Clause | null): Spot[] => [before, after].flatMap(clause => (clause ? [clause.at] : []))
  return [
    ...clauses.flatMap(({id, title, is, before, after, retitled, moved, words, asks, why}) => {
      const whole: Row[] = is === 'added' || is === 'dropped' ? [{change: is}] : words === null ? [] : [{change: 'reworded'}]
      const changes: Row[] = [
        ...whole.map(row => ({...row, was: before && plainWords(before.text), is: after && plainWords(after.text)})),
        ...(retitled ? [{change: 'retitled', was: before?.title ?? null, is: after?.title ?? null}] : []), ...(moved ? [{change: 'moved', was: before?.id ?? null, is: id}] : []), ...asks.map(askRow),
      ]
      return changes.map(row => ({piece: id, of: 'clause', title, why, ...row, at: at(before, after)}))
    }),
    ...rows.flatMap(({id, before, after, asks, why}) => asks.map(ask => ({piece: id, of: id === 'egg' ? 'egg' : 'weight', title: (after ?? before)?.title ?? null, why, ...askRow(ask), at: at(before, after)}))),
  ]
}

/** Every change between two drafts, one row for each thing that changed; amounts in their unit, open ends empty. `records`: the files of both drafts, as far as they may be named. */
export function changesTable(changes: StandardChanges, tellable: ReadonlySet<string>): FiguresTable {
  const {from, to, head, sections, weights, points, varieties} = changes, both: readonly Spot[] = [from.at, to.at]
  const grams = (side: 'was' | 'is', weight: Draft['weights'][number] | null): Row => (weight === null ? {} : {[`${side}_low`]: weight.grams, [`${side}_high`]: weight.high ?? weight.grams})
  const rows: readonly (Row & {readonly at: readonly Spot[]})[] = [
    ...head.map(({id, before, after, why}) => (id === 'egg/at-least'
      ? {piece: id, of: 'egg', change: cameOrWent(before, after), was_low: before, is_low: after, unit: 'g', why, at: both} : {piece: id, of: 'head', change: cameOrWent(before, after), was: before, is: after, why, at: both})),
    ...sections.flatMap(({id, before, after, retitled, moved, words, why}) => ([
      ...(words === null ? [] : [{change: before === null ? 'added' : after === null ? 'dropped' : 'reworded', was: before && plainWords(before.lead), is: after && plainWords(after.lead)}]),
      ...(retitled ? [{change: 'retitled', was: before?.title ?? null, is: after?.title ?? null}] : []), ...(moved ? [{change: 'moved'}] : []),
    ] satisfies Row[]).map(row => ({piece: id, of: 'section', title: (after ?? before)?.title ?? null, why, ...row, at: both}))),
    ...clauseRows(changes),
    ...weights.map(({class: name, is, before, after, why}) => ({
      piece: rowId('weights', name), of: 'weight', title: name, change: is === 'given' ? 'added' : is === 'gone' ? 'dropped' : `range ${is}`, ...grams('was', before), ...grams('is', after), unit: 'g', why, at: both,
    })),
    ...points.map(({name, before, after, why}) => ({piece: rowId('scale', name), of: 'points', title: name, change: cameOrWent(before, after), was_low: before, was_high: before, is_low: after, is_high: after, unit: 'points', why, at: both})),
    ...varieties.map(({name, is, why}) => ({piece: name, of: 'variety', title: name, change: is === 'looks' ? 'other looks' : is, why, at: both})),
  ]
  return {columns: COLUMNS, rows: rows.map(({at, ...row}) => NAMES.map(name => (name === 'records' ? recordPlaces(at, tellable) : (row as Row)[name] ?? null)))}
}
