/** The words at the head of printed sheets, as rules of a page's own: what stands there differs from page to page. CSS Paged Media Module Level 3, page-margin boxes. */
import type {PageHeads} from '../pages/page.ts'

/** A text as a string of a stylesheet that stands in a page: no sign of it ends the string, the rule or the page's style. */
export const cssString = (words: string): string => `"${words.replace(/[\\"<\n\r\f]/g, sign => `\\${sign.codePointAt(0)?.toString(16) ?? ''} `)}"`

const heads = (left: string, right: string): string => `@top-left{content:${left}}@top-right{content:${right}}`

/** None on the first sheet, which has the title; an enclosed part has words of its own, on a page called so in the stylesheet. */
export function pageHeads({left, right, enclosed}: PageHeads): string {
  const own = enclosed === undefined ? '' : `@page enclosed{@top-right{content:${cssString(enclosed)}}}`
  return `@page{${heads(cssString(left), cssString(right))}}${own}@page:first{${heads('none', 'none')}}`
}
