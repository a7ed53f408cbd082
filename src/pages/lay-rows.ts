/** How hens laid and what they ate, in words and table rows. */
import type {FeedUse} from '../findings/feed-use.ts'
import type {FirstEggs} from '../findings/first-eggs.ts'
import type {Lay, LayComparison, LayGroup, LaySpeaksOf} from '../findings/lay.ts'
import type {Project} from '../logbook/book.ts'
import {alikeShort} from './alike-words.ts'
import {daySpan, dayWords} from './dates.ts'
import {pointLimits, points} from './difference-words.ts'
import {birdPath, hatchPath, penPath} from './links.ts'
import {mass, massLimits} from './mass-words.ts'
import {figured, limits, limitsShort, NOTHING, percent, percentSign, rounded, whole} from './numbers.ts'
import type {Cell, Table} from './page.ts'
import type {Compared} from './told-apart-words.ts'

export const HENS_SPEAK_OF: Readonly<Record<LaySpeaksOf, string>> = {hens: 'hens like these', pens: 'pens like these', 'these-hens': 'these hens'}

const henDayCell = ({henDay}: Lay): string => `${percent(henDay.ratio)}${henDay.interval ? ` (${whole(limitsShort(henDay.interval))})` : ''}`
const housedCell = ({henHoused}: Lay): string => (henHoused ? rounded(henHoused.eggs, 1) : NOTHING)
const weightCell = ({eggWeight}: Lay, units: Project['units']): string => (eggWeight ? `${mass(eggWeight.ratio, units)}${eggWeight.interval ? ` (${massLimits(eggWeight.interval, eggWeight.ratio, units)})` : ''}, ${figured(eggWeight.eggs, 'egg')}` : NOTHING)

/** Columns of eggs: of groups, or of single sheets each with its days. */
function layTable(rows: readonly {readonly head: Cell; readonly when: string; readonly lay: Lay}[], head: string, caption: string, units: Project['units']): Table | null {
  if (rows.length === 0) return null
  const missing = rows.some(({lay}) => lay.missing + lay.unclear > 0), weighed = rows.some(({lay}) => lay.eggWeight)
  return {
    caption, columns: [
      {head}, {head: 'Counted'}, {head: 'Hens', number: true}, {head: 'Eggs', number: true}, {head: 'Hen-days', number: true}, {head: 'Hen-day, %'}, {head: 'Eggs a hen housed', number: true}, ...(weighed ? [{head: 'Egg weight'}] : []),
      ...(missing ? [{head: 'Not counted'}] : []), {head: 'Speaks of'},
    ],
    rows: rows.map(({head: first, when, lay}): readonly Cell[] => [
      first, when, String(lay.hens || lay.henHoused?.hens || 0), String(lay.eggs), String(lay.henDays), henDayCell(lay), housedCell(lay), ...(weighed ? [weightCell(lay, units)] : []), ...(missing ? [notCounted(lay) || NOTHING] : []), lay.henDay.interval ? HENS_SPEAK_OF[lay.speaksOf] : NOTHING,
    ]),
  }
}

const notCounted = ({missing, unclear}: Lay): string => [...(missing > 0 ? [figured(missing, 'day')] : []), ...(unclear > 0 ? [figured(unclear, 'egg')] : [])].join(', ')

export const layGroupsTable = (groups: readonly LayGroup[], units: Project['units']): Table | null =>
  layTable(groups.map(lay => ({head: lay.name === 'strain' ? 'Pure strains' : lay.name, when: `${figured(lay.sheets.length, 'sheet')}, ${figured(lay.days, 'day')}`, lay})), 'Of', 'Step by step', units)

export function sheetsTable(sheets: readonly Lay[], units: Project['units']): Table | null {
  return layTable(sheets.flatMap(lay => {
    const [sheet] = lay.sheets
    if (!sheet) return []
    const head: Cell = sheet.pen ? {text: sheet.pen.id, link: penPath(sheet.pen)} : sheet.bird ? {text: sheet.bird.band, link: birdPath(sheet.bird)} : NOTHING
    return [{head, when: `${figured(sheet.days, 'day')} from ${dayWords(sheet.from)}`, lay}]
  }), 'Pen or hen', 'Every egg sheet', units)
}

export function layComparisonTable(all: readonly LayComparison[]): Table | null {
  if (all.length === 0) return null
  return {
    caption: 'Differences in the hen-day rate, in points', columns: [{head: 'Compared'}, {head: 'Difference'}, {head: 'Speaks of'}, {head: 'Kept alike?'}],
    rows: all.map(({one, other, difference, speaksOf, verdict, alike}): readonly Cell[] => [
      `${one.name} less ${other.name}`, difference ? `${points(difference.difference)} (${pointLimits(difference)})${verdict === 'cannot-tell' ? '' : `: ${verdict}`}` : 'too few sheets', difference ? HENS_SPEAK_OF[speaksOf] : NOTHING, alikeShort(alike),
    ]),
  }
}

/** Each comparison in few words. */
export const layToldApart = (all: readonly LayComparison[]): readonly Compared[] =>
  all.map(({one, other, verdict, speaksOf, alike}) => ({words: `${one.name} laid ${verdict === 'less' ? 'less' : 'more'} than ${other.name}`, verdict, only: speaksOf === 'these-hens', alike}))

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
export function feedWords({from, to, eaten, after, birdDays, perBirdDay, ofEggs, ofGain, weighedBack, records}: FeedUse, units: Project['units']): readonly string[] {
  const leftOver = weighedBack === records - 1 ? '' : weighedBack === 0 ? ' What was given is taken to be eaten up by the next record.' : ' Where it was not weighed what was left, it is taken to be eaten up by the next record.'
  return [
    `Feed: ${mass(eaten, units)} from ${daySpan(from, to)}${perBirdDay === null ? '' : `, ${mass(perBirdDay, units)} a bird a day over ${figured(birdDays, 'bird-day')}`}. The ${mass(after, units)} of the last record are not counted.${leftOver}`,
    ...(ofEggs ? [`On the ${figured(ofEggs.days, 'day')} with eggs counted as well: ${mass(ofEggs.perEgg, units)} for an egg, what the males ate among it${ofEggs.conversion === null || ofEggs.eggWeight === null ? '; no egg was weighed then, so there is no feed conversion' : `; ${rounded(ofEggs.conversion, 2)} of feed to 1 of egg by weight, at ${mass(ofEggs.eggWeight, units)} an egg`}.`] : []),
    ...(ofGain ? [`From ${daySpan(ofGain.from, ofGain.to)} the birds put on ${mass(ofGain.gain, units)} for ${mass(ofGain.eaten, units)} of feed: ${rounded(ofGain.conversion, 2)} of feed to 1 of gain, with ${figured(ofGain.weighed, 'bird')} or more on the scales.${ofGain.unlisted > 0 ? ` ${figured(ofGain.unlisted, 'chick')} nobody listed may have eaten too.` : ''}`] : []),
    'One pen is a single observation: no limits can be given.',
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
