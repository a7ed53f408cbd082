import {describe, expect, it} from 'vitest'
import {ownRate, rateBetween, realisedSize} from '../../src/pedigree/rate-of-inbreeding.ts'

describe('rateBetween(before, after)', () => {
  it('of what was left', () => {
    // computed exactly
    expect(rateBetween(0.25, 0.375)).toBeCloseTo(1 / 6, 12)
    expect(rateBetween(0.375, 0.25)).toBeCloseTo(-0.2, 12)
    expect(rateBetween(1, 1)).toBeNull()
  })
})

describe('ownRate(bird)', () => {
  it.each([[0.125, 3, 0.064586], [0.375, 3, 0.209431], [0.2, 6.5, 0.03976]])('F %d over %d generations', (inbreeding, generations, rate) => {
    // computed from the formula of Gutiérrez et al. 2009, J. Anim. Breed. Genet. 126:327 (from memory)
    expect(Math.abs((ownRate({inbreeding, generations}) ?? NaN) - rate)).toBeLessThan(1e-6)
  })

  it('builds up again to F over t − 1 generations', () => {
    const rate = ownRate({inbreeding: 0.3, generations: 5}) ?? NaN
    expect(1 - (1 - rate) ** 4).toBeCloseTo(0.3, 12)
  })

  it('counts from the F that founders bring along', () => {
    expect(ownRate({inbreeding: 0.19, generations: 2, founderInbreeding: 0.1})).toBeCloseTo(0.1, 12)
    expect(ownRate({inbreeding: 0.05, generations: 2, founderInbreeding: 0.1})).toBeLessThan(0)
  })

  it('cannot be told of short descent or of wholly inbred founders', () => {
    expect(ownRate({inbreeding: 0, generations: 1})).toBeNull()
    expect(ownRate({inbreeding: 1, generations: 3, founderInbreeding: 1})).toBeNull()
  })
})

describe('realisedSize(birds)', () => {
  it('half the inverse of the mean rate, with its standard error', () => {
    // worked by hand: rates 0.1, 0.2, 0.3; mean 0.2, s 0.1; Ne 2.5, SE 2 · 6.25 · 0.1 / √3
    const {rate, count, tooShort, size, standardError} = realisedSize([0.1, 0.2, 0.3].map(inbreeding => ({inbreeding, generations: 2})))
    expect([count, tooShort]).toEqual([3, 0])
    expect(rate).toBeCloseTo(0.2, 12)
    expect(size).toBeCloseTo(2.5, 12)
    expect(standardError).toBeCloseTo(1.25 / Math.sqrt(3), 12)
  })

  it('a sib line is bred as if by its two birds, or near', () => {
    // source: Wright 1921, Genetics 6:111: in the end 1 − F falls by 19.1 % a generation, Ne 2.62
    const {size} = realisedSize([{inbreeding: 1815 / 2048, generations: 11}])
    expect(Math.abs(Number(size) - 2.57)).toBeLessThan(0.02)
  })

  it('one bird has no standard error', () => {
    expect(realisedSize([{inbreeding: 0.25, generations: 2}, {inbreeding: 0, generations: 1}])).toEqual({rate: 0.25, count: 1, tooShort: 1, size: 2, standardError: null})
  })

  it('says why it cannot be told', () => {
    expect(realisedSize([])).toEqual({rate: 0, count: 0, tooShort: 0, size: 'no descent', standardError: null})
    expect(realisedSize([{inbreeding: 0, generations: 1}])).toEqual({rate: 0, count: 0, tooShort: 1, size: 'no descent', standardError: null})
    expect(realisedSize([{inbreeding: 0, generations: 3}])).toEqual({rate: 0, count: 1, tooShort: 0, size: 'no rise', standardError: null})
  })
})
