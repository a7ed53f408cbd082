/**
 * Pages → the whole site, path by path, each page set when it is asked for, so that one at a time is in memory. Nothing is written here.
 *
 *     pages ──draw──▶ charts ──set──▶ pages as HTML ──gather──▶ + downloads, assets, pictures, index
 */
import {literalColours, themeOf} from '../charts/theme.ts'
import {renderChart} from '../charts/render.ts'
import {saidOnce} from '../charts/said-once.ts'
import type {ChartSpec} from '../charts/chart-spec.ts'
import type {Download, Figure, Page} from '../pages/page.ts'
import {assetsOf, textOf} from './assets.ts'
import type {Files} from './assets.ts'
import {FEED} from './feed.ts'
import type {Frame} from './frame.ts'
import {openMarkdown} from './markdown.ts'
import {linksInside, picturesInside, styleInside, styleOnly} from './one-file.ts'
import type {Pictures} from './picture.ts'
import {printPages} from './print-pages.ts'
import {SafeHtml} from './safe-html.ts'
import {searchIndex} from './search.ts'
import {slimDrawing} from './slim-drawing.ts'
import {withStillFaces} from './still-faces.ts'
import {styleUsed} from './style-used.ts'
import {openTemplates, type TemplateParts} from './templates.ts'

export interface SiteInput {
  readonly pages: readonly Page[]
  readonly downloads: readonly Download[]
  readonly frame: Frame
  readonly photos: {readonly pictures: Pictures; readonly files: Files}
  /** `readTemplates(…).files` */
  readonly templates: Files
  /** makes PDFs of pages that are one file each, the pages of this site that name one; null when there are none to be had. Without it none is made */
  readonly print?: (pages: readonly string[]) => Promise<readonly Uint8Array[] | null>
  /** told now and then how many of how many pages are set */
  readonly progress?: (done: number, total: number) => void
}

/** The stylesheet with its faces, as `styleInside` gives it, in a page. */
const WHOLE_STYLE = /<style>(\s*@font-face[\s\S]*?)<\/style>/

/** Every this many pages the progress is told. */
const TOLD_EVERY = 250

/**
 * Charts are drawn, templates compiled and PDFs printed at once; the files come one by one.
 *
 * @throws Error when two inputs claim one path, naming both, and what a template throws, while the files are being taken
 */
export async function renderSite({pages, downloads, frame, photos, templates, print, progress}: SiteInput): Promise<Iterable<readonly [string, string | Uint8Array]>> {
  const figures = pages.flatMap(page => (page.fleeting ? [] : figuresIn(page.view)).map(figure => ({figure, page})))
  const site = new Claims()
  const charts = await drawFigures(figures)
  const asked = new Set<string>()
  const sizes = new Map<string, number>()
  let style: SafeHtml | null = null, styleOf: ((html: string) => string) | null = null, rulesOf: ((html: string) => string) | null = null
  const pdfs = new Map<string, Uint8Array>()
  const parts: TemplateParts = {
    frame, charts, pictures: photos.pictures, asked,
    markdown: openMarkdown(photos.pictures, new Set(pages.map(page => page.path))),
    inlineStyle: () => (style ??= new SafeHtml(styleInside(templates))), ownStyle: html => (styleOf ??= styleUsed(styleOnly(templates)))(linksInside(html)), sizes,
    feed: downloads.some(download => download.path === FEED) ? FEED : null, pdfs,
  }
  const styleForPaper = () => new SafeHtml(styleInside(templates, withStillFaces(styleOnly(templates), templates)))
  if (print) for (const [path, pdf] of await printPages(pages, {parts, templates, style: styleForPaper, photos, print})) pdfs.set(path, pdf)
  const engine = openTemplates(textOf(templates), parts)
  return files()

  /** A page as one file, with what it uses of the stylesheet. */
  function alone(set: string, page: Page): string {
    const linked = linksInside(set, page.pdf)
    const styled = page.sheet === undefined ? linked.replace(WHOLE_STYLE, (_, whole: string) => `<style>${(rulesOf ??= styleUsed(whole, false))(linked.replace(WHOLE_STYLE, ''))}</style>`) : linked
    return picturesInside(styled, page.path, photos.files)
  }

  function* files(): Generator<readonly [string, string | Uint8Array]> {
    for (const [index, page] of pages.entries()) {
      const set = engine.render(page), html = page.selfContained ? alone(set, page) : set
      if (page.selfContained) sizes.set(page.path, Buffer.byteLength(html))
      yield* site.claim(page.path, html, `page “${page.title}” (${page.template})`)
      if (index % TOLD_EVERY === 0) progress?.(index, pages.length)
    }
    for (const {figure, page} of figures) yield* site.claim(`charts/${figure.name}.vl.json`, chartDownload(figure), `figure ${figure.id} of ${page.path}`, true)
    for (const [path, pdf] of pdfs) yield* site.claim(path, pdf, `the PDF ${path}`)
    for (const download of downloads) yield* site.claim(download.path, download.text, `download ${download.path}`)
    const index = searchIndex(pages)
    yield* site.claim(index.path, index.text, 'the search index')
    for (const [path, content] of assetsOf(templates, asked)) yield* site.claim(path, content, `templates/${path}`)
    for (const [path, content] of photos.files) yield* site.claim(path, content, `picture ${path}`)
  }
}

/** Every path has one owner; what two may share must be the same to the letter. */
class Claims {
  /** what may be claimed again with the same words */
  readonly #shared = new Map<string, string | Uint8Array>()
  readonly #owners = new Map<string, string>()

  /** the file, or none when it has been given already */
  claim(path: string, content: string | Uint8Array, owner: string, mayShare = false): readonly (readonly [string, string | Uint8Array])[] {
    const key = path.toLowerCase()
    const before = this.#owners.get(key)
    if (before !== undefined) {
      if (mayShare && this.#shared.get(path) === content) return []
      throw new Error(`${path} is claimed twice: by ${before} and by ${owner}`)
    }
    this.#owners.set(key, owner)
    if (mayShare) this.#shared.set(path, content)
    return [[path, content]]
  }
}

const isFigure = (value: object): value is Figure => 'kind' in value && value.kind === 'figure' && 'spec' in value

/** Every figure of a view, however deep. */
export function figuresIn(view: object, seen = new Set<object>()): readonly Figure[] {
  if (seen.has(view)) return []
  seen.add(view)
  if (isFigure(view)) return [view]
  return Object.values(view).flatMap((value: unknown) => (value !== null && typeof value === 'object' ? figuresIn(value, seen) : []))
}

async function drawFigures(figures: readonly {readonly figure: Figure; readonly page: Page}[]): Promise<ReadonlyMap<Figure, SafeHtml>> {
  const drawn = new Map<Figure, SafeHtml>()
  for (const {figure, page} of figures) {
    if (drawn.has(figure)) continue
    try {
      drawn.set(figure, new SafeHtml(slimDrawing(await renderChart(figure.spec as ChartSpec, figure))))
    } catch (fault) {
      throw new Error(`figure ${figure.id} of ${page.path}: ${fault instanceof Error ? fault.message : String(fault)}`, {cause: fault})
    }
  }
  return drawn
}

/** The specification as somebody else can use it: with its theme, in colours that need no stylesheet. */
const chartDownload = (figure: Figure): string => `${literalColours(JSON.stringify({...saidOnce(figure.spec as ChartSpec), config: themeOf(figure.spec)}))}\n`
