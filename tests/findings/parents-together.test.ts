import {describe, expect, it} from 'vitest'
import {parentsTogether} from '../../src/findings/parents-together.ts'
import {heredityBook, type HeredityBook} from './heredity-book.ts'

function table({book, findings, bird}: HeredityBook, one: string, other: string): Record<string, number> {
  const locus = book.loci.get('P')?.locus ?? expect.fail('no P'), {pairs} = parentsTogether(findings.heredity, findings.heredity.groupOf(locus), findings.pedigree.numberOf(bird(one)), findings.pedigree.numberOf(bird(other)))
  return Object.fromEntries(pairs.filter(({probability}) => probability > 1e-12).map(({is, probability}) => [`${is.one.join()} ${is.other.join()}`, probability]))
}

describe('parentsTogether(heredity, group, one, other)', () => {
  it('holds parents of a common pea chick together, by hand', () => {
    // P/P ⅓, P/p+ ⅔ each before; of two carriers ¾ of the chicks are pea: 1 : 2 : 2 : 3
    const found = table(heredityBook(['A male - - comb=pea', 'B female - - comb=pea', 'C female A B comb=pea']), 'A', 'B')
    expect(found).toEqual({'0,0 0,0': expect.closeTo(1 / 8, 12) as number, '0,0 0,1': expect.closeTo(2 / 8, 12) as number, '0,1 0,0': expect.closeTo(2 / 8, 12) as number, '0,1 0,1': expect.closeTo(3 / 8, 12) as number})
  })

  it('is the product for strangers, and the same whichever is asked first', () => {
    const strangers = table(heredityBook(['A male - - comb=pea', 'B female - -']), 'A', 'B')
    expect(strangers['0,1 0,1']).toBeCloseTo((2 / 3) * (1 / 2), 12)
    const kin = heredityBook(['A male - - comb=pea', 'B female - -', 'X male A B', 'Y female A B comb=pea'])
    for (const [both, chance] of Object.entries(table(kin, 'X', 'Y'))) expect(table(kin, 'Y', 'X')[both.split(' ').reverse().join(' ')]).toBeCloseTo(chance, 12)
  })
})
