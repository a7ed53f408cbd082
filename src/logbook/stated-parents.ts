/** What a chick's line or a bird's file says of its own sire and dam. */
import type {ParentRead} from '../records/schema/parts.ts'
import type {Ref} from '../records/scalars.ts'
import type {Spot} from '../records/problem.ts'
import type {Bird, Strain} from './book.ts'
import type {Bench} from './bench.ts'
import {chancesDoNotSum, SLACK} from './inspect/chances-do-not-sum.ts'
import {chancesWanting} from './inspect/chances-wanting.ts'

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

/** How the names in a statement become birds: those of one sex, at the time of one laying. */
export interface Naming {
  find(band: Ref): Bird | null
  strain(ref: Ref): Strain | null
  /** any of those a keeper had then */
  keptBy(keeper: Ref): readonly Bird[]
}

export function statedParent(read: ParentRead | undefined, at: Spot, naming: Naming, {note}: Pick<Bench, 'note'>): StatedParent {
  if (read === undefined) return NOT_STATED
  if (read.kind === 'outside') {
    const strain = read.strain ? naming.strain(read.strain) : null
    return {candidates: strain ? [{bird: null, chance: 1}] : null, strain, written: true}
  }
  if (read.kind === 'keeper') return written(naming.keptBy(read.keeper).map((bird, _, all) => ({bird, chance: 1 / all.length})))
  const named = (band: Ref) => (band.text === 'unknown' ? null : naming.find(band))
  if (read.birds.every(({chance}) => chance === null)) return written(read.birds.map(({band}, _, all) => ({bird: named(band), chance: 1 / all.length})))

  const sum = read.birds.reduce((total, {chance}) => total + (chance ?? 0), 0)
  const wanting = sum < 1 - SLACK ? 1 - sum : 0
  if (sum > 1 + SLACK) note(chancesDoNotSum(at, sum))
  if (wanting > 0) note(chancesWanting(at, sum))
  const found = read.birds.map(({band, chance}): Candidate => ({bird: named(band), chance: (chance ?? 0) / (sum + wanting)}))
  return written(wanting > 0 ? [...found, {bird: null, chance: wanting}] : found)
}

const written = (candidates: readonly Candidate[]): StatedParent => ({candidates: candidates.length === 0 ? null : candidates, strain: null, written: true})
