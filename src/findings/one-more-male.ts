import type {Bird, Logbook} from '../logbook/book.ts'
import {oneMoreKinship} from '../pedigree/one-more-male.ts'
import type {Census} from './census.ts'
import type {ClosenessOfStep} from './closeness.ts'
import type {Kinship} from './inbreeding.ts'
import {NO_HARM, type PairHarm} from './pair-harm.ts'
import type {PedigreeOfBook} from './pedigree-of-book.ts'

/** The cheapest remedy: one male more. */
export interface OneMoreMale {
  readonly males: readonly Bird[]
  readonly females: readonly Bird[]
  /** mean kinship to be expected of the next generation from these breeders */
  readonly now: number
  /** the males that are there and not bred from, the one that lowers it most first */
  readonly choices: readonly {readonly male: Bird; readonly kinship: number}[]
  /** males that are left out of the choice, since they carry what kills or harms: named only beside a caution */
  readonly harmful: readonly {readonly male: Bird; readonly kinship: number}[]
}

/** A step in which more was lost in a generation than the project allows. */
export interface RatePassed {
  readonly step: string
  readonly rate: number
  readonly limit: number
}

/**
 * Which one more male, added to those bred from, helps the next generation most?
 *
 * @param choices males to choose from; those bred from already are passed over
 * @param harm who may carry what kills or harms is no choice
 * @returns null without a male or a female bred from
 * @see `oneMoreKinship` for the formula
 */
export function oneMoreMale({ownBreeders}: Census, choices: readonly Bird[], {numberOf}: PedigreeOfBook, kin: Kinship, harm: PairHarm = NO_HARM): OneMoreMale | null {
  const males = ownBreeders.filter(({sex}) => sex === 'male'), females = ownBreeders.filter(({sex}) => sex === 'female')
  if (males.length === 0 || females.length === 0) return null
  const more = choices.filter(male => !males.includes(male))
  const {now, withOne} = oneMoreKinship(kin.autosome.among([...males, ...females, ...more].map(numberOf)), males.length, females.length)
  const all = more.map((male, place) => ({male, kinship: withOne[place] ?? NaN})).sort((a, b) => a.kinship - b.kinship || (a.male.id < b.male.id ? -1 : 1))
  const isHarmful = ({male}: {readonly male: Bird}): boolean => harm.burdensOf(male).length > 0
  return {males, females, now, choices: all.filter(each => !isHarmful(each)), harmful: all.filter(isHarmful)}
}

/**
 * Has the breed lost more in a generation than the project allows? Asked of the last step mated within itself that has a rate: since the step before it,
 * else from its birds' own.
 */
export function ratePassed({project}: Logbook, steps: readonly ClosenessOfStep[]): RatePassed | null {
  const limit = project.limits.inbreedingPerGeneration
  const last = steps.filter(({step}) => step !== 'mixed').flatMap(({step, rate, realised}) => {
    const value = rate?.value ?? (realised && realised.count > 0 ? realised.rate : null)
    return value === null ? [] : [{step, rate: value}]
  }).at(-1)
  return limit !== null && last && last.rate > limit + 1e-12 ? {...last, limit} : null
}
