import type {Interval} from './interval.ts'
import type {Coefficient} from './least-squares.ts'
import {studentQuantile, studentTail} from './student-t.ts'
import {withinClasses} from './within-classes.ts'

/** A parent, or the mean of both, and what came of it. */
export interface ParentAndOffspring {
  /** value of the one parent, or mean of both; finite */
  readonly parent: number
  /** mean of the family's chicks, or one chick's value; finite, in the same unit */
  readonly offspring: number
  /** whose hatch mates they are compared with; default all with all */
  readonly group?: string
  /** birds that other rows may share, in the same order in all: of a pair its cock and its hen */
  readonly shared?: readonly string[]
}

/**
 * The least that rows of one bird are taken to be alike in what the slope leaves over. Few birds hardly tell it; of the pairs of a cock, with half a dozen chicks each and
 * h² about one half, a quarter of it is his: ¼ h²(1 − h²) in ½ h²(1 − h²) + (1 − ½ h²)/6.
 */
const LIKENESS_LEFT = 0.25

/** One estimate of heritability. */
interface HeritabilityEstimate {
  /** as it comes out: below 0 or above 1 when the families are few, which is a sign of too few and no error */
  readonly value: number
  /** standard error, 0 or more */
  readonly error: number
  /** between 0 and 1, where alone heritability can lie */
  readonly interval: Interval
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
 * Chicks of one pair are not independent: give family means, one a pair, where families are of about one size. For one parent compare the sexes apart. Pairs of one cock are
 * not independent either: what his weight does not tell of his genes is in all of them. Where rows share birds the squared error is multiplied (Kish and Moulton), for each
 * side by
 *
 *     1 + ρ(Σ_birds (Σ x)² / Σ x² − 1)        x from its group's mean; ρ the likeness of what is left over within birds, at least ¼
 *
 * @param pairs one line for each family or chick; `shared` in all or in none
 * @param parents `both` for the mean of both, `one` for one parent
 * @param level above 0 and below 1; default 0.95
 * @returns slope and h², or why there is none
 * @throws RangeError when a value is not finite or the level is out of its range
 * @see Falconer & Mackay 1996, Introduction to Quantitative Genetics, ch. 10; Kish 1965, Survey Sampling; Moulton 1986, J. Econometrics 32:385–397 (all from memory)
 * @example parentOffspring([{parent: 1, offspring: 2}, {parent: 2, offspring: 2}, {parent: 3, offspring: 3}], 'both')  // h² 0.5
 */
export function parentOffspring(pairs: readonly ParentAndOffspring[], parents: 'both' | 'one', level = 0.95): ParentOffspring {
  const fit = withinClasses(pairs.map(({parent, offspring, group = ''}) => ({group, x: [parent], y: offspring})), level)
  const [plain] = fit.kind === 'fitted' ? fit.coefficients : []
  if (fit.kind === 'few') return {kind: 'few', pairs: pairs.length}
  if (!plain || fit.kind !== 'fitted') return {kind: 'parents-alike', pairs: pairs.length}
  const slope = widened(plain, spreadTimes(pairs, plain.value), fit.freedom, level)
  const times = parents === 'both' ? 1 : 2
  const share = (value: number) => Math.min(1, Math.max(0, times * value))
  return {
    kind: 'estimated',
    pairs: pairs.length,
    slope,
    heritability: {value: times * slope.value, error: times * slope.error, interval: {low: share(slope.interval.low), high: share(slope.interval.high)}},
  }
}

function widened(plain: Coefficient, times: number, freedom: number, level: number): Coefficient {
  if (times === 1) return plain
  const {value} = plain, error = plain.error * Math.sqrt(times), far = studentQuantile(level, freedom) * error
  return {value, error, interval: {low: value - far, high: value + far}, p: error > 0 && Number.isFinite((value / error) ** 2) ? studentTail(value / error, freedom) : plain.p}
}

/** How many times the squared error that rows without shared birds would have; 1 or more. */
function spreadTimes(pairs: readonly ParentAndOffspring[], slope: number): number {
  const classes = new Map<string, {n: number; x: number; y: number}>()
  for (const {parent, offspring, group = ''} of pairs) {
    const found = classes.get(group) ?? {n: 0, x: 0, y: 0}
    classes.set(group, {n: found.n + 1, x: found.x + parent, y: found.y + offspring})
  }
  const rows = pairs.map(({parent, offspring, group = '', shared = []}) => {
    const {n, x, y} = classes.get(group) ?? {n: 1, x: parent, y: offspring}
    return {shared, x: parent - x / n, left: offspring - y / n - slope * (parent - x / n)}
  })
  const squares = rows.reduce((sum, {x}) => sum + x ** 2, 0), left = rows.reduce((sum, row) => sum + row.left ** 2, 0)
  const sides = rows[0]?.shared.length ?? 0
  return Array.from({length: sides}, (_, side) => {
    const birds = new Map<string, {n: number; x: number; left: number}>()
    for (const row of rows) {
      const name = row.shared[side] ?? '', found = birds.get(name) ?? {n: 0, x: 0, left: 0}
      birds.set(name, {n: found.n + 1, x: found.x + row.x, left: found.left + row.left})
    }
    const all = [...birds.values()], more = all.reduce((sum, {x}) => sum + x ** 2, 0) / squares - 1
    return Math.max(0, more) * likenessLeft(all, rows.length, left)
  }).reduce((sum, more) => sum + more, 1)
}

/** By analysis of variance of what is left over, between birds and within them. */
function likenessLeft(birds: readonly {readonly n: number; readonly left: number}[], rows: number, squares: number): number {
  if (birds.length < 2 || rows <= birds.length) return LIKENESS_LEFT
  const between = birds.reduce((sum, {n, left}) => sum + left ** 2 / n, 0), size = (rows - birds.reduce((sum, {n}) => sum + n ** 2, 0) / rows) / (birds.length - 1)
  const among = between / (birds.length - 1), inside = Math.max(0, squares - between) / (rows - birds.length), all = among + (size - 1) * inside
  return all > 0 ? Math.max(LIKENESS_LEFT, (among - inside) / all) : LIKENESS_LEFT
}
