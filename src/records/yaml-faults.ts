/** What is wrong with front matter that YAML cannot read, in a keeper's words. Looked for only where the fast parse has failed. */
import {isAlias, parseDocument, visit, type Document, type YAMLError} from 'yaml'
import type {ProblemCode} from './problem-codes.ts'
import {CLOSING, unclosedBefore} from './unclosed.ts'

export interface YamlFault {
  readonly code: ProblemCode
  /** from the beginning of the text */
  readonly offset: number
  readonly length: number
  readonly reason: string
  readonly remedy: string
}

interface Words {
  readonly reason: string
  readonly remedy: string
}

const QUOTE = 'put the whole text in quotes'

const parse = (front: string): Document => parseDocument(front, {schema: 'failsafe', prettyErrors: false, logLevel: 'silent'})

/** Every key that stands twice and the first fault of grammar (those after it are mostly its echoes). `fallback` is where the fast parse gave up. */
export function findYamlFaults(front: string, fallback: number): YamlFault[] {
  const document = parse(front)
  const repeated = document.errors.filter(error => error.code === 'DUPLICATE_KEY').map(error => repeatedKey(front, error))
  const broken = document.errors.filter(error => error.code !== 'DUPLICATE_KEY').sort((a, b) => a.pos[0] - b.pos[0])
  const [first] = broken
  if (first) return [...repeated, unclosedFault(front, first) ?? {code: 'unreadable-front-matter', ...stretch(front, first.pos), ...wordsFor(first, broken, front)}]
  const unwanted = [...findReferences(front), ...findTags(document)]
  if (repeated.length + unwanted.length > 0) return [...repeated, ...unwanted]
  return [{code: 'unreadable-front-matter', offset: Math.min(fallback, front.length), length: 1, reason: 'the front matter cannot be read from here on', remedy: `${QUOTE} where it holds signs such as : # { } [ ] & * !`}]
}

/** Texts that begin with & or * and so would be taken for names of other places in the file. */
export function findReferences(front: string): YamlFault[] {
  const faults: YamlFault[] = []
  const refused = (offset: number, word: string) => {
    faults.push({code: 'unreadable-front-matter', offset, length: word.length, reason: `“${word}” would be taken for the name of another place`, remedy: QUOTE})
  }
  visit(parse(front), {
    Node(_, node) {
      const [start = 0] = node.range ?? []
      if (isAlias(node)) refused(start, `*${node.source}`)
      else if ('anchor' in node && node.anchor !== undefined) refused(Math.max(0, front.lastIndexOf(`&${node.anchor}`, start)), `&${node.anchor}`)
    },
  })
  return faults
}

function findTags(document: Document): YamlFault[] {
  return document.warnings.filter(warning => warning.code === 'TAG_RESOLVE_FAILED').map(warning => ({
    code: 'unreadable-front-matter', offset: warning.pos[0], length: warning.pos[1] - warning.pos[0],
    reason: 'a word that begins with ! would be taken for an instruction', remedy: QUOTE,
  }))
}

/** A fault's characters; one at the very end of the text points at the last thing written. */
function stretch(front: string, [start, end]: readonly [number, number]): {offset: number; length: number} {
  const offset = start >= front.length ? Math.max(0, front.trimEnd().length - 1) : start
  return {offset, length: Math.max(1, end - start)}
}

function repeatedKey(front: string, error: YAMLError): YamlFault {
  const key = /^(?:"[^"\n]*"|'[^'\n]*'|[^:\n,}]+)/.exec(front.slice(error.pos[0]))?.[0]?.trim() ?? ''
  return {code: 'repeated-key', offset: error.pos[0], length: Math.max(1, key.length), reason: `the key “${key}” stands twice`, remedy: 'keep one of the two'}
}

/** What was opened and not closed is said where it opens. */
function unclosedFault(front: string, error: YAMLError): YamlFault | null {
  const opened = unclosedBefore(front, error.pos[0])
  if (opened === null) return null
  const {sign, offset} = opened
  const at = {code: 'unreadable-front-matter', offset, length: 1} as const
  if (sign === '"' || sign === '\'') return {...at, reason: 'the quotation mark that opens here is not closed', remedy: 'close it in the same line, or take it out'}
  const isBracket = error.message.startsWith('Flow') || /must end with/.test(error.message)
  return isBracket ? {...at, reason: `the ${sign === '[' ? 'bracket' : 'brace'} that opens here is not closed`, remedy: `close it with ${CLOSING[sign]}`} : null
}

/** The remedy for a line that is nearly a key with its value. */
function keyRemedy(front: string, offset: number): string {
  const line = /^.*/.exec(front.slice(offset))?.[0] ?? ''
  const [, key, value] = /^([A-Za-z][\w-]*)(?:\s+|:)(\S.*)$/.exec(line) ?? []
  return key === undefined || value === undefined ? 'write a key, a colon, a space and the value' : `write ${key}: ${value.trim()}`
}

function wordsFor(error: YAMLError, all: readonly YAMLError[], front: string): Words {
  const found = /^\S+/.exec(front.slice(error.pos[0]))?.[0] ?? ''
  switch (error.code) {
    case 'BLOCK_AS_IMPLICIT_KEY':
      return all.some(other => other.code === 'MULTILINE_IMPLICIT_KEY' && other.pos[0] === error.pos[0])
        ? {reason: 'the next line is set in further than this one, so the two run together', remedy: 'begin every key of one record in the same column'}
        : found === '?' ? {reason: 'a question mark by itself is no text to YAML', remedy: 'put it in quotes, or write the word (unknown)'}
        : {reason: 'the text that begins here has a colon and a space in it, which start a new value', remedy: QUOTE}
    case 'MULTILINE_IMPLICIT_KEY':
      return {reason: 'this line is no key with a value', remedy: keyRemedy(front, error.pos[0])}
    case 'MISSING_CHAR':
      return error.message.includes('between flow')
        ? {reason: 'a comma is missing before this place', remedy: 'put a comma between the entries'}
        : {reason: 'a key stands here without its colon', remedy: keyRemedy(front, error.pos[0])}
    case 'BAD_INDENT':
      return error.message.startsWith('Flow')
        ? {reason: 'a bracket or brace that was opened before this place is not closed', remedy: 'close it with ] or }'}
        : {reason: 'this line does not begin in the column of those it belongs to', remedy: 'let lines that belong together begin in the same column'}
    case 'BLOCK_IN_FLOW':
      return {reason: 'a comma is missing, or a text with a colon in it is not in quotes', remedy: 'put a comma before each key inside braces, and quotes around a text with a colon'}
    case 'TAB_AS_INDENT':
      return {reason: 'the line is set in with a tab', remedy: 'use spaces'}
    case 'BAD_SCALAR_START':
      return {reason: `no text may begin with ${found.slice(0, 1)}`, remedy: QUOTE}
    case 'MULTIPLE_DOCS':
      return {reason: 'a line of dots ends the front matter before its last key', remedy: 'take the line out'}
    default:
      if (/["']/.test(front[error.pos[0] - 1] ?? '')) {
        return {reason: `a quotation mark ends the text before “${found}”`, remedy: front[error.pos[0] - 1] === '\'' ? 'put the whole text in "…" instead' : 'put the whole text in \'…\' instead'}
      }
      return {reason: `“${found}” is not expected here`, remedy: 'look at the quotes, brackets, commas and list dashes of this line; a text with such signs goes in quotes'}
  }
}

