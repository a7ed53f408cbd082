import type {Slip, Spot} from '../../records/problem.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const trait = (linked: string) =>
  `---\nname: Comb\nstates: [pea, single]\nloci:\n  P: {on: autosome, alleles: [P, p+], linked: {A: 10%, E: 10%, D: ${linked}}}\n  A: {on: autosome, alleles: [A, a+]}\n  E: {on: autosome, alleles: [E, e+]}\n  D: {on: autosome, alleles: [D, d+]}\nshows:\n  - {P: P/_, is: pea}\n  - {P: p+/p+, is: single}\n---\n`

export const entry: ManualEntry = {
  code: 'linkage-left-aside', severity: 'warning', title: 'Linkages that do not fit on one line',
  cause: 'Loci that lie near each other stand in a row on their chromosome, each next to the one it crosses over with least. Only the shares of neighbours are reckoned with, and the share stated of two that are not neighbours is far from the one that follows.',
  remedy: 'Mend the share that is wrong; or state the share of the two that come to stand side by side, or take one linkage out.',
  wrong: {'traits/comb.md': trait('10%')},
  right: {'traits/comb.md': trait('50%')},
}

const percent = (share: number): string => `${Math.round(share * 1000) / 10}%`

/**
 * @param along the symbols of the two loci with those between them, in their order
 * @param implied what follows from the shares of neighbours
 */
export function linkageLeftAside(at: Spot, along: readonly string[], stated: number, implied: number, related: NonNullable<Slip['related']>): Slip {
  const first = along[0] ?? '', last = along.at(-1) ?? '', between = along.slice(1, -1).join(' and ')
  return slipOf(entry, at, `${first} and ${last} are to cross over in ${percent(stated)}, but with ${between} between them it is ${percent(implied)}, which is what counts`,
    `mend the share that is wrong; if ${along.join(', ')} is not their order, state how near ${between} lies to ${first} and to ${last}`, ...related)
}
