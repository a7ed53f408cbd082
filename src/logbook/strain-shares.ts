/** What share of each founding strain a chick is expected to carry: the mean of its parents' shares, over the pairs that are possible. */
import type {Bird, Parentage, Strain} from './book.ts'
import {sumOfShares, tidyShare} from './tidy-share.ts'

export type Shares = ReadonlyMap<Strain, number>

/**
 * How much of each strain is in a chick?
 *
 *     share = Σ over pairs  chance · ½ (share of the sire + share of the dam)
 *
 * An expectation over many chicks of such parents; the true share of one chick varies about it.
 *
 * @param parentage possible pairs, chances summing to 1; the parents' own shares are known already
 * @returns 0 to 1 for each strain; the sum is 1 less what comes from parents of unknown strain
 * @see University lessons on backcrossing: after n backcrosses the recurrent share is 1 − (1/2)^(n+1)
 * @example F1 × recurrent → 0.75
 */
export function strainShares({sires, dams, pairs, outside}: Parentage): Shares {
  const shares = new Map<Strain, number>()
  const unknown = (side: 'sire' | 'dam') => sumOfShares(pairs.map(pair => (pair[side] === null ? pair.chance : 0)))
  for (const [side, parents] of [['sire', sires], ['dam', dams]] as const) {
    const strain = outside?.[side] ?? null
    const candidates = parents.map(({bird, chance}): readonly [Shares, number] => [bird.shares, chance])
    const beyond = strain ? unknown(side) : 0
    if (strain && beyond > 0) candidates.push([new Map([[strain, 1]]), beyond])
    for (const [of, share] of meanShares(candidates)) shares.set(of, tidyShare((shares.get(of) ?? 0) + share / 2))
  }
  return shares
}

/** The mean of shares by their chances; where all candidates agree it is their share itself, without rounding. */
function meanShares(candidates: readonly (readonly [Shares, number])[]): Shares {
  const chance = sumOfShares(candidates.map(([, each]) => each))
  const mean = new Map<Strain, number>()
  for (const strain of new Set(candidates.flatMap(([shares]) => [...shares.keys()]))) {
    const [first = 0, ...others] = candidates.map(([shares]) => shares.get(strain) ?? 0)
    const even = others.every(value => value === first)
    mean.set(strain, even ? first * chance : sumOfShares(candidates.map(([shares, each]) => each * (shares.get(strain) ?? 0))))
  }
  return mean
}

/** Shares of a bird of a pure strain. */
export const pureShares = (strain: Bird['strain']): Shares => (strain ? new Map([[strain, 1]]) : new Map())
