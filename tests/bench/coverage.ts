/**
 * Measures how often the house's intervals hold the truth, and writes the table that the methods page shows: `npm run coverage`, some minutes. What each row is made of stands in the
 * files of trials beside this one; the test of the table draws the first flocks of every row again.
 */
import {readFileSync, writeFileSync} from 'node:fs'
import {BREEDING_TRIALS} from './coverage-of-breeding.ts'
import {FAMILY_TRIALS} from './coverage-of-families.ts'
import {SHARE_TRIALS, SUMS} from './coverage-of-shares.ts'
import {SPREAD_TRIALS} from './coverage-of-spread.ts'
import {rowOf, rowOfSum} from './coverage-trial.ts'

const TABLE = new URL('../../src/statistics/measured-coverage.ts', import.meta.url), BEGIN = 'export const MEASURED_COVERAGE: readonly MeasuredCoverage[] = ['
const only = process.argv[2]
const wanted = <Each extends {readonly interval: string}>(all: readonly Each[]): readonly Each[] => all.filter(({interval}) => only === undefined || interval === only)

const lines = [...wanted(SUMS).map(rowOfSum), ...wanted([...SHARE_TRIALS, ...FAMILY_TRIALS, ...SPREAD_TRIALS, ...BREEDING_TRIALS]).map(rowOf)]
  .map(row => `  {interval: '${row.interval}', flock: '${row.flock}', held: ${row.held}, runs: ${row.runs}, without: ${row.without}, first: ${row.first}, least: ${row.least}},`)
process.stdout.write(`${lines.join('\n')}\n`)
if (only === undefined) writeFileSync(TABLE, `${readFileSync(TABLE, 'utf8').split(BEGIN)[0] ?? ''}${BEGIN}\n${lines.join('\n')}\n]\n`)
