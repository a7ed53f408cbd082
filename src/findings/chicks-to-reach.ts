import {clopperPearson} from '../statistics/clopper-pearson.ts'
import {FEWEST_FAMILIES, familyShare, type FamilyShare} from '../statistics/family-bootstrap.ts'
import {leastWhole} from '../statistics/least-whole.ts'
import {scoreInterval} from '../statistics/score-interval.ts'
import type {Count} from '../statistics/share-difference.ts'
import {studentQuantile} from '../statistics/student-t.ts'
import {sumOf} from './judged-chicks.ts'
import type {DecidedBy} from './shown-of-breeding.ts'
import {FAMILY_SEED} from './sire-families.ts'

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
  /** of every sire family of all these seasons, in one order: none of none where it has no chick in this one */
  readonly families: readonly Count[]
}

const MOST_CHICKS = 10_000
const MOST_SIRES = 60

/** The figure that decides, for k true of n: by families with n* to n as it is in these, and Student's t of as many families as there are, five at the least. */
export function figureOf(by: DecidedBy, family: FamilyShare | null): (k: number, n: number) => number {
  const ratio = family?.kind === 'families' ? family.effective / family.n : 1, t = studentQuantile(0.95, Math.max(FEWEST_FAMILIES, family?.families ?? 0) - 1)
  return (k, n) => (n === 0 ? 0 : by === 'estimate' ? k / n : by === 'exact' ? clopperPearson(k, n).low : scoreInterval(k / n, Math.max(1, n * ratio), t).low)
}

/**
 * How many further chicks, all of them true, would bring the figure to the mark, and in which season at the earliest?
 *
 *     estimate (k + m)/(n + m)        exact: Clopper and Pearson's lower limit of it        families: the lower limit of `familyShare` of the families as they then are
 *
 * Only the last so many seasons count, so that with each season to come the oldest drops out. The season is the first, s seasons on, in which the m that are then wanting are no more than s
 * times what was reared in the latest with any: a forecast at its best, since no flock is wholly true. Once none of today's seasons count it is no fewer than
 * one season's. Where no season is, `chicks` is what all the seasons that then count would have to give.
 *
 * By families the further chicks are taken to come of as many sires as now, five at the least, and of each alike. Chicks of few sires tell little however many they are: where with these no season
 * does, it is asked with as many sires as it takes.
 *
 * @param seasons those that count, ascending, one or more
 * @param window how many of the last seasons count
 * @param next the next season in which any could hatch
 */
export function chicksToReach(seasons: readonly SeasonReared[], window: number, mark: number, by: DecidedBy, next: number): ChicksToReach {
  const rate = seasons.findLast(({n}) => n > 0)?.n ?? 0, families = seasons[0]?.families.map((_, place) => sumOf(seasons.map(each => each.families[place] ?? NONE))).filter(({n}) => n > 0).length ?? 0
  const fewest = Math.max(FEWEST_FAMILIES, families)
  const lowWith = (kept: readonly SeasonReared[], sires: number): ((more: number) => number) => {
    const now = sumOf(kept), low = figureOf(by, null)
    if (by !== 'families') return more => low(now.k + more, now.n + more)
    return more => {
      const share = familyShare(grown(kept, sires, more), {seed: FAMILY_SEED})
      return share?.kind === 'families' ? share.low : 0
    }
  }
  const wanting = (kept: readonly SeasonReared[], sires: number): number | null => {
    const low = lowWith(kept, sires)
    return leastWhole(kept.length === 0 ? Math.min(MOST_CHICKS, Math.max(1, rate)) : 1, MOST_CHICKS, more => low(more) >= mark)
  }
  const keptAfter = (after: number): readonly SeasonReared[] => (after < window ? seasons.slice(after - window) : [])
  const reached = (after: number, sires: number): ChicksToReach | null => {
    const kept = keptAfter(after), most = after * rate
    if (by === 'families' && (most === 0 || lowWith(kept, sires)(most) < mark)) return null
    const chicks = wanting(kept, sires)
    return chicks === null || chicks > most ? null : {chicks, season: next + after - 1, seasons: after, reared: rate, without: yearsOf(seasons.filter(each => !kept.includes(each))), sires: by === 'families' ? sires - families : 0}
  }
  const afters = Array.from({length: window}, (_, index) => index + 1)
  for (const after of afters) {
    const found = reached(after, fewest)
    if (found) return found
  }
  const never = {season: null, seasons: window, reared: rate, without: yearsOf(seasons)}, chicks = wanting([], fewest)
  if (by !== 'families') return {...never, chicks, sires: 0}
  for (const after of afters) {
    const sires = after * rate <= fewest ? null : leastWhole(fewest, Math.min(MOST_SIRES, after * rate), more => lowWith(keptAfter(after), more)(after * rate) >= mark), found = sires === null ? null : reached(after, sires)
    if (found) return found
  }
  if (chicks !== null) return {...never, chicks, sires: fewest - families}
  const sires = leastWhole(fewest, MOST_SIRES, more => lowWith([], more)(MOST_CHICKS) >= mark)
  return {...never, chicks: sires === null ? null : wanting([], sires), sires: (sires ?? fewest) - families}
}

const NONE: Count = {k: 0, n: 0}
const yearsOf = (seasons: readonly SeasonReared[]): readonly number[] => seasons.map(({season}) => season)

/** The families of the seasons that still count, with so many chicks more, all true, dealt out evenly among so many sires. */
function grown(kept: readonly SeasonReared[], sires: number, more: number): readonly Count[] {
  return Array.from({length: Math.max(sires, kept[0]?.families.length ?? 0)}, (_, place) => {
    const {k, n} = sumOf(kept.map(({families}) => families[place] ?? NONE)), own = place < sires ? Math.floor(more / sires) + (place < more % sires ? 1 : 0) : 0
    return {k: k + own, n: n + own}
  })
}
