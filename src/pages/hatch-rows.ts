/** Hatch results as table rows and as a chart: eggs, fertile, hatched and the three rates with their limits. */
import {hasRows} from '../charts/chart-spec.ts'
import {hatchResults} from '../charts/hatch-results.ts'
import type {HatchRow} from '../charts/hatch-results.ts'
import type {CannotSay, Share} from '../findings/estimate.ts'
import type {HatchRates, HatchResult} from '../findings/hatch-results.ts'
import type {Hatch} from '../logbook/book.ts'
import {dateWords} from './dates.ts'
import {cannotSay} from './estimate-words.ts'
import {hatchPath} from './links.ts'
import {limits, listWords, NOTHING, ofWords, percent} from './numbers.ts'
import type {Cell, Figure, Table} from './page.ts'

const count = (number: number | null): string => (number === null ? NOTHING : String(number))

/** `81.0 (71.3 to 87.9)`, or why it cannot be said. */
export const rateCell = (share: Share | CannotSay): string => (share.kind === 'cannot-say' ? cannotSay(share) : `${percent(share.value)} (${limits(share.interval)})`)

/** Where the eggs came from: pens, or a strain bought in. */
export function fromWords(hatch: Hatch): string {
  if (hatch.pens.length > 0) return hatch.pens.map(({pen}) => pen.id).join(', ')
  return hatch.strain ? `bought, ${hatch.strain.name}` : 'not recorded'
}

export const hatchedOn = (hatch: Hatch): string => (hatch.on ? dateWords(hatch.on) : hatch.set ? `set ${dateWords(hatch.set)}` : 'not recorded')

const COLUMNS: Table['columns'] = [
  {head: 'Eggs', number: true}, {head: 'Fertile', number: true}, {head: 'Hatched', number: true}, {head: 'Fertility, %', number: true},
  {head: 'Hatch of fertile, %', number: true}, {head: 'Hatch of set, %', number: true},
]

const rateCells = (rates: HatchRates): readonly Cell[] => [
  count(rates.eggs), count(rates.fertile), count(rates.hatched), rateCell(rates.fertility), rateCell(rates.hatchOfFertile), rateCell(rates.hatchOfSet),
]

export function hatchTable(results: readonly HatchResult[], caption: string): Table | null {
  if (results.length === 0) return null
  return {
    caption, columns: [{head: 'Hatch'}, {head: 'Hatched'}, {head: 'From'}, {head: 'Step'}, ...COLUMNS],
    rows: results.map((result): readonly Cell[] => [
      {text: result.hatch.id, link: hatchPath(result.hatch)}, hatchedOn(result.hatch), fromWords(result.hatch), stepOf(result.hatch), ...rateCells(result),
    ]),
  }
}

const stepOf = (hatch: Hatch): string => (hatch.step.kind === 'strain' ? hatch.strain?.name ?? hatch.step.strains[0]?.name ?? 'strain' : hatch.step.label)

/** Sums of many hatches, a row a season, pen or step. */
export function ratesTable(groups: readonly {readonly label: Cell; readonly rates: HatchRates}[], head: string, caption: string): Table | null {
  if (groups.length === 0) return null
  return {
    caption, columns: [{head}, {head: 'Settings', number: true}, ...COLUMNS],
    rows: groups.map(({label, rates}): readonly Cell[] => [label, String(rates.settings), ...rateCells(rates)]),
  }
}

/** Eggs of each setting by what became of them; null when none can be drawn. */
export function hatchFigure(groups: readonly {readonly label: string; readonly rates: HatchRates}[], of: {readonly id: string; readonly name: string; readonly head: string; readonly what: string}): Figure | null {
  const rows = groups.flatMap(({label, rates}): readonly HatchRow[] => {
    const {eggs, hatched, clear} = rates
    if (eggs === null || eggs === 0 || hatched === null) return []
    const dead = rates.deadInGerm === null && rates.deadInShell === null ? null : (rates.deadInGerm ?? 0) + (rates.deadInShell ?? 0)
    return hatched + (clear ?? 0) + (dead ?? 0) > eggs ? [] : [{label, eggs, hatched, clear, dead}]
  })
  if (!hasRows(rows)) return null
  return {
    kind: 'figure', id: of.id, name: of.name, head: of.head, title: `What became of the eggs, ${of.what}`,
    caption: `What became of the eggs, ${of.what}. Bars are as long as the eggs were many; at the right, hatched of eggs set.`,
    description: `Hatched of eggs set: ${listWords(rows.map(row => `${row.label} ${ofWords(row.hatched, row.eggs)}`))}.`, spec: hatchResults(rows),
    table: {
      columns: [{head: 'Setting'}, {head: 'Eggs', number: true}, {head: 'Hatched', number: true}, {head: 'Clear', number: true}, {head: 'Dead', number: true}],
      rows: rows.map((row): readonly Cell[] => [row.label, String(row.eggs), String(row.hatched), count(row.clear), count(row.dead)]),
    },
  }
}
