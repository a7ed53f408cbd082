/**
 * A record's file cut in two: the front matter, in which every scalar is still the text that was written, and the keeper's own words.
 * gray-matter cuts; the upper half is read by js-yaml with its failsafe schema, which turns nothing into a number, a date or a truth.
 */
import matter from 'gray-matter'
import {FAILSAFE_SCHEMA, load, YAMLException} from 'js-yaml'
import type {Note, Spot} from './problem.ts'
import type {Raw} from './raw.ts'
import {findReferences, findYamlFaults, type YamlFault} from './yaml-faults.ts'

const refuse = () => {
  throw new TypeError('front matter is data; nothing in it is ever run')
}

/** With options of its own a call of gray-matter uses no cache. Every language but YAML is refused. */
const cutWith = (repeatedKeys: boolean) => ({
  engines: {
    // kept one level down, so that no key of the keeper's can steer gray-matter
    yaml: (text: string) => ({front: load(text, {schema: FAILSAFE_SCHEMA, json: repeatedKeys})}),
    json: refuse, javascript: refuse, js: refuse, coffee: refuse, coffeescript: refuse, cson: refuse,
  },
})
const STRICT = cutWith(false)
const LENIENT = cutWith(true)

export interface Cut {
  readonly front: Raw
  readonly body: string
}

function cut(text: string, options: typeof STRICT): Cut {
  const file = matter(text, options)
  return {front: (file.data.front as Raw | undefined) ?? {}, body: file.content}
}

/** Where the text between the dashes lies in a file: from the end of the opening line to the end of the last line before the closing one. */
export function frontRange(text: string): {readonly start: number; readonly end: number} | null {
  if (!text.startsWith('---')) return null
  const start = text.indexOf('\n')
  const end = text.indexOf('\n---', start)
  return start === -1 || end === -1 ? null : {start, end}
}

/** The text with the hard spaces of its front matter, which some editors and phones put in, turned into spaces. */
export function softened(text: string): string {
  const end = frontRange(text)?.end
  return end === undefined || !text.includes('\u00A0') ? text : text.slice(0, end).replaceAll('\u00A0', ' ') + text.slice(end)
}

/** The spot of a stretch of a text, not beyond the end of its line. */
export function spotAt(file: string, text: string, offset: number, length: number): Spot {
  const lineStart = offset === 0 ? 0 : text.lastIndexOf('\n', offset - 1) + 1
  let line = 1
  for (let at = text.indexOf('\n'); at !== -1 && at < lineStart; at = text.indexOf('\n', at + 1)) line++
  const lineEnd = text.indexOf('\n', offset)
  return {file, line, column: offset - lineStart + 1, width: Math.min(length, (lineEnd === -1 ? text.length : lineEnd) - offset)}
}

/**
 * Cuts a file and reads its front matter. Line ends are plain and the byte-order mark is gone already.
 * What is wrong is noted; null when nothing of the front matter can be read.
 */
export function readFrontMatter(file: string, text: string, note: Note): Cut | null {
  const refused = dashesAtFault(text)
  if (refused) {
    const {code, offset, length, reason, remedy} = refused
    note({code, severity: 'error', at: spotAt(file, text, offset, length), reason, remedy})
    return null
  }
  const {start, end} = frontRange(text) ?? {start: 0, end: 0}
  const front = text.slice(start, end)
  const noteAll = (faults: readonly YamlFault[]) => {
    for (const {code, offset, length, reason, remedy} of faults) note({code, severity: 'error', at: spotAt(file, text, start + offset, length), reason, remedy})
  }
  try {
    const read = cut(text, STRICT)
    const references = /(?:^|[\s[{,])[&*]\S/.test(front) ? findReferences(front) : []
    noteAll(references)
    return references.length === 0 ? read : null
  } catch (error) {
    if (error instanceof RangeError) {
      noteAll([{code: 'unreadable-front-matter', offset: 0, length: 1, reason: 'brackets stand in one another too deep to be read', remedy: 'write the record with fewer brackets'}])
      return null
    }
    if (!(error instanceof YAMLException)) throw error
    const faults = findYamlFaults(front, error.mark?.position ?? 0)
    noteAll(faults)
    return faults.every(fault => fault.code === 'repeated-key') ? cut(text, LENIENT) : null
  }
}

/** What is wrong with the lines of dashes, if anything. */
function dashesAtFault(text: string): YamlFault | null {
  const first = /^.*/.exec(text)?.[0] ?? ''
  if (!/^---(?!-)/.test(text)) return {code: 'no-front-matter', offset: 0, length: first.length, ...beginningAtFault(text, first)}
  const language = first.slice(3).trim()
  if (!/^(?:ya?ml)?$/.test(language)) {
    return {
      code: 'unreadable-front-matter', offset: 0, length: first.length,
      reason: `“${language}” stands behind the opening ---; only YAML is read, and nothing is ever run`, remedy: 'let the first line be --- and nothing else',
    }
  }
  const range = frontRange(text)
  if (range === null) return neverClosed(text)
  const closing = /^.*/.exec(text.slice(range.end + 1))?.[0] ?? ''
  if (!/^---\s*$/.test(closing)) {
    return {
      code: 'unreadable-front-matter', offset: range.end + 1, length: closing.length,
      reason: `“${closing}” stands where the front matter closes`, remedy: 'let the closing line be --- and nothing else',
    }
  }
  return null
}

function beginningAtFault(text: string, first: string): {readonly reason: string; readonly remedy: string} {
  if (text.trim() === '') return {reason: 'the file is empty', remedy: 'begin with a line of ---, then key: value lines, then another line of ---'}
  if (DASHES.test(first) && !first.startsWith('--')) return {reason: `the first line is ${first.trim()}, not ---`, remedy: 'write three plain dashes, ---; a phone likes to join two of them'}
  if (/^\s*\n---[^\S\n]*\n/.test(text)) return {reason: 'the front matter does not begin in the first line', remedy: 'take out what stands above the first ---'}
  return {reason: 'the file has no front matter: its first line is not ---', remedy: 'begin with a line of ---, then key: value lines, then another line of ---'}
}

/** Lines that were meant to be three dashes: set in, joined to long ones, or dots. */
const DASHES = /^\s*(?:[-–—]{2,}|—|\.{3})\s*$/

/** The front matter has no closing line: what was meant for it is shown, else where it opens, with the line that it ought to stand below. */
function neverClosed(text: string): YamlFault {
  const lines = text.split('\n')
  const meant = lines.findIndex((line, index) => index > 0 && DASHES.test(line))
  if (meant !== -1) {
    const offset = lines.slice(0, meant).reduce((sum, line) => sum + line.length + 1, 0)
    const line = lines[meant] ?? ''
    return {
      code: 'unreadable-front-matter', offset, length: line.length, reason: `“${line}” stands where the front matter closes`, remedy: 'let the closing line be --- and nothing else',
    }
  }
  const after = lines.findIndex((line, index) => index > 0 && line.trim() !== '' && !/^(?:[\w-]+:(?:\s|$)|\s+\S|- |#)/.test(line))
  const last = lines.slice(0, after === -1 ? undefined : after).findLastIndex(line => line.trim() !== '')
  return {
    code: 'unreadable-front-matter', offset: 0, length: 3, reason: 'the front matter that opens here is never closed', remedy: `put a line of --- below line ${last + 1}`,
  }
}
