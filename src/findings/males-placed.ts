import type {Bird} from '../logbook/book.ts'
import {cheapestPlaces} from './cheapest-places.ts'
import type {MaleForPen, Pairings, PenToFill} from './males-for-pens.ts'

/** One pen and the male put into it. */
export interface PlacedMale {
  readonly pen: PenToFill
  /** null: there are fewer males than pens, and none was left for this one */
  readonly placed: MaleForPen | null
  /** males that would be less kin here on average and serve another pen */
  readonly elsewhere: readonly MaleForPen[]
  /** from this F on a mating is to be avoided: more than the project's limit, or as close as full brother and sister and closer */
  readonly mark: {readonly value: number; readonly of: 'limit' | 'sibs'}
  /** males that reach the mark with some hen of the pen, or may */
  readonly avoid: readonly MaleForPen[]
  /** hens of the pen with whom the male put there does */
  readonly apart: readonly Bird[]
}

export interface MalesPlaced {
  readonly pens: readonly PlacedMale[]
  /** F of the chicks, mean over all hens that have a male; null where no pen has one */
  readonly mean: number | null
}

/** F of the chicks of full brother and sister, or of parent and child, of strangers. */
const AS_SIBS = 0.25

/**
 * Which male should go into which pen, no male into two? Hens in no pen yet are one more place.
 *
 * So that F of the chicks, mean over all hens with the male of their pen, is the least there can be. What is told to be avoided is a male who, with some
 * hen of the pen, may pass the project's limit for one mating; where none keeps within it, or none is stated, one who may reach 25%, as full sibs do.
 *
 * Kinship alone is asked, as in `malesForPens`.
 */
export function malesPlaced({males, pens, limit, chicksOf}: Pairings): MalesPlaced {
  const inPen = pens.map(pen => new Map(pen.males.map(each => [each.male, each] as const)))
  const inPlace = cheapestPlaces(pens.map(({hens}, place) => males.map(male => (inPen[place]?.get(male)?.mean ?? NaN) * hens.length)))
  const chosen = inPlace.map((column, place) => (column === null ? null : inPen[place]?.get(males[column] as Bird) ?? null))
  const filled = pens.flatMap(({hens}, place) => (chosen[place] ? [{hens: hens.length, mean: chosen[place].mean}] : []))
  const hens = filled.reduce((sum, each) => sum + each.hens, 0)
  return {
    mean: hens === 0 ? null : filled.reduce((sum, each) => sum + each.mean * each.hens, 0) / hens,
    pens: pens.map((pen, place): PlacedMale => {
      const placed = chosen[place] ?? null, mark = markOf(pen, limit)
      const reaches = (f: number): boolean => (mark.of === 'limit' ? f > mark.value + 1e-12 : f >= mark.value - 1e-12)
      return {
        pen, placed, mark, elsewhere: placed === null ? [] : pen.males.filter(({mean}) => mean < placed.mean - 1e-9),
        avoid: pen.males.filter(({worst}) => reaches(worst.high)), apart: placed === null ? [] : pen.hens.filter(hen => reaches(chicksOf(placed.male, hen).high)),
      }
    }),
  }
}

/** The limit has something to say where some male keeps within it. */
function markOf({males}: PenToFill, limit: number | null): PlacedMale['mark'] {
  return limit !== null && males.some(({overLimit}) => overLimit === 0) ? {value: limit, of: 'limit'} : {value: Math.max(AS_SIBS, limit ?? 0), of: 'sibs'}
}
