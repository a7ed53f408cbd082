import type {Bird, Logbook, Pen} from '../logbook/book.ts'
import type {Census} from './census.ts'
import {maleWithHens, pairKinship, type ChicksOfPair} from './pair-kinship.ts'
import type {Kinship} from './inbreeding.ts'
import {lastPens} from './last-pen.ts'
import type {PedigreeOfBook} from './pedigree-of-book.ts'

/** One male set against the hens of one pen. */
export interface MaleForPen {
  readonly male: Bird
  /** he stands in it now */
  readonly here: boolean
  /** F of the chicks: mean over the hens of the mean, least and most */
  readonly mean: number
  readonly worst: ChicksOfPair & {readonly hen: Bird}
  /** hens whose chicks may pass the project's limit for one mating */
  readonly overLimit: number
  /** his parents are not all in the book, or some hen's are not: F is at least what is told */
  readonly atLeast: boolean
}

export interface PenToFill {
  /** null: hens of the new breed kept for breeding that stand in no pen yet */
  readonly pen: Pen | null
  /** the living that were put into it last */
  readonly hens: readonly Bird[]
  /** the males to choose from, the one whose chicks are least inbred first */
  readonly males: readonly MaleForPen[]
}

export interface Pairings {
  /** to choose from: living males of the new breed that are bred from, kept on record, or hatched in the last year and a half */
  readonly males: readonly Bird[]
  readonly pens: readonly PenToFill[]
  /** the project's limit for one mating; null where it states none */
  readonly limit: number | null
  chicksOf(a: Bird, b: Bird): ChicksOfPair
}

/** A year and a half: this season's cockerels and last season's. */
const YOUNG_DAYS = 550

/**
 * Which cockerel should go into which pen? Each male that may be chosen against the living hens of each pen of the latest season, and against those kept
 * for breeding that stand in none, as if they were a pen of their own; by the F their chicks would have. The project's limit is tried at the upper end of
 * the range.
 *
 * Kinship is not all: a male of the least kin may be the wrong bird. It says what a choice costs.
 */
export function malesForPens(book: Logbook, census: Census, pedigree: PedigreeOfBook, kin: Kinship): Pairings {
  const breeders = new Set(census.ownBreeders)
  const isYoung = ({hatched}: Bird) => hatched !== null && hatched.last >= book.asOf - YOUNG_DAYS
  const males = census.alive.filter(bird => bird.sex === 'male' && bird.step.kind !== 'strain' && (breeders.has(bird) || isYoung(bird)))
  const living = new Set(census.alive), last = lastPens(census.pens)
  const hensOf = (pen: Pen) => [...new Set(pen.females.map(({bird}) => bird))].filter(hen => living.has(hen) && last.get(hen) === pen)
  const limit = book.project.limits.matingInbreeding
  const waiting = census.ownBreeders.filter(bird => bird.sex === 'female' && !last.has(bird))
  const penned = [...census.pens.map(pen => ({pen, hens: hensOf(pen)})), {pen: null, hens: waiting}].filter(({hens}) => hens.length > 0)
  const chicksOf = pairKinship(pedigree, kin, [...new Set([...males, ...penned.flatMap(each => each.hens)])])
  return {
    males, limit, chicksOf,
    pens: penned.map(({pen, hens: theirs}) => ({
      pen, hens: theirs,
      males: males.map((male): MaleForPen => {
        const {each, mean, worst} = maleWithHens(male, theirs, chicksOf)
        return {
          male, here: pen?.males.some(({bird}) => bird === male) ?? false, mean, worst,
          overLimit: limit === null ? 0 : each.filter(({high}) => high > limit + 1e-12).length, atLeast: theirs.some(hen => kin.atLeast(male, hen)),
        }
      }).sort((a, b) => a.mean - b.mean || a.worst.high - b.worst.high || (a.male.id < b.male.id ? -1 : 1)),
    })),
  }
}
