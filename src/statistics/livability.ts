import type {Interval} from './interval.ts'
import {scoreInterval} from './score-interval.ts'

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

/** The deaths of one age. */
export interface DeathsAtAge {
  readonly age: number
  readonly deaths: number
  /** birds watched up to it */
  readonly risked: number
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
  if (!(z > 0 && Number.isFinite(z))) throw new RangeError(`z is above 0, not ${z}`)
  const ages = deathsByAge(birds, age), left = birds.filter(bird => !bird.died && bird.age < age).length
  let share = 1, sum = 0, dead = 0
  for (const {deaths, risked} of ages) {
    share *= (risked - deaths) / risked
    dead += deaths
    if (risked > deaths) sum += deaths / (risked * (risked - deaths))
  }
  const n = birds.length, known = n - left
  // beyond the last bird that was watched nothing is known, unless all are dead
  if (n === 0 || (share > 0 && known === dead)) return null
  const effective = share === 0 || sum === 0 ? known : (1 - share) / (share * sum)
  return {share, n, deaths: dead, left, effective, ...scoreInterval(share, effective, z)}
}

/**
 * When did they die, and how many were there to die?
 *
 * @param birds as `livability`
 * @param age in days; above 0; what came later is passed over
 * @returns one entry an age at which a bird died, youngest first
 * @throws RangeError as `livability`
 */
export function deathsByAge(birds: readonly Watched[], age: number): readonly DeathsAtAge[] {
  if (!(age > 0 && Number.isFinite(age))) throw new RangeError(`an age is above 0, not ${age}`)
  for (const bird of birds) if (!(bird.age >= 0 && Number.isFinite(bird.age))) throw new RangeError(`an age is 0 or more, not ${bird.age}`)
  const inTurn = [...birds].sort((a, b) => a.age - b.age), found: {age: number; deaths: number; risked: number}[] = []
  inTurn.forEach((bird, place) => {
    const last = found.at(-1), first = inTurn[place - 1]?.age !== bird.age
    if (bird.age > age) return
    // the first bird of an age stands where all that are watched so long begin
    if (first) found.push({age: bird.age, deaths: bird.died ? 1 : 0, risked: inTurn.length - place})
    else if (last && bird.died) last.deaths += 1
  })
  return found.filter(({deaths}) => deaths > 0)
}
