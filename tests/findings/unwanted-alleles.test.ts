import {describe, expect, it} from 'vitest'
import {unwantedAlleles} from '../../src/findings/unwanted-alleles.ts'
import {bookOf} from '../logbook/around.ts'

const unwantedOf = (...lines: string[]) => {
  const {traits} = bookOf({'traits/head.md': `---\nname: Head\n${lines.join('\n')}\n---\n`})
  const trait = traits.find(({id}) => id === 'head') ?? expect.fail('no trait')
  return unwantedAlleles(trait).map(({locus, unwanted}) => `${locus.symbol}: ${unwanted.map(allele => locus.alleles[allele]).join(', ')}`)
}
const PEA = ['states: [pea, single]', 'loci: {P: {on: autosome, alleles: [P, p+]}}', 'shows:', '  - {P: P/_, is: pea}', '  - {P: _/_, is: single}']
const WALNUT = [
  'states: [walnut, rose, pea, single]', 'loci: {R: {on: autosome, alleles: [R, r+]}, P: {on: autosome, alleles: [P, p+]}}', 'shows:',
  '  - {R: R/_, P: P/_, is: walnut}', '  - {R: R/_, is: rose}', '  - {P: P/_, is: pea}', '  - {P: _/_, is: single}',
]

describe('unwantedAlleles(trait)', () => {
  it('is the recessive where the dominant is wanted, and the dominant where the recessive is', () => {
    expect(unwantedOf('target: pea', ...PEA)).toEqual(['P: p+'])
    expect(unwantedOf('target: single', ...PEA)).toEqual(['P: P'])
  })

  it('is asked at every locus of a trait', () => {
    expect(unwantedOf('target: walnut', ...WALNUT)).toEqual(['R: r+', 'P: p+'])
    expect(unwantedOf('target: rose', ...WALNUT)).toEqual(['R: r+', 'P: P'])
  })

  it('is none where all looks are wanted, nothing is, or the look comes of a mixed pair only', () => {
    expect(unwantedOf('target: [pea, single]', ...PEA)).toEqual([])
    expect(unwantedOf(...PEA)).toEqual([])
    expect(unwantedOf('target: blue', 'states: [black, blue, splash]', 'loci: {Bl: {on: autosome, alleles: [Bl, bl+]}}', 'shows:', '  - {Bl: Bl/bl+, is: blue}', '  - {Bl: Bl/Bl, is: splash}', '  - {Bl: _/_, is: black}')).toEqual([])
  })
})
