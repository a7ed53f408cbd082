/** The summaries of books of every shape: what they say is said of somebody, with its count, and no figure is none. */
import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {study} from '../../src/findings/study.ts'
import type {Logbook} from '../../src/logbook/book.ts'
import {summaryPages} from '../../src/pages/summaries.ts'
import type {SummaryView} from '../../src/pages/summary.ts'
import {renderSite} from '../../src/site/render.ts'
import {readTemplates} from '../../src/site/templates-folder.ts'
import {drawnBook} from '../findings/drawn-book.ts'
import {bookOfFamilies, F3, type} from '../findings/evenness-book.ts'
import {frame} from '../site/sample-site.ts'
import {shownBook} from './shown-logbook.ts'
import {bird, date, F1, F2, hatch, logbook, looks, parents, pen, score, smallBook, weekOld} from './small-logbook.ts'

/** The drawn books with F1 as F3, chicks by up to eight cocks, and grades. */
const familyBook: fc.Arbitrary<Logbook> = fc.tuple(drawnBook, fc.integer({min: 1, max: 8})).map(([book, families]) => {
  const cocks = Array.from({length: families}, (_, place) => bird(`C-${place}`, 'male')), [, hen] = book.birds
  let next = 0
  for (const each of [...book.birds.slice(2), ...book.hatches.flatMap(from => from.tallies)]) {
    const cock = cocks[next++ % families]
    if (each.step.kind !== 'strain' && cock) Object.assign(each, {step: each.step.label === 'F1' ? F3 : each.step, parentage: parents([[cock, 1]], hen ?? null), looks: new Map([...each.looks, ...looks(...(next % 3 === 0 ? [] : [score(type, 1 + (next % 10))]))])})
  }
  for (const from of book.hatches) if (from.step.label === 'F1') Object.assign(from, {step: F3})
  return {...book, birds: [...cocks, ...book.birds], traits: [...book.traits, type]}
})

/** Every text of a view, however deep. */
function* textsIn(value: unknown): Generator<string> {
  if (typeof value === 'string') yield value
  else if (typeof value === 'number' && !Number.isFinite(value)) yield 'NaN'
  else if (typeof value === 'object' && value !== null) for (const each of Object.values(value)) yield* textsIn(each)
}

const summaries = (book: Logbook) => summaryPages(study(book))
const viewsOf = (book: Logbook): readonly SummaryView[] => summaries(book).filter(({template}) => template === 'summary').map(({view}) => view as SummaryView)

/** What is wrong with a text: no number, an interval upside down or out of its range, a share without its count. */
function wrongIn(text: string): string | null {
  if (/NaN|undefined|Infinity|\bnull\b|\[object/.test(text)) return 'holds what is no word'
  for (const [whole, low = '', high = ''] of text.matchAll(/(−?\d+\.\d+)(?: to |–)(−?\d+\.\d+)/g)) if (Number(low.replace('−', '-')) > Number(high.replace('−', '-'))) return `${whole} is upside down`
  for (const [whole, share = ''] of text.matchAll(/(?<![\d.−+])(\d+\.\d)%(?! either)/g)) if (Number(share) > 100 && !text.includes('CV') && !text.includes('coefficient')) return `${whole} is no share`
  for (const [whole, count = '', total = ''] of text.matchAll(/(?<![\d.])(\d+) of (\d+)(?![\d.])/g)) if (Number(count) > Number(total)) return `${whole} is no share`
  return null
}

function faultsOf(book: Logbook): readonly string[] {
  const pages = summaries(book)
  const words = pages.flatMap(({path, view}) => [...textsIn(view)].flatMap(text => { const wrong = wrongIn(text); return wrong === null ? [] : [`${path}: ${wrong}: ${text}`] }))
  const uncounted = viewsOf(book).flatMap(({title, answer, sections}) => [answer.table, ...sections.map(({table}) => table)].flatMap(table => (table?.rows ?? []).flatMap(row => {
    const said = row.map(cell => (typeof cell === 'string' ? cell : cell.text)).join(' | ')
    return /\d\.\d%|\d\.\d \(/.test(said) && !/of \d+|\| \d+ \||\d (?:graded|birds?|hens?)\b/.test(said) ? [`${title}: no count in ${said}`] : []
  })))
  return [...words, ...uncounted]
}

describe('summaryPages(findings)', () => {
  it('says nothing that is no figure, no interval out of its range and no share without its count, whatever the book', () => {
    for (const book of [weekOld(), smallBook(), shownBook(), logbook('2024-01-01')]) expect(faultsOf(book)).toEqual([])
    fc.assert(fc.property(familyBook, book => {
      expect(faultsOf(book)).toEqual([])
    }), {numRuns: 12})
  })

  it('says what it can of three birds, of females alone, and of birds that weigh the same', () => {
    const three = bookOfFamilies([{step: F2, pea: 2, single: 1}]), alike = bookOfFamilies([{step: F2, grams: [2000, 2000, 2000, 2000, 2000, 2000]}, {step: F3, grams: [2000, 2000, 2000, 2000, 2000, 2000]}])
    const hens = bookOfFamilies([{step: F2, pea: 6, sex: 'female', grams: [1800, 1900, 1850, 1700, 1950, 1800]}])
    for (const book of [three, alike, hens]) expect(faultsOf(book)).toEqual([])
    expect(viewsOf(three)[0]?.lead).toBe('2 of 3 chicks of 2024 true in all they could show. Nothing to hold it against.')
    const strips = viewsOf(hens)[0]?.sections.find(({strips: found}) => found)?.strips
    expect(strips?.rows.map(({head}) => head)).toEqual(['6 pullets, 2024'])
  })

  it('says of a season without a hatch that there is none, and keeps what is to be done for the latest', () => {
    const book = bookOfFamilies([{step: F2, pea: 5}]), idle = {...book, pens: [pen('2025-A', 2025, {from: date('2025-02-01')})]}
    const [old, fresh] = viewsOf(idle)
    expect(fresh?.title).toBe('Season 2025')
    expect(fresh?.answer.said[0]?.head).toBe('Nothing hatched yet.')
    expect(fresh?.sections).toEqual([])
    expect(old?.rest.find(({title}) => title === 'What to do next')?.words).toEqual(['What is to be done now stands in the summary of season 2025.'])
  })

  it('keeps a step that is called like a year apart from the season', () => {
    const own = {...F2, label: '2024'}, book = bookOfFamilies([{step: own, pea: 5}])
    expect(summaries(book).map(({path}) => path)).toEqual(['summaries/2024.html', 'summaries/steps/2024.html', 'summaries.html'])
  })

  it('names keepers only with their consent', () => {
    const named = [...textsIn(viewsOf(shownBook()))].join(' ')
    for (const {name, consents} of shownBook().keepers) if (!consents) expect(named).not.toContain(name)
  })

  it('makes files that stand alone: no link that leads away, no script, no typeface, small, each with its head on every sheet', async () => {
    const findings = study(shownBook()), pages = summaryPages(findings)
    const files = new Map(await renderSite({pages, downloads: [], frame, photos: {pictures: new Map(), files: new Map()}, templates: readTemplates(null).files}))
    for (const {path, sheet} of pages.filter(({template}) => template === 'summary')) {
      const html = String(files.get(path))
      expect(html).not.toMatch(/<script|<link|url\(|@font-face|<a /)
      expect(html).toContain(`@top-left{content:"${sheet ?? ''}"`)
      expect(html.length).toBeLessThan(28_000)
      expect(/<style>[\s\S]*<\/style>/.exec(html)?.[0].length).toBeLessThan(10_500)
    }
    expect(String(files.get('summaries.html'))).toMatch(/Season by season[\s\S]*\d+ kB/)
  })
})

describe('a season against the one before', () => {
  it('compares the chicks mated inside the line of both, and says so', () => {
    const cock = bird('C', 'male'), chicks = (year: number, right: number, all: number) => {
      const from = hatch(`${year}-01`, {on: date(`${year}-03-01`), step: year === 2023 ? F1 : F2})
      return {from, birds: Array.from({length: all}, (_, place) => bird(`${year}-${place}`, 'male', {hatched: date(`${year}-03-01`), hatch: from, step: from.step, strain: null})), right}
    }
    const seasons = [chicks(2023, 3, 4), chicks(2024, 3, 6), chicks(2025, 6, 6)]
    const book = logbook('2025-10-30', {birds: [cock, ...seasons.flatMap(({birds}) => birds)], hatches: seasons.map(({from, birds}) => Object.assign(from, {chicks: birds, hatched: birds.length}))})
    const found = study(book).summaries.seasons
    expect(found.map(({name, before, inside}) => [name, before?.name ?? null, inside])).toEqual([['2023', null, false], ['2024', '2023', true], ['2025', '2024', true]])
    expect(found[1]?.change?.outside).toEqual(['2023'])
    expect(found[2]?.change?.outside).toEqual([])
    expect(found[0]?.asked).toEqual(['F1'])
    expect(viewsOf(bookOfFamilies([{step: F1, pea: 2, single: 1}]))[0]?.lead).toContain('2 of 3 chicks of 2024 (F1, a cross) true')
  })

  it('says whom it leaves aside', () => {
    const cross = hatch('2025-02', {on: date('2025-03-01'), step: F1}), line = hatch('2025-01', {on: date('2025-03-01'), step: F2})
    const chicksOf = (from: typeof cross, count: number) => Array.from({length: count}, (_, place) => bird(`${from.id}-${place}`, 'male', {hatched: date('2025-03-01'), hatch: from, step: from.step, strain: null}))
    const birds = [...chicksOf(cross, 3), ...chicksOf(line, 5)]
    for (const each of [cross, line]) Object.assign(each, {chicks: birds.filter(({hatch: from}) => from === each), hatched: 5})
    const [season] = study(logbook('2025-10-30', {birds, hatches: [line, cross]})).summaries.seasons
    expect(season?.asked).toEqual([F2.label])
    expect(season?.aside).toEqual([{step: F1.label, kind: F1.kind, chicks: 3}])
  })

  it('gives the limits of hatch of its tile in its table', () => {
    const tables = viewsOf(shownBook()).map(({stats, sections}) => [stats.find(({title}) => title === 'Hatched of eggs set')?.words.split(',')[0]?.replace(' to ', '–'), JSON.stringify(sections.find(({title}) => title === 'From egg to breeder')?.table?.rows.find(([head]) => head === 'Hatched of eggs'))])
    expect(tables.filter(([tile]) => tile !== undefined).length).toBeGreaterThan(0)
    for (const [tile, row] of tables) if (tile !== undefined) expect(row).toContain(`(${tile})`)
  })
})
