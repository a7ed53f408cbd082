import {isoDay} from '../records/dates.ts'
import type {Evidence} from './evidence.ts'
import {leftOut} from './evidence-found.ts'
import type {Shown} from './evidence-shown.ts'
import type {CannotSay, Share} from './estimate.ts'
import type {FigureColumn, FiguresTable} from './figures.ts'
import {lastDayOf} from './next-season.ts'
import {recordPlaces} from './record-places.ts'
import type {Findings} from './study.ts'
import type {Way} from './ways.ts'

type Cell = string | number | null
const columns = (as: FigureColumn['as'], ...names: string[]): FigureColumn[] => names.map(name => ({name, as}))

/** Kinds whose value is a share or a coefficient; of the others it is a count, a year’s length or points. */
const SHARES = new Set<Cell>(['true-to-type', 'fixed', 'even-weight', 'inbreeding', 'identity', 'welfare'])
const ofKind: NonNullable<FigureColumn['asIn']> = row => (SHARES.has(row[0] ?? null) ? 'share' : 'measure')

const COLUMNS: readonly FigureColumn[] = [
  ...columns('text', 'kind', 'title', 'asked', 'state', 'found'), ...['value', 'low', 'high'].map((name): FigureColumn => ({name, as: 'measure', asIn: ofKind})), ...columns('count', 'count', 'total'),
  ...columns('text', 'on', 'by', 'waived_because', 'waived_by', 'waived_until'), ...columns('count', 'not_counted'), ...columns('text', 'way', 'earliest', 'birds', 'records'),
]

/**
 * One row a requirement, in the order of the record: the figure that is held against what is asked, what stands behind it, and the shortest way. `found` is what the records show though it was waived.
 *
 * @param wayOf  the way in words
 */
export function evidenceTable({evidence, book}: Findings, wayOf: (item: Evidence) => string): FiguresTable {
  return {
    columns: COLUMNS,
    rows: evidence.items.map((item): Cell[] => {
      const {requirement, state, found, shown, behind, aged, ways} = item, {value = null, low = null, high = null, count = null, total = null} = figureOf(shown)
      return [
        requirement.kind, requirement.title, requirement.asked, plainly(state), plainly(found), value, low, high, count, total, behind.on === null ? null : isoDay(behind.on), requirement.by?.text ?? null,
        requirement.waived?.because ?? null, requirement.waived?.by ?? null, requirement.waived?.until?.text ?? null,
        leftOut(aged), wayOf(item) || null, earliestOf(ways), behind.birds.map(({band}) => band).join(' ') || null, recordPlaces(behind.records, book.tellableFiles),
      ]
    }),
  }
}

const plainly = (state: Evidence['state']): string => state.replaceAll('-', ' ')

/** When at the earliest all of it can be there: `2027`, or a day; null where one of the steps cannot be told. */
function earliestOf(ways: readonly Way[]): string | null {
  const all = ways.map(({earliest}) => earliest)
  if (all.length === 0 || all.includes(null)) return null
  const last = all.reduce((later, each) => (each !== null && (later === null || dayOf(each) > dayOf(later)) ? each : later), null)
  return last === null ? null : last.kind === 'season' ? String(last.season) : isoDay(last.day)
}

const dayOf = (earliest: NonNullable<Way['earliest']>): number => (earliest.kind === 'season' ? lastDayOf(earliest.season) : earliest.day)

interface Figure {
  readonly value?: number | null
  readonly low?: number | null
  readonly high?: number | null
  readonly count?: number
  readonly total?: number
}

const ofShare = (share: Share | CannotSay): Figure => (share.kind === 'share' ? {value: share.value, low: share.interval.low, high: share.interval.high, count: share.count, total: share.total} : {})
const least = (values: readonly number[]): number | null => (values.length === 0 ? null : Math.min(...values))

/** The number that decides, with its interval where it has one. */
export function figureOf(shown: Shown): Figure {
  switch (shown.kind) {
    case 'years-bred': return {value: shown.have, count: shown.have, total: shown.seasons.length + shown.gaps.length}
    case 'inter-se-generations': return {value: shown.least, low: least(shown.birds.map(bird => bird.least)), high: least(shown.birds.map(bird => bird.most)), count: shown.birds.length - shown.short.length, total: shown.birds.length}
    case 'independent-keepers': return {value: shown.keepers.length, count: shown.keepers.length, total: shown.keepers.length + shown.short.length}
    case 'breeders-alive': return {value: shown.breeders.all, count: shown.breeders.male, total: shown.breeders.all}
    case 'shown-per-class': return {value: least(shown.classes.map(({birds}) => birds)), count: shown.classes.reduce((sum, {birds}) => sum + birds, 0)}
    case 'shows-and-judges': return {value: shown.shows, count: shown.judges.length, total: shown.shows}
    case 'show-result': return {value: shown.leastPoints, count: shown.entries - shown.below.length - shown.unwritten, total: shown.entries}
    case 'true-to-type': return {...ofShare(shown.part.share), ...limitsThatDecide(shown)}
    case 'even-weight': return ofParts(shown)
    case 'written-standard': return {value: shown.points, count: shown.wanted.length - shown.missing.length, total: shown.wanted.length}
    case 'distinct': return {value: least(shown.breeds.map(({differing}) => differing.length)), high: least(shown.breeds.map(({differing, unfilled}) => differing.length + unfilled.length))}
    case 'history': return {value: shown.steps, count: shown.hatched}
    case 'photographs': return {value: shown.photos, count: shown.wanted - shown.missing.length, total: shown.wanted}
    case 'papers': return {value: shown.keepers ? shown.keepers.signed.length : shown.valid.length, count: shown.valid.length, total: shown.papers.length}
    case 'identity': return lesser(ofShare(shown.banded), ofShare(shown.bothParents))
    case 'consecutive-shows': return {value: shown.longestRun, count: shown.years.length, total: shown.years.length + shown.cancelledYears.length}
    case 'birds-per-show': return {value: shown.enough, count: shown.enough, total: shown.shows.length}
    case 'fixed': return {value: least(shown.loci.map(({fixation}) => fixation.clean)), total: shown.birds}
    case 'inbreeding': return shown.of === null ? {} : {value: shown.of.mean, low: shown.of.low, high: shown.of.high, total: shown.of.birds}
    case 'welfare': return {count: Object.values(shown.met).filter(met => met === true).length, total: Object.values(shown.met).length}
    case 'stated': case 'nothing-recorded': return {}
  }
}

const lesser = (a: Figure, b: Figure): Figure => ((b.value ?? Infinity) < (a.value ?? Infinity) ? b : a)

/** Of the figures of either sex the one that decides: the first that is not met, else the last untold, else the first. */
function ofParts({parts}: Extract<Shown, {kind: 'even-weight'}>): Figure {
  const part = parts.find(({met}) => met === false) ?? parts.find(({met}) => met === null) ?? parts[0]
  return part ? {value: part.have, low: part.interval?.low ?? null, high: part.interval?.high ?? null, total: part.n} : {}
}

/** Of the interval that is held against the share; where the share itself decides, its own. */
function limitsThatDecide({decidedBy, part: {family, exact}}: Extract<Shown, {kind: 'true-to-type'}>): Figure {
  const limits = decidedBy === 'families' ? (family?.kind === 'families' ? family : null) : decidedBy === 'exact' ? exact : null
  return limits ? {low: limits.low, high: limits.high} : {}
}
