/** Hatch results as table rows and as a chart: eggs, fertile, hatched and the three rates with their limits. */
import {hasRows} from '../charts/chart-spec.ts'
import {hatchResults, untold} from '../charts/hatch-results.ts'
import type {HatchRow} from '../charts/hatch-results.ts'
import type {CannotSay, Share} from '../findings/estimate.ts'
import type {HatchRates, HatchResult} from '../findings/hatch-results.ts'
import type {Hatch} from '../logbook/book.ts'
import {dateShort} from './dates.ts'
import {cannotSay, cannotSayShort} from './estimate-words.ts'
import {hatchPath} from './links.ts'
import {limits, limitsShort, listWords, NOTHING, ofWords, percent} from './numbers.ts'
import type {Cell, Figure} from './page.ts'
import {setAsideWords} from './set-aside-words.ts'

const count = (number: number | null): string => (number === null ? NOTHING : String(number))

/** `81.0 (71.3 to 87.9)`, or why it cannot be said. */
export const rateWords = (share: Share | CannotSay): string => (share.kind === 'cannot-say' ? cannotSay(share) : `${percent(share.value)}% (${limits(share.interval)})`)

/** Where the eggs came from: pens, or a strain bought in. */
function fromPieces(hatch: Hatch): readonly string[] {
  if (hatch.pens.length > 0) return hatch.pens.map(({pen}, index) => (index === hatch.pens.length - 1 ? pen.id : `${pen.id},`))
  return hatch.strain ? ['bought,', ...hatch.strain.name.split(' ')] : ['not', 'recorded']
}

const hatchedOn = (hatch: Hatch): string => (hatch.on ? dateShort(hatch.on) : hatch.set ? `set ${dateShort(hatch.set)}` : 'not recorded')

/** A rate for a narrow column, its limits beneath in small. */
interface RateCell {
  readonly value: string
  readonly limits: string
}

/** Results in columns, words in pieces that are not broken themselves; the `hatch-table` partial sets limits beneath their rate. */
export interface HatchTable {
  readonly caption: string
  readonly heads: readonly string[]
  /** which of them were set aside, and why */
  readonly notes: readonly string[]
  readonly rows: readonly {readonly head: {readonly text: string; readonly link: string | null}; readonly words: readonly (readonly string[])[]; readonly counts: readonly string[]; readonly rates: readonly RateCell[]}[]
}

function narrow(share: Share | CannotSay): RateCell {
  return share.kind === 'cannot-say' ? {value: cannotSayShort(share), limits: ''} : {value: percent(share.value), limits: limitsShort(share.interval)}
}

const counts = (rates: HatchRates): readonly string[] => [count(rates.eggs), count(rates.fertile), count(rates.hatched)]
const rateCells = (rates: HatchRates): readonly RateCell[] => [narrow(rates.fertility), narrow(rates.hatchOfFertile), narrow(rates.hatchOfSet)]

/** @param of  what all of them share and no column repeats */
export function hatchTable(results: readonly HatchResult[], caption: string, of: 'pen' | 'step' | 'season'): HatchTable | null {
  if (results.length === 0) return null
  return {
    caption, notes: setAsideWords(results.map(({hatch}) => hatch)), heads: ['Hatch', 'Hatched on', ...(of === 'pen' ? [] : ['From']), ...(of === 'step' ? [] : ['Step'])],
    rows: results.map(result => ({
      head: {text: result.hatch.id, link: hatchPath(result.hatch)},
      words: [[hatchedOn(result.hatch), ...(result.hatch.setAside === null ? [] : ['(set', 'aside)'])], ...(of === 'pen' ? [] : [fromPieces(result.hatch)]), ...(of === 'step' ? [] : [stepOf(result.hatch).split(' ')])], counts: counts(result), rates: rateCells(result),
    })),
  }
}

const stepOf = (hatch: Hatch): string => (hatch.step.kind === 'strain' ? hatch.strain?.name ?? hatch.step.strains[0]?.name ?? 'strain' : hatch.step.label)

/** Sums of many hatches, and of what their limits speak. */
export interface RatesOfGroup {
  readonly label: string
  readonly rates: HatchRates
  readonly speaksOf?: string
}

/** Sums of many hatches, a row a step, season or way of hatching. */
export function ratesTable(groups: readonly RatesOfGroup[], head: string, caption: string): HatchTable | null {
  if (groups.length === 0) return null
  const speaking = groups.some(({speaksOf}) => speaksOf !== undefined)
  return {
    caption, notes: [], heads: [head, 'Settings', ...(speaking ? ['Speaks of'] : [])],
    rows: groups.map(({label, rates, speaksOf = ''}) => ({head: {text: label, link: null}, words: [[String(rates.settings)], ...(speaking ? [speaksOf.split(' ')] : [])], counts: counts(rates), rates: rateCells(rates)})),
  }
}

/** Eggs of each setting by what became of them; null when none can be drawn. */
export function hatchFigure(groups: readonly {readonly label: string; readonly rates: HatchRates}[], of: {readonly id: string; readonly name: string; readonly head: string; readonly what: string; readonly rows?: string}): Figure | null {
  const rows = groups.flatMap(({label, rates}): readonly HatchRow[] => {
    const {eggs, hatched, clear} = rates
    if (eggs === null || eggs === 0 || hatched === null) return []
    const dead = rates.deadInGerm === null && rates.deadInShell === null ? null : (rates.deadInGerm ?? 0) + (rates.deadInShell ?? 0)
    return hatched + (clear ?? 0) + (dead ?? 0) > eggs ? [] : [{label, eggs, hatched, clear, dead}]
  })
  if (!hasRows(rows)) return null
  const someUntold = rows.some(row => untold(row) > 0)
  return {
    kind: 'figure', id: of.id, name: of.name, head: of.head, title: `What became of the eggs, ${of.what}`,
    caption: `What became of the eggs, ${of.what}. Bars are as long as the eggs were many; at the right, hatched of eggs set.`,
    description: `Hatched of eggs set: ${listWords(rows.map(row => `${row.label} ${ofWords(row.hatched, row.eggs)}`))}.`, spec: hatchResults(rows),
    table: {
      columns: [{head: of.rows ?? 'Setting'}, {head: 'Eggs', number: true}, {head: 'Hatched', number: true}, {head: 'Clear', number: true}, {head: 'Dead', number: true}, ...(someUntold ? [{head: 'Not told', number: true}] : [])],
      rows: rows.map((row): readonly Cell[] => [row.label, String(row.eggs), String(row.hatched), count(row.clear), count(row.dead), ...(someUntold ? [String(untold(row))] : [])]),
    },
  }
}
