/** Pooled spread, and the analysis of variance itself, against certified analyses of variance. */
import {describe, expect, it} from 'vitest'
import {analysisOfVariance} from '../../src/statistics/analysis-of-variance.ts'
import {pooledVariation} from '../../src/statistics/pooled-variation.ts'
import {expectClose} from '../expect-close.ts'

// NIST StRD, analysis of variance, SiRstv: silicon resistivity, five instruments of five readings
const RESISTIVITY = [
  [196.3052, 196.1240, 196.1890, 196.2569, 196.3403], [196.3042, 196.3825, 196.1669, 196.3257, 196.0422], [196.1303, 196.2005, 196.2889, 196.0343, 196.1811],
  [196.2795, 196.1748, 196.1494, 196.1485, 195.9885], [196.2119, 196.1051, 196.1850, 196.0052, 196.2090],
]

describe('pooledVariation', () => {
  it('gives the certified residual standard deviation and within-group sum of squares of SiRstv', () => {
    const {sd, freedom} = pooledVariation(RESISTIVITY)
    expect(freedom).toBe(20)
    expectClose(sd, 0.104076068334656, 1e-9 * 0.104076068334656)
    expectClose(sd ** 2 * freedom, 0.21663656, 1e-9)
  })
})

// NIST StRD, AtmWtAg: Powell, Murphy & Gramlich 1982, NBS J. Res. 87:9–19, atomic weight of silver by two instruments; seven leading digits alike
const SILVER = [
  [8681568, 8681465, 8681572, 8681785, 8681446, 8681903, 8681526, 8681494, 8681616, 8681587, 8681519, 8681486, 8681419, 8681569, 8681508, 8681672, 8681385, 8681518, 8681662, 8681424, 8681360, 8681333, 8681610, 8681477],
  [8681079, 8681344, 8681513, 8681197, 8681604, 8681385, 8681642, 8681365, 8681151, 8681082, 8681517, 8681448, 8681198, 8681482, 8681334, 8681609, 8681101, 8681512, 8681469, 8681360, 8681254, 8681261, 8681450, 8681368],
].map(digits => digits.map(each => Number(`107.${each}`)))

/** NIST StRD, SmLs01 to SmLs09 (Simon & Lesage 1989): nine treatments of 21, `leading` and 0.2, 0.1 or 0.3 of the treatment and the same of the reading, and 1. */
const treatments = (leading: number): number[][] => {
  const tenths = (place: number): number => (place === 0 ? 2 : place % 2 === 1 ? 1 : 3)
  return Array.from({length: 9}, (_, treatment) => Array.from({length: 21}, (_unused, reading) => Number(`${leading}.${tenths(treatment) + tenths(reading)}`)))
}

describe('analysisOfVariance against NIST StRD', () => {
  const compared = (groups: readonly (readonly number[])[]) => {
    const got = analysisOfVariance(groups)
    return got.kind === 'compared' ? got : expect.fail(got.kind)
  }

  it('AtmWtAg', () => {
    const {between, within, f, rSquared, sd} = compared(SILVER)
    expect([between.freedom, within.freedom]).toEqual([1, 46])
    // the values themselves are held to one part in 10¹⁶ of 108, which leaves eight digits of squares of 10⁻⁵
    for (const [got, certified] of [[between.squares, 3.638341875e-9], [within.squares, 1.04951729166667e-8], [f, 15.9467335677930], [rSquared, 0.257426544538321], [sd, 1.51048314446410e-5]] as const) expectClose(got, certified, 1e-7 * certified)
  })

  // 1 and 7 leading digits alike; with 13 (SmLs07) what is left is rounding, and the function says that nothing differs
  it.each([['SmLs01', 1, 1e-12], ['SmLs04', 1_000_000, 1e-8]] as const)('%s', (_, leading, part) => {
    const {between, within, f, rSquared, sd} = compared(treatments(leading))
    expect([between.freedom, within.freedom]).toEqual([8, 180])
    for (const [got, certified] of [[between.squares, 1.68], [within.squares, 1.8], [f, 21], [rSquared, 0.482758620689655], [sd, 0.1]] as const) expectClose(got, certified, part * certified)
  })
})
