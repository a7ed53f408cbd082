import {orNear} from '../../records/near.ts'
import type {Slip, Spot} from '../../records/problem.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const trait = (linked: string) => `---\nname: Comb\nstates: [pea, single]\nloci:\n  P: {linked: ${linked}}\nshows:\n  - {P: P/_, is: pea}\n  - {P: p+/p+, is: single}\n---\n`

export const entry: ManualEntry = {
  code: 'linkage-impossible', severity: 'error', title: 'Loci that cannot lie near each other so',
  cause: 'A locus is said to lie near one that nobody describes, near itself or near one on another kind of chromosome, or more than half of the gametes are to cross over between the two.',
  remedy: 'Mend the symbol or the share. Loci that go their own ways cross over in 50% and need not be named.',
  wrong: {'traits/comb-of-p.md': trait('{O: 70%}')},
  right: {'traits/comb-of-p.md': trait('{O: 4%}')},
}

export type WhyImpossible = 'itself' | 'unknown' | 'too-far' | 'other-chromosome'

export function linkageImpossible(locus: string, other: string, why: WhyImpossible, at: Spot, near: readonly string[]): Slip {
  switch (why) {
    case 'itself': return slipOf(entry, at, `${locus} is said to lie near itself`, 'name another locus, or take it out')
    case 'unknown': return slipOf(entry, at, `${locus} is said to lie near ${other}, a locus that nothing describes`, orNear(near, `describe ${other} in a trait or in loci/, or take it out here`))
    case 'too-far': return slipOf(entry, at, `more than half of the gametes are to cross over between ${locus} and ${other}`, 'write at most 50%, or take it out: loci that go their own ways need not be named')
    case 'other-chromosome': return slipOf(entry, at, `of ${locus} and ${other} one lies on the Z and one does not`, 'mend where they lie, or take the linkage out')
  }
}
