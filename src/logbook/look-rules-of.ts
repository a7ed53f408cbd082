/** A trait's rules as heredity reckons with them: loci, states and alleles by their numbers. */
import type {LookRules} from '../heredity/look-rules.ts'
import {LETHAL} from '../records/schema/loci.ts'
import type {Locus, Trait} from './book.ts'

/**
 * The rules of a trait, its loci counted by their places in a list that holds them all; null where it has no rules.
 *
 * @param among the loci that genotypes will be given for, such as those of a group that is worked together; the trait's own when not given
 */
export function lookRulesOf(trait: Trait, among: readonly Locus[] = trait.loci): LookRules | null {
  if (trait.shows.length === 0) return null
  const {states, loci, shows, seenIn} = trait
  return {
    states, seenIn: seenIn === 'unknown' ? null : seenIn,
    loci: loci.map(locus => {
      const place = among.indexOf(locus)
      if (place < 0) throw new RangeError(`${trait.id} rests on ${locus.symbol}, which is not among the loci given`)
      return place
    }),
    rules: shows.map(({patterns, is, sex, penetrance}) => ({patterns: loci.map(locus => patterns.get(locus) ?? null), is: is === LETHAL ? LETHAL : states.indexOf(is), sex, penetrance})),
  }
}
