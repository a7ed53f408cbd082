import {describe, expect, it} from 'vitest'
import {allelesSpokenOf, speaksOfLocus} from '../../src/findings/caution-alleles.ts'

describe('allelesSpokenOf', () => {
  it('are those named with their mark, were there none of them here; else all but the wild one', () => {
    const alleles = ['S', 's+', 's^al']
    expect(allelesSpokenOf('The rare allele s^al touches the eyes.', {alleles})).toEqual(['s^al'])
    expect(allelesSpokenOf('The rare allele s^al touches the eyes.', {alleles: ['S', 's+']})).toEqual([])
    expect(allelesSpokenOf('Two doses kill.', {alleles: ['Cp', 'cp+']})).toEqual(['Cp'])
  })
})

describe('speaksOfLocus(says, locus)', () => {
  it('is silent of a marked allele that the locus does not have', () => {
    const says = 'The rare allele s^al touches the eyes as well as the feather.'
    expect([speaksOfLocus(says, {alleles: ['S', 's+']}), speaksOfLocus(says, {alleles: ['S', 's+', 's^al']}), speaksOfLocus('Short legs are a burden.', {alleles: ['Cp', 'cp+']})]).toEqual([false, true, true])
  })
})
