import type {Bird, Logbook, Show, ShowEntry, Trait, Wanted} from '../logbook/book.ts'
import type {Spot} from '../records/problem.ts'
import type {Ordered} from '../statistics/kendall-orders.ts'
import {kendallTau, type KendallTau} from '../statistics/kendall-tau.ts'
import {isGraded, placeOf} from './grade-places.ts'
import {grouped} from './grouped.ts'
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
}

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
  const judges = [...new Set(held.flatMap(({entries}) => entries.flatMap(({judge}) => judge ?? [])))]
  return asks.flatMap(([trait, mark]) => {
    const all = agreementOf(trait, null, held, mark)
    return all.tau.pairs === 0 ? [] : [all, ...judges.map(judge => agreementOf(trait, judge, held, mark)).filter(({tau}) => tau.pairs > 0)]
  })
}

function agreementOf(trait: Trait | null, judge: string | null, held: readonly Show[], markOf: (bird: Bird, show: Show) => Mark | null): JudgeAgreement {
  const left = {notPlaced: 0, unscored: 0, alone: 0}, classes: ClassHeld[] = []
  for (const show of held) {
    const own = show.entries.filter(entry => judge === null || entry.judge === judge)
    for (const [key, entries] of grouped(own, entry => `${entry.class ?? ''}\n${entry.judge ?? ''}`)) {
      const placings = entries.some(({place}) => place !== null)
      const placed = entries.flatMap(entry => {
        const worth = placings ? entry.place && -entry.place : entry.points
        return entry.class === null || worth === null || entry.disqualified ? [] : [{entry, worth}]
      })
      left.notPlaced += entries.length - placed.length
      const birds = placed.flatMap(one => {
        const mark = markOf(one.entry.bird, show)
        return mark === null ? [] : [{...one, ...mark}]
      }).sort((a, b) => b.worth - a.worth)
      left.unscored += placed.length - birds.length
      if (birds.length > 1) classes.push({show, class: key.slice(0, key.indexOf('\n')), birds})
      else left.alone += birds.length
    }
  }
  return {trait, judge, tau: kendallTau(classes.map(({birds}) => birds.map(({worth, mark}): Ordered => [worth, mark]))), classes, leftOut: left}
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
