import type {Trait} from '../logbook/book.ts'
import type {AnalysisOfVariance} from '../statistics/analysis-of-variance.ts'
import {meanAndDeviation} from '../statistics/mean-and-deviation.ts'
import {relativeDeviations, spreadOfSteps} from '../statistics/relative-deviations.ts'
import {holm} from '../statistics/holm.ts'
import {varianceRatio, type VarianceRatio} from '../statistics/variance-ratio.ts'
import {variationRatio} from '../statistics/variation-ratio.ts'
import type {CannotSay, Interval} from './estimate.ts'
import {familyStraying, type FamilyStraying} from '../statistics/family-straying.ts'
import {REMARKABLE} from './remarkable.ts'
import {classValues, familiesWeighed, strayingByFamily} from './spread-classes.ts'
import type {Spread, SpreadRow} from './spread.ts'
import type {SpeaksOf} from './trends.ts'

/** Whether birds of one sex, or of both, are more even in a later step. */
export interface ChangeOfSpread {
  readonly trait: Trait
  readonly sex: SpreadRow['sex']
  readonly from: SpreadOfStep
  readonly to: SpreadOfStep
  /** of how far each bird strays from the middle of its class; null where a step has no class of five */
  readonly test: AnalysisOfVariance | null
  /** the same with families counting as one piece each; null under five in either step */
  readonly byFamilies: FamilyStraying | null
  /** of the families where they speak, else of the birds one by one; null where nothing can be compared */
  readonly p: number | null
  /** corrected for all the measures compared in the step; null as `p` */
  readonly correctedP: number | null
  readonly speaksOf: SpeaksOf
  /** later over earlier, of the variances in the trait's unit */
  readonly variances: VarianceRatio | null
  /** later over earlier, of the coefficients of variation themselves */
  readonly variations: {readonly ratio: number; readonly interval: Interval; readonly p: number} | null
  readonly verdict: 'more-even' | 'less-even' | 'cannot-tell'
}

export interface SpreadOfStep {
  /** null: no bird was measured in its window */
  readonly spread: Spread | CannotSay | null
  /** measured in the window, in a class of five or not */
  readonly measured: number
  readonly families: number
  /** mean of how far a bird strays from the middle of its class, as a share of it; null without a class of five */
  readonly straying: number | null
}

/**
 * Is a later step more even in a measured trait?
 *
 * Each bird is held against its own class, one sex reared together, of five or more; the verdict is Brown and Forsythe's test on these relative deviations, which neither a
 * difference between hatches nor a heavier step can touch; from five sire families in both on, with families as its pieces. The verdict here is that of the one measure alone,
 * and `stepChange` corrects it for their number. The ratios lean on normal values more than the test does, and are given to say how much.
 *
 * Nothing is compared where one step has a sex in classes of five that the other has not: the row of the sex that both have speaks then.
 *
 * @returns nothing where neither step has a bird measured
 * @see `spreadOfSteps`, `familyStraying`, `varianceRatio`, `variationRatio`
 */
export function changeOfSpread(trait: Trait, sex: SpreadRow['sex'], from: SpreadRow | null, to: SpreadRow | null): ChangeOfSpread[] {
  if (!from && !to) return []
  const one = ofStep(from), other = ofStep(to), shape = {trait, sex, from: one, to: other}
  // both sexes together are compared only where both steps have the same sexes: cocks and hens stray unlike
  if (!from || !to || sexesOf(from) !== sexesOf(to) || one.spread?.kind !== 'spread' || other.spread?.kind !== 'spread' || one.straying === null || other.straying === null) {
    return [{...shape, test: null, byFamilies: null, p: null, correctedP: null, speaksOf: 'these-chicks', variances: null, variations: null, verdict: 'cannot-tell'}]
  }
  const test = spreadOfSteps([classValues(to), classValues(from)]), byFamilies = familyStraying(strayingByFamily(to), strayingByFamily(from)), p = test.kind === 'compared' ? byFamilies?.p ?? test.p : null
  const squared = variationRatio(variationsOf(other.spread), variationsOf(one.spread))
  return [{
    ...shape, test, byFamilies, p, correctedP: p, speaksOf: byFamilies ? 'families' : 'these-chicks', variances: varianceRatio(pooled(other.spread), pooled(one.spread)),
    variations: squared && {ratio: Math.sqrt(squared.ratio), interval: {low: Math.sqrt(squared.interval.low), high: Math.sqrt(squared.interval.high)}, p: squared.p},
    verdict: p === null || p > REMARKABLE ? 'cannot-tell' : other.straying < one.straying ? 'more-even' : 'less-even',
  }]
}

/** Of each measure the row that compares like with like: both sexes where both can be compared, else the one that can. */
export function spreadsCompared(spreads: readonly ChangeOfSpread[]): readonly ChangeOfSpread[] {
  return [...new Set(spreads.map(({trait}) => trait))].flatMap(trait => {
    const own = spreads.filter(each => each.trait === trait), able = own.filter(({sex, test}) => sex !== 'all' && test !== null), both = own.find(({sex}) => sex === 'all')
    return able.length === 2 && both ? [both] : able
  })
}

/** What is told of one measure alone is taken back where it is one of several: among the rows that compare like with like, and of the others among those of their sex. */
export function correctedSpreads(spreads: readonly ChangeOfSpread[]): readonly ChangeOfSpread[] {
  const compared = spreadsCompared(spreads), corrected = new Map([...SEXES.map(sex => spreads.filter(row => row.sex === sex)), compared].flatMap(rows => {
    const tested = rows.filter(({p}) => p !== null), chances = holm(tested.map(({p}) => p ?? 1))
    return tested.map((row, place): [ChangeOfSpread, number] => [row, chances[place] ?? 1])
  }))
  return spreads.map(row => {
    const correctedP = corrected.get(row) ?? null
    return correctedP === null ? row : {...row, correctedP, verdict: correctedP > REMARKABLE ? 'cannot-tell' : row.verdict}
  })
}

const SEXES = ['male', 'female', 'all'] as const

function ofStep(row: SpreadRow | null): SpreadOfStep {
  if (!row) return {spread: null, measured: 0, families: 0, straying: null}
  const away = classValues(row).flatMap(relativeDeviations)
  return {spread: row.spread, measured: row.values.length, families: familiesWeighed(row), straying: away.length === 0 ? null : meanAndDeviation(away).mean}
}

const sexesOf = ({values}: SpreadRow): string => [...new Set(values.flatMap(({sex, counted}) => (counted ? [sex] : [])))].sort().join(' ')
const variationsOf = ({classes}: Spread) => classes.map(({cv, n}) => ({cv, freedom: n - 1}))
const pooled = ({sd, n, classes}: Spread) => ({sd, freedom: n - classes.length})
