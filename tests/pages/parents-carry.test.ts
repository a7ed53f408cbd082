import {describe, expect, it} from 'vitest'
import {parentsWords} from '../../src/pages/parents-carry.ts'
import {GROUND, heredityBook} from '../findings/heredity-book.ts'

function words(lines: readonly string[], symbol = 'P', allele = 1): string {
  const {findings, book, bird} = heredityBook(lines, '{P: {P: 50%, p+: 50%}, S: {S: 50%, s+: 50%}}', {'traits/ground.md': GROUND})
  return parentsWords(bird('c'), book.loci.get(symbol)?.locus ?? expect.fail(symbol), allele, 'its', findings.heredity)
}

describe('parentsWords(bird, locus, allele, his, heredity)', () => {
  it('tells a parent that has nothing else from one that has it once', () => {
    expect(words(['A male - - comb=single', 'B female - - tested={P:~P/p+}', 'c male A B'])).toBe('its sire A has only p+, its dam B carries it')
    expect(words(['A male - - tested={P:~P/P}', 'B female - - comb=single', 'c male A B'])).toBe('its sire A is without p+, its dam B has only that')
  })

  it('says how likely one has it, and has it twice', () => {
    expect(words(['A male - -', 'B female - - comb=pea', 'c male A B'])).toBe('its sire A carries p+ with 75.0%, twice with 25.0%, its dam B carries it with 66.7%')
  })

  it('gives the range over those that may be', () => {
    expect(words(['A male - - tested={P:~P/P}', 'D male - - comb=pea', 'B female - - tested={P:~P/P}', 'c male {A:~50%,D:~50%} B'])).toBe('its possible sires carry p+ with up to 66.7%, its dam B is without it')
  })

  it('names which of those that may be has nothing else', () => {
    expect(words(['A male - - comb=single', 'D male - - tested={P:~P/p+}', 'B female - - tested={P:~P/P}', 'c male {A:~50%,D:~50%} B'])).toBe('its possible sires carry p+, A twice, its dam B is without it')
    expect(words(['A male - -', 'D male - - tested={P:~P/p+}', 'B female - - tested={P:~P/P}', 'c male {A:~50%,D:~50%} B'])).toBe('its possible sires carry p+ with 75.0 to 100.0%, twice with up to 25.0%, its dam B is without it')
  })

  it('leaves the dam out where a daughter has nothing of her', () => {
    expect(words(['A male - - tested={S:~S/s+}', 'B female - -', 'c female A B'], 'S')).toBe('its sire A carries s+')
  })
})
