import {dirname, join} from 'node:path/posix'
import {beforeAll, describe, expect, it} from 'vitest'
import {study} from '../../src/findings/study.ts'
import type {Logbook} from '../../src/logbook/book.ts'
import {compose} from '../../src/pages/compose.ts'
import type {Composed} from '../../src/pages/compose.ts'
import {renderSite} from '../../src/site/render.ts'
import {readTemplates} from '../../src/site/templates-folder.ts'
import {bird, hatch, logbook, score, smallBook, stay, strainStep, weekOld, comb, date, looks, holm, pen} from './small-logbook.ts'

interface Built {
  readonly composed: Composed
  /** the matter of a page in words: tags, styles and scripts taken out */
  readonly words: (path: string) => string
  readonly html: ReadonlyMap<string, string>
  readonly files: ReadonlySet<string>
}

async function build(book: Logbook): Promise<Built> {
  const composed = compose(study(book))
  const site = new Map(await renderSite({...composed, photos: {pictures: new Map(), files: new Map()}, templates: readTemplates('no-folder').files}))
  const html = new Map([...site].filter((entry): entry is [string, string] => entry[0].endsWith('.html') && typeof entry[1] === 'string'))
  const words = (path: string): string =>
    (html.get(path) ?? `no page ${path}`).replace(/<(style|script)[\s\S]*?<\/\1>/g, '').replace(/<[^>]+>/g, ' ').replace(/&[a-z#0-9]+;/g, ' ').replace(/\s+/g, ' ')
  return {composed, words, html, files: new Set(site.keys())}
}

/** Links that lead nowhere: to no file, or to no place on a page. */
function deadLinks({html, files}: Built): readonly string[] {
  return [...html].flatMap(([page, text]) => [...text.matchAll(/ href=(?:"([^"]+)"|([^\s>]+))/g)].flatMap(([, quoted, bare]) => {
    const address = quoted ?? bare ?? ''
    if (/^(https?|mailto):/.test(address)) return []
    const [path = '', place] = decodeURI(address).split('#')
    const to = path === '' ? page : join(dirname(page), path)
    const there = files.has(to) && (place === undefined || [` id="${place}"`, ` id=${place} `, ` id=${place}>`].some(written => (html.get(to) ?? '').includes(written)))
    return there ? [] : [`${page} → ${address}`]
  }))
}

const empty = (): Logbook => logbook('2024-02-01', {traits: [], strains: []})

describe.each([['four birds and no hatch', weekOld], ['nothing at all', empty], ['two seasons', smallBook]] as const)('the site of %s', (_, book) => {
  let built: Built
  beforeAll(async () => {
    built = await build(book())
  }, 60_000)

  it('prints no NaN, undefined, object or template mark', () => {
    const spoilt = [...built.html.keys()].filter(path => !['problems.html', 'record-formats.html'].includes(path) && /NaN|undefined|\[object|Infinity|\{\{|\}\}/.test(built.words(path)))
    expect(spoilt).toEqual([])
  })
  it('links to what is there', () => expect(deadLinks(built)).toEqual([]))
  it('has one page a path', () => expect(new Set(built.composed.pages.map(page => page.path.toLowerCase())).size).toBe(built.composed.pages.length))
  it('lists the main pages', () => expect(built.composed.frame.contents.map(entry => entry.title)).toEqual(expect.arrayContaining(['Home', 'Ladder', 'Birds', 'Pens', 'Hatches', 'Traits', 'Downloads'])))
  it('composes the same twice', () => expect(JSON.stringify(compose(study(book())).pages.map(page => page.path))).toBe(JSON.stringify(built.composed.pages.map(page => page.path))))
})

describe('a project one week old', () => {
  let built: Built
  beforeAll(async () => {
    built = await build(weekOld())
  }, 60_000)

  it('is told kindly where it stands', () => {
    expect(built.words('index.html')).toContain('Four founders and no hatch so far: the breed begins with the first cross.')
    expect(built.words('hatches.html')).toContain('No eggs have been set yet.')
    expect(built.words('traits/comb.html')).toContain('None scored yet in any step of the ladder.')
  })
  it('says of every step that it is not reached', () => expect(built.words('steps/F1.html')).toContain('Nothing has hatched in F1 so far.'))
  it('begins the pedigree with the founder', () => expect(built.words('birds/H-1.html')).toContain('No parents are on record: the pedigree begins here.'))
  it('draws no chart', () => expect([...built.files].filter(path => path.startsWith('charts/'))).toEqual([]))
})

describe('two seasons', () => {
  let built: Built
  beforeAll(async () => {
    built = await build(smallBook())
  }, 60_000)

  it('gives the true-bred rate with count and limits, and what was counted apart', () => {
    // counted by hand in the book: eight banded chicks and a tally of three, all pea; one lost chick whose only score was struck; two never listed
    expect(built.words('steps/F1.html')).toContain('11 of 11 (100.0%, 74.1 to 100.0) showed every required trait that they were old enough and of the sex to show.')
    expect(built.words('steps/F1.html')).toContain('Counted apart: 1 chick not fully scored and 2 hatched but not listed.')
    expect(built.words('steps/F2.html')).toContain('4 of 6')
  })
  it('explains a male changed in mid-season', () => {
    expect(built.words('pens/2024-A.html')).toContain('H-1 was taken out on 15 March 2024. Hens may keep a male’s sperm, here reckoned at 21 days, so eggs laid up to 5 April 2024 may still be his.')
    expect(built.words('pens/2024-A.html')).toContain('Intended: F1, and so it came.')
  })
  it('shows candidates for a parent with their chances', () => expect(built.words('birds/24-003.html')).toMatch(/H-1 70\.0%, H-3 30\.0%/))
  it('tells a mis-sexed bird plainly', () => {
    expect(built.words('birds/24-008.html')).toContain('Sexed wrongly at first.')
    expect(built.words('birds/24-008.html')).toContain('found to be female, not male as taken before: laid')
  })
  it('shows a struck score with its reason, and a score that was overruled', () => {
    expect(built.words('birds/24-009.html')).toContain('struck out: too early')
    expect(built.words('birds/25-002.html')).toContain('a later score says single, and that one counts')
    expect(built.words('traits/comb.html')).toContain('1 of 1 repeated scoring')
  })
  it('counts chicks without bands and those of which nothing is written', () =>
    expect(built.words('hatches/2024-01.html')).toContain('Of 14 chicks hatched, 9 are banded, 3 listed without a band, and of 2 nothing is written.'))
  it('says why birds were kept and left', () => {
    expect(built.words('birds/24-001.html')).toContain('Kept: for breeding, best of his hatch.')
    expect(built.words('birds/24-002.html')).toContain('Left: culled, narrow.')
  })
  it('lets no script of a keeper through', () => expect(built.html.get('birds/24-003.html')).not.toContain('alert(1)'))
  it('holds a bird against the standard', () => {
    expect(built.html.get('birds/24-003.html')).toContain('Inside what is allowed')
    expect(built.words('birds/24-003.html')).toContain('1.84 kg 1.90 kg, 10% either side')
  })
  it('says what cannot be said', () => expect(built.words('hatches/2025-01.html')).toContain('Not counted'))
})

describe('a large flock', () => {
  it('lists birds step by step on pages of their own, and only the breeders on the index', () => {
    const founders = Array.from({length: 1300}, (_, index) => bird(`B-${index}`, index % 2 ? 'female' : 'male', {looks: looks(score(comb, 'pea', {on: date('2024-01-05')})), step: strainStep(holm)}))
    const [first] = founders
    const book = logbook('2024-02-12', {birds: founders, pens: first ? [pen('2024-A', 2024, {males: [stay(first)], from: date('2024-02-01')})] : [], hatches: [hatch('2024-01', {set: date('2024-02-02'), eggs: 10})]})
    const {pages} = compose(study(book))
    expect(pages.filter(page => page.template === 'birds-by-step').map(page => page.path)).toEqual(['birds/by-step/Holm-White.html', 'birds/by-step/Holm-White-2.html', 'birds/by-step/Holm-White-3.html'])
    const index = pages.find(page => page.template === 'birds')
    expect(index?.view).toMatchObject({groups: [{title: 'Breeding', table: {rows: [{band: 'B-0'}]}}]})
  })
})
