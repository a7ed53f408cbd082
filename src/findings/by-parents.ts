import {foundersGenotypes, geneBlocks} from '../heredity/gene-block.ts'
import type {Probable} from '../heredity/genotype-probabilities.ts'
import type {Alleles, Locus} from '../heredity/locus.ts'
import {hatchingChance, lookLikelihood, type Sex} from '../heredity/look-likelihood.ts'
import {MOST_TOLD_APART} from '../heredity/told-apart.ts'
import type {Animal} from '../pedigree/pedigree.ts'
import type {Heredity} from './heredity.ts'

/** What a breeder works out at one locus, from the chances of the parents as they are shown. */
export interface ByParents {
  /** what stands in a bird or a chick of a tally, by its number in the flock; `likelier`: of several that may be its parents by what the flock says of who it was, and not by the records */
  of(animal: number, locus: Locus, withLook: boolean, likelier?: boolean): readonly Probable<Alleles>[] | null
  /** by the number of the allele, what a parent hands on to a chick that gets anything of it, summing to 1 */
  handedOn(parent: number, locus: Locus): Gamete
}

type Gamete = readonly number[]

/**
 * What would a breeder work out from the parents alone?
 *
 *     P(g) ∝ Σ over pairs of P(pair) · P(g | sire's chances, dam's chances) · P(it hatches | g) · P(its own look | g)
 *
 * each parent by itself and as it is shown, a founder from its strain; loci by themselves, as though not linked. Its own chicks, its sibs, a test, and what ties
 * its parents to each other are left out: where the chance that the whole flock gives is another, one of these is why.
 *
 * @returns summing to 1; null where the traits rest on too many loci to go through, or nothing fits
 */
export function byParents(heredity: Heredity): ByParents {
  const kept = new Map<Locus, Map<number, Gamete>>(), known = new Map<Locus, Map<Animal['matings'], Map<string, readonly Probable<Alleles>[] | null>>>()
  return {of, handedOn}

  /** Hatch mates that look alike are worked once. */
  function of(number: number, locus: Locus, withLook: boolean, likelier = false): readonly Probable<Alleles>[] | null {
    const {flock} = heredity.worked(heredity.groupOf(locus)), animal = flock.pedigree.animals[number]
    if (!animal || likelier) return worked(number, locus, withLook, likelier)
    const {matings, sex, base, outside} = animal, looks = withLook ? flock.readings(number).map(({trait, scored}) => `${trait} ${scored.join()}`).join(';') : '-'
    const key = `${sex} ${base} ${outside?.sire} ${outside?.dam} ${animal.oneOf ? 'one of' : ''} ${looks}`
    const atLocus = known.get(locus) ?? new Map<Animal['matings'], Map<string, readonly Probable<Alleles>[] | null>>(), ofMatings = atLocus.get(matings) ?? new Map<string, readonly Probable<Alleles>[] | null>()
    known.set(locus, atLocus.set(matings, ofMatings))
    const before = ofMatings.get(key)
    if (before !== undefined) return before
    const found = worked(number, locus, withLook, likelier)
    ofMatings.set(key, found)
    return found
  }

  function worked(number: number, locus: Locus, withLook: boolean, likelier: boolean): readonly Probable<Alleles>[] | null {
    const group = heredity.groupOf(locus), {flock, found} = heredity.worked(group), animal = flock.pedigree.animals[number]
    if (!animal || animal.oneOf) return null
    const at = group.loci.indexOf(locus), traits = flock.traits.map((trait, index) => ({trait, index})).filter(({trait}) => trait.look.loci.includes(at))
    const readings = withLook ? flock.readings(number).filter(({trait}) => traits.some(({index}) => index === trait)) : []
    const places = [...new Set([at, ...traits.flatMap(({trait}) => trait.look.loci)])]
    const sexes: readonly Sex[] = animal.sex === 'unknown' ? ['male', 'female'] : [animal.sex]
    const matings = likelier ? likelyMatings(animal) : animal.matings
    return weighed(0) ?? weighed(1e-3)

    function weighed(slack: number): readonly Probable<Alleles>[] | null {
      const sums = new Map<string, {is: Alleles; weight: number}>()
      for (const sex of sexes) {
        const each = places.map(place => genotypesAt(place, sex))
        if (each.reduce((product, {length}) => product * length, 1) > MOST_TOLD_APART) return null
        for (const {is, probability} of combined(places, each)) {
          const weight = probability * hatchingChance({traits: traits.map(({trait}) => trait)}, is, sex) * readings.reduce((product, reading) => product * lookLikelihood(flock, reading, is, sex, slack), 1)
          const alleles = is[at] ?? [0, null], sum = sums.get(alleles.join()) ?? {is: alleles, weight: 0}
          sum.weight += weight
          sums.set(alleles.join(), sum)
        }
      }
      const whole = [...sums.values()].reduce((total, {weight}) => total + weight, 0)
      return whole > 0 ? [...sums.values()].map(({is, weight}) => ({is, probability: weight / whole})) : null
    }

    function genotypesAt(place: number, sex: Sex): readonly Probable<Alleles>[] {
      if (!animal || animal.matings.length === 0) return ofStrain(place, sex, animal?.base ?? null)
      const sums = new Map<string, {is: Alleles; probability: number}>()
      const add = (a: number, b: number | null, probability: number): void => {
        if (probability === 0) return
        const is: Alleles = b === null ? [a, null] : [Math.min(a, b), Math.max(a, b)], sum = sums.get(is.join()) ?? {is, probability: 0}
        sum.probability += probability
        sums.set(is.join(), sum)
      }
      for (const {sire, dam, chance} of matings) {
        const left = gamete(sire, place, animal.outside?.sire ?? null)
        if (group.loci[place]?.on === 'Z' && sex === 'female') left.forEach((share, a) => { add(a, null, share * chance) })
        else gamete(dam, place, animal.outside?.dam ?? null).forEach((other, b) => left.forEach((share, a) => { add(a, b, share * other * chance) }))
      }
      return [...sums.values()]
    }

    /** the matings by what the flock says of either parent */
    function likelyMatings({matings}: Animal): Animal['matings'] {
      if (matings.length < 2) return matings
      const sires = found.sires(number), dams = found.dams(number)
      const times = (list: typeof sires, role: 'sire' | 'dam', parent: number | null): number => {
        const before = matings.filter(mating => mating[role] === parent).reduce((sum, {chance}) => sum + chance, 0)
        return list === null || before === 0 ? 1 : (list.find(({is}) => is === parent)?.probability ?? 0) / before
      }
      const weights = matings.map(({sire, dam, chance}) => chance * times(sires, 'sire', sire) * times(dams, 'dam', dam)), sum = weights.reduce((total, weight) => total + weight, 0)
      return sum > 0 ? matings.map((mating, index) => ({...mating, chance: (weights[index] ?? 0) / sum})) : matings
    }

    function gamete(parent: number | null, place: number, outside: number | null): Gamete {
      const there = group.loci[place]
      return parent === null || !there ? Array.from(flock.shares(outside)[place] ?? []) : handedOn(parent, there)
    }

    function ofStrain(place: number, sex: Sex, base: number | null): readonly Probable<Alleles>[] {
      const [block] = geneBlocks(group.loci.slice(place, place + 1), [])
      if (!block) return []
      const shares = foundersGenotypes(block, [flock.shares(base)[place] ?? []], base === null ? 0 : flock.pedigree.bases[base]?.inbreeding ?? 0, sex)
      return block.genotypes.flatMap((is, index) => ((shares[index] ?? 0) > 0 ? [{is, probability: shares[index] ?? 0}] : []))
    }
  }

  function handedOn(parent: number, locus: Locus): Gamete {
    const known = kept.get(locus) ?? new Map<number, Gamete>(), before = known.get(parent)
    if (before) return before
    const group = heredity.groupOf(locus), shares = locus.alleles.map(() => 0)
    for (const {is: [a, b], probability} of heredity.worked(group).found.at(parent, group.loci.indexOf(locus))) {
      shares[a] = (shares[a] ?? 0) + (b === null ? probability : probability / 2)
      if (b !== null) shares[b] = (shares[b] ?? 0) + probability / 2
    }
    kept.set(locus, known.set(parent, shares))
    return shares
  }
}

/** One at each of these places together, as though by themselves. */
function combined(places: readonly number[], each: readonly (readonly Probable<Alleles>[])[]): readonly Probable<Alleles[]>[] {
  return each.reduce<readonly Probable<Alleles[]>[]>((all, own, index) => all.flatMap(({is, probability}) => own.map(more => {
    const joined = [...is]
    joined[places[index] ?? 0] = more.is
    return {is: joined, probability: probability * more.probability}
  })), [{is: [], probability: 1}])
}
