import type {CareTouching} from './care-touching.ts'
import type {ReachedStep} from './ladder.ts'
import {keptOfHatch, rearedAlike, type RearedAlike} from './reared-alike.ts'

/** Chicks are followed to this age in days: by then most are weighed and graded; our own choice. */
const REARED = 140

/** Were the chicks of two steps hatched and reared alike, so that a change of evenness or of grades may be laid to the birds? */
export function stepsAlike(from: ReachedStep, to: ReachedStep, touching: CareTouching): RearedAlike {
  const keptOf = ({hatches}: ReachedStep) => hatches.map(hatch => keptOfHatch(hatch, touching, REARED))
  return rearedAlike(keptOf(to), keptOf(from))
}
