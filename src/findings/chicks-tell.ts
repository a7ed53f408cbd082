import type {Probable} from '../heredity/genotype-probabilities.ts'
import type {Alleles, Locus} from '../heredity/locus.ts'
import type {ByParents} from './by-parents.ts'
import type {Heredity} from './heredity.ts'

/** A chance of a parent below this is none, and one of a genotype is not followed. */
const NONE = 1e-9

/**
 * About how likely would every genotype of a bird be, were what its chicks tell added to what its parents make it?
 *
 *     P(g) ∝ P(g by its parents) · Π over chicks, Σ over its genotypes c  P(c | g, mates as they are shown) · λ(c)
 *
 * λ is what the chick's own look, or all that is known of it and of what came of it, makes of its genotype beyond what its parents do. Mates are taken by themselves, and what they
 * are shown to be has the chicks in it already: near enough to tell which way chicks pull and about how far, and to be said nowhere as a figure.
 *
 * @param before by the bird's parents, with its own look
 * @param chicks by their numbers in the flock
 * @param all what came of the chicks as well, and not only their own looks
 */
export function chicksTell(heredity: Heredity, by: ByParents, bird: number, locus: Locus, before: readonly Probable<Alleles>[], chicks: readonly number[], all: boolean): readonly Probable<Alleles>[] {
  const group = heredity.groupOf(locus), {flock, found} = heredity.worked(group), place = group.loci.indexOf(locus)
  const weights = before.map(({probability}) => probability)
  for (const chick of chicks) {
    const bare = by.of(chick, locus, false), told = all ? found.at(chick, place) : by.of(chick, locus, true), animal = flock.pedigree.animals[chick]
    if (!bare || !told || !animal) continue
    const beyond = new Map(bare.map(({is: [a, b], probability}) => [keyOf(a, b), probability > NONE ? (told.find(({is}) => is[0] === a && is[1] === b)?.probability ?? 0) / probability : 0] as const))
    before.forEach(({is}, index) => { weights[index] = (weights[index] ?? 0) * given(is) })
    const sum = weights.reduce((total, weight) => total + weight, 0)
    if (sum > 0) weights.forEach((weight, index) => { weights[index] = weight / sum })

    function given(genotype: Alleles): number {
      return animal?.matings.reduce((total, {sire, dam, chance}) => total + chance * (sire === bird || dam === bird ? ofPair(genotype, sire === bird ? dam : sire) : 1), 0) ?? 1
    }

    function ofPair([one, other]: Alleles, mate: number | null): number {
      const own = other === null ? [[one, 1] as const] : [[one, 0.5] as const, [other, 0.5] as const]
      const mates = mate === null ? locus.alleles.map(() => 1 / locus.alleles.length) : by.handedOn(mate, locus), isHen = flock.pedigree.animals[bird]?.sex === 'female'
      // of the Z a daughter has her sire's alone
      if (locus.on === 'Z' && animal?.sex === 'female') return isHen ? 1 : own.reduce((sum, [allele, share]) => sum + share * (beyond.get(keyOf(allele, null)) ?? 1), 0)
      if (locus.on === 'Z' && animal?.sex !== 'male') return 1
      return own.reduce((sum, [allele, share]) => sum + mates.reduce((total, chance, given) => total + share * chance * (beyond.get(keyOf(Math.min(allele, given), Math.max(allele, given))) ?? 1), 0), 0)
    }
  }
  return before.map(({is}, index) => ({is, probability: weights[index] ?? 0}))
}

/** two alleles as one number; a hen's missing one stands before all */
const keyOf = (one: number, other: number | null): number => one * 65_536 + (other ?? -1) + 1
