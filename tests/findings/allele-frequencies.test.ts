import {describe, expect, it} from 'vitest'
import type {AlleleFrequencies} from '../../src/findings/allele-frequencies.ts'
import {wilsonInterval} from '../../src/statistics/wilson-interval.ts'
import {GROUND, heredityBook, type HeredityBook} from './heredity-book.ts'

const rows = ({findings}: HeredityBook, symbol: string) => findings.frequencies.alleles.filter(({locus}) => locus.symbol === symbol)
const row = (found: readonly AlleleFrequencies[], of: AlleleFrequencies['of'], sex: AlleleFrequencies['sex']) => found.find(each => each.of === of && each.sex === sex)
const TRUE = {
  'strains/holm-white.md': '---\nname: Holm White\nrole: recurrent\nalleles: {P: {p+: 100%}, S: {S: 50%, s+: 50%}}\n---\n', 'strains/fell-buff.md': '---\nname: Fell Buff\nrole: donor\nalleles: {P: {P: 50%, p+: 50%}, S: {S: 50%, s+: 50%}}\n---\n',
  'traits/ground.md': GROUND,
}
/** A cross of single hens' sons: of a cock of Fell Buff tested P/p+. */
const CROSS = ['M male - - tested={P:~P/p+,~S:~S/s+} strain=fell-buff', 'D female - - tested={S:~s+/-}']

function crossed(chicks: readonly string[]): HeredityBook {
  return heredityBook([...CROSS, ...chicks], '', {...TRUE, 'birds/M.md': '---\nband: M\nsex: male\nstrain: fell-buff\ntested: {P: P/p+, S: S/s+}\n---\n'})
}

describe('alleleFrequencies(book, ladder, heredity, pedigree)', () => {
  it('counts genes where every genotype is known', () => {
    // single hens have p+ only, so a pea chick is P/p+: of 4 chicks 3 pea, 3 of 8 genes
    const found = rows(crossed(['1 female M D comb=pea', '2 male M D comb=pea', '3 female M D comb=pea', '4 female M D comb=single']), 'P'), all = row(found, 'hatched', 'all')
    expect(all).toMatchObject({step: 'F1', birds: 4, genes: 8, method: 'counted', exact: true, leftOut: 0})
    expect(all?.alleles.map(({share, worth}) => [share, worth])).toEqual([[3 / 8, 8], [5 / 8, 8]])
    expect(all?.alleles[0]?.interval.low).toBeCloseTo(wilsonInterval(3, 8).low, 12)
    expect(row(found, 'hatched', 'female')?.alleles[0]?.share).toBeCloseTo(2 / 6, 12)
    expect(row(found, 'bred-from', 'all')).toBeUndefined()
  })

  it('pools the Z by its genes: two a cock, one a hen', () => {
    // sons of S/s+ × s+/-: silver S/s+, gold s+/s+; daughters S/- or s+/-
    const found = rows(crossed(['1 male M D ground=silver', '2 male M D ground=gold', '3 female M D ground=silver', '4 female M D ground=silver', '5 female M D ground=gold']), 'S')
    const of = (sex: AlleleFrequencies['sex']) => row(found, 'hatched', sex)
    expect([of('male')?.genes, of('female')?.genes, of('all')?.genes]).toEqual([4, 3, 7])
    const [p, q] = [of('male')?.alleles[0]?.share ?? 0, of('female')?.alleles[0]?.share ?? 0]
    expect([p, q]).toEqual([expect.closeTo(1 / 4, 12), expect.closeTo(2 / 3, 12)])
    expect(of('all')?.alleles[0]?.share).toBeCloseTo((4 * p + 3 * q) / 7, 12)
  })

  it('is an expectation where they are not, worth fewer genes', () => {
    // unscored, half are P/p+: share ¼ of 2 genes a bird; what is open is ¼ a bird, what is drawn 3/16: worth N · (3/16)/(3/16 + ⅛)
    const all = row(rows(crossed(['1 female M D', '2 male M D', '3 female M D', '4 female M D']), 'P'), 'hatched', 'all')
    expect(all).toMatchObject({method: 'expected', birds: 4, genes: expect.closeTo(8, 12) as number})
    expect(all?.alleles[0]?.share).toBeCloseTo(1 / 4, 12)
    expect(all?.alleles[0]?.worth).toBeCloseTo((8 * (3 / 16)) / (3 / 16 + 1 / 8), 9)
  })

  it('takes those bred from by themselves, alleles and looks', () => {
    const book = crossed(['1 female M D comb=pea', '2 male M D comb=single', '3 female M D comb=single', 'N female 2 1 comb=pea']), found = rows(book, 'P').filter(({step}) => step === 'F1')
    expect([row(found, 'hatched', 'all')?.birds, row(found, 'bred-from', 'all')?.birds, row(found, 'bred-from', 'all')?.alleles[0]?.share]).toEqual([3, 2, 1 / 4])
    const looks = book.findings.frequencies.looksOfBredFrom.find(({step, sex}) => step === 'F1' && sex === 'all')
    expect(looks?.states.map(({state, count}) => [state, count])).toEqual([['pea', 1], ['single', 1]])
  })

  it('shares make 1 in every row, and lie in their intervals', () => {
    const book = crossed(['1 female M D comb=pea', '2 male M D', '3 unknown M D', 'N female 2 1 comb=pea', 'O male 2 1', 'Q unknown O N'])
    for (const {alleles} of book.findings.frequencies.alleles) {
      expect(alleles.reduce((sum, {share}) => sum + share, 0)).toBeCloseTo(1, 12)
      for (const {share, interval: {low, high}} of alleles) expect([low <= share + 1e-12, share <= high + 1e-12]).toEqual([true, true])
    }
  })
})
