import {normalQuantile} from './normal-quantile.ts'

/** How sure one wants to be. */
export interface Wish {
  /** of the interval that is not to hold nothing; above 0 and below 1, default 0.95 */
  readonly level?: number
  /** chance to tell what is there, above 0.5 and below 1; default 0.8 */
  readonly power?: number
}

/** z of a two-sided level, and of a chance that lies on one side. */
function quantilesOf({level = 0.95, power = 0.8}: Wish): readonly [number, number] {
  if (!(power > 0.5 && power < 1)) throw new RangeError(`a chance to tell lies between 0.5 and 1, not at ${power}`)
  return [normalQuantile(level), normalQuantile(2 * power - 1)]
}

/**
 * How many times the records would it take to tell an effect of this size?
 *
 *     times = ( (z_level + z_power)·error / effect )²
 *
 * if those to come are as these: as varied, as spread, as often of each kind. Errors shrink as the root of the number.
 *
 * @param error standard error of the effect as the records stand, 0 or more
 * @param effect what is to be told, in the same unit; not 0
 * @returns 1 or less where they tell it already
 * @throws RangeError when an argument is out of its range
 * @see Snedecor & Cochran, Statistical Methods, sample size (from memory, no page)
 * @example timesToTell(0.02, 0.03)  // 3.4884
 */
export function timesToTell(error: number, effect: number, wish: Wish = {}): number {
  if (!(error >= 0 && Number.isFinite(error))) throw new RangeError(`a standard error is 0 or more, not ${error}`)
  if (!Number.isFinite(effect) || effect === 0) throw new RangeError(`an effect to tell is not ${effect}`)
  const [level, power] = quantilesOf(wish)
  return (((level + power) * error) / effect) ** 2
}

/**
 * How many in each of two groups, to tell two shares apart?
 *
 *     n = ( z_level·√(2·p̄q̄) + z_power·√(p₁q₁ + p₂q₂) )² / (p₁ − p₂)²        p̄ = (p₁ + p₂)/2, q = 1 − p
 *
 * if each stands alone: where eggs of one hen do well or badly together it takes more.
 *
 * @param one share of one group, 0 to 1
 * @param other of the other; not the same
 * @returns whole, 1 or more
 * @throws RangeError when an argument is out of its range
 * @see Fleiss 1981, Statistical Methods for Rates and Proportions, ch. 3, without continuity (from memory)
 * @example countsToTell(0.6, 0.5)  // 388
 */
export function countsToTell(one: number, other: number, wish: Wish = {}): number {
  for (const share of [one, other]) if (!(share >= 0 && share <= 1)) throw new RangeError(`a share lies between 0 and 1, not at ${share}`)
  if (one === other) throw new RangeError('two shares that are the same are not to be told apart')
  const [level, power] = quantilesOf(wish), middle = (one + other) / 2
  return Math.max(1, Math.ceil((level * Math.sqrt(2 * middle * (1 - middle)) + power * Math.sqrt(one * (1 - one) + other * (1 - other))) ** 2 / (one - other) ** 2))
}

/**
 * How large a difference do two groups of this many tell?
 *
 *     d = (z_level + z_power)·√(1/n₁ + 1/n₂)        in standard deviations inside the groups
 *
 * @param one birds of one group, 1 or more
 * @param other of the other
 * @returns above 0
 * @throws RangeError when an argument is out of its range
 * @see as `timesToTell`
 * @example differenceTold(16, 16)  // 0.9905
 */
export function differenceTold(one: number, other: number, wish: Wish = {}): number {
  for (const birds of [one, other]) if (!(birds >= 1 && Number.isFinite(birds))) throw new RangeError(`a group has a bird or more, not ${birds}`)
  const [level, power] = quantilesOf(wish)
  return (level + power) * Math.sqrt(1 / one + 1 / other)
}
