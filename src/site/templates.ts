/**
 * The template engine: Handlebars, every template compiled once, ours or the project's own of the same name.
 * A variable that a view does not have is a programmer's slip and throws, with the page and the template named;
 * what is known to be wanting is `null` in the view. Everything is escaped but a SafeHtml.
 */
import Handlebars from 'handlebars'
import type {Figure, Page} from '../pages/page.ts'
import type {Frame} from './frame.ts'
import {navOf} from './frame.ts'
import {addressOf, folderOf} from './links.ts'
import type {Markdown} from './markdown.ts'
import {pageHeads} from './page-heads.ts'
import type {Picture, Pictures} from './picture.ts'
import {SafeHtml} from './safe-html.ts'
import {slimSprite} from './slim-sprite.ts'
import {slimFrame, slimTags} from './slim-tags.ts'
import {runningHead} from './style-used.ts'
import {valueHelpers} from './template-helpers.ts'

export interface TemplateParts {
  readonly frame: Frame
  /** the drawn charts, by the very figure in the view */
  readonly charts: ReadonlyMap<Figure, SafeHtml>
  readonly pictures: Pictures
  readonly markdown: Markdown
  /** stylesheet with fonts inside, for pages that are one file */
  readonly inlineStyle: () => SafeHtml
  /** filled with the site paths that pages link to */
  readonly asked: Set<string>
  /** path of the feed, or null */
  readonly feed: string | null
  /** of a page's HTML, the stylesheet for it alone: of pages that are mailed */
  readonly ownStyle: (html: string) => string
  /** bytes of the pages that are one file, as they are set */
  readonly sizes: ReadonlyMap<string, number>
  /** the PDFs that were made, by their path */
  readonly pdfs: ReadonlyMap<string, Uint8Array>
  /** set for the printer: its pictures need not be small */
  readonly forPaper?: true
}

export interface Templates {
  /** a whole page as HTML */
  readonly render: (page: Page) => string
}

/** A template that cannot be read, or asks for what its page does not have: a keeper's slip in a template of the project's own, a programmer's in ours. */
export class TemplateFault extends Error {
  readonly file: string

  constructor(file: string, reason: string, cause: unknown) {
    super(`template ${file}: ${reason}`, {cause})
    this.file = file
  }
}

interface PageData {
  readonly page: Page
  /** addresses worked out so far, for pages as deep as this one */
  readonly addresses: Map<string, string>
  /** bodies put out so far, so that footnotes of two bodies on one page stay apart */
  bodies: number
}

const OPTIONS = {
  strict: true, knownHelpersOnly: true, preventIndent: true,
  knownHelpers: {} as Record<string, boolean>,
}

/** What a page's template is called in the templates folder, and what a partial is. */
const PAGES = 'pages/', PARTIALS = 'partials/', ENDING = '.hbs', LAYOUT = 'layout.hbs'

const dataOf = (options: Handlebars.HelperOptions): PageData => (options.data as {site: PageData}).site

function pictureHelper({pictures, forPaper}: TemplateParts, page: Page, file: string, small: boolean): object | null {
  const picture: Picture | undefined = pictures.get(file)
  if (!picture) return null
  if (forPaper) return {path: picture.path, width: picture.width, height: picture.height, srcset: ''}
  // a page that is one file carries its pictures in it, and is sent by post and by mail
  if ((small || page.selfContained === true) && picture.small) return {...picture.small, srcset: ''}
  const both = picture.small
    ? `${addressOf(picture.small.path, page.path)} ${picture.small.width}w, ${addressOf(picture.path, page.path)} ${picture.width}w`
    : ''
  return {path: picture.path, width: picture.width, height: picture.height, srcset: both}
}

/** Helpers that need to know the page they stand on. */
function siteHelpers(parts: TemplateParts): Record<string, Handlebars.HelperDelegate> {
  const {charts, markdown, asked, sizes, pdfs} = parts
  const body = (text: string, options: Handlebars.HelperOptions, inline: boolean): SafeHtml => {
    const data = dataOf(options)
    const {level} = options.hash as {level?: number}
    data.bodies += 1
    const place = {pagePath: data.page.path, level: level ?? 3, footnotes: `note-${data.bodies}-`}
    return inline ? markdown.inline(text, place) : markdown.body(text, place)
  }
  return {
    link(target: string, options: Handlebars.HelperOptions) {
      const {page, addresses} = dataOf(options)
      const known = addresses.get(target)
      if (known !== undefined) return known
      const address = addressOf(target, page.path)
      addresses.set(target, address)
      asked.add(target)
      return address
    },
    /** `18 kB`, of a page that is one file and was set before this one */
    sizeOf(path: string): string {
      const bytes = sizes.get(path)
      if (bytes === undefined) throw new Error(`${path} is not set yet, or is no page that is one file: its size cannot be told`)
      return `${Math.ceil(bytes / 1000)} kB`
    },
    /** the path of this page as a PDF, where one was made */
    asPdf(options: Handlebars.HelperOptions): string | null {
      const {pdf} = dataOf(options).page
      return pdf !== undefined && pdfs.has(pdf) ? pdf : null
    },
    markdown: (text: string, options: Handlebars.HelperOptions) => body(text, options, false),
    inline: (text: string, options: Handlebars.HelperOptions) => body(text, options, true),
    pictureOf: (file: string, small: boolean, options: Handlebars.HelperOptions) => pictureHelper(parts, dataOf(options).page, file, small),
    chart(this: Figure, figure: Figure) {
      const drawn = charts.get(figure)
      if (!drawn) throw new Error(`figure ${figure.id} was not drawn: a figure must stand in the view itself, not be copied by a template`)
      return drawn
    },
  }
}

/**
 * Opens a folder of templates: `layout.hbs`, `pages/<name>.hbs`, `partials/<name>.hbs`, each given by its path in that folder.
 *
 * @throws Error when a template does not parse, naming its file
 */
export function openTemplates(files: ReadonlyMap<string, string>, parts: TemplateParts): Templates {
  const engine = Handlebars.create()
  const helpers = {...valueHelpers, ...siteHelpers(parts)}
  const options = {...OPTIONS, knownHelpers: Object.fromEntries(Object.keys(helpers).map(name => [name, true]))}
  engine.registerHelper(helpers)
  const compiled = new Map<string, Handlebars.TemplateDelegate>()
  for (const [path, text] of files) {
    if (!path.endsWith(ENDING)) continue
    try {
      const template = engine.compile(engine.parse(text) as unknown as string, options)
      if (path.startsWith(PARTIALS)) engine.registerPartial(path.slice(PARTIALS.length, -ENDING.length), template)
      else compiled.set(path, template)
    } catch (fault) {
      throw new TemplateFault(path, messageOf(fault), fault)
    }
  }
  const put = (path: string, view: object, site: PageData): SafeHtml => {
    const template = compiled.get(path)
    if (!template) throw new Error(`${site.page.path} wants the template ${path}, and there is none`)
    try {
      return new SafeHtml(template(view, {data: {site}}))
    } catch (fault) {
      throw new TemplateFault(path, `${messageOf(fault)} (page ${site.page.path})`, fault)
    }
  }
  const addresses = new Map<string, Map<string, string>>()
  const dataFor = (page: Page): PageData => {
    const folder = folderOf(page.path)
    const known = addresses.get(folder) ?? new Map<string, string>()
    addresses.set(folder, known)
    return {page, addresses: known, bodies: 0}
  }
  const layout = cachedLayout(parts, (view, page) => put(LAYOUT, view, dataFor(page)).html)
  return {
    render(page) {
      const matter = put(`${PAGES}${page.template}${ENDING}`, page.view, dataFor(page))
      return layout(page, matter.html)
    },
  }
}

const TITLE = '\u0001title\u0001', MATTER = '\u0001matter\u0001', STYLE = '\u0001style\u0001'

/** A stretch of the layout, or what fills a gap in it. */
type Piece = (title: string, matter: string) => string

function pieceOf(text: string): Piece {
  if (text === TITLE) return title => title
  if (text === MATTER) return (_, matter) => matter
  if (!text.startsWith('<svg class="sprite"')) {
    const slim = slimFrame(slimTags(text))
    return () => slim
  }
  const slim = slimSprite(text)
  return (_, matter) => slim(matter)
}

/**
 * Pages of one section and folder differ in the layout by title and matter alone, so the layout is put out once for each such kind
 * with two gaps, and the gaps are filled a page.
 */
function cachedLayout(parts: TemplateParts, put: (view: object, page: Page) => string): (page: Page, matter: string) => string {
  const {frame, feed} = parts
  const home = frame.contents.find(entry => entry.section === 'home')?.path ?? 'index.html'
  const main = new Set(frame.contents.map(entry => entry.path))
  /** what each page holds is said on the home page; other main pages list the names, and the many pages beneath them lead to that list */
  const bare = frame.contents.map(entry => ({...entry, note: ''}))
  const known = new Map<string, readonly Piece[]>()
  return (page, matter) => {
    const look = page.look ?? null, selfContained = page.selfContained === true
    const key = JSON.stringify([folderOf(page.path), page.section, look, selfContained, page.sheet !== undefined, main.has(page.path) ? page.path : ''])
    let pieces = known.get(key)
    if (!pieces) {
      const html = put({
        title: TITLE, breed: frame.breed, language: frame.language, look, style: page.sheet !== undefined ? new SafeHtml(STYLE) : selfContained ? parts.inlineStyle() : null, feed, home,
        // a page that goes alone leads nowhere
        nav: selfContained ? [] : navOf(frame, page.section, page.path), contents: selfContained ? [] : page.path === home ? frame.contents : main.has(page.path) ? bare : [], asOf: frame.asOf, matter: new SafeHtml(MATTER),
      }, page)
      pieces = tidy(html).split(/(\u0001\w+\u0001|<svg class="sprite"[\s\S]*?<\/defs>[\s\S]*?<\/svg>\n(?=<(?:a|header) ))/).map(pieceOf) // eslint-disable-line no-control-regex
      known.set(key, pieces)
    }
    const title = Handlebars.escapeExpression(titleOf(page, frame)), slim = slimTags(tidy(matter))
    const set = pieces.map(piece => piece(title, slim)).join(''), {heads} = page
    const html = heads ? set.replace('</title>', end => `${end}\n<style>${pageHeads(heads)}</style>`) : set
    return page.sheet === undefined ? html : html.replace(STYLE, () => `${parts.ownStyle(html)}${runningHead(page.sheet ?? '')}`)
  }
}

const titleOf = (page: Page, {breed}: Frame): string => (page.title === breed || page.title.startsWith(`${breed}:`) ? page.title : `${page.title} · ${breed}`)

/** No space at the ends of lines, nor at their beginnings where no line is kept as it was written. */
const tidy = (html: string): string => (html.includes('<pre') ? html.replace(/[ \t]+\n/g, '\n') : html.replace(/\s*\n\s*/g, '\n'))

const messageOf = (fault: unknown): string => (fault instanceof Error ? fault.message : String(fault))
