import type {Trait} from '../logbook/book.ts'
import type {AnalysisOfVariance} from '../statistics/analysis-of-variance.ts'
import {clopperPearson} from '../statistics/clopper-pearson.ts'
import {familyShare, type FamilyShare} from '../statistics/family-bootstrap.ts'
import {familyTrend, type FamilyTrend} from '../statistics/family-trend.ts'
import {mannKendall, type MannKendall} from '../statistics/mann-kendall.ts'
import {spreadOfSteps} from '../statistics/relative-deviations.ts'
import {senSlope, type SenSlope} from '../statistics/sen-slope.ts'
import {shareTrend, type ShareTrend} from '../statistics/share-trend.ts'
import type {CannotSay, Interval, Share} from './estimate.ts'
import {judgedByFamily, sumOf, type JudgedBy} from './judged-chicks.ts'
import type {LadderStep, ReachedStep} from './ladder.ts'
import {REMARKABLE} from './remarkable.ts'
import {shareOf} from './share-of.ts'
import {FAMILY_SEED} from './sire-families.ts'
import {classValues, familiesWeighed} from './spread-classes.ts'
import type {Spread, SpreadOfMeasures, SpreadRow} from './spread.ts'
import type {TrueBred} from './true-bred.ts'

/** Which interval speaks: that of the families, or, where these are too few, the plain one, of these chicks only. */
export type SpeaksOf = 'families' | 'these-chicks'

/** `too-few-steps`: so few steps that nothing could be told whatever they showed · `all-alike`: every chick of every step alike. */
export type TrendVerdict = 'rises' | 'falls' | 'cannot-tell' | 'all-alike' | 'too-few-steps'

interface AtStep {
  readonly step: string
  readonly interSe: boolean
  /** on the ladder, mated inter se and with something to show: what the trend is worked from */
  readonly inTrend: boolean
}

export interface ShareAtStep extends AtStep {
  readonly share: Share | CannotSay
  /** Clopper and Pearson's, for an association that asks for it */
  readonly exact: Interval | null
  /** null: no chick was judged */
  readonly family: FamilyShare | null
  /** hatched in the step and not judged */
  readonly leftOut: number
}

export interface ShareOverSteps {
  readonly by: JudgedBy
  readonly steps: readonly ShareAtStep[]
  readonly plain: ShareTrend
  readonly families: FamilyTrend
  readonly speaksOf: SpeaksOf
  readonly verdict: TrendVerdict
}

export interface SpreadAtStep extends AtStep {
  readonly spread: Spread | CannotSay
  readonly families: number
}

export interface SpreadOverSteps {
  readonly trait: Trait
  readonly sex: SpreadRow['sex']
  readonly steps: readonly SpreadAtStep[]
  /** of the coefficients of variation of the steps of the trend, and by how much they change a step */
  readonly order: MannKendall
  readonly slope: SenSlope | null
  /** whether the steps of the trend are even alike, whatever their order */
  readonly apart: AnalysisOfVariance
  readonly verdict: TrendVerdict
}

export interface Trends {
  /** everything required together, then each required trait */
  readonly shares: readonly ShareOverSteps[]
  /** each measured trait, males, females and both */
  readonly spreads: readonly SpreadOverSteps[]
}

/**
 * Do the steps breed truer and more evenly, one after another? The share right of those judged, everything required together and each required trait, in every step,
 * with Wilson's, Clopper and Pearson's and the families' interval; Cochran and Armitage's trend, exact when small, and the families' own. Of every measured trait the
 * coefficient of variation within birds reared alike, Mann and Kendall's order of the steps with Sen's slope, and whether the steps differ at all (Brown and Forsythe).
 *
 * A trend runs over the steps of the ladder that were mated inter se: that F1 shows pea in all chicks and a backcross in half is the plan and no change. Steps beside the
 * ladder and mixed birds have their rows and are in no trend. The steps count 0, 1, 2 … in the ladder's order.
 *
 * @see `shareTrend`, `familyTrend`, `familyShare`, `mannKendall`, `senSlope`, `spreadOfSteps`
 */
export function trendsOf(ladder: readonly LadderStep[], trueBred: TrueBred, spread: SpreadOfMeasures): Trends {
  const reached = ladder.filter(step => step.kind === 'reached')
  return {
    shares: judgedByFamily(trueBred).map(({by, steps}) => sharesOver(by, reached.map(step => ({step, families: steps.get(step.label) ?? []})))),
    spreads: spreadsOver(reached, spread),
  }
}

const atStep = ({label, step, beside}: ReachedStep, something: boolean): AtStep =>
  ({step: label, interSe: step.interSe >= 1, inTrend: something && !beside && label !== 'mixed' && step.interSe >= 1})

function sharesOver(by: JudgedBy, steps: readonly {readonly step: ReachedStep; readonly families: Parameters<typeof sumOf>[0]}[]): ShareOverSteps {
  const rows = steps.map(({step, families}) => {
    const {k, n} = sumOf(families)
    return {families, at: {
      ...atStep(step, n > 0), share: shareOf(k, n), exact: n === 0 ? null : clopperPearson(k, n), family: familyShare(families, {seed: FAMILY_SEED}), leftOut: step.chicks.hatched - n,
    }}
  })
  const running = rows.filter(({at}) => at.inTrend).map(row => row.families)
  const plain = shareTrend(running.map(sumOf)), families = familyTrend(running, {seed: FAMILY_SEED})
  return {by, steps: rows.map(({at}) => at), plain, families, speaksOf: families.kind === 'families' ? 'families' : 'these-chicks', verdict: trendVerdict(plain, families)}
}

function trendVerdict(plain: ShareTrend, families: FamilyTrend): TrendVerdict {
  if (plain.slope === null) return 'too-few-steps'
  if (plain.how === 'none') return 'all-alike'
  return told(families.kind === 'families' ? families : {slope: plain.slope, p: plain.p})
}

const told = ({slope, p}: {readonly slope: number; readonly p: number}): TrendVerdict => (p > REMARKABLE || slope === 0 ? 'cannot-tell' : slope > 0 ? 'rises' : 'falls')

function spreadsOver(reached: readonly ReachedStep[], {rows}: SpreadOfMeasures): readonly SpreadOverSteps[] {
  const traits = [...new Set(rows.map(({trait}) => trait))]
  return traits.flatMap(trait => (['male', 'female', 'all'] as const).flatMap(sex => {
    const own = reached.flatMap(step => {
      const row = rows.find(each => each.step === step.label && each.trait === trait && each.sex === sex)
      return row ? [{row, at: {...atStep(step, row.spread.kind === 'spread'), spread: row.spread, families: familiesWeighed(row)}}] : []
    })
    if (own.length === 0) return []
    const running = own.filter(({at}) => at.inTrend)
    const variation = running.flatMap(({at: {spread}}) => (spread.kind === 'spread' ? [spread.cv] : []))
    const order = mannKendall(variation)
    return [{trait, sex, steps: own.map(({at}) => at), order, slope: senSlope(variation), apart: spreadOfSteps(running.map(({row}) => classValues(row))), verdict: orderVerdict(order)}]
  }))
}

function orderVerdict(order: MannKendall): TrendVerdict {
  if (order.kind !== 'tested') return order.kind === 'few' ? 'too-few-steps' : 'all-alike'
  return order.smallestP > REMARKABLE ? 'too-few-steps' : told({slope: order.s, p: order.p})
}
