import {describe, expect, it} from 'vitest'
import {byParents} from '../../src/findings/by-parents.ts'
import {writeGenotype} from '../../src/heredity/genotype-notation.ts'
import {expectClose} from '../expect-close.ts'
import {GROUND, heredityBook, LEGS} from './heredity-book.ts'

const ALLELES = '{P: {P: 50%, p+: 50%}, S: {S: 50%, s+: 50%}, Cp: {Cp: 50%, cp+: 50%}}'

/** What the parents alone make of one bird, written. */
function by(band: string, symbol: string, lines: readonly string[], withLook = true, files = {}) {
  const {findings, book, bird} = heredityBook(lines, ALLELES, files), locus = book.loci.get(symbol)?.locus ?? expect.fail(symbol)
  const found = byParents(findings.heredity).of(findings.pedigree.numberOf(bird(band)), locus, withLook) ?? []
  return new Map(found.map(({is, probability}) => [writeGenotype(is, locus), probability]))
}
const MIXED = ['A male - - tested={P:~P/p+}', 'B female - - tested={P:~P/p+}']

describe('byParents(heredity)', () => {
  it('is Mendel’s, with its own look or without', () => {
    expectClose(by('c', 'P', [...MIXED, 'c female A B comb=pea'], false).get('P/p+') ?? NaN, 0.5, 1e-12, {})
    // by hand: of three pea ones two are mixed
    expectClose(by('c', 'P', [...MIXED, 'c female A B comb=pea']).get('P/p+') ?? NaN, 2 / 3, 1e-12, {})
  })

  it('takes its chicks into no account, and the parents as they are shown', () => {
    const found = by('c', 'P', ['A male - - tested={P:~P/p+}', 'B female - - tested={P:~P/P}', 'D male - - comb=single', 'c female A B comb=pea', ...[1, 2, 3, 4].map(number => `d${number} male D c comb=pea`)])
    expectClose(found.get('P/p+') ?? NaN, 0.5, 1e-12, {})
  })

  it('leaves out what never hatches', () => {
    const found = by('c', 'Cp', ['A male - - tested={Cp:~Cp/cp+}', 'B female - - tested={Cp:~Cp/cp+}', 'c female A B'], true, {'traits/legs.md': LEGS})
    expectClose(found.get('Cp/cp+') ?? NaN, 2 / 3, 1e-12, {})
  })

  it('gives a daughter her sire’s Z alone, and one of unknown sex either way', () => {
    const lines = ['A male - - tested={S:~S/s+}', 'B female - - tested={S:~S/-}', 'c female A B', 'd unknown A B'], files = {'traits/ground.md': GROUND}
    expect([...by('c', 'S', lines, true, files)].sort()).toEqual([['S/-', 0.5], ['s+/-', 0.5]])
    expect([...by('d', 'S', lines, true, files)].sort()).toEqual([['S/-', 0.25], ['S/S', 0.25], ['S/s+', 0.25], ['s+/-', 0.25]])
  })

  it('takes a founder from its strain', () => {
    expectClose(by('A', 'P', ['A male - - comb=pea']).get('P/p+') ?? NaN, 2 / 3, 1e-12, {})
  })

  it('averages over those that may be its parents, by the records', () => {
    const found = by('c', 'P', ['A male - - tested={P:~p+/p+}', 'D male - - tested={P:~P/P}', 'B female - - tested={P:~P/P}', 'c female {A:~25%,D:~75%} B'])
    expectClose(found.get('P/p+') ?? NaN, 0.25, 1e-12, {})
  })
})
