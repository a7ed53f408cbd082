import type {Bird} from '../logbook/book.ts'
import {meanAndDeviation} from '../statistics/mean-and-deviation.ts'
import {rateBetween, realisedSize, type Bred, type RealisedSize} from '../pedigree/rate-of-inbreeding.ts'
import type {Kinship} from './inbreeding.ts'
import type {LadderStep} from './ladder.ts'
import {closingOf, stepBefore} from './line-steps.ts'
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
 * worked without what the strains' founders bring along; and from each bird's own ΔF, over birds with two generations known or more. A bird's own counts from the closing of the line:
 *
 *     ΔF(i) = 1 − ((1 − F(i)) / (1 − F₀))^(1/g)      F₀ mean F of the step that closed it, g generations mated inside since
 *
 * In an F2 or F3 of unrelated parents g is t − 1 of the equivalent generations t; after backcrosses t counts generations in which F could not rise, and would thin the rate.
 *
 * @see Falconer & Mackay 1996, ch. 4; Gutiérrez et al. 2008, 2009 (from memory)
 */
export function closeness(ladder: readonly LadderStep[], pedigree: PedigreeOfBook, kin: Kinship, heterozygosity: Float64Array): readonly ClosenessOfStep[] {
  const {numberOf} = pedigree
  const steps = ladder.filter(step => step.kind === 'reached').filter(({birds}) => birds.length > 0)
  const fresh = new Map(steps.map(step => [step, mean(step.birds.map(bird => kin.since.inbreeding[numberOf(bird)]?.mean ?? 0))] as const))
  return steps.map(step => {
    const each = step.birds.map(bird => ({bird, ...kin.of(bird)}))
    const numbers = step.birds.map(numberOf)
    const cocks = each.flatMap(({onZ}) => (onZ ? [onZ.mean] : []))
    const most = each.reduce((best, here) => (here.f.high > best.f.high ? here : best))
    const closing = closingOf(step, steps), before = step.step.interSe < 2 ? null : stepBefore(step, steps)
    const change = before && rateBetween(fresh.get(before) ?? 0, fresh.get(step) ?? 0)
    return {
      step: step.label, interSe: step.step.interSe, birds: each.length, unbanded: step.chicks.hatched - each.length,
      mean: mean(each.map(({f}) => f.mean)), meanLow: mean(each.map(({f}) => f.low)), meanHigh: mean(each.map(({f}) => f.high)), fresh: fresh.get(step) ?? 0, most: {bird: most.bird, f: most.f.high},
      doubtful: each.filter(({bird}) => bird.parentage.kind === 'uncertain').length, atLeast: each.filter(({atLeast}) => atLeast).length,
      generations: mean(each.map(({equivalent}) => equivalent)), kinship: kin.autosome.meansAmong(numbers).group,
      onZ: cocks.length > 0 ? {mean: mean(cocks), cocks: cocks.length} : null, heterozygosity: mean(numbers.map(number => heterozygosity[number] ?? 0)),
      rate: before && change !== null ? {since: before.label, value: change} : null,
      realised: step.step.interSe === 0 ? null : realisedSize(bredInside(step.birds, closing && {generations: step.step.interSe - closing.step.interSe, inbreeding: fresh.get(closing) ?? 0}, kin, pedigree)),
    }
  })
}

/**
 * A bird's F since its line was closed, and in how many generations it rose: those inside the line, fewer where less of its descent is known. Birds of fewer than two known generations are left
 * out. Where no bird from the closing is in the book, all known generations but the first count.
 */
export function bredInside(birds: readonly Bird[], inside: {readonly generations: number; readonly inbreeding: number} | null, kin: Kinship, {numberOf}: PedigreeOfBook): readonly (Bred & {readonly bird: Bird})[] {
  return birds.map(bird => ({bird, equivalent: kin.of(bird).equivalent})).filter(({equivalent}) => equivalent >= 2).map(({bird, equivalent}) => ({
    bird, inbreeding: kin.since.inbreeding[numberOf(bird)]?.mean ?? 0, generations: inside === null ? equivalent : 1 + Math.min(inside.generations, equivalent - 1), founderInbreeding: inside?.inbreeding ?? 0,
  }))
}

const mean = (values: readonly number[]): number => (values.length === 0 ? 0 : meanAndDeviation(values).mean)
