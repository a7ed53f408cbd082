import type {Look, Score, Trait, Weighing} from '../logbook/book.ts'
import {isWhole, type PartialDate} from '../records/dates.ts'
import type {Chick} from './ladder-chicks.ts'

/** The scorings of a trait that hold for a chick: its own, else those of the tally it was banded from. */
export function lookOf(chick: Chick, trait: Trait): Look | null {
  const own = chick.looks.get(trait) ?? null
  if (own?.counted || chick.kind === 'tally' || chick.outOf === null) return own
  return chick.outOf.looks.get(trait) ?? own
}

/**
 * The weighing that stands for a measured trait: of those on a whole day no more than `window` days off the stated age, the
 * nearest to it; of two equally near, the earlier. The hatch date must be whole. A trait of no stated age takes the latest. Null when there is none.
 */
export function nearestWeighing<Weighed extends Weighing>(weighings: readonly Weighed[], trait: Trait, hatched: PartialDate | null): Weighed | null {
  if (trait.measure === null) return null
  if (trait.atAge === null) return weighings.filter(({measure, on}) => measure === trait.measure && isWhole(on)).reduce<Weighed | null>((last, one) => (last === null || one.on.first >= last.on.first ? one : last), null)
  if (hatched === null || !isWhole(hatched)) return null
  const due = hatched.first + trait.atAge
  let best: Weighed | null = null
  for (const weighing of weighings) {
    if (weighing.measure !== trait.measure || !isWhole(weighing.on)) continue
    const off = Math.abs(weighing.on.first - due)
    if (off > (trait.window ?? 7)) continue
    const least = best && Math.abs(best.on.first - due)
    if (best === null || least === null || off < least || (off === least && weighing.on.first < best.on.first)) best = weighing
  }
  return best
}

/**
 * The value of a trait that counts for a chick: the latest score that is neither struck nor outside its window; for a
 * measured trait with a weigh-day column the nearest weighing, and a score only where there is no such weighing.
 */
export function countedValue(chick: Chick, trait: Trait): string | number | null {
  if (trait.kind === 'measured' && chick.kind === 'bird') {
    const weighing = nearestWeighing(chick.weighings, trait, chick.hatched)
    if (weighing) return weighing.value
  }
  return lookOf(chick, trait)?.counted?.value ?? null
}

/** Why a chick's scorings of a trait do not count, when it has some and none does. */
export function setAside(chick: Chick, trait: Trait): 'struck' | 'outside-window' | null {
  const scores: readonly Score[] = lookOf(chick, trait)?.scores ?? []
  if (scores.length === 0) return null
  return scores.some(score => score.struck === null) ? 'outside-window' : 'struck'
}
