import {FEWEST_FAMILIES, LIKENESS_UNSEEN, type FamilyShare} from './family-bootstrap.ts'
import {deathsByAge, livability, type Livability, type Watched} from './livability.ts'
import {scoreInterval} from './score-interval.ts'
import {studentQuantile} from './student-t.ts'

/** Share of birds alive at an age, with what their families leave open. */
export interface FamilyLivability extends Livability {
  /** `families`: for birds bred like these · `these-chicks`: too few families, for these parents' chicks alone */
  readonly kind: FamilyShare['kind']
  /** families with a bird */
  readonly families: number
}

/**
 * How many of a hundred chicks live to an age, where chicks of one family die together?
 *
 *     u_i = −S · Σ_a (x_ia − d_a/r_a)/(r_a − d_a) over the ages a that bird i was watched up to        x_ia 1 where it died then, else 0
 *     Var S = m/(m − 1) · Σ over m families of (Σ u_i)²        limits: `scoreInterval` for S and n* = S(1 − S)/Var S, with Student's t of m − 1
 *
 * S is `livability`'s own. Were every bird a family of its own, Var S but for m/(m − 1) would be Greenwood's to the last digit; and the limits are never narrower than his.
 * Where nothing or everything died no family shows any spread, and n* = n/(1 + (n/m − 1)·0.1) stands in, as in `familyShare`.
 *
 * @param families birds of each, in any order; families without a bird are passed over
 * @param age in days; above 0
 * @returns share with interval; null as `livability`
 * @throws RangeError as `livability`
 * @see Ying & Wei 1994, J. Multivar. Anal. 50:17–29 (families in the product-limit estimate; from memory). The t and the joining: as `familyShare`, held by simulation.
 * @example livabilityOfFamilies([[{age: 60, died: false}, {age: 10, died: true}]], 56)?.kind  // 'these-chicks'
 */
export function livabilityOfFamilies(families: readonly (readonly Watched[])[], age: number): FamilyLivability | null {
  const rows = families.filter(({length}) => length > 0), m = rows.length
  const plain = livability(rows.flat(), age)
  if (plain === null) return null
  if (m < FEWEST_FAMILIES) return {...plain, kind: 'these-chicks', families: m}
  const {share, effective: alone} = plain
  const spread = varianceByFamilies(rows, age, share)
  const joined = spread === 0 ? alone / (1 + Math.max(0, alone / m - 1) * LIKENESS_UNSEEN) : (share * (1 - share)) / spread
  const effective = Math.max(1, Math.min(alone, joined))
  return {...plain, kind: 'families', families: m, effective, ...scoreInterval(share, effective, studentQuantile(0.95, m - 1))}
}

/** Var S above; 0 where no family differs. */
function varianceByFamilies(rows: readonly (readonly Watched[])[], age: number, share: number): number {
  const ages = deathsByAge(rows.flat(), age)
  if (share === 0 || ages.length === 0) return 0
  // what a bird watched up to each age owes, added up over the ages
  let sum = 0
  const owed = ages.map(({deaths, risked}) => (sum += deaths / (risked * (risked - deaths))))
  const squares = rows.map(birds => birds.reduce((total, bird) => total + share * gainOf(bird), 0) ** 2)
  return (rows.length / (rows.length - 1)) * squares.reduce((total, square) => total + square, 0)

  function gainOf({age: last, died}: Watched): number {
    const place = lastUpTo(last), at = ages[place]
    if (at === undefined) return 0
    return (owed[place] ?? 0) - (died && at.age === last ? 1 / (at.risked - at.deaths) : 0)
  }

  function lastUpTo(last: number): number {
    let low = 0, high = ages.length
    while (low < high) {
      const middle = (low + high) >> 1
      if ((ages[middle]?.age ?? Infinity) <= last) low = middle + 1
      else high = middle
    }
    return low - 1
  }
}
