/**
 * Slips → problems: where in its file a thing stands. Positions cost many times the parse, so they are looked for only in files
 * that have something to report: their front matter is parsed again, this time keeping places.
 */
import {isAlias, isMap, isScalar, isSeq, parseDocument, type Document, type Node, type Pair} from 'yaml'
import {frontRange} from './front-matter.ts'
import type {Place, Position, Problem, Slip, Spot} from './problem.ts'

type Source = (file: string) => string | null | undefined

/** Problems with their places, sorted by file, line, column and code; the same problem at the same place is said once. */
export function locate(slips: readonly Slip[], source: Source): Problem[] {
  const place = placer(source)
  const problems = slips.map(({at, related, ...fault}): Problem => ({
    ...fault,
    place: place(at),
    ...(related === undefined ? {} : {related: related.map(other => ({place: place(other.at), note: other.note}))}),
  }))
  problems.sort(byPlace)
  return problems.filter((problem, index) => {
    const before = problems[index - 1]
    return before === undefined || byPlace(before, problem) !== 0 || before.reason !== problem.reason
  })
}

function byPlace(a: Problem, b: Problem): number {
  const order = (x: string | number, y: string | number) => (x < y ? -1 : x > y ? 1 : 0)
  return order(a.place.file, b.place.file) || order(a.place.start.line, b.place.start.line) || order(a.place.start.column, b.place.start.column) ||
    order(a.code, b.code) || order(a.reason, b.reason)
}

interface Positions {
  /** characters from and to, in the whole file */
  range(path: readonly (string | number)[], part: 'key' | 'value'): readonly [number, number]
  position(offset: number): Position
}

function placer(source: Source): (at: Spot) => Place {
  const known = new Map<string, Positions | null>()
  const positionsOf = (file: string) => {
    const found = known.get(file)
    if (found !== undefined) return found
    const text = source(file)
    const positions = text === undefined || text === null ? null : positionsIn(text)
    known.set(file, positions)
    return positions
  }
  return at => {
    if (!('path' in at)) {
      const {file, line, column, width} = at
      return {file, start: {line, column}, end: {line, column: column + width}}
    }
    const positions = positionsOf(at.file)
    if (positions === null) return {file: at.file, start: {line: 1, column: 1}, end: {line: 1, column: 1}}
    const [start, end] = positions.range(at.path, at.part ?? 'value')
    return {file: at.file, start: positions.position(start), end: positions.position(end)}
  }
}

function positionsIn(text: string): Positions {
  const starts = [0]
  for (let at = text.indexOf('\n'); at !== -1; at = text.indexOf('\n', at + 1)) starts.push(at + 1)
  const front = frontRange(text)
  const document = front && parseDocument(text.slice(front.start, front.end), {schema: 'failsafe', prettyErrors: false, uniqueKeys: false, logLevel: 'silent'})
  return {
    position(offset) {
      let [low, high] = [0, starts.length - 1]
      while (low < high) {
        const middle = (low + high + 1) >> 1
        if ((starts[middle] ?? 0) <= offset) low = middle
        else high = middle - 1
      }
      return {line: low + 1, column: offset - (starts[low] ?? 0) + 1}
    },
    range(path, part) {
      const found = document && front ? rangeIn(document, path, part) : null
      if (found === null || front === null) return [0, firstLineOf(text, 0, Infinity)]
      const [start, end] = [found[0] + front.start, found[1] + front.start]
      return [start, firstLineOf(text, start, end)]
    },
  }
}

/** The end of a stretch, or of its first line where it runs over several. */
function firstLineOf(text: string, start: number, end: number): number {
  const lineEnd = text.indexOf('\n', start)
  return Math.min(end, lineEnd === -1 ? text.length : lineEnd)
}

/** The characters of the key or value at a path; of the nearest thing above it that exists; null for the record as a whole. */
function rangeIn(document: Document, path: readonly (string | number)[], part: 'key' | 'value'): readonly [number, number] | null {
  let node: Node | null = document.contents
  let range: readonly [number, number] | null = null
  for (const [index, step] of path.entries()) {
    if (isAlias(node)) node = node.resolve(document) ?? null
    const last = index === path.length - 1
    if (isMap(node)) {
      const pair = node.items.find(item => keyText(item) === String(step))
      if (pair === undefined) return range
      const key = rangeOf(pair.key as Node | null)
      node = pair.value as Node | null
      const value = rangeOf(node)
      // a block of several lines is shown by its key, and so is a value that is not there
      range = (last && part === 'key') || value === null || (value[1] === value[0]) || (isBlock(node) && key !== null) ? key : value
    } else if (isSeq(node)) {
      const item = node.items[Number(step)] as Node | undefined
      const found = rangeOf(item ?? null)
      if (found === null) return range
      node = item ?? null
      range = found
    } else return range
  }
  return range
}

const isBlock = (node: Node | null) => (isMap(node) || isSeq(node)) && node.flow !== true

function rangeOf(node: Node | null): readonly [number, number] | null {
  return node?.range ? [node.range[0], node.range[1]] : null
}

function keyText(pair: Pair): string | null {
  return isScalar(pair.key) ? String(pair.key.value) : null
}
