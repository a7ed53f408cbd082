/** Wilson intervals against printed ones. Newcombe 1998, Stat. Med. 17:857–872, Table I, method 3. Printed to four decimals, hence half of the fourth. */
import {describe, it} from 'vitest'
import {normalQuantile} from '../../src/statistics/normal-quantile.ts'
import {wilsonInterval} from '../../src/statistics/wilson-interval.ts'
import {expectClose} from '../expect-close.ts'

describe('wilsonInterval against Newcombe 1998, Table I', () => {
  it.each([[81, 263, 0.2553, 0.3662], [15, 148, 0.0624, 0.1605], [0, 20, 0, 0.1611], [1, 29, 0.0061, 0.1718]])('gives the printed limits for %i of %i', (k, n, low, high) => {
    const got = wilsonInterval(k, n)
    expectClose(got.low, low, 0.00005, {k, n})
    expectClose(got.high, high, 0.00005, {k, n})
  })
})

describe('wilsonInterval to six decimals', () => {
  // 3 of 50 at 99 %: quoted from R. The first two rows are those of the table above and 3 of 50 at 95 % recomputed by independent code;
  // the last three are computed exactly, with no published figure behind them.
  it.each([
    [81, 263, 0.95, 0.255289, 0.36621], [0, 20, 0.95, 0, 0.161125], [3, 50, 0.95, 0.020615, 0.162171], [3, 50, 0.99, 0.015295, 0.207799],
    [5, 5, 0.95, 0.565518, 1], [0, 1, 0.95, 0, 0.793451], [28, 40, 0.95, 0.5457, 0.819252],
  ])('gives %i of %i at %f', (k, n, level, low, high) => {
    const got = wilsonInterval(k, n, normalQuantile(level))
    expectClose(got.low, low, 1e-6, {k, n, level})
    expectClose(got.high, high, 1e-6, {k, n, level})
  })

  // 48 eggs, 37 hatched: no published figure; computed by independent code
  it('gives a hatch of 37 of 48', () => {
    const {low, high} = wilsonInterval(37, 48)
    expectClose(low, 0.634607, 1e-6)
    expectClose(high, 0.866922, 1e-6)
  })
})
