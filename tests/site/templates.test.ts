import {mkdirSync, mkdtempSync, rmSync, writeFileSync} from 'node:fs'
import {tmpdir} from 'node:os'
import {join} from 'node:path'
import {afterAll, beforeAll, describe, expect, it} from 'vitest'
import type {Page} from '../../src/pages/page.ts'
import {shareByStep} from '../../src/charts/share-by-step.ts'
import {addressOf, rootOf} from '../../src/site/links.ts'
import {readTemplates} from '../../src/site/templates-folder.ts'
import {atomFeed} from '../../src/site/feed.ts'
import {parseDate} from '../../src/records/dates.ts'
import {sampleInput, sampleSite, samplePage, textAt, wholeSite} from './sample-site.ts'

describe('addressOf(target, page)', () => {
  it('leads from any depth to any depth, with no server', () => {
    expect(addressOf('birds/24-031.html', 'index.html')).toBe('birds/24-031.html')
    expect(addressOf('index.html', 'birds/24-031.html')).toBe('../index.html')
    expect(addressOf('birds/24-031.html#pedigree', 'birds/by-step/BC1.html')).toBe('../../birds/24-031.html#pedigree')
    expect(addressOf('#weights', 'birds/24-031.html')).toBe('#weights')
    expect(addressOf('birds/24-031.html#pedigree', 'birds/22-004.html')).toBe('24-031.html#pedigree')
    expect(addressOf('birds/by-step/BC1.html', 'birds/22-004.html')).toBe('../birds/by-step/BC1.html')
    expect(addressOf('birds/å b.html', 'index.html')).toBe('birds/%C3%A5%20b.html')
    expect(rootOf('index.html')).toBe('')
  })

  it('leaves addresses on the web and throws for anything else', () => {
    expect(addressOf('https://example.org/', 'birds/x.html')).toBe('https://example.org/')
    for (const target of ['javascript:x', 'data:x', 'file:///x', '/birds.html']) expect(() => addressOf(target, 'index.html')).toThrow()
  })
})

describe('a page', () => {
  it('escapes what a view holds, and prints Markdown made safe', async () => {
    const html = textAt(await sampleSite({template: '<p>{{words}}</p>{{markdown body}}', view: {words: '<b>&"', body: '*calm* <script>x</script>'}}), 'page.html')
    expect(html).toContain('<p>&lt;b&gt;&amp;&quot;<p><em>calm</em>')
    expect(html).not.toContain('<script>x')
  })

  it('throws for a variable that its view does not have, naming page and template', async () => {
    await expect(sampleSite({template: '<p>{{wrods}}</p>', view: {words: ''}})).rejects.toThrow(/template pages\/sample\.hbs: "wrods" not defined .* \(page page\.html\)/)
  })

  it('throws for a helper and a template that do not exist', async () => {
    await expect(sampleSite({template: '{{shout words}}', view: {words: ''}})).rejects.toThrow(/shout/)
    await expect(wholeSite({...sampleInput(), pages: [{...samplePage({}), template: 'nowhere'}]})).rejects.toThrow(/wants the template pages\/nowhere\.hbs/)
  })

  it('has its breed in the title once, its section marked, a skip link and a way to all pages', async () => {
    const files = await sampleSite({template: '<h1>x</h1>', view: {}, path: 'birds/24-031.html', title: 'Hen 24-031', section: 'birds'})
    const html = textAt(files, 'birds/24-031.html')
    expect(html).toContain('<title>Hen 24-031 · Skerry Fowl</title>')
    expect(html).toContain('<a href=../birds.html aria-current=true>Birds</a>')
    expect(html).toContain('<a class=skip href=#matter>')
    expect(html).toContain('<a href=../index.html#contents>All pages</a>')
    expect(html).toContain('<link rel=stylesheet href=../style.css>')
    expect(html).not.toMatch(/ on\w+=|https?:\/\//)
  })

  it('that is a main one marks its own entry as this page and lists all pages at its foot', async () => {
    const html = textAt(await sampleSite({template: 'x', view: {}, path: 'birds.html', section: 'birds'}), 'birds.html')
    expect(html).toContain('<a href=birds.html aria-current=page>')
    expect(html).toContain('<a href=#contents>All pages</a>')
    expect(html).toContain('<a href=methods.html>Methods</a>')
  })
})

describe('a figure', () => {
  const figure = {
    kind: 'figure', id: 'figure-1', head: 'Figure 1.', caption: 'Pea combs.', title: 'Pea combs by step', description: '1 of 2 in F1.', name: 'combs',
    spec: shareByStep([{label: 'F1', count: 1, total: 2}]), table: {columns: [{head: 'Step'}, {head: 'Pea', number: true}], rows: [[{text: 'F1', link: 'steps/F1.html'}, {text: '1 of 2', link: 'steps/F1.html'}]]},
  }

  it('comes with caption, text alternative, table and a specification to download', async () => {
    const files = await sampleSite({template: '{{> figure deep.figure}}', view: {deep: {figure}}})
    const html = textAt(files, 'page.html')
    expect(html).toContain('<figcaption><b>Figure 1.</b> Pea combs.</figcaption>')
    expect(html).toContain('<desc id=figure-1-desc>1 of 2 in F1.</desc>')
    expect(html).toContain('<summary>Figure 1 as a table</summary>')
    expect(html).toContain('<table class=n2>')
    expect(html).toContain('<th scope=row><a class=id href=steps/F1.html>F1</a><td><a href=steps/F1.html>1 of 2</a>')
    const spec = textAt(files, 'charts/combs.vl.json')
    expect(JSON.parse(spec)).toHaveProperty('config.background', 'transparent')
    expect(spec).not.toContain('var(--')
  })

  it('may stand on two pages, but two figures may not share a name', async () => {
    const page = (path: string, own: object): Page => samplePage({path, view: {figure: own}, template: '{{> figure figure}}'})
    const input = sampleInput('{{> figure figure}}')
    expect((await wholeSite({...input, pages: [page('a.html', figure), page('b.html', {...figure})]})).size).toBeGreaterThan(2)
    const other = {...figure, spec: shareByStep([{label: 'F1', count: 2, total: 2}])}
    await expect(wholeSite({...input, pages: [page('a.html', figure), page('b.html', other)]})).rejects.toThrow(/charts\/combs\.vl\.json is claimed twice: by figure figure-1 of a\.html and by figure figure-1 of b\.html/)
  })
})

describe('the whole site', () => {
  it('throws when two pages claim one path, naming both, also where only capitals differ', async () => {
    const input = sampleInput('x')
    const pages = [samplePage({path: 'birds/a.html', title: 'One'}), samplePage({path: 'birds/A.html', title: 'Other'})]
    await expect(wholeSite({...input, pages})).rejects.toThrow(/claimed twice: by page “One” \(sample\) and by page “Other” \(sample\)/)
  })

  it('has a search index of the pages that want to be found', async () => {
    const input = sampleInput('x')
    const files = await wholeSite({...input, pages: [samplePage({search: {kind: 'hen', words: 'pea </script>'}}), samplePage({path: 'b.html'})]})
    expect(textAt(files, 'search-index.js')).toBe('window.pinfeatherIndex = [\n["A page","page.html","hen","pea </script>"]\n]\n')
  })

  it('does not say twice in the index what title and kind say', async () => {
    const files = await wholeSite({...sampleInput('x'), pages: [samplePage({title: 'Female 24-031', search: {kind: 'BC3 hen, hatched 2024', words: 'bird 24-031 female Peg Peg hatched'}})]})
    expect(textAt(files, 'search-index.js')).toContain('["Female 24-031","page.html","BC3 hen, hatched 2024","bird Peg"]')
  })

  it('that is one file leads nowhere outside itself, and its inner, web and mail links stay', async () => {
    const template = '<p><a class="soft" href="{{link "birds.html"}}">Birds</a> <a href="#matter">up</a></p>{{markdown body}}'
    const html = textAt(await sampleSite({template, view: {body: '[web](https://example.org/) [page](page.md)'}, selfContained: true}), 'page.html')
    expect([...html.matchAll(/ href=([^\s>]*)/g)].map(([, address]) => address).filter(address => !address?.startsWith('#'))).toEqual(['https://example.org/'])
    expect(html).toContain('<p>Birds <a href=#matter>up</a><p>')
    expect(html).not.toContain('<nav')
  })

  it('carries style, fonts and pictures inside a page that is one file', async () => {
    const input = sampleInput('{{> picture file="a.svg" alt="A hen"}}{{markdown body}}')
    const pictures = new Map([['a.svg', {path: 'photos/x.svg', width: 1, height: 1, small: null}]])
    const view = {body: '![again](photos/a.svg)'}
    const files = await wholeSite({...input, pages: [samplePage({path: 'in/one.html', selfContained: true, view})], photos: {pictures, files: new Map([['photos/x.svg', '<svg/>']])}})
    const html = textAt(files, 'in/one.html')
    expect([...html.matchAll(/src="([^"]*)"/g)].map(([, address]) => address)).toEqual(['data:image/svg+xml;base64,PHN2Zy8+', 'data:image/svg+xml;base64,PHN2Zy8+'])
    expect(html).toContain('data:font/woff2;base64,')
    expect(html).not.toMatch(/<link rel="?stylesheet|<script|url\("?fonts/)
  })

  it('publishes a drawing of ours only where a page asks for it', async () => {
    const without = await sampleSite({template: 'x', view: {}})
    const asked = await sampleSite({template: '<img src="{{link "drawings/hen.svg"}}" alt="">', view: {}})
    expect([without.has('drawings/hen.svg'), asked.has('drawings/hen.svg'), asked.has('drawings/cock.svg')]).toEqual([false, true, false])
  })
})

describe('readTemplates(own)', () => {
  let own = ''
  beforeAll(() => {
    own = mkdtempSync(join(tmpdir(), 'templates-'))
    mkdirSync(join(own, 'partials'))
    mkdirSync(join(own, 'page'))
    writeFileSync(join(own, 'partials', 'foot.hbs'), '<footer>our own foot</footer>')
    writeFileSync(join(own, 'partials', 'extra.hbs'), 'extra')
    writeFileSync(join(own, 'page', 'bird.hbs'), 'a slip in the folder')
    writeFileSync(join(own, 'style.css'), 'body { color: red }')
  })
  afterAll(() => rmSync(own, {recursive: true, force: true}))

  it('lays the project\'s own files over ours, one by one', async () => {
    const {files, own: used, strangers} = readTemplates(own)
    expect(used).toEqual(['partials/extra.hbs', 'partials/foot.hbs', 'style.css'])
    expect(strangers).toEqual(['page/bird.hbs'])
    expect(files.get('layout.hbs')).toBe(readTemplates(null).files.get('layout.hbs'))
    const site = await wholeSite({...sampleInput('{{> extra}}'), templates: new Map([...files, ['pages/sample.hbs', '{{> extra}}']])})
    expect(textAt(site, 'page.html')).toContain('<footer>our own foot</footer>')
    expect(textAt(site, 'page.html')).toContain('extra')
    expect(textAt(site, 'style.css')).toBe('body { color: red }')
  })

  it('needs no folder of the project\'s own', () => {
    expect(readTemplates(join(own, 'none')).own).toEqual([])
  })
})

describe('atomFeed(entries, site)', () => {
  const date = (text: string) => parseDate(text) ?? expect.fail(text)

  it('takes its dates from the records, newest first', () => {
    const feed = atomFeed([
      {title: 'Older', path: 'diary/a.html', on: date('2025-03'), summary: ''},
      {title: 'Draft 5 & more', path: 'standard/5.html', on: date('2025-10-14'), summary: 'The <comb>.'},
    ], {breed: 'Skerry Fowl', url: 'https://skerry.example/fowl'})
    expect(feed?.text).toContain('<updated>2025-10-14T00:00:00Z</updated>\n<author>')
    expect(feed?.text).toContain('<title>Draft 5 &amp; more</title>\n<id>https://skerry.example/fowl/standard/5.html</id>')
    expect(feed?.text).toContain('<updated>2025-03-01T00:00:00Z</updated>')
    expect(feed?.text.indexOf('Draft 5')).toBeLessThan(feed?.text.indexOf('Older') ?? 0)
  })

  it('is none when there is nothing to tell', () => {
    expect(atomFeed([], {breed: 'x', url: 'https://x.example/'})).toBeNull()
  })
})
