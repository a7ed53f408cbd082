/** `pinfeather sheet`: a sheet to write on by hand on a scoring day, or the same as a table to fill in. */
import {readFileSync, writeFileSync} from 'node:fs'
import {dirname, join, relative, resolve} from 'node:path'
import {birdsOfGroup, birdsOfLatestStep, sheetToFill, type BirdsAsked} from '../findings/sheet-to-fill.ts'
import type {Findings} from '../findings/study.ts'
import type {Logbook} from '../logbook/book.ts'
import {csvOf} from '../pages/figures-file.ts'
import {counted, listWords, sentence} from '../pages/numbers.ts'
import {sheetTable, sheetToFillPage} from '../pages/sheet-to-fill.ts'
import {siteFrame} from '../pages/site-frame.ts'
import type {Page} from '../pages/page.ts'
import {near, orNear} from '../records/near.ts'
import type {Day} from '../records/dates.ts'
import {renderSite} from '../site/render.ts'
import {TemplateFault} from '../site/templates.ts'
import {readTemplates} from '../site/templates-folder.ts'
import {birdOf, noSuchBird} from './bird-of.ts'
import {openToAnswer} from './open-to-answer.ts'
import {folderRefusal, isFolder} from './records-folder.ts'
import type {ExitCode, World} from './world.ts'

export interface SheetOptions {
  readonly folder: string
  /** `living`, a step, a pen, a hatch, or bands with commas between; undefined: the latest step */
  readonly birds: string | undefined
  /** the file to write; undefined: `sheet.html`, or `sheet.csv` */
  readonly to: string | undefined
  readonly csv: boolean
  readonly asOf: Day | undefined
  readonly quiet: boolean
}

export async function sheet({folder, birds, to: named, csv, asOf, quiet}: SheetOptions, world: World): Promise<ExitCode> {
  const to = named ?? (csv ? 'sheet.csv' : 'sheet.html')
  const refused = folderRefusal(folder) ?? placeRefusal(to, folder)
  if (refused !== null) {
    world.err(`${refused}\n`)
    return 2
  }
  const opened = openToAnswer(folder, {asOf, quiet, outcome: 'No sheet was made.'}, world)
  if (typeof opened === 'number') return opened
  const {book, findings} = opened
  const asked = birdsAsked(birds, findings)
  if (typeof asked === 'string') {
    world.err(`${asked}\n`)
    return 2
  }
  const filled = sheetToFill(asked.birds, book)
  const wanting = filled.draft === null ? 'No draft of the standard is on record, so there is nothing to score by; write standard/1.md first.'
    : filled.traits.length + filled.headings.length === 0 ? `Draft ${filled.draft.number} has no clause with a trait and no scale of points, so there is nothing to score by.`
    : filled.birds.length === 0 ? `${filled.gone === 0 ? 'No bird was asked for' : filled.gone === 1 ? 'The bird asked for has left' : `All ${counted(filled.gone, 'bird')} asked for have left`}, so the sheet would be empty.` : null
  if (wanting !== null) {
    world.err(`${wanting}\n`)
    return 2
  }
  try {
    writeFileSync(to, csv ? csvOf(sheetTable(filled, null)) : await pageAsFile(sheetToFillPage(filled, book, ofWords(birds, asked)), findings, folder))
  } catch (fault) {
    if (!(fault instanceof TemplateFault)) throw fault
    world.err(`${fault.message}\nMend the project’s own template, or take it away to use ours. No sheet was made.\n`)
    return 1
  }
  if (!quiet) {
    const gone = filled.gone === 0 ? '' : ` ${filled.gone} more ${filled.gone === 1 ? 'has' : 'have'} left and ${filled.gone === 1 ? 'has' : 'have'} no row.`
    world.out(`${sentence(counted(filled.birds.length, 'bird'))}, ${counted(filled.traits.length, 'look')} and ${counted(filled.headings.length, 'heading')} of points, by draft ${filled.draft?.number ?? ''}.${gone} ${
      csv ? `Fill in ${to} and put it into ${join(folder, 'scores')}.` : `Open ${to} in a browser and print it; it is laid across.`}\n`)
  }
  return 0
}

/** A table that was filled in, or a file that is no sheet of ours, is not written over; null when the place is free. */
function placeRefusal(to: string, folder: string): string | null {
  if (isFolder(to)) return `${to} is a folder; name the file to write, such as ${join(to, 'sheet.html')}.`
  if (!isFolder(dirname(to))) return `There is no folder ${dirname(to)} to write ${to} into.`
  if (!relative(resolve(folder), resolve(to)).startsWith('..')) return `${to} lies among the records, where it would be read as one; name a place outside ${folder}, and put a table there when it is filled in.`
  let before: string
  try {
    before = readFileSync(to, 'utf8')
  } catch (fault) {
    return fault instanceof Error && 'code' in fault && fault.code === 'ENOENT' ? null : `${to} is there and cannot be read, so it is not written over; take it away or name another file.`
  }
  return /<body class="?score\b/.test(before) ? null : `${to} is there already, and might have been filled in; take it away or name another file.`
}

function birdsAsked(words: string | undefined, {book, ladder}: Findings): BirdsAsked | string {
  if (words === undefined) return birdsOfLatestStep(ladder)
  const group = birdsOfGroup(words.trim(), book)
  if (group) return group
  const bands = words.split(',').map(band => band.trim()).filter(band => band !== ''), missing = bands.find(band => !birdOf(book, band))
  if (bands.length === 0) return 'Name the birds: living, a step, a pen, a hatch, or bands with commas between.'
  if (missing === undefined) return {of: 'bands', birds: bands.flatMap(band => birdOf(book, band) ?? [])}
  return bands.length > 1 ? noSuchBird(book, missing) : `“${missing}” is no step, pen or hatch, and no bird wears it; ${orNear(near(missing, names(book)), 'write living, a step, a pen, a hatch, or bands with commas between')}`
}

const names = ({birds, pens, hatches}: Logbook): readonly string[] =>
  [...new Set(['living', ...birds.filter(({step}) => step.kind !== 'strain').map(({step}) => step.label), ...pens.map(({id}) => id), ...hatches.map(({id}) => id), ...birds.flatMap(({bands}) => bands.map(({band}) => band))])]

function ofWords(words: string | undefined, {of, birds}: BirdsAsked): string {
  switch (of) {
    case 'living': return 'of the breed'
    case 'step': return `of ${birds[0]?.step.label ?? ''}`
    case 'pen': case 'hatch': return `of ${of} ${words?.trim() ?? ''}`
    case 'bands': return birds.length > 3 ? '' : `, ${listWords(birds.map(({band}) => band))}`
  }
}

/** A page that is one file, as the site would hold it. */
async function pageAsFile(page: Page, findings: Findings, folder: string): Promise<string> {
  const frame = siteFrame(findings, [])
  for (const [path, content] of await renderSite({pages: [page], downloads: [], frame, photos: {pictures: new Map(), files: new Map()}, templates: readTemplates(join(folder, 'templates')).files})) {
    if (path === page.path) return String(content)
  }
  throw new Error(`${page.path} was not set`)
}
