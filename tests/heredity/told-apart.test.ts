import {describe, expect, it} from 'vitest'
import {genotypesAt, readGenotype, type GenotypePattern} from '../../src/heredity/genotype-notation.ts'
import type {Locus} from '../../src/heredity/locus.ts'
import {lookOf, ruleFits, type LookRules} from '../../src/heredity/look-rules.ts'
import {toldApart} from '../../src/heredity/told-apart.ts'

const E: Locus = {symbol: 'E', on: 'autosome', alleles: ['E', 'E^R', 'e^Wh', 'e+', 'e^b', 'e^s', 'e^bc', 'e^y']}
const S: Locus = {symbol: 'S', on: 'Z', alleles: ['S', 's+']}

function pattern(text: string, locus: Locus): GenotypePattern {
  const read = readGenotype(text, locus)
  if (read.kind !== 'read') throw new Error(text)
  return read.pattern
}

const rules: LookRules = {
  loci: [0, 1], states: ['black', 'silver', 'gold'], seenIn: null,
  rules: [
    {patterns: [pattern('E/_', E), null], is: 0, sex: null, penetrance: 1},
    {patterns: [pattern('e+/e+', E), pattern('S/_', S)], is: 1, sex: null, penetrance: 1},
    {patterns: [null, pattern('s+/_', S)], is: 2, sex: null, penetrance: 0.5},
  ],
}

describe('toldApart', () => {
  it('gives one genotype of each sort, and no more', () => {
    // E/_, e+/e+ and the rest; a hen has S/- or s+/-, a cock is told apart by whether S and s+ are there
    expect(toldApart(rules, [E, S], 'female')).toHaveLength(3 * 2)
    expect(toldApart(rules, [E, S], 'male')).toHaveLength(3 * 3)
  })

  it('leaves no genotype out: each fits the same rules as one of those given, and looks the same', () => {
    for (const sex of ['male', 'female'] as const) {
      const sorts = toldApart(rules, [E, S], sex) ?? []
      const fitting = (genotype: (typeof sorts)[number]) => rules.rules.map(rule => ruleFits(rule, rules.loci, genotype, sex)).join()
      const looks = new Map(sorts.map(genotype => [fitting(genotype), lookOf(rules, genotype, sex)]))
      for (const one of genotypesAt(E, sex)) for (const other of genotypesAt(S, sex)) expect(looks.get(fitting([one, other]))).toEqual(lookOf(rules, [one, other], sex))
    }
  })

  it('lets a locus that no rule names stand with its first genotype', () => {
    expect(toldApart({loci: [1], rules: [{patterns: [pattern('S/_', S)], is: 0, sex: null, penetrance: 1}]}, [E, S], 'female')).toEqual([[[0, 0], [0, null]], [[0, 0], [1, null]]])
  })

  it('goes through every genotype of the locus that is asked about', () => {
    const sorts = toldApart(rules, [E, S], 'female', 0) ?? []
    expect(sorts).toHaveLength(36 * 2)
    expect(new Set(sorts.map(([here]) => here?.join()))).toEqual(new Set(genotypesAt(E, 'female').map(here => here.join())))
  })

  it('gives up rather than go through too many', () => {
    const loci = Array.from({length: 12}, () => E)
    const each = {loci: loci.map((_, place) => place), rules: ['E/E', 'E/_'].map(text => ({patterns: loci.map(locus => pattern(text, locus)), is: 0, sex: null, penetrance: 1}))}
    expect(toldApart(each, loci, 'male')).toBeNull()
  })
})
