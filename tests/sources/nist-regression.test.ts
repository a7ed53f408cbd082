/** NIST Statistical Reference Datasets, linear least squares: data and certified values as distributed by NIST. Norris and Longley stand beside the functions they test. */
import {describe, expect, it} from 'vitest'
import {leastSquares} from '../../src/statistics/least-squares.ts'
import {expectClose} from '../expect-close.ts'

const numbers = (text: string): number[] => text.split(/\s+/).map(Number)

function fitted(rows: readonly (readonly number[])[], values: readonly number[]) {
  const got = leastSquares(rows, values)
  return got.kind === 'fitted' ? got : expect.fail(got.kind)
}

describe('leastSquares against NIST StRD', () => {
  it('Pontius: calibration of a load cell, a parabola over loads of millions', () => {
    const y = numbers(`0.11019 0.21956 0.32949 0.43899 0.54803 0.65694 0.76562 0.87487 0.98292 1.09146 1.20001 1.30822 1.41599 1.52399 1.63194 1.73947 1.84646 1.95392 2.06128 2.16844
0.11052 0.22018 0.32939 0.43886 0.54798 0.65739 0.76596 0.87474 0.98300 1.09150 1.20004 1.30818 1.41613 1.52408 1.63159 1.73965 1.84696 1.95445 2.06177 2.16829`)
    const x = y.map((_, place) => 150_000 * (1 + (place % 20))), got = fitted(x.map(each => [1, each, each ** 2]), y)
    const certified = [[0.673565789473684e-3, 0.107938612033077e-3], [0.732059160401003e-6, 0.157817399981659e-9], [-0.316081871345029e-14, 0.486652849992036e-16]] as const
    certified.forEach(([value, error], place) => {
      expectClose(got.coefficients[place]?.value ?? NaN, value, 1e-9 * Math.abs(value))
      expectClose(got.coefficients[place]?.error ?? NaN, error, 1e-9 * error)
    })
    expect(got.freedom).toBe(37)
  })

  it('NoInt1: a line through nought', () => {
    const x = Array.from({length: 11}, (_, place) => 60 + place), {coefficients: [slope]} = fitted(x.map(each => [each]), x.map(each => each + 70))
    expectClose(slope?.value ?? NaN, 2.07438016528926, 1e-12)
    expectClose(slope?.error ?? NaN, 0.165289256198347e-1, 1e-13)
  })

  // Wampler 1970, J. Am. Stat. Assoc. 65:549–565: y = Σ bⱼxʲ to the fifth power, x 0 to 20. Double precision holds seven digits or more of the coefficients
  const RAW = Array.from({length: 21}, (_, x) => [0, 1, 2, 3, 4, 5].map(power => x ** power))
  const ERRORS = [2152.3262467817, 2363.55173469681, 779.343524331583, 101.47550755035, 5.64566512170752, 0.112324854679312]
  it.each([
    ['Wampler1', [1, 1, 1, 1, 1, 1], 0, '1 6 63 364 1365 3906 9331 19608 37449 66430 111111 177156 271453 402234 579195 813616 1118481 1508598 2000719 2613660 3368421'],
    ['Wampler2', [1, 0.1, 0.01, 0.001, 0.0001, 0.00001], 0, '1.00000 1.11111 1.24992 1.42753 1.65984 1.96875 2.38336 2.94117 3.68928 4.68559 6.00000 7.71561 9.92992 12.75603 16.32384 20.78125 26.29536 33.05367 41.26528 51.16209 63.00000'],
    ['Wampler3', [1, 1, 1, 1, 1, 1], 1, '760 -2042 2111 -1684 3888 1858 11379 17560 39287 64382 113159 175108 273291 400186 581243 811568 1121004 1506550 2002767 2611612 3369180'],
    ['Wampler4', [1, 1, 1, 1, 1, 1], 100, '75901 -204794 204863 -204436 253665 -200894 214131 -185192 221249 -138370 315911 -27644 455253 197434 783995 608816 1370781 1303798 2205519 2408860 3444321'],
  ] as const)('%s', (_, certified, times, text) => {
    const got = fitted(RAW, numbers(text))
    certified.forEach((value, place) => {
      const error = times * (ERRORS[place] ?? NaN), coefficient = got.coefficients[place]
      expectClose(coefficient?.value ?? NaN, value, Math.max(1e-7 * value, 1e-8 * error))
      if (times > 0) expectClose(coefficient?.error ?? NaN, error, 1e-9 * error)
      else expect(coefficient?.error ?? NaN).toBeLessThan(1e-6)
    })
  })
})
