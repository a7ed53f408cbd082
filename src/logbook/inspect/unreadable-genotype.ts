import type {Slip, Spot} from '../../records/problem.ts'
import type {Locus} from '../book.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const trait = (genotype: string) => `---\nname: Skin\nstates: [white, yellow]\nloci:\n  W: {on: autosome, alleles: [W+, w]}\nshows:\n  - {W: W+/_, is: white}\n  - {W: ${genotype}, is: yellow}\n---\n`

export const entry: ManualEntry = {
  code: 'unreadable-genotype', severity: 'error', title: 'A genotype that cannot be read',
  cause: 'A genotype is two alleles with a stroke between them: P/p+. What stands here is not.',
  remedy: 'Write two alleles with a stroke between, _ for any allele and, on the Z, - for a hen’s missing one.',
  wrong: {'traits/skin.md': trait('ww')},
  right: {'traits/skin.md': trait('w/w')},
}

export function unreadableGenotype(text: string, {symbol, on, alleles}: Locus, at: Spot): Slip {
  const [first = '', second = ''] = alleles
  return slipOf(entry, at, `“${text}” is no genotype of ${symbol}`, `write two alleles with a stroke between, such as ${first}/${second} or ${first}/_${on === 'Z' ? `, for a hen ${first}/-` : ''}`)
}
