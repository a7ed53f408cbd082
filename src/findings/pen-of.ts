import type {Pen} from '../logbook/book.ts'
import type {Chick} from './ladder-chicks.ts'

/**
 * The pen a chick was bred in, when its hatch leaves no doubt: the only pen of the setting, or the only one that holds a
 * sire and a dam of every pair that may have had it. Null otherwise.
 */
export function penOf(chick: Chick): Pen | null {
  const pens = chick.hatch?.pens.map(({pen}) => pen) ?? []
  if (pens.length <= 1) return pens[0] ?? null
  const {pairs} = chick.parentage
  const possible = pens.filter(pen => pairs.some(pair =>
    (pair.sire === null || pen.males.some(stay => stay.bird === pair.sire)) && (pair.dam === null || pen.females.some(stay => stay.bird === pair.dam))))
  return possible.length === 1 ? possible[0] ?? null : null
}
