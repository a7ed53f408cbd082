import type {Bird, Logbook, Show, ShowEntry, Trait, Wanted} from '../logbook/book.ts'
import type {Spot} from '../records/problem.ts'
import type {Ordered} from '../statistics/kendall-orders.ts'
import {holm} from '../statistics/holm.ts'
import {kendallTau, type KendallTau} from '../statistics/kendall-tau.ts'
import {isGraded, placeOf} from './grade-places.ts'
import {grouped} from './grouped.ts'
import {REMARKABLE} from './remarkable.ts'
import type {PointsSheet, SheetsOfPoints} from './sheets-of-points.ts'
import {wantedOf} from './wanted-look.ts'

/** How far the judges put the birds in the order that the keepers' own marks put them. */
export interface JudgeAgreement {
  /** null: the share of all points on the keepers' own sheets */
  readonly trait: Trait | null
  /** null: all judges */
  readonly judge: string | null
  readonly tau: KendallTau
  /** those with two birds or more that both ordered */
  readonly classes: readonly ClassHeld[]
  readonly leftOut: {
    /** not placed, nor given points where nobody was placed; or disqualified, or without a class */
    readonly notPlaced: number
    /** without a mark of ours from before the show; struck and too early ones are none */
    readonly unscored: number
    /** the only one left of its class */
    readonly alone: number
  }
  /** is it among those the site lists: all judges together, and of each mark the `MOST_JUDGES` with the most pairs */
  readonly listed: boolean
  /** P with all that is listed and can be told taken in (Holm); null where it is not listed, or nothing could be told of it */
  readonly corrected: number | null
  /** how many were tested so */
  readonly tests: number
  /** `too-few`: even full agreement could be chance’s work; null where there is no order, or it is not listed */
  readonly verdict: 'alike' | 'otherwise' | 'cannot-tell' | 'too-few' | null
}

/** Judges listed of each mark, at most. */
export const MOST_JUDGES = 10

interface Mark {
  /** the higher the better */
  readonly mark: number
  /** where it stands in the records */
  readonly at: Spot
}

/** Our birds of one class of one show under one judge, the best by the judge first. */
export interface ClassHeld {
  readonly show: Show
  readonly class: string
  readonly birds: readonly (Mark & {readonly entry: ShowEntry; /** minus the place; where the class was not placed, the judge's points */ readonly worth: number})[]
}

/**
 * Do the judges see the birds as we do? Of every trait scored on a scale or by ordered states, and of the points on our own sheets: the pairs of our birds that one judge placed in one class (or gave points,
 * where nobody was placed), held against the last mark that we gave either before the day of the show. A mark is better the nearer it lies to what is wanted: higher where at least so much is, lower where
 * at most, else by how far it lies outside. Where nothing is wanted there is no better, and the trait is not held. All judges together, then each; classes are never mixed.
 *
 * @see `kendallTau`
 */
export function judgeAgreement({shows, traits}: Pick<Logbook, 'shows' | 'traits'>, {keepers}: SheetsOfPoints): readonly JudgeAgreement[] {
  const held = shows.filter(show => show.cancelled === null), sheets = grouped(keepers, ({bird}) => bird)
  const asks: readonly (readonly [Trait | null, (bird: Bird, show: Show) => Mark | null])[] = [
    ...traits.filter(isGraded).filter(({wanted}) => wanted.male !== null || wanted.female !== null).map(trait => [trait, (bird: Bird, show: Show) => markBefore(bird, trait, show)] as const),
    [null, (bird, show) => pointsBefore(sheets.get(bird) ?? [], show)],
  ]
  const found = asks.flatMap(([trait, mark]): Held[] => {
    const benches = held.flatMap(show => benchesOf(show, mark)), judges = [...new Set(held.flatMap(({entries}) => entries.flatMap(({judge}) => judge ?? [])))]
    const all = agreementOf(trait, null, benches)
    return all.tau.pairs === 0 ? [] : mostPairs([all, ...judges.map(judge => agreementOf(trait, judge, benches.filter(bench => bench.judge === judge))).filter(({tau}) => tau.pairs > 0)])
  })
  return judged(found)
}

type Held = Omit<JudgeAgreement, 'corrected' | 'tests' | 'verdict'>

/** What one judge had before him in one class, and what of it was left aside. */
interface Bench extends ClassHeld {
  readonly judge: string | null
  readonly leftOut: JudgeAgreement['leftOut']
}

function benchesOf(show: Show, markOf: (bird: Bird, show: Show) => Mark | null): Bench[] {
  return [...grouped(show.entries, entry => `${entry.class ?? ''}\n${entry.judge ?? ''}`).values()].flatMap((entries): Bench[] => {
    const [any] = entries, placings = entries.some(({place}) => place !== null)
    const placed = entries.flatMap(entry => {
      const worth = placings ? entry.place && -entry.place : entry.points
      return entry.class === null || worth === null || entry.disqualified ? [] : [{entry, worth}]
    })
    const birds = placed.flatMap(one => {
      const mark = markOf(one.entry.bird, show)
      return mark === null ? [] : [{...one, ...mark}]
    }).sort((a, b) => b.worth - a.worth)
    const leftOut = {notPlaced: entries.length - placed.length, unscored: placed.length - birds.length, alone: birds.length === 1 ? 1 : 0}
    return any ? [{show, class: any.class ?? '', judge: any.judge, birds: birds.length > 1 ? birds : [], leftOut}] : []
  })
}

function agreementOf(trait: Trait | null, judge: string | null, benches: readonly Bench[]): Held {
  const sum = (of: keyof Bench['leftOut']): number => benches.reduce((all, {leftOut}) => all + leftOut[of], 0)
  const classes = benches.filter(({birds}) => birds.length > 1)
  return {trait, judge, tau: kendallTau(classes.map(orderedOf)), classes, leftOut: {notPlaced: sum('notPlaced'), unscored: sum('unscored'), alone: sum('alone')}, listed: true}
}

const orderedOf = ({birds}: Bench): readonly Ordered[] => birds.map(({worth, mark, entry: {bird}}): Ordered => [worth, mark, bird])

/** Of one mark all judges together, then those with the most pairs: the others are not listed. */
function mostPairs(own: readonly Held[]): Held[] {
  const kept = new Set(own.filter(({judge, tau}) => judge !== null && tau.tau !== null).sort((a, b) => b.tau.pairs - a.tau.pairs).slice(0, MOST_JUDGES))
  return own.map(each => ({...each, listed: each.tau.tau !== null && (each.judge === null || kept.has(each))}))
}

const tooFew = ({tau: {leastP}}: Held): boolean => (leastP ?? 1) > REMARKABLE

function judged(found: readonly Held[]): JudgeAgreement[] {
  // a judge who alone judged all of a mark's pairs is no second test of them
  const allOf = new Map(found.filter(({judge}) => judge === null).map(each => [each.trait, each])), testOf = (each: Held): Held => {
    const all = allOf.get(each.trait)
    return all?.tau.pairs === each.tau.pairs ? all : each
  }
  const tested = [...new Set(found.filter(each => each.listed && !tooFew(each)).map(testOf))], chances = holm(tested.map(({tau: {p}}) => p ?? 1))
  return found.map(each => {
    const corrected = each.listed ? chances[tested.indexOf(testOf(each))] ?? null : null, told = corrected === null ? 'too-few' : corrected > REMARKABLE ? 'cannot-tell' : (each.tau.tau ?? 0) > 0 ? 'alike' : 'otherwise'
    return {...each, corrected, tests: tested.length, verdict: each.listed ? told : null}
  })
}

/** The last of our own marks from before the day, the higher the nearer to what is wanted. */
function markBefore(bird: Bird, trait: Trait, {on: day}: Show): Mark | null {
  const wanted = wantedOf(trait, bird.sex)
  const score = (bird.looks.get(trait)?.scores ?? []).filter(({struck, outside, on}) => struck === null && !outside && on !== null && on.last < day.first).at(-1)
  const place = score ? placeOf(trait, score.value) : null
  return !score || wanted === null || place === null ? null : {mark: better(trait, wanted, place), at: score.at}
}

function better({states}: Trait, wanted: Wanted, place: number): number {
  if (wanted.kind === 'at-least') return place
  if (wanted.kind === 'at-most') return -place
  if (wanted.kind === 'states') {
    const places = wanted.states.map(state => states.indexOf(state) + 1).filter(each => each > 0)
    const least = Math.min(...places), most = Math.max(...places)
    // wanted is the top of the order, or its end: then further is better throughout
    return most === states.length && least > 1 ? place : least === 1 && most < states.length ? -place : -Math.min(...places.map(each => Math.abs(each - place)))
  }
  const off = wanted.kind === 'about' ? Math.abs(wanted.value) * (wanted.tolerance ?? 0) : 0
  const [low, high] = wanted.kind === 'between' ? [wanted.low, wanted.high] : [wanted.value - off, wanted.value + off]
  return -Math.max(0, low - place, place - high)
}

/** The share of points on the last whole sheet of a bird that a keeper filled in before the day. */
function pointsBefore(own: readonly PointsSheet[], {on: day}: Show): Mark | null {
  const last = own.filter(({share, on}) => share !== null && on !== null && on.last < day.first).at(-1)
  return last && last.share !== null ? {mark: last.share, at: last.score.at} : null
}
