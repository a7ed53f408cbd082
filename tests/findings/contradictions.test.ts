import {describe, expect, it} from 'vitest'
import {contradictionsAt, plainContradictions, unlikelyTests} from '../../src/findings/contradictions.ts'
import {heredityWarnings} from '../../src/findings/heredity-warnings.ts'
import {COMB, heredityBook} from './heredity-book.ts'

const ALLELES = '{P: {P: 50%, p+: 50%}}'
const said = ({findings}: ReturnType<typeof heredityBook>) => findings.heredity.groups.flatMap(group => contradictionsAt(findings, group))
const FOUNDERS = ['A male - - comb=single', 'B female - - comb=single']

describe('contradictionsAt(findings, group)', () => {
  it('is empty where nothing contradicts', () => expect(said(heredityBook([...FOUNDERS, 'c male A B comb=single']))).toEqual([]))
  it('names the bird whose scorings cannot all be right', () => {
    expect(said(heredityBook([...FOUNDERS, 'c male A B comb=single'], ALLELES, {'scores/x.csv': 'band,on,by,comb\nA,2023-09-01,inga,pea\n'}))).toEqual(['A, scored single and pea in Comb'])
  })
  it('names the test that contradicts a look, and the strain that none of its founders is like', () => {
    expect(said(heredityBook(['A male - - comb=single tested={P:~P/P}', 'B female - - comb=single']))).toEqual(['A, tested P P/P'])
    expect(said(heredityBook(FOUNDERS, ALLELES, {'strains/holm-white.md': '---\nname: Holm White\nrole: recurrent\ntrue-for: {comb: pea}\n---\n'}))).toEqual(['the strain holm-white, true for Comb pea'])
  })
  it('names the chick that its parents cannot have', () => {
    expect(said(heredityBook([...FOUNDERS, ...'cdefg'.split('').map(band => `${band} male A B comb=single`), 'x male A B comb=pea']))).toEqual(['x, scored pea in Comb'])
  })
  it('names the looks that are likeliest to be wrong, with their chances, where none is likelier wrong than right', () => {
    const found = said(heredityBook([...FOUNDERS, 'x male A B comb=pea', 'y male x B comb=pea', 'z male x B comb=single']))
    expect(found.length).toBeGreaterThan(0)
    for (const words of found) expect(words).toMatch(/^[ABxyz], scored (pea|single) in Comb/)
  })
  it('leaves out a look that its trait allows to be wrong', () => {
    const white = '---\nname: Skin\nstates: [white, yellow]\nloci: [W]\nmisscoring: 1%\n---\n'
    const book = heredityBook(['A male - - comb=single skin=yellow', 'B female - - comb=single skin=yellow', ...'cdefg'.split('').map(band => `${band} male A B comb=single skin=yellow`), 'x male A B comb=pea', 'y male A B skin=white'],
      '{P: {P: 50%, p+: 50%}, W: {W+: 50%, w: 50%}}', {'traits/skin.md': white, 'traits/comb.md': COMB.replace('[P, p+]}', '[P, p+], linked: {W: 10%}}')})
    expect(said(book)).toEqual(['x, scored pea in Comb'])
  })
})

describe('unlikelyTests(findings, group)', () => {
  // misscoring is stated, so that no single look excludes the test; the true look of nine birds does
  const files = {'traits/comb.md': COMB.replace('required: yes', 'required: yes\nmisscoring: {single: {pea: 1%}}')}

  it('finds a test that kin speak against without any single record, and it is warned of once', () => {
    const {findings} = heredityBook([...FOUNDERS, ...'cdefghij'.split('').map(band => `${band} male A B comb=single`), 'x female A B', 'y female A B tested={P:~P/p+}'], ALLELES, files)
    expect(findings.heredity.groups.flatMap(group => unlikelyTests(findings, group)).map(({bird, written}) => `${bird.band} ${written}`)).toEqual(['y P/p+'])
    const [warning, ...others] = heredityWarnings(findings)
    expect([warning?.code, warning?.at, warning?.reason, others.length]).toEqual(['test-contradicted', {file: 'birds/y.md', path: ['tested', 'P']}, 'y was tested P P/p+, but its kin leave that less than 1%', 0])
  })
  it('warns at the unlikeliest of tests that contradict each other over two generations, where no look is in doubt', () => {
    const {findings} = heredityBook(['A male - - tested={P:~P/P}', 'B female - - tested={P:~P/P}', 'C female - -', 'd male A B', 'e male d C tested={P:~p+/p+}'])
    const warnings = heredityWarnings(findings), [group] = findings.heredity.groups
    expect(group && contradictionsAt(findings, group).length).toBeGreaterThan(0)
    expect(warnings.map(({code}) => code)).toEqual(['test-contradicted'])
  })
  it('is empty where the records fit', () => {
    const {findings} = heredityBook([...FOUNDERS, 'y female A B tested={P:~p+/p+}'], ALLELES, files)
    expect(findings.heredity.groups.flatMap(group => unlikelyTests(findings, group))).toEqual([])
  })
})

describe('plainContradictions(book)', () => {
  it('covers a bird’s own look, that of the chicks of a tested bird, and of all that come of a strain', () => {
    const {book, bird} = heredityBook(['A male - - comb=single tested={P:~P/P}', 'B female - - comb=single', 'c male A B comb=single', 'd female A B comb=single', 'e male c d comb=single'], ALLELES, {'traits/comb.md': COMB})
    const {covers} = plainContradictions(book), [trait] = book.traits.filter(({id}) => id === 'comb')
    expect(trait && ['A', 'B', 'c', 'e'].map(band => covers(bird(band), trait))).toEqual([true, false, true, false])
  })
})
