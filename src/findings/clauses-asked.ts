import type {Clause, Draft, Logbook, Requirement, Trait} from '../logbook/book.ts'
import {clausesOf} from '../logbook/clauses-of.ts'
import {canBeHeld} from './clause-counts.ts'
import {sameName} from './same-name.ts'
import {requiredTraits} from './verdict.ts'

/** One thing that chicks are held against. */
export interface AskedLook {
  /** null: a required trait as it stands */
  readonly clause: Clause | null
  /** the trait, with what the clause allows in place of its own target */
  readonly trait: Trait
  /** the trait itself, which chicks are scored for */
  readonly scored: Trait
}

/** What a requirement asks of a chick. */
export interface LooksAsked {
  /** the clauses it names · the mandatory clauses of the latest draft · the required traits, where no clause is mandatory */
  readonly by: 'clauses' | 'mandatory' | 'required'
  readonly draft: Draft | null
  readonly looks: readonly AskedLook[]
  /** ids of clauses asked for that nothing can be held against: not in the latest draft, without a trait, or not saying what they allow */
  readonly untold: readonly string[]
}

/**
 * Which looks is a requirement about? Those of the clauses it names; else of all mandatory clauses of the latest draft; else the required traits.
 * A clause of a colour variety that the requirement does not name is passed over where it names some.
 */
export function looksAsked({clauses: named, varieties}: Pick<Requirement, 'clauses' | 'varieties'>, book: Pick<Logbook, 'drafts' | 'traits'>): LooksAsked {
  const draft = book.drafts.at(-1) ?? null, all = draft ? clausesOf(draft) : []
  const clauses = named.length > 0 ? named.map(id => all.find(clause => clause.id === id) ?? id) : all.filter(clause => clause.mandatory && isAskedVariety(clause, {varieties}))
  if (clauses.length === 0) return {by: 'required', draft, looks: requiredTraits(book).map(trait => ({clause: null, trait, scored: trait})), untold: []}
  const looks = clauses.flatMap(clause => (typeof clause === 'string' ? [] : lookOf(clause) ?? []))
  const told = new Set(looks.map(({clause}) => clause?.id))
  return {by: named.length > 0 ? 'clauses' : 'mandatory', draft, looks, untold: clauses.map(clause => (typeof clause === 'string' ? clause : clause.id)).filter(id => !told.has(id))}
}

/** Is a clause of no colour variety, or of one that a requirement is about? */
export const isAskedVariety = ({variety}: Clause, {varieties}: Pick<Requirement, 'varieties'>): boolean => variety === null || varieties.length === 0 || varieties.some(each => sameName(each, variety))

/** What a clause asks of a chick; null where nothing can be held against it. */
export function lookOf(clause: Clause): AskedLook | null {
  const {trait, allows} = clause
  return trait && canBeHeld(clause) ? {clause, trait: {...trait, wanted: allows}, scored: trait} : null
}
