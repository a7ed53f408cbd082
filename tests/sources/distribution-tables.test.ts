/** The library's quantiles against printed tables: NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7. Held to half of the last printed digit. */
import chiSquareQuantile from '@stdlib/stats-base-dists-chisquare-quantile'
import {describe, it} from 'vitest'
import {normalQuantile} from '../../src/statistics/normal-quantile.ts'
import {expectClose} from '../expect-close.ts'

describe('the normal curve, 1.3.6.7.1', () => {
  it.each([[0.9, 1.281552], [0.95, 1.644854], [0.975, 1.959964], [0.99, 2.326348], [0.995, 2.575829], [0.999, 3.090232]])('has its upper point %f at %f', (below, z) => {
    expectClose(normalQuantile(2 * below - 1), z, 5e-7)
  })
})

describe('chi-square, 1.3.6.7.4', () => {
  it.each([[1, 3.8415], [2, 5.9915], [3, 7.8147], [4, 9.4877], [5, 11.0705], [6, 12.5916], [7, 14.0671], [10, 18.307], [20, 31.4104], [30, 43.773], [100, 124.3421]])(
    'of %i degrees of freedom leaves 5 % above %f', (freedom, point) => expectClose(chiSquareQuantile(0.95, freedom), point, 5e-5))
  it.each([[1, 6.6349], [2, 9.2103], [3, 11.3449], [4, 13.2767], [5, 15.0863], [10, 23.2093], [20, 37.5662], [30, 50.8922], [100, 135.8067]])(
    'of %i degrees of freedom leaves 1 % above %f', (freedom, point) => expectClose(chiSquareQuantile(0.99, freedom), point, 5e-5))
  it.each([[1, 0.0039], [2, 0.1026], [5, 1.1455], [10, 3.9403], [20, 10.8508]])(
    'of %i degrees of freedom leaves 5 % below %f', (freedom, point) => expectClose(chiSquareQuantile(0.05, freedom), point, 5e-5))
})
