import {conceptions, type Homologues} from '../heredity/conceptions.ts'
import {genotypesAt, writeGenotype} from '../heredity/genotype-notation.ts'
import type {Alleles, Locus} from '../heredity/locus.ts'
import {hatchingChance, type Sex} from '../heredity/look-likelihood.ts'
import {lookOf, type LookRules} from '../heredity/look-rules.ts'
import {phasesOf} from '../heredity/mating-forecast.ts'
import type {Trait} from '../logbook/book.ts'
import {lookRulesOf} from '../logbook/look-rules-of.ts'
import {crossLoci, type CrossLoci} from './cross-loci.ts'
import {misscoringRows} from './flock-of-book.ts'
import type {LocusGroup} from './locus-groups.ts'

/** What stands at the loci told of a cross (`crossLoci`), the trait's own first, in a sire and in a dam. Null, or left out: it is not known. */
export interface Cross {
  readonly sire: readonly (Alleles | null)[]
  readonly dam: readonly (Alleles | null)[]
}

export interface CrossRatio {
  /** of chicks that hatch, the share of each look, before any is scored wrongly; with `unsaid` they make 1 */
  readonly looks: readonly number[]
  /** the same as scored, misscoring taken in */
  readonly scored: readonly number[]
  /** share of which no rule says a look */
  readonly unsaid: number
  /** share of all fertile eggs whose germ dies of its genotype, as far as it is one of the told loci; null where it is not known */
  readonly lethal: number | null
  /** states that chicks of one genotype alone show, one with a single kind of allele at each locus of the trait, and which those are */
  readonly pureLooks: readonly {readonly state: number; readonly alleles: readonly number[]}[]
}

/** Shares that differ by no more are alike. */
const ALIKE = 1e-9

/**
 * What does a cross give, of one trait in chicks of one sex?
 *
 * Chicks with a genotype that never hatches are taken out, whichever trait says so, and the rest made whole. How linked loci lie in a parent no genotype tells, and
 * what stands at a locus that kills may not be known: every way is tried, and where they do not all give the same looks the ratio cannot be told: null. Null too
 * where the trait has no rules or no chick can hatch.
 */
export function crossRatio(trait: Trait, group: LocusGroup, cross: Cross, sex: Sex): CrossRatio | null {
  const ofTrait = kept.get(trait) ?? new WeakMap<LocusGroup, Map<string, CrossRatio | null>>(), known = ofTrait.get(group) ?? new Map<string, CrossRatio | null>()
  kept.set(trait, ofTrait.set(group, known))
  const key = `${sex} ${textOf(cross.sire)} ${textOf(cross.dam)}`, before = known.get(key)
  if (before !== undefined) return before
  const ratio = worked(trait, group, cross, sex)
  known.set(key, ratio)
  return ratio
}

/** Each cross is worked once, for flocks are full of the same. */
const kept = new WeakMap<Trait, WeakMap<LocusGroup, Map<string, CrossRatio | null>>>()

const textOf = (parent: Cross['sire']): string => parent.map(alleles => alleles?.join('/') ?? '?').join()

function worked(trait: Trait, group: LocusGroup, cross: Cross, sex: Sex): CrossRatio | null {
  const rules = lookRulesOf(trait)
  if (!rules) return null
  const loci = crossLoci(trait, group), dams = waysToLie(loci, cross.dam, 'female')
  const [first, ...others] = waysToLie(loci, cross.sire, 'male').flatMap(sire => dams.flatMap(dam => ratioOf(trait, rules, loci, sire, dam, sex) ?? []))
  if (!first || !others.every(other => sameLooks(first, other))) return null
  return others.every(({lethal}) => Math.abs(lethal - first.lethal) < ALIKE) ? first : {...first, lethal: null}
}

/**
 * `P/p+ × p+/p+`, several loci side by side: `R/r+ P/p+ × r+/r+ p+/p+`. Loci that are not the trait's own stand there where chicks die of what they have there, or
 * may; with `?` where it is not known of a parent and the ratio cannot be told for it.
 */
export function writeCross(trait: Trait, group: LocusGroup, cross: Cross): string {
  const {loci, told} = crossLoci(trait, group)
  const ratios = told > trait.loci.length ? (['male', 'female'] as const).map(sex => crossRatio(trait, group, cross, sex)) : []
  const isUntold = ratios.includes(null), isLethal = ratios.some(ratio => ratio?.lethal !== 0)
  const written = loci.slice(0, told).flatMap((locus, place) => {
    const sire = cross.sire[place] ?? null, dam = cross.dam[place] ?? null
    const isOpen = sire === null || dam === null, isMixed = new Set([...sire ?? [], ...dam ?? []].filter(allele => allele !== null)).size > 1
    return place < trait.loci.length || (isOpen ? isUntold : isMixed && isLethal) ? [{locus, sire, dam}] : []
  })
  const side = (of: 'sire' | 'dam'): string => written.map(({locus, [of]: alleles}) => (alleles ? writeGenotype(alleles, locus) : '?')).join(' ')
  return `${side('sire')} × ${side('dam')}`
}


const sameLooks = (one: CrossRatio, other: CrossRatio): boolean =>
  Math.abs(one.unsaid - other.unsaid) < ALIKE && one.looks.every((share, state) => Math.abs(share - (other.looks[state] ?? 0)) < ALIKE)

/** Every way in which what is known of a parent may stand on its two chromosomes. */
function waysToLie({loci, told, linkages}: CrossLoci, parent: Cross['sire'], sex: Sex): readonly (readonly Homologues[])[] {
  const genotypes = loci.reduce<readonly (readonly Alleles[])[]>((all, locus, place) => {
    const known = parent[place] ?? null
    // what lies between the told loci is neither here nor there
    const here: readonly Alleles[] = place >= told ? [blank(locus, sex)] : known ? [known] : genotypesAt(locus, sex)
    return all.flatMap(before => here.map(alleles => [...before, alleles]))
  }, [[]])
  return linkages.length === 0 ? genotypes : genotypes.flatMap(phasesOf)
}

const blank = ({on}: Locus, sex: Sex): Alleles => [0, on === 'Z' && sex === 'female' ? null : 0]

function ratioOf(trait: Trait, rules: LookRules, {loci, linkages, lethal}: CrossLoci, sire: readonly Homologues[], dam: readonly Homologues[], sex: Sex): CrossRatio & {readonly lethal: number} | null {
  const kills = {traits: lethal.map(look => ({look, misscoring: []}))}
  const looks = trait.states.map(() => 0), shownBy = trait.states.map(() => new Map<string, readonly Alleles[]>())
  let unsaid = 0, hatched = 0
  for (const {is, probability} of conceptions({loci, linkages, sire, dam}, sex)) {
    const hatches = hatchingChance(kills, is, sex) * probability
    if (hatches === 0) continue
    const seen = lookOf(rules, is, sex), alive = 1 - seen.lethal, own = is.slice(0, trait.loci.length)
    hatched += hatches
    unsaid += hatches * seen.unsaid / alive
    seen.states.forEach((share, state) => {
      looks[state] = (looks[state] ?? 0) + hatches * share / alive
      if (share > 0) shownBy[state]?.set(own.join(), own)
    })
  }
  if (hatched === 0) return null
  const whole = looks.map(share => share / hatched), rows = misscoringRows(trait)
  return {
    looks: whole, unsaid: unsaid / hatched, lethal: hatched > 1 - ALIKE ? 0 : 1 - hatched,
    scored: trait.states.map((_, seen) => whole.reduce((sum, share, state) => sum + share * (rows[state]?.[seen] ?? 0), 0)),
    pureLooks: shownBy.flatMap((genotypes, state) => {
      const [only, ...more] = genotypes.values()
      return only && more.length === 0 && only.every(([one, other]) => other === null || one === other) ? [{state, alleles: only.map(([one]) => one)}] : []
    }),
  }
}
