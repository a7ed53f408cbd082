import type {Bird, CareEntry, Draft, Hatch, Logbook, Pen, Show, Step, Tally} from '../logbook/book.ts'
import {yearOf, type PartialDate} from '../records/dates.ts'
import {familyShare, type FamilyShare} from '../statistics/family-bootstrap.ts'
import {birdsPenned, chickCounts, type ChickCounts} from './chick-counts.ts'
import type {CannotSay, Share} from './estimate.ts'
import {ratesOf, type HatchRates} from './hatch-results.ts'
import {judgedByFamily, type JudgedFamilies} from './judged-chicks.ts'
import {ladderChicks, seasonOf, seasonOfHatch, type Chick} from './ladder-chicks.ts'
import {currentStep, type LadderStep, type ReachedStep} from './ladder.ts'
import {shareOf} from './share-of.ts'
import {FAMILY_SEED} from './sire-families.ts'
import {spreadIn, type SpreadOfMeasures, type SpreadRow} from './spread.ts'
import {changeBetween, type Compared, type StepChange} from './step-change.ts'
import type {TrueBred, TrueBredRate} from './true-bred.ts'

/** One row of the way here: how true the chicks of one step or season were. */
export interface OnTheWay {
  readonly name: string
  /** mated inside the line: what breeding true is about */
  readonly inside: boolean
  readonly share: Share | CannotSay
  /** null: no chick was judged */
  readonly family: FamilyShare | null
}

/** What is told of one season or one step to somebody who has nothing but this page. */
export interface FlockSummary {
  readonly of: 'season' | 'step'
  /** `2025`, `BC3F3` */
  readonly name: string
  /** the steps hatched in the season, or the one step, in the ladder's order */
  readonly steps: readonly ReachedStep[]
  /** ascending */
  readonly seasons: readonly number[]
  /** it is the one the breed stands at: what is to be done next is told here */
  readonly latest: boolean
  /** all chicks of the ladder */
  readonly birds: readonly Bird[]
  readonly tallies: readonly Tally[]
  readonly hatches: readonly Hatch[]
  readonly pens: readonly Pen[]
  readonly chicks: ChickCounts
  readonly rates: HatchRates
  /** what trueness and evenness are told of: of a season with chicks mated inside the line those alone, else all */
  readonly inside: boolean
  /** steps of the chicks that are told of, in the ladder's order */
  readonly asked: readonly string[]
  /** the other chicks of the season, by step: crosses beside chicks mated inside the line */
  readonly aside: readonly {readonly step: string; readonly kind: Step['kind']; readonly chicks: number}[]
  /** how true those are; null where none has hatched */
  readonly rate: TrueBredRate | null
  /** measures of those */
  readonly spread: readonly SpreadRow[]
  /** against the one before; null where there is none */
  readonly change: StepChange | null
  readonly before: FlockBefore | null
  /** those before it and it, in order, where a chick was judged */
  readonly way: readonly OnTheWay[]
  readonly shows: readonly Show[]
  /** drafts of the standard dated in its seasons */
  readonly drafts: readonly Draft[]
  readonly care: readonly CareEntry[]
}

/** What it is held against. */
export interface FlockBefore {
  readonly name: string
  readonly chicks: ChickCounts
  readonly rates: HatchRates
  readonly spread: readonly SpreadRow[]
}

export interface FlockSummaries {
  /** ascending: every season with a pen begun, a setting or a chick */
  readonly seasons: readonly FlockSummary[]
  /** the steps reached, in the ladder's order */
  readonly steps: readonly FlockSummary[]
}

interface Sources {
  readonly book: Logbook
  readonly ladder: readonly LadderStep[]
  readonly trueBred: TrueBred
  readonly spread: SpreadOfMeasures
  readonly changes: readonly StepChange[]
}

type Parts = Pick<FlockSummary, 'birds' | 'tallies' | 'hatches' | 'pens' | 'chicks' | 'rates'>

/**
 * What is there to send to another breeder about a season, or a step?
 *
 * A season is that of the pens; its chicks are all of the ladder that hatched in it. Trueness and evenness of a season with chicks mated inside the line are told of those alone, and
 * held against the season before that had such; of another season all its chicks are told, and held against the season before by plan. A step is held against the step of `changes`.
 *
 * @see `changeBetween`, `ratesOf`, `familyShare`
 */
export function flockSummaries(sources: Sources): FlockSummaries {
  return {seasons: ofSeasons(sources), steps: ofSteps(sources)}
}

function ofSteps({book, ladder, trueBred, spread, changes}: Sources): readonly FlockSummary[] {
  const reached = ladder.filter(step => step.kind === 'reached'), judged = judgedByFamily(trueBred), current = currentStep(ladder)
  const parts = new Map(reached.map(step => [step.label, {
    birds: step.birds, tallies: step.tallies, hatches: step.hatches, pens: step.pens, chicks: step.chicks, rates: ratesOf(book.hatches.filter(hatch => hatch.step.label === step.label)),
  } satisfies Parts] as const))
  return reached.flatMap(step => {
    const own = parts.get(step.label), change = changes.find(({to}) => to === step.label) ?? null, old = change && parts.get(change.from)
    if (!own) return []
    // those beside the ladder stand at its end: what hatched before them is before them
    const isEarlier = (other: ReachedStep): boolean => (step.beside || step.label === 'mixed' ? (other.firstHatch?.first ?? Infinity) < (step.firstHatch?.first ?? -Infinity) : reached.indexOf(other) < reached.indexOf(step))
    const until = reached.filter(other => other === step || (isEarlier(other) && !other.beside && other.label !== 'mixed'))
    const rowsOf = (label: string) => spread.rows.filter(row => row.step === label)
    return [{
      of: 'step', name: step.label, steps: [step], seasons: step.seasons, latest: step === current, ...own, inside: step.step.interSe >= 1, asked: [step.label], aside: [],
      rate: trueBred.steps.find(each => each.step === step.label) ?? null, spread: rowsOf(step.label), change,
      before: change && old ? {name: change.from, chicks: old.chicks, rates: old.rates, spread: rowsOf(change.from)} : null,
      way: until.flatMap(each => onTheWay(each.label, each.step.interSe >= 1, judged)),
      shows: book.shows.filter(show => show.entries.some(({bird}) => bird.step.label === step.label)), drafts: book.drafts.filter(draft => dated(draft.on, step.seasons)), care: careOf(book, own),
    } satisfies FlockSummary]
  })
}

function ofSeasons({book, ladder, trueBred}: Sources): readonly FlockSummary[] {
  const chicks = ladderChicks(book), reached = ladder.filter(step => step.kind === 'reached'), penned = birdsPenned(book)
  const hatchesIn = (season: number) => book.hatches.filter(hatch => hatch.step.kind !== 'strain' && seasonOfHatch(hatch) === season)
  const years = [...new Set([
    ...book.pens.filter(({from}) => from === null || from.first <= book.asOf).map(({season}) => season), ...book.hatches.flatMap(hatch => seasonOfHatch(hatch) ?? []), ...chicks.flatMap(chick => seasonOf(chick) ?? []),
  ])].sort((a, b) => a - b)
  const inLine = new Set(chicks.flatMap(chick => (chick.step.interSe >= 1 ? seasonOf(chick) ?? [] : [])))
  /** the row of a chick, or of a hatch weighed without bands: those mated inside the line where the season has any */
  const rowOf = (of: Chick | Hatch): string | undefined => {
    const season = 'kind' in of ? seasonOf(of) : seasonOfHatch(of)
    return season === null || (inLine.has(season) && of.step.interSe < 1) ? undefined : String(season)
  }
  const judged = judgedByFamily(trueBred, rowOf), {rows} = spreadIn(book, years.map(String), rowOf)
  const parts = new Map(years.map(season => {
    const own = chicks.filter(chick => seasonOf(chick) === season), hatches = hatchesIn(season), birds = own.filter(chick => chick.kind === 'bird'), tallies = own.filter(chick => chick.kind === 'tally')
    const unlisted = hatches.reduce((sum, hatch) => sum + Math.max(0, hatch.unlisted), 0)
    return [season, {birds, tallies, hatches, pens: book.pens.filter(pen => pen.season === season), chicks: chickCounts(birds, tallies, unlisted, book.traits, penned), rates: ratesOf(hatches)} satisfies Parts] as const
  }))
  const compared = (season: number, {birds, tallies}: Parts): Compared => {
    const of = <One extends Chick>(all: readonly One[]): readonly One[] => all.filter(chick => rowOf(chick) === String(season)), own = of(birds), unbanded = of(tallies)
    const sires = new Set([...own, ...unbanded].flatMap(({parentage}) => parentage.sires.map(({bird}) => bird)))
    return {label: String(season), birds: own, tallies: unbanded, sires: [...sires], step: {interSe: inLine.has(season) ? 1 : 0}}
  }
  return years.flatMap((season, place) => {
    const own = parts.get(season), earlier = years.slice(0, place).filter(year => (parts.get(year)?.chicks.hatched ?? 0) > 0)
    if (!own) return []
    const last = earlier.findLast(year => inLine.has(season) && inLine.has(year)) ?? earlier.at(-1), old = last === undefined ? undefined : parts.get(last)
    const stepsOf = (told: boolean) => new Map([...own.birds, ...own.tallies].filter(chick => (rowOf(chick) !== undefined) === told).map(({step}) => [step.label, step]))
    const asked = stepsOf(true), aside = [...stepsOf(false).values()].map(({label, kind}) => ({step: label, kind, chicks: [...own.birds, ...own.tallies].reduce((sum, {step, count}) => sum + (step.label === label ? count : 0), 0)}))
    const rowsOf = (year: number) => rows.filter(row => row.step === String(year))
    return [{
      of: 'season', name: String(season), steps: reached.filter(step => step.seasons.includes(season)), seasons: [season], latest: place === years.length - 1, ...own, inside: inLine.has(season), asked: reached.flatMap(({label}) => (asked.has(label) ? [label] : [])), aside,
      rate: (inLine.has(season) ? trueBred.interSeSeasons : trueBred.seasons).find(each => each.season === season) ?? null, spread: rowsOf(season),
      change: last === undefined || !old || own.chicks.hatched === 0 ? null : changeBetween(compared(last, old), compared(season, own), judged, {rows, unsexed: []}, book.traits),
      before: last === undefined || !old ? null : {name: String(last), chicks: old.chicks, rates: old.rates, spread: rowsOf(last)},
      way: years.slice(0, place + 1).flatMap(year => onTheWay(String(year), inLine.has(year), judged)),
      shows: book.shows.filter(show => dated(show.on, [season])), drafts: book.drafts.filter(draft => dated(draft.on, [season])), care: careOf(book, own, season),
    } satisfies FlockSummary]
  })
}

function onTheWay(name: string, inside: boolean, judged: readonly JudgedFamilies[]): readonly OnTheWay[] {
  const families = judged.find(({by}) => by === 'true-bred')?.steps.get(name) ?? [], k = families.reduce((sum, each) => sum + each.k, 0), n = families.reduce((sum, each) => sum + each.n, 0)
  return n === 0 ? [] : [{name, inside, share: shareOf(k, n), family: familyShare(families, {seed: FAMILY_SEED})}]
}

/** Is the year of the date sure, and one of these? */
const dated = ({first, last}: PartialDate, seasons: readonly number[]): boolean => yearOf(first) === yearOf(last) && seasons.includes(yearOf(first))

/** What touched its pens, hatches and birds; and what is dated in the season. */
function careOf(book: Logbook, {pens, hatches, birds}: Parts, season: number | null = null): readonly CareEntry[] {
  const [inPens, inHatches, inBirds] = [new Set(pens), new Set(hatches), new Set(birds)]
  return book.care.filter(entry => (season !== null && dated(entry.on, [season])) || entry.pens.some(pen => inPens.has(pen)) || entry.hatches.some(hatch => inHatches.has(hatch)) || (season === null && entry.birds.some(bird => inBirds.has(bird))))
}
