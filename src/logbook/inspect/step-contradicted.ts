import {inside} from '../../records/problem.ts'
import type {Pair, Step} from '../book.ts'
import type {Linked} from '../linked.ts'
import {femalesAt, malesAt} from '../laying.ts'
import {parentageOf} from '../parentage.ts'
import {parseStepName, sameStep} from '../step-names.ts'
import {strainShares, type Shares} from '../strain-shares.ts'
import {told} from '../tellings.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const pen = (step: string) => `---\nseason: 2024\nmales: [H-1]\nfemales: [B-2]\nintends: ${step}\n---\n`

export const entry: ManualEntry = {
  code: 'step-contradicted', severity: 'warning', title: 'A step that descent contradicts',
  cause: 'A bird’s step, or the step a pen is meant to give, is not what its descent makes it. Figures follow descent.',
  remedy: 'Mend the step as written, or the parents.',
  wrong: {'pens/2024-B.md': pen('BC1')},
  right: {'pens/2024-B.md': pen('F1')},
}

export function check({bench, book, tellings, steps, doubtful}: Linked): void {
  const agrees = (written: string, step: Step) => step.kind === 'strain' ? isStrain(written, step) : sameStep(written, step.label, steps.ownNames)
  /** a name that is no step is another rule's matter */
  const isStep = (written: string) => parseStepName(written, steps.ownNames) !== null
  for (const pen of book.pens) {
    const males = malesAt(pen, null, 0), females = femalesAt(pen, null)
    const pairs = males.flatMap(male => females.map((female): Pair => ({sire: male.bird, dam: female.bird, chance: 1})))
    if (pen.intends === null || pairs.length === 0 || [...pen.males, ...pen.females].some(stay => doubtful.has(stay.bird))) continue
    const parentage = parentageOf(pairs, {sire: null, dam: null})
    const step = steps.of(parentage)
    if (!isStep(pen.intends) || !isKnown(strainShares(parentage)) || agrees(pen.intends, step)) continue
    bench.note(slipOf(entry, inside(pen.at, 'intends'), `pen ${pen.id} is meant to give ${pen.intends}, but its birds give ${wordsFor(step)}`, 'mend intends:, or the birds of the pen'))
  }
  for (const bird of book.birds) {
    const {stepWritten, step} = bird
    if (stepWritten === null || doubtful.has(bird) || !isStep(stepWritten) || !isKnown(bird.shares) || agrees(stepWritten, step)) continue
    const by = told(tellings.get(bird) ?? [], 'step')?.by
    bench.note(slipOf(entry, inside(by?.at ?? bird.at, 'step'), `${bird.band} is written as ${stepWritten}, but its descent makes it ${wordsFor(step)}`, 'mend step:, or the parents'))
  }
}

/** Descent that is not known to its end contradicts nothing. */
const isKnown = (shares: Shares): boolean => [...shares.values()].reduce((sum, share) => sum + share, 0) > 1 - 1e-9

const isStrain = (written: string, {strains: [strain]}: Step): boolean => ['strain', strain?.id, strain?.name].includes(written.trim())

function wordsFor(step: Step): string {
  return step.kind === 'strain' ? `pure ${step.strains[0]?.name ?? 'strain'}` : step.kind === 'mixed' ? 'mixed: more than one step, or none of the ladder' : step.label
}
