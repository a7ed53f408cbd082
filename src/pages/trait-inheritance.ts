/** How a trait is inherited, as the keeper records it: its loci in words, and which genotypes show which look. */
import type {Locus, Trait} from '../logbook/book.ts'
import {counted, listWords, percentSign, sentence} from './numbers.ts'
import type {Cell, Table} from './page.ts'

function locusWords({symbol, on, alleles}: Locus): string {
  const where = on === 'Z' ? 'on the Z chromosome: a cock has two, a hen one, which she has from her sire' : 'on an ordinary chromosome, the same in both sexes'
  return `${symbol}, ${where}${alleles.length === 0 ? '' : `; alleles ${listWords(alleles)}`}`
}

export interface Inheritance {
  readonly words: readonly string[]
  readonly shows: Table | null
  readonly misscoring: Table | null
}

export function inheritanceOf(trait: Trait): Inheritance {
  const {loci, shows, misscoring} = trait
  const symbols = loci.map(locus => locus.symbol)
  const rows = shows.map(({genotypes, is}): readonly Cell[] => [symbols.map(symbol => genotypes.get(symbol) ?? 'any').join(', '), is])
  const mistakes = [...misscoring].flatMap(([real, mistaken]) => [...mistaken].map(([seen, chance]): readonly Cell[] => [real, seen, percentSign(chance)]))
  return {
    words: loci.length === 0 ? ['No locus is recorded for it: what is inherited and how is left open here.']
      : [`${sentence(counted(loci.length, 'locus', 'loci'))} on record: ${loci.map(locusWords).join('. ')}.`, ...(rows.length > 0 ? ['Read from above, the first line that fits holds; _ stands for any allele.'] : [])],
    shows: rows.length === 0 ? null : {caption: 'What each genotype shows', columns: [{head: symbols.join(', ')}, {head: 'Shows'}], rows},
    misscoring: mistakes.length === 0 ? null : {caption: 'How often a look is taken for another, as the keeper states', columns: [{head: 'True look'}, {head: 'Taken for'}, {head: 'Chance', number: true}], rows: mistakes},
  }
}
