import type {Slip, Spot} from '../../records/problem.ts'
import type {Locus} from '../book.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const trait = (genotype: string) => `---\nname: Skin\nstates: [white, yellow]\nloci:\n  W: {on: autosome, alleles: [W+, w]}\nshows:\n  - {W: W+/_, is: white}\n  - {W: ${genotype}, is: yellow}\n---\n`

export const entry: ManualEntry = {
  code: 'hen-on-autosome', severity: 'error', title: 'A missing allele where none is missing',
  cause: 'A genotype such as w/- leaves an allele out, which a hen does on the Z. On every other chromosome she has two, as a cock has.',
  remedy: 'Write both alleles; _ stands for any.',
  wrong: {'traits/skin.md': trait('w/-')},
  right: {'traits/skin.md': trait('w/w')},
}

export function henOnAutosome(text: string, locus: Locus, at: Spot): Slip {
  const allele = text.split('/').map(part => part.trim()).find(part => part !== '-') ?? '_'
  return slipOf(entry, at, `“${text}” leaves an allele out, but ${locus.symbol} does not lie on the Z`, `write ${allele}/_ or ${allele}/${allele}; if ${locus.symbol} does lie on the Z, say on: Z`)
}
