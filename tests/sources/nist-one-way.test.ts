/** Pooled spread against certified analyses of variance. */
import {describe, expect, it} from 'vitest'
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
