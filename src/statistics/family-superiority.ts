import {FEWEST_FAMILIES} from './family-bootstrap.ts'
import type {Interval} from './interval.ts'
import {midRanks} from './rank-sum.ts'
import {studentQuantile, studentTail} from './student-t.ts'

/** How often a chick of one step is graded above one of another, with what their families leave open. */
export interface FamilySuperiority {
  /** ½ when neither is the higher */
  readonly superiority: number
  /** 0 to 1; null where no family differs from another */
  readonly interval: Interval | null
  /** two-sided, 0 to 1 */
  readonly p: number
}

/**
 * Are the grades of one step higher than those of another by more than families differ?
 *
 *     θ = mean over all pairs of 1 where the first is the higher, ½ where they are alike        V_j = share of the other step's chicks below j, ties half
 *     v = m/(m − 1) · Σ over families ( Σ (V_j − θ) )² / n²        θ ± t(ν) · √(v₁ + v₂)        ν = (v₁ + v₂)² / ( v₁²/(m₁ − 1) + v₂²/(m₂ − 1) )
 *
 * The rank test takes chicks one by one, and of brothers and sisters that are alike it finds changes where there are none: with six sires of four hens each and a heritability of ½ in one
 * case of six (own simulation). Here a family counts as one piece. No v is taken to be less than that of the chicks one by one. Where all of one step stand above all of the other, so that nothing
 * varies, there is no interval. P is never less than the share of ways to deal the families that can give as much, 2/C(m₁ + m₂, m₁).
 *
 * @param one grades of the first step by family, all finite; families without a chick are passed over
 * @param other likewise, of families that are not those of the first
 * @param level above 0 and below 1; default 0.95
 * @returns null where either step has fewer than five families
 * @throws RangeError when a grade is not finite, or the level is out of its range
 * @see Obuchowski 1997, Biometrics 53:567–578 (clustered placements; from memory), after DeLong, DeLong & Clarke-Pearson 1988, Biometrics 44:837–845. Degrees of freedom: Satterthwaite 1946.
 * @example familySuperiority([[8, 9], [7, 8], [9], [8, 8], [7]], [[5], [6, 7], [5, 6], [7], [6]])  // superiority 0.9643
 */
export function familySuperiority(one: readonly (readonly number[])[], other: readonly (readonly number[])[], level = 0.95): FamilySuperiority | null {
  if (!(level > 0 && level < 1)) throw new RangeError(`a level lies between 0 and 1, not at ${level}`)
  for (const grade of [...one, ...other].flat()) if (!Number.isFinite(grade)) throw new RangeError(`a grade is a finite number, not ${grade}`)
  const [first, second] = [one, other].map(families => families.filter(own => own.length > 0))
  if (!first || !second || first.length < FEWEST_FAMILIES || second.length < FEWEST_FAMILIES) return null
  const above = placements(first, second), superiority = meanOf(above.flat())
  const [mine, theirs] = [spreadOf(above, superiority), spreadOf(placements(second, first), 1 - superiority)], variance = mine + theirs
  const leastP = Math.min(1, 2 / waysToChoose(first.length + second.length, first.length))
  if (!(variance > 0)) return {superiority, interval: null, p: superiority === 0.5 ? 1 : leastP}
  const freedom = variance ** 2 / (mine ** 2 / (first.length - 1) + theirs ** 2 / (second.length - 1)), error = Math.sqrt(variance), half = studentQuantile(level, freedom) * error
  return {superiority, interval: {low: Math.max(0, superiority - half), high: Math.min(1, superiority + half)}, p: Math.max(leastP, studentTail((superiority - 0.5) / error, freedom))}
}

/** Of each chick, by family, the share of the other step's chicks that it stands above, ties half: from its place among all and its place among its own. */
function placements(families: readonly (readonly number[])[], others: readonly (readonly number[])[]): readonly (readonly number[])[] {
  const own = families.flat(), theirs = others.flat(), all = midRanks([...own, ...theirs]).doubled, among = midRanks(own).doubled
  let next = 0
  return families.map(family => family.map(() => {
    const place = next++
    return ((all[place] ?? 0) - (among[place] ?? 0)) / 2 / theirs.length
  }))
}

/** Variance of the mean placement when families are what was drawn; never less than when chicks were. */
function spreadOf(families: readonly (readonly number[])[], centre: number): number {
  const n = families.reduce((sum, own) => sum + own.length, 0)
  const drawn = (pieces: readonly (readonly number[])[]): number => (pieces.length / (pieces.length - 1)) * pieces.reduce((sum, own) => sum + own.reduce((away, value) => away + value - centre, 0) ** 2, 0) / n ** 2
  return Math.max(drawn(families), drawn(families.flat().map(value => [value])))
}

const meanOf = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length

const waysToChoose = (n: number, taken: number): number => Array.from({length: taken}, (_, place) => (n - place) / (place + 1)).reduce((ways, factor) => ways * factor, 1)
