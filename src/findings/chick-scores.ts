import type {Alleles} from '../heredity/locus.ts'
import {hasLethal, type Sex} from '../heredity/look-likelihood.ts'
import {forecastOf, phasesOf} from '../heredity/mating-forecast.ts'
import type {Trait} from '../logbook/book.ts'
import {lookRulesOf} from '../logbook/look-rules-of.ts'
import {misscoringRows} from './flock-of-book.ts'
import type {LocusGroup} from './locus-groups.ts'

/** The chicks looked at. */
export type Among = 'sons' | 'daughters' | 'all'

/** What the chicks of one pair are scored as, in one trait. */
export interface ChickScores {
  /** by number of the state, of those chicks that any rule speaks of; they make 1, or nothing where `seen` is 0 */
  readonly scored: Float64Array
  /** share of the chicks looked at of which a rule says what they show */
  readonly seen: number
  /** share of the eggs of these sexes that never hatch */
  readonly lost: number
}

/** What stands at every locus of a group in a pair. */
export interface PairOfGenotypes {
  readonly sire: readonly Alleles[]
  readonly dam: readonly Alleles[]
}

export type ChickScoresOf = (pair: PairOfGenotypes) => ChickScores

export const sexesOf = (among: Among): readonly Sex[] => (among === 'sons' ? ['male'] : among === 'daughters' ? ['female'] : ['male', 'female'])

/**
 * How will the chicks of two birds be scored?
 *
 *     P(scored s) = Σ over true looks t of P(t | hatched, seen) · P(scored s | t)
 *
 * so penetrance and misscoring are both in it, and what is lethal is gone. Chicks of a sex that cannot show the trait, or of which no rule speaks, are left out.
 * Where it is not known which alleles share a chromosome every way counts alike. Each pair is worked once.
 *
 * @see `forecastOf`, `misscoringRows`
 */
export function chickScores({loci, linkages, traits}: LocusGroup, trait: Trait, among: Among): ChickScoresOf {
  const own = lookRulesOf(trait, loci), rows = misscoringRows(trait)
  if (!own) throw new RangeError(`${trait.id} has no rules`)
  const lethal = traits.flatMap(each => (each === trait ? [] : lookRulesOf(each, loci) ?? [])).filter(hasLethal)
  const kept = new Map<string, ChickScores>()
  const work = ({sire, dam}: PairOfGenotypes): ChickScores => {
    const scored = new Float64Array(trait.states.length), sexes = sexesOf(among), sires = phasesOf(sire), dams = phasesOf(dam)
    let seen = 0, lost = 0
    for (const a of sires) for (const b of dams) {
      const forecast = forecastOf({loci, linkages, traits: [own, ...lethal], sire: a, dam: b})
      for (const sex of sexes) {
        lost += forecast[sex].lost
        for (const {states: [state], share} of forecast[sex].looks) {
          const row = rows[state ?? -1]
          if (!row) continue
          seen += share
          row.forEach((chance, is) => { scored[is] = (scored[is] ?? 0) + share * chance })
        }
      }
    }
    const ways = sires.length * dams.length * sexes.length
    return {scored: seen === 0 ? scored : scored.map(share => share / seen), seen: seen / ways, lost: lost / ways}
  }
  return pair => {
    const key = `${written(pair.sire)} ${written(pair.dam)}`, found = kept.get(key) ?? work(pair)
    kept.set(key, found)
    return found
  }
}

const written = (genotype: readonly Alleles[]): string => genotype.map(alleles => alleles.join()).join(';')
