import {nearSymbols, orNear} from '../../records/near.ts'
import type {Slip, Spot} from '../../records/problem.ts'
import type {Locus} from '../book.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const trait = (genotype: string) => `---\nname: Skin\nstates: [white, yellow]\nloci:\n  W: {on: autosome, alleles: [W+, w]}\nshows:\n  - {W: W+/_, is: white}\n  - {W: ${genotype}, is: yellow}\n---\n`

export const entry: ManualEntry = {
  code: 'unknown-allele', severity: 'error', title: 'An allele that the locus does not have',
  cause: 'A rule, a strain’s alleles or a bird’s test names an allele that is not among those of the locus. Capitals and the + of the wild type are part of an allele’s name.',
  remedy: 'Write one of the locus’s alleles, or add it to them.',
  wrong: {'traits/skin.md': trait('w+/w+')},
  right: {'traits/skin.md': trait('w/w')},
}

export function unknownAllele(allele: string, {symbol, alleles}: Pick<Locus, 'symbol' | 'alleles'>, at: Spot): Slip {
  return slipOf(entry, at, `${symbol} has no allele “${allele}”; it has ${alleles.join(', ')}`, orNear(nearSymbols(allele, alleles), `write one of ${alleles.join(', ')}, or add it to the alleles of ${symbol}`))
}
