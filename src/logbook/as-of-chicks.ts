/** Birds and tallies as they stood on an earlier day. Changed in place; what follows from what was then known is worked out anew. */
import type {Day} from '../records/dates.ts'
import type {Spot} from '../records/problem.ts'
import type {Bird, Hatch, Pen, Score, Tally, Trait} from './book.ts'
import type {Cut} from './cut.ts'
import {sexOf} from './life.ts'
import {looksOf} from './looks.ts'
import type {Open} from './open.ts'
import {isOutside, seenFrom} from './scores.ts'
import {inferSexes} from './sexes.ts'

/** The first day a hatch can have hatched: as written; else as long after the setting, or the last egg, as incubation takes. */
export function hatchDay({on, set, laid}: Hatch, incubationDays: number): Day | null {
  const begun = set?.first ?? laid?.to
  return on?.first ?? (begun === undefined ? null : begun + incubationDays)
}

/** The first day a chick can have hatched. */
export function bornOn({hatched, hatch}: Pick<Bird, 'hatched' | 'hatch'>, incubationDays: number): Day | null {
  return hatched?.first ?? (hatch ? hatchDay(hatch, incubationDays) : null)
}

interface Then {
  readonly birds: readonly Open<Bird>[]
  readonly tallies: readonly Open<Tally>[]
  readonly pens: readonly Pen[]
  readonly traits: readonly Trait[]
  readonly incubationDays: number
}

/** @param then the birds, tallies and pens that were there, the pens cut back already */
export function cutChicks({birds, tallies, pens, traits, incubationDays}: Then, cut: Cut): void {
  const there = new Set<Bird>(birds)
  const read = [...tallies, ...birds].map(chick => ({chick, scores: readOf(chick, bornOn(chick, incubationDays))}))
  for (const tally of tallies) cutLife(tally, cut)
  for (const bird of birds) {
    cutLife(bird, cut)
    cutBird(bird, there, cut)
  }
  inferSexes(birds, pens)
  for (const {chick, scores} of read) chick.looks = looksOf(chick, scoresThen(scores, chick, cut), traits)
}

interface Dated {
  readonly score: Score
  /** the first day it can have been seen; null: nobody knows */
  readonly from: Day | null
}

/** The scores of a chick that are its own, and not weighings or the looks of its tally. An undated one stands from when on its trait can be scored. */
function readOf(chick: Bird | Tally, born: Day | null): readonly Dated[] {
  const others = new Set<Spot>()
  if (chick.kind === 'bird') {
    for (const {at} of chick.weighings) others.add(at)
    for (const {scores} of chick.outOf?.looks.values() ?? []) for (const {at} of scores) others.add(at)
  }
  const firstEgg = chick.kind === 'bird' ? chick.firstEgg : null
  return [...chick.looks.values()].flatMap(({scores}) => scores.filter(({at}) => !others.has(at)))
    .map(score => ({score, from: score.on ? score.on.first : seenFrom(score.trait, born, firstEgg)}))
}

/** Those that can have been seen by then, each judged by what was known then. */
function scoresThen(scores: readonly Dated[], chick: Bird | Tally, cut: Cut): ReadonlyMap<Trait, readonly Score[]> {
  const then = new Map<Trait, Score[]>()
  for (const {score, from} of scores) {
    if (!cut.stands(score.at, from)) continue
    const own = then.get(score.trait) ?? []
    then.set(score.trait, own)
    own.push({...score, outside: isOutside(score.trait, score.on, chick)})
  }
  return then
}

function cutLife(chick: Open<Bird> | Open<Tally>, cut: Cut): void {
  chick.sexings = cut.keep(chick.sexings, sexing => sexing.on)
  chick.sex = sexOf(chick.sexings)
  chick.left = cut.orNull(chick.left, chick.left?.on)
}

function cutBird(bird: Open<Bird>, there: ReadonlySet<Bird>, cut: Cut): void {
  bird.kept = cut.orNull(bird.kept, bird.kept?.on)
  bird.firstEgg = cut.orNull(bird.firstEgg, bird.firstEgg)
  bird.weighings = bird.weighings.filter(({at, on}) => cut.stands(at, on.first))
  bird.observations = cut.keep(bird.observations, observation => observation.on)
  bird.photos = cut.keep(bird.photos, photo => photo.on)
  bird.keptAt = cut.begun(bird.keptAt).map(stay => (cut.past(stay.to) ? stay : {...stay, to: null}))
  bird.maybe = bird.maybe.filter(other => there.has(other))
  bird.kin = bird.kin.filter(kin => there.has(kin.with))
  const worn = cut.begun(bird.bands)
  // a bird is called by its first band even before that was put on
  bird.bands = (worn.length > 0 ? worn : bird.bands.slice(0, 1)).map(band => (cut.past(band.to) ? band : {...band, to: null, lost: false}))
  bird.band = bird.bands.at(-1)?.band ?? bird.band
}
