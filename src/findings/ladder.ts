import type {Bird, Chicks, Hatch, Logbook, Pen, Step, Strain, Tally} from '../logbook/book.ts'
import type {PartialDate} from '../records/dates.ts'
import {birdsPenned, chickCounts, type ChickCounts} from './chick-counts.ts'
import {ladderChicks, seasonOf, seasonOfHatch, type Chick} from './ladder-chicks.ts'
import {inLadderOrder} from './step-order.ts'

/** A step that has been reached: everything hatched in it. */
export interface ReachedStep {
  readonly kind: 'reached'
  readonly label: string
  /** the project plans a ladder, and this step is not on it: a test mating, a line of its own */
  readonly beside: boolean
  readonly step: Step
  /** seasons with a chick, ascending */
  readonly seasons: readonly number[]
  readonly firstHatch: PartialDate | null
  readonly lastHatch: PartialDate | null
  /** in the order of the records */
  readonly pens: readonly Pen[]
  /** hatches with a chick of this step, oldest first */
  readonly hatches: readonly Hatch[]
  /** every bird that is or may be a parent of a chick of this step, in the book's order */
  readonly sires: readonly Bird[]
  readonly dams: readonly Bird[]
  readonly chicks: ChickCounts
  readonly recurrentShare: ShareRange | null
  /** banded birds, in the book's order */
  readonly birds: readonly Bird[]
  readonly tallies: readonly Tally[]
}

/** Expected share of the recurrent strain: mean over all chicks hatched, and the chicks it is least and greatest in. */
export interface ShareRange {
  readonly mean: number
  readonly least: number
  readonly greatest: number
  readonly chicks: number
}

/** A step the project plans and has not hatched. */
export interface PlannedStep {
  readonly kind: 'planned'
  readonly label: string
  readonly beside: false
}

export type LadderStep = ReachedStep | PlannedStep

interface Gathering {
  readonly step: Step
  readonly birds: Bird[]
  readonly tallies: Tally[]
  readonly hatches: Set<Hatch>
  readonly pens: Set<Pen>
  readonly seasons: Set<number>
  readonly sires: Set<Bird>
  readonly dams: Set<Bird>
  readonly dates: PartialDate[]
  unlisted: number
  weight: number
  sum: number
  least: number
  greatest: number
}

const begin = (step: Step): Gathering => ({
  step, birds: [], tallies: [], hatches: new Set(), pens: new Set(), seasons: new Set(), sires: new Set(), dams: new Set(), dates: [],
  unlisted: 0, weight: 0, sum: 0, least: Infinity, greatest: -Infinity,
})

function gatherParents(into: Gathering, {parentage}: Pick<Chicks, 'parentage'>): void {
  for (const {bird} of parentage.sires) into.sires.add(bird)
  for (const {bird} of parentage.dams) into.dams.add(bird)
}

function gatherHatch(into: Gathering, hatch: Hatch): void {
  into.hatches.add(hatch)
  for (const {pen} of hatch.pens) into.pens.add(pen)
}

function gatherShare(into: Gathering, shares: ReadonlyMap<Strain, number>, count: number, recurrent: Strain | null): void {
  if (recurrent === null || count === 0) return
  const share = shares.get(recurrent) ?? 0
  into.weight += count
  into.sum += count * share
  into.least = Math.min(into.least, share)
  into.greatest = Math.max(into.greatest, share)
}

function gatherChick(into: Gathering, chick: Chick, book: Logbook): void {
  if (chick.kind === 'bird') into.birds.push(chick)
  else into.tallies.push(chick)
  gatherParents(into, chick)
  if (chick.hatch) gatherHatch(into, chick.hatch)
  const season = seasonOf(chick)
  if (season !== null) into.seasons.add(season)
  if (chick.hatched) into.dates.push(chick.hatched)
  gatherShare(into, chick.shares, chick.count, book.project.recurrent)
}

const earliest = (dates: readonly PartialDate[]): PartialDate | null =>
  dates.reduce<PartialDate | null>((best, date) => (best === null || date.first < best.first ? date : best), null)

const latest = (dates: readonly PartialDate[]): PartialDate | null =>
  dates.reduce<PartialDate | null>((best, date) => (best === null || date.last > best.last ? date : best), null)

function finish(from: Gathering, order: ReadonlyMap<Bird, number>, beside: boolean, chicks: ChickCounts): ReachedStep {
  const placed = (birds: ReadonlySet<Bird>): Bird[] => [...birds].sort((a, b) => (order.get(a) ?? 0) - (order.get(b) ?? 0))
  return {
    kind: 'reached', label: from.step.label, beside, step: from.step, seasons: [...from.seasons].sort((a, b) => a - b),
    firstHatch: earliest(from.dates), lastHatch: latest(from.dates), pens: [...from.pens],
    hatches: [...from.hatches].sort((a, b) => (a.on?.first ?? Infinity) - (b.on?.first ?? Infinity) || (a.id < b.id ? -1 : 1)),
    sires: placed(from.sires), dams: placed(from.dams),
    chicks,
    recurrentShare: from.weight === 0 ? null : {mean: from.sum / from.weight, least: from.least, greatest: from.greatest, chicks: from.weight},
    birds: from.birds, tallies: from.tallies,
  }
}

/**
 * How far has the breed climbed? One entry a step in the order of the ladder, the steps planned and not reached among them; steps
 * that the project's ladder does not name stand after it, beside the ladder.
 *
 * A chick stands at its own step; chicks of a hatch that nobody listed stand at the step the hatch's parents give. Pure-strain
 * birds are not on the ladder. Every possible parent of an uncertain chick counts among those that may have bred the step.
 * A step nothing has hatched in is planned, whatever eggs are set. Order: see `inLadderOrder`.
 */
export function ladderOf(book: Logbook): readonly LadderStep[] {
  const steps = new Map<string, Gathering>()
  const at = (step: Step): Gathering => {
    const known = steps.get(step.label)
    if (known) return known
    const fresh = begin(step)
    steps.set(step.label, fresh)
    return fresh
  }
  const penned = birdsPenned(book)
  for (const chick of ladderChicks(book)) gatherChick(at(chick.step), chick, book)
  for (const hatch of book.hatches) {
    if (hatch.unlisted <= 0 || hatch.step.kind === 'strain') continue
    const into = at(hatch.step)
    into.unlisted += hatch.unlisted
    gatherHatch(into, hatch)
    gatherParents(into, hatch)
    const season = seasonOfHatch(hatch)
    if (season !== null) into.seasons.add(season)
    if (hatch.on) into.dates.push(hatch.on)
    gatherShare(into, hatch.shares, hatch.unlisted, book.project.recurrent)
  }
  const order = new Map(book.birds.map((bird, index) => [bird, index] as const))
  const {ladder} = book.project
  const planned = ladder.filter(label => !steps.has(label)).map(label => ({kind: 'planned', label, beside: false}) as const)
  return [...[...steps.values()].map(from => finish(from, order, ladder.length > 0 && !ladder.includes(from.step.label), chickCounts(from.birds, from.tallies, from.unlisted, book.traits, penned))), ...planned]
    .map(entry => ({entry, rung: {label: entry.label, step: entry.kind === 'reached' ? entry.step : null, first: entry.kind === 'reached' ? entry.firstHatch?.first ?? null : null}}))
    .sort((a, b) => Number(a.entry.beside) - Number(b.entry.beside) || inLadderOrder(a.rung, b.rung)).map(({entry}) => entry)
}

/** The steps reached, those of the ladder and those beside it; mixed birds are no step. */
export function reachedSteps(ladder: readonly LadderStep[]): {readonly on: readonly ReachedStep[]; readonly beside: readonly ReachedStep[]} {
  const reached = ladder.filter(step => step.kind === 'reached').filter(step => step.label !== 'mixed')
  return {on: reached.filter(step => !step.beside), beside: reached.filter(step => step.beside)}
}

/** Where does the breed stand? The last step of the ladder that has been reached; only where none has, the last of those beside it. Mixed birds are no step. */
export function currentStep(ladder: readonly LadderStep[]): ReachedStep | null {
  const {on, beside} = reachedSteps(ladder)
  return on.at(-1) ?? beside.at(-1) ?? null
}
