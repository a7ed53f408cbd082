import {chanceOf} from './chance.ts'
import type {Interval} from './interval.ts'
import {normalQuantile} from './normal-quantile.ts'
import {scoreInterval} from './score-interval.ts'
import type {Count} from './share-difference.ts'
import {studentQuantile} from './student-t.ts'
import {wilsonInterval} from './wilson-interval.ts'

/** Under so many families nothing is said beyond these chicks. */
export const FEWEST_FAMILIES = 5
/** Where no family differs from another, how alike chicks of one family are taken to be; between no likeness (0) and all or none (1). */
export const LIKENESS_UNSEEN = 0.1

/** A share with what its chicks' families leave open. */
export interface FamilyShare extends Interval {
  /** `families`: an interval for birds bred like these · `these-chicks`: too few families, plain Wilson, which speaks of these parents' chicks alone */
  readonly kind: 'families' | 'these-chicks'
  readonly share: number
  readonly n: number
  /** families with a chick */
  readonly families: number
  /** so many independent chicks would tell as much; 1 to n, n for `these-chicks` */
  readonly effective: number
}

/** How the bootstrap is run. */
export interface Resampling {
  /** whole, 0 to 2³² − 1; same seed, same interval */
  readonly seed: number
  /** times the families are drawn anew; default 2000 */
  readonly draws?: number
  /** above 0 and below 1; default 0.95 */
  readonly level?: number
}

/**
 * Chicks of few families are not independent: which shares would the next flock bred like this one plausibly show?
 *
 *     v = m/(m − 1) · variance of Σk/Σn over `draws` flocks of m families drawn from these with putting back
 *     n* = n / max(1, v / (p(1 − p)/n))        limits: Wilson's for p and n* with Student's t of m − 1 in place of z
 *
 * The bootstrap by family gives the spread; a score interval is built on it, because the bootstrap's own percentiles cover only 58 to 93 times in a
 * hundred at five to twenty families. Where every chick is alike the families show no spread whatever, and n* = n/(1 + (n/m − 1)·0.1) stands in.
 * Under five families no spread between them can be judged: Wilson's plain interval, named as such.
 *
 * @param families count of each sire family (or brood, or pen): whatever was drawn as one. Families without a chick are passed over
 * @param resampling seed, and what is not as usual
 * @returns share and limits, 0 to 1; null when there is no chick
 * @throws RangeError when a count is none, the seed no seed, draws under 2 or the level out of its range
 * @see Davison & Hinkley 1997, Bootstrap Methods and their Application, 3.8 (drawing families whole). Korn & Graubard 1998, Surv. Methodol. 24:193–201,
 *   and Dean & Pagano 2015, J. Surv. Stat. Methodol. 3:484–503 (effective size with t in a score interval); all from memory. Their joining, and the 0.1: own, held by simulation.
 * @example familyShare([{k: 9, n: 10}, {k: 12, n: 12}, {k: 5, n: 8}, {k: 11, n: 11}, {k: 9, n: 9}], {seed: 1})  // share 0.92, low 0.5971, high 0.9889
 */
export function familyShare(families: readonly Count[], resampling: Resampling): FamilyShare | null {
  const {level = 0.95} = resampling
  const z = normalQuantile(level)
  const rows = checked(families)
  const m = rows.length, n = total(rows, 'n'), k = total(rows, 'k')
  if (n === 0) return null
  const share = k / n
  if (m < FEWEST_FAMILIES) return {kind: 'these-chicks', share, n, families: m, effective: n, ...wilsonInterval(k, n, z)}
  const plain = (share * (1 - share)) / n
  const inflation = plain === 0 ? 1 + (n / m - 1) * LIKENESS_UNSEEN : Math.max(1, varianceByFamilies(rows, resampling) / plain)
  const effective = Math.max(1, n / inflation)
  return {kind: 'families', share, n, families: m, effective, ...scoreInterval(share, effective, studentQuantile(level, m - 1))}
}

/**
 * Variance of a share when families, not chicks, are what was drawn.
 *
 * @param families as `familyShare`, two or more of them with a chick
 * @param resampling seed and draws
 * @returns v as above, 0 or more
 * @throws RangeError as `familyShare`, and with fewer than two families
 * @see as `familyShare`
 */
export function varianceByFamilies(families: readonly Count[], {seed, draws = 2000}: Resampling): number {
  const rows = checked(families), m = rows.length
  if (m < 2) throw new RangeError(`a spread between families needs 2 of them or more, not ${m}`)
  if (!Number.isInteger(draws) || draws < 2) throw new RangeError(`draws are a count of 2 or more, not ${draws}`)
  const chance = chanceOf(seed)
  const centre = total(rows, 'k') / total(rows, 'n')
  let sum = 0, squares = 0
  for (let draw = 0; draw < draws; draw++) {
    let k = 0, n = 0
    for (let drawn = 0; drawn < m; drawn++) {
      const row = rows[chance.whole(m)]
      k += row?.k ?? 0
      n += row?.n ?? 0
    }
    const away = k / n - centre
    sum += away
    squares += away ** 2
  }
  return (Math.max(0, squares - sum ** 2 / draws) / (draws - 1)) * (m / (m - 1))
}

function checked(families: readonly Count[]): Count[] {
  for (const {k, n} of families) {
    if (!Number.isInteger(n) || n < 0) throw new RangeError(`n is a count of 0 or more, not ${n}`)
    if (!Number.isInteger(k) || k < 0 || k > n) throw new RangeError(`k is a count from 0 to ${n}, not ${k}`)
  }
  return families.filter(({n}) => n > 0)
}

const total = (rows: readonly Count[], what: 'k' | 'n'): number => rows.reduce((sum, row) => sum + row[what], 0)
