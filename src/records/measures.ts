/** The tables of `measures/`: the heading tells a weigh day, an egg record and a feed record apart. */
import {readEggRecord} from './egg-record.ts'
import {readFeedRecord} from './feed-record.ts'
import {misplacedTable} from './misplaced.ts'
import type {Note} from './problem.ts'
import type {EggRow, FeedRow, WeighRow} from './records.ts'
import {readTable} from './tables.ts'
import {isScoringDay, readWeighDay} from './weigh-day.ts'

export type MeasuresReading =
  | {readonly what: 'weighings'; readonly rows: readonly WeighRow[]}
  | {readonly what: 'eggCounts'; readonly rows: readonly EggRow[]}
  | {readonly what: 'feedings'; readonly rows: readonly FeedRow[]}

export function readMeasures(file: string, text: string, note: Note): MeasuresReading | null {
  const table = readTable(file, text, note)
  if (table === null) return null
  const has = (name: string) => table.columns.some(column => column.name === name)
  if (has('eggs')) return {what: 'eggCounts', rows: readEggRecord(file, table, note)}
  if (has('feed')) return {what: 'feedings', rows: readFeedRecord(file, table, note)}
  if (isScoringDay(table)) {
    note(misplacedTable(file, 'scores'))
    return null
  }
  return {what: 'weighings', rows: readWeighDay(file, table, note)}
}
