import type {Linkage, Locus} from '../heredity/locus.ts'
import type {LookRules} from '../heredity/look-rules.ts'
import type {Trait} from '../logbook/book.ts'
import {lookRulesOf} from '../logbook/look-rules-of.ts'
import type {LocusGroup} from './locus-groups.ts'

/** The loci that the ratio of a trait may rest on, and what of them kills a chick. */
export interface CrossLoci {
  /** the trait's own in its order; then those that decide which of its chicks hatch; then any that lie on the chromosome with these, and tell nothing themselves */
  readonly loci: readonly Locus[]
  /** of how many of them, from the first on, a cross says what stands there */
  readonly told: number
  /** by places in `loci` */
  readonly linkages: readonly Linkage[]
  /** every rule that says what never hatches, of whichever trait, that asks of the told loci alone: one rule each */
  readonly lethal: readonly LookRules[]
}

const kept = new WeakMap<LocusGroup, Map<Trait, CrossLoci>>()

/**
 * Which loci besides its own must be known of two parents before the looks of their chicks can be told in one trait?
 *
 * A genotype that never hatches takes its looks with it. So every lethal rule of the group counts, whichever trait states it, that asks of a locus of the trait
 * or of one linked to such; and then those that are tied in the same way to the loci it asks of. Lethal rules go before all others, so their own loci are all they
 * rest on (`lookOf`). One that is tied to none of them kills of every look alike.
 *
 * @example comb rests on R; R lies near Cp, and another trait says that Cp/Cp is lethal: R and Cp are told
 */
export function crossLoci(trait: Trait, group: LocusGroup): CrossLoci {
  const ofGroup = kept.get(group) ?? new Map<Trait, CrossLoci>()
  kept.set(group, ofGroup)
  const found = ofGroup.get(trait) ?? lociOf(trait, group)
  ofGroup.set(trait, found)
  return found
}

function lociOf(trait: Trait, {loci, linkages, traits}: LocusGroup): CrossLoci {
  const chromosome = chromosomes(loci.length, linkages)
  const lethal = traits.flatMap(other => lethalRules(other, loci))
  const own = trait.loci.map(locus => loci.indexOf(locus)), told = [...own]
  for (let before = -1; before !== told.length;) {
    before = told.length
    const near = new Set(told.map(place => chromosome[place]))
    for (const {loci: asked} of lethal) if (asked.some(place => near.has(chromosome[place]))) told.push(...asked.filter(place => !told.includes(place)))
  }
  const between = loci.flatMap((_, place) => (!told.includes(place) && told.filter(each => chromosome[each] === chromosome[place]).length > 1 ? [place] : []))
  const all = [...told, ...between]
  return {
    loci: all.flatMap(place => loci[place] ?? []), told: told.length,
    linkages: linkages.filter(({loci: pair}) => pair.every(place => all.includes(place))).map(({loci: [one, other], recombination}) => ({loci: [all.indexOf(one), all.indexOf(other)], recombination})),
    lethal: lethal.filter(({loci: asked}) => asked.every(place => told.includes(place))).map(rules => ({...rules, loci: rules.loci.map(place => told.indexOf(place))})),
  }
}

/** By locus, the same number for those that linkage joins. */
function chromosomes(count: number, linkages: readonly Linkage[]): readonly number[] {
  const of = Array.from({length: count}, (_, place) => place)
  for (const {loci: [one, other]} of linkages) {
    const from = of[one], to = of[other]
    of.forEach((each, place) => { if (each === from && to !== undefined) of[place] = to })
  }
  return of
}

/** Each lethal rule of a trait by itself, with the loci it asks of and no others. */
function lethalRules(trait: Trait, loci: readonly Locus[]): readonly LookRules[] {
  const rules = lookRulesOf(trait, loci)
  return (rules?.rules ?? []).filter(({is}) => is === 'lethal').map(rule => {
    const asked = rule.patterns.flatMap((pattern, number) => (pattern === null ? [] : [number]))
    return {states: [], seenIn: null, loci: asked.map(number => rules?.loci[number] ?? -1), rules: [{...rule, patterns: asked.map(number => rule.patterns[number] ?? null)}]}
  })
}
