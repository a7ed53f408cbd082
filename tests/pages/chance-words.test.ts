import {describe, expect, it} from 'vitest'
import {chance, genotypeChances, testChance} from '../../src/pages/chance-words.ts'

describe('chance(share)', () => {
  it.each([[0, '0%'], [1e-9, 'under 0.1%'], [0.0005, '0.1%'], [0.125, '12.5%'], [0.9985, '99.9%'], [0.9995, 'over 99.9%'], [1, '100%']])('%d is %s', (share, words) => expect(chance(share)).toBe(words))
})

describe('genotypeChances(genotypes)', () => {
  it('leaves out what is less than one in two thousand', () => {
    expect(genotypeChances([{is: [0, 1], probability: 0.6, written: 'P/p+'}, {is: [0, 0], probability: 0.3997, written: 'P/P'}, {is: [1, 1], probability: 0.0003, written: 'p+/p+'}])).toBe('P/p+ 60.0%, P/P 40.0%')
  })
})

describe('testChance(p)', () => it('is never nought', () => expect([0, 0.0009, 0.0123, 0.123, 1].map(testChance)).toEqual(['under 0.001', 'under 0.001', '0.012', '0.12', '1.00'])))
