/** The mate of a test mating that is stated by its genotype alone. */
import {readGenotype, writeGenotype} from '../heredity/genotype-notation.ts'
import type {Alleles, Locus} from '../heredity/locus.ts'
import {plainAllele} from '../findings/plain-allele.ts'
import type {Logbook} from '../logbook/book.ts'
import {Refusal} from './refusal.ts'

export interface StatedMate {
  readonly genotype: readonly Alleles[]
  /** what was taken for the loci that were not named, in a sentence; or empty */
  readonly says: string
}

/**
 * `p+/p+`, or `r+/r+ p+/p+` where several loci are worked together: one genotype a locus, no allele left open. At a locus that is not named stands the allele that all
 * strains of the book have, else that of the wild fowl.
 *
 * @param loci of the group that is worked together
 * @throws {Refusal} where a genotype is not one of the loci, or nothing can be taken for one that is not named
 */
export function mateGenotype(text: string, loci: readonly Locus[], sex: 'male' | 'female', book: Pick<Logbook, 'strains'>): StatedMate {
  const found = new Map<Locus, Alleles>()
  for (const word of text.split(/[\s,]+/).filter(each => each !== '')) {
    const read = loci.flatMap(locus => {
      const genotype = readGenotype(word, locus)
      return genotype.kind === 'read' ? [{locus, pattern: genotype.pattern}] : []
    })
    const [first] = read
    if (!first) throw new Refusal(`“${word}” is no genotype at ${loci.map(locus => `${locus.symbol} (${locus.alleles.join(', ')})`).join(' or ')}.`)
    const {locus, pattern: [one, other]} = first
    if (one === 'any' || other === 'any') throw new Refusal(`“${word}” leaves an allele open; write both, or name a bird with --mate.`)
    const single = locus.on === 'Z' && sex === 'female'
    if (single !== (other === 'none')) throw new Refusal(single ? `A hen has one allele at ${locus.symbol}: write ${locus.alleles[one] ?? ''}/-.` : `A cock has two alleles at ${locus.symbol}: write both.`)
    found.set(locus, [one, other === 'none' ? null : other])
  }
  if (found.size === 0) throw new Refusal('Say with --mate-genotype what the mate is, such as p+/p+.')
  const taken = loci.filter(locus => !found.has(locus)).map(locus => {
    const plain = plainAllele(book, locus)
    if (!plain) throw new Refusal(`Say also what the mate has at ${locus.symbol} (${locus.alleles.join(', ')}): one genotype after the other.`)
    const genotype: Alleles = [plain.allele, locus.on === 'Z' && sex === 'female' ? null : plain.allele]
    found.set(locus, genotype)
    return `${writeGenotype(genotype, locus)}, ${plain.known === 'strains' ? 'as all strains have' : 'the wild type'}`
  })
  return {
    genotype: loci.map(locus => found.get(locus) ?? [0, null]),
    says: taken.length === 0 ? '' : `Of the mate is taken, since it was not said: ${taken.join('; ')}.`,
  }
}
