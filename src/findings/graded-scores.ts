import type {Logbook, Trait} from '../logbook/book.ts'
import {countedValue} from './counted-value.ts'
import type {CannotSay, Share} from './estimate.ts'
import {isGraded, middleGrade, placeOf, type MiddleGrade} from './grade-places.ts'
import type {LadderStep} from './ladder.ts'
import {scorerAgreement, type Agreement} from './scorer-agreement.ts'
import {shareOf} from './share-of.ts'
import {SEX_ROWS, type SexRow} from './shares.ts'
import {looksRight} from './wanted-look.ts'

/** How the chicks of one step and sex were graded. */
export interface GradesOfStep {
  readonly trait: Trait
  readonly step: string
  readonly sex: SexRow
  /** chicks with a counted grade; 1 or more */
  readonly scored: number
  /** every mark given, or every state there is, from the least; counts add up to `scored` */
  readonly grades: readonly {readonly is: string | number; readonly share: Share}[]
  readonly middle: MiddleGrade
  /** at or above the mark, or showing a state that is wanted, of those graded of whose sex something is wanted */
  readonly asWanted: Share | CannotSay
  /** of this step and sex and not graded */
  readonly leftOut: number
}

export interface GradedScores {
  readonly steps: readonly GradesOfStep[]
  readonly agreements: readonly Agreement[]
}

/**
 * Which grades did the chicks get, and do those who give them agree? Of every trait scored on a scale or by states that have an order: how the grades fell in each step
 * and sex, the middle one, and the share at or above the mark, with Wilson's 95 % interval; and, over the whole book, how far every two scorers agree, and the keepers with
 * the judges. Grades are an order and no measure: there is no mean. Every chick with a counted grade is in, banded or tallied. A step and sex with nobody graded has no entry.
 *
 * @see `wilsonInterval`, `median`, `scorerAgreement`
 */
export function gradedScores(book: Logbook, ladder: readonly LadderStep[]): GradedScores {
  const traits = book.traits.filter(isGraded)
  return {
    steps: traits.flatMap(trait => ladder.flatMap(step => (step.kind === 'planned' ? [] : SEX_ROWS.flatMap(sex => gradesOf(trait, step.label, sex, [...step.birds, ...step.tallies]))))),
    agreements: traits.flatMap(trait => scorerAgreement(trait, book)),
  }
}

type Chicks = Extract<LadderStep, {kind: 'reached'}>['birds' | 'tallies'][number]

function gradesOf(trait: Trait, step: string, sex: SexRow, chicks: readonly Chicks[]): GradesOfStep[] {
  const counts = new Map<number, number>()
  let asWanted = 0, judged = 0, leftOut = 0
  for (const chick of chicks) {
    if (sex !== 'all' && chick.sex !== sex) continue
    const value = countedValue(chick, trait), place = placeOf(trait, value)
    if (value === null || place === null) {
      leftOut += chick.count
      continue
    }
    counts.set(place, (counts.get(place) ?? 0) + chick.count)
    const right = looksRight(trait, chick.sex, value)
    if (right !== null) judged += chick.count
    if (right === true) asWanted += chick.count
  }
  const given = [...counts].sort(([a], [b]) => a - b), scored = given.reduce((sum, [, count]) => sum + count, 0)
  if (scored === 0) return []
  const places = given.flatMap(([place, count]) => Array<number>(count).fill(place))
  const all = trait.kind === 'ordered' ? trait.states.map((is, index) => ({is, count: counts.get(index + 1) ?? 0})) : given.map(([is, count]) => ({is, count}))
  return [{
    trait, step, sex, scored, middle: middleGrade(trait, places), asWanted: shareOf(asWanted, judged, [], 'not-counted'), leftOut,
    grades: all.flatMap(({is, count}) => {
      const share = shareOf(count, scored)
      return share.kind === 'share' ? [{is, share}] : []
    }),
  }]
}
