/** What may be read into hatch results: groups with the limits their families or settings leave, differences of two groups, and the dead of each stage. */
import type {EggsSpeakOf, HatchComparison, ResultsOfGroup, ShareOfGroup} from '../findings/hatch-comparisons.ts'
import type {CannotSay, Share} from '../findings/estimate.ts'
import type {HatchGroup, HatchPair} from '../findings/hatch-groups.ts'
import type {HatchRates} from '../findings/hatch-results.ts'
import {alikeShort, unlikeLine} from './alike-words.ts'
import {pointLimits, points} from './difference-words.ts'
import {cannotSayShort} from './estimate-words.ts'
import type {RatesOfGroup} from './hatch-rows.ts'
import {limitsShort, NOTHING, ofWords, percent, whole} from './numbers.ts'
import type {Cell, Table} from './page.ts'
import type {Compared} from './told-apart-words.ts'

/** Of what an interval speaks, for a column. */
export const EGGS_SPEAK_OF: Readonly<Record<EggsSpeakOf, string>> = {families: 'like these', settings: 'these birds', 'these-eggs': 'these eggs'}
/** What to read, and what the words of the column mean. */
export const EGGS_SPEAK_WORDS = 'Limits are 95%. Eggs of one hen or male are alike: from five sire families on the limits draw these whole and speak of eggs bred like these; with five settings, of further settings of these birds; with fewer, of these eggs only, and the truth may lie wider. A committee should read the first. Good and bad days in the machine are in them where a group was set on five days or more; with fewer they are not.'

const ORDER: readonly EggsSpeakOf[] = ['these-eggs', 'settings', 'families']
/** The least that all of them can speak of. */
const least = (all: readonly EggsSpeakOf[]): EggsSpeakOf => ORDER.find(each => all.includes(each)) ?? 'these-eggs'

const NAMES: Readonly<Record<string, string>> = {broody: 'Under a broody hen', incubator: 'In a machine', others: 'the other pens'}
export const groupName = ({name}: Pick<HatchGroup, 'name'>): string => NAMES[name] ?? name

/** The rates of groups with the limits to be read in place of the plain ones. */
export function drawnRates(results: readonly ResultsOfGroup[]): readonly RatesOfGroup[] {
  return results.map(({group, rates, shares}) => {
    const drawn = (what: ShareOfGroup['what'], share: Share | CannotSay): Share | CannotSay => {
      const found = shares.find(each => each.what === what)?.drawn
      return share.kind === 'share' && found ? {...share, interval: found} : share
    }
    const told = shares.filter(({share}) => share.kind === 'share').map(({speaksOf}) => speaksOf)
    return {
      label: groupName(group), speaksOf: told.length === 0 ? NOTHING : EGGS_SPEAK_OF[least(told)],
      rates: {...rates, fertility: drawn('fertility', rates.fertility), hatchOfFertile: drawn('hatchOfFertile', rates.hatchOfFertile), hatchOfSet: drawn('hatchOfSet', rates.hatchOfSet)},
    }
  })
}

export const pairWords = ({pair: {one, other}}: {readonly pair: HatchPair}): string => `${groupName(one)} less ${groupName(other).replace(/^[UI]n/, start => start.toLowerCase())}`

function differenceCell(found: HatchComparison | undefined): string {
  if (!found) return NOTHING
  const {plain, drawn, verdict} = found, read = drawn ?? plain
  return `${points(read.difference)} (${pointLimits(read)})${verdict === 'cannot-tell' ? '' : `: ${verdict}`}`
}

/** A row a pair; null where nothing can be compared. */
export function comparisonTable(all: readonly HatchComparison[]): Table | null {
  const pairs = [...new Set(all.map(({pair}) => pair))]
  if (pairs.length === 0) return null
  return {
    caption: 'Differences, in points',
    columns: [{head: 'Compared'}, {head: 'Fertility'}, {head: 'Hatch of fertile'}, {head: 'Hatch of set'}, {head: 'Speaks of'}, {head: 'Kept alike?'}],
    rows: pairs.flatMap((pair): (readonly Cell[])[] => {
      const own = all.filter(each => each.pair === pair), [first] = own
      return first ? [[pairWords(first), ...(['fertility', 'hatchOfFertile', 'hatchOfSet'] as const).map(what => differenceCell(own.find(each => each.what === what))), EGGS_SPEAK_OF[least(own.map(({speaksOf}) => speaksOf))], alikeShort(first.alike)]] : []
    }),
  }
}

const deadCell = (share: Share | CannotSay): string => (share.kind === 'share' ? `${ofWords(share.count, share.total)}: ${percent(share.value)} (${whole(limitsShort(share.interval))})` : cannotSayShort(share))

/** Where the fertile eggs stopped, a row a group; null where no stage was counted. */
export function deadByStage(groups: readonly {readonly label: string; readonly rates: HatchRates}[], head: string): Table | null {
  const counted = groups.filter(({rates}) => rates.germDeath.kind === 'share' || rates.shellDeath.kind === 'share')
  if (counted.length === 0) return null
  const bad = counted.some(({rates}) => rates.bad !== null)
  return {
    caption: 'Dead by stage, of the fertile eggs, %',
    columns: [{head}, {head: 'Dead in germ'}, {head: 'Dead in shell'}, ...(bad ? [{head: 'Bad or broken', number: true}] : [])],
    rows: counted.map(({label, rates}): readonly Cell[] => [label, deadCell(rates.germDeath), deadCell(rates.shellDeath), ...(bad ? [rates.bad === null ? NOTHING : String(rates.bad)] : [])]),
  }
}

/** In what the groups that differ were not kept alike, a line a pair. */
export const hatchesUnlike = (all: readonly HatchComparison[]): readonly string[] =>
  [...new Map(all.filter(({verdict}) => verdict !== 'cannot-tell').map(found => [found.pair, found])).values()].flatMap(found => unlikeLine(pairWords(found), found.alike) ?? [])

const WHAT = {fertility: 'fertile eggs of all set', hatchOfFertile: 'chicks of fertile eggs', hatchOfSet: 'chicks of all eggs set'} as const

/** Each comparison in few words. */
export function hatchesToldApart(all: readonly HatchComparison[]): readonly Compared[] {
  return all.map(({pair: {one, other}, what, verdict, speaksOf, alike}) => ({words: `${verdict === 'less' ? 'fewer' : 'more'} ${WHAT[what]} in ${inText(one)} than in ${inText(other)}`, verdict, only: speaksOf === 'these-eggs', alike}))
}

/** `BC2`, `the other pens`, `those under a broody hen` */
export const inText = (group: Pick<HatchGroup, 'name' | 'by'>): string => (group.by === 'way' ? `those ${groupName(group).replace(/^[UI]n/, start => start.toLowerCase())}` : groupName(group))
