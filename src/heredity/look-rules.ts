import {matches, type GenotypePattern} from './genotype-notation.ts'
import type {Alleles} from './locus.ts'

/** One line of a trait's rules. */
export interface LookRule {
  /** one for each locus of `LookRules.loci`, in its order; null where the rule asks nothing of the locus */
  readonly patterns: readonly (GenotypePattern | null)[]
  /** the number of a state, or that such a chick never hatches */
  readonly is: number | 'lethal'
  /** the only sex it holds for; null for both */
  readonly sex: 'male' | 'female' | null
  /** share of the birds it fits of which it holds, 0 to 1; the rest is taken by the next rule that fits */
  readonly penetrance: number
}

/** What each genotype of a few loci looks like, for one trait. */
export interface LookRules {
  /** places of the trait's loci in the list that genotypes are given by */
  readonly loci: readonly number[]
  readonly states: readonly string[]
  /** those that say what never hatches go before all others, wherever they stand; of each sort the first that fits holds */
  readonly rules: readonly LookRule[]
  /** the only sex that can show the trait; null for both */
  readonly seenIn: 'male' | 'female' | null
}

/** What one genotype can be seen as. `states`, `lethal` and `unsaid` make 1 together. */
export interface LookChances {
  /** chance of each state, by its number */
  readonly states: Float64Array
  /** chance that it never hatches */
  readonly lethal: number
  /** chance of which no rule says anything, or that the sex cannot show: it speaks for no state and against none */
  readonly unsaid: number
}

/**
 * What does a bird of this genotype look like?
 *
 *     left₀ = 1,  chance(rule i) = leftᵢ · penetranceᵢ,  leftᵢ₊₁ = leftᵢ · (1 − penetranceᵢ),  over the rules that fit, lethal ones first, else in their order
 *
 * The first rule that fits takes what its penetrance says (1 where none is stated), the next that fits takes its share of the rest; what is left
 * after the last is unsaid. A rule fits when every locus it names fits and the sex is the one it holds for. Lethal rules go first whatever their
 * place: a chick that never hatches has no look that could stand before its death, and so what kills can be told from its loci alone. In the sex
 * that cannot show the trait, states are unsaid and what is lethal stays lethal.
 *
 * @param genotype what stands at each locus of the list that `rules.loci` counts in
 * @example four-fifths penetrant extra toes: {Po: Po/_, is: five, penetrance: 80%}, {Po: _/_, is: four} gives a carrier five 0.8, four 0.2
 */
export function lookOf({loci, states, rules, seenIn}: LookRules, genotype: readonly Alleles[], sex: 'male' | 'female'): LookChances {
  const chances = new Float64Array(states.length)
  let lethal = 0, unsaid = 0, left = 1
  for (const rule of lethalFirst(rules)) {
    if (left === 0) break
    if (!ruleFits(rule, loci, genotype, sex)) continue
    const taken = left * rule.penetrance
    if (rule.is === 'lethal') lethal += taken
    else if (seenIn !== null && seenIn !== sex) unsaid += taken
    else chances[rule.is] = (chances[rule.is] ?? 0) + taken
    left *= 1 - rule.penetrance
  }
  return {states: chances, lethal, unsaid: unsaid + left}
}

/** Rules in the order in which they take their shares: those that say what never hatches, then the others, each sort as it was written. */
export function lethalFirst<R extends Pick<LookRule, 'is'>>(rules: readonly R[]): readonly R[] {
  const firstLook = rules.findIndex(({is}) => is !== 'lethal'), lastLethal = rules.findLastIndex(({is}) => is === 'lethal')
  if (firstLook < 0 || lastLethal < firstLook) return rules
  return [...rules.filter(({is}) => is === 'lethal'), ...rules.filter(({is}) => is !== 'lethal')]
}

/** Does a rule hold for birds of this genotype and sex? */
export function ruleFits({patterns, sex: only}: LookRule, loci: readonly number[], genotype: readonly Alleles[], sex: 'male' | 'female'): boolean {
  if (only !== null && only !== sex) return false
  return loci.every((place, number) => {
    const pattern = patterns[number], alleles = genotype[place]
    if (pattern === null || pattern === undefined) return true
    if (alleles === undefined) throw new RangeError(`the genotype has no locus ${place}`)
    return matches(pattern, alleles)
  })
}
