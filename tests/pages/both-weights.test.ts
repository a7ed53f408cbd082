import {describe, expect, it} from 'vitest'
import {metricWeight, poundQuarters, poundWeight, weightRange} from '../../src/pages/both-weights.ts'

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
  // 5 lb 8 oz = 2494.76 g, 7 lb 12 oz = 3515.34 g, by the same definitions
  it.each([[2494.76, '5½ lb'], [3515.34, '7¾ lb'], [453.59, '1 lb'], [450, '1 lb'], [3200, '7 lb 1 oz'], [340, '12 oz']])('%d g in quarters of a pound, where it comes out: %s', (grams, words) => expect(poundQuarters(grams)).toBe(words))
  it.each([[2300, 2700, '2.3 to 2.7 kg', '5 lb 1 oz to 5 lb 15 oz'], [900, 1100, '900 g to 1.1 kg', '2 lb to 2 lb 7 oz'], [700, 870, '700 to 870 g', '1 lb 9 oz to 1 lb 15 oz'], [2500, null, '2.5 kg', '5 lb 8 oz']])(
    '%d g to %s g', (low, high, metric, pounds) => {
      expect(weightRange(low, high, metricWeight)).toBe(metric)
      expect(weightRange(low, high, poundWeight)).toBe(pounds)
    })
})
