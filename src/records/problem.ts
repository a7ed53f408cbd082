/**
 * What is wrong with a record, as data. A slip says *where* as a path into the record (cheap, made while reading);
 * a problem says it as line and column (made by `locate`, only for files that have something to report).
 */
import type {ProblemCode} from './problem-codes.ts'

/** Where in a record a thing stands, before anybody needs its line: a path of keys and list positions, or a cell of a table. */
export type Spot =
  | {readonly file: string; readonly path: readonly (string | number)[]; readonly part?: 'key' | 'value'}
  | {readonly file: string; readonly line: number; readonly column: number; readonly width: number}

export interface Position {
  /** from 1 */
  readonly line: number
  /** from 1 */
  readonly column: number
}

export interface Place {
  readonly file: string
  readonly start: Position
  readonly end: Position
}

export type Severity = 'error' | 'warning'

interface Fault {
  readonly code: ProblemCode
  readonly severity: Severity
  /** what was found and what was expected, in the keeper's words */
  readonly reason: string
  /** the edit to make */
  readonly remedy: string
}

export interface Slip extends Fault {
  readonly at: Spot
  readonly related?: readonly {readonly at: Spot; /** words that the place follows when printed: `first given at` */ readonly note: string}[]
}

export interface Problem extends Fault {
  readonly place: Place
  readonly related?: readonly {readonly place: Place; readonly note: string}[]
}

/** Takes slips as they are found; reading goes on past each. */
export type Note = (slip: Slip) => void

/** The spot of something inside a spot: one more step along its path. */
export function inside(at: Spot, ...steps: (string | number)[]): Spot {
  return 'path' in at ? {file: at.file, path: [...at.path, ...steps]} : at
}

/** The spot of a key itself rather than of its value. */
export function keyOf(at: Spot, key: string): Spot {
  return 'path' in at ? {file: at.file, path: [...at.path, key], part: 'key'} : at
}
