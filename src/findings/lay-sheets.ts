import {isAlive} from '../logbook/alive.ts'
import type {Bird, EggCount, Logbook, Pen} from '../logbook/book.ts'
import {daysCounted, type CountedDays} from '../logbook/days-counted.ts'
import {daysInSeason} from '../logbook/laying.ts'
import {yearOf, type Day} from '../records/dates.ts'
import {grouped} from './grouped.ts'

/** What the egg record of one pen, or of one hen in one year, adds up to. */
export interface LaySheet {
  /** null: of one hen */
  readonly pen: Pen | null
  readonly bird: Bird | null
  /** the pen's season, else the year */
  readonly season: number
  /** hens it speaks of; those of the pen's record that were there on a counted day */
  readonly hens: readonly Bird[]
  /** first and last day counted */
  readonly from: Day
  readonly to: Day
  /** days counted, and days between them of which nothing is written, or no hen was there */
  readonly days: number
  readonly missing: number
  /** eggs of rows whose days cannot be told, and of days without a hen: in no rate */
  readonly unclear: number
  readonly eggs: number
  /** hens alive each counted day, added up */
  readonly henDays: number
  /** on the first counted day */
  readonly hensAtStart: number
  /** counted days on which the sheet names another number of hens than the pen's record */
  readonly otherHens: number
  readonly rows: readonly SheetRow[]
}

export interface SheetRow extends CountedDays {
  /** hens alive each day of it, added up */
  readonly henDays: number
}

/** The egg sheets, pens first, in the order of season and name. A pen or hen without a day that can be told has none. */
export function laySheets(book: Logbook): readonly LaySheet[] {
  const ofPens = [...grouped(book.eggCounts, ({pen}) => pen ?? undefined)].flatMap(([pen, counts]) => sheetOf({pen, bird: null, season: pen.season}, counts))
  const ofHens = [...grouped(book.eggCounts, ({bird, on}) => (bird ? `${bird.id}\n${yearOf(on.first)}` : undefined)).values()].flatMap(counts => {
    const [first] = counts
    return first?.bird ? sheetOf({pen: null, bird: first.bird, season: yearOf(first.on.first)}, counts) : []
  })
  const inTurn = (sheets: readonly LaySheet[]) => [...sheets].sort((a, b) => a.season - b.season || (nameOf(a) < nameOf(b) ? -1 : 1))
  return [...inTurn(ofPens), ...inTurn(ofHens)]
}

const nameOf = ({pen, bird}: Pick<LaySheet, 'pen' | 'bird'>): string => pen?.id ?? bird?.band ?? ''

function sheetOf(of: Pick<LaySheet, 'pen' | 'bird' | 'season'>, counts: readonly EggCount[]): LaySheet[] {
  const hensOn = hensByDay(of), {rows, unclear} = daysCounted(counts, day => hensOn(day).length)
  const told = rows.map((row): SheetRow => ({...row, henDays: henDaysOf(row, hensOn)}))
  const counted = told.filter(({henDays}) => henDays > 0), [first] = counted, last = counted.at(-1)
  if (!first || !last) return []
  const sum = (of: (row: SheetRow) => number) => counted.reduce((total, row) => total + of(row), 0)
  const daysOf = ({from, to}: SheetRow) => to - from + 1, days = sum(daysOf)
  return [{
    ...of, hens: [...new Set(counted.flatMap(({from, to}) => [...hensOn(from), ...hensOn(to)]))], from: first.from, to: last.to, days, missing: last.to - first.from + 1 - days,
    unclear: unclear + told.reduce((total, {eggs, henDays}) => total + (henDays === 0 ? eggs : 0), 0),
    eggs: sum(({eggs}) => eggs), henDays: sum(({henDays}) => henDays), hensAtStart: first.hens ?? hensOn(first.from).length,
    otherHens: of.pen === null || hensOn(first.from).length === 0 ? 0 : sum(row => (row.hens !== null && row.hens !== hensOn(row.to).length ? daysOf(row) : 0)), rows: counted,
  }]
}

/** The hens of a pen, or the hen, alive and there on a day. A hen moved to another pen is there no longer, and there from the day she came. */
function hensByDay({pen, bird}: Pick<LaySheet, 'pen' | 'bird'>): (day: Day) => readonly Bird[] {
  if (pen === null) return day => (bird && isAlive(bird, day) ? [bird] : [])
  // a hen that went and came back on one day has two stays, and is one hen
  const stays = [...grouped(pen.females.filter(({bird: hen}) => hen.sex !== 'male'), stay => stay.bird)].map(([hen, own]) => ({hen, spans: own.map(stay => daysInSeason(pen, stay))}))
  return day => stays.filter(({hen, spans}) => isAlive(hen, day) && spans.some(({from, to}) => from <= day && day <= to)).map(({hen}) => hen)
}

function henDaysOf({from, to, hens}: CountedDays, hensOn: (day: Day) => readonly Bird[]): number {
  if (hens !== null) return hens * (to - from + 1)
  let sum = 0
  for (let day = from; day <= to; day++) sum += hensOn(day).length
  return sum
}
