/** Shows over the years: counts by year, and how high the birds stood, by class and year. */
import type {MeanPlace, ShowYears, TallyOfEntries, YearOfShows} from '../findings/show-years.ts'
import {NOTHING, rounded, sentence} from './numbers.ts'
import type {Cell, Table} from './page.ts'

export interface ShowYearsView {
  readonly years: Table
  readonly classes: Table | null
}

/** `0.68 of 12`, `3 only`: too few; nothing where none was placed. */
function placeCell({mean, placed}: MeanPlace): string {
  if (mean !== null) return `${rounded(mean, 2)} of ${placed}`
  return placed === 0 ? NOTHING : `${placed} only`
}

function pointsCell({points}: TallyOfEntries): string {
  if (points === null) return NOTHING
  const mark = (of: number): string => rounded(of, 1).replace(/\.0$/, '')
  return points.low === points.high ? mark(points.low) : `${mark(points.low)} to ${mark(points.high)}`
}

const count = (number: number): string => (number === 0 ? NOTHING : String(number))

function showsCell({shows, cancelled}: YearOfShows): string {
  const off = cancelled.length === 0 ? '' : `${cancelled.length} cancelled`
  return shows.length === 0 ? off : [String(shows.length), off].filter(part => part !== '').join(', ')
}

/** Newest first, as the list of shows above it. */
function yearsTable({years}: ShowYears): Table {
  const columns: readonly (readonly [head: string, cell: (year: YearOfShows) => string, always: boolean])[] = [
    ['Shows', showsCell, true], ['Entries', year => count(year.entries), true], ['Birds', year => count(year.birds), true], ['Firsts', year => count(year.firsts), true],
    ['Awards', year => count(year.awards), years.some(({awards}) => awards > 0)], ['Disqualified', year => count(year.disqualified), years.some(({disqualified}) => disqualified > 0)],
    ['Points', year => pointsCell(year), years.some(({points}) => points !== null)], ['Grades', year => year.grades.map(({grade, entries}) => `${entries} ${grade}`).join(', ') || NOTHING, years.some(({grades}) => grades.length > 0)],
  ]
  const shown = columns.filter(([, , always]) => always)
  return {
    columns: [{head: 'Year'}, ...shown.map(([head]) => (head === 'Grades' ? {head} : {head, number: true}))],
    rows: [...years].reverse().map((year): readonly Cell[] => [String(year.year), ...shown.map(([, cell]) => cell(year))]),
  }
}

function classesTable({years, classes, all}: ShowYears): Table | null {
  if (all.place.placed === 0) return null
  const held = years.filter(({place}) => place.placed > 0)
  const row = (name: string, of: TallyOfEntries, byYear: readonly MeanPlace[]): readonly Cell[] => [name, ...(held.length > 1 ? byYear.map(placeCell) : []), placeCell(of.place)]
  const none: MeanPlace = {placed: 0, mean: null, leftOut: 0}
  return {
    columns: [{head: 'Class'}, ...(held.length > 1 ? held.map(({year}) => ({head: String(year), number: true})) : []), {head: held.length > 1 ? 'All years' : String(held[0]?.year ?? ''), number: true}],
    rows: [
      ...classes.map(each => row(each.class === null ? 'No class' : sentence(each.class), each, held.map(({year}) => each.years.find(one => one.year === year)?.place ?? none))),
      ...(classes.length > 1 ? [row('All classes', all, held.map(({place}) => place))] : []),
    ],
  }
}

/** Null where no show is on record. */
export function showYearsView(years: ShowYears): ShowYearsView | null {
  return years.years.length === 0 ? null : {years: yearsTable(years), classes: classesTable(years)}
}
