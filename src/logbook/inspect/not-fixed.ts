import {inside} from '../../records/problem.ts'
import {allelesTrueFor} from '../allele-shares.ts'
import type {Linked} from '../linked.ts'
import {reachOf} from '../rule-reach.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const COLOUR = '---\nname: Colour\nstates: [white, coloured]\nloci:\n  I: {on: autosome, alleles: [I, I^D, i+]}\nshows:\n  - {I: I/_, is: white}\n  - {I: I^D/_, is: white}\n  - {I: i+/i+, is: coloured}\n---\n'
const strain = (alleles: string) => `---\nname: Fell Buff\nrole: donor\ntrue-for: {comb: pea, colour: white}\n${alleles}---\n`

export const entry: ManualEntry = {
  code: 'not-fixed', severity: 'warning', title: 'A strain true for a look that does not fix its alleles',
  cause: 'A strain is said to breed true for a look that several true-breeding genotypes have, so that its alleles do not follow; or for one that only mixed genotypes have, and these do not breed true.',
  remedy: 'State the alleles of the strain at the loci named. Until then those that may be there are taken to be alike in number.',
  wrong: {'traits/colour.md': COLOUR, 'strains/fell-buff.md': strain('')},
  right: {'traits/colour.md': COLOUR, 'strains/fell-buff.md': strain('alleles: {I: {I: 100%}}\n')},
}

export function check({bench, book}: Linked): void {
  for (const strain of book.strains) {
    for (const [trait, state] of strain.trueFor) {
      if (!reachOf(trait)?.states.has(state)) continue
      const open = trait.loci.flatMap(locus => (strain.alleles.has(locus.symbol) ? [] : [{locus, alleles: allelesTrueFor(trait, state, locus)}]))
      const note = bench.noteAbout(trait), at = inside(strain.at, 'true-for', trait.id)
      const none = open.find(({alleles}) => alleles?.length === 0)
      if (none) {
        const {locus} = none
        note(slipOf(entry, at, `no true-breeding genotype gives ${trait.id} ${state}, so ${strain.id} cannot breed true for it`, `take it out, and state the alleles instead: {${locus.symbol}: {${locus.alleles.slice(0, 2).map(allele => `${allele}: 50%`).join(', ')}}}`))
        continue
      }
      // where the look is settled by another locus, one at which every allele may stand is hidden beneath it, and that is nobody's slip
      const settled = open.length < trait.loci.length || open.some(({alleles}) => alleles?.length === 1)
      const several = open.filter(({locus, alleles}) => alleles !== null && alleles.length > 1 && !(settled && alleles.length === locus.alleles.length))
      if (several.length === 0) continue
      const words = several.map(({locus, alleles}) => `${locus.symbol} (${(alleles ?? []).map(allele => locus.alleles[allele]).join(' or ')})`).join(' and ')
      note(slipOf(entry, at, `several true-breeding genotypes give ${trait.id} ${state}, so that the strain’s alleles at ${words} do not follow`, `state them under alleles: {${several.map(({locus}) => `${locus.symbol}: {…: 100%}`).join(', ')}}`))
    }
  }
}
