import {describe, expect, it} from 'vitest'
import {outOfPairs, pairsInPens} from '../../src/findings/throw-backs.ts'
import {AROUND} from '../logbook/around.ts'
import {heredityBook} from './heredity-book.ts'

const PEN = (id: string, males: string, females: string) => ({[`pens/2027-${id}.md`]: `---\nseason: 2027\nmales: [${males}]\nfemales: [${females}]\nfrom: 2027-02-10\n---\n`})
const HATCH = {'hatches/2027-01.md': '---\npen: 2027-A\nset: 2027-03-01\non: 2027-03-22\neggs: 14\nhatched: 10\n---\n'}
/** A1 and its sisters of Holm White by Fell Buff: all carriers, so far as their look goes; the strain is single, the donor pea. */
const LINE = ['A1 male H-1 B-1 comb=pea', 'A2 female H-1 B-2 comb=pea', 'A3 female H-2 B-3 comb=single', 'Q male - -']
const TRUE = {
  'strains/holm-white.md': '---\nname: Holm White\nrole: recurrent\ntrue-for: {comb: single}\n---\n', 'strains/fell-buff.md': '---\nname: Fell Buff\nrole: donor\ntrue-for: {comb: pea}\n---\n',
  'traits/comb.md': '---\nname: Comb\nstates: [pea, single]\ntarget: pea\nrequired: yes\nloci:\n  P: {on: autosome, alleles: [P, p+]}\nshows:\n  - {P: P/_, is: pea}\n  - {P: _/_, is: single}\nmisscoring: 1%\n---\n',
}
const book = () => heredityBook(LINE, '', {...TRUE, ...PEN('A', 'A1', 'A2, A3'), ...HATCH})

describe('throwBacks(traits, census, pairs, forecasts)', () => {
  it('is a quarter of what two single doses throw, pen by pen, and how many that makes of as many chicks as this season', () => {
    // A3 looked single: the cross of two true strains says misread, so both hens carry one dose
    const [comb] = book().findings.throwBacks
    expect(comb).toMatchObject({chicks: 10, exact: true, share: expect.closeTo(0.25, 9) as number, expected: expect.closeTo(2.5, 8) as number})
    expect(comb?.pens.map(({pen, pairs, share, worst}) => [pen.id, pairs, share, worst.sire.band])).toEqual([['2027-A', 2, expect.closeTo(0.25, 9) as number, 'A1']])
  })

  it('has no entry where no pair of the line stands in a pen', () => {
    expect(heredityBook(LINE, '', {...TRUE, ...PEN('A', 'A1', 'H-3')}).findings.throwBacks).toEqual([])
  })
})

describe('pairsInPens(census)', () => {
  it('puts every living male of the line to every hen of his pen', () => {
    expect(pairsInPens(book().findings.census).map(({pen, sire, dam}) => [pen.id, sire.band, dam.band])).toEqual([['2027-A', 'A1', 'A2'], ['2027-A', 'A1', 'A3']])
  })
})

describe('outOfPairs(census, pen)', () => {
  it('names who is of a pure strain, who was put elsewhere since and who is gone', () => {
    const {findings, book: {pens}} = heredityBook([...LINE, 'A4 female H-2 B-3 left=2027-03-01~died'], '', {
      ...TRUE, ...PEN('A', 'A1', 'A2, A3, A4, H-3'), 'pens/2027-B.md': '---\nseason: 2027\nmales: [A1]\nfemales: [A3]\nfrom: 2027-04-10\n---\n', 'project.md': (AROUND['project.md'] ?? '').replace('aim:', 'as-of: 2027-06-01\naim:'),
    })
    const a = pens.find(({id}) => id === '2027-A')
    expect(outOfPairs(findings.census, a ?? expect.fail()).map(({bird, why, to}) => [bird.band, why, to?.id ?? null])).toEqual([['A1', 'moved', '2027-B'], ['A3', 'moved', '2027-B'], ['A4', 'gone', null], ['H-3', 'strain', null]])
  })
})
