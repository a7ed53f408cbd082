import type {Interval} from '../statistics/interval.ts'

/** Coupling: the two dominants came in from one grandparent. Repulsion: one from each. */
export type Phase = 'coupling' | 'repulsion'

/** Chicks of an F2 by what they show at two loci: both dominants, the first alone, the second alone, neither. */
export type TwoLocusCounts = readonly [number, number, number, number]

/** How far apart two loci lie, told from an F2. */
export interface RecombinationEstimate {
  readonly n: number
  /** stated, or the one the counts speak for when it was not */
  readonly phase: Phase
  /** share of gametes that cross over, 0 to ½ */
  readonly recombination: number
  /** likelihood limits of it, 95 %, 0 to ½ */
  readonly interval: Interval
  /** of the recombination; null at an end (0 or ½), where it has no meaning */
  readonly error: number | null
  /** (1 − r)² in coupling, r² in repulsion, without the bound r ≤ ½; 0 to 1 */
  readonly theta: number
  /** of theta, from the expected information; null when theta is 0 or 1 */
  readonly thetaError: number | null
  /** log₁₀ of how much better the data fit the estimate than no linkage; 3 is the usual bar */
  readonly lod: number
}

/** Half the 95 % point of χ² with one degree of freedom: what the log likelihood may fall from its top. */
const DROP = 1.9207294103470618

/**
 * How often do two loci cross over, by the chicks of an F2 that carries both?
 *
 *     classes (2 + θ)/4, (1 − θ)/4, (1 − θ)/4, θ/4        n·θ² − (a − 2b − 2c − d)·θ − 2d = 0
 *     SE(θ) = √( 2θ(1 − θ)(2 + θ) / (n(1 + 2θ)) )        r = 1 − √θ in coupling, √θ in repulsion        SE(r) = SE(θ) / (2√θ)
 *
 * The root between 0 and 1 is the θ of greatest likelihood. Crossing over is taken to be alike in cock and hen, so it does for
 * autosomes only: on the Z a hen hands on her one chromosome as it is. An r beyond ½ is set to ½.
 *
 * @param counts a, b, c, d: chicks with both dominants, the first only, the second only, neither; at least one chick in all
 * @param phase how the dominants came in; left out, the one of greater likelihood is taken: coupling when θ is ¼ or more
 * @returns recombination with limits, and how sure it is that the loci are linked at all
 * @throws RangeError when a count is none or there is no chick
 * @see Fisher 1925, Statistical Methods for Research Workers, ch. 9; Rao 1973, Linear Statistical Inference, 5g. LOD: Morton 1955, Am. J. Hum. Genet. 7:277–318
 * @example recombinationEstimate([125, 18, 20, 34])  // coupling, recombination 0.2083, theta 0.6268 ± 0.0526
 */
export function recombinationEstimate(counts: TwoLocusCounts, phase?: Phase): RecombinationEstimate {
  const n = checkedSum(counts)
  const theta = likeliestTheta(counts, n)
  const taken = phase ?? (theta >= 1 / 4 ? 'coupling' : 'repulsion')
  const recombination = Math.min(1 / 2, taken === 'coupling' ? 1 - Math.sqrt(theta) : Math.sqrt(theta))
  const likelihood = (r: number) => logLikelihood(counts, thetaOf(r, taken))
  const top = likelihood(recombination)
  const thetaError = theta > 0 && theta < 1 ? Math.sqrt((2 * theta * (1 - theta) * (2 + theta)) / (n * (1 + 2 * theta))) : null
  return {
    n,
    phase: taken,
    recombination,
    interval: {
      low: likelihood(0) >= top - DROP ? 0 : crossing(r => likelihood(r) >= top - DROP, recombination, 0),
      high: likelihood(1 / 2) >= top - DROP ? 1 / 2 : crossing(r => likelihood(r) >= top - DROP, recombination, 1 / 2),
    },
    error: thetaError === null || recombination === 1 / 2 ? null : thetaError / (2 * Math.sqrt(theta)),
    theta,
    thetaError,
    lod: Math.max(0, (top - likelihood(1 / 2)) / Math.LN10),
  }
}

function checkedSum(counts: TwoLocusCounts): number {
  let n = 0
  for (const count of counts) {
    if (!Number.isInteger(count) || count < 0) throw new RangeError(`a count is a whole number, 0 or more, not ${count}`)
    n += count
  }
  if (n === 0) throw new RangeError('crossing over is told from 1 chick or more, not 0')
  return n
}

/** The root of n·θ² − m·θ − 2d between 0 and 1, without taking like from like. */
function likeliestTheta([both, first, second, neither]: TwoLocusCounts, n: number): number {
  const middle = both - 2 * first - 2 * second - neither
  const root = Math.sqrt(middle ** 2 + 8 * n * neither)
  const theta = middle >= 0 ? (middle + root) / (2 * n) : (4 * neither) / (root - middle)
  return Math.min(1, Math.max(0, theta))
}

function thetaOf(recombination: number, phase: Phase): number {
  return phase === 'coupling' ? (1 - recombination) ** 2 : recombination ** 2
}

/** Of the counts at one θ, without what does not hang on it; an empty class adds nothing even where its share is 0. */
function logLikelihood([both, first, second, neither]: TwoLocusCounts, theta: number): number {
  const alone = first + second
  return both * Math.log(2 + theta) + (alone === 0 ? 0 : alone * Math.log(1 - theta)) + (neither === 0 ? 0 : neither * Math.log(theta))
}

/** Where on the way from a place that holds to one that does not the holding ends. */
function crossing(holds: (place: number) => boolean, from: number, to: number): number {
  let inside = from, outside = to
  for (let step = 0; step < 60; step++) {
    const middle = (inside + outside) / 2
    if (holds(middle)) inside = middle
    else outside = middle
  }
  return inside
}
