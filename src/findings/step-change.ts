import type {Trait} from '../logbook/book.ts'
import {familyDifference, type FamilyDifference} from '../statistics/family-difference.ts'
import {familySuperiority, type FamilySuperiority} from '../statistics/family-superiority.ts'
import {holm} from '../statistics/holm.ts'
import type {RankSum} from '../statistics/rank-sum.ts'
import {groupsOfBoth, rankSumWithin, type Graded} from '../statistics/rank-sum-within.ts'
import {shareDifference, type Count, type ShareDifference} from '../statistics/share-difference.ts'
import {shiftWithin, type Shift} from '../statistics/shift.ts'
import {countedValue} from './counted-value.ts'
import {isGraded, middleGrade, placeOf, type MiddleGrade} from './grade-places.ts'
import {judgedByFamily, sumOf, type JudgedBy, type JudgedFamilies} from './judged-chicks.ts'
import type {ReachedStep} from './ladder.ts'
import {REMARKABLE} from './remarkable.ts'
import {FAMILY_SEED, sireFamilies} from './sire-families.ts'
import type {SpreadOfMeasures} from './spread.ts'
import {changeOfSpread, correctedSpreads, type ChangeOfSpread} from './spread-change.ts'
import type {SpeaksOf} from './trends.ts'
import type {TrueBred} from './true-bred.ts'

/** One of two steps, of which one thing is asked. */
export interface OneStep {
  readonly count: Count
  readonly families: number
}

export interface ChangeOfShare {
  readonly by: JudgedBy
  readonly from: OneStep
  readonly to: OneStep
  /** later less earlier; null where nobody was judged in one of them */
  readonly plain: ShareDifference | null
  readonly byFamilies: FamilyDifference | null
  readonly speaksOf: SpeaksOf
  /** `by-plan`: a step was not mated inside the line, and what it shows is the plan of the crosses and no change of the breed */
  readonly verdict: 'truer' | 'less-true' | 'cannot-tell' | 'by-plan'
}

export interface ChangeOfMarks {
  readonly trait: Trait
  readonly sex: 'male' | 'female' | 'all'
  readonly from: MarksOfStep
  readonly to: MarksOfStep
  /** inside each sex; of these chicks one by one */
  readonly test: RankSum
  /** later less earlier, inside each sex, in marks or places of states */
  readonly shift: Shift | null
  /** how often a chick of the later step is the higher, by families; null under five in either */
  readonly byFamilies: FamilySuperiority | null
  /** by families, corrected for all the graded traits compared in the step; null where families are too few, or all are alike */
  readonly correctedP: number | null
  readonly speaksOf: SpeaksOf
  /** `too-few-families`: under five sire families in a step, where a few cocks alone move grades far oftener than any test says */
  readonly verdict: 'higher' | 'lower' | 'cannot-tell' | 'too-few-families'
}

export interface MarksOfStep {
  readonly scored: number
  /** null: nobody was scored */
  readonly middle: MiddleGrade | null
  readonly families: number
}

export interface StepChange {
  readonly from: string
  readonly to: string
  /** of the two, those that were not mated inside the line */
  readonly outside: readonly string[]
  /** birds that may have sired chicks of both steps: their families are not apart, and the families' intervals take them to be */
  readonly siresOfBoth: number
  readonly shares: readonly ChangeOfShare[]
  readonly spreads: readonly ChangeOfSpread[]
  readonly marks: readonly ChangeOfMarks[]
}

/** What is asked of a step, or of a season's chicks in place of one; `step.interSe` 1 or more where they were mated inside the line. */
export interface Compared extends Pick<ReachedStep, 'label' | 'sires' | 'birds' | 'tallies'> {
  readonly step: Pick<ReachedStep['step'], 'interSe'>
}

/**
 * What changed from one step to another, and can it be believed? Everything required together and each required trait: the difference of the shares by Newcombe, of these
 * chicks and by families. Each measured trait: Brown and Forsythe's test of how far birds stray inside their classes, with the ratios of variances and of coefficients of
 * variation. Each graded trait and each of ordered states: the rank test and Hodges and Lehmann's shift, of the two sexes and of both, cocks held against cocks and hens
 * against hens (van Elteren). Brothers and sisters are graded alike, so that only the families' own test gives a verdict; under five families in either there is none.
 *
 * A change is told where its 95 % interval, or P at 5 %, leaves no change out. P is corrected by Holm for the measures, and for the graded traits, compared in the step; the
 * shares are not corrected, everything required together being asked first. Where a step was not mated inside the line, F1 or a backcross, shares change by the plan, and no verdict is given on it. What neither step has anything to say of has no entry.
 *
 * @see `shareDifference`, `familyDifference`, `changeOfSpread`, `rankSumWithin`, `familySuperiority`, `shiftWithin`, `holm`
 */
export const stepChange = (from: ReachedStep, to: ReachedStep, trueBred: TrueBred, spread: SpreadOfMeasures, traits: readonly Trait[]): StepChange =>
  changeBetween(from, to, judgedByFamily(trueBred), spread, traits)

/** The same of any two that stand in `judged` and `spread` under their labels. */
export function changeBetween(from: Compared, to: Compared, judged: readonly JudgedFamilies[], spread: SpreadOfMeasures, traits: readonly Trait[]): StepChange {
  const earlier = new Set(from.sires), outside = [from, to].filter(({step}) => step.interSe < 1).map(({label}) => label)
  return {
    from: from.label, to: to.label, outside, siresOfBoth: to.sires.filter(sire => earlier.has(sire)).length,
    shares: judged.flatMap(({by, steps}) => changeOfShare(by, steps.get(from.label) ?? [], steps.get(to.label) ?? [], outside.length > 0)),
    spreads: correctedSpreads(traits.filter(({kind}) => kind === 'measured').flatMap(trait => SEXES.flatMap(sex => {
      const rowOf = (step: Compared) => spread.rows.find(row => row.step === step.label && row.trait === trait && row.sex === sex) ?? null
      return changeOfSpread(trait, sex, rowOf(from), rowOf(to))
    }))),
    marks: SEXES.flatMap(sex => correctedMarks(traits.filter(isGraded).flatMap(trait => changeOfMarks(trait, sex, from, to)))).sort(byTrait(traits)),
  }
}

const SEXES = ['male', 'female', 'all'] as const
const byTrait = (traits: readonly Trait[]) => (one: {readonly trait: Trait}, other: {readonly trait: Trait}): number => traits.indexOf(one.trait) - traits.indexOf(other.trait)

function changeOfShare(by: JudgedBy, from: readonly Count[], to: readonly Count[], byPlan: boolean): ChangeOfShare[] {
  const one = {count: sumOf(from), families: from.length}, other = {count: sumOf(to), families: to.length}
  if (one.count.n + other.count.n === 0) return []
  const plain = one.count.n === 0 || other.count.n === 0 ? null : shareDifference(other.count, one.count)
  const byFamilies = familyDifference(to, from, {seed: FAMILY_SEED})
  const speaksOf = byFamilies?.kind ?? 'these-chicks', read = speaksOf === 'families' ? byFamilies : plain
  const verdict = read === null || (read.low <= 0 && read.high >= 0) ? 'cannot-tell' : byPlan ? 'by-plan' : read.low > 0 ? 'truer' : 'less-true'
  return [{by, from: one, to: other, plain, byFamilies, speaksOf, verdict}]
}

function changeOfMarks(trait: Trait, sex: ChangeOfMarks['sex'], from: Compared, to: Compared): ChangeOfMarks[] {
  const one = marksOf(trait, sex, from), other = marksOf(trait, sex, to)
  if (one.families.length + other.families.length === 0) return []
  const earlier = one.families.flat(), later = other.families.flat(), byFamilies = familySuperiority(other.families, one.families)
  return [{
    trait, sex, from: one.of, to: other.of, test: rankSumWithin(later, earlier), shift: shiftWithin(groupsOfBoth(later, earlier)), byFamilies, correctedP: null,
    speaksOf: byFamilies ? 'families' : 'these-chicks', verdict: 'cannot-tell',
  }]
}

/** The verdicts on traits graded in one step, with P corrected for their number. */
function correctedMarks(rows: readonly ChangeOfMarks[]): ChangeOfMarks[] {
  const told = rows.flatMap(({test, byFamilies}) => (test.kind === 'compared' && byFamilies ? [byFamilies.p] : [])), corrected = holm(told)
  let next = 0
  return rows.map(row => {
    if (row.test.kind !== 'compared') return row
    if (!row.byFamilies) return {...row, verdict: 'too-few-families'}
    const correctedP = corrected[next++] ?? 1, {superiority} = row.byFamilies
    return {...row, correctedP, verdict: correctedP > REMARKABLE || superiority === 0.5 ? 'cannot-tell' : superiority > 0.5 ? 'higher' : 'lower'}
  })
}

interface MarksByFamily {
  readonly families: readonly (readonly Graded[])[]
  readonly of: MarksOfStep
}

function marksOf(trait: Trait, sex: ChangeOfMarks['sex'], {birds, tallies}: Compared): MarksByFamily {
  const scored = [...birds, ...tallies].flatMap(chick => {
    const place = sex === 'all' || chick.sex === sex ? placeOf(trait, countedValue(chick, trait)) : null
    return place === null || chick.count === 0 ? [] : [{parentage: chick.parentage, hatch: chick.hatch, marks: Array<Graded>(chick.count).fill({group: chick.sex, grade: place})}]
  })
  const families = sireFamilies(scored).map(own => own.flatMap(each => each.marks)), places = families.flat().map(({grade}) => grade)
  return {families, of: {scored: places.length, middle: places.length === 0 ? null : middleGrade(trait, places), families: families.length}}
}
