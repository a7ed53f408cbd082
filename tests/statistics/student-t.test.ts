import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {normalQuantile} from '../../src/statistics/normal-quantile.ts'
import {studentQuantile, studentTail} from '../../src/statistics/student-t.ts'
import {expectClose} from '../expect-close.ts'

describe('studentTail, studentQuantile', () => {
  // NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.2, critical values of Student's t, upper .025 and .005
  it.each([
    [0.95, 1, 12.7062], [0.95, 2, 4.3027], [0.95, 3, 3.1824], [0.95, 4, 2.7764], [0.95, 5, 2.5706], [0.95, 10, 2.2281], [0.95, 20, 2.086], [0.95, 30, 2.0423], [0.95, 60, 2.0003],
    [0.95, 100, 1.984], [0.99, 5, 4.0321], [0.99, 10, 3.1693], [0.99, 30, 2.75],
  ])('%f of %i', (level, freedom, t) => {
    expectClose(studentQuantile(level, freedom), t, 0.00005)
    expectClose(studentTail(t, freedom), 1 - level, 1e-5)
  })

  it('is a closed form with one and with two degrees', () => {
    fc.assert(fc.property(fc.double({min: -40, max: 40, noNaN: true}), t => {
      expectClose(studentTail(t, 1), 1 - (2 * Math.atan(Math.abs(t))) / Math.PI, 1e-12, {t})
      expectClose(studentTail(t, 2), 1 - Math.abs(t) / Math.sqrt(2 + t ** 2), 1e-12, {t})
    }))
  })

  it('undo each other, and come to the normal curve with many degrees', () => {
    fc.assert(fc.property(fc.double({min: 0.01, max: 0.999, noNaN: true}), fc.double({min: 0.7, max: 300, noNaN: true}), (level, freedom) => {
      expectClose(studentTail(studentQuantile(level, freedom), freedom), 1 - level, 1e-9, {level, freedom})
      expect(studentQuantile(level, freedom)).toBeGreaterThan(normalQuantile(level))
    }), {numRuns: 60})
    expectClose(studentQuantile(0.95, 1e6), normalQuantile(0.95), 1e-5)
  })

  it.each([[0, 5], [1, 5], [NaN, 5], [0.95, 0]])('refuses the level %f of %f', (level, freedom) => expect(() => studentQuantile(level, freedom)).toThrow(RangeError))
  it.each([[NaN, 5], [Infinity, 5], [1, 0], [1, NaN]])('refuses t = %f of %f', (t, freedom) => expect(() => studentTail(t, freedom)).toThrow(RangeError))
})
