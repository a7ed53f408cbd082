import {FEWEST_FAMILIES} from './family-bootstrap.ts'
import type {Interval} from './interval.ts'
import {midRanks} from './rank-sum.ts'
import {groupsOfBoth, type Graded, type GroupOfBoth} from './rank-sum-within.ts'
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
 *     θ = Σ over sexes w_h θ_h        θ_h = mean over pairs of one sex of 1 where the first is the higher, ½ where they are alike        w_h ∝ n₁ₕn₂ₕ/(n₁ₕ + n₂ₕ + 1)
 *     v = m/(m − 1) · Σ over families ( Σ w_h (V_j − θ_h)/n_h )²        V_j = share of the other step's chicks of the sex below j, ties half
 *     θ ± t(ν) · √(v₁ + v₂)        ν = (v₁ + v₂)² / ( v₁²/(m₁ − 1) + v₂²/(m₂ − 1) )
 *
 * Cocks are held against cocks and hens against hens, with van Elteren's weights: were all pooled, a step with fewer cocks graded would look graded lower wherever cocks are graded higher.
 * The rank test takes chicks one by one, and of brothers and sisters that are alike it finds changes where there are none: with six sires of four hens each and a heritability of ½ in one
 * case of six (own simulation). Here a family counts as one piece. No v is taken to be less than that of the chicks one by one. Where all of one step stand above all of the other, so that nothing
 * varies, there is no interval. P is never less than the share of ways to deal the families that can give as much, 2/C(m₁ + m₂, m₁).
 *
 * @param one grades of the first step by family, each with its sex or other group, all finite; families without a chick that has its like in the other step are passed over
 * @param other likewise, of families that are not those of the first
 * @param level above 0 and below 1; default 0.95
 * @returns null where either step has fewer than five families
 * @throws RangeError when a grade is not finite, or the level is out of its range
 * @see Obuchowski 1997, Biometrics 53:567–578 (clustered placements; from memory), after DeLong, DeLong & Clarke-Pearson 1988, Biometrics 44:837–845. Weights: van Elteren 1960, Bull. Int. Stat. Inst. 37:351–361. Degrees of freedom: Satterthwaite 1946.
 * @example familySuperiority(ofOneSex([[8, 9], [7, 8], [9], [8, 8], [7]]), ofOneSex([[5], [6, 7], [5, 6], [7], [6]]))  // superiority 0.9643
 */
export function familySuperiority(one: readonly (readonly Graded[])[], other: readonly (readonly Graded[])[], level = 0.95): FamilySuperiority | null {
  if (!(level > 0 && level < 1)) throw new RangeError(`a level lies between 0 and 1, not at ${level}`)
  const groups = groupsOfBoth(one.flat(), other.flat()), known = new Set(groups.map(({group}) => group))
  const [first, second] = [one, other].map(families => families.map(own => own.filter(({group}) => known.has(group))).filter(own => own.length > 0))
  if (!first || !second || first.length < FEWEST_FAMILIES || second.length < FEWEST_FAMILIES) return null
  const above = placements(first, groups.map(turned => ({...turned, centre: centreOf(turned)}))), below = placements(second, groups.map(({one: own, other: theirs, ...rest}) => ({...rest, one: theirs, other: own, centre: 1 - centreOf({one: own, other: theirs})})))
  const superiority = groups.reduce((sum, group) => sum + group.weight * centreOf(group), 0), mine = spreadOf(above), theirs = spreadOf(below), variance = mine + theirs
  const leastP = Math.min(1, 2 / waysToChoose(first.length + second.length, first.length))
  if (!(variance > 0)) return {superiority, interval: null, p: superiority === 0.5 ? 1 : leastP}
  const freedom = variance ** 2 / (mine ** 2 / (first.length - 1) + theirs ** 2 / (second.length - 1)), error = Math.sqrt(variance), half = studentQuantile(level, freedom) * error
  return {superiority, interval: {low: Math.max(0, superiority - half), high: Math.min(1, superiority + half)}, p: Math.max(leastP, studentTail((superiority - 0.5) / error, freedom))}
}

/** Families whose chicks are all of one group. */
export const ofOneSex = (families: readonly (readonly number[])[]): readonly (readonly Graded[])[] => families.map(own => own.map(grade => ({group: '', grade})))

/** How often a chick of the first step stands above one of the second, ties half. */
function centreOf({one, other}: Pick<GroupOfBoth, 'one' | 'other'>): number {
  const ranks = midRanks([...one, ...other]).doubled.slice(0, one.length).reduce((sum, rank) => sum + rank, 0)
  return (ranks - one.length * (one.length + 1)) / 2 / (one.length * other.length)
}

/** What each chick adds to θ, by family: how far the share of the other step's chicks of its sex that it stands above lies from the middle, by the weight it has. */
function placements(families: readonly (readonly Graded[])[], groups: readonly (GroupOfBoth & {readonly centre: number})[]): readonly (readonly number[])[] {
  const shares = new Map(groups.map(({group, one, other, weight, centre}) => {
    const all = midRanks([...one, ...other]).doubled, among = midRanks(one).doubled
    return [group, new Map(one.map((grade, place) => [grade, (weight * (((all[place] ?? 0) - (among[place] ?? 0)) / 2 / other.length - centre)) / one.length]))]
  }))
  return families.map(family => family.map(({group, grade}) => shares.get(group)?.get(grade) ?? 0))
}

/** Variance of θ from one step when families are what was drawn; never less than when chicks were. */
function spreadOf(families: readonly (readonly number[])[]): number {
  const drawn = (pieces: readonly (readonly number[])[]): number => (pieces.length / (pieces.length - 1)) * pieces.reduce((sum, own) => sum + own.reduce((away, value) => away + value, 0) ** 2, 0)
  return Math.max(drawn(families), drawn(families.flat().map(value => [value])))
}

const waysToChoose = (n: number, taken: number): number => Array.from({length: taken}, (_, place) => (n - place) / (place + 1)).reduce((ways, factor) => ways * factor, 1)
