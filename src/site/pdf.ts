/** Pages that are one file as PDFs: tagged, with an outline of their headings, their faces inside, the same bytes for the same page and day. */
import type {Day} from '../records/dates.ts'
import {ChromiumFault, textIn, withPage, type Ask} from './chromium-pipe.ts'
import {findChromium, type FoundChromium} from './find-chromium.ts'
import {settledPdf} from './settled-pdf.ts'

export type Paper = 'a4' | 'letter'

export type Pdfs =
  | {readonly kind: 'made'; readonly pdfs: readonly Uint8Array[]}
  | Exclude<FoundChromium, {readonly kind: 'found'}>
  | {readonly kind: 'failed'; readonly chromium: string; readonly reason: string}

/** Inches, as Chromium asks for them. ISO 216; the other sheet is 8½ by 11. */
const SHEETS: Readonly<Record<Paper, {readonly paperWidth: number; readonly paperHeight: number}>> = {
  a4: {paperWidth: 210 / 25.4, paperHeight: 297 / 25.4}, letter: {paperWidth: 8.5, paperHeight: 11},
}

/** Milliseconds for all of it: a dossier takes one or two seconds. */
const PATIENCE = 120_000

const READY = 'Promise.all([...[...document.fonts].map(face => face.load()), ...[...document.images].map(image => image.decode())].map(each => each.catch(() => null))).then(() => true)'

async function printed(ask: Ask, html: string, paper: Paper): Promise<Buffer> {
  const frameId = textIn(await ask('Page.getFrameTree'), 'frameTree', 'frame', 'id')
  await ask('Page.setDocumentContent', {frameId, html})
  await ask('Runtime.evaluate', {expression: READY, awaitPromise: true})
  const answer = await ask('Page.printToPDF', {...SHEETS[paper], preferCSSPageSize: true, printBackground: true, generateTaggedPDF: true, generateDocumentOutline: true})
  return Buffer.from(textIn(answer, 'data'), 'base64')
}

/**
 * @param pages  whole HTML that asks for no other file: the PDF has its title and its language, and of its links those that lead anywhere
 * @param on     the day the PDF says it was made on: the day the records stood as they are printed
 * @param paper  the sheet, unless a page's own `@page` names another
 */
export async function pdfsOf(pages: readonly string[], {on, paper, machine = process, patience = PATIENCE}: {
  readonly on: Day; readonly paper: Paper; readonly machine?: Parameters<typeof findChromium>[0]; readonly patience?: number
}): Promise<Pdfs> {
  const found = findChromium(machine)
  if (found.kind !== 'found') return found
  try {
    const pdfs = await withPage(found.path, async ask => {
      const made: Uint8Array[] = []
      for (const html of pages) made.push(settledPdf(await printed(ask, html, paper), on))
      return made
    }, patience)
    return {kind: 'made', pdfs}
  } catch (fault) {
    if (!(fault instanceof ChromiumFault)) throw fault
    return {kind: 'failed', chromium: found.path, reason: fault.message}
  }
}

/** Why there is no PDF, in words, with what to do. */
export function noPdfWords(why: Exclude<Pdfs, {readonly kind: 'made'}>, rest = 'Everything else is published.'): string {
  switch (why.kind) {
    case 'not-as-named': return `No PDF was made: CHROMIUM names ${why.named}, and there is no such file. ${rest}`
    case 'none': return `No PDF was made: it takes an installed Chromium, and none was found. CHROMIUM is not set, none of ${why.commands.join(', ')} is on the PATH, and there is none at ${
      why.places.join(', ')}. Install Chromium, or name one that you have, CHROMIUM=/path/to/chromium. ${rest}`
    case 'failed': return `No PDF was made: ${why.chromium} was to set it, but ${why.reason}. ${rest}`
  }
}
