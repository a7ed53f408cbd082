import type {Alleles} from '../heredity/locus.ts'
import type {Bird, Pen, Trait} from '../logbook/book.ts'
import {hasAllele} from './chance-explained.ts'
import {countedValue} from './counted-value.ts'
import {crossRatio, writeCross, type Cross, type CrossRatio} from './cross-ratio.ts'
import type {Heredity} from './heredity.ts'
import {SURE, surely, type BroodApart, type KnownApart, type KnownOfBirds} from './known-apart.ts'
import type {Chick} from './ladder-chicks.ts'
import type {LocusGroup} from './locus-groups.ts'
import type {PedigreeOfBook} from './pedigree-of-book.ts'

/** A mating whose parents' genotypes are known, with its scored chicks of one trait. */
export interface MatingApart {
  readonly trait: Trait
  readonly group: LocusGroup
  /** the sex that is counted; null: both together */
  readonly sex: 'male' | 'female' | null
  readonly pen: Pen | null
  readonly sires: readonly Bird[]
  readonly dams: readonly Bird[]
  readonly cross: Cross
  readonly written: string
  readonly ratio: CrossRatio
  readonly chicks: readonly Chick[]
  /** of each state of the trait */
  readonly counts: readonly number[]
  /** the place of the recessive state by which alone a parent is known to carry; null where the parents are known without these chicks */
  readonly knownBy: number | null
  /** the flock with the looks of these chicks unseen */
  readonly apart: KnownOfBirds
}

/** Scored chicks that no mating takes in, by why. */
export interface Untested {
  readonly trait: Trait
  /** a parent is outside the book, or its genotype is not known for sure */
  readonly unsure: number
  /** the ratio rests on how linked loci lie in a parent, or on a locus that kills of which it is not known what stands there */
  readonly phase: number
  /** no rule tells what some of the chicks look like */
  readonly unsaid: number
  /** the sexes differ and the chick's is not known */
  readonly sexUnknown: number
  /** nothing was to be told: all of its brood whose parents are known can look one way only, and do */
  readonly alike: number
}

/** Shares that differ by no more are alike. */
const ALIKE = 1e-12

type Why = Exclude<keyof Untested, 'trait'>

/** Chicks that come of one cross in one brood, whichever of some like birds had them. */
interface Family {
  readonly cross: Cross
  readonly sires: Set<Bird>
  readonly dams: Set<Bird>
  readonly chicks: Chick[]
  readonly knownBy: boolean
}

export interface MatingsApart {
  readonly matings: readonly MatingApart[]
  readonly untested: readonly Untested[]
  /** crosses among those left out as alike that a wrong score could have made stray: as good as tests, all passed */
  readonly passed: number
}

/** Every mating whose chicks can be held against a ratio. Broods none of whose parents are known even with their chicks, or in which all are alike as they must, are not worked anew. */
export function matingsApart(pedigree: PedigreeOfBook, heredity: Heredity, knownApart: KnownApart): MatingsApart {
  const matings: MatingApart[] = [], untested: Untested[] = []
  let passed = 0
  for (const group of heredity.groups) {
    const {broods, of} = knownApart(group)
    // where the records contradict each other the chicks may be what makes their parents doubtful
    const worth = heredity.worked(group).found.slack > 0 ? broods : broods.filter(({chicks}) => chicks.some(chick => group.traits.some(trait => tellsOf(chick, trait, group) === 'more')))
    const all = worth.map(of)
    for (const trait of group.traits) {
      const left: Record<Why, number> = {unsure: 0, phase: 0, unsaid: 0, sexUnknown: 0, alike: 0}
      for (const {chicks} of broods.filter(brood => !worth.includes(brood))) passed += leftOut(chicks, trait, group, left)
      for (const brood of all) matings.push(...matingsOf(brood, trait, group, left))
      untested.push({trait, ...left})
    }
  }
  return {matings, untested, passed}

  /** Has the chick's cross more than one look to give, or the chick another than that one? Null where its parents are not known. */
  function tellsOf(chick: Chick, trait: Trait, group: LocusGroup): 'more' | 'alike' | null {
    const cross = scoredIn(chick, trait) > 0 ? crossOf(chick, trait, group, heredity.worked(group)) : null
    if (!cross) return null
    const scored = trait.states.indexOf(String(countedValue(chick, trait)))
    const sexes = chick.sex === 'unknown' ? (['male', 'female'] as const) : [chick.sex]
    return sexes.every(sex => (crossRatio(trait, group, cross, sex)?.looks[scored] ?? 0) > 1 - ALIKE) ? 'alike' : 'more'
  }

  /** Counts the chicks of a brood that is not worked anew; gives how many of its crosses might have strayed. */
  function leftOut(chicks: readonly Chick[], trait: Trait, group: LocusGroup, left: Record<Why, number>): number {
    const crosses = new Set<string>()
    for (const chick of chicks) {
      const isAlike = tellsOf(chick, trait, group) === 'alike', cross = isAlike ? crossOf(chick, trait, group, heredity.worked(group)) : null
      left[isAlike ? 'alike' : 'unsure'] += scoredIn(chick, trait)
      const scored = cross ? crossRatio(trait, group, cross, chick.sex === 'female' ? 'female' : 'male')?.scored ?? [] : []
      if (cross && scored.filter(share => share > 0).length > 1) crosses.add(`${writeCross(trait, group, cross)} ${chick.parentage.pairs.map(({sire, dam}) => `${sire?.id} ${dam?.id}`).join()}`)
    }
    return crosses.size
  }

  function matingsOf({brood, apart}: BroodApart, trait: Trait, group: LocusGroup, left: Record<Why, number>): readonly MatingApart[] {
    const families = new Map<string, Family>()
    for (const chick of brood.chicks) {
      if (scoredIn(chick, trait) === 0) continue
      const known = crossOf(chick, trait, group, apart), cross = known ?? crossOf(chick, trait, group, heredity.worked(group))
      if (!cross) {
        left.unsure += chick.count
        continue
      }
      const {pairs} = chick.parentage, [only] = pairs
      const key = `${known === null} ${pairs.length === 1 ? `${only?.sire?.id ?? ''} ${only?.dam?.id ?? ''}` : `pen ${writeCross(trait, group, cross)}`}`
      const family = families.get(key) ?? {cross, sires: new Set<Bird>(), dams: new Set<Bird>(), chicks: [], knownBy: known === null}
      families.set(key, family)
      family.chicks.push(chick)
      for (const {sire, dam} of pairs) {
        if (sire) family.sires.add(sire)
        if (dam) family.dams.add(dam)
      }
    }
    return [...families.values()].flatMap(family => bySex(family, trait, group, left).flatMap(({sex, ratio, chicks}): MatingApart[] => {
      const counts = trait.states.map(state => chicks.reduce((sum, chick) => sum + (countedValue(chick, trait) === state ? chick.count : 0), 0))
      const knownBy = family.knownBy ? recessiveOf(family, trait, group, apart, ratio, counts) : null
      if (family.knownBy && knownBy === null) {
        // of the Z the sons of a hen with the common allele look one way, whatever their sire hides
        const isAlike = counts.some((count, state) => count > 0 && (ratio.looks[state] ?? 0) > 1 - ALIKE) && counts.filter(count => count > 0).length === 1
        left[isAlike ? 'alike' : 'unsure'] += chicks.reduce((sum, {count}) => sum + count, 0)
        return []
      }
      return [{
        trait, group, sex, pen: brood.pen, sires: [...family.sires], dams: [...family.dams], cross: family.cross, written: writeCross(trait, group, family.cross), ratio, chicks, counts, knownBy, apart,
      }]
    }))
  }

  /** What stands in all pairs that may have had the chick, where it is sure and the same in all. */
  function crossOf(chick: Chick, trait: Trait, group: LocusGroup, worked: KnownOfBirds): Cross | null {
    let found: Cross | null = null
    for (const {sire, dam} of chick.parentage.pairs) {
      const one = sire && surely(trait, group, worked, pedigree.numberOf(sire)), other = dam && surely(trait, group, worked, pedigree.numberOf(dam))
      if (!one || !other) return null
      const cross = {sire: one, dam: other}
      if (found && writeCross(trait, group, found) !== writeCross(trait, group, cross)) return null
      found = cross
    }
    return found
  }

  /**
   * The state by which alone a cross is known, where these chicks show it: the look of those that have nothing but the allele that every parent not known otherwise
   * hides. That such a parent has its other allele must be known without these chicks: else one of each sort would have been needed to find it.
   */
  function recessiveOf({cross, sires, dams}: Family, trait: Trait, group: LocusGroup, apart: KnownOfBirds, {scored, pureLooks}: CrossRatio, counts: readonly number[]): number | null {
    if (trait.loci.length !== 1) return null
    const hidden = new Set<number | null>(), place = group.loci.findIndex(locus => locus === trait.loci[0])
    for (const [birds, alleles] of [[sires, cross.sire[0]], [dams, cross.dam[0]]] as const) {
      for (const bird of birds) {
        const animal = pedigree.numberOf(bird)
        if (surely(trait, group, apart, animal) === null) hidden.add(hiddenIn(alleles ?? null, allele => hasAllele(apart.found.at(animal, place), allele)))
      }
    }
    const [allele = null] = hidden
    if (hidden.size !== 1 || allele === null) return null
    const [told, ...more] = pureLooks.filter(({alleles: [only]}) => only === allele)
    return told && more.length === 0 && (counts[told.state] ?? 0) > 0 && (scored[told.state] ?? 0) < 1 - ALIKE ? told.state : null
  }
}

/** Of a mixed bird that surely has one of its alleles, the other. */
function hiddenIn(alleles: Alleles | null, has: (allele: number) => number): number | null {
  if (alleles === null) return null
  const [one, other] = alleles
  if (other === null || one === other) return null
  return has(one) >= SURE ? other : has(other) >= SURE ? one : null
}

const scoredIn = (chick: Chick, trait: Trait): number => {
  const value = countedValue(chick, trait)
  return value !== null && trait.states.includes(String(value)) ? chick.count : 0
}

/** The chicks of a family in the lots that are held against one ratio each. */
function bySex({cross, chicks}: Family, trait: Trait, group: LocusGroup, left: Record<Why, number>): readonly {readonly sex: MatingApart['sex']; readonly ratio: CrossRatio; readonly chicks: readonly Chick[]}[] {
  const number = (some: readonly Chick[]): number => some.reduce((sum, {count}) => sum + count, 0)
  const male = crossRatio(trait, group, cross, 'male'), female = crossRatio(trait, group, cross, 'female')
  if (!male || !female) {
    left.phase += number(chicks)
    return []
  }
  const alike = (trait.seenIn === null || trait.seenIn === 'unknown') && male.scored.every((share, state) => Math.abs(share - (female.scored[state] ?? 0)) < ALIKE)
  const of = (sex: 'male' | 'female') => ({sex, ratio: sex === 'male' ? male : female, chicks: chicks.filter(chick => chick.sex === sex)})
  if (!alike) left.sexUnknown += number(chicks.filter(({sex}) => sex === 'unknown'))
  const lots = alike ? [{sex: null, ratio: male, chicks}] : (['male', 'female'] as const).filter(sex => trait.seenIn === null || trait.seenIn === sex).map(of)
  return lots.filter(lot => {
    if (lot.chicks.length > 0 && lot.ratio.unsaid > ALIKE) left.unsaid += number(lot.chicks)
    return lot.chicks.length > 0 && lot.ratio.unsaid <= ALIKE
  })
}
