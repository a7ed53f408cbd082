import {describe, expect, it} from 'vitest'
import {surely} from '../../src/findings/known-apart.ts'
import {heredityOf} from '../../src/findings/heredity.ts'
import type {Locus} from '../../src/heredity/locus.ts'
import {expectClose} from '../expect-close.ts'
import {COMB, heredityBook, LEGS} from './heredity-book.ts'

const chicks = (count: number, sire: string, dam: string, comb: string) => Array.from({length: count}, (_, index) => `${sire}${dam}${comb}${index} female ${sire} ${dam} comb=${comb}`)
const apartOf = (lines: readonly string[], files = {}) => {
  const around = heredityBook(lines, undefined, files), {findings: {knownApart, heredity, pedigree}, bird} = around
  const [group] = heredity.groups
  if (!group) throw new Error('no group')
  const {broods, of} = knownApart(group)
  const carries = (brood: number, band: string): number => {
    const here = broods[brood]
    if (!here) throw new Error(`no brood ${brood}`)
    return of(here).apart.found.at(pedigree.numberOf(bird(band)), 0).reduce((sum, {is, probability}) => sum + (is.includes(1) ? probability : 0), 0)
  }
  return {...around, group, broods, of, carries}
}

describe('knownApart(book, heredity, pedigree)', () => {
  const {broods, of, carries, findings} = apartOf(['A male - - comb=pea', 'B female - - comb=single', 'C female - - comb=single', ...chicks(3, 'A', 'B', 'single'), ...chicks(2, 'A', 'C', 'pea')])

  it('knows a parent by its other brood and by its own look, and not by the brood that is asked about', () => {
    expect(broods.map(brood => brood.chicks.length)).toEqual([3, 2])
    // without the single chicks of B: a pea of a strain half and half carries with ⅔, and two pea chicks of a single hen make that ⅔·¼ / (⅔·¼ + ⅓) = ⅓
    expectClose(carries(0, 'A'), 1 / 3, 1e-12)
    // without the pea chicks of C: by the single ones of B he carries for certain
    expectClose(carries(1, 'A'), 1, 1e-12)
    expectClose(carries(1, 'C'), 1, 1e-12)
  })

  it('works a brood once', () => {
    const [first] = broods
    if (!first) throw new Error('no brood')
    expect(of(first)).toBe(of(first))
  })

  it('agrees with a book in which those chicks were never scored', () => {
    // the slow way: write the book anew without their looks
    const lines = ['A male - - comb=pea', 'B female - - comb=pea', 'C female - - comb=single', ...chicks(2, 'A', 'B', 'single'), ...chicks(3, 'A', 'B', 'pea'), ...chicks(3, 'A', 'C', 'pea')]
    const told = apartOf(lines, {'traits/comb.md': COMB.replace('required: yes', 'required: yes\nmisscoring: 4%')})
    const blank = heredityBook(lines.map(line => (/ A B comb/.test(line) ? line.replace(/ comb=\w+/, '') : line)), undefined, {'traits/comb.md': COMB.replace('required: yes', 'required: yes\nmisscoring: 4%')})
    const locus = blank.book.loci.get('P')?.locus as Locus, again = heredityOf(blank.book, blank.findings.pedigree)
    for (const band of ['A', 'B']) expectClose(told.carries(0, band), again.carries(blank.bird(band), locus, 1), 1e-9, band)
  })

  it('keeps what a test of a chick says, for that is no look', () => {
    const tested = apartOf(['A male - - comb=pea', 'B female - - comb=single', 'c female A B comb=pea tested={P:~P/p+}', 'd female A B comb=single tested={P:~p+/p+}'])
    expectClose(tested.carries(0, 'A'), 1, 1e-12)
  })

  it('gives every scored chick of known parents one brood, and founders none', () => {
    const all = broods.flatMap(brood => brood.chicks)
    expect(new Set(all).size).toBe(all.length)
    expect(all.length).toBe(findings.pedigree.pedigree.animals.filter(({matings}) => matings.length > 0).length)
  })
})

describe('surely(trait, group, known, animal)', () => {
  const surelyOf = (lines: readonly string[], band: string, alleles: string, files = {}, trait = 'comb') => {
    const {book, findings: {heredity, pedigree}, bird} = heredityBook(lines, alleles, files), asked = book.traits.find(({id}) => id === trait)
    const group = heredity.groups.find(({traits}) => asked && traits.includes(asked))
    if (!asked || !group) throw new Error('no group')
    return surely(asked, group, heredity.worked(group), pedigree.numberOf(bird(band)))
  }
  it('gives a genotype from 99 in 100 on', () => {
    // of pea birds of a strain with a share q of p+ 2q/(1 + q) carry: q of 0.5 % makes 0.995 %, of 0.6 % 1.2 %
    expect(surelyOf(['A male - - comb=pea'], 'A', '{P: {P: 99.5%, p+: 0.5%}}')).toEqual([[0, 0]])
    expect(surelyOf(['A male - - comb=pea'], 'A', '{P: {P: 99.4%, p+: 0.6%}}')).toBeNull()
  })
  it('gives null at a locus that is not the trait’s own and not sure, and is not put off by it', () => {
    const rose = '---\nname: Comb\nstates: [rose, single]\nloci: [R]\nshows:\n  - {R: R/_, is: rose}\n  - {R: r+/r+, is: single}\n---\n'
    const files = {'traits/comb.md': rose, 'traits/legs.md': LEGS}, strain = '{R: {R: 50%, r+: 50%}, Cp: {Cp: 5%, cp+: 95%}}'
    // R lies by Cp, which kills
    expect(surelyOf(['A male - - comb=single'], 'A', strain, files)).toEqual([[1, 1], null])
    expect(surelyOf(['A male - - comb=single legs=long'], 'A', strain, files)).toEqual([[1, 1], [1, 1]])
    expect(surelyOf(['A male - - comb=rose legs=long'], 'A', strain, files)).toBeNull()
  })
})
