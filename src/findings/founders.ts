import type {Bird, Logbook, Strain} from '../logbook/book.ts'
import {contributions} from '../pedigree/contributions.ts'
import {effectiveAncestors} from '../pedigree/effective-ancestors.ts'
import {founderGenomes} from '../pedigree/founder-genomes.ts'
import type {Census} from './census.ts'
import type {Kinship} from './inbreeding.ts'
import {currentStep, type LadderStep} from './ladder.ts'
import type {PedigreeOfBook} from './pedigree-of-book.ts'

/** What is left of those the breed was begun with. */
export interface Founders {
  /** the birds it is asked of: those of the new breed that are bred from, else all of it that live */
  readonly of: 'breeders' | 'living'
  readonly birds: readonly Bird[]
  /** greatest share first; founders whose genes are all gone stand last */
  readonly founders: readonly FounderShare[]
  /** parents outside the book, each counted as a founder of its own */
  readonly unknown: {readonly count: number; readonly share: number}
  readonly effectiveFounders: number
  /** between these, where the search was cut short */
  readonly effectiveAncestors: {readonly low: number; readonly high: number}
  readonly ancestors: readonly {readonly bird: Bird; readonly marginal: number}[]
  readonly founderGenomes: number
  readonly meanKinship: number
  /** within each strain with a share, its shares rescaled to 1 */
  readonly strains: readonly {readonly strain: Strain; readonly share: number; readonly effectiveFounders: number}[]
  /** parents of the step that the breed stands at, whose line goes on in one sex alone, or in neither */
  readonly endingLines: readonly {readonly bird: Bird; readonly sons: number; readonly daughters: number}[]
}

export interface FounderShare {
  readonly bird: Bird
  readonly strain: Strain | null
  /** of the group's genes */
  readonly share: number
  /** living birds that descend, or may descend, from it */
  readonly cocks: number
  readonly hens: number
  readonly unsexed: number
}

/**
 * What is left of the birds the breed was founded with, and on how many does it really stand? Null while no bird of the new breed lives.
 *
 * Shares are of the autosomes. Founders of one strain are kin where the strain says so; their shares count them apart all the same.
 *
 * @see `contributions`, `effectiveAncestors`, `founderGenomes`
 */
export function founders(book: Logbook, ladder: readonly LadderStep[], census: Census, {numberOf, baseOf}: PedigreeOfBook, kin: Kinship): Founders | null {
  const own = census.alive.filter(bird => bird.step.kind !== 'strain')
  const of = census.ownBreeders.length > 0 ? 'breeders' : 'living'
  const birds = of === 'breeders' ? census.ownBreeders : own
  if (birds.length === 0) return null
  const group = birds.map(numberOf)
  const {flow} = kin.autosome
  const found = contributions(flow, group)
  const through = effectiveAncestors(flow, group)
  const living = new Set(own)
  const birdOf = (number: number) => book.birds[number]
  return {
    of, birds,
    founders: found.founders.flatMap(({animal, share}): FounderShare[] => {
      const bird = birdOf(animal)
      // hens that stand for a family's unknown dam are no birds of the book
      if (!bird) return []
      return [{bird, strain: bird.strain, share, ...descending(book, living, bird)}]
    }).sort((a, b) => b.share - a.share || (a.bird.id < b.bird.id ? -1 : 1)),
    unknown: {
      count: found.unknown.length + found.founders.filter(({animal, share}) => animal >= book.birds.length && share > 0).length,
      share: found.unknown.reduce((sum, {share}) => sum + share, 0) + found.founders.reduce((sum, {animal, share}) => sum + (animal >= book.birds.length ? share : 0), 0),
    },
    effectiveFounders: found.effective,
    effectiveAncestors: {low: through.low, high: through.high},
    ancestors: through.ancestors.flatMap(({animal, unknown, marginal}) => {
      const bird = unknown === null ? birdOf(animal) : undefined
      return bird ? [{bird, marginal}] : []
    }),
    founderGenomes: founderGenomes(kin.autosome, group) ?? 0,
    meanKinship: kin.autosome.meansAmong(group).group,
    strains: book.strains.flatMap(strain => {
      const within = found.byBase.find(({base}) => base === baseOf(strain))
      return within && within.share > 0 ? [{strain, share: within.share, effectiveFounders: within.effective}] : []
    }),
    endingLines: endingLines(ladder, own),
  }
}

/** Living birds that descend, or may descend, from a founder. */
function descending(book: Logbook, alive: ReadonlySet<Bird>, founder: Bird): Pick<FounderShare, 'cocks' | 'hens' | 'unsexed'> {
  const line = new Set([founder])
  const count = {male: 0, female: 0, unknown: 0}
  for (const bird of book.birds) {
    const {parentage: {sires, dams}, maybe} = bird
    if (![...sires, ...dams].some(parent => line.has(parent.bird)) && !maybe.some(other => line.has(other))) continue
    line.add(bird)
    if (alive.has(bird)) count[bird.sex] += 1
  }
  return {cocks: count.male, hens: count.female, unsexed: count.unknown}
}

/** Cocks of the step's parents without a living son, hens without a living daughter. A chick in doubt counts for each that it may be of. */
function endingLines(ladder: readonly LadderStep[], alive: readonly Bird[]): Founders['endingLines'] {
  const step = currentStep(ladder)
  if (!step) return []
  return [...step.sires, ...step.dams].flatMap(bird => {
    const chicks = alive.filter(({parentage}) => [...parentage.sires, ...parentage.dams].some(parent => parent.bird === bird))
    const sons = chicks.filter(({sex}) => sex === 'male').length, daughters = chicks.filter(({sex}) => sex === 'female').length
    return (bird.sex === 'male' ? sons : daughters) > 0 ? [] : [{bird, sons, daughters}]
  })
}
