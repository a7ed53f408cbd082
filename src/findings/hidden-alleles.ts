import {alleleShares} from '../logbook/allele-shares.ts'
import type {Probable} from '../heredity/genotype-probabilities.ts'
import type {Alleles, Locus} from '../heredity/locus.ts'
import type {Bird, Logbook, Trait} from '../logbook/book.ts'
import {chanceExplained, hasAllele} from './chance-explained.ts'
import {countedValue} from './counted-value.ts'
import type {Heredity} from './heredity.ts'
import type {Evidence, EvidenceAtLocus, HiddenAllele} from './hidden-evidence.ts'
import {SURE} from './known-apart.ts'
import type {Chick} from './ladder-chicks.ts'
import {lookTells, type LookTells} from './look-tells.ts'
import type {PedigreeOfBook} from './pedigree-of-book.ts'
import {whyHidden, type Why} from './why-hidden.ts'

/** What one bird may hide at one locus. */
export interface HiddenAtLocus extends EvidenceAtLocus {
  /** why its genotypes have the chances they have; worked when it is asked for */
  why(): Why | null
}

const WEIGHT = ['test', 'threw', 'given', 'not-given', 'chicks', 'strain', 'descent'] as const
/** A chick that was rather misread stands behind clean ones. */
const weightOf = (evidence: Evidence): number => (evidence.kind === 'threw' && evidence.believed < 0.5 ? WEIGHT.indexOf('chicks') + 0.5 : WEIGHT.indexOf(evidence.kind))
const CERTAIN = 1 - 1e-12
/** An allele that a look excludes is gone into from this chance on. */
const NOTICED = 0.0005

/**
 * What may a bird hide, and why do we say so?
 *
 * The probability comes from the whole flock. The evidence beside it is what a breeder would point at, each piece true by itself, in a set order of weight: a
 * test; chicks that showed it; a parent with nothing else to give; no parent that has it; clean chicks of mates that would have let it show, most chicks first;
 * its strain; and, where there is none of these, descent. Genotypes of parents and mates count as known from 99 %; chicks only where they are surely its own.
 */
export function hiddenAlleles({birds, hatches, loci}: Logbook, heredity: Heredity, pedigree: PedigreeOfBook): (bird: Bird) => readonly HiddenAtLocus[] {
  const {numberOf} = pedigree
  const tells = remembered()
  const chicksOf = new Map<Bird, Chick[]>()
  for (const chick of [...birds, ...hatches.flatMap(({tallies}) => tallies)]) {
    if (chick.count === 0) continue
    for (const {bird, chance} of [...chick.parentage.sires, ...chick.parentage.dams]) {
      if (chance >= CERTAIN) chicksOf.set(bird, [...chicksOf.get(bird) ?? [], chick])
    }
  }
  const all = [...loci.values()].map(({locus}) => locus), explained = chanceExplained({birds, hatches}, heredity, pedigree)

  return bird => all.map((locus): HiddenAtLocus => {
    const traits = heredity.groupOf(locus).traits.filter(trait => trait.loci.includes(locus))
    const looks = traits.flatMap(trait => {
      const state = countedValue(bird, trait), told = typeof state === 'string' ? tells(trait, state, bird.sex, locus) : null
      return typeof state === 'string' && told ? [{trait, state, told}] : []
    })
    const {genotypes, exact} = heredity.of(bird, locus)
    const shows = locus.alleles.flatMap((_, allele) => (looks.some(({told}) => told.must.has(allele)) ? [allele] : []))
    const open = locus.alleles.flatMap((_, allele) => (!shows.includes(allele) && looks.every(({told}) => told.may.has(allele)) ? [allele] : []))
    const excluded = locus.alleles.flatMap((_, allele) => (shows.includes(allele) || open.includes(allele) || hasAllele(genotypes, allele) < NOTICED ? [] : [allele]))
    const listed = (alleles: readonly number[]): readonly HiddenAllele[] =>
      alleles.map(allele => ({allele, probability: hasAllele(genotypes, allele), evidence: evidenceOf(bird, locus, allele, traits)})).sort((a, b) => b.probability - a.probability)
    const found: HiddenAtLocus = {locus, exact, shows, looks: looks.map(({trait, state}) => ({trait, state})), open: listed(open), excluded: listed(excluded), why: () => whyHidden(bird, found, heredity, explained), alone: allele => aloneLooks(traits, locus, allele)}
    return found
  })

  function evidenceOf(bird: Bird, locus: Locus, allele: number, traits: readonly Trait[]): readonly Evidence[] {
    const tested = bird.tested.get(locus)
    const found: Evidence[] = [
      ...(tested ? [{kind: 'test', found: tested} as const] : []),
      ...traits.flatMap(trait => threw(bird, locus, allele, trait)), ...fromParents(bird, locus, allele), ...traits.flatMap(trait => chicksByMates(bird, locus, allele, trait)),
    ]
    if (bird.parentage.kind === 'founder' && bird.strain) {
      const {shares, known} = alleleShares(bird.strain, locus)
      found.push({kind: 'strain', strain: bird.strain, share: shares[allele] ?? 0, known})
    }
    if (found.length === 0) found.push({kind: 'descent'})
    return found.sort((a, b) => weightOf(a) - weightOf(b) || chicksIn(b) - chicksIn(a))
  }

  function aloneLooks(traits: readonly Trait[], locus: Locus, allele: number): readonly {readonly trait: Trait; readonly state: string}[] {
    return traits.flatMap(trait => trait.states.filter(state => (['male', 'female'] as const).some(sex => tells(trait, state, sex, locus)?.only === allele)).map(state => ({trait, state})))
  }

  /** Chicks with the look of the allele alone have it from both parents; of the Z a daughter has hers from her sire. */
  function threw(bird: Bird, locus: Locus, allele: number, trait: Trait): Evidence[] {
    const byState = new Map<string, Chick[]>()
    for (const chick of chicksOf.get(bird) ?? []) {
      const state = countedValue(chick, trait)
      if (typeof state !== 'string' || tells(trait, state, chick.sex, locus)?.only !== allele || !getsFrom(bird, locus, chick)) continue
      byState.set(state, [...byState.get(state) ?? [], chick])
    }
    return [...byState].map(([state, chicks]) => ({
      kind: 'threw', trait, state, chicks, count: chicks.reduce((sum, {count}) => sum + count, 0), believed: Math.max(...chicks.map(chick => hasOnly(chick, locus, allele))),
    }))
  }

  /** Chance that a chick has nothing but this allele, by all that is known. */
  function hasOnly(chick: Chick, locus: Locus, allele: number): number {
    const group = heredity.groupOf(locus), {found, tallies} = heredity.worked(group)
    const number = chick.kind === 'bird' ? numberOf(chick) : tallies.get(chick)?.[0]
    return number === undefined ? 0 : onlyIn(found.at(number, group.loci.indexOf(locus)), allele)
  }

  function fromParents(bird: Bird, locus: Locus, allele: number): Evidence[] {
    const {sires, dams} = bird.parentage
    if (bird.parentage.kind === 'founder') return []
    const sides = locus.on === 'Z' && bird.sex === 'female' ? [sires] : locus.on === 'Z' && bird.sex === 'unknown' ? [] : [sires, dams]
    const certain = sides.map(side => side.find(({chance}) => chance >= CERTAIN)?.bird ?? null)
    const parents = certain.filter(parent => parent !== null)
    const given = parents.flatMap((parent): Evidence[] => {
      return hasOnly(parent, locus, allele) >= SURE ? [{kind: 'given', parent}] : []
    })
    if (given.length > 0) return given
    const isFree = parents.length > 0 && parents.length === sides.length && parents.every(parent => heredity.carries(parent, locus, allele) <= 1 - SURE)
    return isFree ? [{kind: 'not-given', parents}] : []
  }

  /** Looked-at chicks that would show the allele, had they got it: the mates, whichever it was, are of one known genotype. */
  function chicksByMates(bird: Bird, locus: Locus, allele: number, trait: Trait): Evidence[] {
    if (bird.sex === 'unknown' || (locus.on === 'Z' && bird.sex === 'female')) return []
    const byMates = new Map<string, {mates: readonly Bird[]; genotype: string; state: string; each: number; chicks: number; shown: number}>()
    for (const chick of chicksOf.get(bird) ?? []) {
      const state = countedValue(chick, trait)
      if (typeof state !== 'string' || (locus.on === 'Z' && chick.sex === 'unknown')) continue
      const mates = [...new Set(chick.parentage.pairs.map(({sire, dam}) => (sire === bird ? dam : sire)))].filter(mate => mate !== null)
      const known = chick.parentage.pairs.every(({sire, dam}) => sire && dam) ? mates.map(mate => sureGenotype(mate, locus)) : []
      const [genotype] = known
      if (!genotype || known.some(each => each?.written !== genotype.written)) continue
      const lets = genotype.is.includes(allele) || (locus.on === 'Z' && chick.sex === 'female')
      const alone = lets ? stateOf(trait, locus, allele, chick) : undefined
      if (alone === undefined) continue
      const each = locus.on === 'Z' && chick.sex === 'female' || genotype.is.every(other => other === allele || other === null) ? 0.5 : 0.25
      const key = mates.map(({id}) => id).sort().join(), before = byMates.get(key) ?? {mates, genotype: genotype.written, state: alone, each, chicks: 0, shown: 0}
      before.chicks += chick.count
      if (tells(trait, state, chick.sex, locus)?.only === allele) before.shown += chick.count
      byMates.set(key, before)
    }
    return [...byMates.values()].map(({mates, ...rest}) => {
      const looks = [...new Set(mates.map(mate => countedValue(mate, trait)))], [look] = looks
      return {kind: 'chicks', trait, mates, ...rest, mateLook: looks.length === 1 && typeof look === 'string' ? look : null}
    })
  }

  /** The look by which a chick of this sex shows that it has nothing but the allele, if there is one. */
  function stateOf(trait: Trait, locus: Locus, allele: number, {sex}: Chick): string | undefined {
    return trait.states.find(state => tells(trait, state, sex, locus)?.only === allele)
  }

  function sureGenotype(bird: Bird, locus: Locus) {
    const [first] = heredity.of(bird, locus).genotypes
    return first && first.probability >= SURE ? first : null
  }
}

/** Does the parent hand this chick anything at the locus? Of the Z a hen nothing to her daughters; of an unsexed chick it is not known. */
const getsFrom = (parent: Bird, {on}: Locus, {sex}: Chick): boolean => on === 'autosome' || parent.sex === 'male' || sex === 'male'

const onlyIn = (genotypes: readonly Probable<Alleles>[], allele: number): number =>
  Math.min(1, genotypes.reduce((sum, {is, probability}) => sum + (is.every(each => each === allele || each === null) ? probability : 0), 0))

const chicksIn = (evidence: Evidence): number => (evidence.kind === 'chicks' ? evidence.chicks : evidence.kind === 'threw' ? evidence.count : 0)

function remembered(): typeof lookTells {
  const known = new Map<string, LookTells | null>()
  return (trait, state, sex, locus) => {
    const key = `${trait.id}\n${state}\n${sex}\n${locus.symbol}`, before = known.get(key)
    if (before !== undefined) return before
    const told = lookTells(trait, state, sex, locus)
    known.set(key, told)
    return told
  }
}
