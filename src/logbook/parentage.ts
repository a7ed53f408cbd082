/** Parentage from weighed pairs: who may have had a chick together, and with what chance. */
import type {Bird, Pair, Parent, Parentage, Strain} from './book.ts'

export const FOUNDER: Parentage = {kind: 'founder', pairs: [], sires: [], dams: []}

/** Both parents are unknown birds. */
export const UNKNOWN_PARENTS: Parentage = {kind: 'uncertain', pairs: [{sire: null, dam: null, chance: 1}], sires: [], dams: []}

/** Strains of parents outside the book, where they are stated. */
export interface Outside {
  readonly sire: Strain | null
  readonly dam: Strain | null
}

/** Pairs with weights of any sum become chances that sum to 1; the same two birds are one pair. The likeliest stand first. */
export function parentageOf(weighed: readonly Pair[], outside: Outside): Parentage {
  const merged = new Map<string, {sire: Bird | null; dam: Bird | null; chance: number}>()
  let sum = 0
  for (const {sire, dam, chance} of weighed) {
    if (chance <= 0) continue
    sum += chance
    const key = `${sire?.id ?? ''}\n${dam?.id ?? ''}`
    const same = merged.get(key)
    if (same) same.chance += chance
    else merged.set(key, {sire, dam, chance})
  }
  if (sum === 0) return UNKNOWN_PARENTS
  const pairs = [...merged.values()].map((pair): Pair => ({...pair, chance: merged.size === 1 ? 1 : pair.chance / sum}))
  pairs.sort((a, b) => b.chance - a.chance || compare(a.sire?.id, b.sire?.id) || compare(a.dam?.id, b.dam?.id))
  const [only] = pairs
  return {
    kind: pairs.length === 1 && only?.sire && only.dam ? 'known' : 'uncertain', pairs,
    sires: oneSide(pairs, pair => pair.sire), dams: oneSide(pairs, pair => pair.dam),
    ...(outside.sire || outside.dam ? {outside} : {}),
  }
}

function oneSide(pairs: readonly Pair[], side: (pair: Pair) => Bird | null): readonly Parent[] {
  const chances = new Map<Bird, number>()
  let unknown = false
  for (const pair of pairs) {
    const bird = side(pair)
    if (bird) chances.set(bird, (chances.get(bird) ?? 0) + pair.chance)
    else unknown = true
  }
  if (chances.size === 1 && !unknown) return [...chances.keys()].map(bird => ({bird, chance: 1}))
  return [...chances].map(([bird, chance]) => ({bird, chance})).sort((a, b) => b.chance - a.chance || compare(a.bird.id, b.bird.id))
}

const compare = (a = '', b = ''): number => (a < b ? -1 : a > b ? 1 : 0)
