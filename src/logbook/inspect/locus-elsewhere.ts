import type {Spot} from '../../records/problem.ts'
import {inside} from '../../records/problem.ts'
import type {PlaceWord} from '../../records/schema/loci.ts'
import type {Linked} from '../linked.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const trait = (on: string) => `---\nname: Ground\nstates: [silver, gold]\nloci:\n  S: {on: ${on}, alleles: [S, s+]}\nshows:\n  - {S: S/_, is: silver}\n  - {S: _/_, is: gold}\n---\n`

export const entry: ManualEntry = {
  code: 'locus-elsewhere', severity: 'warning', title: 'A locus on another place than the reference has it',
  cause: 'A trait, or a record of loci/, says that a locus lies on the Z where the reference has it on an autosome, or the other way round. Its own word holds; if it is a slip, hens are taken to carry what they cannot, or to hide nothing where they may, and good birds are then doubted.',
  remedy: 'Leave on out, so that the reference holds. Where another locus is meant, give it another symbol.',
  wrong: {'traits/ground.md': trait('autosome')},
  right: {'traits/ground.md': trait('Z')},
}

export function check({bench}: Linked): void {
  const {records: {trait, locus}, reference} = bench
  const told: readonly {readonly symbol: string; readonly on: PlaceWord | undefined; readonly at: Spot}[] = [
    ...locus.map(({id, data, at}) => ({symbol: id, on: data.on, at: inside(at, 'on')})),
    ...trait.flatMap(({data}) => data.loci ?? []).map(({symbol, on, at}) => ({symbol, on, at: inside(at, 'on')})),
  ]
  for (const {symbol, on, at} of told) {
    const theirs = reference.loci.get(symbol)?.data.on
    if (on === undefined || theirs === undefined || on === theirs) continue
    bench.note(slipOf(entry, at, `${symbol} is said to lie on ${where(on)}, and by the reference it lies on ${where(theirs)}`, `take on: ${on} out, so that the reference holds; if another locus is meant, give it another symbol`))
  }
}

const where = (on: PlaceWord): string => (on === 'Z' ? 'the Z' : 'an autosome')
