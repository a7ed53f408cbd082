/**
 * Chance with a seed: the same seed draws the same book for ever.
 * @see Blackman & Vigna 2021, ACM Trans. Math. Softw. 47(4):36, xoroshiro128+ (by pure-rand)
 */
import {uniformFloat64} from 'pure-rand/distribution/uniformFloat64'
import {uniformInt} from 'pure-rand/distribution/uniformInt'
import {xoroshiro128plus} from 'pure-rand/generator/xoroshiro128plus'

export interface Chance {
  /** true with this probability, 0 to 1 */
  happens(probability: number): boolean
  /** a whole number from `low` to `high`, both included */
  whole(low: number, high: number): number
  oneOf<T>(things: readonly T[]): T
  /** up to `count` different things, in drawn order */
  some<T>(things: readonly T[], count: number): T[]
  /** roughly normal with mean 0 and SD 1, within ±6: a sum of twelve uniform numbers less six */
  normal(): number
}

export function chanceOf(seed: number): Chance {
  const generator = xoroshiro128plus(seed)
  const whole = (low: number, high: number) => uniformInt(generator, low, high)
  const oneOf = <T>(things: readonly T[]): T => {
    if (things.length === 0) throw new RangeError('nothing to choose from')
    return things[whole(0, things.length - 1)] as T
  }
  return {
    whole,
    oneOf,
    happens: probability => uniformFloat64(generator) < probability,
    some(things, count) {
      const left = [...things]
      const taken = []
      while (taken.length < count && left.length > 0) taken.push(...left.splice(whole(0, left.length - 1), 1))
      return taken
    },
    normal() {
      let sum = -6
      for (let i = 0; i < 12; i++) sum += uniformFloat64(generator)
      return sum
    },
  }
}
