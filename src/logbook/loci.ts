/**
 * The loci that the traits name, each once, from the nearest place that describes it:
 *
 *     written out in a trait  ▸  the project's own loci/<symbol>.md  ▸  the reference that ships with the house
 */
import {near, nearSymbols, slipsBetween} from '../records/near.ts'
import {inside} from '../records/problem.ts'
import type {RecordOf} from '../records/records.ts'
import type {LocusNamed} from '../records/schema/loci.ts'
import type {LocusRecord} from '../records/schema/locus.ts'
import type {Bench} from './bench.ts'
import type {BookLinkage, BookLocus, KnownLocus, Locus} from './book.ts'
import {locusDescribedTwice} from './inspect/locus-described-twice.ts'
import {unknownAllele} from './inspect/unknown-allele.ts'
import {unknownLocus} from './inspect/unknown-locus.ts'
import {linkagesOf, type LocusRecords} from './linkages.ts'

export interface Loci {
  readonly all: ReadonlyMap<string, BookLocus>
  readonly linkages: readonly BookLinkage[]
  get(symbol: string): Locus | undefined
  readonly symbols: readonly string[]
  readonly record: LocusRecords
  /** Does a trait name it, or one a slip away from it, that nothing describes? That is said at the trait, and not again where it is used. */
  isMissed(symbol: string): boolean
}

export function linkLoci(bench: Bench): Loci {
  const own = new Map(bench.records.locus.map(record => [record.id, record]))
  for (const {id, data: {alleles, rare}, at} of bench.records.locus) {
    rare?.forEach((allele, index) => { if (!alleles.includes(allele)) bench.note(unknownAllele(allele, {symbol: id, alleles}, inside(at, 'rare', index))) })
  }
  const record: LocusRecords = symbol => {
    const mine = own.get(symbol), theirs = bench.reference.loci.get(symbol)
    return mine ? {from: 'project', record: mine} : theirs ? {from: 'reference', record: theirs} : null
  }
  const named = new Map<string, LocusNamed[]>()
  for (const entry of bench.records.trait.flatMap(({data}) => data.loci ?? [])) named.set(entry.symbol, [...named.get(entry.symbol) ?? [], entry])
  const all = new Map<string, BookLocus>(), missed: string[] = [], used = usedSymbols(bench).filter(symbol => !named.has(symbol) && (own.has(symbol) || bench.reference.symbols.includes(symbol)))
  for (const [symbol, entries] of named) {
    const told = record(symbol)
    const locus = locusOf(symbol, entries, told && withoutRare(told.record.data, symbol, bench), used, bench)
    if (!locus) missed.push(symbol)
    if (locus) all.set(symbol, {locus, known: told && knownOf(told.record, told.from)})
  }
  return {
    all, record, symbols: [...all.keys()], get: symbol => all.get(symbol)?.locus,
    isMissed: symbol => missed.includes(symbol) || (!named.has(symbol) && missed.some(each => slipsBetween(symbol, each) !== null)),
    linkages: linkagesOf({all, named, record, isKnown: symbol => all.has(symbol) || own.has(symbol) || bench.reference.symbols.includes(symbol)}, bench),
  }
}

/** The loci that strains and tests name. */
const usedSymbols = ({records: {strain, bird, hatch}}: Bench): readonly string[] => [...new Set([
  ...strain.flatMap(({data}) => data.alleles ?? []), ...bird.flatMap(({data}) => data.tested ?? []), ...hatch.flatMap(({data}) => data.chicks ?? []).flatMap(({tested}) => tested ?? []),
].map(({key}) => key))]

/** The record without the rare alleles that no rule, strain or test of the project names. */
function withoutRare(record: LocusRecord, symbol: string, {records: {trait, strain, bird, hatch}}: Bench): LocusRecord {
  const {rare = []} = record
  if (rare.length === 0) return record
  const genotypes = [
    ...trait.flatMap(({data}) => data.shows ?? []).flatMap(({others}) => others),
    ...bird.flatMap(({data}) => data.tested ?? []), ...hatch.flatMap(({data}) => data.chicks ?? []).flatMap(({tested}) => tested ?? []),
  ].filter(({key}) => key === symbol).flatMap(({value}) => value.split('/').map(half => half.trim()))
  const named = new Set([...genotypes, ...strain.flatMap(({data}) => data.alleles ?? []).filter(({key}) => key === symbol).flatMap(({value}) => value.map(({key}) => key))])
  return {...record, alleles: record.alleles.filter(allele => !rare.includes(allele) || named.has(allele))}
}

/** The locus as the first trait that writes it out has it, the rest from its record; null, and a slip, where nothing describes it. */
function locusOf(symbol: string, entries: readonly LocusNamed[], record: LocusRecord | null, used: readonly string[], bench: Bench): Locus | null {
  const stated = {
    on: entries.find(entry => entry.on !== undefined), alleles: entries.find(entry => entry.alleles !== undefined),
  }
  for (const entry of entries) {
    if (entry.on !== undefined && stated.on && entry.on !== stated.on.on) bench.note(locusDescribedTwice(symbol, entry, stated.on, `on ${where(entry.on)} here, on ${where(stated.on.on)} there`))
    else if (entry.alleles && stated.alleles?.alleles && !sameAlleles(entry.alleles, stated.alleles.alleles)) {
      bench.note(locusDescribedTwice(symbol, entry, stated.alleles, `with the alleles ${entry.alleles.join(', ')} here, ${stated.alleles.alleles.join(', ')} there`))
    }
  }
  const on = stated.on?.on ?? record?.on, alleles = stated.alleles?.alleles ?? record?.alleles
  if (on !== undefined && alleles !== undefined) return {symbol, on, alleles}
  const [first] = entries
  if (first && !bench.isFaulty(`loci/${symbol}.md`)) {
    const likely = nearSymbols(symbol, bench.reference.symbols)
    bench.note(unknownLocus(symbol, first.keyAt, likely.length > 0 ? likely : near(symbol, used), 'named'))
  }
  return null
}

const where = (on: Locus['on'] | undefined): string => (on === 'Z' ? 'the Z' : 'an autosome')

const sameAlleles = (some: readonly string[], others: readonly string[]): boolean => some.length === others.length && some.every(allele => others.includes(allele))

function knownOf({data, body}: RecordOf<'locus'>, from: KnownLocus['from']): KnownLocus {
  return {
    from, name: data.name, body, chromosome: data.chromosome ?? null, gene: data.gene ?? null, dominance: data.dominance ?? null,
    cautions: (data.cautions ?? []).map(({about, says}) => ({about, says})), beliefs: (data.beliefs ?? []).map(({heard, right}) => ({heard, right})),
    doubts: data.doubts ?? [], sources: (data.sources ?? []).map(({by, year, known}) => ({by, year: year ?? null, known})), catalogue: data.catalogue ?? null,
  }
}
