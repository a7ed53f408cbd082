import type {Step} from '../logbook/book.ts'
import type {ReachedStep} from './ladder.ts'

/** The step of the same line one generation before, where birds of it have hatched. */
export function stepBefore(step: ReachedStep, steps: readonly ReachedStep[]): ReachedStep | null {
  return steps.find(other => other.step.interSe === step.step.interSe - 1 && isOfLine(other.step, step.step)) ?? null
}

/**
 * At which step was the line closed? The first of it from which it was mated within itself: `BC3` of `BC3F3`. What went before, backcross after backcross to birds that are no kin, is
 * behind the birds and adds nothing to their F, and so must not be counted among the generations in which F could rise.
 *
 * @returns null for that step itself, and where no bird of it is in the book
 */
export function closingOf(step: ReachedStep, steps: readonly ReachedStep[]): ReachedStep | null {
  const before = steps.filter(other => other.step.interSe < step.step.interSe && isOfLine(other.step, step.step))
  return before.reduce<ReachedStep | null>((first, other) => (first === null || other.step.interSe < first.step.interSe ? other : first), null)
}

function isOfLine(one: Step, other: Step): boolean {
  return one.kind === other.kind && one.kind !== 'mixed' && one.to === other.to && one.backcrosses === other.backcrosses && one.strains.length === other.strains.length
    && one.strains.every(strain => other.strains.includes(strain)) && (one.kind !== 'named' || nameOf(one) === nameOf(other))
}

/** `SY1` of `SY1F3`: two steps of the keeper's own may be of the same strains. */
const nameOf = ({label}: Step): string => label.replace(/F\d+$/, '')
