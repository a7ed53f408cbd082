import type {Strain, Trait} from '../logbook/book.ts'
import {differenceTold} from '../statistics/numbers-to-tell.ts'
import {currentStep, type LadderStep} from './ladder.ts'
import type {Selection} from './selection.ts'
import type {SpreadOfMeasures} from './spread.ts'

/** Which steps to rear together next season, so that season and choosing can be told apart. */
export interface BesideNextSeason {
  readonly from: string
  readonly to: string
  /** of a backcross chicks of this strain too */
  readonly back: Strain | null
  /** chicks of each */
  readonly each: number
  /** the difference that so many tell four times in five, in the measure that most birds of the step have; null where its spread is not known */
  readonly told: {readonly trait: Trait; readonly difference: number} | null
}

/** chicks of each step; our own choice, what a machine has room for beside the rest */
const EACH = 20

/**
 * What would tell season and choosing apart? The passage into the step that the breed stands at, else the latest, of which no birds were reared together.
 *
 * @returns null where the passage is told already, or there is none
 * @see `differenceTold`
 */
export function besideNextSeason(ladder: readonly LadderStep[], {passages}: Selection, {rows}: SpreadOfMeasures): BesideNextSeason | null {
  const now = currentStep(ladder)?.label, lone = passages.filter(({response}) => response === null), of = lone.find(({passage}) => passage.to === now) ?? lone.at(-1)
  if (!of) return null
  const {from, to, back} = of.passage
  if (passages.some(({passage, response}) => passage === of.passage && response !== null)) return null
  const spreads = lone.filter(({passage}) => passage === of.passage).flatMap(({trait, moved}) => {
    const spread = [to, from].flatMap(step => rows.filter(row => row.step === step && row.trait === trait && row.sex === 'all')).map(row => row.spread).find(found => found.kind === 'spread')
    return spread && spread.sd > 0 ? [{trait, sd: spread.sd, birds: moved.to}] : []
  })
  const [most] = spreads.sort((a, b) => b.birds - a.birds)
  return {from, to, back, each: EACH, told: most ? {trait: most.trait, difference: most.sd * differenceTold(EACH, EACH)} : null}
}
