/** The words at the head of printed sheets, as rules of a page's own: what stands there differs from page to page. CSS Paged Media Module Level 3, page-margin boxes. */
import type {PageHeads} from '../pages/page.ts'

/** A text as a string of a stylesheet that stands in a page: no sign of it ends the string, the rule or the page's style. */
export const cssString = (words: string): string => `"${words.replace(/[\\"<\n\r\f]/g, sign => `\\${sign.codePointAt(0)?.toString(16) ?? ''} `)}"`

/** How they are set: over a hairline that begins where the words do, right of the room that the stylesheet keeps for the bars of what changed. */
const SET = 'vertical-align:bottom;padding-bottom:1.5mm;margin-bottom:4mm;border-bottom:.5pt solid #b4beb7;color:#3d4843;font:italic 9pt "Brygada 1918",serif'

const heads = (left: string, right: string): string => `@top-left{content:${left}}@top-right{content:${right}}`

/** None on the first sheet, which has the title; an enclosed part has words of its own, on a page called so in the stylesheet. */
export function pageHeads({left, right, enclosed}: PageHeads): string {
  const within = enclosed === undefined ? '' : `@page enclosed{@top-right{content:${cssString(enclosed)}}}`
  return `@page{@top-left{${SET};margin-left:2.8mm}@top-right{${SET}}${heads(cssString(left), cssString(right))}}${within}@page:first{${heads('none', 'none')}}`
}
