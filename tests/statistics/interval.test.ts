import {describe, expectTypeOf, it} from 'vitest'
import type {Interval as Travelling} from '../../src/findings/estimate.ts'
import type {Interval} from '../../src/statistics/interval.ts'
import {wilsonInterval} from '../../src/statistics/wilson-interval.ts'

describe('Interval', () => {
  it('is one type from the formula to the page', () => {
    expectTypeOf(wilsonInterval(1, 2)).toEqualTypeOf<Interval>()
    expectTypeOf<Travelling>().toEqualTypeOf<Interval>()
  })
})
