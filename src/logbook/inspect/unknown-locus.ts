import {orNear} from '../../records/near.ts'
import type {Slip, Spot} from '../../records/problem.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const trait = (locus: string) => `---\nname: Crest\nstates: [none, small]\nloci:\n  Cr: {on: autosome, alleles: [Cr, cr+]}\nshows:\n  - {${locus}: Cr/_, is: small}\n  - {Cr: cr+/_, is: none}\n---\n`

export const entry: ManualEntry = {
  code: 'unknown-locus', severity: 'error', title: 'A locus that no trait describes',
  cause: 'A rule of inheritance or a bird’s test names a locus that is among the loci of no trait, or a trait names one that neither the reference nor a record in loci/ describes. A strain’s alleles at such a locus are a warning.',
  remedy: 'Write the locus as it is called under loci, or add it there; one that the reference does not have is written out, or has a record in loci/.',
  wrong: {'traits/crest.md': trait('Cr+')},
  right: {'traits/crest.md': trait('Cr')},
}

/** @param how `named` by a trait itself, which nothing describes; else used, and no trait names it */
export function unknownLocus(locus: string, at: Spot, near: readonly string[], how: 'named' | 'used' = 'used'): Slip {
  return how === 'named'
    ? slipOf(entry, at, `the reference has no locus ${locus}, and nothing here says where it lies`, orNear(near, `write it out: ${locus}: {on: autosome, alleles: [${locus}, ${locus.toLowerCase()}+]}`))
    : slipOf(entry, at, `no trait describes the locus ${locus}`, orNear(near, `add ${locus} to the loci of a trait, or take it out here`))
}
