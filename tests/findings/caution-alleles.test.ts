import {describe, expect, it} from 'vitest'
import {allelesSpokenOf, isCautioned, lethalAlleles, speaksOfLocus} from '../../src/findings/caution-alleles.ts'
import {bookOf} from '../logbook/around.ts'

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

describe('isCautioned and lethalAlleles', () => {
  const legs = (...rules: readonly string[]) => bookOf({'traits/legs.md': `---\nname: Legs\nstates: [short, long]\nloci: [Cp]\nshows: [${rules.join(', ')}]\n---\n`})
  const creeper = legs('{Cp: Cp/Cp, is: lethal}', '{Cp: Cp/_, is: short}', '{Cp: _/_, is: long}'), locus = creeper.loci.get('Cp')?.locus

  it('find what kills, and what a caution about death or welfare speaks of', () => {
    if (!locus) throw new Error('no locus')
    expect(lethalAlleles(creeper.traits, locus)).toEqual([0])
    const plain = legs('{Cp: Cp/_, is: short}', '{Cp: _/_, is: long}')
    expect(lethalAlleles(plain.traits, plain.loci.get('Cp')?.locus ?? locus)).toEqual([])
    expect([0, 1].map(allele => isCautioned(creeper, locus, allele))).toEqual([true, false])
    expect(isCautioned(creeper, locus, 0, ['breeding'])).toBe(false)
    expect(isCautioned({loci: new Map()}, locus, 0)).toBe(false)
  })
})
