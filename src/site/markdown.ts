/** placeholder of the signature; see the next commit */
import type {SafeHtml} from './safe-html.ts'

/** Where a body stands. */
export interface MarkdownPlace {
  readonly pagePath: string
  /** level of the body's uppermost headings, 2 to 6 */
  readonly level: number
  /** prefix of footnote ids, unique on the page */
  readonly footnotes: string
}

export interface Markdown {
  /** paragraphs, lists, tables, headings, footnotes, pictures */
  readonly body: (text: string, place: MarkdownPlace) => SafeHtml
  /** the words of one paragraph, without `<p>` */
  readonly inline: (text: string, place: MarkdownPlace) => SafeHtml
}
