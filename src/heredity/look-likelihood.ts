import type {Flock, Reading} from './flock.ts'
import type {Alleles} from './locus.ts'
import {lookOf, type LookRules} from './look-rules.ts'

export type Sex = 'male' | 'female'

/**
 * How likely is what was scored, were this the bird's genotype?
 *
 *     L = Σ over true looks t of  P(t | genotype, hatched) · Π over scorings s of  P(scored s | t)
 *
 * A share of which no rule says anything speaks for no state: 1/(number of states) a scoring. Where a share `slack` of scores is taken to be wrong in
 * ways no record states, every scoring is with that chance any state alike.
 *
 * @param genotype what stands at each of the flock's loci
 * @param slack 0 to 1
 * @returns 0 to 1
 */
export function lookLikelihood({traits}: Pick<Flock, 'traits'>, {trait, scored}: Reading, genotype: readonly Alleles[], sex: Sex, slack: number): number {
  const heritable = traits[trait]
  if (!heritable) throw new RangeError(`there is no trait ${trait}`)
  const {look, misscoring} = heritable
  const count = look.states.length
  const {states, lethal, unsaid} = lookOf(look, genotype, sex)
  if (lethal === 1) return 0
  const reading = (chance: number): number => (1 - slack) * chance + slack / count
  let likelihood = unsaid * count ** -scored.length
  states.forEach((chance, state) => {
    if (chance > 0) likelihood += scored.reduce((product, seen) => product * reading(misscoring[state]?.[seen] ?? 0), chance)
  })
  return likelihood / (1 - lethal)
}

/** Chance that a chick of this genotype hatches: 1 less what any trait's rules say is lethal, each by itself. */
export function hatchingChance({traits}: Pick<Flock, 'traits'>, genotype: readonly Alleles[], sex: Sex): number {
  return traits.reduce((product, {look}) => product * (hasLethal(look) ? 1 - lookOf(look, genotype, sex).lethal : 1), 1)
}

export const hasLethal = ({rules}: LookRules): boolean => rules.some(({is}) => is === 'lethal')
