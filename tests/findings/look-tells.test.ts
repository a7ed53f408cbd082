import {describe, expect, it} from 'vitest'
import {lookTells} from '../../src/findings/look-tells.ts'
import type {Trait} from '../../src/logbook/book.ts'
import {bookOf} from '../logbook/around.ts'

const traitOf = (...lines: string[]): Trait => bookOf({'traits/head.md': `---\nname: Head\n${lines.join('\n')}\n---\n`}).traits.find(({id}) => id === 'head') ?? expect.fail('no trait')
const said = (trait: Trait, state: string, place = 0, sex: 'male' | 'female' | 'unknown' = 'female') => {
  const told = lookTells(trait, state, sex, trait.loci[place] ?? expect.fail('no locus'))
  return told && [[...told.may].sort(), [...told.must].sort(), told.only]
}
const WALNUT = traitOf(
  'states: [walnut, rose, pea, single]', 'loci: {R: {on: autosome, alleles: [R, r+]}, P: {on: autosome, alleles: [P, p+]}}', 'shows:',
  '  - {R: R/_, P: P/_, is: walnut}', '  - {R: R/_, is: rose}', '  - {P: P/_, is: pea}', '  - {P: _/_, is: single}',
)
const GROUND = traitOf('states: [silver, gold]', 'loci: {S: {on: Z, alleles: [S, s+]}}', 'shows:', '  - {S: S/_, is: silver}', '  - {S: _/_, is: gold}')

describe('lookTells(trait, state, sex, locus)', () => {
  it('says what every bird of a look has, and what it may have', () => {
    expect(said(WALNUT, 'walnut')).toEqual([[0, 1], [0], null])
    expect(said(WALNUT, 'rose', 1)).toEqual([[1], [1], 1])
    expect(said(WALNUT, 'pea', 1)).toEqual([[0, 1], [0], null])
    expect(said(WALNUT, 'single')).toEqual([[1], [1], 1])
  })

  it('lets a hen hide nothing at a locus of the Z, and an unsexed bird be either', () => {
    expect(said(GROUND, 'silver')).toEqual([[0], [0], 0])
    expect(said(GROUND, 'silver', 0, 'male')).toEqual([[0, 1], [0], null])
    expect(said(GROUND, 'silver', 0, 'unknown')).toEqual([[0, 1], [0], null])
    expect(said(GROUND, 'gold', 0, 'unknown')).toEqual([[1], [1], 1])
  })

  it('takes a part-penetrant rule for no proof, and a look no genotype has for no word', () => {
    const toes = traitOf('states: [five, four]', 'loci: {Po: {on: autosome, alleles: [Po, po+]}}', 'shows:', '  - {Po: Po/_, is: five, penetrance: 80%}', '  - {Po: _/_, is: four}')
    expect(said(toes, 'four')).toEqual([[0, 1], [], null])
    expect(said(toes, 'five')).toEqual([[0, 1], [0], null])
    expect(said(toes, 'six')).toBeNull()
  })
})
