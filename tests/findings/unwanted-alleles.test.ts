import {describe, expect, it} from 'vitest'
import {allelesOfBook, unwantedAlleles, unwantedInBook} from '../../src/findings/unwanted-alleles.ts'
import {bookOf} from '../logbook/around.ts'
import {GROUND, heredityBook} from './heredity-book.ts'

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

const SERIES = {'traits/ground.md': GROUND.replace('[S, s+]', '[S, s+, s^al]').replace('S: _/_, is: gold', 'S: s+/_, is: gold')}
const FELL = {'strains/fell-buff.md': '---\nname: Fell Buff\nrole: donor\ntrue-for: {ground: silver}\n---\n'}
const inBook = (alleles: string, files: Readonly<Record<string, string>> = FELL, birds: readonly string[] = ['A male - -']) => {
  const {book, findings} = heredityBook(birds, alleles, {...SERIES, ...files}), of = allelesOfBook(book, findings.heredity, findings.pedigree)
  return book.traits.filter(({id}) => id === 'ground').flatMap(trait => unwantedInBook(trait, of)).map(({locus, unwanted}) => unwanted.map(allele => locus.alleles[allele]).join())
}

describe('unwantedInBook(trait, allelesOfBook)', () => {
  it('leaves out of a long series what no strain and no bird may have', () => {
    expect(inBook('{S: {S: 50%, s+: 50%}}')).toEqual(['s+'])
    expect(inBook('{S: {S: 50%, s+: 40%, s^al: 10%}}')).toEqual(['s+,s^al'])
  })

  it('takes in what a strain without birds has', () => {
    expect(inBook('{S: {S: 50%, s+: 50%}}', {'strains/fell-buff.md': '---\nname: Fell Buff\nrole: donor\nalleles: {S: {S: 50%, s^al: 50%}}\n---\n'})).toEqual(['s+,s^al'])
  })

  it('names them all where none is there: the trait is fixed', () => expect(inBook('{S: {S: 100%}}')).toEqual(['s+,s^al']))
})
