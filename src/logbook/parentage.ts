/** Parentage from weighed pairs: who may have had a chick together, and with what chance. */
import type {Bird, Pair, Parent, Parentage, Strain} from './book.ts'
import {sumOfShares, tidyShare} from './tidy-share.ts'

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
  const merged = new Map<string, {readonly sire: Bird | null; readonly dam: Bird | null; readonly weights: number[]}>()
  for (const {sire, dam, chance} of weighed) {
    if (chance <= 0) continue
    const key = `${sire?.id ?? ''}\n${dam?.id ?? ''}`
    const same = merged.get(key)
    if (same) same.weights.push(chance)
    else merged.set(key, {sire, dam, weights: [chance]})
  }
  const whole = sumOfShares([...merged.values()].flatMap(({weights}) => weights))
  if (whole === 0) return UNKNOWN_PARENTS
  const pairs = [...merged.values()].map(({sire, dam, weights}): Pair => ({sire, dam, chance: merged.size === 1 ? 1 : tidyShare(sumOfShares(weights) / whole)}))
  pairs.sort((a, b) => b.chance - a.chance || compare(a.sire?.id, b.sire?.id) || compare(a.dam?.id, b.dam?.id))
  const [only] = pairs
  return {
    kind: pairs.length === 1 && only?.sire && only.dam ? 'known' : 'uncertain', pairs,
    sires: oneSide(pairs, pair => pair.sire), dams: oneSide(pairs, pair => pair.dam),
    ...(outside.sire || outside.dam ? {outside} : {}),
  }
}

function oneSide(pairs: readonly Pair[], side: (pair: Pair) => Bird | null): readonly Parent[] {
  const chances = new Map<Bird, number[]>()
  let unknown = false
  for (const pair of pairs) {
    const bird = side(pair)
    if (!bird) unknown = true
    else if (chances.has(bird)) chances.get(bird)?.push(pair.chance)
    else chances.set(bird, [pair.chance])
  }
  if (chances.size === 1 && !unknown) return [...chances.keys()].map(bird => ({bird, chance: 1}))
  return [...chances].map(([bird, own]) => ({bird, chance: sumOfShares(own)})).sort((a, b) => b.chance - a.chance || compare(a.bird.id, b.bird.id))
}

const compare = (a = '', b = ''): number => (a < b ? -1 : a > b ? 1 : 0)
