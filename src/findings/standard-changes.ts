import type {Clause, Draft, Logbook, Section, Variety} from '../logbook/book.ts'
import {slug} from '../logbook/draft-sections.ts'
import {tellsOrigin} from '../logbook/parts-of-standard.ts'
import {plainWords} from '../logbook/plain-words.ts'
import {askChanges, type AskChange} from './ask-changes.ts'
import {matchedDrafts} from './clauses-matched.ts'
import {rangeChange, spanChange, type RangeChange} from './range-change.ts'
import {wordChanges, type WordRun} from './word-changes.ts'

/** What changed from one draft of the standard to another. */
export interface StandardChanges {
  readonly from: Draft
  readonly to: Draft
  readonly head: readonly HeadChange[]
  readonly sections: readonly SectionChange[]
  readonly clauses: readonly ClauseChange[]
  /** rows of a table that are held against a trait: what is asked beside the weight itself */
  readonly rows: readonly RowChange[]
  readonly weights: readonly WeightChange[]
  readonly points: readonly AmountChange[]
  readonly varieties: readonly VarietyChange[]
}

interface Reasoned {
  /** as the draft that made the change says it; of several drafts each, oldest first */
  readonly why: string | null
}

/** What stands in the front matter as one thing. Grams for the egg's least weight. */
export interface HeadChange extends Reasoned {
  readonly id: 'title' | 'manner' | 'origin' | 'classification' | 'egg' | 'egg/at-least' | 'rings/male' | 'rings/female'
  readonly before: string | number | null
  readonly after: string | number | null
  readonly words: readonly WordRun[] | null
}

/** Of what stands before a section's first clause, its name and its place; a section that came or went without such words is told by its clauses. */
export interface SectionChange extends Reasoned {
  readonly id: string
  readonly before: Section | null
  readonly after: Section | null
  readonly retitled: boolean
  readonly moved: boolean
  /** its lead, old and new; null where the words are the same */
  readonly words: readonly WordRun[] | null
}

export interface ClauseChange extends Reasoned {
  readonly id: string
  readonly title: string
  /** the first of these that it is; `asked`: the words stayed, what is asked beside them did not */
  readonly is: 'added' | 'dropped' | 'reworded' | 'retitled' | 'moved' | 'asked'
  /** null for what was added, or dropped */
  readonly before: Clause | null
  readonly after: Clause | null
  readonly retitled: boolean
  /** at another place, whether in its section or another, or under another variety */
  readonly moved: boolean
  /** word by word, where it was reworded */
  readonly words: readonly WordRun[] | null
  readonly asks: readonly AskChange[]
}

export interface RowChange extends Reasoned {
  readonly id: string
  readonly before: Clause | null
  readonly after: Clause | null
  readonly asks: readonly AskChange[]
}

export interface AmountChange extends Reasoned {
  readonly name: string
  /** points; null: not in that draft */
  readonly before: number | null
  readonly after: number | null
}

export interface WeightChange extends Reasoned {
  readonly class: string
  readonly is: RangeChange
  /** grams; null: not in that draft */
  readonly before: Draft['weights'][number] | null
  readonly after: Draft['weights'][number] | null
}

export interface VarietyChange extends Reasoned {
  readonly name: string
  /** `looks`: it is told by other looks than before */
  readonly is: 'added' | 'dropped' | 'looks'
  readonly before: Variety | null
  readonly after: Variety | null
}

/** `weights/pullet`, `scale/type-and-carriage`: the id of a row in a table of the standard. */
export const rowId = (table: 'weights' | 'scale', name: string): string => `${table}/${slug(name)}`

/** The reasons that these drafts give for a piece: by its id, else by that of the part it is in (`weights` for every weight). */
function reasonIn(drafts: readonly Draft[], ...ids: readonly (string | null | undefined)[]): string | null {
  const given = drafts.flatMap(({reasons}) => {
    const own = ids.filter(id => typeof id === 'string')
    return own.map(id => reasons.get(id)).find(each => each !== undefined) ?? own.map(id => reasons.get(id.split('/')[0] ?? id)).find(each => each !== undefined) ?? []
  })
  return given.length === 0 ? null : [...new Set(given)].join(' ')
}

type Why = (...ids: readonly (string | null | undefined)[]) => string | null

const wordsIf = (before: string, after: string): readonly WordRun[] | null => {
  const was = plainWords(before), is = plainWords(after)
  return was === is ? null : wordChanges(was, is)
}

function headChanges(from: Draft, to: Draft, why: Why): readonly HeadChange[] {
  const one = (id: HeadChange['id'], before: string | null, after: string | null): readonly HeadChange[] => {
    const words = wordsIf(before ?? '', after ?? '')
    return words === null ? [] : [{id, before, after, words, why: why(id)}]
  }
  const title = (draft: Draft): string | null => (draft.title === '' ? null : draft.title)
  return [
    ...one('title', title(from), title(to)), ...one('manner', from.manner, to.manner),
    ...(tellsOrigin(from) || tellsOrigin(to) ? [] : one('origin', from.origin, to.origin)), ...one('classification', from.classification, to.classification), ...one('egg', from.egg, to.egg),
    ...(from.eggAtLeast === to.eggAtLeast ? [] : [{id: 'egg/at-least' as const, before: from.eggAtLeast, after: to.eggAtLeast, words: null, why: why('egg/at-least', 'egg')}]),
    ...one('rings/male', from.rings.male, to.rings.male), ...one('rings/female', from.rings.female, to.rings.female),
  ]
}

function weightChanges(from: Draft, to: Draft, why: Why): readonly WeightChange[] {
  const of = (draft: Draft, name: string): Draft['weights'][number] | null => draft.weights.find(weight => weight.class === name) ?? null
  return [...new Set([...to.weights, ...from.weights].map(weight => weight.class))].flatMap((name): WeightChange[] => {
    const before = of(from, name), after = of(to, name), span = ({grams, high}: Draft['weights'][number]) => ({low: grams, high: high ?? grams})
    const is = before && after ? spanChange(span(before), span(after)) : before ? 'gone' : 'given'
    return is === null ? [] : [{class: name, is, before, after, why: why(rowId('weights', name))}]
  })
}

function pointChanges(from: Draft, to: Draft, why: Why): readonly AmountChange[] {
  const of = (draft: Draft, name: string): number | null => draft.points.find(entry => entry.name === name)?.points ?? null
  return [...new Set([...to.points, ...from.points].map(({name}) => name))].flatMap(name => {
    const before = of(from, name), after = of(to, name)
    return before === after ? [] : [{name, before, after, why: why(rowId('scale', name))}]
  })
}

const sameLooks = (a: Variety, b: Variety): boolean =>
  a.looks.size === b.looks.size && [...a.looks].every(([trait, wanted]) => [...b.looks].some(([other, wish]) => other.id === trait.id && rangeChange(wanted, wish, trait.scale) === null))

function varietyChanges(from: Draft, to: Draft, why: Why): readonly VarietyChange[] {
  const of = (draft: Draft, name: string): Variety | null => draft.varieties.find(variety => variety.name === name) ?? null
  return [...new Set([...to.varieties, ...from.varieties].map(({name}) => name))].flatMap((name): VarietyChange[] => {
    const before = of(from, name), after = of(to, name), is = !before ? 'added' : !after ? 'dropped' : sameLooks(before, after) ? null : 'looks'
    return is === null ? [] : [{name, is, before, after, why: why(`colour/${slug(name)}`)}]
  })
}

function rowChanges(from: Draft, to: Draft, why: Why): readonly RowChange[] {
  const of = (draft: Draft, id: string): Clause | null => draft.rows.find(row => row.id === id) ?? null
  const ids = [...new Set([...to.rows, ...from.rows].map(({id}) => id))]
  return ids.flatMap(id => {
    const before = of(from, id), after = of(to, id), either = after ?? before
    if (!either) return []
    // a row without an entry asks nothing beside what stands in its table; a weight's range is that of the table
    const nothing: Clause = {...either, allows: {male: null, female: null}, ownRange: false, mandatory: false, ifMissed: null, accepted: null}
    const asks = askChanges(before ?? nothing, after ?? nothing).filter(ask => ask.what !== 'range' || !id.startsWith('weights/'))
    return asks.length === 0 ? [] : [{id, before, after, asks, why: why(id)}]
  })
}

/**
 * What changed between two drafts, in the order of the newer one, dropped pieces last? White space and marks of Markdown are no change.
 *
 * @param between  the drafts after `from` up to `to`, oldest first, whose reasons are given; else those of `to` alone
 */
export function changesBetween(from: Draft, to: Draft, between: readonly Draft[] = [to]): StandardChanges {
  const matched = matchedDrafts(from, to), why: Why = (...ids) => reasonIn(between, ...ids)
  const sections = matched.sections.flatMap(({before, after, moved}): SectionChange[] => {
    const words = wordsIf(before?.lead ?? '', after?.lead ?? ''), retitled = before !== null && after !== null && before.title !== after.title
    return words === null && !retitled && !moved ? [] : [{id: (after ?? before)?.id ?? '', before, after, retitled, moved, words, why: why(after?.id, before?.id)}]
  })
  const clauses = matched.clauses.flatMap(({before, after, moved}): ClauseChange[] => {
    const either = after ?? before
    if (!either) return []
    const shape = {id: either.id, title: either.title, before, after, why: why(after?.id, before?.id)}
    if (!before || !after) return [{...shape, is: after ? 'added' : 'dropped', retitled: false, moved: false, words: null, asks: []}]
    const words = wordsIf(before.text, after.text), retitled = before.title !== after.title, asks = askChanges(before, after)
    const is = words !== null ? 'reworded' : retitled ? 'retitled' : moved ? 'moved' : asks.length > 0 ? 'asked' : null
    return is === null ? [] : [{...shape, is, retitled, moved, words, asks}]
  })
  return {
    from, to, head: headChanges(from, to, why), sections, clauses, rows: rowChanges(from, to, why), weights: weightChanges(from, to, why), points: pointChanges(from, to, why),
    varieties: varietyChanges(from, to, why),
  }
}

/** The same between any two drafts of a book, with the reasons of all that lie between them. */
export const changesOfBook = ({drafts}: Pick<Logbook, 'drafts'>, from: Draft, to: Draft): StandardChanges =>
  changesBetween(from, to, drafts.slice(drafts.indexOf(from) + 1, drafts.indexOf(to) + 1))

/** What did each draft of the standard change, and why? One entry for each draft after the first, oldest first. */
export const standardChanges = ({drafts}: Pick<Logbook, 'drafts'>): readonly StandardChanges[] =>
  drafts.flatMap((to, index) => {
    const from = drafts[index - 1]
    return from ? [changesBetween(from, to)] : []
  })
