import type {Trait} from '../logbook/book.ts'
import type {Share} from './estimate.ts'
import {currentStep, type LadderStep} from './ladder.ts'
import type {TrueBred} from './true-bred.ts'

/** The required traits of one step, the least uniform first. */
export interface LeastUniform {
  readonly step: string
  readonly interSe: boolean
  readonly trait: Trait
  /** chicks showing what is wanted, of those scored and judged */
  readonly share: Share
  /** the other required traits that were scored, by share, then in the traits' order */
  readonly others: readonly {readonly trait: Trait; readonly share: Share}[]
}

/**
 * Where is the breed weakest? Of the traits the standard requires, the one that the fewest chicks of the latest step show as
 * wanted: the breed is as uniform as that. No single number is made up for a step.
 *
 * The latest step is the one the breed stands at (`currentStep`); while nothing required is scored in it, the last on the ladder
 * where something is, so `step` must be said. Mixed birds and other steps beside the ladder are not considered. Null when there is none.
 */
export function leastUniform(trueBred: TrueBred, ladder: readonly LadderStep[]): LeastUniform | null {
  const current = currentStep(ladder)?.label
  const onLadder = new Set(ladder.filter(step => !step.beside && step.label !== 'mixed').map(step => step.label))
  for (const rate of [...trueBred.steps].reverse()) {
    if (rate.step !== current && !onLadder.has(rate.step)) continue
    const scored = rate.traits.flatMap(({trait, share}) => (share.kind === 'share' ? [{trait, share}] : []))
    const [least, ...others] = scored.map((entry, index) => ({entry, index}))
      .sort((a, b) => a.entry.share.value - b.entry.share.value || a.index - b.index).map(({entry}) => entry)
    if (least) return {step: rate.step, interSe: rate.interSe, ...least, others}
  }
  return null
}
