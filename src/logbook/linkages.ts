/** Which loci of the book lie near each other: as the traits state it, else as the records of the loci have it. */
import {nearSymbols} from '../records/near.ts'
import type {Spot} from '../records/problem.ts'
import type {RecordOf} from '../records/records.ts'
import type {LinkRead, LocusNamed} from '../records/schema/loci.ts'
import type {Bench} from './bench.ts'
import type {BookLinkage, BookLocus} from './book.ts'
import {linkageImpossible} from './inspect/linkage-impossible.ts'
import {locusDescribedTwice} from './inspect/locus-described-twice.ts'

/** The record that tells more of a locus, and whose it is; null where there is none. */
export type LocusRecords = (symbol: string) => {readonly from: BookLinkage['from']; readonly record: RecordOf<'locus'>} | null

interface Told {
  readonly of: string
  readonly to: string
  readonly link: LinkRead
  readonly at: Spot
  readonly keyAt: Spot
  readonly from: BookLinkage['from']
}

interface Sources {
  readonly all: ReadonlyMap<string, BookLocus>
  readonly named: ReadonlyMap<string, readonly LocusNamed[]>
  readonly record: LocusRecords
  /** is there such a locus at all, in the book or in the reference? */
  isKnown(symbol: string): boolean
}

export function linkagesOf({all, named, record, isKnown}: Sources, bench: Bench): readonly BookLinkage[] {
  const stated = [...named.values()].flat().flatMap(({symbol, linked}) => linked.map((one): Told => ({of: symbol, to: one.key, link: one.value, at: one.at, keyAt: one.keyAt, from: 'project'})))
  const recorded = [...all.keys()].flatMap(symbol => {
    const told = record(symbol)
    return (told?.record.data.linked ?? []).map(({key, value, at, keyAt}): Told => ({of: symbol, to: key, link: value, at, keyAt, from: told?.from ?? 'reference'}))
  })
  const found = new Map<string, {readonly told: Told; readonly linkage: BookLinkage}>()
  // the project's own records of loci go before the reference
  for (const told of [...stated, ...recorded.filter(one => one.from === 'project'), ...recorded.filter(one => one.from === 'reference')]) {
    const {of, to, link, at, keyAt, from} = told
    const one = all.get(of)?.locus, other = all.get(to)?.locus
    const fault = of === to ? 'itself' : !isKnown(to) ? 'unknown' : link.recombination > 0.5 ? 'too-far' : one && other && one.on !== other.on ? 'other-chromosome' : null
    if (fault !== null) {
      if (from === 'project') bench.note(linkageImpossible(of, to, fault, fault === 'too-far' ? at : keyAt, nearSymbols(to, [...all.keys(), ...bench.reference.symbols])))
      continue
    }
    if (!one || !other) continue
    const pair = [of, to].sort().join('\n')
    const before = found.get(pair)
    if (!before) found.set(pair, {told, linkage: {loci: [one, other], recombination: link.recombination, doubt: link.doubt ?? null, from}})
    else if (stated.includes(told) && stated.includes(before.told) && before.linkage.recombination !== link.recombination) {
      bench.note(locusDescribedTwice(of, {at}, before.told, `${percent(link.recombination)} from ${to} here, ${percent(before.linkage.recombination)} there`))
    }
  }
  return [...found.values()].map(({linkage}) => linkage)
}

const percent = (share: number): string => `${Math.round(share * 1000) / 10}%`
