import {clopperPearson} from '../statistics/clopper-pearson.ts'
import {FEWEST_FAMILIES, type FamilyShare} from '../statistics/family-bootstrap.ts'
import {leastWhole} from '../statistics/least-whole.ts'
import {scoreInterval} from '../statistics/score-interval.ts'
import type {Count} from '../statistics/share-difference.ts'
import {studentQuantile} from '../statistics/student-t.ts'
import type {DecidedBy} from './shown-of-breeding.ts'

/** Chicks that are still wanting, if every one of them is true. */
export interface ChicksToReach {
  /** null: more than 10,000, or never */
  readonly chicks: number | null
  /** the first season by which so many could be there, at the rate of the latest; null where that rate is not enough */
  readonly season: number | null
  /** over so many seasons to come they may be spread, and so many were reared in the latest with any */
  readonly seasons: number
  readonly reared: number
  /** of today's seasons those that count no more by then */
  readonly without: readonly number[]
  /** sire families more than there are, where the interval rests on families */
  readonly sires: number
}

/** Chicks of one season that were reared to be judged, and of them those that are true. */
export interface SeasonReared extends Count {
  readonly season: number
}

const MOST_CHICKS = 10_000

/** The figure that decides, for k true of n: by families with n* to n as it is in these, and Student's t of as many families as there are, five at the least. */
export function figureOf(by: DecidedBy, family: FamilyShare | null): (k: number, n: number) => number {
  const ratio = family?.kind === 'families' ? family.effective / family.n : 1, t = studentQuantile(0.95, Math.max(FEWEST_FAMILIES, family?.families ?? 0) - 1)
  return (k, n) => (n === 0 ? 0 : by === 'estimate' ? k / n : by === 'exact' ? clopperPearson(k, n).low : scoreInterval(k / n, Math.max(1, n * ratio), t).low)
}

/**
 * How many further chicks, all of them true, would bring the figure to the mark, and in which season at the earliest?
 *
 *     estimate (k + m)/(n + m)        exact: Clopper and Pearson's lower limit of it        families: the lower limit of `familyShare` with n* to n as it is
 *
 * Only the last so many seasons count, so that with each season to come the oldest drops out. The season is the first, s seasons on, in which the m that are then wanting are no more than s
 * times what was reared in the latest with any: a forecast at its best, since no flock is wholly true. Once none of today's seasons count it is no fewer than
 * one season's. Where no season is, `chicks` is what all the seasons that then count would have to give.
 *
 * @param seasons those that count, ascending, one or more
 * @param window how many of the last seasons count
 * @param family of all chicks that count
 * @param next the next season in which any could hatch
 */
export function chicksToReach(seasons: readonly SeasonReared[], window: number, mark: number, by: DecidedBy, family: FamilyShare | null, next: number): ChicksToReach {
  const rate = seasons.findLast(({n}) => n > 0)?.n ?? 0, families = family?.families ?? 0, sires = by === 'families' ? Math.max(0, FEWEST_FAMILIES - families) : 0
  const low = figureOf(by, family)
  const wanting = (kept: readonly SeasonReared[]): number | null => {
    const k = kept.reduce((sum, each) => sum + each.k, 0), n = kept.reduce((sum, each) => sum + each.n, 0)
    return leastWhole(kept.length === 0 ? Math.min(MOST_CHICKS, Math.max(1, rate)) : 1, MOST_CHICKS, more => low(k + more, n + more) >= mark)
  }
  for (let after = 1; after <= window; after++) {
    const kept = after < window ? seasons.slice(after - window) : [], chicks = wanting(kept)
    if (chicks !== null && chicks <= after * rate) return {chicks, season: next + after - 1, seasons: after, reared: rate, without: yearsOf(seasons.filter(each => !kept.includes(each))), sires}
  }
  return {chicks: wanting([]), season: null, seasons: window, reared: rate, without: yearsOf(seasons), sires}
}

const yearsOf = (seasons: readonly SeasonReared[]): readonly number[] => seasons.map(({season}) => season)
