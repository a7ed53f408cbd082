import {carrierChance, missChance, READ_RIGHT, type Misreading, type TestFamily, type TestMate} from './test-mating.ts'

/** How a test is laid out. */
export interface TestPlan {
  readonly mate: TestMate
  /** chicks of each mate before the next one of the same kind is taken; left out, all chicks are of one mate */
  readonly chicksPerMate?: number
  readonly misreading?: Misreading
}

/** More chicks than any test will hatch; a test that needs more is said not to reach its aim. */
export const MOST_TEST_CHICKS = 10_000

/** A limit is kept when it is passed by no more than rounding: five chicks of a recessive mate keep to 1/32. */
const ROUNDED = 1 + 1e-12

/**
 * How many clean chicks clear a bird, so that a carrier slips through with no more than a stated chance?
 *
 *     the smallest n with missChance(n) ≤ limit
 *
 * @param limit chance of missing a carrier, above 0 and below 1; 0.01 for "99 % sure to find it out"
 * @param plan mates and misreading
 * @returns n, or null when no number does: one mate that may itself be free of the allele leaves that chance whatever is hatched
 * @throws RangeError when the limit or the plan is out of range
 * @see The needed number is never rounded down: against a known carrier at one in a hundred it is 17, though many handbooks print 16, (¾)^16 = 0.010023
 * @example chicksToFindCarrier(0.01, {mate: CARRIER_MATE})  // 17
 */
export function chicksToFindCarrier(limit: number, plan: TestPlan): number | null {
  checkLimit(limit)
  // A carrier of which every chick is read as clean only for lack of telling mates is not found by readings gone wrong.
  if (plan.chicksPerMate === undefined && 1 - plan.mate.carrier - plan.mate.recessive > limit) return null
  return smallest(plan, families => missChance(families, plan.misreading ?? READ_RIGHT) <= limit * ROUNDED)
}

/**
 * How many clean chicks does this bird need, by what is already known of it?
 *
 *     the smallest n with carrierChance(prior, n) ≤ limit
 *
 * A bird that is hardly suspected needs fewer than one that is two to one a carrier; 0 when it is cleared already.
 *
 * @param prior chance before the test that the bird is a carrier, 0 to 1
 * @param limit chance that may be left after it, above 0 and below 1
 * @param plan mates and misreading
 * @returns n, or null when no number does
 * @throws RangeError when a chance or the plan is out of range
 * @see Bayes’ rule, as in `carrierChance`
 * @example chicksToClear(2 / 3, 0.05, {mate: RECESSIVE_MATE})  // 6, where 5 leave 1/17
 */
export function chicksToClear(prior: number, limit: number, plan: TestPlan): number | null {
  checkLimit(limit)
  return smallest(plan, families => (carrierChance(prior, families, plan.misreading ?? READ_RIGHT) ?? 1) <= limit * ROUNDED)
}

/**
 * The mates of a plan with so many clean chicks: as many full families as there are, and what is left over.
 *
 * @param chicks whole, 0 or more
 * @param plan how many chicks a mate has
 * @returns families to hand to `missChance` or `carrierChance`
 * @throws RangeError when the chicks or the chicks of a mate are no count
 * @see Own
 * @example familiesOf(7, {mate: OWN_DAUGHTER, chicksPerMate: 3})  // daughters with 3, 3 and 1 clean chicks
 */
export function familiesOf(chicks: number, {mate, chicksPerMate}: TestPlan): TestFamily[] {
  if (!Number.isInteger(chicks) || chicks < 0) throw new RangeError(`chicks are a count, not ${chicks}`)
  if (chicksPerMate === undefined) return [{...mate, clean: chicks}]
  if (!Number.isInteger(chicksPerMate) || chicksPerMate < 1) throw new RangeError(`a mate has 1 chick or more, not ${chicksPerMate}`)
  const families = Array<TestFamily>(Math.floor(chicks / chicksPerMate)).fill({...mate, clean: chicksPerMate})
  const over = chicks % chicksPerMate
  return over === 0 ? families : [...families, {...mate, clean: over}]
}

/** Each further clean chick speaks against a carrier or says nothing, so halving the range finds the first number that does. */
function smallest(plan: TestPlan, enough: (families: readonly TestFamily[]) => boolean): number | null {
  const reached = (chicks: number) => enough(familiesOf(chicks, plan))
  if (reached(0)) return 0
  return plan.mate.carrier + plan.mate.recessive === 0 ? null : smallestCount(reached)
}

/**
 * The least number that is enough, where more is never less than enough.
 *
 * @returns null where not even 10 000 are
 * @example smallestCount(count => count * count >= 10)  // 4
 */
export function smallestCount(enough: (count: number) => boolean): number | null {
  if (enough(0)) return 0
  if (!enough(MOST_TEST_CHICKS)) return null
  let short = 0, long = MOST_TEST_CHICKS
  while (long - short > 1) {
    const middle = Math.floor((short + long) / 2)
    if (enough(middle)) long = middle
    else short = middle
  }
  return long
}

function checkLimit(limit: number): void {
  if (!(limit > 0 && limit < 1)) throw new RangeError(`a limit lies between 0 and 1, not at ${limit}`)
}
