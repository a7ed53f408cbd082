import type {Bird} from '../logbook/book.ts'
import type {Mating} from '../pedigree/pedigree.ts'
import type {Kinship} from './inbreeding.ts'
import type {PedigreeOfBook} from './pedigree-of-book.ts'

/** F of the chicks of two birds: the mean over what is doubtful, and the least and most over the parents that the two may have. */
export interface ChicksOfPair {
  readonly mean: number
  readonly low: number
  readonly high: number
}

/**
 * What would the F of their chicks be, for any two of a set of birds?
 *
 *     mean = K(a, b)
 *     range over the matings p of a and q of b:  ¼ (K(sₚ, s_q) + K(sₚ, d_q) + K(dₚ, s_q) + K(dₚ, d_q)),   ½ (K(sₚ, b) + K(dₚ, b)) where b is a parent of a
 *
 * Doubt further up is averaged in both. A parent outside the book is unrelated here, even where its strain is stated: the mean knows better, so
 * the range is widened to hold it.
 *
 * @param birds those that will be asked about; their kinships are worked at once
 */
export function pairKinship({pedigree: {animals}, numberOf}: PedigreeOfBook, kin: Kinship, birds: readonly Bird[]): (a: Bird, b: Bird) => ChicksOfPair {
  const parentsOf = (animal: number) => (animals[animal]?.matings ?? []).flatMap(({sire, dam}) => [sire, dam]).filter(parent => parent !== null)
  const asked = birds.map(numberOf)
  const all = [...new Set([...asked, ...asked.flatMap(parentsOf)])]
  const place = new Map(all.map((animal, index) => [animal, index] as const))
  const rows = kin.autosome.among(all)
  const between = (a: number | null, b: number | null): number => (a === null || b === null ? 0 : rows[place.get(a) ?? -1]?.[place.get(b) ?? -1] ?? NaN)
  const levelOf = (animal: number) => kin.autosome.flow.level[kin.autosome.flow.bases + animal] ?? 0
  /** in doubt, so that its matings are to be gone through */
  const doubts = (animal: number): readonly Mating[] | null => {
    const matings = animals[animal]?.matings ?? []
    return matings.length > 1 ? matings : null
  }

  return (one, other) => {
    const [a, b] = [numberOf(one), numberOf(other)].sort((x, y) => levelOf(y) - levelOf(x)) as [number, number]
    const mean = between(a, b)
    let low = mean, high = mean
    const take = (f: number): void => {
      low = Math.min(low, f)
      high = Math.max(high, f)
    }
    const ofYounger = doubts(a), ofOlder = doubts(b)
    for (const p of ofYounger ?? [null]) {
      for (const q of ofOlder ?? [null]) {
        if (p === null && q === null) continue
        const sides = p === null ? [a] : [p.sire, p.dam]
        take(sides.reduce<number>((sum, side) => sum + against(side, b, q), 0) / sides.length)
      }
    }
    return {mean, low, high}
  }

  /** kinship of a bird with b, if b came from this mating */
  function against(side: number | null, b: number, q: Mating | null): number {
    if (q === null || side === null) return between(side, b)
    if (side === b) return (1 + between(q.sire, q.dam)) / 2
    return (between(side, q.sire) + between(side, q.dam)) / 2
  }
}
