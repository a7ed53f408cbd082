/** Which of a trait's states and rules any genotype at all comes to, and which genotypes come to none. */
import type {Alleles} from '../heredity/locus.ts'
import {lethalFirst, ruleFits} from '../heredity/look-rules.ts'
import {toldApart} from '../heredity/told-apart.ts'
import type {Trait} from './book.ts'
import {lookRulesOf} from './look-rules-of.ts'

export interface Reach {
  readonly states: ReadonlySet<string>
  /** the rules that hold for some bird, by their places */
  readonly rules: ReadonlySet<number>
  /** genotypes, one of every sort that the rules tell apart, of which some birds or all come to no rule, though their sex can show the trait */
  readonly uncovered: readonly Uncovered[]
}

export interface Uncovered {
  /** by the trait's loci */
  readonly genotype: readonly Alleles[]
  readonly sex: 'male' | 'female'
  /** some rule holds for a share of such birds, and none for the rest */
  readonly partly: boolean
}

/** Null where the trait has no rules, or so many loci that trying them all would take too long. */
export function reachOf(trait: Trait): Reach | null {
  const rules = lookRulesOf(trait)
  if (!rules) return null
  const inTurn = lethalFirst(rules.rules).map(rule => ({rule, place: rules.rules.indexOf(rule)}))
  const states = new Set<string>(), reached = new Set<number>(), uncovered: Uncovered[] = []
  for (const sex of ['male', 'female'] as const) {
    const genotypes = toldApart(rules, trait.loci, sex), shows = rules.seenIn === null || rules.seenIn === sex
    if (!genotypes) return null
    for (const genotype of genotypes) {
      let covered = false, partly = false
      for (const {rule, place} of inTurn) {
        if (covered) break
        if (rule.penetrance === 0 || !ruleFits(rule, rules.loci, genotype, sex)) continue
        reached.add(place)
        if (rule.is !== 'lethal' && shows) states.add(rules.states[rule.is] ?? '')
        covered = rule.penetrance === 1
        partly = true
      }
      if (!covered && shows) uncovered.push({genotype, sex, partly})
    }
  }
  return {states, rules: reached, uncovered}
}
