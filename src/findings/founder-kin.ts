import type {Bird} from '../logbook/book.ts'
import type {Kinship} from './inbreeding.ts'
import type {PedigreeOfBook} from './pedigree-of-book.ts'

/** Two founders who are kin, one behind a sire and the other behind a dam. */
export interface FounderKin {
  readonly birds: readonly [Bird, Bird]
  readonly kinship: number
  /** the bought flock that both are of, else null */
  readonly flock: string | null
  /** of all that the founders' kinship gives to the pair, 0 to 1; ways that meet below the founders are not taken out */
  readonly part: number
}

/**
 * Which two founders, kin by their strain or flock or as stated, give most of the kinship of a sire and a dam?
 *
 *     (c(i) c′(j) + c(j) c′(i)) K(i, j)      c, c′ the shares of the sire's and the dam's genes that came down from a founder; the greatest i ≠ j
 *
 * @returns null where no two founders behind them are kin
 */
export function founderKin({pedigree: {animals}, birds, numberOf}: PedigreeOfBook, kin: Pick<Kinship, 'autosome'>): (sire: Bird, dam: Bird) => FounderKin | null {
  const known = new Map<number, ReadonlyMap<number, number>>()
  return (sire, dam) => {
    const his = sharesOf(numberOf(sire)), hers = sharesOf(numberOf(dam))
    const all = [...new Set([...his.keys(), ...hers.keys()])]
    const kinship = kin.autosome.among(all)
    let whole = 0, best: {readonly of: readonly [number, number]; readonly kinship: number; readonly part: number} | null = null
    all.forEach((one, row) => {
      all.slice(0, row).forEach((other, column) => {
        const value = kinship[row]?.[column] ?? 0
        const part = ((his.get(one) ?? 0) * (hers.get(other) ?? 0) + (his.get(other) ?? 0) * (hers.get(one) ?? 0)) * value
        whole += part
        if (part > (best?.part ?? 0)) best = {of: [other, one], kinship: value, part}
      })
    })
    return named(best, whole)
  }

  function named(best: {readonly of: readonly [number, number]; readonly kinship: number; readonly part: number} | null, whole: number): FounderKin | null {
    const [one, other] = (best?.of ?? []).map(number => birds[number])
    return best && one && other ? {birds: [one, other], kinship: best.kinship, flock: one.flock && one.flock.name === other.flock?.name ? one.flock.name : null, part: best.part / whole} : null
  }

  /** expected share of each founder of the book in an animal's genes */
  function sharesOf(number: number): ReadonlyMap<number, number> {
    const before = known.get(number)
    if (before) return before
    const {matings = [], oneOf} = animals[number] ?? {}
    const sources = oneOf ?? matings.flatMap(({sire, dam, chance}) => [sire, dam].flatMap(animal => (animal === null ? [] : [{animal, chance: chance / 2}])))
    const shares = new Map<number, number>()
    if (sources.length === 0) shares.set(number, 1)
    for (const {animal, chance} of sources) for (const [founder, share] of sharesOf(animal)) shares.set(founder, (shares.get(founder) ?? 0) + chance * share)
    known.set(number, shares)
    return shares
  }
}
