/** `pinfeather sheet`: what it writes, what it refuses, and that records accept what it asks. */
import {mkdirSync, readFileSync, writeFileSync} from 'node:fs'
import {dirname, join} from 'node:path'
import {HtmlValidate} from 'html-validate'
import {describe, expect, it} from 'vitest'
import {openBook} from '../../src/commands/open-book.ts'
import {sheet, type SheetOptions} from '../../src/commands/sheet.ts'
import {around, type Files} from '../logbook/around.ts'
import {listeningWorld} from '../folders/listening-world.ts'
import {temporaryFolder} from '../folders/temporary-folder.ts'

const root = temporaryFolder('sheet')
const HATCH = '---\npen: 2024-A\nset: 2024-03-02\neggs: 4\nhatched: 4\non: 2024-03-23\nchicks:\n  - {band: 24-901, sex: male}\n  - {band: 24-902, sex: female}\n  - {band: 24-903, sex: female, left: 2024-08-01 sold}\n  - {band: 24-904}\n---\n'
const DRAFT = '---\ndraft: 1\non: 2024-08-10\nscale: {Type and carriage: 60, Colour: 40}\nclauses:\n  general-characteristics-male/comb: {trait: comb, sex: both}\n  weights/cock: {trait: weight-20}\nweights: {cock: 2.4 kg}\n---\n## General characteristics, male\n\n**Comb.** Pea, low.\n'
const QUIET = {phase: () => undefined, at: () => undefined, end: () => undefined, timings: new Map<string, number>()}
let made = 0

function folderWith(files: Files): string {
  const folder = join(root, String(++made), 'records')
  for (const [file, text] of Object.entries(around(files))) {
    mkdirSync(dirname(join(folder, file)), {recursive: true})
    writeFileSync(join(folder, file), text)
  }
  return folder
}

async function asked(folder: string, more: Partial<SheetOptions> = {}) {
  const world = listeningWorld(), to = more.to ?? join(dirname(folder), more.csv ? 'sheet.csv' : 'sheet.html')
  const code = await sheet({folder, birds: undefined, csv: false, asOf: undefined, quiet: false, ...more, to}, world)
  return {code, out: world.said.out.replaceAll(root, 'R'), err: world.said.err.replaceAll(root, 'R'), to, text: () => readFileSync(to, 'utf8')}
}

const FILES: Files = {'hatches/2024-09.md': HATCH, 'standard/1.md': DRAFT}

describe('pinfeather sheet', () => {
  it('writes one file that needs no other: a row a bird that lives, columns for looks and for points, what may be written, the draft', async () => {
    const {code, out, text} = await asked(folderWith(FILES))
    expect([code, out]).toEqual([0, expect.stringMatching(/^Three birds, one look and two headings of points, by draft 1\. 1 more has left and has no row\. Open \S+sheet\.html in a browser/)])
    const html = text()
    expect(html).not.toMatch(/<(?:link|script)\b|src=|href=(?!"?#)/)
    expect([...html.matchAll(/<th scope=row[^>]*>([^<]*)/g)].map(([, band]) => band).filter(band => band !== '')).toEqual(['24-901', '24-902', '24-904', '24-901', '24-902', '24-904'])
    expect(html).toMatch(/<th scope=col>Comb<i>pea<\/i><small>pea or single; from 6 weeks<\/small>/)
    expect(html).toMatch(/Type and carriage<small>of 60<\/small>.*Colour<small>of 40<\/small>.*Total<small>of 100<\/small>/)
    expect(html).toContain('<b>Draft 1</b>')
    expect(html).toContain('Weight at 20 weeks: weigh and measure these on a sheet of their own')
    // headings on every printed sheet, laid across
    expect(html).toMatch(/@page across\{size:landscape/)
    const report = await new HtmlValidate({extends: ['html-validate:recommended'], rules: {'no-implicit-close': 'off', 'attr-quotes': 'off'}}).validateString(html, 'sheet.html')
    expect(report.results.flatMap(({messages}) => messages.map(({ruleId, message}) => `${ruleId} ${message}`))).toEqual([])
  })

  it('writes the same as a table, and the records take it as it was filled in', async () => {
    const folder = folderWith(FILES), {code, text, out} = await asked(folder, {csv: true})
    expect([code, text()]).toEqual([0, 'band,on,by,draft,comb,Type and carriage,Colour\n24-901,,,1,,,\n24-902,,,1,,,\n24-904,,,1,,,\n'])
    expect(out).toContain('put it into R/')
    mkdirSync(join(folder, 'scores'))
    writeFileSync(join(folder, 'scores/empty.csv'), text())
    writeFileSync(join(folder, 'scores/2024-10-02.csv'), text().replace('24-901,,,1,,,', '24-901,2024-10-02,inga,1,pea,52,34').replace('24-902,,,1,,,', '24-902,2024-10-02,inga,1,single,,30'))
    const {book, problems} = openBook(folder, undefined, QUIET)
    expect(problems).toEqual([])
    expect(book?.sheets.map(({bird, draft, headings}) => [bird.band, draft, headings.map(({points}) => points)])).toEqual([['24-901', 1, [52, 34]], ['24-902', 1, [30]]])
    expect(book?.birds.flatMap(bird => [...bird.looks].map(([{id}, {counted}]) => [bird.band, id, counted?.value, counted?.draft]))).toEqual([['24-901', 'comb', 'pea', 1], ['24-902', 'comb', 'single', 1]])
  })

  it.each([['living', 3], ['F1', 3], ['2024-A', 3], ['2024-09', 3], ['24-902,24-901', 2], ['24-904', 1]])('takes the birds of %s', async (birds, count) => {
    const {code, text} = await asked(folderWith(FILES), {birds, csv: true})
    expect([code, text().split('\n').length - 2]).toEqual([0, count])
  })

  it.each([
    ['F3', FILES, '“F3” is no step, pen or hatch, and no bird wears it; did you mean F1?'],
    ['24-901,24-999', FILES, 'No bird of the book wears 24-999'],
    ['24-903', FILES, 'The bird asked for has left'],
    ['F1', {'hatches/2024-09.md': HATCH}, 'No draft of the standard is on record'],
    ['F1', {...FILES, 'standard/1.md': '---\ndraft: 1\non: 2024-08-10\n---\n## Colour\n\nWhite.\n'}, 'Draft 1 has no clause with a trait and no scale of points'],
  ])('refuses %s where there is nothing to make', async (birds, files: Files, said) => {
    const {code, err} = await asked(folderWith(files), {birds})
    expect([code, err]).toEqual([2, expect.stringContaining(said)])
  })

  it('makes nothing of records at fault', async () => {
    const {code, err} = await asked(folderWith({...FILES, 'scores/2024.csv': 'band,on,comb\n24-901,2024-10-02,rose\n'}))
    expect([code, err]).toEqual([1, expect.stringContaining('No sheet was made.')])
  })

  it('writes over a sheet of its own, and over nothing else', async () => {
    const folder = folderWith(FILES), place = dirname(folder)
    expect((await asked(folder)).code).toBe(0)
    expect((await asked(folder)).code).toBe(0)
    expect((await asked(folder, {csv: true})).code).toBe(0)
    expect(await asked(folder, {csv: true})).toMatchObject({code: 2, err: expect.stringContaining('is there already, and might have been filled in') as string})
    writeFileSync(join(place, 'letter.html'), '<p>Dear friend,</p>')
    expect((await asked(folder, {to: join(place, 'letter.html')})).code).toBe(2)
    expect((await asked(folder, {to: place})).err).toContain('is a folder; name the file to write')
    expect((await asked(folder, {to: join(place, 'none', 'sheet.html')})).err).toContain('There is no folder')
  })

  it('is never laid among the records', async () => {
    const folder = folderWith(FILES)
    const {code, err} = await asked(folder, {csv: true, to: join(folder, 'sheet.csv')})
    expect([code, err]).toEqual([2, expect.stringContaining('lies among the records, where it would be read as one') as string])
  })
})
