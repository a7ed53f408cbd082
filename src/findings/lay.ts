import type {Bird, Keeper, Logbook, Step} from '../logbook/book.ts'
import {isoDay, type Day} from '../records/dates.ts'
import {differenceOfEstimates, type DifferenceOfEstimates} from '../statistics/difference-of-estimates.ts'
import {ratioOfSums, type RatioOfSums} from '../statistics/ratio-of-sums.ts'
import {keeperOn} from './census.ts'
import type {CareTouching} from './care-touching.ts'
import {grouped} from './grouped.ts'
import {layParts, weeksOf} from './lay-parts.ts'
import {laySheets, type LaySheet} from './lay-sheets.ts'
import {rearedAlike, type Kept, type RearedAlike} from './reared-alike.ts'
import {inLadderOrder} from './step-order.ts'

/** Of what an interval speaks: hens like these, pens like these, or these hens on further days; pens and hens mixed have none. */
export type LaySpeaksOf = 'hens' | 'pens' | 'these-hens' | 'mixed'

/** Fewer weeks than these tell nothing of how weeks differ. */
const FEWEST_WEEKS = 4

/** How hens laid, of one sheet or of several. */
export interface Lay {
  readonly sheets: readonly LaySheet[]
  /** hens of the sheets, each once */
  readonly hens: number
  readonly eggs: number
  readonly henDays: number
  readonly days: number
  readonly missing: number
  readonly unclear: number
  /** eggs of a hen in a day */
  readonly henDay: RatioOfSums
  readonly speaksOf: LaySpeaksOf
  /** eggs of each hen that was there at the start of its sheet, over the days counted, and the same in a day */
  readonly henHoused: {readonly eggs: number; readonly rate: number; readonly hens: number} | null
  /** grams of an egg; null: none was weighed */
  readonly eggWeight: (RatioOfSums & {readonly eggs: number; readonly speaksOf: LaySpeaksOf}) | null
}

export interface LayGroup extends Lay {
  readonly by: 'step' | 'season'
  readonly name: string
  /** whole pens, hens with a sheet of their own, or both */
  readonly of: 'pens' | 'hens' | 'both'
  /** of both: its pens, and its hens; else empty */
  readonly kinds: readonly LayGroup[]
}

export interface LayComparison {
  readonly one: LayGroup
  readonly other: LayGroup
  /** the part of both that is compared; null: the whole of them */
  readonly kind: 'pens' | 'hens' | null
  /** eggs of a hen in a day, first less second; null where either shows no spread */
  readonly difference: DifferenceOfEstimates | null
  readonly speaksOf: LaySpeaksOf
  readonly verdict: 'more' | 'less' | 'cannot-tell'
  readonly alike: RearedAlike
}

export interface LayOfBook {
  /** pens first */
  readonly sheets: readonly Lay[]
  /** steps in the ladder's order, then seasons; pure strains among them under `strain` */
  readonly groups: readonly LayGroup[]
  /** each step, and each season, with the one before it */
  readonly comparisons: readonly LayComparison[]
  /** sheets of pens with hens of several steps: in no step */
  readonly mixed: number
  /** sheets of hens whose pen was counted on the same days: in no group, or their eggs would count twice */
  readonly twice: number
}

/**
 * How well do the hens lay, and is one step or season better than another?
 *
 *     hen-day = eggs / Σ hens alive each day        hen-housed = eggs / hens at the start
 *
 * over the days that were counted; a day without a row is not counted, and is no day without eggs. All sheets of the same hens are one part (`layParts`), and of several parts the limits are those between hens (or pens) that
 * `ratioOfSums` gives; where pens and single hens stand together, each kind has its own and the sum has none. Of a single pen or hen only the weeks can be set beside one another, from four on: its limits speak of these hens and of weeks like these. No limit passes an egg a day. Hen-housed charges hens that died with the days they did not live.
 *
 * @see `ratioOfSums`, `daysCounted`. Both rates are common practice: ILRI, Domestic Animal Genetic Resources Information System, “Hen day production” and “Hen housed production”.
 */
export function layOfBook(book: Logbook, touching: CareTouching): LayOfBook {
  const sheets = laySheets(book), ofPens = sheets.filter(({pen}) => pen), twice = new Set(sheets.filter(sheet => ofPens.some(other => countsTwice(sheet, other))))
  const once = sheets.filter(sheet => !twice.has(sheet))
  const byStep = [...grouped(once, sheet => stepOfSheet(sheet)?.label)].map(([name, own]) => ({name, own, rung: {label: name, step: own[0] ? stepOfSheet(own[0]) : null, first: null}})).sort((a, b) => inLadderOrder(a.rung, b.rung))
  const bySeason = [...grouped(once, ({season}) => season)].sort(([a], [b]) => a - b)
  const steps = byStep.flatMap(({name, own}) => groupOf('step', name, own)), seasons = bySeason.flatMap(([season, own]) => groupOf('season', String(season), own))
  const inTurn = (groups: readonly LayGroup[]) => groups.slice(1).flatMap((one, place) => (groups[place] ? comparisons(one, groups[place], touching) : []))
  return {
    sheets: sheets.flatMap(sheet => layOf([sheet]) ?? []), groups: [...steps, ...seasons], comparisons: [...inTurn(steps.filter(({name}) => name !== 'strain')), ...inTurn(seasons)],
    mixed: once.filter(sheet => stepOfSheet(sheet) === null).length, twice: twice.size,
  }
}

/** Of a hen with a sheet of her own who stood in a pen that has one over the same days. */
const countsTwice = ({bird, from, to}: LaySheet, other: LaySheet): boolean => bird !== null && other.pen !== null && other.hens.includes(bird) && other.from <= to && other.to >= from

/** The step of all hens of a sheet; null where they are of several, or not known. */
function stepOfSheet({hens}: LaySheet): Step | null {
  const [first] = hens
  return first && hens.every(({step}) => step.label === first.step.label) ? first.step : null
}

function groupOf(by: LayGroup['by'], name: string, sheets: readonly LaySheet[]): LayGroup[] {
  const lay = layOf(sheets), kinds = kindsOf(sheets), [only] = kinds
  if (!lay) return []
  const parts = kinds.length === 1 ? [] : kinds.flatMap(([of, own]): LayGroup[] => {
    const found = layOf(own)
    return found ? [{by, name, of, kinds: [], ...found}] : []
  })
  return [{by, name, of: kinds.length === 1 && only ? only[0] : 'both', kinds: parts, ...lay}]
}

function layOf(sheets: readonly LaySheet[]): Lay | null {
  const parts = layParts(sheets), alone = parts.length === 1, mixed = kindsOf(sheets).length > 1
  const sum = (of: (sheet: LaySheet) => number, own = sheets) => own.reduce((total, sheet) => total + of(sheet), 0)
  const counted = alone ? sheets.flatMap(weeksOf) : parts.map(own => ({eggs: sum(sheet => sheet.eggs, own), henDays: sum(({henDays}) => henDays, own)})), found = ratioOfSums(counted.map(({eggs, henDays}) => ({of: eggs, per: henDays})))
  if (found === null) return null
  // pens and single hens spread by measures of their own, and have no limits together
  const told = found.interval && !mixed && !(alone && counted.length < FEWEST_WEEKS) ? found.interval : null
  const henDay = {...found, interval: told && {...told, high: Math.min(told.high, Math.max(1, found.ratio))}}
  const speaksOf: LaySpeaksOf = mixed ? 'mixed' : alone ? 'these-hens' : sheets.every(({bird}) => bird) ? 'hens' : 'pens'
  const hens = sum(({hensAtStart}) => hensAtStart), eggs = sum(sheet => sheet.eggs), housedDays = sum(({hensAtStart, days}) => hensAtStart * days)
  const weighed = parts.map(own => own.flatMap(({rows}) => rows.flatMap(({weight}) => (weight && weight.eggs > 0 ? [{of: weight.grams, per: weight.eggs}] : [])))).filter(({length}) => length > 0)
  const weight = ratioOfSums(weighed.length === 1 ? weighed.flat() : weighed.map(own => ({of: own.reduce((total, {of}) => total + of, 0), per: own.reduce((total, {per}) => total + per, 0)})))
  return {
    sheets, hens: new Set(sheets.flatMap(sheet => sheet.hens)).size, eggs, henDays: sum(({henDays}) => henDays), days: sum(({days}) => days), missing: sum(({missing}) => missing), unclear: sum(({unclear}) => unclear), henDay, speaksOf,
    henHoused: hens === 0 ? null : {eggs: eggs / hens, rate: eggs / housedDays, hens},
    eggWeight: weight && {...weight, interval: mixed && weighed.length > 1 ? null : weight.interval, eggs: weighed.flat().reduce((total, {per}) => total + per, 0), speaksOf: weighed.length === 1 ? 'these-hens' : speaksOf},
  }
}

/** The sheets of pens and those of single hens, apart; one entry where there is only one kind. */
const kindsOf = (sheets: readonly LaySheet[]): readonly (readonly [LayGroup['of'], readonly LaySheet[]])[] =>
  ([['pens', sheets.filter(({pen}) => pen)], ['hens', sheets.filter(({pen}) => !pen)]] as const).filter(([, own]) => own.length > 0)

/** Pens beside pens and hens beside hens where either has both; else the groups as they are. */
function comparisons(one: LayGroup, other: LayGroup, touching: CareTouching): readonly LayComparison[] {
  if (one.kinds.length + other.kinds.length === 0) return [compared(one, other, null, touching)]
  const kinds = (group: LayGroup) => (group.kinds.length > 0 ? group.kinds : [group])
  const pairs = kinds(one).flatMap(first => kinds(other).flatMap(second => (first.of === second.of && first.of !== 'both' ? [compared(first, second, first.of, touching)] : [])))
  return pairs.length > 0 ? pairs : [compared(one, other, null, touching)]
}

function compared(one: LayGroup, other: LayGroup, kind: LayComparison['kind'], touching: CareTouching): LayComparison {
  const [first, second] = [one, other].map(({henDay}) => (henDay.interval ? {value: henDay.ratio, ...henDay.interval} : null))
  const difference = first && second ? differenceOfEstimates(first, second) : null
  const keptOf = ({sheets}: LayGroup) => sheets.map(sheet => keptOfSheet(sheet, touching))
  const speaksOf = [one, other].find(group => group.speaksOf === 'mixed')?.speaksOf ?? [one, other].find(group => group.speaksOf === 'these-hens')?.speaksOf ?? [one, other].find(group => group.speaksOf === 'pens')?.speaksOf ?? 'hens'
  return {one, other, kind, difference, speaksOf, verdict: difference === null ? 'cannot-tell' : difference.low > 0 ? 'more' : difference.high < 0 ? 'less' : 'cannot-tell', alike: rearedAlike(keptOf(one), keptOf(other))}
}

/** Days of age up to which a hen is in her first season of lay, a pullet. Common practice, no source. */
const PULLET = 550

/** The months of a span: `03`, `04` */
function monthsOf(from: Day, to: Day): readonly string[] {
  const months = new Set<string>()
  for (let day = from; day <= to; day++) months.add(isoDay(day).slice(5, 7))
  return [...months]
}

function keptOfSheet({pen, hens, season, from, to}: LaySheet, touching: CareTouching): Kept {
  const keeper = (hen: Bird): Keeper | null => keeperOn(hen, from), ages = hens.flatMap(({hatched}) => (hatched ? [from - hatched.first < PULLET ? 'pullets' : 'hens'] : []))
  return {season, months: monthsOf(from, to), ages, way: null, machine: null, keeper: pen?.keeper ?? (hens[0] ? keeper(hens[0]) : null), care: touching.onPen(pen, hens, {from, to})}
}
