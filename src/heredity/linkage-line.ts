import {orderAlong} from './gene-block.ts'
import type {Linkage, Locus} from './locus.ts'

/** A linkage that the order of its loci along the chromosome has no room for. */
export interface StrayLinkage {
  readonly linkage: Linkage
  /** share of gametes that cross over between the two as they stand, neighbours crossing over by themselves */
  readonly implied: number
  /** the loci that stand between the two, by number */
  readonly between: readonly number[]
}

/** The same stretch mapped in two studies differs by so much, without either being a slip (common practice, no source). */
const MAPS_DIFFER = 0.05

/**
 * Which linkages do not hold in the order in which linked loci are taken to lie?
 *
 *     r = ½ · (1 − Π over neighbours between the two of (1 − 2rᵢ))
 *
 * Only neighbours' shares are reckoned with, without interference (Haldane 1919, from memory); two neighbours whose share nothing states cross over in ½. A
 * linkage of two that are not neighbours is stray when the share that follows differs from its own by more than `MAPS_DIFFER`.
 */
export function strayLinkages(loci: readonly Locus[], linkages: readonly Linkage[]): readonly StrayLinkage[] {
  const orders = orderAlong(loci, linkages)
  return linkages.flatMap((linkage): StrayLinkage[] => {
    const [a, b] = linkage.loci, order = orders.find(each => each.includes(a) && each.includes(b))
    if (!order) return []
    const [from, to] = [order.indexOf(a), order.indexOf(b)].sort((x, y) => x - y) as [number, number]
    if (to - from < 2) return []
    const stretch = order.slice(from, to + 1)
    const product = stretch.slice(1).reduce((left, locus, place) => left * (1 - 2 * recombinationBetween(stretch[place] ?? locus, locus, linkages)), 1)
    const implied = (1 - product) / 2
    return Math.abs(implied - linkage.recombination) <= MAPS_DIFFER ? [] : [{linkage, implied, between: stretch.slice(1, -1)}]
  })
}

const recombinationBetween = (a: number, b: number, linkages: readonly Linkage[]): number =>
  linkages.find(({loci}) => loci.includes(a) && loci.includes(b))?.recombination ?? 0.5
