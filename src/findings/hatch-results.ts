import type {Hatch, Logbook, Pen} from '../logbook/book.ts'
import type {CannotSay, Share} from './estimate.ts'
import {grouped} from './grouped.ts'
import {seasonOfHatch} from './ladder-chicks.ts'
import {inLadderOrder} from './step-order.ts'
import {LeftAside} from './left-out.ts'
import {isJudged} from './set-aside.ts'
import {shareOf} from './share-of.ts'

/** What became of the eggs of one hatch or of many. */
export interface HatchRates {
  /** settings, also those with nothing counted */
  readonly settings: number
  /** those the keeper has set aside: in none of these */
  readonly setAside: readonly Hatch[]
  /** sums over the settings that state the number; null when none does */
  readonly eggs: number | null
  readonly clear: number | null
  readonly fertile: number | null
  readonly deadInGerm: number | null
  readonly deadInShell: number | null
  readonly bad: number | null
  readonly hatched: number | null
  /** fertile of eggs, over the settings that were candled */
  readonly fertility: Share | CannotSay
  /** hatched of fertile, over the settings that were candled and have hatched */
  readonly hatchOfFertile: Share | CannotSay
  /** hatched of eggs, over the settings that have hatched */
  readonly hatchOfSet: Share | CannotSay
  /** died as germs, and fully grown in the shell: of fertile, over the settings that were candled and counted them */
  readonly germDeath: Share | CannotSay
  readonly shellDeath: Share | CannotSay
}

export interface HatchResult extends HatchRates {
  readonly hatch: Hatch
  readonly how: 'broody' | 'incubator' | 'not-stated'
  readonly season: number | null
}

export interface HatchResults {
  /** every hatch, pure strains among them, in the book's order */
  readonly hatches: readonly HatchResult[]
  /** hatches of several pens stand under none */
  readonly pens: readonly (HatchRates & {readonly pen: Pen})[]
  /** by what the hatch's parents give, in the ladder's order; pure strains under `strain` first */
  readonly steps: readonly (HatchRates & {readonly step: string})[]
  readonly seasons: readonly (HatchRates & {readonly season: number})[]
  /** hatches of the ladder only, pure strains left aside */
  readonly broody: HatchRates
  readonly incubator: HatchRates
  readonly all: HatchRates
}

/** Eggs set less the clear ones; `bad` eggs are taken off nothing. Null when not counted, or when the counts contradict each other. */
export function fertileOf(hatch: Hatch): number | null {
  if (hatch.eggs === null || hatch.clear === null || hatch.clear > hatch.eggs) return null
  return hatch.eggs - hatch.clear
}

const sum = (hatches: readonly Hatch[], of: (hatch: Hatch) => number | null): number | null =>
  hatches.reduce<number | null>((total, hatch) => {
    const count = of(hatch)
    return count === null ? total : (total ?? 0) + count
  }, null)

/** Nothing says yet that anything came of it. */
export const isUnfinished = (hatch: Hatch): boolean => hatch.hatched === null && hatch.on === null && hatch.chicks.length === 0 && hatch.tallies.length === 0

const hatchedOf = (hatch: Hatch): number | null => hatch.hatched

/** Would these counts be known if the setting had been candled? */
const wantsCandling = (hatch: Hatch, counts: readonly ((hatch: Hatch) => number | null)[]): boolean =>
  hatch.eggs !== null && hatch.clear === null && counts.includes(fertileOf) && counts.every(count => count === fertileOf || count(hatch) !== null)

/** `part` of `whole` over the hatches that state both; the others are left out, unfinished ones as such. */
function rate(hatches: readonly Hatch[], part: (hatch: Hatch) => number | null, whole: (hatch: Hatch) => number | null, needsHatch: boolean, setAside: number): Share | CannotSay {
  let count = 0, total = 0, unfinished = 0
  const aside = new LeftAside()
  aside.add('set-aside', setAside)
  for (const hatch of hatches) {
    const [some, all] = [part(hatch), whole(hatch)]
    if (some !== null && all !== null && some <= all) {
      count += some
      total += all
    } else if (needsHatch && isUnfinished(hatch)) {
      unfinished += 1
      aside.add('not-finished', 1)
    } else aside.add(wantsCandling(hatch, [part, whole]) ? 'not-candled' : 'not-counted', 1)
  }
  return shareOf(count, total, aside.list(), hatches.length > 0 && unfinished === hatches.length ? 'not-finished' : 'not-counted')
}

/** What became of these settings together: a rate sums over the settings that state both its counts, and leaves out what was set aside. */
export const ratesOf = (hatches: readonly Hatch[]): HatchRates => summed(hatches.filter(isJudged), hatches.filter(hatch => !isJudged(hatch)))

function summed(hatches: readonly Hatch[], setAside: readonly Hatch[]): HatchRates {
  const eggs = (hatch: Hatch): number | null => hatch.eggs, aside = setAside.length
  return {
    settings: hatches.length, setAside, eggs: sum(hatches, eggs), clear: sum(hatches, hatch => hatch.clear), fertile: sum(hatches, fertileOf),
    deadInGerm: sum(hatches, hatch => hatch.deadInGerm), deadInShell: sum(hatches, hatch => hatch.deadInShell), bad: sum(hatches, hatch => hatch.bad),
    hatched: sum(hatches, hatchedOf), fertility: rate(hatches, fertileOf, eggs, false, aside), hatchOfFertile: rate(hatches, hatchedOf, fertileOf, true, aside),
    hatchOfSet: rate(hatches, hatchedOf, eggs, true, aside), germDeath: rate(hatches, hatch => hatch.deadInGerm, fertileOf, true, aside), shellDeath: rate(hatches, hatch => hatch.deadInShell, fertileOf, true, aside),
  }
}

const howHatched = (hatch: Hatch): HatchResult['how'] => (hatch.broody ? 'broody' : hatch.machine === null ? 'not-stated' : 'incubator')

/**
 * How many of the eggs were fertile, and how many of them hatched?
 *
 *     fertility = fertile / eggs    hatch of fertile = hatched / fertile    hatch of set = hatched / eggs    fertile = eggs − clear
 *     dead in germ, dead in shell = so many / fertile
 *
 * each with its Wilson 95 % interval, by hatch, pen, step and season, broody hens and machines apart. Where clear eggs were not
 * counted, fertility cannot be told and neither can hatch of fertile; a setting not hatched yet has no hatch. Sums leave out
 * what was not counted, and settings that the keeper has set aside, and say so; by itself a hatch set aside has its rates. Eggs of one hen are not independent (one infertile hen clears them all), so the interval of
 * a hatch is narrower than the truth: `hatchResultsOfGroups` has those that allow for it.
 *
 * @see Wilson 1927, J. Am. Stat. Assoc. 22:209–212. The three rates are common practice, no single source.
 */
export function hatchResults(book: Logbook): HatchResults {
  const onLadder = book.hatches.filter(hatch => hatch.step.kind !== 'strain')
  const byStep = grouped(book.hatches, hatch => hatch.step.label)
  const rungs = [...byStep].map(([label, hatches]) => {
    const step = hatches[0]?.step ?? null
    return {label, hatches, step, first: hatches.reduce<number | null>((first, {on}) => (on && (first === null || on.first < first) ? on.first : first), null)}
  })
  return {
    hatches: book.hatches.map(hatch => ({hatch, how: howHatched(hatch), season: seasonOfHatch(hatch), ...summed([hatch], [])})),
    pens: [...grouped(book.hatches, hatch => (hatch.pens.length === 1 ? hatch.pens[0]?.pen : undefined))].map(([pen, hatches]) => ({pen, ...ratesOf(hatches)})),
    steps: rungs.sort(inLadderOrder).map(({label, hatches}) => ({step: label, ...ratesOf(hatches)})),
    seasons: [...grouped(book.hatches, hatch => seasonOfHatch(hatch) ?? undefined)].sort(([a], [b]) => a - b).map(([season, hatches]) => ({season, ...ratesOf(hatches)})),
    broody: ratesOf(onLadder.filter(hatch => howHatched(hatch) === 'broody')),
    incubator: ratesOf(onLadder.filter(hatch => howHatched(hatch) === 'incubator')),
    all: ratesOf(onLadder),
  }
}
