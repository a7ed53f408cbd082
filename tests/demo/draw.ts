/**
 * Draws the demo's records: `node --import tsx tests/demo/draw.ts <folder>`.
 *
 * True genes are dropped down six seasons of matings, looked at by keepers who make mistakes, and written as records. The script owns the front
 * matter of pens, hatches and birds and the tables of measures and scores; what the keepers say below the front matter, and every other
 * record, is written by hand. A body that is already in the folder is kept, so drawing again changes nothing.
 */
import {existsSync, mkdirSync, readFileSync, writeFileSync} from 'node:fs'
import {dirname, join} from 'node:path'
import {fileURLToPath} from 'node:url'
import {genotype} from './genes.ts'
import {boxWeighing, eggSheets, feedSheets, grownSheets, weighSheets} from './measures.ts'
import {birdRecord, hatchRecord, otherBirds, penRecord} from './records.ts'
import {autumnSheets, brassyCock, earlyCombs, pointsSheet, scoringSheets, shellSheets, yellowAgain} from './scorings.ts'
import {SEED} from './seed.ts'
import {drawSeasons} from './seasons.ts'

/** Every drawn file: its path in the folder of records, and its text (of Markdown records the front matter). */
export function drawnFiles(seed = SEED): Map<string, string> {
  const {flock, choices} = drawSeasons(seed)
  const files = new Map<string, string>()
  for (const pen of flock.pens.values()) files.set(`pens/${pen.id}.md`, penRecord(pen))
  for (const hatch of flock.hatches.values()) files.set(`hatches/${hatch.plan.id}.md`, hatchRecord(flock, hatch, choices))
  for (const bird of flock.birds.values()) {
    const record = birdRecord(flock, bird, choices)
    if (record !== null) files.set(`birds/${bird.id}.md`, record)
  }
  for (const [band, record] of otherBirds()) files.set(`birds/${band}.md`, record)
  for (const tables of [
    weighSheets(flock), grownSheets(flock, choices), boxWeighing(flock), eggSheets(flock), feedSheets(flock),
    scoringSheets(flock), autumnSheets(flock, choices), earlyCombs(flock), brassyCock(flock), yellowAgain(flock), shellSheets(flock, choices), pointsSheet(),
  ]) for (const [name, text] of tables) files.set(name, text)
  return files
}

/** The true genotypes, for those who want to know how well hidden alleles can be found out. */
export function truth(seed = SEED): string {
  const {flock} = drawSeasons(seed)
  const lines = [...flock.birds.values()].map(bird => `  "${bird.id}": "${genotype(bird.genes)}"`)
  return `{\n${lines.join(',\n')}\n}\n`
}

/** The front matter of a drawn record and the body that stands below it, if the folder has one. */
export function withBody(drawn: string, there: string | null): string {
  const body = there === null ? null : /^---\n[\s\S]*?\n---\n([\s\S]*)$/.exec(there)?.[1]
  return drawn + (body ?? '')
}

function write(folder: string): void {
  for (const [name, text] of drawnFiles()) {
    const path = join(folder, name)
    mkdirSync(dirname(path), {recursive: true})
    writeFileSync(path, name.endsWith('.md') ? withBody(text, existsSync(path) ? readFileSync(path, 'utf8') : null) : text)
  }
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const folder = process.argv[2]
  if (folder === undefined) throw new Error('say where to: node --import tsx tests/demo/draw.ts content')
  write(folder)
  writeFileSync(fileURLToPath(new URL('truth.json', import.meta.url)), truth())
}
