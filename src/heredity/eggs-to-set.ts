import {binomialTail} from '../statistics/binomial-tail.ts'
import {checkWanted, chicksForWanted, MOST_HATCHED, ROUNDING} from './hatch-size.ts'

/** One step from the egg to the grown chick, as the flock's records count it: fertile of set, hatched of fertile, alive of hatched. */
export interface HatchStage {
  /** eggs or chicks that came through, whole, 0 to `of` */
  readonly through: number
  /** eggs or chicks that could have, whole, 0 or more */
  readonly of: number
  /** what was held of the share before any count, a beta curve; left out, Jeffreys’ ½ and ½ */
  readonly before?: {readonly through: number; readonly lost: number}
}

/** Eggs to set, with what the flock's own records leave open and without. */
export interface EggsToSet {
  /** chicks of scoring age needed, as if every one were sure to be there; null when more than 2000 */
  readonly chicks: number | null
  /** eggs, the shares of the stages known no better than the counts tell; null when more than 2000 */
  readonly eggs: number | null
  /** eggs, as if the mean shares were the true ones: fewer, and too few about as often as the records are lucky */
  readonly eggsAtMean: number | null
  /** mean share of eggs that become a chick of scoring age, 0 to 1 */
  readonly meanShare: number
}

/** Jeffreys’ prior of a share: as little said beforehand as can be. */
const JEFFREYS = {through: 1 / 2, lost: 1 / 2}

/**
 * How many eggs to set, to have at least k chicks of the wanted kind with a stated assurance?
 *
 *     the smallest N with Σ P(fertile | N)·P(hatched | fertile)·P(alive | hatched)·P(X ≥ k | alive) ≥ a
 *
 * Each P is beta-binomial: the share of a stage is one for all eggs of the hatch, and known no better than a beta curve of
 * through + ½ and lost + ½ tells. The sums are exact. A row of a beta-binomial grows from the one before as Pólya's urn is filled,
 *
 *     P(n + 1, x) = P(n, x)·(β + n − x)/(α + β + n) + P(n, x − 1)·(α + x − 1)/(α + β + n)
 *
 * which adds positive numbers only. Counts of several hatches together are taken as one: hatches that differ by more than chance need more eggs still.
 *
 * @param wanted k, whole, 0 or more
 * @param chance that a chick is of the wanted kind, 0 to 1
 * @param assurance a, above 0 and below 1
 * @param stages from the egg on; none when chicks are bought; null for a stage the records do not hold
 * @returns eggs with and without the uncertainty; null when a stage holds no count and nothing was stated for it: then it cannot be told
 * @throws RangeError when a count, a curve or a chance is out of range
 * @see Sedcole 1977, Crop Sci. 17:667–668 (the binomial); Johnson, Kemp & Kotz 2005, Univariate Discrete Distributions, 6.9.2 (beta-binomial, from memory)
 * @example eggsToSet(3, 1 / 4, 0.95, [{through: 37, of: 48}])  // chicks 23, eggs 32, at the mean 31
 */
export function eggsToSet(wanted: number, chance: number, assurance: number, stages: readonly (HatchStage | null)[]): EggsToSet | null {
  checkWanted(wanted, assurance)
  const curves: Curve[] = []
  for (const stage of stages) {
    const curve = stage && curveOf(stage)
    if (!curve) return null
    curves.push(curve)
  }
  const meanShare = curves.reduce((share, {alpha, beta}) => (share * alpha) / (alpha + beta), 1)
  return {
    chicks: chicksForWanted(wanted, chance, assurance),
    eggs: smallestEggs(wanted, chance, assurance, curves),
    eggsAtMean: chicksForWanted(wanted, chance * meanShare, assurance),
    meanShare,
  }
}

/** Shape of a beta curve, both above 0. */
interface Curve {
  readonly alpha: number
  readonly beta: number
}

function curveOf({through, of, before}: HatchStage): Curve | null {
  if (!Number.isInteger(of) || of < 0 || !Number.isInteger(through) || through < 0 || through > of) {
    throw new RangeError(`those that came through are a count from 0 to all there were, not ${through} of ${of}`)
  }
  if (of === 0 && !before) return null
  const prior = before ?? JEFFREYS
  if (!(prior.through > 0 && prior.lost > 0)) throw new RangeError(`a beta curve has shapes above 0, not ${prior.through} and ${prior.lost}`)
  return {alpha: prior.through + through, beta: prior.lost + of - through}
}

/** The table grows until it holds the answer: the work goes with its square. */
function smallestEggs(wanted: number, chance: number, assurance: number, curves: readonly Curve[]): number | null {
  for (let most = 64; ; most = Math.min(MOST_HATCHED, 2 * most)) {
    const eggs = folded(wanted, chance, curves, most).findIndex(reached => reached >= assurance - ROUNDING)
    if (eggs >= 0) return eggs
    if (most === MOST_HATCHED) return null
  }
}

/** From the last stage back to the egg: what is assured by so many before a stage is the mean of what is assured by those that come through. */
function folded(wanted: number, chance: number, curves: readonly Curve[], most: number): number[] {
  let assured = Array.from({length: most + 1}, (_, chicks) => binomialTail(wanted, chicks, chance))
  for (const curve of [...curves].reverse()) assured = beforeStage(assured, curve)
  return assured
}

function beforeStage(assured: readonly number[], {alpha, beta}: Curve): number[] {
  const means: number[] = []
  let row = new Float64Array(assured.length), next = new Float64Array(assured.length)
  row[0] = 1
  for (let n = 0; n < assured.length; n++) {
    let mean = 0
    for (let x = 0; x <= n; x++) mean += (row[x] ?? 0) * (assured[x] ?? 0)
    means.push(mean)
    const balls = alpha + beta + n
    for (let x = 0; x <= n; x++) next[x] = ((row[x] ?? 0) * (beta + n - x) + (x === 0 ? 0 : (row[x - 1] ?? 0) * (alpha + x - 1))) / balls
    if (n + 1 < next.length) next[n + 1] = ((row[n] ?? 0) * (alpha + n)) / balls
    ;[row, next] = [next, row]
  }
  return means
}
