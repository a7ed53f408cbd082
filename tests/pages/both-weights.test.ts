import {describe, expect, it} from 'vitest'
import {metricWeight, poundWeight} from '../../src/pages/both-weights.ts'

// 1 oz = 28.349523125 g exactly (international avoirdupois pound of 1959, 0.45359237 kg); the words worked by hand from it.
describe('a weight in both units', () => {
  it.each([[3200, '3.2 kg', '7 lb 1 oz'], [2700, '2.7 kg', '5 lb 15 oz'], [2080, '2.08 kg', '4 lb 9 oz'], [870, '870 g', '1 lb 15 oz'], [340, '340 g', '12 oz'], [907.18474, '907 g', '2 lb']])(
    '%d g is %s and %s', (grams, metric, pounds) => {
      expect(metricWeight(grams)).toBe(metric)
      expect(poundWeight(grams)).toBe(pounds)
    })
  it('carries sixteen ounces over to the pound', () => {
    expect(poundWeight(453.5)).toBe('1 lb')
  })
  it('keeps whole kilograms readable', () => {
    expect(metricWeight(3000)).toBe('3.0 kg')
  })
})
