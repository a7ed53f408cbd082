import {orNear} from '../../records/near.ts'
import type {Slip, Spot} from '../../records/problem.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const trait = (locus: string) => `---\nname: Crest\nstates: [none, small]\nloci:\n  Cr: {on: autosome, alleles: [Cr, cr+]}\nshows:\n  - {${locus}: Cr/_, is: small}\n  - {Cr: cr+/_, is: none}\n---\n`

export const entry: ManualEntry = {
  code: 'unknown-locus', severity: 'error', title: 'A locus that no trait describes',
  cause: 'A rule of inheritance names a locus that is among the loci of no trait. A strain’s alleles at such a locus are a warning.',
  remedy: 'Write the locus as it is called under loci, or add it there.',
  wrong: {'traits/crest.md': trait('Cr+')},
  right: {'traits/crest.md': trait('Cr')},
}

export const unknownLocus = (locus: string, at: Spot, near: readonly string[]): Slip =>
  slipOf(entry, at, `no trait describes the locus ${locus}`, orNear(near, `add ${locus} to the loci of a trait, or take it out here`))
