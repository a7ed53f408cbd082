import type {Interval} from './interval.ts'
import {meanAndDeviation} from './mean-and-deviation.ts'

/** Hatch mates of one sex, and those of them that were bred from. */
export interface SelectedClass {
  /** every bird of the class that was measured, bred from or not; all finite */
  readonly all: readonly number[]
  /** those bred from: their value, and the weight they count with, above 0 – their chicks that were scored */
  readonly bred: readonly {readonly value: number; readonly weight: number}[]
}

/** By how much the birds bred from stood above their hatch mates. */
export interface Differential {
  /** in the unit of the values */
  readonly differential: number
  /** in standard deviations inside the classes: the intensity reached; null when no class shows a spread */
  readonly intensity: number | null
  readonly bred: number
  readonly measured: number
}

/**
 * What did we choose for? The selection differential of one sex.
 *
 *     S = Σ w·(x − mean of its class)/Σ w        over the birds bred from, w their scored chicks
 *
 * Weighting by chicks makes it the effective differential: a bird chosen and left without chicks chose nothing. Choosing without meaning to shows in it too.
 *
 * @param classes hatch mates of one sex; those without a bird bred from count only for the spread
 * @returns S; null when no bird was bred from
 * @throws RangeError when a value is not finite, a weight not above 0, or birds were bred from in a class of which none was measured
 * @see Falconer & Mackay 1996, Introduction to Quantitative Genetics, ch. 11 (from memory)
 * @example selectionDifferential([{all: [2000, 2200, 2400], bred: [{value: 2400, weight: 8}, {value: 2200, weight: 2}]}])?.differential  // 160
 */
export function selectionDifferential(classes: readonly SelectedClass[]): Differential | null {
  let weights = 0, sum = 0, bred = 0, squares = 0, freedom = 0, measured = 0
  for (const {all, bred: chosen} of classes) {
    if (all.length === 0 && chosen.length > 0) throw new RangeError('birds bred from stand in a class of which none was measured')
    if (all.length === 0) continue
    const {mean, sd, n} = meanAndDeviation(all)
    for (const {value, weight} of chosen) {
      if (!Number.isFinite(value)) throw new RangeError(`a measurement is a finite number, not ${value}`)
      if (!(weight > 0 && Number.isFinite(weight))) throw new RangeError(`a weight is above 0, not ${weight}`)
      weights += weight
      sum += weight * (value - mean)
      bred += 1
    }
    squares += (n - 1) * (sd ?? 0) ** 2
    freedom += n - 1
    measured += n
  }
  if (weights === 0) return null
  const differential = sum / weights, spread = Math.sqrt(squares / Math.max(1, freedom))
  return {differential, intensity: spread > 0 ? differential / spread : null, bred, measured}
}

/**
 * The differential of both sexes together, and what it should bring.
 *
 *     S = ½(S♂ + S♀)        R = h²·S
 *
 * @param cocks S♂, in the unit of the trait
 * @param hens S♀
 * @param heritability h² with its limits, each 0 to 1
 * @returns S, the response to expect and what it may be as h² may be; low below high whatever the sign of S
 * @throws RangeError when a differential is not finite or h² lies outside 0 to 1
 * @see Falconer & Mackay 1996, ch. 11, equation 11.2 (from memory)
 * @example expectedResponse(300, 100, {value: 0.4, low: 0.2, high: 0.6})  // differential 200, response 80, interval 40 to 120
 */
export function expectedResponse(cocks: number, hens: number, heritability: Interval & {readonly value: number}): {readonly differential: number; readonly response: number; readonly interval: Interval} {
  for (const each of [cocks, hens]) if (!Number.isFinite(each)) throw new RangeError(`a differential is a finite number, not ${each}`)
  for (const each of [heritability.value, heritability.low, heritability.high]) if (!(each >= 0 && each <= 1)) throw new RangeError(`a heritability lies between 0 and 1, not at ${each}`)
  const differential = (cocks + hens) / 2, ends = [heritability.low * differential, heritability.high * differential]
  return {differential, response: heritability.value * differential, interval: {low: Math.min(...ends), high: Math.max(...ends)}}
}
