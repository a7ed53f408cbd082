import {readGenotype} from '../../heredity/genotype-notation.ts'
import {inside} from '../../records/problem.ts'
import {LETHAL} from '../../records/schema/loci.ts'
import type {Locus} from '../book.ts'
import type {Linked} from '../linked.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const legs = (first: string) => `---\nname: Legs\nstates: [short, long]\nloci: [Cp]\nshows:\n${first}  - {Cp: Cp/cp+, is: short}\n  - {Cp: _/_, is: long}\n---\n`

export const entry: ManualEntry = {
  code: 'lethal-left-out', severity: 'warning', title: 'A lethal genotype that the rules do not speak of',
  cause: 'By the reference chicks of a genotype die before they hatch. A trait that names the locus has rules of its own, and neither they nor those of any other trait say so: a pairing that loses such eggs is then foretold without the loss.',
  remedy: 'Add the line of the reference to the rules of the trait; it holds before the others wherever it stands.',
  wrong: {'traits/legs.md': legs('')},
  right: {'traits/legs.md': legs('  - {Cp: Cp/Cp, is: lethal}\n')},
}

export function check({bench, book}: Linked): void {
  for (const [symbol, {locus}] of book.loci) {
    const lethal = lethalOf(locus, bench)
    if (lethal === null || book.traits.some(({shows}) => shows.some(({is, patterns, penetrance}) => is === LETHAL && penetrance > 0 && patterns.has(locus)))) continue
    // a trait whose rules could not be read has none, and that was said
    const trait = book.traits.find(({loci, shows}) => loci.includes(locus) && shows.some(({from}) => from === 'project'))
    if (!trait) continue
    bench.noteAbout(trait)(slipOf(entry, inside(trait.at, 'shows'), `by the reference no chick of ${lethal} hatches, and the rules of ${trait.id} do not say so, so that eggs lost to it are not foretold`, `add {${symbol}: ${lethal}, is: lethal} to the rules`))
  }
}

/** The genotype that never hatches, as the project's own record of the locus has it, else the reference; null where there is none, or the locus has not these alleles. */
export function lethalOf(locus: Locus, {records, reference}: Linked['bench']): string | null {
  const looks = records.locus.find(({id}) => id === locus.symbol)?.data.looks ?? reference.loci.get(locus.symbol)?.data.looks ?? []
  for (const {is, others: [only, ...more]} of looks.flatMap(({shows}) => shows)) {
    if (is === LETHAL && only?.key === locus.symbol && more.length === 0 && readGenotype(only.value, locus).kind === 'read') return only.value
  }
  return null
}
