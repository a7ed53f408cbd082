import type {Bird, Logbook} from '../logbook/book.ts'
import type {ClosenessOfStep} from './closeness.ts'
import type {Kinship} from './inbreeding.ts'
import type {LadderStep} from './ladder.ts'

/** One step against the project's own limits; what it does not limit is null. */
export interface ClosenessLimits {
  readonly step: string
  /** per generation of the closed phase: the limit, and whether the step's rate, or its birds' own mean rate, is above it */
  readonly rate: {readonly limit: number; readonly stepOver: boolean; readonly ownOver: boolean} | null
  /**
   * F that the step might have had at the limit, from the closed step before: 1 − (1 − F)(1 − f before)(1 − limit) / (1 − f), f being F without what the
   * founders bring along. So F stands above it exactly when the rate is above the limit.
   */
  readonly allowed: number | null
  /** for one mating: the limit, and the birds of the step whose F may be above it */
  readonly mating: {readonly limit: number; readonly over: readonly Bird[]} | null
}

/** Where does the flock pass the limits that its keeper has set? A bird's F is tried at the upper end of its range. */
export function closenessLimits({project: {limits}}: Logbook, ladder: readonly LadderStep[], steps: readonly ClosenessOfStep[], kin: Kinship): readonly ClosenessLimits[] {
  const {inbreedingPerGeneration: perGeneration, matingInbreeding: ofMating} = limits
  const isOver = (value: number | null | undefined, limit: number) => value !== null && value !== undefined && value > limit + 1e-12
  return steps.map(({step, rate, realised, mean, fresh}) => {
    const before = rate && steps.find(other => other.step === rate.since)
    const birds = ladder.flatMap(other => (other.kind === 'reached' && other.label === step ? other.birds : []))
    return {
      step,
      rate: perGeneration === null ? null : {limit: perGeneration, stepOver: isOver(rate?.value, perGeneration), ownOver: isOver(realised && realised.count > 0 ? realised.rate : null, perGeneration)},
      allowed: before && perGeneration !== null && fresh < 1 ? 1 - (1 - mean) * (1 - before.fresh) * (1 - perGeneration) / (1 - fresh) : null,
      mating: ofMating === null ? null : {limit: ofMating, over: birds.filter(bird => isOver(kin.of(bird).f.high, ofMating))},
    }
  })
}
