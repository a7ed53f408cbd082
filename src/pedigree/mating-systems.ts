import type {Origin, SeasonPlan} from './group-mating.ts'

/** A rule by which a flock is mated season after season, for `matingForecast`. */
export interface MatingSystem {
  /** birds in each group of breeders, in every season to come */
  readonly sizes: readonly number[]
  /** plan of a season, counted from 1 */
  plan(season: number): SeasonPlan
  /** seasons after which the plan begins anew */
  readonly cycle: number
}

/** Breeders of one pen, each 1 or more. */
export interface PenSize {
  readonly males: number
  readonly females: number
}

/**
 * Clans: every chick belongs to its dam's clan; the sires of clan k are sons of clan k − shift, so that no bird mates in its own clan.
 *
 * Groups: the males of clan 0, its females, the males of clan 1, … One clan alone is a closed pen.
 * A generation is a season here: all breeders are of last season's hatch. Of the first season too, a cock is listed in the clan he comes from: one that
 * stands with the hens of clan k already, in clan k − shift.
 *
 * @param pens breeders kept of each clan; the males by the clan they were hatched in
 * @param shifts how many clans on the males move, season by season in turn; 1 for the plain rule, 1, 2, 3 to meet every other of four clans
 * @throws RangeError without a clan or shift, or with a shift that brings males home to their own clan
 */
export function clans(pens: readonly PenSize[], shifts: readonly number[] = [1]): MatingSystem {
  const count = pens.length
  if (count === 0) throw new RangeError('a flock has 1 clan or more')
  if (shifts.length === 0) throw new RangeError('males need a shift')
  for (const shift of shifts) {
    if (!Number.isInteger(shift) || (count > 1 && shift % count === 0)) throw new RangeError(`a shift of ${shift} among ${count} clans keeps males at home`)
  }
  return movedOn(pens, shifts)
}

/** Several pens side by side, each closed to the others: groups as in `clans`. */
export function closedPens(pens: readonly PenSize[]): MatingSystem {
  if (pens.length === 0) throw new RangeError('a flock has 1 pen or more')
  return movedOn(pens, [0])
}

/** One pen that nothing comes into: groups males, females. */
export function closedPen(pen: PenSize): MatingSystem {
  return closedPens([pen])
}

function movedOn(pens: readonly PenSize[], shifts: readonly number[]): MatingSystem {
  const count = pens.length
  const malesOf = (clan: number) => 2 * (((clan % count) + count) % count)
  const next = pens.flatMap((_, clan): Origin[] => [{chicksOf: [clan]}, {chicksOf: [clan]}])
  return {
    sizes: pens.flatMap(({males, females}) => [males, females]),
    cycle: shifts.length,
    plan: season => ({pens: pens.map((_, clan) => ({males: malesOf(clan - (shifts[(season - 1) % shifts.length] ?? NaN)), females: 2 * clan + 1})), next}),
  }
}

/** The birds of several pens without clans, every male with every female: groups males, females. */
export function wholeFlock(pens: readonly PenSize[]): MatingSystem {
  const all = (of: (pen: PenSize) => number) => pens.reduce((sum, pen) => sum + of(pen), 0)
  return closedPen({males: all(pen => pen.males), females: all(pen => pen.females)})
}

/** Breeders of two rolling pens: birds in their first season as breeders (cockerels, pullets) and in their second (cocks, hens). */
export interface RollingPens {
  readonly cockerels: number
  readonly cocks: number
  readonly pullets: number
  readonly hens: number
}

/**
 * Rolling pens: each season the cockerels go to the hens and last season's cockerels, now cocks, to the pullets; a season is a year.
 *
 * Groups: cockerels, cocks, pullets, hens. Pens: hens with cockerels, pullets with cocks. Breeders serve two seasons.
 * Kept from both pens by chance, a pullet may be a daughter of the cock that awaits her (he was the cockerel in the hens' pen), and a cockerel a son of
 * one of the hens (she was a pullet).
 *
 * @param apart `fathers`: pullets are kept from the pullets' pen only, so that no cock meets his daughters; `mothers`: cockerels from the hens' pen
 *   only, so that no hen meets her sons
 */
export function rollingPens(birds: RollingPens, apart: {readonly fathers?: boolean; readonly mothers?: boolean} = {}): MatingSystem {
  const [cockerels, cocks, pullets, hens] = [0, 1, 2, 3] as const
  const [hensPen, pulletsPen] = [0, 1] as const
  const plan: SeasonPlan = {
    pens: [{males: cockerels, females: hens}, {males: cocks, females: pullets}],
    next: [
      {chicksOf: apart.mothers ? [hensPen] : [hensPen, pulletsPen]}, {kept: cockerels},
      {chicksOf: apart.fathers ? [pulletsPen] : [hensPen, pulletsPen]}, {kept: pullets},
    ],
  }
  return {sizes: [birds.cockerels, birds.cocks, birds.pullets, birds.hens], cycle: 1, plan: () => plan}
}
