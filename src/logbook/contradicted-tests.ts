/** DNA tests that other records of the book leave no room for. */
import {genotypesAt, matches, type GenotypePattern} from '../heredity/genotype-notation.ts'
import type {Alleles} from '../heredity/locus.ts'
import {lookOf, type LookChances} from '../heredity/look-rules.ts'
import {MOST_TOLD_APART} from '../heredity/told-apart.ts'
import {alleleShares, type AlleleShares} from './allele-shares.ts'
import type {Bird, Locus, Logbook, Score, Strain, Trait} from './book.ts'
import {contradictedStrains} from './contradicted-strains.ts'
import {evidenceOf} from './contrary-scorings.ts'
import {lookRulesOf} from './look-rules-of.ts'

/** What speaks against a test. */
export type AgainstTest =
  /** every genotype that it leaves never hatches */
  | {readonly kind: 'lethal'; readonly trait: Trait}
  /** no genotype that it leaves looks as the bird was scored */
  | {readonly kind: 'look'; readonly trait: Trait; readonly score: Score}
  /** the bird’s strain has none of an allele that it found */
  | {readonly kind: 'strain'; readonly strain: Strain; readonly lacks: string; readonly known: AlleleShares['known']}
  /** a parent has no allele to hand on that would give it, by its own test, its strain or a look that is never scored wrongly */
  | {readonly kind: 'parent'; readonly parent: Bird; readonly role: 'sire' | 'dam'; readonly by: Handed['by']}

export interface ContradictedTest {
  readonly bird: Bird
  readonly locus: Locus
  readonly pattern: GenotypePattern
  readonly against: readonly AgainstTest[]
}

/** Scores are held against a test without a thought for misscoring: where the two do not agree one of them is wrong, and both are at hand to be looked at again. */
export function contradictedTests(book: Pick<Logbook, 'birds' | 'traits' | 'strains' | 'hatches'>): readonly ContradictedTest[] {
  const tested = book.birds.filter(bird => bird.tested.size > 0)
  if (tested.length === 0) return []
  const strains = contradictedStrains(book)
  /** what a strain has at a locus, where nothing else gives its record the lie */
  const sharesOf = (strain: Strain, locus: Locus): AlleleShares | null =>
    strains.some(each => each.strain === strain && each.trait.loci.includes(locus)) && !strain.alleles.has(locus.symbol) ? null : alleleShares(strain, locus)
  return tested.flatMap(bird => [...bird.tested].flatMap(([locus, pattern]): readonly ContradictedTest[] => {
    const own = genotypesOf(bird, locus).filter(alleles => matches(pattern, alleles))
    // a genotype that its sex cannot have is a slip by itself
    if (own.length === 0) return []
    const strain = bird.strain && lackedBy(bird.strain, locus, pattern, sharesOf)
    const against = [...book.traits.flatMap(trait => byTrait(bird, trait, locus)), ...strain ? [strain] : [], ...byParents(bird, locus, own, {traits: book.traits, sharesOf})]
    return against.length === 0 ? [] : [{bird, locus, pattern, against}]
  }))
}

const genotypesOf = ({sex}: Pick<Bird, 'sex'>, locus: Locus): readonly Alleles[] =>
  sex === 'unknown' && locus.on === 'Z' ? [...genotypesAt(locus, 'male'), ...genotypesAt(locus, 'female')] : genotypesAt(locus, sex === 'female' ? 'female' : 'male')

/** By the test of this locus with those of the trait's others; a trait of several tested loci is told at the first of them. */
function byTrait(bird: Bird, trait: Trait, locus: Locus): readonly AgainstTest[] {
  if (trait.loci.find(each => bird.tested.has(each)) !== locus) return []
  const left = looksLeft(bird, trait)
  if (left === null || left.length === 0) return []
  if (left.every(({look: {lethal}}) => lethal === 1)) return [{kind: 'lethal', trait}]
  const {counted} = bird.looks.get(trait) ?? {counted: null}
  if (!counted || evidenceOf(bird, trait).some(({value}) => left.some(({look: {states, unsaid}}) => unsaid > 0 || (states[trait.states.indexOf(String(value))] ?? 0) > 0))) return []
  return [{kind: 'look', trait, score: counted}]
}

/** Every genotype at the trait's loci that its tests leave to a bird, with its look. Null where there are no rules, or too many genotypes. */
function looksLeft(bird: Bird, trait: Trait): readonly {readonly genotype: readonly Alleles[]; readonly look: LookChances}[] | null {
  const rules = lookRulesOf(trait)
  if (!rules) return null
  const sexes = bird.sex === 'unknown' ? (['male', 'female'] as const) : [bird.sex]
  const all = sexes.map(sex => ({sex, each: trait.loci.map(one => genotypesAt(one, sex).filter(alleles => matches(bird.tested.get(one) ?? ['any', 'any'], alleles)))}))
  if (all.some(({each}) => each.reduce((product, {length}) => product * length, 1) > MOST_TOLD_APART)) return null
  return all.flatMap(({sex, each}) => each.reduce<readonly (readonly Alleles[])[]>((some, more) => some.flatMap(genotype => more.map(alleles => [...genotype, alleles])), [[]])
    .map(genotype => ({genotype, look: lookOf(rules, genotype, sex)})))
}

type SharesOf = (strain: Strain, locus: Locus) => AlleleShares | null

interface Known {
  readonly traits: readonly Trait[]
  readonly sharesOf: SharesOf
}

function lackedBy(strain: Strain, locus: Locus, pattern: GenotypePattern, sharesOf: SharesOf): AgainstTest | null {
  const found = sharesOf(strain, locus)
  const lacks = found && pattern.find(place => typeof place === 'number' && found.shares[place] === 0)
  return found && typeof lacks === 'number' ? {kind: 'strain', strain, lacks: locus.alleles[lacks] ?? '', known: found.known} : null
}

/** Against what its parents can hand on, where these are known. */
function byParents(bird: Bird, locus: Locus, own: readonly Alleles[], known: Known): readonly AgainstTest[] {
  const {parentage: {kind, pairs: [pair]}} = bird
  if (kind !== 'known' || !pair) return []
  const sire = pair.sire && handedOn(pair.sire, locus, known), dam = pair.dam && handedOn(pair.dam, locus, known)
  const fits = (fromSire: Handed | null, fromDam: Handed | null): boolean => own.some(([a, b]) => {
    const gives = (handed: Handed | null, allele: number): boolean => handed === null || handed.alleles.has(allele)
    return b === null ? gives(fromSire, a) : (gives(fromSire, a) && gives(fromDam, b)) || (gives(fromSire, b) && gives(fromDam, a))
  })
  if (fits(sire, dam)) return []
  const alone = [...fits(sire, null) ? [] : [against(pair.sire, 'sire', sire)], ...fits(null, dam) ? [] : [against(pair.dam, 'dam', dam)]]
  return (alone.length > 0 ? alone : [against(pair.sire, 'sire', sire), against(pair.dam, 'dam', dam)]).flatMap(each => each ?? [])
}

interface Handed {
  readonly alleles: ReadonlySet<number>
  readonly by: 'test' | 'strain' | 'look'
}

/** The alleles that a bird can hand on; null where nothing leaves out any. */
function handedOn(bird: Bird, locus: Locus, {traits, sharesOf}: Known): Handed | null {
  const pattern = bird.tested.get(locus), shares = bird.strain && sharesOf(bird.strain, locus)?.shares
  const all = genotypesOf(bird, locus), tested = all.filter(alleles => !pattern || matches(pattern, alleles))
  const ofStrain = tested.filter(alleles => !shares || alleles.every(allele => allele === null || (shares[allele] ?? 0) > 0))
  const seen = traits.reduce<readonly Alleles[]>((left, trait) => fittingLook(bird, trait, locus, left), ofStrain)
  // one whose own records contradict each other is told of by itself
  if (seen.length === 0 || seen.length === all.length) return null
  return {alleles: new Set(seen.flat().filter(allele => allele !== null)), by: tested.length < all.length ? 'test' : ofStrain.length < tested.length ? 'strain' : 'look'}
}

/** Of these genotypes at a locus those with which the bird can look as it was scored, every time; all of them where its scores may be wrong. */
function fittingLook(bird: Bird, trait: Trait, locus: Locus, genotypes: readonly Alleles[]): readonly Alleles[] {
  const scored = evidenceOf(bird, trait), place = trait.loci.indexOf(locus)
  const left = scored.length === 0 || place < 0 || trait.misscoring.size > 0 ? null : looksLeft(bird, trait)
  const fit = left?.filter(({look: {states, unsaid}}) => unsaid > 0 || scored.every(({value}) => (states[trait.states.indexOf(String(value))] ?? 0) > 0))
  const had = fit && genotypes.filter(alleles => fit.some(({genotype}) => genotype[place]?.join() === alleles.join()))
  return had && had.length > 0 ? had : genotypes
}

const against = (parent: Bird | null, role: 'sire' | 'dam', handed: Handed | null): AgainstTest | null => parent && handed && {kind: 'parent', parent, role, by: handed.by}
