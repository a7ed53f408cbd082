/**
 * A keeper's Markdown as HTML that is safe to publish: read by remark with tables and footnotes, fitted to its page, cleaned against a list of what may stand.
 * The processor is set up once and frozen; equal text on pages of equal depth is worked once.
 */
import remarkGfm from 'remark-gfm'
import remarkHtml from 'remark-html'
import remarkParse from 'remark-parse'
import {unified} from 'unified'
import {rootOf} from './links.ts'
import {markdownSchema} from './markdown-schema.ts'
import {fitBody} from './markdown-tree.ts'
import type {BodyPlace} from './markdown-tree.ts'
import type {Pictures} from './picture.ts'
import {plainBody} from './plain-body.ts'
import {SafeHtml} from './safe-html.ts'

/** Where a body stands. */
export interface MarkdownPlace {
  readonly pagePath: string
  /** level of the body's uppermost headings, 2 to 6 */
  readonly level: number
  /** prefix of footnote ids, unique on the page: letters, digits, hyphens */
  readonly footnotes: string
}

export interface Markdown {
  /** paragraphs, lists, tables, headings, footnotes, pictures */
  readonly body: (text: string, place: MarkdownPlace) => SafeHtml
  /** the words of one paragraph, without `<p>`; several paragraphs are joined by a space */
  readonly inline: (text: string, place: MarkdownPlace) => SafeHtml
}

const writer = unified().use(remarkParse).use(remarkGfm).use(fitBody).use(remarkHtml, {sanitize: markdownSchema}).freeze()

const CONTROL = /[\u0000-\u0008\u000b\u000c\u000e-\u001f]/g // eslint-disable-line no-control-regex

/** Makes the one Markdown writer of a site. */
export function openMarkdown(pictures: Pictures, pages: ReadonlySet<string>): Markdown {
  const cache = new Map<string, string>()
  const html = (text: string, {pagePath, level, footnotes}: MarkdownPlace): string => {
    const plain = plainBody(text)
    if (plain !== null) return plain
    const key = `${level} ${rootOf(pagePath)} ${text}`
    let written = cache.get(key)
    if (written === undefined) {
      const place: BodyPlace = {pagePath, level, pictures, pages}
      written = fitFootnotes(String(writer.processSync({value: text.replace(CONTROL, ''), data: {place}})), level)
      cache.set(key, written)
    }
    return written.includes('user-content-') ? written.replace(/((?: id| href| aria-describedby)=")(#?)user-content-/g, `$1$2${footnotes}`) : written
  }
  return {
    body: (text, place) => new SafeHtml(html(text, place)),
    inline: (text, place) => new SafeHtml(html(text, place).trim().replace(/<\/p>\s*<p>/g, ' ').replace(/^<p>|<\/p>$/g, '')),
  }
}

/** The footnotes' own heading, made by remark at a fixed level and with a fixed id. */
function fitFootnotes(html: string, level: number): string {
  if (!html.includes('data-footnotes')) return html
  return html
    .replace(/<h2 class="sr-only" id="footnote-label">(.*?)<\/h2>|<h2 id="footnote-label" class="sr-only">(.*?)<\/h2>/,
      `<h${level} class="sr-only" id="user-content-footnote-label">Footnotes</h${level}>`)
    .replaceAll('aria-describedby="footnote-label"', 'aria-describedby="user-content-footnote-label"')
}
