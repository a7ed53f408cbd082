/** What the bird to be tested is mated to: chances that the mate has the recessive allele once or twice; what is left of 1 has it not at all. */
export interface TestMate {
  readonly carrier: number
  readonly recessive: number
}

/** Chicks of one mate, by what was read from them. */
export interface TestFamily extends TestMate {
  /** chicks read as showing the dominant */
  readonly clean: number
  /** chicks read as showing the recessive; left out, none */
  readonly shown?: number
}

/** How often a chick's look is read wrongly. */
export interface Misreading {
  /** chance e that a recessive chick is read as clean; of a dominant allele, that a chick with it does not show it or is read as clean */
  readonly missed: number
  /** chance f that a clean chick is read as recessive */
  readonly mistaken: number
}

export const READ_RIGHT: Misreading = {missed: 0, mistaken: 0}
/** A cock tested on the Z by his daughters, and a bird tested for a dominant allele by a mate free of it, count alike: half of a carrier's chicks have it to show. */
export const RECESSIVE_MATE: TestMate = {carrier: 0, recessive: 1}
export const CARRIER_MATE: TestMate = {carrier: 1, recessive: 0}
/** A cock's own daughter from a hen without the allele: if he carries it, she does with ½. */
export const OWN_DAUGHTER: TestMate = {carrier: 1 / 2, recessive: 0}

/**
 * Test mating: how likely is it that a carrier gives nothing but chicks read as clean, and so slips through?
 *
 *     Π_j [ r_j·a^n_j + c_j·b^n_j + (1 − r_j − c_j)·(1 − f)^n_j ]        a = ½(1 − f) + ½e        b = ¾(1 − f) + ¼e
 *
 * over mates j with n_j chicks, each with chance r_j a homozygous recessive and c_j a carrier. A mate's genotype is one for all its
 * chicks: four chicks of one daughter tell less than one chick of each of four. Without misreading this is (½)^n for a recessive mate,
 * (¾)^n for a known carrier, Π[½ + ½(¾)^k_j] for own daughters, which is (7/8)^n only at one chick a daughter.
 *
 * @param families the mates with their clean chicks; `shown` chicks count as not clean and so must be none
 * @param misreading how often a look is read wrongly
 * @returns a chance, 0 to 1; 1 when there is no chick
 * @throws RangeError when chances or counts are out of range, a family has recessives, or readings are worth nothing (e + f ≥ 1)
 * @see Johansson & Rendel 1968, Genetics and Animal Breeding (test matings; from memory, no page)
 * @example missChance([{...CARRIER_MATE, clean: 16}])  // 0.010023: not yet one in a hundred, 17 chicks are
 */
export function missChance(families: readonly TestFamily[], misreading: Misreading = READ_RIGHT): number {
  for (const {shown} of families) if (shown) throw new RangeError(`a carrier with ${shown} recessive chicks is not missed`)
  return Math.exp(sumOf(families, family => logOfCarrier(family, misreading)))
}

/**
 * After the test: how likely is the bird a carrier still?
 *
 *     c·L₁ / (c·L₁ + (1 − c)·L₀)        all clean, one kind of mate, read rightly: c·q^n / (c·q^n + 1 − c)
 *
 * L₁ is the chance of the readings from a carrier, L₀ = (1 − f)^clean · f^shown from a bird without the allele, whose chicks are all clean.
 *
 * @param prior c, the chance before the test, from all that is known of the bird; 0 to 1
 * @param families the mates with their chicks
 * @param misreading how often a look is read wrongly
 * @returns a chance, 0 to 1; null when neither kind of bird could have given these readings
 * @throws RangeError as `missChance`, but recessive chicks are welcome
 * @see Bayes’ rule; Murphy & Chase 1975, Principles of Genetic Counseling (from memory, no page)
 * @example carrierChance(2 / 3, [{...RECESSIVE_MATE, clean: 5}])  // 1/17 = 0.0588
 */
export function carrierChance(prior: number, families: readonly TestFamily[], misreading: Misreading = READ_RIGHT): number | null {
  if (!(prior >= 0 && prior <= 1)) throw new RangeError(`a chance lies between 0 and 1, not at ${prior}`)
  const carrier = Math.log(prior) + sumOf(families, family => logOfCarrier(family, misreading))
  const free = Math.log1p(-prior) + sumOf(families, ({clean, shown = 0}) => logOfReadings(0, clean, shown, misreading))
  if (carrier === -Infinity) return free === -Infinity ? null : 0
  return 1 / (1 + Math.exp(free - carrier))
}

function sumOf(families: readonly TestFamily[], part: (family: TestFamily) => number): number {
  return families.reduce((sum, family) => sum + part(family), 0)
}

/** Logarithm of the chance of a family's readings when the tested bird is a carrier, over what its mate may be. */
function logOfCarrier({carrier, recessive, clean, shown = 0}: TestFamily, misreading: Misreading): number {
  checkReading(misreading)
  if (!(carrier >= 0 && recessive >= 0 && carrier + recessive <= 1 + 1e-9)) {
    throw new RangeError(`chances of a mate lie between 0 and 1 and come to no more than 1, not ${carrier} and ${recessive}`)
  }
  for (const count of [clean, shown]) if (!Number.isInteger(count) || count < 0) throw new RangeError(`chicks are a count, not ${count}`)
  const ways = [[recessive, 1 / 2], [carrier, 1 / 4], [Math.max(0, 1 - carrier - recessive), 0]] as const
  const logs = ways.map(([weight, share]) => Math.log(weight) + logOfReadings(share, clean, shown, misreading))
  const greatest = Math.max(...logs)
  return greatest === -Infinity ? -Infinity : greatest + Math.log(logs.reduce((sum, log) => sum + Math.exp(log - greatest), 0))
}

/** Logarithm of the chance of so many clean and recessive readings when each chick is recessive with a stated share. */
function logOfReadings(share: number, clean: number, shown: number, {missed, mistaken}: Misreading): number {
  const readClean = (1 - share) * (1 - mistaken) + share * missed
  return (clean === 0 ? 0 : clean * Math.log(readClean)) + (shown === 0 ? 0 : shown * Math.log(1 - readClean))
}

function checkReading({missed, mistaken}: Misreading): void {
  if (!(missed >= 0 && mistaken >= 0 && missed + mistaken < 1)) {
    throw new RangeError(`a reading is wrong less often than not: ${missed} and ${mistaken} are 0 or more and come to less than 1`)
  }
}
