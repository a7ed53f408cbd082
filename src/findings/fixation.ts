import type {Alleles} from '../heredity/locus.ts'
import type {Bird} from '../logbook/book.ts'
import type {Heredity} from './heredity.ts'
import type {PedigreeOfBook} from './pedigree-of-book.ts'
import type {UnwantedAlleles} from './unwanted-alleles.ts'

/** How near a group of birds is to being rid of the unwanted alleles at one locus. */
export interface Fixation extends UnwantedAlleles {
  /** the birds it is asked of */
  readonly birds: number
  /** chance that not one of them carries an unwanted allele, all together */
  readonly clean: number
  /** how many carriers are to be expected */
  readonly carriers: number
  /** 95 % or more: it counts as fixed */
  readonly fixed: boolean
  /** those most worth testing or dropping first, 20 at most */
  readonly inTheWay: readonly InTheWay[]
  /** birds with a chance to carry it that are not in the list */
  readonly others: number
  /** else the figure is an approximation: the flock was too wide at this locus to work it out whole */
  readonly exact: boolean
  /** share of scores taken to be wrong, as the records contradict each other; 0 where they do not */
  readonly slack: number
}

export interface InTheWay {
  readonly bird: Bird
  /** chance that it carries an unwanted allele */
  readonly carries: number
  /** what `clean` would be were it not bred from */
  readonly ifDropped: number
  /** what `clean` would be were it proved without */
  readonly ifProved: number
}

/** The chance at which a trait counts as fixed. */
export const FIXED_AT = 0.95
const MOST_LISTED = 20
/** A carrier in the soft test of all birds: so small that two of them together weigh nothing. */
const SOFT = 1e-6

/**
 * How likely is it that no bird of the group carries an unwanted allele, and who stands in the way?
 *
 *     clean = P(seen, and every bird without) / P(seen)
 *
 * which is not the product of the single birds' chances: sibs carry, or do not, by the same parent. It is worked with a test on every bird that lets a carrier
 * pass with a chance ε of one in a million. With Z(ε) the likelihood of it all, and c_b the chance of bird b to be a carrier given it,
 *
 *     Z(ε)/Z(1) = P(none carries) + ε Σ P(only b carries) + …,     c_b Z(ε)/Z(1) = ε P(only b carries) + …
 *
 * so that one working gives the whole of it and, for each bird, what were it dropped: P(none carries) + P(only b carries). Proved without, a bird makes it
 * clean / P(b without). An error of the order ε² is left; where the records contradict themselves ε is the share of tests taken to be wrong.
 *
 * @param birds the group, such as the living breeders
 * @see Bayes’ rule; own arrangement
 */
export function fixationOf(asked: UnwantedAlleles, birds: readonly Bird[], heredity: Heredity, {numberOf}: PedigreeOfBook): Fixation {
  const {locus, unwanted} = asked, group = heredity.groupOf(locus), place = group.loci.indexOf(locus)
  const {flock, found} = heredity.worked(group), {slack} = found
  const isCarrier = (alleles: Alleles): boolean => alleles.some(allele => allele !== null && unwanted.includes(allele))
  const has = (at: ReturnType<typeof found.at>): number => at.reduce((sum, {is, probability}) => sum + (isCarrier(is) ? probability : 0), 0)
  const weight = ((1 - slack) * SOFT + slack / 2) / (1 - slack / 2), test = {locus: place, weight: (alleles: Alleles) => (isCarrier(alleles) ? weight : 1)}
  const told = new Map(birds.map(numberOf).map(animal => [animal, {readings: flock.readings(animal), tested: flock.tested(animal), weighed: test}] as const))
  const {all, single} = found.supposing(told, (at, logLikelihood) => {
    const whole = Math.exp(logLikelihood() - found.logLikelihood)
    return {all: whole, single: birds.map(bird => ({bird, carries: has(found.at(numberOf(bird), place)), onlyIt: whole * has(at(numberOf(bird), place))}))}
  }, true)
  const least = single.reduce((lowest, {carries}) => Math.min(lowest, 1 - carries), 1)
  const clean = within(all - single.reduce((sum, {onlyIt}) => sum + onlyIt, 0), least)
  const doubtful = single.filter(({carries}) => carries > 1e-9).map(({bird, carries, onlyIt}): InTheWay => ({
    bird, carries, ifDropped: within(clean + onlyIt / weight, 1), ifProved: carries >= 1 ? 0 : within(clean / (1 - carries), 1),
  })).sort((a, b) => Math.round((b.ifDropped - clean) * 1e6) - Math.round((a.ifDropped - clean) * 1e6) || b.carries - a.carries)
  return {
    ...asked, birds: birds.length, clean, carriers: single.reduce((sum, {carries}) => sum + carries, 0), fixed: clean >= FIXED_AT,
    inTheWay: doubtful.slice(0, MOST_LISTED), others: Math.max(0, doubtful.length - MOST_LISTED), exact: found.exact, slack,
  }
}

const within = (chance: number, most: number): number => Math.min(most, Math.max(0, chance))
