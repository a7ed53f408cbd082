/** HTML comments are a keeper's notes to themselves and are taken out before anything else sees the text. */

export interface Uncommented {
  readonly text: string
  /** where a comment begins that nothing closes; the rest of the text is taken for it */
  readonly unclosed: number | null
}

/** The text without its comments. One that is never closed hides all that follows: better too little published than too much. */
export function withoutComments(text: string): Uncommented {
  let kept = ''
  let from = 0
  for (;;) {
    const start = text.indexOf('<!--', from)
    if (start === -1) return {text: from === 0 ? text : kept + text.slice(from), unclosed: null}
    kept += text.slice(from, start)
    const end = text.indexOf('-->', start + 4)
    if (end === -1) return {text: kept, unclosed: start}
    from = end + 3
  }
}
