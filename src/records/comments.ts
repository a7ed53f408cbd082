/** HTML comments are a keeper's notes to themselves and are taken out before anything else sees the text. */
import {frontRange, spotAt} from './front-matter.ts'
import type {Note} from './problem.ts'

export interface Uncommented {
  readonly text: string
  /** where a comment begins that nothing closes; the rest of the text is taken for it */
  readonly unclosed: number | null
}

/**
 * The text without its comments. One that is never closed hides all that follows: better too little published than too much.
 *
 * @param left  what is left of a comment
 */
export function withoutComments(text: string, left: (comment: string) => string = () => ''): Uncommented {
  let kept = ''
  let from = 0
  for (;;) {
    const start = text.indexOf('<!--', from)
    if (start === -1) return {text: from === 0 ? text : kept + text.slice(from), unclosed: null}
    kept += text.slice(from, start)
    const end = text.indexOf('-->', start + 4)
    if (end === -1) return {text: kept + left(text.slice(start)), unclosed: start}
    from = end + 3
    kept += left(text.slice(start, from))
  }
}

/** As many spaces, in as many lines. */
const blank = (text: string) => text.replace(/[^\n]/g, ' ')

export interface Blanked {
  readonly text: string
  /** did the data hold comments? */
  readonly commented: boolean
}

/**
 * A file whose data, a record's front matter or a whole table, holds blanks where comments stood, before a comma or colon in one can
 * part anything; all else keeps its place. Comments below the front matter stay: `withoutComments` takes them out of the body.
 */
export function blankedData(file: string, text: string, note: Note): Blanked {
  const end = (file.endsWith('.csv') ? null : frontRange(text))?.end ?? text.length
  const data = text.slice(0, end)
  if (!data.includes('<!--')) return {text, commented: false}
  const {text: blanked, unclosed} = withoutComments(data, blank)
  const rest = text.slice(end)
  if (unclosed === null) return {text: blanked + rest, commented: true}
  note({
    code: 'unclosed-comment', severity: 'error', at: spotAt(file, text, unclosed, 4),
    reason: 'the comment that begins here is never closed, so nothing after it is read', remedy: 'close it with -->',
  })
  const closing = /^\n---/.exec(rest)?.[0] ?? ''
  return {text: blanked + closing + blank(rest.slice(closing.length)), commented: true}
}

/** What blanks have left of a text: none around it, one space for those within. */
export const closedUp = (text: string): string => text.replace(/(\S) {2,}(?=\S)/g, '$1 ').trim()
