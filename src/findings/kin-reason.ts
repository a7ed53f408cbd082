import type {Bird} from '../logbook/book.ts'
import type {Mating} from '../pedigree/pedigree.ts'
import {paths, type SharedAncestor} from '../pedigree/paths.ts'
import {founderKin, type FounderKin} from './founder-kin.ts'
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

/** Why are a sire and a dam kin? */
export interface PairReason {
  readonly kind: 'pair'
  readonly sire: Bird
  readonly dam: Bird
  /** F of a chick of this pair: the parts, the others and the strains' together */
  readonly f: number
  /** three at most, the largest first */
  readonly parts: readonly KinPart[]
  /** shared ancestors that are not among the parts */
  readonly others: {readonly count: number; readonly share: number}
  /** from founders being kin, by their strain or flock or as stated */
  readonly fromStrains: number
  /** the two founders that give most of that, asked for where no ancestor gives more */
  readonly founders: FounderKin | null
}

/** Why is a bird's F what it is? Of the likeliest pair that it may come from. */
export interface KinReason extends PairReason {
  /** of this pair; of how many it is one, and how many are as likely */
  readonly chance: number
  readonly pairs: number
  readonly alike: number
}

/** founder: no parents on record · one-of: found without its band · outside: a parent of the likeliest pair is not in the book */
export type NoKinReason = {readonly kind: 'founder' | 'one-of' | 'outside'}

const TOLD = 3
/** A part below half a per cent is summed with the others. */
const LEAST = 0.005
const SEARCH = {limit: 12, generations: 12, steps: 4000}

/**
 * Which shared ancestors make two birds kin, and their chicks as closely bred as they would be? A pair's answer is worked when it is first asked for.
 *
 * @see `paths` for the parts
 * @example two half sibs mated, unrelated otherwise: one part, 0.125, up 1 and 1
 */
export function pairReasons(pedigree: PedigreeOfBook, kin: Kinship): (sire: Bird, dam: Bird) => PairReason {
  const {birds, numberOf} = pedigree, foundersOf = founderKin(pedigree, kin)
  const known = new Map<Bird, Map<Bird, PairReason>>()
  return (sire, dam) => {
    const ofSire = known.get(sire) ?? new Map<Bird, PairReason>()
    known.set(sire, ofSire)
    const before = ofSire.get(dam)
    if (before) return before
    const {kinship, ancestors, fromFounders} = paths(kin.autosome, numberOf(sire), numberOf(dam), SEARCH)
    const told = ancestors.slice(0, TOLD).filter((ancestor, place) => place === 0 || ancestor.kinship >= LEAST), rest = ancestors.slice(told.length)
    const fresh: PairReason = {
      kind: 'pair', sire, dam, f: kinship, fromStrains: fromFounders, founders: fromFounders > (told[0]?.kinship ?? 0) ? foundersOf(sire, dam) : null,
      parts: told.map(ancestor => ({bird: birds[ancestor.animal] ?? null, share: ancestor.kinship, up: upTo(ancestor)})),
      others: {count: rest.length, share: rest.reduce((sum, ancestor) => sum + ancestor.kinship, 0)},
    }
    ofSire.set(dam, fresh)
    return fresh
  }
}

/** Which shared ancestors make a bird as closely bred as it is? Those of the likeliest pair that it may come from; chicks of one pair share the answer. */
export function kinReasons({pedigree: {animals}, birds, numberOf}: PedigreeOfBook, ofPair: ReturnType<typeof pairReasons>): (bird: Bird) => KinReason | NoKinReason {
  return bird => {
    const {matings = [], oneOf} = animals[numberOf(bird)] ?? {}
    if (oneOf) return {kind: 'one-of'}
    const mating = likeliest(matings)
    if (mating === null) return {kind: 'founder'}
    const sire = birds[mating.sire ?? -1], dam = birds[mating.dam ?? -1]
    return sire && dam ? {...ofPair(sire, dam), chance: mating.chance, pairs: matings.length, alike: matings.filter(({chance}) => chance > mating.chance - 1e-9).length} : {kind: 'outside'}
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
