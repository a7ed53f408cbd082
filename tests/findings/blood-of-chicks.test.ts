import {describe, expect, it} from 'vitest'
import {bloodOfChicks} from '../../src/findings/blood-of-chicks.ts'
import {study} from '../../src/findings/study.ts'
import {halfSibs} from './kin-book.ts'

describe('bloodOfChicks(pedigree, kinship, heterozygosity)', () => {
  it('is what a chick of those parents has', () => {
    const book = halfSibs(), findings = study(book), blood = bloodOfChicks(findings.pedigree, findings.kinship, findings.heterozygosity)
    for (const id of ['24-001', '24-002', '24-003']) {
      const one = book.named(id), found = blood(one.parentage)
      expect(found?.chickF).toBeCloseTo(findings.kinship.of(one).f.mean, 12)
      expect(found?.chickH).toBeCloseTo(findings.heterozygosity[findings.pedigree.numberOf(one)] ?? NaN, 12)
    }
    // by hand: dams are of two strains, and not inbred
    expect(blood(book.named('24-001').parentage)).toMatchObject({damF: 0, damH: 1})
    expect(blood(book.named('24-004').parentage)).toBeNull()
  })
})
