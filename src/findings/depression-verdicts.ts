import {holm} from '../statistics/holm.ts'
import {countsToTell, timesToTell} from '../statistics/numbers-to-tell.ts'
import type {Depression} from './depression.ts'
import type {Interval} from './estimate.ts'
import type {TermEffect} from './inbreeding-model.ts'
import type {PublishedRange} from './published-vigour.ts'
import {REMARKABLE} from './remarkable.ts'

type Effect = Extract<TermEffect, {readonly kind: 'effect'}>

/** An effect, judged among all that were tested. */
export interface JudgedEffect {
  readonly of: Depression
  readonly effect: Effect
  /** P with the number of tests taken in; null where none was tested */
  readonly corrected: number | null
  /** `may-be-chance`: its own interval holds harm alone, and of so many tests one such may come of chance · `little`: it holds nothing, and no loss as great as others found */
  readonly verdict: 'harm' | 'may-be-chance' | 'cannot-tell' | 'little' | 'no-harm'
  /** the largest loss that the interval holds, above 0, in the unit of the change; null where it holds none, or there is no interval */
  readonly mostLost: number | null
  /** of F of the chick alone. `less`: as much as others found is excluded · `more`: others found less · `agrees`: the interval holds some of what they found; null where nothing is published */
  readonly beside: 'less' | 'more' | 'agrees' | null
  /** on one scale for all: a share as it is, what is measured as a part of its mean; `published` of F of the chick alone. null where the mean is not above 0 */
  readonly relative: {readonly change: number; readonly interval: Interval | null; readonly published: Interval | null} | null
}

/** What it would take to tell a loss as great as this for ten points of F of the chick. */
export interface RecordsToTell {
  /** above 0, in the unit of the changes */
  readonly loss: number
  /** did others find as much, or is it our own choice, where nothing is published? */
  readonly published: boolean
  /** how many times the records there are, if those to come are as these; null where no error is known */
  readonly times: number | null
  /** so many eggs, chicks, birds or hens in all, hatches, and pairs; null as `times` */
  readonly n: number | null
  readonly groups: number | null
  readonly pairs: number | null
  /** eggs or chicks of parents that are no kin, and as many of full sibs, set side by side, if each stood alone; null for what is measured, or where no share is known */
  readonly sideBySide: number | null
  /** the same loss between chicks of full sibs and of birds that are no kin, F 25 points apart; above 0 */
  readonly ofSibs: number
}

export interface DepressionVerdicts {
  readonly judged: readonly JudgedEffect[]
  readonly tests: number
  readonly toTell: (of: Depression) => RecordsToTell | null
}

/** a loss of so many points where nothing is published; our own choice */
const OWN_LOSS = 0.05
/** F of chicks of full sibs, in tens of points */
const OF_SIBS = 2.5

function beside({interval, term}: Effect, published: PublishedRange | null): JudgedEffect['beside'] {
  if (published === null || interval === null || term !== 'chickF') return null
  return interval.low > published.high ? 'less' : interval.high < published.low ? 'more' : 'agrees'
}

function relative({mean, count, published}: Depression, {change, interval, term}: Effect): JudgedEffect['relative'] {
  if (mean === null || !(mean > 0)) return null
  const unit = count === null ? mean : 1, scaled = ({low, high}: Interval): Interval => ({low: low / unit, high: high / unit})
  return {change: change / unit, interval: interval && scaled(interval), published: published && term === 'chickF' ? scaled(published) : null}
}

/** About the error of a change: its interval is some four of them long. */
function errorOf(of: Depression): number | null {
  const found = of.effects.find(({term}) => term === 'chickF')
  return found?.kind === 'effect' && found.interval !== null ? (found.interval.high - found.interval.low) / 4 : null
}

function toTell(of: Depression): RecordsToTell | null {
  const {published, count, n, groups, pairs, mean} = of, error = errorOf(of), loss = published ? -published.low : count !== null ? OWN_LOSS : null
  if (loss === null || !(loss > 0) || mean === null) return null
  const times = error === null || !(error > 0) ? null : timesToTell(error, loss), ofSibs = OF_SIBS * loss, sibs = mean - ofSibs
  return {
    loss, published: published !== null, times, n: times === null ? null : Math.ceil(n * times), groups: times === null ? null : Math.ceil(groups * times), pairs: times === null ? null : Math.ceil(pairs * times),
    ofSibs, sideBySide: count !== null && sibs > 0 ? countsToTell(mean, sibs) : null,
  }
}

/**
 * Is it harm, once the number of tests is taken in?
 *
 * With sixteen effects tested one or another looks like harm by chance. P of all is corrected by Holm, and what its own interval alone calls harm is told apart.
 *
 * @see `holm`, `timesToTell`, `countsToTell`
 */
export function depressionVerdicts(found: readonly Depression[]): DepressionVerdicts {
  const effects = found.filter(({n, leftOut}) => n + leftOut > 0).flatMap(of => of.effects.flatMap(effect => (effect.kind === 'effect' ? [{of, effect}] : [])))
  const tested = effects.flatMap(({effect}) => (effect.p === null ? [] : [{effect, p: effect.p}])), held = holm(tested.map(({p}) => p))
  const by = new Map(tested.map(({effect}, place) => [effect, held[place] ?? 1] as const))
  return {
    tests: tested.length, toTell,
    judged: effects.map(({of, effect}) => {
      const corrected = by.get(effect) ?? null, held = beside(effect, of.published), sure = corrected !== null && corrected <= REMARKABLE
      const verdict = effect.verdict === 'harm' && !sure ? 'may-be-chance' : effect.verdict === 'cannot-tell' && held === 'less' ? 'little' : effect.verdict
      return {of, effect, corrected, verdict, mostLost: effect.interval && effect.interval.low < 0 ? -effect.interval.low : null, beside: held, relative: relative(of, effect)}
    }),
  }
}
