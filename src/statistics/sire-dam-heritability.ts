import type {Interval} from './interval.ts'
import {meanAndDeviation} from './mean-and-deviation.ts'
import {mixtureLimits} from './mean-square-mixture.ts'

/** One estimate of heritability. */
export interface HeritabilityEstimate {
  /** as it comes out: below 0 or above 1 when the families are few, which is a sign of too few and no error */
  readonly value: number
  /** standard error, 0 or more */
  readonly error: number
  /** between 0 and 1, where alone heritability can lie */
  readonly interval: Interval
}

/** Heritability from families of half and full sibs. */
export type SireDamHeritability =
  | {
      readonly kind: 'estimated'
      readonly sires: number
      readonly dams: number
      readonly chicks: number
      /** mean squares with their degrees of freedom, in the squared unit of the values */
      readonly meanSquares: Readonly<Record<'sires' | 'dams' | 'chicks', {readonly square: number; readonly freedom: number}>>
      /** variance between sires, between dams of one sire, between chicks of one dam; the first two can come out below 0 */
      readonly components: Readonly<Record<'sires' | 'dams' | 'chicks', number>>
      /** 4σ²_S/σ²_P: what the sires hand on, the one least clouded */
      readonly fromSires: HeritabilityEstimate
      /** 4σ²_D/σ²_P: with dominance, egg and hatch of the dam in it */
      readonly fromDams: HeritabilityEstimate
      /** 2(σ²_S + σ²_D)/σ²_P */
      readonly fromBoth: HeritabilityEstimate
    }
  /** `few`: fewer than two sires, no sire of two dams, or no dam of two chicks · `no-spread`: the chicks are all alike, or so much less alike within than between that no variance is left */
  | {readonly kind: 'few' | 'no-spread'; readonly sires: number; readonly dams: number; readonly chicks: number}

/**
 * How much of a trait's spread is handed on, told from sires of several dams of several chicks?
 *
 *     σ²_W = MS_W        σ²_D = (MS_D − MS_W)/k₁        σ²_S = (MS_S − MS_W − k₂σ²_D)/k₃        σ²_P = σ²_S + σ²_D + σ²_W
 *     k₁ = (n − Σ_s Σ_d n_sd²/n_s)/(d − s)        k₂ = (Σ_s Σ_d n_sd²/n_s − Σ n_sd²/n)/(s − 1)        k₃ = (n − Σ n_s²/n)/(s − 1)
 *
 * Standard errors by the delta method from Var(MS) = 2·MS²/(ν + 2). Limits: the h² at which the limits of 4σ²_S − h²·σ²_P, a mixture of the three mean
 * squares, just hold 0 (`mixtureLimits`). Give deviations from hatch and sex, or birds of one hatch and sex.
 *
 * @param sires the chicks' values by dam by sire, all finite; dams without a chick and sires without a dam are passed over
 * @param level above 0 and below 1; default 0.95
 * @returns components and three estimates, or why there are none
 * @throws RangeError when a value is not finite or the level is out of its range
 * @see Becker 1984, Manual of Quantitative Genetics, 55–65; k₁ to k₃ after Searle 1971, Linear Models (both from memory); Falconer & Mackay 1996, ch. 10
 * @example sireDamHeritability([[[9, 11], [10, 12]], [[14, 15], [13, 17]], [[8, 9], [11, 10]]]).kind  // 'estimated'
 */
export function sireDamHeritability(sires: readonly (readonly (readonly number[])[])[], level = 0.95): SireDamHeritability {
  if (!(level > 0 && level < 1)) throw new RangeError(`a level lies between 0 and 1, not at ${level}`)
  const families = sires.map(dams => dams.filter(values => values.length > 0)).filter(dams => dams.length > 0)
  const all = families.flat(2), n = all.length, s = families.length, d = families.flat().length
  for (const value of all) if (!Number.isFinite(value)) throw new RangeError(`a measurement is a finite number, not ${value}`)
  const shape = {sires: s, dams: d, chicks: n}
  if (s < 2 || d <= s || n <= d) return {kind: 'few', ...shape}
  const {between, amongDams, within, ofSires, ofDams, ofAll} = sums(families)
  const k1 = (n - ofSires) / (d - s), k2 = (ofSires - ofDams) / (s - 1), k3 = (n - ofAll) / (s - 1)
  const meanSquares = {
    sires: {square: between / (s - 1), freedom: s - 1}, dams: {square: amongDams / (d - s), freedom: d - s}, chicks: {square: within / (n - d), freedom: n - d},
  }
  // each component is a mixture of the three mean squares, in the order sires, dams, chicks
  const mixtures = {sires: [1 / k3, -k2 / (k1 * k3), (k2 / k1 - 1) / k3], dams: [0, 1 / k1, -1 / k1], chicks: [0, 0, 1]}
  const squares = [meanSquares.sires, meanSquares.dams, meanSquares.chicks]
  const mixed = (mixture: readonly number[]) => mixture.reduce((sum, part, place) => sum + part * (squares[place]?.square ?? 0), 0)
  const whole = squares.map((_, place) => (mixtures.sires[place] ?? 0) + (mixtures.dams[place] ?? 0) + (mixtures.chicks[place] ?? 0))
  const phenotypic = mixed(whole), largest = all.reduce((most, value) => Math.max(most, Math.abs(value)), 0)
  if (!(phenotypic > (1e-12 * largest) ** 2)) return {kind: 'no-spread', ...shape}
  const estimate = (part: readonly number[]): HeritabilityEstimate => {
    const value = mixed(part) / phenotypic
    const variance = squares.reduce((sum, {square, freedom}, place) => {
      const slope = ((part[place] ?? 0) - value * (whole[place] ?? 0)) / phenotypic
      return sum + (slope ** 2 * 2 * square ** 2) / (freedom + 2)
    }, 0)
    const error = Math.sqrt(variance)
    const limitsAt = (at: number) => mixtureLimits(squares, part.map((own, place) => own - at * (whole[place] ?? 0)), level)
    return {value, error, interval: {low: lastShare(at => limitsAt(at).low > 0), high: lastShare(at => limitsAt(at).high > 0)}}
  }
  return {
    kind: 'estimated',
    ...shape,
    meanSquares,
    components: {sires: mixed(mixtures.sires), dams: mixed(mixtures.dams), chicks: mixed(mixtures.chicks)},
    fromSires: estimate(mixtures.sires.map(part => 4 * part)),
    fromDams: estimate(mixtures.dams.map(part => 4 * part)),
    fromBoth: estimate(mixtures.sires.map((part, place) => 2 * (part + (mixtures.dams[place] ?? 0)))),
  }
}

/** The last share from 0 to 1 up to which something holds; 0 when it never does, 1 when it does throughout. */
function lastShare(holds: (share: number) => boolean): number {
  if (!holds(0)) return 0
  if (holds(1)) return 1
  let low = 0, high = 1
  for (let halving = 0; halving < 45; halving++) {
    const middle = (low + high) / 2
    if (holds(middle)) low = middle
    else high = middle
  }
  return low
}

/** Sums of squares of the three layers, and the sums of squared numbers that stand in k₁ to k₃. */
function sums(families: readonly (readonly (readonly number[])[])[]) {
  const {mean} = meanAndDeviation(families.flat(2)), n = families.flat(2).length
  let between = 0, amongDams = 0, within = 0, ofSires = 0, ofDams = 0, ofAll = 0
  for (const dams of families) {
    const sire = meanAndDeviation(dams.flat())
    between += sire.n * (sire.mean - mean) ** 2
    ofAll += sire.n ** 2 / n
    for (const values of dams) {
      const own = meanAndDeviation(values)
      amongDams += own.n * (own.mean - sire.mean) ** 2
      within += (own.n - 1) * (own.sd ?? 0) ** 2
      ofSires += own.n ** 2 / sire.n
      ofDams += own.n ** 2 / n
    }
  }
  return {between, amongDams, within, ofSires, ofDams, ofAll}
}
