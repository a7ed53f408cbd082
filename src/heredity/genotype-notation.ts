/**
 * The trade's way of writing what stands at a locus: `P/p+` (or `p+/P`, the same), `P/_` for a bird of which one allele is open,
 * `S/-` for the single Z of a hen. Capitals tell alleles apart: `P` and `p+` are two.
 */
import type {Alleles, Locus} from './locus.ts'

/** One place of a pattern: the number of an allele, or any. */
export type Place = number | 'any'

/** What a rule or a test says of one locus: named alleles first, the lower before the higher. `none` stands where a hen has no second Z. */
export type GenotypePattern = readonly [Place, Place | 'none']

/** Why a text is no genotype of a locus. */
export type NotRead =
  /** not two alleles with a stroke between */
  | {readonly kind: 'form'}
  | {readonly kind: 'no-such-allele'; readonly allele: string}
  /** `S/-`, and both sexes have two alleles at this locus */
  | {readonly kind: 'missing-on-autosome'}

export type GenotypeRead = {readonly kind: 'read'; readonly pattern: GenotypePattern} | NotRead

const ANY = '_'
const NONE = '-'

/**
 * Reads `P/p+`, `p+/P`, `P/_`, `_/_`, `S/-`.
 *
 * @param text two alleles of the locus with `/` between; `_` for any allele and, on the Z, for a hen's missing one; `-` for the missing one alone
 * @example readGenotype('p+/P', P) gives the pattern [0, 1] where the alleles of P are [P, p+]
 */
export function readGenotype(text: string, locus: Locus): GenotypeRead {
  const [first, second, ...more] = text.split('/').map(part => part.trim())
  if (first === undefined || second === undefined || more.length > 0 || first === '' || second === '' || (first === NONE && second === NONE)) return {kind: 'form'}
  const places: Place[] = []
  for (const allele of [first, second]) {
    if (allele === NONE) continue
    const place = allele === ANY ? 'any' : locus.alleles.indexOf(allele)
    if (place === -1) return {kind: 'no-such-allele', allele}
    places.push(place)
  }
  const [one = 'any', other = 'none'] = places.sort((a, b) => rank(a) - rank(b))
  if (other === 'none' && locus.on === 'autosome') return {kind: 'missing-on-autosome'}
  return {kind: 'read', pattern: [one, other]}
}

const rank = (place: Place): number => (place === 'any' ? Infinity : place)

/** Does what stands at a locus fit a pattern? `_` is any allele and a hen's missing one; `-` is a hen's missing one only; `s+/s+` fits no hen. */
export function matches([one, other]: GenotypePattern, [first, second]: Alleles): boolean {
  if (second === null) return fits(one, first) && (other === 'none' || other === 'any')
  if (other === 'none') return false
  return (fits(one, first) && fits(other, second)) || (fits(one, second) && fits(other, first))
}

const fits = (place: Place, allele: number): boolean => place === 'any' || place === allele

/** `P/p+`, in the order of the locus's list of alleles; a hen's single Z as `S/-`. */
export function writeGenotype([first, second]: Alleles, {alleles}: Locus): string {
  return `${alleles[first] ?? ''}/${second === null ? NONE : alleles[second] ?? ''}`
}

/** A pattern as the trade writes it: `P/_`, `S/-`. */
export function writePattern([one, other]: GenotypePattern, {alleles}: Locus): string {
  const write = (place: Place | 'none') => (place === 'any' ? ANY : place === 'none' ? NONE : alleles[place] ?? '')
  return `${write(one)}/${write(other)}`
}

/** Everything that can stand at a locus in one sex: of `n` alleles n(n + 1)/2, and n in a hen's single Z. */
export function genotypesAt({on, alleles}: Locus, sex: 'male' | 'female'): readonly Alleles[] {
  if (on === 'Z' && sex === 'female') return alleles.map((_, allele): Alleles => [allele, null])
  return alleles.flatMap((_, first) => alleles.slice(first).map((_allele, further): Alleles => [first, first + further]))
}
