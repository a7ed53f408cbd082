import type {Bird, Pen} from '../logbook/book.ts'
import {maleWithHens, pairKinship, type ChicksOfPair} from './pair-kinship.ts'
import type {Kinship} from './inbreeding.ts'
import type {PedigreeOfBook} from './pedigree-of-book.ts'

/** F to be expected of a pen's chicks, by male. */
export interface PenKinship {
  readonly males: readonly {readonly male: Bird; readonly mean: number; readonly worst: ChicksOfPair & {readonly hen: Bird}}[]
  readonly hens: number
  readonly worst: ChicksOfPair & {readonly male: Bird; readonly hen: Bird}
}

/**
 * How closely bred are the chicks of this pen, by the male that had them? Every hen of the pen counts alike, living or not, and every day of it: it is asked
 * of the pen as it was put together.
 *
 * @returns null for a pen without a male or without a female on record
 */
export function penKinship(pen: Pen, pedigree: PedigreeOfBook, kin: Kinship): PenKinship | null {
  const males = [...new Set(pen.males.map(({bird}) => bird))], hens = [...new Set(pen.females.map(({bird}) => bird))]
  if (males.length === 0 || hens.length === 0) return null
  const chicksOf = pairKinship(pedigree, kin, [...males, ...hens])
  const each = males.map(male => {
    const {mean, worst} = maleWithHens(male, hens, chicksOf)
    return {male, mean, worst}
  })
  const worst = each.reduce((most, here) => (here.worst.high > most.worst.high ? here : most))
  return {males: each, hens: hens.length, worst: {...worst.worst, male: worst.male}}
}
