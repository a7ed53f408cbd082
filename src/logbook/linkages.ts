/** Which loci of the book lie near each other: as the traits state it, else as the records of the loci have it. */
import {strayLinkages} from '../heredity/linkage-line.ts'
import {nearSymbols} from '../records/near.ts'
import type {Spot} from '../records/problem.ts'
import type {RecordOf} from '../records/records.ts'
import type {LinkRead, LocusNamed} from '../records/schema/loci.ts'
import type {Bench} from './bench.ts'
import type {BookLinkage, BookLocus, Locus} from './book.ts'
import {linkageImpossible} from './inspect/linkage-impossible.ts'
import {linkageLeftAside} from './inspect/linkage-left-aside.ts'
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

interface Found {
  readonly told: Told
  readonly linkage: BookLinkage
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
  const found = new Map<string, Found>()
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
  const linkages = [...found.values()]
  noteLeftAside(linkages, [...all.values()].map(({locus}) => locus), bench)
  return linkages.map(({linkage}) => linkage)
}

/** Only where the project has a hand in it: what the reference says of loci is not its keeper's slip. */
function noteLeftAside(linkages: readonly Found[], loci: readonly Locus[], bench: Bench): void {
  const numbered = linkages.map(({linkage: {loci: [a, b], recombination}}) => ({loci: [loci.indexOf(a), loci.indexOf(b)] as const, recombination}))
  for (const {linkage, implied, between} of strayLinkages(loci, numbered)) {
    const stray = linkages[numbered.findIndex(each => each === linkage)]
    const along = [linkage.loci[0], ...between, linkage.loci[1]].map(number => loci[number]?.symbol ?? '')
    const others = linkages.filter(({linkage: {loci: pair}}) => pair.every(({symbol}) => along.includes(symbol)) && pair.some(({symbol}) => along.slice(1, -1).includes(symbol)))
    const own = [stray, ...others].find(each => each?.told.from === 'project')
    if (stray && own) bench.note(linkageLeftAside(own.told.at, along, stray.linkage.recombination, implied, others.filter(each => each.told.from === 'project' && each !== own).map(({told: {of, to, at}}) => ({at, note: `the linkage of ${of} and ${to} stands here`}))))
  }
}

const percent = (share: number): string => `${Math.round(share * 1000) / 10}%`
