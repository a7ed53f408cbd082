import type {Trait} from '../logbook/book.ts'
import type {Share} from './estimate.ts'
import {isGraded} from './grade-places.ts'
import type {Misscoring} from './misscoring.ts'
import type {Agreement} from './scorer-agreement.ts'

/** Why the grades of a trait are hardly to be believed. */
export interface ScorersInDoubt {
  /** the least kappa whose interval holds 0; null where none does */
  readonly kappa: number | null
  /** scorings that differ from the one before of the same bird; null where these are few or unknown */
  readonly differing: Share | null
}

/** From this share of repeated scorings on, at the lower end of its interval, grades are in doubt; our own choice. */
const MUCH = 0.2

/**
 * Of which graded traits do scorers agree so poorly that a change of grades may be one of eyes? Where kappa of two who grade the same birds has 0 in its interval, they
 * are not shown to see the same birds; where repeated scorings differ in surely more than one of five, nobody sees them twice alike.
 *
 * @see `scorerAgreement`, `misscoring`
 */
export function scorersInDoubt(agreements: readonly Agreement[], misscored: readonly Misscoring[]): ReadonlyMap<Trait, ScorersInDoubt> {
  const traits = new Set([...agreements, ...misscored].map(({trait}) => trait).filter(isGraded))
  return new Map([...traits].flatMap((trait): [Trait, ScorersInDoubt][] => {
    const low = agreements.flatMap(each => (each.trait === trait && each.kappa?.interval && each.kappa.interval.low <= 0 ? [each.kappa.kappa] : []))
    const repeats = misscored.find(each => each.trait === trait)?.disagreements, differing = repeats?.kind === 'share' && repeats.interval.low > MUCH ? repeats : null
    return low.length === 0 && differing === null ? [] : [[trait, {kappa: low.length === 0 ? null : Math.min(...low), differing}]]
  }))
}
