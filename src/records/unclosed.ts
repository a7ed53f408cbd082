/** The quotation mark, bracket or brace that is opened and never closed: YAML notices lines later, the keeper has to look where it opens. */

export interface Opened {
  readonly sign: '"' | '\'' | '[' | '{'
  /** from the beginning of the text */
  readonly offset: number
}

export const CLOSING = {'"': '"', '\'': '\'', '[': ']', '{': '}'} as const

/** The first quotation mark that is not closed, or closed only by the next text's, or else the innermost bracket that is open still at `upTo`, where YAML gave up. */
export function unclosedBefore(front: string, upTo: number): Opened | null {
  const open: Opened[] = []
  /** may a value begin here? */
  let begins = true
  for (let at = 0; at < upTo; at++) {
    const sign = front[at]
    const last = open.at(-1)
    const spaced = /^[\s]?$/.test(front[at + 1] ?? '')
    if (sign === '\n') begins ||= last === undefined
    else if (sign === ' ' || sign === '\t' || (sign === '-' && begins && spaced)) continue
    else if (sign === '#' && /\s/.test(front[at - 1] ?? '\n')) at = lineEnd(front, at) - 1
    else if ((sign === '|' || sign === '>') && begins && last === undefined) at = blockEnd(front, at) - 1
    else if ((sign === '"' || sign === '\'') && begins) {
      const end = quoteEnd(front, at)
      if (end === null) return {sign, offset: at}
      at = end
      begins = false
    } else if ((sign === '[' || sign === '{') && (begins || last)) {
      open.push({sign, offset: at})
      begins = true
    } else if (last && (sign === ']' || sign === '}')) {
      if (CLOSING[last.sign] !== sign) return last
      open.pop()
      begins = false
    } else begins = (sign === ':' && spaced) || (sign === ',' && last !== undefined)
  }
  return open.at(-1) ?? null
}

/** Where a quoted text ends; null when it does not, or when what closes it was written for another text. */
function quoteEnd(front: string, start: number): number | null {
  const quoted = (front[start] === '"' ? /"(?:[^"\\]|\\[^])*"/y : /'(?:[^']|'')*'/y)
  quoted.lastIndex = start
  const text = quoted.exec(front)?.[0]
  if (text === undefined) return null
  const lines = text.split('\n')
  const endsWell = /^[^\S\n]*(?:[,\]}:#\n]|$)/.test(front.slice(start + text.length))
  return lines.length === 1 || (endsWell && !lines.slice(1).some(line => /^\s*(?:- )?[\w-]+:(?:\s|$)/.test(line))) ? start + text.length - 1 : null
}

function lineEnd(front: string, at: number): number {
  const end = front.indexOf('\n', at)
  return end === -1 ? front.length : end
}

/** Where a text under `|` or `>` ends: before the next line that is set in no further than the one it begins in. */
function blockEnd(front: string, at: number): number {
  const depth = /^\s*/.exec(front.slice(front.lastIndexOf('\n', at) + 1))?.[0].length ?? 0
  let end = lineEnd(front, at)
  while (end < front.length) {
    const next = front.slice(end + 1, lineEnd(front, end + 1))
    if (next.trim() !== '' && next.length - next.trimStart().length <= depth) break
    end = lineEnd(front, end + 1)
  }
  return end
}
