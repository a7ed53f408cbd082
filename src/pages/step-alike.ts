/** Whether a step and the one it is held against were reared alike, and what that leaves open. */
import {stepsAlike} from '../findings/steps-alike.ts'
import type {StepChange} from '../findings/step-change.ts'
import type {Findings} from '../findings/study.ts'
import {alikeShort} from './alike-words.ts'

/** One sentence; empty where nothing on record tells them apart. */
export function stepAlikeWords({from, to}: StepChange, {ladder, life}: Findings): string {
  const [one, other] = [from, to].map(label => ladder.find(step => step.label === label))
  if (one?.kind !== 'reached' || other?.kind !== 'reached') return ''
  const alike = stepsAlike(one, other, life.touching)
  if (alike.verdict === 'alike') return ''
  const open = 'that alone may make birds less even or graded otherwise, and changes a comb or a skin hardly.'
  return alike.verdict === 'not-told' ? 'How some of them were hatched is not written, so nobody can say whether both were reared alike.' : `By the records both were not reared alike (${alikeShort(alike).replace(/^no: /, '')}): ${open}`
}
