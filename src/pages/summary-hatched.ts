/** From egg to breeder, beside the one before: eggs, chicks, losses and birds kept, each with its share, and what to think of the comparison. */
import type {FlockSummary} from '../findings/flock-summary.ts'
import type {CannotSay, Share} from '../findings/estimate.ts'
import type {LayGroup} from '../findings/lay.ts'
import type {Unlike} from '../findings/reared-alike.ts'
import type {Findings} from '../findings/study.ts'
import type {ChickCounts} from '../findings/chick-counts.ts'
import type {EggsSpeakOf, HatchShare, ShareOfGroup} from '../findings/hatch-comparisons.ts'
import type {HatchRates} from '../findings/hatch-results.ts'
import {FOLLOWED} from '../findings/life-watched.ts'
import {shareOf} from '../findings/share-of.ts'
import type {Leaving} from '../logbook/book.ts'
import type {FamilyLivability} from '../statistics/livability-of-families.ts'
import {cannotSay} from './estimate-words.ts'
import {ageWords} from './dates.ts'
import {figured, limitsShort, listWords, NOTHING, ofWords, percent, percentSign, rounded, signed, sizeRange} from './numbers.ts'
import type {Cell, Table} from './page.ts'
import {setAsideWords} from './set-aside-words.ts'

/** `94 of 124, 75.8% (67.6–82.5)`, or why it cannot be said */
export const shareShort = (share: Share | CannotSay): string => (share.kind === 'cannot-say' ? cannotSay(share) : `${ofWords(share.count, share.total)}, ${percentSign(share.value)} (${limitsShort(share.interval)})`)

/** Limits as on the tile: with families or settings drawn whole, where there are enough. */
const hatchShort = ({rates, hatching}: Told, what: HatchShare): string => {
  const own = rates[what], limits = hatching.find(each => each.what === what)?.drawn
  return shareShort(own.kind === 'share' && limits ? {...own, interval: {...own.interval, low: limits.low, high: limits.high}} : own)
}

type Told = {readonly hatching: readonly ShareOfGroup[]; readonly name: string; readonly chicks: ChickCounts; readonly rates: HatchRates; readonly lived: FamilyLivability | null; readonly lay: LayGroup | null}
type Stage = readonly [string, (of: Told) => string, (of: Told) => boolean]

const share = (count: number, {hatched}: ChickCounts): string => shareShort(shareOf(count, hatched))
/** What the keeper chose has no limits: it is no sample of anything. */
const chosen = (count: number, {hatched}: ChickCounts): string => {
  const own = shareOf(count, hatched)
  return own.kind === 'share' ? `${ofWords(own.count, own.total)}, ${percentSign(own.value)}` : NOTHING
}

const GONE: readonly (readonly [string, readonly Leaving['how'][], typeof share])[] = [
  ['Died', ['died'], share], ['Lost or taken', ['lost', 'taken'], share], ['Culled', ['culled'], chosen], ['Sold, given or lent', ['sold', 'given', 'lent'], chosen],
]

/** A stage that neither has anything of is not shown. */
const STAGES: readonly Stage[] = [
  ['Eggs set', ({rates}) => (rates.eggs === null ? 'not counted' : String(rates.eggs)), () => true],
  ['Fertile of eggs', told => hatchShort(told, 'fertility'), ({rates}) => rates.eggs !== null],
  ['Hatched of fertile', told => hatchShort(told, 'hatchOfFertile'), ({rates}) => rates.eggs !== null],
  ['Hatched of eggs', told => hatchShort(told, 'hatchOfSet'), ({rates}) => rates.eggs !== null],
  ['Chicks hatched', ({chicks}) => String(chicks.hatched), () => true],
  ...GONE.map(([head, hows, said]): Stage => {
    const count = ({chicks}: Told): number => hows.reduce((sum, how) => sum + (chicks.left.get(how) ?? 0), 0)
    return [head, of => said(count(of), of.chicks), of => count(of) > 0]
  }),
  [`Lived to ${ageWords(FOLLOWED)}`, ({lived}) => (lived ? `${percentSign(lived.share)} (${limitsShort(lived)}) of ${lived.n}` : 'nobody followed'), ({lived}) => lived !== null],
  ['Eggs of a hen in a day', ({lay}) => (lay ? `${rounded(lay.henDay.ratio, 2)}${lay.henDay.interval ? ` (${rounded(lay.henDay.interval.low, 2)}–${rounded(lay.henDay.interval.high, 2)})` : ''}, ${figured(lay.hens, 'hen')}` : 'not counted'), ({lay}) => lay !== null],
  ['Scored or measured', ({chicks}) => chosen(chicks.scored, chicks), ({chicks}) => chicks.hatched > 0],
  ['Kept, or penned to breed', ({chicks}) => chosen(chicks.kept, chicks), ({chicks}) => chicks.hatched > 0],
]

export interface SummaryHatched {
  readonly table: Table
  readonly words: readonly string[]
}

export function summaryHatched(summary: FlockSummary, {life}: Findings): SummaryHatched {
  const {of, name, before} = summary
  const told = (each: Pick<Told, 'name' | 'chicks' | 'rates'>): Told => ({
    ...each, hatching: life.hatching.find(({group}) => group.by === of && group.name === each.name)?.shares ?? [], lived: life.livability.groups.find(({group}) => group.by === of && group.name === each.name)?.ages.find(({age}) => age === FOLLOWED)?.found ?? null, lay: life.lay.groups.find(group => group.by === of && group.name === each.name) ?? null,
  })
  const both = (before ? [summary, before] : [summary]).map(told)
  return {
    table: {
      columns: [{head: 'Stage'}, {head: name}, ...(before ? [{head: before.name}] : [])],
      rows: STAGES.filter(([, , shown]) => both.some(shown)).map(([head, said]): readonly Cell[] => [head, ...both.map(said)]),
    },
    words: [...(before ? comparedWords(of, name, before.name, life) : []), ...setAsideWords([...summary.rates.setAside, ...(before?.rates.setAside ?? [])]), ...limitsWords(both)],
  }
}

const OF_WHOM: Readonly<Record<EggsSpeakOf, string>> = {families: 'by sire families', settings: 'by settings', 'these-eggs': 'of these eggs only'}

/** Of whom the limits of hatch speak; eggs of one hen do well or badly together. */
function limitsWords(both: readonly Told[]): readonly string[] {
  const told = both.filter(({rates}) => rates.hatchOfSet.kind === 'share').map(({name, hatching}) => ({name, speaksOf: hatching.find(({what}) => what === 'hatchOfSet')?.speaksOf ?? 'these-eggs'}))
  const alike = new Set(told.map(({speaksOf}) => speaksOf)).size === 1, [first] = told
  if (!first) return []
  return [`The limits of hatch are ${alike ? OF_WHOM[first.speaksOf] : told.map(({name, speaksOf}) => `${OF_WHOM[speaksOf]} for ${name}`).join(', ')}${told.some(({speaksOf}) => speaksOf === 'these-eggs') ? '; those are narrower than the truth, as eggs of one hen do well or badly together' : ''}.`]
}

const MORE = {more: 'more', less: 'less', 'cannot-tell': 'cannot be told'} as const
const UNLIKE_WORDS: Readonly<Record<Unlike['what'], string>> = {
  season: 'season', months: 'time of year', ages: 'age of the hens', way: 'hatching under hens or in machines', machine: 'machine', keeper: 'keeper', feed: 'feed', housing: 'housing', vaccination: 'vaccination', treatment: 'treatment', illness: 'illness', loss: 'losses',
}

const points = ({difference, low, high}: {readonly difference: number; readonly low: number; readonly high: number}): string => `${signed(percent(difference))} points (${sizeRange(percent(low), percent(high))})`

/** Of whom an interval of eggs speaks. */
export const EGGS_OF: Readonly<Record<EggsSpeakOf, string>> = {families: 'by sire families', settings: 'by settings', 'these-eggs': 'these eggs only'}

/** Does it hatch, live and lay better than the one before, and were the two kept alike? */
function comparedWords(of: FlockSummary['of'], name: string, before: string, {hatchComparisons, livability, lay}: Findings['life']): readonly string[] {
  const ours = ({one, other}: {readonly one: {readonly by: string; readonly name: string}; readonly other: {readonly name: string}}): boolean => one.by === of && one.name === name && other.name === before
  const hatch = hatchComparisons.find(({pair, what}) => ours(pair) && what === 'hatchOfSet'), life = livability.comparisons.find(({pair}) => ours(pair)), laid = lay.comparisons.find(ours)
  const alike = (hatch ?? life ?? laid)?.alike, drawn = hatch?.drawn ?? hatch?.plain
  const said = [
    ...(hatch && drawn ? [`hatched of eggs ${points(drawn)}, ${EGGS_OF[hatch.speaksOf]}: ${MORE[hatch.verdict]}`] : []),
    ...(life ? [`lived to ${ageWords(life.age)} ${points(life.difference)}, ${life.speaksOf === 'families' ? 'by sire families' : 'these chicks only'}: ${MORE[life.verdict]}`] : []),
    ...(laid?.difference ? [`eggs of a hen in a day ${signed(rounded(laid.difference.difference, 2))} (${sizeRange(rounded(laid.difference.low, 2), rounded(laid.difference.high, 2))}): ${MORE[laid.verdict]}`] : []),
  ]
  if (said.length === 0 || !alike) return []
  const kept = alike.verdict === 'not-alike' ? ` They were not kept alike in ${listWords(alike.unlike.map(({what}) => UNLIKE_WORDS[what]))}, so a difference need not be one of the birds.`
    : alike.verdict === 'not-told' ? ' Whether they were kept alike is not written of all.' : ' By the records they were kept alike.'
  return [`Against ${before}: ${said.join('; ')}.${kept}`]
}
