import {describe, expect, it} from 'vitest'
import {COMB, heredityBook, LEGS} from './heredity-book.ts'

const FILES = {'traits/legs.md': LEGS.replace('loci:', 'misscoring: 1%\nloci:'), 'traits/comb.md': COMB.replace('required: yes', 'required: yes\nmisscoring: 1%')}
const ALLELES = '{P: {P: 50%, p+: 50%}, Cp: {Cp: 10%, cp+: 90%}}'

function asked(lines: readonly string[], sire: string, dam: string) {
  const {findings, bird} = heredityBook(lines, ALLELES, FILES)
  return findings.ifScoredRight({sire: bird(sire), dam: bird(dam)}).map(({bird: {band}, mate, ...rest}) => ({...rest, bird: band, mate: mate.band, locus: rest.locus.symbol, trait: rest.trait.name}))
}
const KIN = ['A male - - legs=long', 'B female - - legs=long']

describe('ifScoredRight(book, heredity, pedigree, pair)', () => {
  it('tells the quarter that dies if the doubted creeper is one, and its mate is tested to be', () => {
    expect(asked([...KIN, 'x male A B legs=creeper', 'D female - - tested={Cp:~Cp/cp+}'], 'x', 'D'))
      .toEqual([{bird: 'x', mate: 'D', locus: 'Cp', allele: 'Cp', trait: 'Legs', state: 'creeper', mateCarries: 1, lost: expect.closeTo(0.25, 9), having: expect.closeTo(2 / 3, 9)}])
  })

  it('tells of half the chicks where the mate is free, and takes either parent', () => {
    const [only] = asked([...KIN, 'x female A B legs=creeper', 'D male - - tested={Cp:~cp+/cp+}'], 'D', 'x')
    expect(only).toMatchObject({bird: 'x', mate: 'D', mateCarries: 0, lost: null, having: expect.closeTo(0.5, 9)})
  })

  it('takes the parents to be others where these leave it no such genotype', () => {
    const tested = ['A male - - tested={Cp:~cp+/cp+}', 'B female - - tested={Cp:~cp+/cp+}', 'x male A B legs=creeper', 'D female - - tested={Cp:~Cp/cp+}']
    expect(asked(tested, 'x', 'D')).toMatchObject([{bird: 'x', mateCarries: 1, lost: expect.closeTo(0.25, 9)}])
  })

  it('gives the chance of the mate beside what is lost if it has the allele', () => {
    const [only] = asked([...KIN, 'x male A B legs=creeper', 'D female - -'], 'x', 'D')
    // by hand: of a strain with a tenth of Cp 0.18 of those that hatch, 0.99, carry
    expect(only).toMatchObject({mateCarries: expect.closeTo(0.18 / 0.99, 6), lost: expect.closeTo(0.25, 9)})
  })

  it('is silent on a believed score, on a gene that harms nothing, and where a test forbids the look', () => {
    expect(asked(['A male - - legs=creeper', 'B female - - legs=long', 'x male A B legs=creeper', 'D female - - tested={Cp:~Cp/cp+}'], 'x', 'D')).toEqual([])
    expect(asked(['A male - - comb=single', 'B female - - comb=single', 'x male A B comb=pea', 'D female - - comb=pea'], 'x', 'D')).toEqual([])
    expect(asked([...KIN, 'x male A B legs=creeper tested={Cp:~cp+/cp+}', 'D female - - tested={Cp:~Cp/cp+}'], 'x', 'D')).toEqual([])
  })
})
