import {describe, expect, it} from 'vitest'
import type {TestMate} from '../../src/findings/test-mates.ts'
import {amongWords, mateWords, oneOf, ordinaryWords} from '../../src/pages/test-mate-words.ts'
import {heredityBook} from '../findings/heredity-book.ts'

const {book} = heredityBook([]), locus = book.loci.get('P')?.locus ?? expect.fail('P')
const MATE: TestMate = {kind: 'mate', others: [], alleles: [1], mates: [[[1, 1]]], atLocus: [[1, 1]], looks: ['single'], lookIsEnough: true, any: false, among: 'all'}

describe('mateWords(mate, locus, sex, book)', () => {
  it('names the look and the genotype', () => {
    expect(mateWords(MATE, locus, 'male', book)).toBe('a hen that shows single (p+/p+)')
    expect(mateWords({...MATE, looks: ['pea', 'single']}, locus, 'female', book)).toBe('a cock that shows pea or single (p+/p+)')
    expect(mateWords(MATE, locus, 'unknown', book)).toBe('a bird that shows single (p+/p+)')
  })
  it('says where the look is not enough, or not seen', () => {
    expect(mateWords({...MATE, lookIsEnough: false}, locus, 'male', book)).toBe('a hen that is p+/p+, which single alone does not prove')
    expect(mateWords({...MATE, lookIsEnough: false, looks: []}, locus, 'female', book)).toBe('a cock that is p+/p+')
  })
  it('is any where all tell alike', () => expect(mateWords({...MATE, any: true}, locus, 'male', book)).toBe('any hen'))
  it('says of the others what hides nothing', () => {
    expect(mateWords({...MATE, any: true, others: [{locus: {symbol: 'C', on: 'autosome', alleles: ['C+', 'c']}, alleles: [[0, 0]]}]}, locus, 'male', book)).toBe('any hen that is C+/C+')
  })
})

describe('amongWords, oneOf and ordinaryWords', () => {
  it('name the chicks looked at', () => {
    expect([amongWords(MATE), amongWords({among: 'daughters'}), oneOf(MATE), oneOf({among: 'sons'})]).toEqual(['chicks', 'daughters', 'chick', 'son'])
  })
  it('say why no bird is mated', () => {
    expect(ordinaryWords('lethal')).toMatch(/two doses of such an allele kill the chick: look at the ordinary chicks it has anyway, or have its DNA tested\.$/)
    expect(ordinaryWords('welfare')).toMatch(/it is a burden to a bird: look at/)
  })
})
