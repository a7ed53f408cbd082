/** How hens laid and what they ate, in words and table rows. */
import type {FeedUse} from '../findings/feed-use.ts'
import type {FirstEggs} from '../findings/first-eggs.ts'
import type {LaySheet} from '../findings/lay-sheets.ts'
import type {Lay, LayComparison, LayGroup, LaySpeaksOf} from '../findings/lay.ts'
import type {Project} from '../logbook/book.ts'
import {alikeShort, unlikeLine} from './alike-words.ts'
import {daySpan, dayWords} from './dates.ts'
import {pointLimits, points} from './difference-words.ts'
import {birdPath, hatchPath, penPath} from './links.ts'
import {mass, massLimits} from './mass-words.ts'
import {figured, limits, limitsShort, NOTHING, percent, percentSign, rounded, whole} from './numbers.ts'
import type {Cell, Table} from './page.ts'
import type {Compared} from './told-apart-words.ts'

export const HENS_SPEAK_OF: Readonly<Record<LaySpeaksOf, string>> = {hens: 'hens like these', pens: 'pens like these', 'these-hens': 'these hens', mixed: 'each kind below'}

const henDayCell = ({henDay}: Lay): string => `${percent(henDay.ratio)}${henDay.interval ? ` (${whole(limitsShort(henDay.interval))})` : ''}`
/** Of a single sheet, with its days; over sheets of unlike length only the rate can be read. */
const housedCell = ({henHoused, sheets, days}: Lay): string => (!henHoused ? NOTHING : sheets.length === 1 ? `${rounded(henHoused.eggs, 1)} in ${figured(days, 'day')}` : percentSign(henHoused.rate))
/** `BC3 55.6 g (54.3 to 56.8, 18 eggs)` */
const weightWords = ({name, eggWeight}: LayGroup, units: Project['units']): readonly string[] => (eggWeight ? [`${name} ${mass(eggWeight.ratio, units)} (${eggWeight.interval ? `${massLimits(eggWeight.interval, eggWeight.ratio, units)}, ` : ''}${figured(eggWeight.eggs, 'egg')})`] : [])

/** Egg weights of groups in a sentence; empty where none was weighed. */
export function eggWeightWords(groups: readonly LayGroup[], units: Project['units']): readonly string[] {
  const told = groups.flatMap(group => weightWords(group, units))
  return told.length === 0 ? [] : [`Weight of an egg: ${told.join('; ')}.`]
}

interface LayRow {
  readonly head: Cell
  /** sheets or first day, and days */
  readonly when: readonly [string, string]
  readonly lay: Lay
}

/** Columns of eggs: of groups, or of the sheets of pens. */
function layTable(rows: readonly LayRow[], heads: readonly [string, string], caption: string): Table | null {
  if (rows.length === 0) return null
  const missing = rows.some(({lay}) => lay.missing + lay.unclear > 0)
  return {
    caption, columns: [
      {head: heads[0]}, {head: 'Hen-day, %'}, {head: 'Speaks of'}, {head: 'Eggs', number: true}, {head: 'Hen-days', number: true}, {head: 'Hens', number: true}, {head: heads[1]}, {head: 'Days', number: true}, {head: 'Hen-housed'},
      ...(missing ? [{head: 'Not counted'}] : []),
    ],
    rows: rows.map(({head: first, when, lay}): readonly Cell[] => [
      first, henDayCell(lay), lay.henDay.interval || lay.speaksOf === 'mixed' ? HENS_SPEAK_OF[lay.speaksOf] : NOTHING, String(lay.eggs), String(lay.henDays), String(lay.hens || lay.henHoused?.hens || 0), ...when, housedCell(lay), ...(missing ? [notCounted(lay) || NOTHING] : []),
    ]),
  }
}

const notCounted = ({missing, unclear}: Lay): string => [...(missing > 0 ? [figured(missing, 'day')] : []), ...(unclear > 0 ? [figured(unclear, 'egg')] : [])].join(', ')

const KINDS: Readonly<Record<LayGroup['of'], string>> = {pens: 'its pens', hens: 'its single hens', both: 'all'}
const stepName = ({name}: LayGroup): string => (name === 'strain' ? 'Pure strains' : name)

export const layGroupsTable = (groups: readonly LayGroup[]): Table | null =>
  layTable(groups.flatMap(group => [group, ...group.kinds].map(lay => ({head: lay === group ? stepName(lay) : `${stepName(lay)}, ${KINDS[lay.of]}`, when: [String(lay.sheets.length), String(lay.days)] as const, lay}))), ['Of', 'Sheets'], 'Step by step')

const fromDay = ({from}: LaySheet): string => dayWords(from).replace(/[A-Z][a-z]{3,}/, month => month.slice(0, 3)).replaceAll(' ', '\u00a0')

export function pensTable(sheets: readonly Lay[]): Table | null {
  return layTable(sheets.flatMap((lay): LayRow[] => lay.sheets.flatMap(sheet => (sheet.pen ? [{head: {text: sheet.pen.id, link: penPath(sheet.pen)}, when: [fromDay(sheet), String(sheet.days)], lay}] : []))), ['Pen', 'From'], 'Every pen with an egg sheet')
}

/** Hens with a sheet of their own, of the last season that has any. */
export function hensTable(sheets: readonly Lay[]): Table | null {
  const own = sheets.flatMap(lay => lay.sheets.flatMap(sheet => (sheet.bird ? [{lay, sheet, bird: sheet.bird}] : []))), season = Math.max(...own.map(({sheet}) => sheet.season))
  const rows = own.filter(({sheet}) => sheet.season === season), missing = rows.some(({lay}) => lay.missing + lay.unclear > 0)
  return rows.length === 0 ? null : {
    caption: `Hens with a sheet of their own, ${season}`, columns: [{head: 'Hen'}, {head: 'From'}, {head: 'Days', number: true}, {head: 'Eggs', number: true}, {head: 'Hen-day, %'}, ...(missing ? [{head: 'Not counted'}] : [])],
    rows: rows.map(({lay, sheet, bird}): readonly Cell[] => [{text: bird.band, link: birdPath(bird)}, fromDay(sheet), String(sheet.days), String(lay.eggs), henDayCell(lay), ...(missing ? [notCounted(lay) || NOTHING] : [])]),
  }
}

export function layComparisonTable(all: readonly LayComparison[]): Table | null {
  if (all.length === 0) return null
  return {
    caption: 'Differences in the hen-day rate, in points', columns: [{head: 'Compared'}, {head: 'Difference'}, {head: 'Speaks of'}, {head: 'Kept alike?'}],
    rows: all.map(({one, other, kind, difference, speaksOf, verdict, alike}): readonly Cell[] => [
      `${one.name} less ${other.name}${ofKind(kind)}`, difference ? `${points(difference.difference)} (${pointLimits(difference)})${verdict === 'cannot-tell' ? '' : `: ${verdict}`}` : 'too few sheets', difference ? HENS_SPEAK_OF[speaksOf] : NOTHING, alikeShort(alike),
    ]),
  }
}

const ofKind = (kind: LayComparison['kind']): string => (kind === null ? '' : `, ${kind === 'pens' ? 'pens' : 'single hens'}`)

/** Each comparison in few words. */
export const layToldApart = (all: readonly LayComparison[]): readonly Compared[] =>
  all.map(({one, other, kind, verdict, speaksOf, alike}) => ({words: `${one.name} laid ${verdict === 'less' ? 'less' : 'more'} than ${other.name}${kind === null ? '' : ` (${ofKind(kind).slice(2)})`}`, verdict, only: speaksOf === 'these-hens', alike}))

/** In what the groups were not kept alike; of few comparisons all are told. */
export const layUnlike = (all: readonly LayComparison[]): readonly string[] => all.filter(({verdict}) => verdict !== 'cannot-tell' || all.length < 3).flatMap(({one, other, kind, alike}) => unlikeLine(`${one.name} less ${other.name}${ofKind(kind)}`, alike) ?? [])

export function firstEggTable(all: readonly FirstEggs[]): Table | null {
  if (all.length === 0) return null
  return {
    caption: 'Age at first egg, days', columns: [{head: 'Of'}, {head: 'Hens', number: true}, {head: 'Mean'}, {head: 'Middle', number: true}, {head: 'From first to last'}, {head: 'Not written', number: true}],
    rows: all.map(({name, hens, mean, interval, median, earliest, latest, notWritten}): readonly Cell[] => [
      name, String(hens), `${rounded(mean, 0)}${interval ? ` (${rounded(interval.low, 0)} to ${rounded(interval.high, 0)})` : ''}`, rounded(median, 0), earliest === latest ? String(earliest) : `${earliest} to ${latest}`, String(notWritten),
    ]),
  }
}

export function feedTable(all: readonly FeedUse[], units: Project['units']): Table | null {
  if (all.length === 0) return null
  const eggs = all.some(({ofEggs}) => ofEggs), heavy = all.some(({ofEggs}) => ofEggs?.conversion), gain = all.some(({ofGain}) => ofGain)
  return {
    caption: 'Feed', columns: [{head: 'Pen or hatch'}, {head: 'Eaten'}, {head: 'Bird-days', number: true}, {head: 'A bird a day', number: true}, ...(eggs ? [{head: 'For an egg', number: true}] : []), ...(heavy ? [{head: 'Feed to egg, by weight', number: true}] : []), ...(gain ? [{head: 'Feed to gain, by weight', number: true}] : [])],
    rows: all.map(({pen, hatch, from, to, eaten, birdDays, perBirdDay, ofEggs, ofGain}): readonly Cell[] => [
      pen ? {text: pen.id, link: penPath(pen)} : hatch ? {text: hatch.id, link: hatchPath(hatch)} : NOTHING, `${mass(eaten, units)}, ${daySpan(from, to)}`, String(birdDays), perBirdDay === null ? NOTHING : mass(perBirdDay, units),
      ...(eggs ? [ofEggs ? mass(ofEggs.perEgg, units) : NOTHING] : []), ...(heavy ? [ofEggs?.conversion ? rounded(ofEggs.conversion, 2) : NOTHING] : []), ...(gain ? [ofGain ? rounded(ofGain.conversion, 2) : NOTHING] : []),
    ]),
  }
}

/** One pen's or hatch's feed, in sentences. */
export function feedWords({pen, from, to, eaten, after, birdDays, perBirdDay, ofEggs, ofGain, weighedBack, records}: FeedUse, units: Project['units']): readonly string[] {
  const leftOver = weighedBack === records - 1 ? '' : weighedBack === 0 ? ' What was given is taken to be eaten up by the next record.' : ' Where it was not weighed what was left, it is taken to be eaten up by the next record.'
  return [
    `Feed: ${mass(eaten, units)} from ${daySpan(from, to)}${perBirdDay === null ? '' : `, ${mass(perBirdDay, units)} a bird a day over ${figured(birdDays, 'bird-day')}`}. The ${mass(after, units)} there after the last record are not counted.${leftOver}`,
    ...(ofEggs ? [`On the ${figured(ofEggs.days, 'day')} with eggs counted as well: ${mass(ofEggs.perEgg, units)} for an egg, what the males ate among it${ofEggs.conversion === null || ofEggs.eggWeight === null ? '; no egg was weighed then, so there is no feed conversion' : `; ${rounded(ofEggs.conversion, 2)} of feed to 1 of egg by weight, at ${mass(ofEggs.eggWeight, units)} an egg`}.`] : []),
    ...(ofGain ? [`From ${daySpan(ofGain.from, ofGain.to)} the birds put on ${mass(ofGain.gain, units)} for ${mass(ofGain.eaten, units)} of feed: ${rounded(ofGain.conversion, 2)} of feed to 1 of gain, with ${figured(ofGain.weighed, 'bird')} or more on the scales.${ofGain.unlisted > 0 ? ` ${figured(ofGain.unlisted, 'chick')} nobody listed may have eaten too.` : ''}`] : []),
    `A single ${pen ? 'pen' : 'hatch'} is one observation: no limits can be given.`,
  ]
}

/** One pen's eggs, in sentences. */
export function layWords(lay: Lay, units: Project['units']): readonly string[] {
  const [sheet] = lay.sheets, {henDay, henHoused, eggWeight} = lay
  if (!sheet) return []
  const aside = notCounted(lay)
  return [
    `${figured(lay.eggs, 'egg')} on ${figured(sheet.days, 'day')} counted (${daySpan(sheet.from, sheet.to)}), ${figured(lay.henDays, 'hen-day')}: hen-day rate ${percentSign(henDay.ratio)}${henDay.interval ? ` (${limits(henDay.interval)}, of these hens in weeks like these)` : ''}${henHoused ? `; ${rounded(henHoused.eggs, 1)} for each of the ${figured(henHoused.hens, 'hen')} there at the start` : ''}.`,
    ...(aside === '' ? [] : [`Not counted, and in no rate: ${aside}. A day without a row is not taken for a day without eggs.`]),
    ...(sheet.otherHens > 0 ? [`On ${figured(sheet.otherHens, 'day')} the sheet names another number of hens than this pen’s record; the sheet’s is taken.`] : []),
    ...(eggWeight ? [`Egg weight ${mass(eggWeight.ratio, units)}${eggWeight.interval ? ` (${massLimits(eggWeight.interval, eggWeight.ratio, units)})` : ''}, of ${figured(eggWeight.eggs, 'egg')}.`] : []),
  ]
}
