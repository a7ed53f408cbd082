import {describe, expect, it} from 'vitest'
import {conceptions} from '../../src/heredity/conceptions.ts'
import type {Locus} from '../../src/heredity/locus.ts'

const P: Locus = {symbol: 'P', on: 'autosome', alleles: ['P', 'p+']}, S: Locus = {symbol: 'S', on: 'Z', alleles: ['S', 's+']}

describe('conceptions(mating, sex)', () => {
  it('gives one to two to one of two carriers', () => {
    expect(conceptions({loci: [P], linkages: [], sire: [[0, 1]], dam: [[0, 1]]}, 'male')).toEqual([
      {is: [[0, 0]], probability: 0.25}, {is: [[0, 1]], probability: 0.5}, {is: [[1, 1]], probability: 0.25},
    ])
  })

  it('gives daughters the Z of their sire and sons one of each parent', () => {
    const of = (sex: 'male' | 'female') => conceptions({loci: [S], linkages: [], sire: [[0, 0]], dam: [[1, null]]}, sex)
    expect(of('male')).toEqual([{is: [[0, 1]], probability: 1}])
    expect(of('female')).toEqual([{is: [[0, null]], probability: 1}])
  })
})
