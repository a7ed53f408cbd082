/**
 * Where the time goes: `npm run bench`, or with sizes of your own `npm run bench -- 500 2000`. Draws seeded books, publishes each cold in a
 * process of its own, and prints its phases beside the floor; then descent and heredity alone, on drawn pedigrees. Nothing is asserted: a slow machine is no fault.
 */
import {execFileSync} from 'node:child_process'
import {mkdtempSync, rmSync, statSync} from 'node:fs'
import {tmpdir} from 'node:os'
import {join} from 'node:path'
import {fileURLToPath} from 'node:url'
import {filesOf} from '../folders/files-of.ts'
import {drawBook, layDown} from './draw-book.ts'

/** What one publishing took. */
interface Measured {
  /** milliseconds by phase, in order; `start` is from the beginning of the process to the first word of the work */
  readonly phases: readonly (readonly [string, number])[]
  /** milliseconds that processors worked for it, all threads together; what is missing to the time taken was waited */
  readonly processor: number
  /** bytes */
  readonly peakMemory: number
}

const SEED = 20190211
const sizes = process.argv.slice(2).map(Number)
for (const size of sizes) if (!Number.isInteger(size) || size < 200) throw new RangeError('a size is a whole number of birds, 200 or more')

/** Room for what lives shortly, as the first line of `src/cli.ts` asks: a fifth less time. */
const AS_PUBLISHED = '--max-semi-space-size=64'
const here = (name: string) => fileURLToPath(new URL(name, import.meta.url))
const run = (script: string, ...words: string[]) =>
  execFileSync(process.execPath, [...(script.endsWith('.ts') ? ['--import', 'tsx'] : [AS_PUBLISHED]), here(script), ...words], {encoding: 'utf8', stdio: ['ignore', 'pipe', 'inherit'], maxBuffer: 1e8, cwd: here('../..')})
const sizeOf = (folder: string) => filesOf(folder).reduce((sum, path) => sum + statSync(join(folder, path)).size, 0)
const megabytes = (bytes: number) => `${(bytes / 1e6).toFixed(1)} MB`
const row = (name: string, milliseconds: number, note = '') => `  ${name.padEnd(14)}${(milliseconds / 1000).toFixed(2).padStart(8)} s${note === '' ? '' : `   ${note}`}\n`

/** What descent took: milliseconds for F of every bird and for a table of kinships, bytes at most. */
interface Descent {
  readonly inbreeding: number
  readonly kinship: number
  readonly peakMemory: number
}

function timeDescent(): void {
  const once = (birds: number, doubtful: number, living: number) => JSON.parse(run('descent-once.ts', String(birds), String(doubtful), String(living))) as Descent
  process.stdout.write('descent, twelve generations: F of every bird, and kinship of 500 living birds with each other\n')
  for (const birds of [10_000, 100_000]) {
    const certain = once(birds, 0, 500), doubtful = once(birds, 1 / 3, 500)
    process.stdout.write(
      row(`${birds} F`, certain.inbreeding, `at most ${megabytes(certain.peakMemory)} of memory`) + row('kinship', certain.kinship) +
      row('thirds', doubtful.inbreeding, `a third of the sires one of three: ${(doubtful.inbreeding / certain.inbreeding).toFixed(1)} times, at most ${megabytes(doubtful.peakMemory)}`) + row('kinship', doubtful.kinship),
    )
  }
}

/** What genotypes at one locus took: milliseconds of processor time, bytes at most; the share of birds whose figures are exact, and how the rest settled. */
interface Heredity {
  readonly processor: number
  readonly peakMemory: number
  readonly exact: number
  readonly sweeps: number
  readonly change: number
}

function timeHeredity(): void {
  process.stdout.write('\nheredity, twelve generations, one locus, four birds in five scored: genotypes of every bird, in processor time\n')
  for (const birds of [341, 10_000]) {
    for (const [name, doubtful] of [['certain', 0], ['thirds', 1 / 3]] as const) {
      const {processor, peakMemory, exact, sweeps, change} = JSON.parse(run('heredity-once.ts', String(birds), String(doubtful))) as Heredity
      process.stdout.write(row(`${birds} ${name}`, processor, `${Math.round(100 * exact)} % of the birds exact, ${sweeps} sweeps, the last changed ${change.toExponential(1)}; at most ${megabytes(peakMemory)}`))
    }
  }
}

const root = mkdtempSync(join(tmpdir(), 'pinfeather-bench-'))
try {
  for (const birds of sizes.length > 0 ? sizes : [1000, 10_000]) {
    const [records, site, floor] = [join(root, `${birds}-records`), join(root, `${birds}-site`), join(root, `${birds}-floor`)]
    layDown(records, drawBook(SEED, {birds}))
    const {phases, processor, peakMemory} = JSON.parse(run('publish-once.js', records, site).trim().split('\n').at(-1) ?? '') as Measured
    const all = phases.reduce((sum, [, time]) => sum + time, 0)
    const least = Number(run('floor-once.ts', records, site, floor))
    process.stdout.write(
      `${birds} birds: ${filesOf(records).length} files of records, ${megabytes(sizeOf(records))}; a site of ${filesOf(site).length} files, ${megabytes(sizeOf(site))}\n` +
      phases.map(([name, time]) => row(name, time, `${Math.round((100 * time) / all)} %`)).join('') +
      row('all', all, `${(processor / 1000).toFixed(2)} s of processor time, at most ${megabytes(peakMemory)} of memory`) +
      row('floor', least, 'reading the same records, writing the same bytes') + '\n',
    )
    for (const folder of [records, site, floor]) rmSync(folder, {recursive: true, force: true})
  }
  timeDescent()
  timeHeredity()
} finally {
  rmSync(root, {recursive: true, force: true})
}
