import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {study} from '../../src/findings/study.ts'
import {evenBook} from './evenness-book.ts'
import {heredityBook} from './heredity-book.ts'

/** A bird of another strain: its chicks are the new breed's. */
const fell = (tested: string) => ({'birds/A.md': `---\nband: A\nsex: male\nstrain: fell-buff\ntested: ${tested}\n---\n`})
const lines = (looks: readonly string[]): string[] => ['A male - -', 'B female - - tested={P:~P/p+}', ...looks.map((look, place) => `x${place} ${place % 2 === 0 ? 'male' : 'female'} A B ${look}`)]

describe('carriersInSteps(asked, trueBred, heredity, pedigree)', () => {
  it('gives two in three of the chicks that are right, of two carriers; those off and those not scored are not asked', () => {
    // by hand: P/p+ × P/p+ gives P/P 1 and P/p+ 2 of the 3 in four with a pea comb; ten of them, 6⅔ carriers
    const looks = [...Array<string>(10).fill('comb=pea'), ...Array<string>(3).fill('comb=single'), '', '']
    const [found, ...more] = heredityBook(lines(looks), undefined, fell('{P: P/p+}')).findings.carriersInSteps
    expect(more).toEqual([])
    expect(found).toMatchObject({step: 'F1', right: 10, carriers: expect.closeTo(20 / 3, 6) as number, leftOut: 0, exact: true})
  })

  it('gives half of them where one parent has it twice', () => {
    expect(heredityBook(lines(Array<string>(8).fill('comb=pea')), undefined, fell('{P: P/P}')).findings.carriersInSteps[0]).toMatchObject({right: 8, carriers: expect.closeTo(4, 6) as number})
  })

  it('has no entry where nobody was scored right', () => expect(heredityBook(lines(['comb=single']), undefined, fell('{P: P/p+}')).findings.carriersInSteps).toEqual([]))

  it('agrees with every bird asked by itself, and never counts more carriers than chicks', () => {
    fc.assert(fc.property(evenBook, book => {
      const findings = study(book), {carriersInSteps, trueBred, heredity} = findings
      for (const {step, trait, locus, unwanted, right, carriers, leftOut} of carriersInSteps) {
        const own = [...trueBred.verdicts].filter(([chick, verdict]) => chick.step.label === step && verdict.right.includes(trait)).map(([chick]) => chick)
        expect(right + leftOut).toBe(own.reduce((sum, {count}) => sum + count, 0))
        expect(carriers).toBeLessThanOrEqual(right + 1e-9)
        if (own.some(({kind}) => kind === 'tally')) continue
        const one = own.reduce((sum, chick) => sum + (chick.kind === 'bird' ? heredity.of(chick, locus).genotypes.reduce((chance, {is, probability}) => chance + (unwanted.some(allele => is.includes(allele)) ? probability : 0), 0) : 0), 0)
        expect(carriers).toBeCloseTo(one, 9)
      }
    }), {numRuns: 25})
  })
})
