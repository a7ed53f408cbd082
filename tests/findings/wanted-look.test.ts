import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {limitsOf} from '../../src/findings/against-standard.ts'
import {looksRight} from '../../src/findings/wanted-look.ts'
import type {Wanted} from '../../src/logbook/book.ts'
import {trait} from '../pages/small-logbook.ts'

const marks = (male: Wanted | null, female: Wanted | null = male) => trait('t', 'T', {kind: 'measured', wanted: {male, female}})

describe('looksRight(trait, sex, value)', () => {
  it.each([
    [{kind: 'at-least', value: 7}, 7, true], [{kind: 'at-least', value: 7}, 6.9, false], [{kind: 'at-most', value: 0.3}, 0.1 + 0.2, true], [{kind: 'at-most', value: 3}, 3.1, false],
    [{kind: 'between', low: 40, high: 45}, 45, true], [{kind: 'between', low: 40, high: 45}, 39.9, false], [{kind: 'about', value: 2400, tolerance: 0.1}, 2160, true],
    [{kind: 'about', value: 2400, tolerance: 0.1}, 2159, false], [{kind: 'about', value: 2400, tolerance: null}, 2400, null],
  ] as const)('%j of %f is %s', (wanted, value, right) => expect(looksRight(marks(wanted), 'male', value)).toBe(right))

  it('is inside exactly on the limits that are printed', () => {
    fc.assert(fc.property(fc.integer({min: 1, max: 9999}), fc.integer({min: 1, max: 50}), (value, percent) => {
      const wanted: Wanted = {kind: 'about', value, tolerance: percent / 100}
      const limits = limitsOf(wanted)
      if (!limits) throw new Error('no limits')
      expect(looksRight(marks(wanted), 'female', limits.low)).toBe(true)
      expect(looksRight(marks(wanted), 'female', limits.high)).toBe(true)
      expect(looksRight(marks(wanted), 'female', limits.high + 0.01)).toBe(false)
    }))
  })

  it('judges an unsexed bird only where both sexes would be judged alike', () => {
    const both = marks({kind: 'about', value: 2400, tolerance: 0.1}, {kind: 'about', value: 2000, tolerance: 0.1})
    expect([2180, 1900, 3000].map(value => looksRight(both, 'unknown', value))).toEqual([true, null, false])
    expect(looksRight(marks({kind: 'at-least', value: 1}, null), 'unknown', 2)).toBeNull()
  })

  it('has nothing to say where nothing is wanted', () => expect(looksRight(marks(null), 'male', 5)).toBeNull())
})
