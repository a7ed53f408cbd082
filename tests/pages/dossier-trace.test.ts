/**
 * The demo's dossier read as a secretary would: every reference is followed to its entry, every entry to birds and files, and what the tables count is counted again
 * from the records, by a reading of their own that shares nothing with ours but the YAML parser.
 */
import {existsSync, readdirSync, readFileSync} from 'node:fs'
import {join} from 'node:path'
import {FAILSAFE_SCHEMA, load} from 'js-yaml'
import {defaultTreeAdapter as tree, parse, type DefaultTreeAdapterTypes} from 'parse5'
import {beforeAll, describe, expect, it} from 'vitest'
import {openBook} from '../../src/commands/open-book.ts'
import {progressIn} from '../../src/commands/progress.ts'
import {dossierPage} from '../../src/pages/dossier.ts'
import {siteFrame} from '../../src/pages/site-frame.ts'
import {renderSite} from '../../src/site/render.ts'
import {readTemplates} from '../../src/site/templates-folder.ts'
import {listeningWorld} from '../folders/listening-world.ts'

const ROOT = 'content'

type Written = Readonly<Record<string, unknown>>
const isWritten = (value: unknown): value is Written => typeof value === 'object' && value !== null && !Array.isArray(value)
const text = (value: unknown): string => (typeof value === 'string' ? value : '')
const list = (value: unknown): readonly Written[] => (Array.isArray(value) ? (value as readonly unknown[]).map(each => (isWritten(each) ? each : {band: each})) : [])

/** The front matter of every record of a folder, by the file's name. */
function records(folder: string): ReadonlyMap<string, Written> {
  return new Map(readdirSync(join(ROOT, folder)).filter(file => file.endsWith('.md')).map(file => {
    const [, front = ''] = readFileSync(join(ROOT, folder, file), 'utf8').split(/^---$/m), value = load(front, {schema: FAILSAFE_SCHEMA})
    return [file.replace(/\.md$/, ''), isWritten(value) ? value : {}]
  }))
}

const hatches = records('hatches'), pens = records('pens'), birdFiles = records('birds'), shows = records('shows')
const bandsOf = (record: Written): readonly string[] => [text(record.band), ...list(record.bands).map(({band}) => text(band))].filter(band => band !== '')
const chicksOf = (hatch: Written): readonly Written[] => list(hatch.chicks)
const everyBand = new Set([...[...hatches.values()].flatMap(chicksOf), ...birdFiles.values()].flatMap(bandsOf))

/** What stands behind a number. */
interface Entry {
  readonly id: string
  readonly of: string
  readonly words: string
  readonly bands: readonly string[]
  readonly unbanded: number
  readonly files: readonly {readonly file: string; readonly lines: readonly number[]}[]
}

const all = (node: DefaultTreeAdapterTypes.Node, holds: (element: DefaultTreeAdapterTypes.Element) => boolean): readonly DefaultTreeAdapterTypes.Element[] =>
  ('childNodes' in node ? node.childNodes.flatMap(child => [...(tree.isElementNode(child) && holds(child) ? [child] : []), ...all(child, holds)]) : [])
const named = (name: string) => (element: DefaultTreeAdapterTypes.Element): boolean => element.tagName === name
const attribute = (element: DefaultTreeAdapterTypes.Element, name: string): string => element.attrs.find(each => each.name === name)?.value ?? ''
const wordsIn = (node: DefaultTreeAdapterTypes.Node): string => (tree.isTextNode(node) ? node.value : 'childNodes' in node ? node.childNodes.map(wordsIn).join('') : '')
const plain = (node: DefaultTreeAdapterTypes.Node): string => wordsIn(node).replace(/\s+/g, ' ').trim()

/** `24-001 to 24-003, G-4` as four bands */
function bandsIn(words: string): readonly string[] {
  return words.split(', ').flatMap(each => {
    const [from = '', to] = each.split(' to ')
    if (to === undefined) return [from]
    const head = from.replace(/\d+$/, ''), first = Number(from.slice(head.length)), last = Number(to.slice(head.length))
    return Array.from({length: last - first + 1}, (_, index) => head + String(first + index).padStart(from.length - head.length, '0'))
  })
}

const RUN = /^\d+(?: to \d+)?(?: and \d+(?: to \d+)?)?$/
const linesIn = (words: string): readonly number[] => words.split(' and ').flatMap(each => each.split(' to ').map(Number))

function filesIn(words: string): Entry['files'] {
  return words.split('; ').filter(part => part !== '–' && !part.startsWith('page ') && !part.endsWith('a file each, by band')).flatMap(part => {
    const [, folder = '', names = part] = /^(\S+\/): (.*)$/.exec(part) ?? [], files: {file: string; lines: number[]}[] = []
    for (const piece of names.split(', ')) {
      if (/^and \d+ files? more$/.test(piece) || /\/ \(\d+ files?\)$/.test(piece) || / not named here$/.test(piece)) continue
      const [name = '', lines] = piece.split(/ lines? /)
      if (RUN.test(piece)) files.at(-1)?.lines.push(...linesIn(piece))
      else files.push({file: `${folder}${/\.(?:csv|md)$/.test(name) ? name : `${name}.md`}`, lines: lines === undefined ? [] : [...linesIn(lines)]})
    }
    return files
  })
}

let page: DefaultTreeAdapterTypes.Document, entries: ReadonlyMap<string, Entry>, tables: readonly {readonly number: number; readonly rows: readonly (readonly string[])[]; readonly heads: readonly string[]; readonly refs: readonly string[]}[]

beforeAll(async () => {
  const {findings} = openBook(ROOT, undefined, progressIn(listeningWorld(), true))
  if (!findings) throw new Error('the demo cannot be read')
  const dossier = dossierPage(findings)
  const files = new Map(await renderSite({pages: [dossier], downloads: [], frame: siteFrame(findings, [dossier]), photos: {pictures: new Map(), files: new Map()}, templates: readTemplates(null).files}))
  page = parse(String(files.get('dossier.html')))
  const behind = all(page, element => named('li')(element) && /^r\d+$/.test(attribute(element, 'id')))
  entries = new Map(behind.map(item => {
    const [head] = all(item, named('b')), [soft] = all(item, element => attribute(element, 'class') === 'soft')
    const of = head ? plain(head).replace(/^\[\d+\] |\.$/g, '') : '', records = soft ? plain(soft).replace(/\.$/, '') : '', middle = plain(item).slice(head ? plain(head).length : 0, records === '' ? undefined : -records.length - 1).trim().replace(/\.$/, '')
    const [, bands] = /^\d+ birds?: ([^;]*)/.exec(middle) ?? [], [, unbanded = '0'] = /(\d+) chicks? without a band$/.exec(middle) ?? []
    return [attribute(item, 'id'), {id: attribute(item, 'id'), of, words: plain(item), bands: bands === undefined ? [] : bandsIn(bands), unbanded: Number(unbanded), files: filesIn(records)}]
  }))
  tables = all(page, element => named('section')(element) || named('table')(element)).filter(named('table')).flatMap(table => {
    const label = labelOf(table)
    return label === null ? [] : [{
      number: label, heads: all(table, named('th')).filter(th => attribute(th, 'scope') !== 'row').map(plain),
      rows: all(table, named('tr')).map(row => all(row, cell => named('td')(cell) || (named('th')(cell) && attribute(cell, 'scope') === 'row')).map(plain)).filter(cells => cells.length > 0),
      refs: all(table, named('a')).map(link => attribute(link, 'href')).filter(href => href.startsWith('#r')).map(href => href.slice(1)),
    }]
  })
}, 120_000)

/** The number in the caption just before a table. */
function labelOf(table: DefaultTreeAdapterTypes.Element): number | null {
  const scroll = tree.getParentNode(table), inside = scroll && tree.isElementNode(scroll) && attribute(scroll, 'class') === 'scroll' ? scroll : table
  const siblings = tree.getParentNode(inside)?.childNodes ?? [], before = siblings.slice(0, siblings.indexOf(inside)).filter(tree.isElementNode).at(-1)
  const [, number] = /^Table (\d+)\./.exec(before ? plain(before) : '') ?? []
  return number === undefined ? null : Number(number)
}

const entryOf = (of: string): Entry => [...entries.values()].find(entry => entry.of === of) ?? missing(of)
function missing(of: string): never {
  throw new Error(`no entry ${of}`)
}
const tableOf = (title: RegExp): (typeof tables)[number] => tables.find(({heads}) => title.test(heads.join(' '))) ?? missing(String(title))
const cell = (table: (typeof tables)[number], row: string, head: string): number => Number(table.rows.find(([first]) => first === row)?.[table.heads.indexOf(head)])

describe('the references of the demo’s dossier', () => {
  it('lead to an entry each, and every entry is led to, in the order they are read', () => {
    const links = all(page, named('a')).map(link => ({href: attribute(link, 'href'), words: plain(link)})).filter(({words}) => /^\[\d+\]$/.test(words))
    for (const {href, words} of links) expect(entries.get(href.slice(1))?.words.startsWith(`${words} `), `${words} ${href}`).toBe(true)
    const first = [...new Set(links.map(({href}) => href.slice(1)))]
    expect(first).toEqual([...entries.keys()])
    expect(first).toEqual(first.map((_, index) => `r${index + 1}`))
  })

  it('have something behind them: bands of birds in the book, and files that are there, with lines that are there', () => {
    for (const {words, bands, unbanded, files} of entries.values()) {
      expect(bands.length + unbanded + files.length, words).toBeGreaterThan(0)
      for (const band of bands) expect(everyBand.has(band), `${band} in ${words}`).toBe(true)
      const [, said] = /\. (\d+) birds?:/.exec(words) ?? []
      if (said !== undefined) expect(new Set(bands).size, words).toBe(Number(said))
      for (const {file, lines} of files) {
        expect(existsSync(join(ROOT, file)), `${file} in ${words}`).toBe(true)
        if (lines.length > 0) expect(Math.max(...lines), `${file} in ${words}`).toBeLessThanOrEqual(readFileSync(join(ROOT, file), 'utf8').trimEnd().split('\n').length)
      }
    }
  })

  it('are called by the table they stand in; tables are numbered as they stand, and each requirement has one', () => {
    expect(tables.map(({number}) => number)).toEqual(tables.map((_, index) => index + 1))
    for (const {number, refs} of tables) for (const ref of refs) expect(entries.get(ref)?.of).toMatch(new RegExp(`^Table ${number}, `))
    const evidence = all(page, element => named('ol')(element) && attribute(element, 'class') === 'evidence').flatMap(ol => all(ol, element => named('li')(element) && all(element, named('h3')).length > 0))
    for (const item of evidence) expect(plain(item)).toMatch(/\[\d+\]/)
    for (const {of} of entries.values()) expect(of).not.toMatch(/\d{4}-\d{2}-\d{2}/)
  })
})

describe('what the tables of the demo’s dossier count', () => {
  const hatched = (files: Entry['files']): number => files.reduce((sum, {file}) => sum + Number(hatches.get(file.replace(/^hatches\/|\.md$/g, ''))?.hatched ?? 0), 0)
  const hatchFiles = ({files}: Entry): Entry['files'] => files.filter(({file}) => file.startsWith('hatches/'))
  const leaving = (band: string): string => {
    // two birds may have worn one spiral in turn: a bird is found by its file or its latest band alone
    const own = [...birdFiles.values()].filter(record => text(record.band) === band || list(record.bands).map(({band: worn}) => text(worn)).at(-1) === band), bands = new Set([band, ...own.flatMap(record => [text(record.band), text(record['same-as'])])])
    const told = [...[...hatches.values()].flatMap(chicksOf), ...birdFiles.values()].filter(record => bands.has(text(record.band))).map(({left}) => text(left))
    return told.find(left => left !== '') ?? ''
  }

  it('of every step: the chicks hatched are the birds and the unbanded behind them, and what the hatches say', () => {
    const table = tableOf(/Hatched Scored Kept/)
    for (const [step = ''] of table.rows) {
      const entry = entryOf(`Table ${table.number}, ${step}`)
      expect(cell(table, step, 'Hatched'), step).toBe(entry.bands.length + entry.unbanded)
      expect(cell(table, step, 'Hatched'), step).toBe(hatched(hatchFiles(entry)))
    }
    expect(table.rows).toHaveLength(8)
  })

  it('of losses: those gone are the birds and the unbanded behind them, by how each left', () => {
    const table = tableOf(/Died Culled/), ways: readonly (readonly [string, RegExp])[] = [['Died', / died/], ['Culled', / culled/], ['Lost or taken', / (?:lost|taken)/], ['Sold, given or lent', / (?:sold|given|lent)/]]
    for (const [step = ''] of table.rows) {
      const entry = entryOf(`Table ${table.number}, ${step}, gone`)
      const tallies = hatchFiles(entryOf(`Table ${tableOf(/Hatched Scored Kept/).number}, ${step}`)).flatMap(({file}) => list(hatches.get(file.replace(/^hatches\/|\.md$/g, ''))?.tallies))
      for (const [head, how] of ways) {
        const birds = entry.bands.filter(band => how.test(leaving(band))).length, unbanded = tallies.filter(({left}) => how.test(text(left))).reduce((sum, {chicks}) => sum + Number(chicks), 0)
        expect(cell(table, step, head), `${step} ${head}`).toBe(birds + unbanded)
      }
      expect(ways.reduce((sum, [head]) => sum + cell(table, step, head), 0), step).toBe(entry.bands.length + entry.unbanded)
    }
  })

  it('of eggs: settings, eggs and chicks are those of the hatches behind each season, and none set aside is among them', () => {
    const table = tableOf(/Settings Eggs/)
    const eggsOf = ({eggs}: Written): number => (isWritten(eggs) ? Object.values(eggs).map(Number).reduce((sum, count) => sum + count, 0) : Number(eggs))
    for (const [season = ''] of table.rows) {
      const files = entryOf(`Table ${table.number}, ${season}`).files, own = files.map(({file}) => hatches.get(file.replace(/^hatches\/|\.md$/g, '')) ?? missing(file))
      expect(cell(table, season, 'Settings')).toBe(own.length)
      expect(cell(table, season, 'Eggs')).toBe(own.reduce((sum, hatch) => sum + eggsOf(hatch), 0))
      expect(cell(table, season, 'Hatched')).toBe(hatched(files))
      for (const hatch of own) expect(hatch).not.toHaveProperty('set-aside')
    }
  })

  it('of crosses: the birds behind a pen are those written in it', () => {
    const table = tableOf(/Pen Males Females/), now = (band: string): string => [...birdFiles.values()].find(record => bandsOf(record).includes(band) && Array.isArray(record.bands))?.bands === undefined ? band : list([...birdFiles.values()].find(record => bandsOf(record).includes(band))?.bands).map(({band: worn}) => text(worn)).at(-1) ?? band
    for (const [id = ''] of table.rows) {
      const pen = pens.get(id) ?? missing(id), males = isWritten(pen.males) ? Object.keys(pen.males) : list(pen.males).map(({band}) => text(band))
      expect([...entryOf(`Table ${table.number}, pen ${id}`).bands].sort(), id).toEqual([...males, ...list(pen.females).map(({band}) => text(band))].map(now).sort())
    }
  })

  it('of shows: the birds behind a show are those entered', () => {
    const told = [...entries.values()].filter(({of}) => of.startsWith('Show: '))
    expect(told).toHaveLength(shows.size)
    for (const {files, bands, of} of told) {
      const [file] = files, show = shows.get(file?.file.replace(/^shows\/|\.md$/g, '') ?? '') ?? missing(of)
      expect([...bands].sort(), of).toEqual([...new Set(list(show.entries).map(({bird}) => text(bird)))].sort())
    }
  })

  it('of struck scores: every line behind them is struck, and no struck line is left out', () => {
    const table = tableOf(/Why struck/), lines = (files: Entry['files']): readonly string[] => files.flatMap(({file, lines: on}) => (on.length === 2 ? Array.from({length: (on[1] ?? 0) - (on[0] ?? 0) + 1}, (_, index) => (on[0] ?? 0) + index) : on).map(line => `${file}:${line}`))
    const behind = table.refs.flatMap(ref => lines(entries.get(ref)?.files ?? []))
    const struck = readdirSync(join(ROOT, 'scores')).flatMap(file => {
      const [head = '', ...rows] = readFileSync(join(ROOT, 'scores', file), 'utf8').trimEnd().split('\n')
      return head.endsWith(',struck') ? rows.flatMap((row, index) => (row.endsWith(',') ? [] : [`scores/${file}:${index + 2}`])) : []
    })
    expect([...behind].sort()).toEqual(struck.sort())
  })
})
