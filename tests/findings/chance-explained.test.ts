import {describe, expect, it} from 'vitest'
import {chanceExplained} from '../../src/findings/chance-explained.ts'
import {heredityBook, LEGS} from './heredity-book.ts'

function explained(band: string, lines: readonly string[], files = {}) {
  const {findings, book, bird} = heredityBook(lines, '{P: {P: 50%, p+: 50%}, Cp: {Cp: 10%, cp+: 90%}}', files), locus = book.loci.get('P')?.locus ?? expect.fail('P')
  return chanceExplained(book, findings.heredity, findings.pedigree).explained(bird(band), locus, 1, findings.heredity.carries(bird(band), locus, 1))
}
const PARENTS = ['A male - - tested={P:~P/p+}', 'B female - - tested={P:~P/P}', 'D male - - tested={P:~p+/p+}']

describe('chanceExplained(book, heredity, pedigree)', () => {
  it('has nothing to add where the parents say all', () => expect(explained('X', [...PARENTS, 'X female A B comb=pea'])).toEqual({alone: 0.5, pull: null}))

  it('points at its own chicks, and at what came of them', () => {
    expect(explained('X', [...PARENTS, 'X female A B comb=pea', 'a male D X comb=pea', 'b male D X comb=pea'])).toMatchObject({alone: 0.5, pull: {kind: 'chicks', sure: true}})
    expect(explained('X', [...PARENTS, 'X female A B comb=pea', 'E male - - tested={P:~P/P}', 'a female E X comb=pea', 'b male D a comb=single']).pull).toMatchObject({kind: 'descendants', chicks: [{band: 'b'}]})
  })

  it('points at a look whose locus lies near', () => {
    const lines = ['g male - - tested={P:~P/P,Cp:~cp+/cp+}', 'h female - - tested={P:~p+/p+,Cp:~Cp/cp+}', 'm female - - tested={P:~P/P,Cp:~cp+/cp+}', 's male g h legs=creeper', 'c female s m legs=creeper comb=pea']
    expect(explained('c', lines, {'traits/legs.md': LEGS.replace('loci: [Cp]', 'loci: {Cp: {alleles: [Cp, cp+], linked: {P: 1%}}}')}).pull).toMatchObject({kind: 'linked', looks: [{state: 'creeper'}]})
  })

})
