import type {Coefficient} from './least-squares.ts'
import type {HeritabilityEstimate} from './sire-dam-heritability.ts'
import {withinClasses} from './within-classes.ts'

/** A parent, or the mean of both, and what came of it. */
export interface ParentAndOffspring {
  /** value of the one parent, or mean of both; finite */
  readonly parent: number
  /** mean of the family's chicks, or one chick's value; finite, in the same unit */
  readonly offspring: number
  /** whose hatch mates they are compared with; default all with all */
  readonly group?: string
}

/** Heritability from the likeness of chicks to their parents. */
export type ParentOffspring =
  | {
      readonly kind: 'estimated'
      readonly pairs: number
      /** change of the offspring per unit of the parent */
      readonly slope: Coefficient
      readonly heritability: HeritabilityEstimate
    }
  /** `few`: no degree of freedom is left · `parents-alike`: the parents do not differ inside any group */
  | {readonly kind: 'few' | 'parents-alike'; readonly pairs: number}

/**
 * Do heavy parents have heavy chicks?
 *
 *     h² = b on the mean of both parents        h² = 2b on one parent        b the slope within groups, by least squares
 *
 * Chicks of one pair are not independent: give family means where families are of about one size. For one parent compare the sexes apart.
 *
 * @param pairs one line for each family or chick
 * @param parents `both` for the mean of both, `one` for one parent
 * @param level above 0 and below 1; default 0.95
 * @returns slope and h², or why there is none
 * @throws RangeError when a value is not finite or the level is out of its range
 * @see Falconer & Mackay 1996, Introduction to Quantitative Genetics, ch. 10 (from memory)
 * @example parentOffspring([{parent: 1, offspring: 2}, {parent: 2, offspring: 2}, {parent: 3, offspring: 3}], 'both')  // h² 0.5
 */
export function parentOffspring(pairs: readonly ParentAndOffspring[], parents: 'both' | 'one', level = 0.95): ParentOffspring {
  const fit = withinClasses(pairs.map(({parent, offspring, group = ''}) => ({group, x: [parent], y: offspring})), level)
  const [slope] = fit.kind === 'fitted' ? fit.coefficients : []
  if (fit.kind === 'few') return {kind: 'few', pairs: pairs.length}
  if (!slope) return {kind: 'parents-alike', pairs: pairs.length}
  const times = parents === 'both' ? 1 : 2
  const share = (value: number) => Math.min(1, Math.max(0, times * value))
  return {
    kind: 'estimated',
    pairs: pairs.length,
    slope,
    heritability: {value: times * slope.value, error: times * slope.error, interval: {low: share(slope.interval.low), high: share(slope.interval.high)}},
  }
}
