/** The standard and the dossier on paper: as PDFs that are tagged and whole, and as a reader prints them from the page, on A4 and on Letter. */
import {mkdirSync, readFileSync, writeFileSync} from 'node:fs'
import {dirname, join} from 'node:path'
import {pathToFileURL} from 'node:url'
import {chromium} from 'playwright-core'
import {beforeAll, describe, expect, it} from 'vitest'
import {publish} from '../../src/commands/publish.ts'
import {dayOf} from '../../src/records/dates.ts'
import {pdfsOf} from '../../src/site/pdf.ts'
import {listeningWorld} from '../folders/listening-world.ts'
import {temporaryFolder} from '../folders/temporary-folder.ts'
import {objectsOf, sheetsOf} from '../site/pdf-words.ts'
import {CHROMIUM_WORDS, findChromium} from './find-chromium.ts'

const path = findChromium()
if (path === null) process.stdout.write('skipped, since no Chromium is installed: the standard and the dossier on paper\n')

const root = temporaryFolder('paper')
const CLAUSES = Array.from({length: 60}, (_, index) => `**Part ${index + 1}.** Of medium length, carried level, with ${index + 1} feathers of a sheen that is green and never purple.`).join('\n\n')
const draft = (number: number, tail: string) => `---
draft: ${number}
on: 2025-0${number}-14
title: The Skerry Fowl
weights: {cock: 3.2 kg, hen: 2.5 kg}
scale: {Type: 60, Colour: 40}
---
## Male

${CLAUSES}

## Faults

**Tail.** ${tail}
`

/** A project on Letter, for who prints on A4 has no need to say so. */
async function published() {
  const files = {
    'project.md': `---\nname: Skerry “Fowl” \\ <i>\naim: A fowl that stands wind and wet.\nbegun: 2024\nas-of: 2025-10-30\npaper: letter\n---\n`,
    'standard/1.md': draft(1, 'Carried high.'), 'standard/2.md': draft(2, 'Carried at more than 60 degrees.'),
  }
  for (const [file, text] of Object.entries(files)) {
    mkdirSync(join(root, 'content', dirname(file)), {recursive: true})
    writeFileSync(join(root, 'content', file), text)
  }
  const world = listeningWorld(), site = join(root, 'site')
  const code = await publish({folder: join(root, 'content'), to: site, asOf: undefined, pdf: true, quiet: true}, world)
  if (code !== 0 || world.said.err !== '') throw new Error(`could not be published:\n${world.said.err}`)
  const file = (name: string) => readFileSync(join(site, name))
  return {site, standard: file('standard.pdf'), dossier: file('dossier.pdf'), page: file('standard.html').toString(), dossierPage: file('dossier.html').toString()}
}

const BREED = 'Skerry “Fowl” \\ <i>', STANDARD = 'Proposed standard, draft 2', DOSSIER = 'Dossier of evidence, records to 30 October 2025'

/** Of every sheet its number, and what stands at its head. */
const headsOf = (sheets: readonly string[]) => sheets.map((words, index) => ({
  numbered: words.includes(`${index + 1} of ${sheets.length}`),
  heads: [BREED, STANDARD, DOSSIER].filter(head => words.slice(0, 120).includes(head)),
}))

const sheetSizes = (pdf: Uint8Array) => [...new Set([...objectsOf(pdf).values()].flatMap(object => /\/MediaBox \[0 0 (\d+)[\d.]* (\d+)/.exec(object)?.slice(1).join(' ') ?? []))]

describe.skipIf(path === null)('the standard and the dossier on paper', () => {
  let made: Awaited<ReturnType<typeof published>>

  beforeAll(async () => {
    made = await published()
  })

  it('are tagged, in a language, with a title that is shown and an outline of their headings', () => {
    for (const [pdf, title] of [[made.standard, `${STANDARD} · ${BREED}`], [made.dossier, `Dossier of evidence, 30 October 2025 · ${BREED}`]] as const) {
      const objects = [...objectsOf(pdf).values()], catalog = objects.find(object => object.includes('/Type /Catalog')) ?? ''
      expect(catalog).toMatch(/\/MarkInfo <<[^>]*\/Marked true/)
      expect(catalog).toMatch(/\/StructTreeRoot \d+ 0 R/)
      expect(catalog).toMatch(/\/Outlines \d+ 0 R/)
      expect(catalog).toContain('/Lang (en)')
      expect(catalog).toMatch(/\/DisplayDocTitle true/)
      const hex = /\/Title <FEFF([\dA-F]+)>\n\/Creator \(Pinfeather\)/.exec(objects[0] ?? '')?.[1] ?? ''
      expect(Buffer.from(hex, 'hex').swap16().toString('utf16le')).toBe(title)
      expect(objects.filter(object => /\/S \/H[12]\b/.test(object)).length).toBeGreaterThan(2)
      expect(objects.filter(object => /\/Title[\s\S]*\/Dest|\/Title[\s\S]*\/Parent/.test(object)).length).toBeGreaterThan(2)
    }
  })

  it('hold their faces as outlines, and none drawn glyph by glyph', () => {
    for (const pdf of [made.standard, made.dossier]) {
      const objects = [...objectsOf(pdf).values()]
      expect(objects.filter(object => /\/FontFile[23] \d+ 0 R/.test(object)).length).toBeGreaterThan(2)
      expect(objects.filter(object => object.includes('/Subtype /Type3'))).toEqual([])
    }
  })

  it('are on the sheet that the project names, and say the day of the records', () => {
    for (const pdf of [made.standard, made.dossier]) {
      expect(sheetSizes(pdf)).toEqual(['612 792'])
      expect(pdf.toString('latin1').match(/D:\d{14}/g)).toEqual(['D:20251030000000', 'D:20251030000000'])
    }
  })

  it('are the same to the byte whenever and after whatever they are made', async () => {
    const print = async (...pages: string[]) => {
      const printed = await pdfsOf(pages, {on: dayOf(2025, 10, 30) ?? 0, paper: 'a4'})
      return printed.kind === 'made' ? printed.pdfs.map(pdf => Buffer.from(pdf)) : []
    }
    const [alone] = await print(made.dossierPage), [, second] = await print(made.page, made.dossierPage)
    expect(alone && second?.equals(alone)).toBe(true)
    expect(alone && sheetSizes(alone)).toEqual(['595 841'])
  })

  it('are linked to from their pages', () => {
    expect(made.page).toMatch(/<a href="?standard\.pdf"?>as a PDF<\/a>/)
    expect(made.dossierPage).toMatch(/<a href="?dossier\.pdf"?>As a PDF<\/a>, which lies beside this file/)
    expect(sheetsOf(made.dossier).join('')).not.toContain('As a PDF')
  })

  it('have heads on every sheet but the first, and number each', () => {
    const [first, ...rest] = headsOf(sheetsOf(made.standard))
    expect(first).toEqual({numbered: true, heads: []})
    expect(rest.length).toBeGreaterThan(0)
    for (const sheet of rest) expect(sheet).toEqual({numbered: true, heads: [BREED, STANDARD]})
    const sheets = headsOf(sheetsOf(made.dossier)), enclosed = sheets.findIndex(({heads}) => heads.includes(STANDARD))
    expect(sheets[0]).toEqual({numbered: true, heads: []})
    expect(enclosed).toBeGreaterThan(1)
    for (const sheet of sheets.slice(1, enclosed)) expect(sheet).toEqual({numbered: true, heads: [BREED, DOSSIER]})
    for (const sheet of sheets.slice(enclosed)) expect(sheet).toEqual({numbered: true, heads: [BREED, STANDARD]})
  })

  it('have the same heads when a reader prints the pages', async () => {
    const browser = await chromium.launch({executablePath: path ?? '', args: CHROMIUM_WORDS})
    const page = await browser.newPage()
    for (const [name, head] of [['standard.html', STANDARD], ['standard/1.html', 'Proposed standard, draft 1'], ['dossier.html', DOSSIER]] as const) {
      await page.goto(pathToFileURL(join(made.site, name)).href, {waitUntil: 'load'})
      for (const format of ['A4', 'Letter'] as const) {
        const [first = '', second = ''] = sheetsOf(await page.pdf({format}))
        expect(first.slice(0, 120)).not.toContain(head)
        expect(second.slice(0, 120)).toContain(head)
        expect(second.slice(0, 120)).toContain(BREED)
        expect(second).toMatch(/2 of \d/)
      }
    }
    await browser.close()
  })
})
