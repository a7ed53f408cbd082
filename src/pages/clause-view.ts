/** Clauses and sections of the standard as they are printed: the run-in head, the words, what is asked beside them, what is still accepted. */
import {yearOf, type Day} from '../records/dates.ts'
import {fileName} from '../records/file-name.ts'
import {isUnderItsVariety} from '../logbook/clause-ids.ts'
import {clausesOf} from '../logbook/clauses-of.ts'
import {isOfFaults} from '../logbook/parts-of-standard.ts'
import type {Clause, Draft, Project, Section, Tolerance} from '../logbook/book.ts'
import {acceptedWords, askedWords, expiredWords, SEVERITY_WORDS} from './ask-words.ts'
import {traitPath} from './links.ts'
import {sentence} from './numbers.ts'
import {clauseName} from './standard-changes.ts'

export interface ClauseView {
  readonly id: string
  /** empty: what a variety is, told under its heading */
  readonly title: string
  /** Markdown */
  readonly text: string
  readonly changed: boolean
  readonly trait: string | null
  /** the variety that begins with it, as a heading */
  readonly variety: {readonly id: string; readonly title: string} | null
  /** its range, whether it is required, what it is to miss it; empty: nothing beside its words */
  readonly asked: string
  /** what may still be shown; null: nothing, or no longer */
  readonly accepted: string | null
}

export interface SectionView {
  readonly id: string
  readonly title: string
  /** Markdown */
  readonly lead: string
  readonly leadChanged: boolean
  readonly clauses: readonly ClauseView[]
  /** the section after which plates stand, and brief facts where they follow it */
  readonly first: boolean
  /** under the last of the faults: what the clauses themselves say of missing them */
  readonly note: string | null
}

/** Both rings, and both facts of an egg, stand in one line of the brief facts, so they share its anchor. */
export const anchorOf = (id: string): string => (/^(?:rings\/(?:fe)?male|egg\/at-least)$/.test(id) ? id.replace(/\/.*$/, '') : fileName(id.replaceAll('/', '-')))

/** As printed on a day: null prints every tolerance, whether its season is over or not, as in a draft that is kept as it stood. */
export interface PrintedAs {
  readonly changed: ReadonlySet<string>
  readonly units: Project['units']
  readonly season: number | null
}

export const seasonOf = (asOf: Day): number => yearOf(asOf)

const isAccepted = ({until}: Tolerance, season: number | null): boolean => season === null || until >= season

/** What is asked of a row of a table, or of the egg, beside what stands there; empty: nothing. */
export function rowNote({rows}: Draft, id: string, {units, season}: PrintedAs): string {
  const row = rows.find(each => each.id === id)
  return row ? [askedWords({...row, ownRange: false}, units), row.accepted && isAccepted(row.accepted, season) ? acceptedWords(row.accepted) : ''].filter(part => part !== '').join(' ') : ''
}

function clauseView(clause: Clause, under: string | null, {changed, units, season}: PrintedAs): ClauseView {
  const {id, title, text, variety, trait, accepted} = clause
  const begins = variety !== null && variety !== under, whole = variety === title
  return {
    id: anchorOf(id), title: whole && under === variety ? '' : title, text, changed: changed.has(id), trait: trait ? traitPath(trait) : null,
    variety: begins && !whole ? {id: anchorOf(id.split('/').slice(0, 2).join('/')), title: variety} : null,
    asked: askedWords(clause, units), accepted: accepted && isAccepted(accepted, season) ? acceptedWords(accepted) : null,
  }
}

/** The variety whose heading a clause stands under: one that only its entry names has none. */
const headed = ({id}: Section, clause: Clause): string | null => (isUnderItsVariety(clause, id) ? clause.variety : null)

export function sectionView(section: Section, title: string, printed: PrintedAs): SectionView {
  const all = section.clauses.map(clause => ({...clause, variety: headed(section, clause)}))
  // a variety that is told in words of its own and by sex as well has its heading above both
  const told = new Set(all.filter(({variety, title: name}) => variety !== name).map(({variety}) => variety))
  let under: string | null = null
  const clauses = all.map((clause): ClauseView => {
    if (clause.variety !== null && clause.variety === clause.title && told.has(clause.variety)) {
      const view = {...clauseView(clause, clause.variety, printed), variety: {id: `${anchorOf(clause.id)}-variety`, title: clause.variety}}
      under = clause.variety
      return view
    }
    const view = clauseView(clause, under, printed)
    under = clause.variety
    return view
  })
  return {id: anchorOf(section.id), title, lead: section.lead, leadChanged: printed.changed.has(section.id), clauses, first: false, note: null}
}

/** What the clauses themselves say of missing them, gathered as a judge looks it up; null where none does. */
export function missedWords(draft: Draft): string | null {
  const outside = clausesOf({...draft, sections: draft.sections.filter(section => !isOfFaults(section))})
  const parts = (['disqualifying', 'serious', 'minor'] as const).flatMap(severity => {
    const names = outside.filter(clause => clause.ifMissed === severity).map(clause => clauseName(draft, clause))
    return names.length === 0 ? [] : [`${sentence(SEVERITY_WORDS[severity])} if missed: ${names.map((name, place) => (place === 0 ? name : name.charAt(0).toLowerCase() + name.slice(1))).join('; ')}.`]
  })
  return parts.length === 0 ? null : `By the clauses themselves. ${parts.join(' ')}`
}

/** Tolerances of a draft whose last season is over, for the page of what changed. */
export const expiredTolerances = (draft: Draft, asOf: Day): readonly {readonly what: string; readonly anchor: string; readonly words: string}[] =>
  clausesOf(draft).flatMap(clause => (clause.accepted && clause.accepted.until < seasonOf(asOf) ? [{what: clauseName(draft, clause), anchor: anchorOf(clause.id), words: expiredWords(clause.accepted)}] : []))
