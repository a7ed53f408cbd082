import type {Step} from '../logbook/book.ts'
import type {Day} from '../records/dates.ts'

/** Where a step stands on the ladder. */
export interface Rung {
  readonly label: string
  /** null: planned and not reached, its label is all there is */
  readonly step: Pick<Step, 'kind' | 'backcrosses' | 'interSe'> | null
  /** first possible day of its first hatch; null when no date tells */
  readonly first: Day | null
}

interface Height {
  readonly rank: number
  readonly backcrosses: number
  readonly interSe: number
}

/** What a label such as `F2`, `BC1` or `BC3F2-fell-buff` says of itself; null for a named step. */
export function readLabel(label: string): {readonly backcrosses: number; readonly interSe: number} | null {
  const match = /^(?:F(\d+)|BC(\d+)(?:F(\d+))?)(?=$|-| to )/.exec(label)
  if (!match) return null
  if (match[1] !== undefined) return {backcrosses: 0, interSe: Number(match[1]) - 1}
  return {backcrosses: Number(match[2]), interSe: match[3] === undefined ? 0 : Number(match[3]) - 1}
}

function heightOf(rung: Rung): Height {
  const {step} = rung
  if (step === null) {
    const read = readLabel(rung.label)
    return read ? {rank: 0, ...read} : {rank: 1, backcrosses: Infinity, interSe: 0}
  }
  const rank = step.kind === 'strain' ? -1 : step.kind === 'mixed' ? 2 : step.kind === 'named' ? 1 : 0
  return {rank, backcrosses: step.backcrosses, interSe: step.interSe}
}

/**
 * The order of steps on the ladder, as the breed grows: F1, F2, BC1, BC1F2, BC2 … by backcrosses, then generations inter se;
 * then the named steps that join lines; mixed birds last. Steps equal in that stand by their first hatch, then by label.
 */
export function inLadderOrder(one: Rung, other: Rung): number {
  const a = heightOf(one), b = heightOf(other)
  if (a.rank !== b.rank) return a.rank - b.rank
  if (a.backcrosses !== b.backcrosses) return a.backcrosses < b.backcrosses ? -1 : 1
  if (a.rank === 0 && a.interSe !== b.interSe) return a.interSe - b.interSe
  const first = one.first ?? Infinity, later = other.first ?? Infinity
  if (first !== later) return first < later ? -1 : 1
  if (a.interSe !== b.interSe) return a.interSe - b.interSe
  return one.label < other.label ? -1 : one.label > other.label ? 1 : 0
}
