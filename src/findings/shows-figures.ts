import type {ShowEntry} from '../logbook/book.ts'
import type {Spot} from '../records/problem.ts'
import type {FigureColumn, FiguresTable} from './figures.ts'
import {grouped} from './grouped.ts'
import type {JudgeAgreement} from './judge-agreement.ts'
import {recordPlaces} from './record-places.ts'
import type {RemarksByClause} from './remarks-by-clause.ts'
import type {SheetsCompared} from './sheets-compared.ts'
import {relativePlace} from './show-years.ts'
import type {Findings} from './study.ts'

const NAMES = [
  'what', 'show', 'date', 'class', 'bird', 'place', 'of', 'shared', 'relative_place', 'award', 'points', 'grade', 'disqualified', 'judge', 'draft', 'remark', 'clauses', 'clauses_by',
  'mark', 'against', 'value', 'low', 'high', 'next_low', 'next_high', 'p', 'p_corrected', 'least_p', 'draws', 'pairs', 'same', 'other_way', 'held', 'left_out', 'birds', 'records',
] as const
type Row = Partial<Record<(typeof NAMES)[number], string | number | null>>

const COUNTS: ReadonlySet<string> = new Set(['place', 'of', 'draft', 'draws', 'pairs', 'same', 'other_way', 'held', 'left_out']), MEASURES: ReadonlySet<string> = new Set(['relative_place', 'points', 'value', 'low', 'high', 'next_low', 'next_high', 'p', 'p_corrected', 'least_p'])
const COLUMNS = NAMES.map((name): FigureColumn => ({name, as: COUNTS.has(name) ? 'count' : MEASURES.has(name) ? 'measure' : 'text'}))

/**
 * One row an entry, oldest first; one a show that was officially cancelled; then `order`: how far each judge put our birds in the order of our own marks (value: tau-b), and `points`: what two who scored the
 * same birds gave, heading by heading (value: mean of the first less the second). Marks are named by their trait, or `points`.
 */
export function showsTable(findings: Findings): FiguresTable {
  const {book, shows, judgeAgreement, sheetsCompared, remarksByClause} = findings, under = clausesOfEntries(remarksByClause), records = (spots: readonly Spot[]): string | null => recordPlaces(spots, book.tellableFiles)
  const rows: readonly Row[] = [
    ...shows.shows.flatMap(({show}) => show.entries.map((entry): Row => ({what: 'entry', show: show.id, date: show.on.text, ...entryCells(entry, under.get(entry) ?? []), records: records([entry.at])}))),
    ...shows.cancelled.map((show): Row => ({what: 'cancelled', show: show.id, date: show.on.text, remark: show.cancelled, judge: null, records: records([show.at])})),
    ...judgeAgreement.map((each): Row => ({...orderCells(each), records: records(each.classes.flatMap(({birds}) => birds.flatMap(({entry, at}) => [entry.at, at])))})),
    ...sheetsCompared.flatMap(each => each.headings.map((heading): Row => ({...pointsCells(each, heading), records: records(heading.differences.flatMap(({sheets}) => sheets.map(({score}) => score.at)))}))),
  ]
  return {columns: COLUMNS, rows: rows.map(row => NAMES.map(name => row[name] ?? null))}
}

type Under = readonly {readonly id: string; readonly by: 'keeper' | 'words'}[]

const clausesOfEntries = ({clauses}: RemarksByClause): ReadonlyMap<ShowEntry, Under> =>
  new Map([...grouped(clauses.flatMap(({id, remarks}) => remarks.map(({entry, by}) => ({entry, id, by}))), ({entry}) => entry)])

function entryCells(entry: ShowEntry, under: Under): Row {
  return {
    class: entry.class, bird: entry.bird.band, place: entry.place, of: entry.of, shared: entry.shared ? 'yes' : null, relative_place: relativePlace(entry), award: entry.award, points: entry.points, grade: entry.grade,
    disqualified: entry.disqualified ? 'yes' : null, judge: entry.judge, draft: entry.draft, remark: entry.remark, clauses: under.map(({id}) => id).join(' ') || null, clauses_by: under[0]?.by ?? null, birds: entry.bird.band,
  }
}

function orderCells({trait, judge, tau, classes, leftOut, corrected}: JudgeAgreement): Row {
  return {
    what: 'order', judge: judge ?? 'all', mark: trait?.id ?? 'points', value: tau.tau, p: tau.p, p_corrected: corrected, least_p: tau.leastP, draws: tau.draws, pairs: tau.pairs, same: tau.concordant, other_way: tau.discordant, held: tau.birds,
    left_out: leftOut.alone + leftOut.notPlaced + leftOut.unscored, birds: [...new Set(classes.flatMap(({birds}) => birds.map(({entry}) => entry.bird.band)))].join(' '),
  }
}

function pointsCells({names: [first, second], leftOut}: SheetsCompared, {heading, of, agreed, differences}: SheetsCompared['headings'][number]): Row {
  return {
    what: 'points', judge: first.join(', '), against: second.join(', '), mark: heading, of, value: agreed.mean, low: agreed.interval?.low ?? null, high: agreed.interval?.high ?? null, next_low: agreed.limits?.low ?? null, next_high: agreed.limits?.high ?? null, held: agreed.n,
    left_out: leftOut.noOther + leftOut.notNear, birds: [...new Set(differences.map(({bird}) => bird.band))].join(' '),
  }
}
