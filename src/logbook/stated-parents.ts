/** What a chick's line or a bird's file says of its own sire and dam. */
import type {ParentRead} from '../records/schema/parts.ts'
import type {Spot} from '../records/problem.ts'
import type {Span} from './band-book.ts'
import type {Bench} from './bench.ts'
import type {Birds} from './birds.ts'
import type {Bird, Keeper, Strain} from './book.ts'
import type {Directory} from './directory.ts'
import {chancesDoNotSum, SLACK} from './inspect/chances-do-not-sum.ts'

export interface Candidate {
  /** null: a bird outside the book */
  readonly bird: Bird | null
  readonly chance: number
}

/** One side. `candidates` null: nothing is said, or only that nobody knows. */
export interface StatedParent {
  readonly candidates: readonly Candidate[] | null
  /** an outside bird's strain */
  readonly strain: Strain | null
  /** something was written here, though it may name nobody that is known */
  readonly written: boolean
}

export const NOT_STATED: StatedParent = {candidates: null, strain: null, written: false}

export function statedParent(
  read: ParentRead | undefined, at: Spot, birds: Birds, strains: Directory<Strain>, when: Span | null, keeper: Keeper | null, as: 'male' | 'female', bench: Bench,
): StatedParent {
  if (read === undefined) return NOT_STATED
  if (read.kind === 'outside') {
    const strain = read.strain ? strains.find(read.strain) : null
    return {candidates: strain ? [{bird: null, chance: 1}] : null, strain, written: true}
  }
  const sum = read.birds.reduce((total, {chance}) => total + (chance ?? 0), 0)
  const withChances = read.birds.some(({chance}) => chance !== null)
  if (withChances && Math.abs(sum - 1) > SLACK) bench.note(chancesDoNotSum(at, sum))
  const even = 1 / Math.max(1, read.birds.length)
  const found = read.birds.map(({band, chance}): Candidate => ({
    bird: band.text === 'unknown' ? null : birds.find(band, when, keeper, as),
    chance: withChances ? (chance ?? 0) / (sum > 0 ? sum : 1) : even,
  }))
  return {candidates: found.length === 0 ? null : found, strain: null, written: true}
}

