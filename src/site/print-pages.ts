/** The pages that are also to be had as a PDF, each set as one file for the printer, and what comes back. */
import type {Page} from '../pages/page.ts'
import {textOf, type Files} from './assets.ts'
import {linksInside, picturesInside} from './one-file.ts'
import type {SafeHtml} from './safe-html.ts'
import {openTemplates, type TemplateParts} from './templates.ts'

interface Printing {
  readonly parts: TemplateParts
  readonly templates: Files
  /** the stylesheet with faces that a PDF can hold */
  readonly style: () => SafeHtml
  readonly photos: {readonly files: Files}
  readonly print: (pages: readonly string[]) => Promise<readonly Uint8Array[] | null>
}

/** @returns path → PDF; nothing where there is no page to print or nobody to print it */
export async function printPages(pages: readonly Page[], {parts, templates, style, photos, print}: Printing): Promise<ReadonlyMap<string, Uint8Array>> {
  const printed = pages.filter(page => page.pdf !== undefined)
  if (printed.length === 0) return new Map()
  const forPaper = style(), engine = openTemplates(textOf(templates), {...parts, inlineStyle: () => forPaper, forPaper: true})
  const pdfs = await print(printed.map(page => linksInside(picturesInside(engine.render({...page, selfContained: true}), page.path, photos.files))))
  return new Map(printed.flatMap(({pdf}, index) => {
    const bytes = pdfs?.[index]
    return pdf === undefined || bytes === undefined ? [] : [[pdf, bytes] as const]
  }))
}
