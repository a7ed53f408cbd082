import {describe, expect, it} from 'vitest'
import {disputedAllele} from '../../src/findings/disputed-alleles.ts'
import {heredityBook, LEGS} from './heredity-book.ts'

const ALLELES = '{P: {P: 50%, p+: 50%}, Cp: {Cp: 10%, cp+: 90%}}', FILES = {'traits/legs.md': LEGS.replace('loci:', 'misscoring: 1%\nloci:')}

function disputed(band: string, symbol: string, lines: readonly string[]) {
  const {book, findings, bird} = heredityBook(lines, ALLELES, FILES), locus = book.loci.get(symbol)?.locus
  return disputedAllele(bird(band), locus ?? expect.fail('no locus'), findings.heredity)
}

describe('disputedAllele(bird, locus, heredity)', () => {
  const PARENTS = ['A male - - tested={Cp:~cp+/cp+}', 'B female - - legs=long legs=long']

  it('names the allele that the look claims and the kin deny, with what it were', () => {
    // by hand: B carries with 0.18·0.01 of scores wrong against 0.81·0.99; then half of her chicks, and the chick’s own score right with 99 in 100
    const carries = 0.18 * 0.01 / (0.18 * 0.01 + 0.81 * 0.99), right = carries / 2 * 0.99, wrong = (1 - carries / 2) * 0.01
    const lines = [PARENTS[0] ?? '', 'B female - - legs=long', 'c male A B legs=creeper'], {findings, bird, book} = heredityBook(lines, ALLELES, FILES), locus = book.loci.get('Cp')?.locus ?? expect.fail('no locus')
    expect(findings.heredity.carries(bird('c'), locus, 0)).toBeCloseTo(right / (right + wrong), 9)
    expect(disputed('c', 'Cp', lines)).toMatchObject({allele: 0, state: 'creeper', taken: [{written: 'Cp/cp+', probability: 1}]})
  })

  it('is silent where the score is believed, or where there is none', () => {
    expect(disputed('c', 'Cp', ['A male - - legs=creeper', 'B female - - legs=long', 'c male A B legs=creeper'])).toBeNull()
    expect(disputed('c', 'Cp', ['A male - - tested={Cp:~cp+/cp+}', 'B female - - tested={Cp:~cp+/cp+}', 'c male A B'])).toBeNull()
  })

  it('leaves nothing to take where a test forbids the look', () => {
    expect(disputed('c', 'Cp', ['A male - -', 'B female - -', 'c male A B legs=creeper tested={Cp:~cp+/cp+}'])).toMatchObject({allele: 0, taken: []})
  })
})
