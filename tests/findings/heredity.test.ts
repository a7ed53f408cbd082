import {describe, expect, it} from 'vitest'
import {heredityOf} from '../../src/findings/heredity.ts'
import {expectClose} from '../expect-close.ts'
import {COMB, GROUND, heredityBook} from './heredity-book.ts'

const WITH_ERROR = COMB.replace('required: yes', 'required: yes\nmisscoring: 1%')

describe('heredityOf(book, pedigree)', () => {
  it('knows a carrier by its recessive chick: pea × pea gave a single', () => {
    const {chance} = heredityBook(['A male - - comb=pea', 'B female - - comb=pea', '1 male A B comb=single'])
    expect([chance('A', 'P', 'P/p+'), chance('B', 'P', 'P/p+'), chance('1', 'P', 'p+/p+')]).toEqual([1, 1, 1])
  })
  it('halves a doubt with every clean chick of a single-combed mate', () => {
    // of pea founders with both alleles alike, two in three carry: ⅔·½ⁿ against ⅓
    for (const chicks of [1, 2, 5]) {
      const {chance} = heredityBook(['A male - - comb=pea', 'B female - - comb=single', ...Array.from({length: chicks}, (_, index) => `c${index} female A B comb=pea`)])
      expectClose(chance('A', 'P', 'P/p+'), 2 * 0.5 ** chicks / (1 + 2 * 0.5 ** chicks), 1e-12, {chicks})
    }
  })
  it('writes a hen’s single Z, and gives every genotype with a chance, likeliest first', () => {
    const {findings, bird, book} = heredityBook(['A male - - ground=silver', 'B female - - ground=gold', '1 female A B ground=gold'], '{S: {S: 50%, s+: 50%}}', {'traits/ground.md': GROUND, 'traits/comb.md': ''})
    const S = book.loci.get('S')?.locus
    if (!S) throw new Error('no S')
    const of = (band: string) => findings.heredity.of(bird(band), S).genotypes.map(({written, probability}) => `${written} ${probability}`)
    expect([of('A'), of('B'), of('1')]).toEqual([['S/s+ 1'], ['s+/- 1'], ['s+/- 1']])
    expect(findings.heredity.of(bird('A'), S).exact).toBe(true)
    expect([findings.heredity.carries(bird('A'), S, 0), findings.heredity.carries(bird('B'), S, 0)]).toEqual([1, 0])
  })
  it('takes disagreeing scores in as readings of one look', () => {
    const {chance} = heredityBook(['A male - - observations=[{on:~2023-01-01,~comb:~pea},{on:~2023-02-01,~comb:~single}]'], undefined, {'traits/comb.md': WITH_ERROR})
    // ¾·0.99·0.01 against ¼·0.01·0.99: the two cancel
    expectClose(chance('A', 'P', 'p+/p+'), 0.25, 1e-12, {})
  })
  it('where the records contradict each other takes one score in a thousand to be wrong, and says so', () => {
    const {findings, bird, book} = heredityBook(['A male - - comb=single', 'B female - - comb=single', '1 male A B comb=pea'])
    const [group] = findings.heredity.groups, P = book.loci.get('P')?.locus
    if (!group || !P) throw new Error('no group')
    expect(findings.heredity.worked(group).found.slack).toBe(1e-3)
    expect(findings.heredity.of(bird('1'), P).genotypes.reduce((sum, {probability}) => sum + probability, 0)).toBeCloseTo(1, 12)
  })
  it('keeps what it worked, whatever is supposed or worked otherwise', () => {
    const {findings, bird, book} = heredityBook(['A male - - comb=pea', 'B female - - comb=single', '1 male A B comb=single'])
    const {heredity, pedigree} = findings, [group] = heredity.groups, P = book.loci.get('P')?.locus
    if (!group || !P) throw new Error('no group')
    const chick = pedigree.numberOf(bird('1')), cock = pedigree.numberOf(bird('A'))
    expect(heredity.worked(group)).toBe(heredity.worked(group))
    const unseen = heredity.worked(group).found.supposing(new Map([[chick, {readings: [], tested: null}]]), at => at(cock, 0))
    expectClose(unseen.find(({is}) => is.join() === '0,1')?.probability ?? 0, 2 / 3, 1e-12, {})
    expect(heredity.workedOtherwise(group, {tested: animal => (animal === cock ? [[0, 1]] : null)}).found.at(cock, 0).map(({is}) => is)).toEqual([[0, 1]])
    expect(heredity.of(bird('A'), P).genotypes.map(({written}) => written)).toEqual(['P/p+'])
  })
  it('asked of a locus of another book is a slip of the programmer', () => {
    const {findings} = heredityBook(['A male - -'])
    expect(() => heredityOf(findings.book, findings.pedigree).groupOf({symbol: 'Q', on: 'autosome', alleles: ['Q', 'q']})).toThrow(RangeError)
  })
})
