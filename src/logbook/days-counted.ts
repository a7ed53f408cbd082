/** Which days an egg sheet speaks of: the eggs of each row were laid on some days, and of the days between rows nothing may be known. */
import type {Day} from '../records/dates.ts'
import type {EggCount} from './book.ts'

/** The eggs of some days in a row. */
export interface CountedDays {
  readonly from: Day
  readonly to: Day
  readonly eggs: number
  /** as the sheet says; null where it says nothing */
  readonly hens: number | null
  /** what so many of them weighed together */
  readonly weight: {readonly grams: number; readonly eggs: number} | null
}

export interface DaysCounted {
  /** oldest first, no two over one day */
  readonly rows: readonly CountedDays[]
  /** days between the first counted and the last that no row speaks of */
  readonly missing: number
  /** eggs of rows whose days cannot be told */
  readonly unclear: number
}

/**
 * Over which days were these eggs laid?
 *
 * A row speaks of the days written for it; of the whole month or year where no day is named; else of as many days as lie between most rows of the sheet (one, where it
 * is kept from day to day; seven, where on Saturdays), and never reaches back to the row before. Where more days than those lie before it, nobody counted on them: they
 * are missing, neither eggs nor hens of theirs are in any rate. But a row of more eggs than so many hens can have laid in the sheet's usual days was gathered over the whole gap.
 * Of a sheet with one row and no days written nothing can be told unless its hens can have laid the eggs in one day. Several rows of a day are added up.
 *
 * @param counts of one pen, or of one hen, in any order
 * @param hensOn how many hens there were on a day, where the sheet does not say
 */
export function daysCounted(counts: readonly EggCount[], hensOn: (day: Day) => number): DaysCounted {
  const sheet = togetherByDay(counts), usual = usualStep(sheet)
  const rows: CountedDays[] = []
  let unclear = 0, missing = 0
  for (const row of sheet) {
    const before = rows.at(-1)?.to ?? -Infinity
    const most = row.hens ?? hensOn(row.to)
    const from = Math.max(before + 1, row.from ?? firstDay(row, before, usual, most) ?? Infinity)
    if (from > row.to) {
      unclear += row.eggs
      continue
    }
    if (before > -Infinity) missing += from - before - 1
    rows.push({from, to: row.to, eggs: row.eggs, hens: row.hens, weight: row.weight})
  }
  return {rows, missing, unclear}
}

type Row = Omit<CountedDays, 'from'> & {readonly from: Day | null}

function firstDay({to, eggs}: Row, before: Day, usual: number | null, hens: number): Day | null {
  // an egg laid late on the day before is gathered with the next
  const fits = (days: number) => hens === 0 || eggs <= hens * (days + 1)
  const days = usual ?? 1
  if (fits(days)) return to - days + 1
  return before === -Infinity ? (usual === null ? null : to - days + 1) : before + 1
}

/** The commonest number of days from a row to the next that names one day alone, of several equally common the least; null where there is none. */
function usualStep(sheet: readonly Row[]): number | null {
  const counts = new Map<number, number>()
  sheet.forEach(({to, from}, place) => {
    const before = sheet[place - 1]
    if (before && from === null) counts.set(to - before.to, (counts.get(to - before.to) ?? 0) + 1)
  })
  return [...counts].sort(([a, often], [b, oftener]) => oftener - often || a - b)[0]?.[0] ?? null
}

function togetherByDay(counts: readonly EggCount[]): readonly Row[] {
  const rows = new Map<string, Row>()
  for (const {on, eggs, hens, days, weight} of counts) {
    const from = days !== undefined ? on.last - days + 1 : on.first < on.last ? on.first : null, key = `${on.last}`, other = rows.get(key)
    const weights = [weight, other?.weight].filter(each => each !== undefined && each !== null)
    rows.set(key, {
      from: from === null || other?.from === undefined || other.from === null ? from ?? other?.from ?? null : Math.min(from, other.from), to: on.last, eggs: eggs + (other?.eggs ?? 0),
      hens: hens === null ? other?.hens ?? null : Math.max(hens, other?.hens ?? 0),
      weight: weights.length === 0 ? null : {grams: weights.reduce((sum, {grams}) => sum + grams, 0), eggs: weights.reduce((sum, each) => sum + each.eggs, 0)},
    })
  }
  return [...rows.values()].sort((a, b) => a.to - b.to)
}
