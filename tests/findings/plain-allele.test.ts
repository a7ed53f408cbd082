import {describe, expect, it} from 'vitest'
import {plainAllele} from '../../src/findings/plain-allele.ts'
import {heredityBook} from './heredity-book.ts'

function plain(alleles: string, files: Readonly<Record<string, string>> = {}) {
  const {book} = heredityBook([], alleles, files), locus = book.loci.get('P')?.locus ?? expect.fail('P')
  const found = plainAllele(book, locus)
  return found && [locus.alleles[found.allele], found.known]
}
const FELL = (alleles: string) => ({'strains/fell-buff.md': `---\nname: Fell Buff\nrole: donor\nalleles: ${alleles}\n---\n`})

describe('plainAllele(book, locus)', () => {
  it('is what all strains have and nothing else', () => expect(plain('{P: {P: 100%}}', FELL('{P: {P: 100%}}'))).toEqual(['P', 'strains']))
  it('is the wild one where they differ', () => {
    expect(plain('{P: {P: 100%}}', FELL('{P: {p+: 100%}}'))).toEqual(['p+', 'wild'])
    expect(plain('{P: {P: 50%, p+: 50%}}', FELL('{P: {P: 100%}}'))).toEqual(['p+', 'wild'])
  })
  it('is none where no allele is marked as the wild one', () => {
    const comb = '---\nname: Comb\nstates: [pea, single]\nloci:\n  P: {on: autosome, alleles: [P, p]}\nshows:\n  - {P: P/_, is: pea}\n  - {P: _/_, is: single}\n---\n'
    expect(plain('{P: {P: 50%, p: 50%}}', {'traits/comb.md': comb})).toBeNull()
  })
})
