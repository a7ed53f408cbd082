import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {genotypesAt, matches, readGenotype, writeGenotype, writePattern} from '../../src/heredity/genotype-notation.ts'
import type {Alleles, Locus} from '../../src/heredity/locus.ts'

const P: Locus = {symbol: 'P', on: 'autosome', alleles: ['P', 'p+']}
const S: Locus = {symbol: 'S', on: 'Z', alleles: ['S', 's+', 's^al']}

const patternOf = (text: string, locus: Locus) => {
  const read = readGenotype(text, locus)
  if (read.kind !== 'read') throw new Error(`${text}: ${read.kind}`)
  return read.pattern
}
const fits = (text: string, genotype: Alleles, locus = S) => matches(patternOf(text, locus), genotype)

describe('readGenotype', () => {
  it.each([
    ['P/p+', P, [0, 1]], ['p+/P', P, [0, 1]], [' p+ / P ', P, [0, 1]], ['P/P', P, [0, 0]], ['P/_', P, [0, 'any']], ['_/p+', P, [1, 'any']], ['_/_', P, ['any', 'any']],
    ['S/-', S, [0, 'none']], ['-/s+', S, [1, 'none']], ['_/-', S, ['any', 'none']], ['s^al/S', S, [0, 2]],
  ] as const)('%s', (text, locus, pattern) => {
    expect(patternOf(text, locus)).toEqual(pattern)
  })

  it.each(['', 'P', 'P/', '/P', 'P/p+/P', 'Pp', '-/-'])('“%s” has not the form', text => {
    expect(readGenotype(text, P)).toEqual({kind: 'form'})
  })

  it('tells capitals apart and names the allele that is none', () => {
    expect(readGenotype('P/p', P)).toEqual({kind: 'no-such-allele', allele: 'p'})
    expect(readGenotype('P+/p+', P)).toEqual({kind: 'no-such-allele', allele: 'P+'})
  })

  it('knows no missing allele off the Z', () => {
    expect(readGenotype('P/-', P)).toEqual({kind: 'missing-on-autosome'})
  })
})

describe('matches', () => {
  it('takes _ for any allele and for a hen’s missing one, - for the missing one alone', () => {
    const hen: Alleles = [0, null], cock: Alleles = [0, 1]
    expect(['S/_', 'S/-', '_/-', '_/_', 'S/S', 'S/s+', 's+/_'].map(text => fits(text, hen))).toEqual([true, true, true, true, false, false, false])
    expect(['S/_', 's+/_', 'S/s+', '_/_', 'S/S', 'S/-', '_/-'].map(text => fits(text, cock))).toEqual([true, true, true, true, false, false, false])
  })

  it('fits no hen where two alleles are named', () => {
    expect(fits('s+/s+', [1, null])).toBe(false)
  })
})

/** Any locus with two to six alleles. */
const anyLocus: fc.Arbitrary<Locus> = fc.record({
  symbol: fc.constant('X'), on: fc.constantFrom('autosome' as const, 'Z' as const),
  alleles: fc.uniqueArray(fc.stringMatching(/^[A-Za-z^+][A-Za-z^+-]{0,3}$/), {minLength: 2, maxLength: 6}),
})
const anyAlleles = fc.tuple(anyLocus, fc.constantFrom('male' as const, 'female' as const)).chain(([locus, sex]) =>
  fc.constantFrom(...genotypesAt(locus, sex)).map(genotype => ({locus, sex, genotype})))

describe('laws', () => {
  it('what is written reads as the pattern of itself, in either order, and fits nothing else', () => {
    fc.assert(fc.property(anyAlleles, ({locus, sex, genotype}) => {
      const text = writeGenotype(genotype, locus)
      const pattern = patternOf(text, locus)
      expect(writePattern(pattern, locus)).toBe(text)
      expect(patternOf(text.split('/').reverse().join('/'), locus)).toEqual(pattern)
      for (const other of genotypesAt(locus, sex)) expect(matches(pattern, other)).toBe(other[0] === genotype[0] && other[1] === genotype[1])
    }))
  })

  it('an allele put for _ never makes a pattern fit more', () => {
    fc.assert(fc.property(anyAlleles, ({locus, genotype}) => {
      for (const allele of locus.alleles) {
        if (matches(patternOf(`${allele}/_`, locus), genotype)) expect(matches(patternOf('_/_', locus), genotype)).toBe(true)
        for (const other of locus.alleles) if (matches(patternOf(`${allele}/${other}`, locus), genotype)) expect(matches(patternOf(`${other}/_`, locus), genotype)).toBe(true)
      }
    }))
  })

  it('there are n(n + 1)/2 genotypes, and n in a hen’s single Z', () => {
    fc.assert(fc.property(anyLocus, locus => {
      const n = locus.alleles.length
      expect(genotypesAt(locus, 'male')).toHaveLength(n * (n + 1) / 2)
      expect(genotypesAt(locus, 'female')).toHaveLength(locus.on === 'Z' ? n : n * (n + 1) / 2)
    }))
  })

  it('reading never throws', () => {
    fc.assert(fc.property(anyLocus, fc.string(), (locus, text) => { readGenotype(text, locus) }))
  })
})
