/** Mean kinship to be expected of the chicks of some breeders, as they are and with one male more. */
export interface OneMoreKinship {
  readonly now: number
  /** with each of the others in turn, in their order */
  readonly withOne: readonly number[]
}

/**
 * What would one male more do for the next generation?
 *
 *     expected mean kinship = ¼ (K(M, M) + 2 K(M, F) + K(F, F))
 *
 * with K(M, M) the mean kinship of the M males, each with itself included, K(F, F) of the females likewise, K(M, F) of every male with every female:
 * two chicks drawn at random, every male equally used and every female. A chick does not count with itself, so this is of a large hatch.
 *
 * @param kinship every bird with every bird, itself included, in the order males, females, others
 * @param males how many stand first, 1 or more
 * @param females how many stand next, 1 or more
 * @returns NaN throughout without a male or without a female
 * @example one male, one female, one male more, none kin nor inbred: ¼ (½ + ½) = 0.25 now, ¼ (¼ + ½) = 0.1875 with him
 */
export function oneMoreKinship(kinship: readonly Float64Array[], males: number, females: number): OneMoreKinship {
  const M = places(0, males), F = places(males, females), others = places(males + females, kinship.length - males - females)
  const between = (a: number, b: number): number => kinship[a]?.[b] ?? NaN
  const sum = (one: readonly number[], other: readonly number[]): number => one.reduce((total, a) => total + other.reduce((of, b) => of + between(a, b), 0), 0)
  const ofMales = sum(M, M), ofBoth = sum(M, F), ofFemales = sum(F, F) / females ** 2
  const expected = (count: number, among: number, across: number): number => (among / count ** 2 + 2 * across / (count * females) + ofFemales) / 4
  return {
    now: expected(males, ofMales, ofBoth),
    withOne: others.map(one => expected(males + 1, ofMales + 2 * sum([one], M) + between(one, one), ofBoth + sum([one], F))),
  }
}

const places = (from: number, count: number): readonly number[] => Array.from({length: count}, (_, index) => from + index)
