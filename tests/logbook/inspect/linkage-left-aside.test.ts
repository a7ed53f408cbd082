import {describe, expect, it} from 'vitest'
import {strayLinkages} from '../../../src/heredity/linkage-line.ts'
import type {Locus} from '../../../src/heredity/locus.ts'
import {readRecords} from '../../../src/records/read.ts'
import {SHIPPED_LOCI} from '../../../src/records/shipped-loci.ts'
import {around, inspectFiles} from '../around.ts'

const comb = (linked: string, more = '') =>
  `---\nname: Comb\nstates: [pea, single]\nloci:\n  P: {on: autosome, alleles: [P, p+], linked: {${linked}}}\n  A: {on: autosome, alleles: [A, a+]}\n  E: {on: autosome, alleles: [E, e+]}\n  D: {on: autosome, alleles: [D, d+]${more}}\nshows:\n  - {P: P/_, is: pea}\n  - {P: p+/p+, is: single}\n---\n`
const found = (text: string) => inspectFiles(around({'traits/comb.md': text})).problems

describe('a linkage that the line of loci has no room for', () => {
  it('is named with the share that counts in its place, and what to do', () => {
    const [only, ...more] = found(comb('A: 10%, E: 10%, D: 10%'))
    expect(more).toEqual([])
    expect([only?.code, only?.severity, only?.place.start.line, only?.reason]).toEqual(['linkage-left-aside', 'warning', 5, 'P and D are to cross over in 10%, but with E between them it is 50%, which is what counts'])
    expect(only?.remedy).toBe('mend the share that is wrong; if P, E, D is not their order, state how near E lies to P and to D')
  })
  it('is none once the order is stated, or where the shares add up', () => {
    expect(found(comb('A: 10%, E: 10%, D: 18%', ', linked: {E: 10%}'))).toEqual([])
  })
  it('is nowhere in the reference', () => {
    const records = readRecords(SHIPPED_LOCI).records.locus
    const loci = records.map(({id, data}): Locus => ({symbol: id, on: data.on, alleles: data.alleles})), place = new Map(loci.map(({symbol}, index) => [symbol, index]))
    const linkages = records.flatMap(({id, data}) => (data.linked ?? []).flatMap(({key, value}) => {
      const [a, b] = [place.get(id), place.get(key)]
      return a === undefined || b === undefined ? [] : [{loci: [a, b] as const, recombination: value.recombination}]
    }))
    expect(linkages.length).toBeGreaterThan(10)
    expect(strayLinkages(loci, linkages).map(({linkage: {loci: pair}, implied}) => [pair.map(number => loci[number]?.symbol), implied])).toEqual([])
  })
})
