/** Which of a trait's states and rules any genotype at all comes to. */
import {ruleFits} from '../heredity/look-rules.ts'
import {toldApart} from '../heredity/told-apart.ts'
import type {Trait} from './book.ts'
import {lookRulesOf} from './look-rules-of.ts'

export interface Reach {
  readonly states: ReadonlySet<string>
  /** the rules that hold for some bird, by their places */
  readonly rules: ReadonlySet<number>
}

/** Null where the trait has no rules, or so many loci that trying them all would take too long. */
export function reachOf(trait: Trait): Reach | null {
  const rules = lookRulesOf(trait)
  if (!rules) return null
  const states = new Set<string>(), reached = new Set<number>()
  for (const sex of ['male', 'female'] as const) {
    const genotypes = toldApart(rules, trait.loci, sex)
    if (!genotypes) return null
    for (const genotype of genotypes) {
      for (const [place, rule] of rules.rules.entries()) {
        if (rule.penetrance === 0 || !ruleFits(rule, rules.loci, genotype, sex)) continue
        reached.add(place)
        if (rule.is !== 'lethal' && (rules.seenIn === null || rules.seenIn === sex)) states.add(rules.states[rule.is] ?? '')
        if (rule.penetrance === 1) break
      }
    }
  }
  return {states, rules: reached}
}
