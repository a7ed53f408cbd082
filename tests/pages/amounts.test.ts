/** Amounts as they are shown: nothing that was found is rounded away to nought. */
import {describe, expect, it} from 'vitest'
import {amount, amountInUnit, shownIn} from '../../src/pages/amounts.ts'
import {bookOf} from '../logbook/around.ts'

const [weight] = bookOf({}).traits.filter(trait => trait.id === 'weight-20')
if (!weight) throw new Error('no weight-20')
const length = {...weight, unit: 'mm', wanted: {male: null, female: null}}

describe('amount(value, shown)', () => {
  it.each([
    [2410, '2.41 kg'], [38, '0.04 kg'], [5, '0.01 kg'], [4.99, '4.99 g'], [2.41, '2.41 g'], [0, '0.00 kg'],
  ])('%s g of a trait shown in kilograms is %s', (value, words) => expect(amount(value, shownIn(weight, 'metric'))).toBe(words))

  it.each([[2410, '5.31 lb'], [2.2, '0.08 oz']])('%s g where pounds are asked for is %s', (value, words) => expect(amount(value, shownIn(weight, 'imperial'))).toBe(words))

  it('gives more places where there is no smaller unit', () => {
    expect([88, 0.3, 0.04].map(value => amount(value, shownIn(length, 'metric')))).toEqual(['88 mm', '0.3 mm', '0.04 mm'])
  })
})

describe('amountInUnit(value, shown)', () => {
  it('keeps to the unit, as differences do', () => expect(amountInUnit(0.4, shownIn(weight, 'metric'))).toBe('0.00 kg'))
})
