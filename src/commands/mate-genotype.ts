/** What a test mating can be asked of, and the mate that is stated by its genotype alone. */
import {readGenotype} from '../heredity/genotype-notation.ts'
import type {Alleles, Locus} from '../heredity/locus.ts'
import {lookTells} from '../findings/look-tells.ts'
import type {Findings} from '../findings/study.ts'
import type {Bird} from '../logbook/book.ts'
import {Refusal} from './refusal.ts'

export interface TellableLocus {
  readonly locus: Locus
  /** the likeliest allele that the bird may hide and a chick could show */
  readonly allele: number
}

/** Loci at which the bird may hide an allele that some look of its chicks tells. */
export function tellableLoci({heredity, hidden}: Findings, bird: Bird, among: 'sons' | 'daughters' | 'all'): readonly TellableLocus[] {
  const sexes = among === 'sons' ? (['male'] as const) : among === 'daughters' ? (['female'] as const) : (['male', 'female'] as const)
  return hidden(bird).flatMap(({locus, open}) => {
    const traits = heredity.groupOf(locus).traits
    const told = open.find(({allele}) => sexes.some(sex => traits.some(trait => trait.states.some(state => lookTells(trait, state, sex, locus)?.only === allele))))
    return told ? [{locus, allele: told.allele}] : []
  })
}

/**
 * `p+/p+`, or `r+/r+ p+/p+` where several loci are worked together: one genotype a locus, no allele left open.
 *
 * @throws {Refusal} where a genotype is not one of the loci, or one is wanting
 */
export function mateGenotype(text: string, loci: readonly Locus[], sex: 'male' | 'female'): readonly Alleles[] {
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
  const wanting = loci.filter(locus => !found.has(locus))
  if (wanting.length > 0) throw new Refusal(`Say also what the mate has at ${wanting.map(({symbol}) => symbol).join(', ')}: one genotype after the other, such as ${loci.map(({alleles}) => `${alleles.at(-1) ?? ''}/${alleles.at(-1) ?? ''}`).join(' ')}.`)
  return loci.map(locus => found.get(locus) ?? [0, null])
}
