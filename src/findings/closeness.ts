import type {Bird} from '../logbook/book.ts'
import {meanAndDeviation} from '../statistics/mean-and-deviation.ts'
import {rateBetween, realisedSize, type RealisedSize} from '../pedigree/rate-of-inbreeding.ts'
import type {Kinship} from './inbreeding.ts'
import type {LadderStep, ReachedStep} from './ladder.ts'
import type {PedigreeOfBook} from './pedigree-of-book.ts'

/** How closely bred the birds of one step are. */
export interface ClosenessOfStep {
  readonly step: string
  readonly interSe: number
  /** banded birds of the step; tallies have no page of their own and are left out */
  readonly birds: number
  readonly unbanded: number
  /** F: mean over the birds, of their lowest and of their highest possible value; and the one bird that may be highest */
  readonly mean: number
  readonly meanLow: number
  readonly meanHigh: number
  /** mean F as if the strains' founders were unrelated: what the project's own matings have added. The rate is worked from it */
  readonly fresh: number
  readonly most: {readonly bird: Bird; readonly f: number}
  /** birds whose parents are in doubt, and those with a grandparent outside the book */
  readonly doubtful: number
  readonly atLeast: number
  /** equivalent complete generations, mean */
  readonly generations: number
  /** mean kinship among the birds, each with itself included: where F goes if they are mated among themselves at random */
  readonly kinship: number
  /** on the Z, cocks only; null without cocks */
  readonly onZ: {readonly mean: number; readonly cocks: number} | null
  /** chance that the two copies of a gene come from different strains, mean */
  readonly heterozygosity: number
  /** closed phase: what a generation cost. Against the closed step before; null in the first, and outside the closed phase */
  readonly rate: {readonly since: string; readonly value: number} | null
  /** from the closed phase's birds alone */
  readonly realised: RealisedSize | null
}

/**
 * How closely bred is each step, and how fast does it rise?
 *
 * The rate is of the closed phase only (mated inter se at least once), for a backcross sets F back: ΔF from one such step to the next, both
 * worked without what the strains' founders bring along; and from each bird's own ΔF, over birds with two generations known or more.
 *
 * @see Falconer & Mackay 1996, ch. 4; Gutiérrez et al. 2008, 2009 (from memory)
 */
export function closeness(ladder: readonly LadderStep[], {numberOf}: PedigreeOfBook, kin: Kinship, heterozygosity: Float64Array): readonly ClosenessOfStep[] {
  const steps = ladder.filter(step => step.kind === 'reached').filter(({birds}) => birds.length > 0)
  const fresh = new Map(steps.map(step => [step, mean(step.birds.map(bird => kin.since.inbreeding[numberOf(bird)]?.mean ?? 0))] as const))
  return steps.map(step => {
    const each = step.birds.map(bird => ({bird, ...kin.of(bird)}))
    const numbers = step.birds.map(numberOf)
    const cocks = each.flatMap(({onZ}) => (onZ ? [onZ.mean] : []))
    const most = each.reduce((best, here) => (here.f.high > best.f.high ? here : best))
    const before = closedBefore(step, steps)
    const change = before && rateBetween(fresh.get(before) ?? 0, fresh.get(step) ?? 0)
    return {
      step: step.label, interSe: step.step.interSe, birds: each.length, unbanded: step.chicks.hatched - each.length,
      mean: mean(each.map(({f}) => f.mean)), meanLow: mean(each.map(({f}) => f.low)), meanHigh: mean(each.map(({f}) => f.high)), fresh: fresh.get(step) ?? 0, most: {bird: most.bird, f: most.f.high},
      doubtful: each.filter(({bird}) => bird.parentage.kind === 'uncertain').length, atLeast: each.filter(({atLeast}) => atLeast).length,
      generations: mean(each.map(({equivalent}) => equivalent)), kinship: kin.autosome.meansAmong(numbers).group,
      onZ: cocks.length > 0 ? {mean: mean(cocks), cocks: cocks.length} : null, heterozygosity: mean(numbers.map(number => heterozygosity[number] ?? 0)),
      rate: before && change !== null ? {since: before.label, value: change} : null,
      realised: step.step.interSe === 0 ? null : realisedSize(each.filter(({equivalent}) => equivalent >= 2).map(({bird, equivalent}) =>
        ({inbreeding: kin.since.inbreeding[numberOf(bird)]?.mean ?? 0, generations: equivalent}))),
    }
  })
}

/** The step of the same closed phase one generation before, where it has hatched. */
function closedBefore(step: ReachedStep, steps: readonly ReachedStep[]): ReachedStep | null {
  const {interSe, kind, to, backcrosses, strains} = step.step
  if (interSe < 2) return null
  return steps.find(other => {
    const {step: at} = other
    return at.interSe === interSe - 1 && at.kind === kind && at.to === to && at.backcrosses === backcrosses && at.strains.length === strains.length && at.strains.every(strain => strains.includes(strain))
  }) ?? null
}

const mean = (values: readonly number[]): number => (values.length === 0 ? 0 : meanAndDeviation(values).mean)
