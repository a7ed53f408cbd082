import type {Hatch} from '../logbook/book.ts'
import {FEWEST_FAMILIES, familyShare, type FamilyShare} from '../statistics/family-bootstrap.ts'
import {familyDifference, type FamilyDifference} from '../statistics/family-difference.ts'
import {shareDifference, type Count, type ShareDifference} from '../statistics/share-difference.ts'
import type {CareTouching} from './care-touching.ts'
import type {CannotSay, Share} from './estimate.ts'
import {grouped} from './grouped.ts'
import type {HatchGroup, HatchGroups, HatchPair} from './hatch-groups.ts'
import {fertileOf, ratesOf, type HatchRates} from './hatch-results.ts'
import {sumOf} from './judged-chicks.ts'
import {keptOfHatch, rearedAlike, type RearedAlike} from './reared-alike.ts'
import {isJudged} from './set-aside.ts'
import {FAMILY_SEED, sireFamilies} from './sire-families.ts'

export const HATCH_SHARES = ['fertility', 'hatchOfFertile', 'hatchOfSet'] as const
export type HatchShare = (typeof HATCH_SHARES)[number]

/** Of what an interval speaks: eggs of parents bred like these, more settings of these parents, or these eggs and no others. */
export type EggsSpeakOf = 'families' | 'settings' | 'these-eggs'

/** What was drawn whole: families or settings, or the days they were set where those leave more open. */
export type DrawnBy = 'families' | 'settings' | 'days'

/** A hatch share of a group, with what its families or settings leave open. */
export interface ShareOfGroup {
  readonly what: HatchShare
  readonly share: Share | CannotSay
  /** the one to read; null where these eggs are all that can be spoken of, or nothing was counted */
  readonly drawn: FamilyShare | null
  readonly drawnBy: DrawnBy | null
  readonly speaksOf: EggsSpeakOf
  /** sire families, settings, and days of setting, with an egg */
  readonly families: number
  readonly settings: number
  readonly days: number
}

export interface ResultsOfGroup {
  readonly group: HatchGroup
  readonly rates: HatchRates
  readonly shares: readonly ShareOfGroup[]
}

/** One hatch share of two groups. */
export interface HatchComparison {
  readonly pair: HatchPair
  readonly what: HatchShare
  readonly one: Count
  readonly other: Count
  /** of these eggs, first less second */
  readonly plain: ShareDifference
  /** with families or settings drawn whole; null where either group has too few */
  readonly drawn: FamilyDifference | null
  readonly drawnBy: DrawnBy | null
  readonly speaksOf: EggsSpeakOf
  /** birds that may have sired eggs of both: what is drawn takes the two to have nothing to do with each other, and is then too wide rather than too narrow */
  readonly siresOfBoth: number
  /** by the interval to read; a difference of groups that were not kept alike need not be one of the birds */
  readonly verdict: 'more' | 'less' | 'cannot-tell'
  readonly alike: RearedAlike
}

const COUNTS: Readonly<Record<HatchShare, readonly [part: (hatch: Hatch) => number | null, whole: (hatch: Hatch) => number | null]>> = {
  fertility: [fertileOf, hatch => hatch.eggs], hatchOfFertile: [hatch => hatch.hatched, fertileOf], hatchOfSet: [hatch => hatch.hatched, hatch => hatch.eggs],
}

function countOf(hatch: Hatch, what: HatchShare): Count | null {
  const [part, whole] = COUNTS[what], k = part(hatch), n = whole(hatch)
  return !isJudged(hatch) || k === null || n === null || k > n || n === 0 ? null : {k, n}
}


/** All settings in machines of one day share its luck: heat, power, how long eggs had stood. Under a hen, or of no day, a setting stands alone. */
const dayOf = ({id, broody, set, on}: Hatch): string => {
  const day = set ?? on
  return broody || day === null ? id : `${day.first} ${day.last}`
}

/** The eggs of a group as they may be drawn: by the sires they may have, by setting, and by the day they were set. */
function drawnApart({hatches}: HatchGroup, what: HatchShare): Readonly<Record<DrawnBy, readonly Count[]>> {
  const counted = hatches.flatMap(hatch => {
    const count = countOf(hatch, what)
    return count ? [{hatch, parentage: hatch.parentage, count}] : []
  })
  return {families: sireFamilies(counted).map(own => sumOf(own.map(({count}) => count))), settings: counted.map(({count}) => count), days: [...grouped(counted, ({hatch}) => dayOf(hatch)).values()].map(own => sumOf(own.map(({count}) => count)))}
}

/**
 * How did the eggs of each step, season, pen and way of hatching do, and what is to be read into it?
 *
 * Eggs of one hen, or of one male, are alike: one infertile hen clears them all. From five sire families on the interval draws these whole and speaks of eggs bred like these; with fewer, but five settings or more,
 * it draws settings, and speaks of further settings of these very birds; else it is Wilson's and speaks of these eggs alone.
 * A good or bad day in the machine is shared by all pens set on it: with five days or more these are drawn whole as well, and the wider interval stands; with fewer the day's luck is not in it.
 *
 * @see `familyShare`
 */
export function hatchResultsOfGroups({steps, seasons, ways, pens}: HatchGroups): readonly ResultsOfGroup[] {
  return [...steps, ...seasons, ...ways, ...pens].map(group => {
    const rates = ratesOf(group.hatches)
    return {group, rates, shares: HATCH_SHARES.map(what => {
      const apart = drawnApart(group, what), {families, settings, days} = apart, speaksOf = speaking(families.length, settings.length)
      const found = widest(speaksOf, days.length, by => familyShare(apart[by], {seed: FAMILY_SEED}))
      return {what, share: rates[what], drawn: found?.drawn ?? null, drawnBy: found?.by ?? null, speaksOf, families: families.length, settings: settings.length, days: days.length}
    })}
  })
}

const speaking = (families: number, settings: number): EggsSpeakOf => (families >= FEWEST_FAMILIES ? 'families' : settings >= FEWEST_FAMILIES ? 'settings' : 'these-eggs')

/** Families or settings drawn whole, or days where there are enough of them and they leave more open. */
function widest<Drawn extends {readonly low: number; readonly high: number}>(speaksOf: EggsSpeakOf, days: number, draw: (by: DrawnBy) => Drawn | null): {readonly by: DrawnBy; readonly drawn: Drawn} | null {
  if (speaksOf === 'these-eggs') return null
  const plain = draw(speaksOf), byDay = days >= FEWEST_FAMILIES ? draw('days') : null
  if (plain === null) return null
  return byDay && byDay.high - byDay.low > plain.high - plain.low ? {by: 'days', drawn: byDay} : {by: speaksOf, drawn: plain}
}

/**
 * Do the eggs of one group do better than those of another, and were the two kept alike?
 *
 * The difference of the shares by Newcombe, of these eggs; and, where both groups have five sire families or five settings, with these drawn whole, as `hatchResultsOfGroups`: that is the one to read.
 * Nothing is corrected for being one of many. Pairs of which either has no counted egg have no entry.
 *
 * @see `shareDifference`, `familyDifference`, `rearedAlike`
 */
export function hatchComparisons({pairs}: HatchGroups, touching: CareTouching): readonly HatchComparison[] {
  const kept = new Map([...new Set(pairs.flatMap(({one, other}) => [...one.hatches, ...other.hatches]))].map(hatch => [hatch, keptOfHatch(hatch, touching, 'hatch')] as const))
  const keptOf = ({hatches}: HatchGroup) => hatches.filter(isJudged).flatMap(hatch => kept.get(hatch) ?? [])
  return pairs.flatMap(pair => {
    const alike = rearedAlike(keptOf(pair.one), keptOf(pair.other)), siresOfBoth = siresOf(pair)
    return HATCH_SHARES.flatMap((what): HatchComparison[] => {
      const first = drawnApart(pair.one, what), second = drawnApart(pair.other, what)
      const one = sumOf(first.settings), other = sumOf(second.settings)
      if (one.n === 0 || other.n === 0) return []
      const plain = shareDifference(one, other), speaksOf = speaking(Math.min(first.families.length, second.families.length), Math.min(first.settings.length, second.settings.length))
      const found = widest(speaksOf, Math.min(first.days.length, second.days.length), by => familyDifference(first[by], second[by], {seed: FAMILY_SEED})), drawn = found?.drawn ?? null, read = drawn ?? plain
      return [{pair, what, one, other, plain, drawn, drawnBy: found?.by ?? null, speaksOf, siresOfBoth, verdict: read.low > 0 ? 'more' : read.high < 0 ? 'less' : 'cannot-tell', alike}]
    })
  })
}

function siresOf({one, other}: HatchPair): number {
  const sires = ({hatches}: HatchGroup) => new Set(hatches.filter(isJudged).flatMap(({parentage}) => parentage.sires.map(({bird}) => bird)))
  const mine = sires(one)
  return [...sires(other)].filter(sire => mine.has(sire)).length
}

/** The results of the groups of one kind, by their name. */
export const resultsBy = (results: readonly ResultsOfGroup[], by: HatchGroup['by']): ReadonlyMap<string, ResultsOfGroup> =>
  new Map([...grouped(results.filter(({group}) => group.by === by), ({group}) => group.name)].flatMap(([name, [first]]) => (first ? [[name, first] as const] : [])))
