/** Chance with a seed: the same seed gives the same numbers for ever, on every machine. */
export interface Chance {
  /** a whole number from 0 to 2³² − 1 */
  next(): number
  /** a whole number from 0 to `below` − 1, each as likely as the other but for one part in 2³²/below */
  whole(below: number): number
}

/**
 * Where does chance come from, when two runs on the same records must give the same bytes? From a number that is passed in.
 *
 * The generator is xoshiro128** (32-bit words, four of them, period 2¹²⁸ − 1); the seed is spread over the four words by
 * MurmurHash3's finisher on seed + i·0x9e3779b9, so that neighbouring seeds have nothing in common.
 *
 * @param seed whole, 0 to 2³² − 1; name it on the page
 * @returns the numbers, one after another
 * @throws RangeError when the seed is no such number
 * @see Blackman & Vigna 2021, ACM Trans. Math. Softw. 47(4):36. Seeding after Steele, Lea & Flood 2014 (OOPSLA), in 32 bits: own.
 * @example chanceOf(1).whole(6)  // 3
 */
export function chanceOf(seed: number): Chance {
  if (!Number.isInteger(seed) || seed < 0 || seed > 0xffffffff) throw new RangeError(`a seed is a whole number from 0 to 4294967295, not ${seed}`)
  return chanceFromState([spread(seed, 1), spread(seed, 2), spread(seed, 3), spread(seed, 4)])
}

/**
 * The same from the generator's bare state, as the authors' reference program takes it.
 *
 * @param state four whole numbers from 0 to 2³² − 1, not all 0
 * @returns as `chanceOf`
 * @throws RangeError when all four are 0, which the generator never leaves
 * @see Blackman & Vigna, as above
 */
export function chanceFromState(state: readonly [number, number, number, number]): Chance {
  let [a, b, c, d] = state
  if ((a | b | c | d) === 0) throw new RangeError('a state of four zeros gives zeros for ever')
  const next = (): number => {
    const out = Math.imul(turned(Math.imul(b, 5), 7), 9) >>> 0
    const kept = b << 9
    c ^= a
    d ^= b
    b ^= c
    a ^= d
    c ^= kept
    d = turned(d, 11)
    return out
  }
  return {next, whole: below => Math.floor((next() * below) / 0x100000000)}
}

const turned = (word: number, by: number): number => (word << by) | (word >>> (32 - by))

function spread(seed: number, step: number): number {
  let word = (seed + Math.imul(step, 0x9e3779b9)) | 0
  word = Math.imul(word ^ (word >>> 16), 0x85ebca6b)
  word = Math.imul(word ^ (word >>> 13), 0xc2b2ae35)
  return (word ^ (word >>> 16)) >>> 0
}
