import type {Bird, Logbook, Strain} from '../logbook/book.ts'
import {sumOfShares, tidyShare} from '../logbook/tidy-share.ts'
import {ladderChicks} from './ladder-chicks.ts'
import type {LadderStep} from './ladder.ts'

/** Expected shares of the founding strains; they and `unknown` sum to 1. */
export interface Descent {
  /** every strain of the book in its order; 0 for one that is not in it */
  readonly shares: ReadonlyMap<Strain, number>
  /** what comes from birds outside the book */
  readonly unknown: number
}

export interface StrainShares {
  readonly birds: ReadonlyMap<Bird, Descent>
  /** mean over all chicks hatched in a step, those that nobody listed by their hatch's parents, in the ladder's order */
  readonly steps: readonly (Descent & {readonly step: string; readonly chicks: number})[]
}

function descentOf(strains: readonly Strain[], shares: ReadonlyMap<Strain, number>): Descent {
  const all = new Map(strains.map(strain => [strain, shares.get(strain) ?? 0] as const))
  const known = sumOfShares([...all.values()])
  // what rounding leaves over is not descent
  return {shares: all, unknown: 1 - known > 1e-12 ? tidyShare(1 - known) : 0}
}

/**
 * How much of each founding strain is in a bird, by its descent alone? The mean of its parents' shares, over the pairs that may
 * have had it; a founder is wholly its own strain. After n backcrosses the recurrent strain's share is expected to be
 * 1 − (1/2)^(n+1). It is an expectation: single birds differ, the more the fewer backcrosses.
 *
 * @see Allard 1960, Principles of Plant Breeding (from memory, no page), for the backcross shares
 */
export function strainShares(book: Logbook, ladder: readonly LadderStep[]): StrainShares {
  const birds = new Map(book.birds.map(bird => [bird, descentOf(book.strains, bird.shares)] as const))
  const sums = new Map<string, {chicks: number; parts: Map<Strain, number[]>}>()
  const add = (step: string, shares: ReadonlyMap<Strain, number>, count: number) => {
    const into = sums.get(step) ?? {chicks: 0, parts: new Map<Strain, number[]>()}
    sums.set(step, into)
    into.chicks += count
    for (const [strain, share] of shares) {
      const parts = into.parts.get(strain)
      if (parts) parts.push(count * share)
      else into.parts.set(strain, [count * share])
    }
  }
  for (const chick of ladderChicks(book)) if (chick.count > 0) add(chick.step.label, chick.shares, chick.count)
  for (const hatch of book.hatches) if (hatch.unlisted > 0 && hatch.step.kind !== 'strain') add(hatch.step.label, hatch.shares, hatch.unlisted)
  const steps = ladder.flatMap(({label}) => {
    const into = sums.get(label)
    if (!into) return []
    const means = new Map([...into.parts].map(([strain, parts]) => [strain, tidyShare(sumOfShares(parts) / into.chicks)] as const))
    return [{step: label, chicks: into.chicks, ...descentOf(book.strains, means)}]
  })
  return {birds, steps}
}
