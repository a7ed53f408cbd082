/** Whole sites as readers meet them, of the demo and of a project one week old: valid HTML, in a real browser from a folder on disk, on a phone, in the dark, on paper, without script. */
import {readFileSync} from 'node:fs'
import {createRequire} from 'node:module'
import {join} from 'node:path'
import {fileURLToPath, pathToFileURL} from 'node:url'
import {HtmlValidate} from 'html-validate'
import {chromium, type Browser, type BrowserContextOptions, type Page} from 'playwright-core'
import {afterAll, beforeAll, describe, expect, it} from 'vitest'
import {publish} from '../../src/commands/publish.ts'
import {listeningWorld} from '../folders/listening-world.ts'
import {temporaryFolder} from '../folders/temporary-folder.ts'
import {CHROMIUM_WORDS, findChromium} from './find-chromium.ts'
import {pagesOfEveryKind} from './page-kinds.ts'

/** Of the young project only what its empty places could spoil. */
const SITES = [
  {of: 'the demo', folder: fileURLToPath(new URL('../../content', import.meta.url)), thorough: true},
  {of: 'a project one week old', folder: fileURLToPath(new URL('../folders/week-old/records', import.meta.url)), thorough: false},
]
const path = findChromium()
const root = temporaryFolder('browser')

const MADE_FOR_PAPER = /^(?:standard|dossier|standard\/\d+)\.html$/

const BROWSER_CHECKS = {
  quiet: 'open from the disk with no error in the console and no request to any network',
  phone: 'fit a phone 360 px wide',
  light: 'have no finding of axe-core in the light',
  dark: 'have no finding of axe-core in the dark',
  script: 'say the same without JavaScript',
  paper: 'print on A4 and on Letter',
} as const

if (path === null) {
  for (const name of Object.values(BROWSER_CHECKS)) process.stdout.write(`skipped, since no Chromium is installed: pages of every kind ${name}\n`)
}

describe.each(SITES)('the site of $of', ({of, folder, thorough}) => {
  const site = join(root, of.replaceAll(' ', '-'))
  /** of every kind the page with the most on it, and that with the least */
  let fullest: string[] = []
  let pages: string[] = []

  beforeAll(async () => {
    const world = listeningWorld()
    const code = await publish({folder, to: site, asOf: undefined, quiet: true}, world)
    if (code !== 0) throw new Error(`${of} could not be published:\n${world.said.out}${world.said.err}`)
    const kinds = pagesOfEveryKind(site)
    fullest = kinds.map(({fullest: page}) => page)
    pages = [...new Set(kinds.flatMap(({fullest: most, barest: least}) => [most, least]))]
  }, 180_000)

  it('is valid HTML on pages of every kind', async () => {
    // end tags and quotes are left out where HTML lets one leave them out: src/site/slim-tags.ts
    const validator = new HtmlValidate({extends: ['html-validate:recommended'], rules: {'no-implicit-close': 'off', 'attr-quotes': 'off'}})
    const faults: string[] = []
    for (const page of pages) {
      const report = await validator.validateString(readFileSync(join(site, page), 'utf8'), page)
      for (const result of report.results) {
        faults.push(...result.messages.map(({line, column, ruleId, message}) => `${page}:${line}:${column} ${ruleId} ${message}`))
      }
    }
    expect(faults).toEqual([])
  }, 120_000)

  describe.skipIf(path === null)('pages of every kind', () => {
    let browser: Browser
    const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8')

    beforeAll(async () => {
      browser = await chromium.launch({executablePath: path ?? '', args: CHROMIUM_WORDS})
    })
    afterAll(async () => {
      await browser.close()
    })

    /** Opens every page in turn in one window and gathers what is found. */
    async function visit(names: readonly string[], options: BrowserContextOptions, look: (page: Page, name: string) => Promise<readonly string[]>): Promise<string[]> {
      const context = await browser.newContext(options)
      const page = await context.newPage()
      const found: string[] = []
      for (const name of names) {
        await page.goto(pathToFileURL(join(site, name)).href, {waitUntil: 'load'})
        found.push(...(await look(page, name)).map(what => `${name}: ${what}`))
      }
      await context.close()
      return found
    }

    it(BROWSER_CHECKS.quiet, async () => {
      const context = await browser.newContext()
      const page = await context.newPage()
      const found: string[] = []
      let name = ''
      page.on('console', message => {
        if (message.type() === 'error' || message.type() === 'warning') found.push(`${name}: ${message.text()}`)
      })
      page.on('pageerror', error => found.push(`${name}: ${error.message}`))
      page.on('requestfailed', request => found.push(`${name}: ${request.url()} failed`))
      page.on('request', request => {
        if (!/^(?:file|data|blob):/.test(request.url())) found.push(`${name}: asks for ${request.url()}`)
      })
      for (name of pages) await page.goto(pathToFileURL(join(site, name)).href, {waitUntil: 'load'})
      await context.close()
      expect(found).toEqual([])
    }, 600_000)

    it(BROWSER_CHECKS.phone, async () => {
      const found = await visit(pages, {viewport: {width: 360, height: 740}}, async page => {
        const width = await page.evaluate<number>('document.documentElement.scrollWidth')
        return width > 360 ? [`is ${width} px wide`] : []
      })
      expect(found).toEqual([])
    }, 600_000)

    const axeFinds = (colorScheme: 'light' | 'dark', rules: object) => visit(fullest, {colorScheme, viewport: {width: 1100, height: 900}}, async page => {
      await page.evaluate(axe)
      const results = await page.evaluate<{violations: {id: string; nodes: {target: string[]; failureSummary: string}[]}[]}>(`axe.run(document, ${JSON.stringify({...rules, resultTypes: ['violations']})})`)
      return results.violations.map(({id, nodes}) => `${id} at ${nodes[0]?.target.join(' ') ?? ''} (${nodes.length}) ${nodes[0]?.failureSummary ?? ''}`)
    })

    it(BROWSER_CHECKS.light, async () => {
      expect(await axeFinds('light', {})).toEqual([])
    }, 900_000)

    // only the colours differ in the dark
    if (thorough) it(BROWSER_CHECKS.dark, async () => {
      expect(await axeFinds('dark', {runOnly: {type: 'tag', values: ['cat.color']}})).toEqual([])
    }, 600_000)

    if (thorough) it(BROWSER_CHECKS.script, async () => {
      const words = async (page: Page) => (await page.locator('main').innerText()).replace(/\s+/g, ' ').trim()
      const first = new Map<string, string>()
      await visit(fullest, {}, async (page, name) => {
        first.set(name, await words(page))
        return []
      })
      const found = await visit(fullest, {javaScriptEnabled: false}, async (page, name) => {
        const text = await words(page)
        if (text === '') return ['is empty']
        const missing = text.split(/(?<=[.!?]) /).filter(sentence => sentence.length > 30 && !(first.get(name) ?? '').includes(sentence))
        return [...(await page.locator('h1').first().isVisible() ? [] : ['shows no heading']), ...missing.map(sentence => `hides with script: ${sentence}`)]
      })
      expect(found).toEqual([])
    }, 600_000)

    if (thorough) it(BROWSER_CHECKS.paper, async () => {
      // A4, the narrower sheet, less its margins of 32 mm; a browser shrinks a page by a third at most, and cuts off what is wider still
      const sheet = 672
      const found = await visit(pages, {viewport: {width: sheet, height: 960}}, async (page, name) => {
        await page.emulateMedia({media: 'print'})
        const width = await page.evaluate<number>('document.documentElement.scrollWidth')
        // what is made for paper is not shrunk
        return width > (MADE_FOR_PAPER.test(name) ? sheet : sheet * 1.5) ? [`is ${width} px wide, wider than the sheet`] : []
      })
      const page = await browser.newPage()
      for (const name of ['index.html', 'standard.html', 'dossier.html']) {
        await page.goto(pathToFileURL(join(site, name)).href, {waitUntil: 'load'})
        for (const format of ['A4', 'Letter'] as const) {
          const paper = (await page.pdf({format, preferCSSPageSize: false})).toString('latin1')
          if (!/\/Type\s*\/Page\b/.test(paper)) found.push(`${name}: gives no page on ${format}`)
        }
      }
      await page.close()
      expect(found).toEqual([])
    }, 600_000)
  })
})
