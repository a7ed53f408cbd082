import type {Logbook, Requirement, RequirementKind} from '../logbook/book.ts'
import {distinctness} from './evidence-of-distinctness.ts'
import {photographs} from './evidence-of-pictures.ts'
import {aliveBreeders, independentKeepers} from './evidence-of-people.ts'
import {history, identity} from './evidence-of-records.ts'
import {birdsPerShow, consecutiveShows} from './evidence-of-show-years.ts'
import {shownPerClass, showResult, showsAndJudges} from './evidence-of-shows.ts'
import {writtenStandard} from './evidence-of-standard.ts'
import {interSeGenerations, yearsBred} from './evidence-of-years.ts'
import {paperOrWord, statementPapers, veterinaryPaper} from './evidence-on-paper.ts'
import {inbreeding} from './evidence-of-closeness.ts'
import {fixed} from './evidence-of-genes.ts'
import {trueToType} from './evidence-of-type.ts'
import {evenWeight} from './evidence-of-weight.ts'
import {welfare} from './evidence-of-welfare.ts'
import type {Finding} from './evidence-found.ts'
import {lastDayOf} from './next-season.ts'
import type {Earliest} from './ways.ts'
import type {Sources} from './evidence-shown.ts'

/** What the records show for one requirement. */
export interface Evidence extends Omit<Finding, 'state'> {
  readonly requirement: Requirement
  readonly state: 'met' | 'not-yet' | 'cannot-tell' | 'waived'
  /** what the records show, whoever waived it */
  readonly found: Finding['state']
  /** a waiver was given and no longer holds */
  readonly lapsed: boolean
  /** the day by which it must be reached is past, and it was not reached or waived */
  readonly late: boolean
  /** of a book looked back at: what it rests on bears no day, so that nobody can say whether it was there; null where all has its day */
  readonly noDay: 'statement' | 'table' | 'waiver' | null
  /** the shortest way leads past the day by which it must be reached */
  readonly beyond: boolean
}

export interface EvidenceOfAll {
  readonly items: readonly Evidence[]
  readonly counts: {readonly met: number; readonly notYet: number; readonly cannotTell: number; readonly waived: number; readonly all: number}
}

/** One way to look for each kind of requirement. */
const WAYS: Readonly<Record<RequirementKind, (requirement: Requirement, from: Sources) => Finding>> = {
  'years-bred': yearsBred,
  'inter-se-generations': interSeGenerations,
  'independent-keepers': independentKeepers,
  'breeders-alive': aliveBreeders,
  'shown-per-class': shownPerClass,
  'shows-and-judges': showsAndJudges,
  'show-result': showResult,
  'true-to-type': trueToType,
  'fixed': fixed,
  'even-weight': evenWeight,
  'written-standard': writtenStandard,
  'distinct': distinctness,
  'name-free': paperOrWord,
  'history': history,
  'photographs': photographs,
  'statements': statementPapers,
  'veterinary': veterinaryPaper,
  'welfare': welfare,
  'inbreeding': inbreeding,
  'identity': identity,
  'consecutive-shows': consecutiveShows,
  'birds-per-show': birdsPerShow,
}

/**
 * What has been reached of what the association asks? For each requirement the numbers the records show and whether they reach
 * what is asked: met, not yet, cannot be told (nothing counted, or no figure asked for to hold it against), or waived by
 * whoever may waive it, on which day it still holds. The association's own reading decides; this only lays the records beside its words.
 */
export function evidence(book: Logbook, from: Sources): EvidenceOfAll {
  const items = (book.requirements?.items ?? []).map((requirement): Evidence => {
    const {state, ...rest} = WAYS[requirement.kind](requirement, from), {waived, by} = requirement, lapsed = waived?.until ? waived.until.last < book.asOf : false
    const restsOn = book.isEarlier === true ? undatedOf(state, rest.shown) : null, found = restsOn === null ? state : 'cannot-tell', isWaived = waived !== null && !lapsed
    const isDoubted = isWaived && book.isEarlier === true && waived.on === null, now = isDoubted ? (found === 'met' ? 'met' : 'cannot-tell') : isWaived ? 'waived' : found
    return {
      requirement, ...rest, found, state: now, lapsed, noDay: restsOn ?? (isDoubted ? 'waiver' : null), late: by !== null && by.last < book.asOf && (now === 'not-yet' || now === 'cannot-tell'),
      beyond: by !== null && rest.ways.some(({earliest}) => firstDayOf(earliest) > by.last),
    }
  })
  const count = (state: Evidence['state']): number => items.filter(item => item.state === state).length
  return {items, counts: {met: count('met'), notYet: count('not-yet'), cannotTell: count('cannot-tell'), waived: count('waived'), all: items.length}}
}

/** What decided it bears no day: the keeper's own statement, or the table of distinctness. */
function undatedOf(state: Finding['state'], shown: Finding['shown']): 'statement' | 'table' | null {
  if (shown.kind === 'distinct') return 'table'
  return shown.kind === 'stated' || (shown.kind === 'welfare' && state === 'met' && shown.stated !== null && shown.valid.length === 0) ? 'statement' : null
}

/** The first day on which it can be; of what nobody can say none is too late. */
const firstDayOf = (earliest: Earliest | null): number => (earliest === null ? -Infinity : earliest.kind === 'day' ? earliest.day : lastDayOf(earliest.season - 1) + 1)
