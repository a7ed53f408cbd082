import {describe, expect, it} from 'vitest'
import {allelesSpokenOf} from '../../src/findings/caution-alleles.ts'

describe('allelesSpokenOf', () => {
  it('are those named with their mark, were there none of them here; else all but the wild one', () => {
    const alleles = ['S', 's+', 's^al']
    expect(allelesSpokenOf('The rare allele s^al touches the eyes.', {alleles})).toEqual(['s^al'])
    expect(allelesSpokenOf('The rare allele s^al touches the eyes.', {alleles: ['S', 's+']})).toEqual([])
    expect(allelesSpokenOf('Two doses kill.', {alleles: ['Cp', 'cp+']})).toEqual(['Cp'])
  })
})
