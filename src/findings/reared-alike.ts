import type {CareEntry, CareKind, Hatch, Keeper} from '../logbook/book.ts'
import {CARE_KINDS} from '../logbook/book.ts'
import type {CareTouching} from './care-touching.ts'
import {seasonOfHatch} from './ladder-chicks.ts'

/** How one hatch, or one pen of hens, was kept. */
export interface Kept {
  readonly season: number | null
  /** of hens: the months in which they were counted, and whether they were pullets or older */
  readonly months?: readonly string[]
  readonly ages?: readonly string[]
  /** of what was hatched; null for hens */
  readonly way: 'broody' | 'incubator' | 'not-stated' | null
  readonly machine: string | null
  readonly keeper: Keeper | null
  readonly care: readonly CareEntry[]
}

/** In what two groups may have been kept apart, in the order it is told. */
const UNLIKE = ['season', 'months', 'ages', 'way', 'machine', 'keeper', ...CARE_KINDS] as const

/** One thing in which they were. */
export interface Unlike {
  readonly what: (typeof UNLIKE)[number]
  /** what the first group had of it; empty: nothing. Seasons as years, months as two digits, ages as `pullets` or `hens`, ways as codes, machines and keepers by name, care as `with` says, else its record's id */
  readonly one: readonly string[]
  readonly other: readonly string[]
  /** the care entries that touched one group and not the other */
  readonly entries: readonly CareEntry[]
}

export interface RearedAlike {
  /** `not-told`: nothing on record tells them apart, but of some it is not written how they were hatched */
  readonly verdict: 'alike' | 'not-alike' | 'not-told'
  readonly unlike: readonly Unlike[]
  /** members of both groups of which it is not written whether a hen or a machine hatched them */
  readonly untold: number
}

/**
 * Were two groups kept alike, so that what differs between them may be laid to the birds?
 *
 * They were not where the records name another season, time of year or age of hens, way of hatching, machine, keeper, feed, housing or treatment for one than for the other. Where nothing is on record nothing is known to
 * differ: that is the most a record can say. Groups that are both of several machines, or both of several keepers, may still have had each in other parts.
 */
export function rearedAlike(one: readonly Kept[], other: readonly Kept[]): RearedAlike {
  const unlike = UNLIKE.flatMap((what): Unlike[] => {
    const first = named(one, what), second = named(other, what)
    // a hen has no machine: that is told with the way
    if (what === 'machine' && (first.size === 0 || second.size === 0)) return []
    if (first.size === second.size && [...first.keys()].every(name => second.has(name))) return []
    const entries = [...first, ...second].filter(([name]) => !(first.has(name) && second.has(name))).flatMap(([, own]) => own)
    return [{what, one: [...first.keys()].sort(), other: [...second.keys()].sort(), entries: [...new Set(entries)]}]
  })
  const untold = [...one, ...other].filter(({way}) => way === 'not-stated').length
  return {verdict: unlike.length > 0 ? 'not-alike' : untold > 0 ? 'not-told' : 'alike', unlike, untold}
}

function named(group: readonly Kept[], what: Unlike['what']): ReadonlyMap<string, readonly CareEntry[]> {
  const found = new Map<string, CareEntry[]>()
  const put = (name: string, entry?: CareEntry): void => {
    found.set(name, [...(found.get(name) ?? []), ...(entry ? [entry] : [])])
  }
  for (const {season, months = [], ages = [], way, machine, keeper, care} of group) {
    if (what === 'season') put(season === null ? 'not known' : String(season))
    else if (what === 'months') months.forEach(month => put(month))
    else if (what === 'ages') ages.forEach(age => put(age))
    else if (what === 'way') {
      if (way !== null && way !== 'not-stated') put(way)
    } else if (what === 'machine') {
      if (machine !== null) put(machine)
    } else if (what === 'keeper') {
      if (keeper) put(keeper.name)
    } else for (const entry of care) if (entry.care === (what satisfies CareKind)) put(entry.with?.toLowerCase() ?? entry.id, entry)
  }
  return found
}

/** @param until `hatch`: of the eggs, up to their hatching; else the age in days up to which the chicks are followed */
export function keptOfHatch(hatch: Hatch, touching: CareTouching, until: 'hatch' | number): Kept {
  return {
    season: seasonOfHatch(hatch), way: hatch.broody ? 'broody' : hatch.machine === null ? 'not-stated' : 'incubator', machine: hatch.machine, keeper: hatch.keeper,
    care: [...touching.eggsOf(hatch), ...(until === 'hatch' ? [] : touching.chicksOf(hatch, until))],
  }
}
