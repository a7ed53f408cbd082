import type {Passage} from './bred-from.ts'
import {reachedSteps, type LadderStep, type ReachedStep} from './ladder.ts'
import type {StepChange} from './step-change.ts'

/**
 * Which step is a step to be held against, when a breeder asks whether it is truer or more even than the one before?
 *
 * A step mated inside the line: the step it came of, where that was mated inside the line too; else the last such step before it on the ladder. Any other: the step it came of, else
 * the one before it on the ladder. A step beside the ladder has none but what it came of. The first step has none, nor have mixed birds.
 *
 * @param passages which step came of which
 */
export function stepBefore(step: ReachedStep, ladder: readonly LadderStep[], passages: readonly Passage[]): ReachedStep | null {
  const {on, beside} = reachedSteps(ladder), from = passages.find(({to}) => to === step.label)?.from
  const parent = [...on, ...beside].find(({label}) => label === from) ?? null, place = on.indexOf(step), earlier = place < 0 ? [] : on.slice(0, place)
  if (step.step.interSe < 1) return parent ?? earlier.at(-1) ?? null
  if (parent !== null && parent.step.interSe >= 1) return parent
  return earlier.findLast(each => each.step.interSe >= 1) ?? parent ?? earlier.at(-1) ?? null
}

/** What changed to each step from the one it is held against, in the ladder's order; a step with nothing before it has no entry. */
export function changesOfSteps(ladder: readonly LadderStep[], passages: readonly Passage[], change: (from: ReachedStep, to: ReachedStep) => StepChange): readonly StepChange[] {
  const {on, beside} = reachedSteps(ladder)
  return [...on, ...beside].flatMap(step => {
    const before = stepBefore(step, ladder, passages)
    return before ? [change(before, step)] : []
  })
}
