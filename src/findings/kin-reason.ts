import type {Bird} from '../logbook/book.ts'
import type {Mating} from '../pedigree/pedigree.ts'
import {paths, type SharedAncestor} from '../pedigree/paths.ts'
import type {Kinship} from './inbreeding.ts'
import type {PedigreeOfBook} from './pedigree-of-book.ts'

/** A part of F that comes from one ancestor which sire and dam share. */
export interface KinPart {
  /** null: a hen that no record names, one and the same for several chicks */
  readonly bird: Bird | null
  readonly share: number
  /** generations up to it by the shortest of the largest paths: 0 where the parent is the ancestor itself, 1 where it is its chick; null: every path was too small to list */
  readonly up: {readonly fromSire: number; readonly fromDam: number} | null
}

/** Why is a bird's F what it is? Of the likeliest pair that it may come from. */
export interface KinReason {
  readonly kind: 'pair'
  readonly sire: Bird
  readonly dam: Bird
  /** of this pair, and of how many */
  readonly chance: number
  readonly pairs: number
  /** F of a chick of this pair: the parts, the others and the strains' together */
  readonly f: number
  /** three at most, the largest first */
  readonly parts: readonly KinPart[]
  /** shared ancestors that are not among the parts */
  readonly others: {readonly count: number; readonly share: number}
  /** from founders being kin, by their strain or flock or as stated */
  readonly fromStrains: number
}

/** founder: no parents on record · one-of: found without its band · outside: a parent of the likeliest pair is not in the book */
export type NoKinReason = {readonly kind: 'founder' | 'one-of' | 'outside'}

const TOLD = 3
/** A part that would be printed as 0.0 % is summed with the others. */
const LEAST = 0.0005
const SEARCH = {limit: 12, generations: 12, steps: 4000}

/**
 * Which shared ancestors make a bird as closely bred as it is? Chicks of one pair share the answer, which is worked when it is first asked for.
 *
 * @see `paths` for the parts
 * @example two half sibs mated, unrelated otherwise: one part, 0.125, up 1 and 1
 */
export function kinReasons({pedigree: {animals}, birds, numberOf}: PedigreeOfBook, kin: Kinship): (bird: Bird) => KinReason | NoKinReason {
  type OfPair = Omit<KinReason, 'chance' | 'pairs'>
  const known = new Map<string, OfPair>()

  const ofPair = (sire: number, dam: number): OfPair | null => {
    const key = `${sire} ${dam}`, before = known.get(key), father = birds[sire], mother = birds[dam]
    if (before) return before
    if (!father || !mother) return null
    const {kinship, ancestors, fromFounders} = paths(kin.autosome, sire, dam, SEARCH)
    const told = ancestors.slice(0, TOLD).filter((ancestor, place) => place === 0 || ancestor.kinship >= LEAST), rest = ancestors.slice(told.length)
    const fresh: OfPair = {
      kind: 'pair', sire: father, dam: mother, f: kinship, fromStrains: fromFounders,
      parts: told.map(ancestor => ({bird: birds[ancestor.animal] ?? null, share: ancestor.kinship, up: upTo(ancestor)})),
      others: {count: rest.length, share: rest.reduce((sum, ancestor) => sum + ancestor.kinship, 0)},
    }
    known.set(key, fresh)
    return fresh
  }

  return bird => {
    const {matings = [], oneOf} = animals[numberOf(bird)] ?? {}
    if (oneOf) return {kind: 'one-of'}
    const mating = likeliest(matings)
    if (mating === null) return {kind: 'founder'}
    const reason = mating.sire === null || mating.dam === null ? null : ofPair(mating.sire, mating.dam)
    return reason === null ? {kind: 'outside'} : {...reason, chance: mating.chance, pairs: matings.length}
  }
}

/** The first of equals, as F's `likeliest` takes it. */
const likeliest = ([first, ...others]: readonly Mating[]): Mating | null =>
  first === undefined ? null : others.reduce((best, here) => (here.chance > best.chance + 1e-12 ? here : best), first)

/** Of the paths that were listed the shortest; the largest come first. */
function upTo({paths: listed}: SharedAncestor): KinPart['up'] {
  const [shortest] = [...listed].sort((a, b) => a.up[0].length + a.up[1].length - b.up[0].length - b.up[1].length)
  return shortest ? {fromSire: shortest.up[0].length - 1, fromDam: shortest.up[1].length - 1} : null
}
