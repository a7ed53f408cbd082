/**
 * What goes wrong inside braces, where a comma starts a new key: `{left: 2024-06-30 culled, off type}` arrives as a key `left` with a value and a
 * key `off type` without one. Where the text had curly quotes, or was a decimal such as `3,2 kg`, that is the slip to name.
 */
import {curlyQuotes, opensCurly} from './curly-quotes.ts'
import {inside, keyOf, type Note, type Spot} from './problem.ts'
import type {RawMap} from './raw.ts'

export interface CutText {
  /** the key whose text was cut */
  readonly key: string
  /** the whole of it, as it was meant */
  readonly text: string
  /** the keys that are its further pieces */
  readonly pieces: readonly string[]
}

/** A key that lacks the space behind its colon. */
const RUN_TOGETHER = /^([\w-]+):(\S.*)$/s

/** Texts that a comma cut. A key without a value that `isKey` knows begins something of its own. */
export function cutTexts(map: RawMap, isKey: (key: string) => boolean): readonly CutText[] {
  const cuts: CutText[] = []
  let open: CutText | null = null
  for (const [key, value] of Object.entries(map)) {
    if (value === null && open !== null && !isKey(key) && !RUN_TOGETHER.test(key) && key !== BRACES_AS_KEY) {
      if (open.pieces.length > 0) cuts.pop()
      const decimal: boolean = /\d$/.test(open.text) && /^\d/.test(key)
      open = {key: open.key, text: `${open.text}${decimal ? ',' : ', '}${key}`, pieces: [...open.pieces, key]}
      cuts.push(open)
    } else open = typeof value === 'string' ? {key, text: value, pieces: []} : null
  }
  return cuts
}

/** Notes a text that was cut, at its first piece, or where its curly quote opens. `otherwise`: what else the pieces may have been meant for. */
export function noteCut({key, text, pieces}: CutText, at: Spot, note: Note, otherwise = ''): void {
  if (opensCurly(text)) return note(curlyQuotes(text, inside(at, key)))
  const [first = ''] = pieces
  const decimal = pieces.length === 1 && /^\d+,\d+\s*[^\d\s,]*$/.test(text)
  note({
    code: 'comma-in-braces', severity: 'error', at: keyOf(at, first),
    reason: decimal ? `inside braces the comma of “${text}” starts a new key` : `“${first}” has no value; inside braces a comma starts a new key`,
    remedy: decimal ? `write ${text.replace(',', '.')}, or "${text}" in quotes` : `put the whole text in quotes: "${text}"${otherwise}`,
  })
}

/** A key without a value that is no piece of a text: a comma too many, or a colon without its space. */
export function noteKeyAlone(key: string, at: Spot, note: Note, remedy: string): void {
  const [, name, value] = RUN_TOGETHER.exec(key) ?? []
  note({
    code: 'comma-in-braces', severity: 'error', at: keyOf(at, key),
    reason: name === undefined ? `“${key}” has no value; inside braces a comma starts a new key` : `“${key}” has no space behind its colon and so is a key without a value`,
    remedy: name === undefined ? remedy : `write ${name}: ${value}`,
  })
}

/** What the YAML parser makes of braces in the place of a key: `{{band: 24-031}}`. */
export const BRACES_AS_KEY = '[object Object]'

export function noteBraces(at: Spot, note: Note): void {
  note({code: 'wrong-form', severity: 'error', at, reason: 'braces stand where a key belongs', remedy: 'take one pair of braces out, or put square brackets around a list'})
}
