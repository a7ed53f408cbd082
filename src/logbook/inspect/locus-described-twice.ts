import type {Slip, Spot} from '../../records/problem.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const trait = (name: string, one: string, other: string, on: string) =>
  `---\nname: ${name}\nstates: [${one}, ${other}]\nloci:\n  Cr: {on: ${on}, alleles: [Cr, cr+]}\nshows:\n  - {Cr: Cr/_, is: ${one}}\n  - {Cr: cr+/_, is: ${other}}\n---\n`
const CREST = trait('Crest', 'crested', 'plain', 'autosome')

export const entry: ManualEntry = {
  code: 'locus-described-twice', severity: 'error', title: 'One locus described in two ways',
  cause: 'Two traits write out the same locus, and not alike: on another chromosome, with other alleles, or at another distance from a third.',
  remedy: 'Write it out in one of them and name it by its symbol, as {Cr: {}}, in the other; or give it a record of its own in loci/.',
  wrong: {'traits/crest.md': CREST, 'traits/skull.md': trait('Skull', 'domed', 'flat', 'Z')},
  right: {'traits/crest.md': CREST, 'traits/skull.md': trait('Skull', 'domed', 'flat', 'autosome')},
}

interface Described {
  readonly at: Spot
}

export function locusDescribedTwice(symbol: string, here: Described, there: Described, says: string): Slip {
  return slipOf(entry, here.at, `${symbol} is described in two ways: ${says}`, `describe it once, and leave {${symbol}: {}} here`, {at: there.at, note: 'the other description stands here'})
}
