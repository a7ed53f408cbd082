/**
 * Every figure of drawn and untidied books twice: by `figures … --format csv`, and by the twin that reads the same files with none of the
 * project's code. They agree to 1e-9, and neither has a row that the other lacks.
 */
import {join} from 'node:path'
import {parse} from 'csv-parse/sync'
import {describe, expect, it} from 'vitest'
import {figures} from '../../src/commands/figures.ts'
import {layDown} from '../bench/draw-book.ts'
import {listeningWorld} from '../folders/listening-world.ts'
import {temporaryFolder} from '../folders/temporary-folder.ts'
import {plainFigures, type Row} from './plain-figures.ts'
import {untidyBook} from './untidy-book.ts'

const root = temporaryFolder('figures')
const BOOKS = [
  {seed: 11, size: {birds: 300, seasons: 8, chicksPerHatch: 14, hensPerPen: 6}},
  {seed: 22, size: {birds: 260, seasons: 7, chicksPerHatch: 6, hensPerPen: 6}},
  {seed: 33, size: {birds: 420, seasons: 9, chicksPerHatch: 26, hensPerPen: 8}},
  {seed: 44, size: {birds: 700, seasons: 6, chicksPerHatch: 12, hensPerPen: 6}},
] as const

type Cells = Readonly<Record<string, string>>

function asked(question: string, folder: string): Cells[] {
  const world = listeningWorld()
  const code = figures({question, folder, format: 'csv', asOf: undefined, quiet: true}, world)
  expect(code, `${world.said.out}${world.said.err}`).toBe(0)
  return parse<Cells>(world.said.out, {columns: true, skip_empty_lines: true})
}

/** Every way in which the cells differ from what the twin has found. */
function differences(cells: readonly Cells[], twin: readonly Row[], keys: readonly string[]): string[] {
  const keyOf = (row: Row | Cells) => keys.map(key => String(row[key] ?? '')).join(' | ')
  const theirs = new Map(cells.map(row => [keyOf(row), row]))
  const ours = new Set(twin.map(keyOf))
  const faults = [...theirs.keys()].filter(key => !ours.has(key)).map(key => `${key}: a row the twin does not have`)
  if (theirs.size !== cells.length) faults.push('a key stands in two rows')
  for (const row of twin) {
    const there = theirs.get(keyOf(row))
    if (there === undefined) {
      faults.push(`${keyOf(row)}: no such row, but ${JSON.stringify(row)}`)
      continue
    }
    for (const [column, value] of Object.entries(row)) {
      const cell = there[column]
      const same = value === null ? cell === '' : typeof value === 'string' ? cell === value : cell !== undefined && cell !== '' && Math.abs(Number(cell) - value) <= 1e-9 * Math.max(1, Math.abs(value))
      if (!same) faults.push(`${keyOf(row)}, ${column}: ${cell ?? 'no column'}, but the twin has ${value ?? 'nothing'}`)
    }
  }
  return faults
}

describe.each(BOOKS)('the book of seed $seed, $size.birds birds', ({seed, size}) => {
  const files = untidyBook(seed, size)
  const folder = join(root, String(seed))
  layDown(folder, files)
  const twin = plainFigures(files)

  it('gives the twin’s birds', () => {
    expect(differences(asked('birds', folder), twin.birds(), ['band'])).toEqual([])
  })

  it('gives the twin’s parents and their chances', () => {
    const read = (cell: string) => new Map(cell === '' ? [] : cell.split(' ').map(one => [one.split(':')[0] ?? '', Number(one.split(':')[1] ?? 1)] as const))
    const faults: string[] = []
    for (const row of asked('birds', folder)) {
      const pairs = twin.pairs().get(row.band ?? '') ?? []
      for (const side of ['sire', 'dam'] as const) {
        const chances = new Map<string, number>()
        for (const pair of pairs) {
          const who = pair[side]
          if (who !== null) chances.set(who, (chances.get(who) ?? 0) + pair.chance)
        }
        const cell = read(row[side] ?? '')
        const same = cell.size === chances.size && [...chances].every(([who, chance]) => Math.abs((cell.get(who) ?? 0) - chance) <= 1e-9)
        if (!same) faults.push(`${row.band ?? ''}, ${side}: ${row[side] ?? ''}, but the twin has ${[...chances].map(([who, chance]) => `${who}:${chance}`).join(' ')}`)
      }
    }
    expect(faults).toEqual([])
  })

  it('gives the twin’s shares', () => {
    expect(differences(asked('shares', folder), twin.shares(), ['step', 'trait', 'state', 'sex'])).toEqual([])
  })

  it('gives the twin’s spread', () => {
    expect(twin.spread().length).toBeGreaterThan(0)
    expect(differences(asked('spread', folder), twin.spread(), ['step', 'trait', 'sex'])).toEqual([])
  })

  it('gives the twin’s hatches', () => {
    expect(differences(asked('hatches', folder), twin.hatches(), ['hatch'])).toEqual([])
  })

  it('gives the twin’s shares of the strains', () => {
    const rows = twin.strains().map(({band, shares}): Row => ({band, 'holm-white': shares.get('holm-white') ?? 0, 'fell-buff': shares.get('fell-buff') ?? 0}))
    expect(differences(asked('strains', folder).filter(row => row.band !== ''), rows, ['band'])).toEqual([])
  })
})
