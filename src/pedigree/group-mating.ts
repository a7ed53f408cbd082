import {drawnKinship, type Groups} from './breeding-groups.ts'

/** One season of a mating system: which males go to which females, and of which birds the next season's groups are made. */
export interface SeasonPlan {
  /** pens, by the groups that stand in them; no group stands in two */
  readonly pens: readonly {readonly males: number; readonly females: number}[]
  /** group by group: chicks of these pens, drawn by chance from their hatch, or a group that is kept a season longer */
  readonly next: readonly Origin[]
}
export type Origin = {readonly chicksOf: readonly number[]} | {readonly kept: number}

export interface Hatch {
  /** mean F of all chicks; every hen hatches equally many */
  readonly inbreeding: number
  /** mean F of each pen's chicks */
  readonly byPen: readonly number[]
  /** mean kinship of two different chicks, of any pens */
  readonly kinship: number
  /** the groups of the next season */
  readonly next: Groups
}

/**
 * What does one season of matings do to F and kinship?
 *
 *     F(chick of pen p)      = θ(s, d)                                   s and d the pen's males and females
 *     θ(chick of p, bird g)  = ½ (θ*(s, g) + θ*(d, g))
 *     θ(chick p, chick q)    = ¼ (θ*(s, s′) + θ*(s, d′) + θ*(d, s′) + θ*(d, d′))
 *     θ*(g, g)               = (1/n)·½(1 + F) + (1 − 1/n)·θ(g, g)        two draws from one group of n; between groups θ* = θ
 *
 * Exact means, not an approximation, when every male and every female of a pen is as likely to be a chick's parent, chick by chick, and breeders are
 * drawn by chance: real flocks, with unequal families and selection, do worse.
 *
 * @param groups the breeders of this season
 * @param sizes of the next season's groups; a kept group does not grow
 * @see Wright 1931, Genetics 16:97 for the one pen; between pens worked out here, the same reasoning for groups
 */
export function hatchOf(groups: Groups, {pens, next}: SeasonPlan, sizes: readonly number[]): Hatch {
  const hens = (pen: number) => groups.sizes[pens[pen]?.females ?? NaN] ?? NaN
  const byPen = pens.map(({males, females}) => groups.kinship[males]?.[females] ?? NaN)

  const chickWith = (pen: number, group: number) => {
    const {males, females} = pens[pen] ?? {males: NaN, females: NaN}
    return (drawnKinship(groups, males, group) + drawnKinship(groups, females, group)) / 2
  }
  const chicks = (pen: number, other: number) => {
    const {males, females} = pens[other] ?? {males: NaN, females: NaN}
    return (chickWith(pen, males) + chickWith(pen, females)) / 2
  }
  /** a mean over the hatch of these pens, each by its hens */
  const over = (list: readonly number[], of: (pen: number) => number) => {
    const all = list.reduce((sum, pen) => sum + hens(pen), 0)
    return list.reduce((sum, pen) => sum + hens(pen) / all * of(pen), 0)
  }
  const between = (one: Origin, other: Origin): number => {
    if ('kept' in one) return 'kept' in other ? groups.kinship[one.kept]?.[other.kept] ?? NaN : between(other, one)
    return over(one.chicksOf, pen => ('kept' in other ? chickWith(pen, other.kept) : over(other.chicksOf, second => chicks(pen, second))))
  }
  const everyPen = {chicksOf: pens.map((_, pen) => pen)}
  const sizeOf = (origin: Origin, planned = NaN) => ('kept' in origin ? Math.min(planned, groups.sizes[origin.kept] ?? NaN) : planned)
  return {
    byPen,
    inbreeding: over(everyPen.chicksOf, pen => byPen[pen] ?? NaN),
    kinship: between(everyPen, everyPen),
    next: {
      sizes: next.map((origin, group) => sizeOf(origin, sizes[group])),
      self: next.map(origin => ('kept' in origin ? groups.self[origin.kept] ?? NaN : over(origin.chicksOf, pen => (1 + (byPen[pen] ?? NaN)) / 2))),
      kinship: next.map(one => next.map(other => between(one, other))),
    },
  }
}
