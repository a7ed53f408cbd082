import type {Interval} from './interval.ts'

/** How long one bird was watched, and how that ended. */
export interface Watched {
  /** age in days when it died, or was last known alive: sold, moved, or the last day of the records; 0 or more */
  readonly age: number
  readonly died: boolean
}

/** Share of birds alive at an age. */
export interface Livability extends Interval {
  /** 0 to 1 */
  readonly share: number
  /** birds that came into it */
  readonly n: number
  readonly deaths: number
  /** birds that left alive before the age: sold, moved, or too young yet */
  readonly left: number
  /** so many birds all watched to the age would tell as much */
  readonly effective: number
}

/**
 * How many of a hundred chicks live to an age, when some were sold or moved before it?
 *
 *     S = Π (1 − d_a/r_a) over the ages a ≤ `age` at which birds died        d_a deaths, r_a birds watched up to a
 *     n* = S(1 − S)/Var S        Var S = S² · Σ d_a/(r_a(r_a − d_a))        limits: Wilson's for S and n*
 *
 * The product-limit estimate: a bird counts for as long as it was watched, and no longer. Without birds that left it is the plain share with Wilson's interval.
 * Where none or all have died, n* is the number of birds whose fate at the age is known. A bird that left on the day another died was still there.
 *
 * @param birds all that hatched, with how long they were watched
 * @param age in days; above 0
 * @param z normal quantile of the level; above 0; default 1.95996 (95 %)
 * @returns share with interval; null when there is no bird, or none was watched to the age and some may yet live
 * @throws RangeError when an age is below 0 or not finite, or z is not above 0
 * @see Kaplan & Meier 1958, J. Am. Stat. Assoc. 53:457–481 (S). Greenwood 1926 (Var S). Rothman 1978, J. Chronic Dis. 31:557–560 (interval; from memory).
 * @example livability([{age: 20, died: true}, {age: 30, died: false}, {age: 140, died: false}, {age: 140, died: false}], 140)  // share 0.75
 */
export function livability(birds: readonly Watched[], age: number, z = 1.959963984540054): Livability | null {
  if (!(age > 0 && Number.isFinite(age))) throw new RangeError(`an age is above 0, not ${age}`)
  if (!(z > 0 && Number.isFinite(z))) throw new RangeError(`z is above 0, not ${z}`)
  for (const bird of birds) if (!(bird.age >= 0 && Number.isFinite(bird.age))) throw new RangeError(`an age is 0 or more, not ${bird.age}`)
  const dead = birds.filter(bird => bird.died && bird.age <= age), left = birds.filter(bird => !bird.died && bird.age < age).length
  let share = 1, sum = 0
  for (const at of [...new Set(dead.map(bird => bird.age))].sort((a, b) => a - b)) {
    const risked = birds.filter(bird => bird.age >= at).length, deaths = dead.filter(bird => bird.age === at).length
    share *= (risked - deaths) / risked
    if (risked > deaths) sum += deaths / (risked * (risked - deaths))
  }
  const n = birds.length, known = n - left
  // beyond the last bird that was watched nothing is known, unless all are dead
  if (n === 0 || (share > 0 && known === dead.length)) return null
  const effective = share === 0 || sum === 0 ? known : (1 - share) / (share * sum)
  const centre = (share + z ** 2 / (2 * effective)) / (1 + z ** 2 / effective)
  const half = (z / (1 + z ** 2 / effective)) * Math.sqrt((share * (1 - share)) / effective + z ** 2 / (4 * effective ** 2))
  return {
    share, n, deaths: dead.length, left, effective,
    low: share === 0 ? 0 : Math.max(0, centre - half),
    high: share === 1 ? 1 : Math.min(1, centre + half),
  }
}
