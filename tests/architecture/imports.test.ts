/** The map of rooms in DEVELOPERS.md, held against the imports of every file in src/. */
import {posix} from 'node:path'
import {describe, expect, it} from 'vitest'
import {filesBelow, importsOf} from './source-files.ts'

/** Each room and the rooms to its left that it may lean on. The order is the way of the records through the house. */
const ROOMS: Readonly<Record<string, readonly string[]>> = {
  statistics: [],
  pedigree: [],
  heredity: ['statistics', 'pedigree'],
  records: [],
  logbook: ['records', 'pedigree', 'heredity'],
  findings: ['statistics', 'pedigree', 'heredity', 'records', 'logbook'],
  charts: ['statistics', 'pedigree', 'heredity', 'records', 'logbook', 'findings'],
  pages: ['statistics', 'pedigree', 'heredity', 'records', 'logbook', 'findings', 'charts'],
  site: ['records', 'logbook', 'findings', 'charts', 'pages'],
  commands: ['statistics', 'pedigree', 'heredity', 'records', 'logbook', 'findings', 'charts', 'pages', 'site'],
  'cli.ts': ['records', 'findings', 'commands'],
}

const roomOf = (file: string) => file.split('/')[1] ?? ''

interface Import {
  readonly from: string
  readonly to: string
}

/** The imports between files of the project. */
function imports(files: readonly string[], read: (file: string) => readonly string[]): Import[] {
  return files.flatMap(from =>
    read(from).filter(name => name.startsWith('.')).map(name => ({from, to: posix.join(posix.dirname(from), name)})))
}

const wrongWay = (all: readonly Import[]) =>
  all.filter(({from, to}) => {
    const [here, there] = [roomOf(from), roomOf(to)]
    return here !== there && !(ROOMS[here] ?? []).includes(there)
  }).map(({from, to}) => `${from} must not lean on ${to}`)

/** One loop of files that import each other in a ring, or none. */
function loop(all: readonly Import[]): string[] {
  const next = new Map<string, string[]>()
  for (const {from, to} of all) next.set(from, [...(next.get(from) ?? []), to])
  const done = new Set<string>()
  const way: string[] = []
  const visit = (file: string): string[] => {
    if (way.includes(file)) return [...way.slice(way.indexOf(file)), file]
    if (done.has(file)) return []
    way.push(file)
    for (const to of next.get(file) ?? []) {
      const found = visit(to)
      if (found.length > 0) return found
    }
    way.pop()
    done.add(file)
    return []
  }
  for (const file of next.keys()) {
    const found = visit(file)
    if (found.length > 0) return found
  }
  return []
}

const files = filesBelow('src').filter(file => file.endsWith('.ts'))
const all = imports(files, importsOf)

describe('imports of src/', () => {
  it('stand in a room that has a place in the order', () => {
    expect([...new Set(files.map(roomOf))].filter(room => !(room in ROOMS))).toEqual([])
  })

  it('point left only', () => {
    expect(wrongWay(all)).toEqual([])
  })

  it('name files that are there, with their ending', () => {
    expect(all.filter(({to}) => !files.includes(to)).map(({from, to}) => `${from} names ${to}`)).toEqual([])
  })

  it('never run in a ring', () => {
    expect(loop(all)).toEqual([])
  })

  it('of the numerics and the records name no file reading, no network and no running of other programs', () => {
    const outside = new Set(['node:fs', 'node:fs/promises', 'node:http', 'node:https', 'node:net', 'node:child_process', 'fs', 'fs/promises'])
    const found = files.flatMap(file => importsOf(file).filter(name => outside.has(name)).map(name => `${file} uses ${name}`))
    expect(found.filter(line => !MAY_TOUCH_FILES.test(line))).toEqual([])
  })
})

/** The only files that may see the disk (and, in commands, the loopback server; in two of the site, an installed Chromium). */
const MAY_TOUCH_FILES = /^src\/(?:commands\/|cli\.ts|site\/(?:own-files|write|replace|assets|templates|photos|find-chromium|chromium-pipe)[^/]*\.ts|records\/(?:disk-)?folder\.ts)/

describe('the check itself', () => {
  it('sees an import that points right', () => {
    expect(wrongWay([{from: 'src/findings/shares.ts', to: 'src/site/write.ts'}])).toEqual(['src/findings/shares.ts must not lean on src/site/write.ts'])
    expect(wrongWay([{from: 'src/pedigree/order.ts', to: 'src/statistics/mean.ts'}])).toHaveLength(1)
  })

  it('sees a ring', () => {
    expect(loop([{from: 'a', to: 'b'}, {from: 'b', to: 'c'}, {from: 'c', to: 'b'}])).toEqual(['b', 'c', 'b'])
  })

  it('reads type imports, re-exports and imports at run time, and no comments', () => {
    const text = "import type {A} from './a.ts'\nexport {b} from './b.ts'\nconst c = await import('./c.ts')\n// import './d.ts'\nexport const e = [c]\n"
    expect(importsOf('x.ts', text)).toEqual(['./a.ts', './b.ts', './c.ts'])
  })
})
