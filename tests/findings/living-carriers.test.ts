import {describe, expect, it} from 'vitest'
import {GROUND, heredityBook} from './heredity-book.ts'

/** A bird of another strain: its chicks are the new breed's. */
const fell = (tested: string) => ({'birds/A.md': `---\nband: A\nsex: male\nstrain: fell-buff\ntested: ${tested}\n---\n`})

const carriers = (lines: readonly string[], symbol = 'P', alleles?: string, files = {}) =>
  heredityBook(lines, alleles, files).findings.livingCarriers.filter(({locus}) => locus.symbol === symbol)
    .map(({birds, showing, exact}) => ({exact, showing: showing.map(({band}) => band), birds: birds.map(({bird, carries, testChicks}) => [bird.band, Number(carries.toFixed(4)), testChicks])}))

describe('livingCarriers(traits, census, heredity)', () => {
  it('names the likeliest first, and how many clean chicks would clear each', () => {
    // by hand: P/p+ × P/p+, pea: ⅔; 7 clean chicks leave 2/(2 + 2⁷) = 1.5 %, 8 leave 0.8 %. P/p+ × P/P: ½; 7 leave 1/(1 + 2⁷) = 0.8 %
    expect(carriers(['A male - -', 'B female - - tested={P:~P/p+}', 'C female - - tested={P:~P/P}', 'x male A C comb=pea', 'y female A B comb=pea', 'z male A B comb=single'], 'P', undefined, fell('{P: P/p+}')))
      .toEqual([{exact: true, showing: ['z'], birds: [['y', 0.6667, 8], ['x', 0.5, 7]]}])
  })

  it('leaves out birds that have left, and those without', () => {
    expect(carriers(['A male - -', 'B female - - tested={P:~P/p+}', 'C female - - tested={P:~P/P}', 'x male A C comb=pea', 'y female A B comb=pea left=2023-06-01~sold'], 'P', undefined, fell('{P: P/P}'))).toEqual([{exact: true, showing: [], birds: []}])
  })

  it('asks no test of a hen on the Z, whose look tells', () => {
    expect(carriers(['A male - -', 'B female - - tested={S:~S/-}', 'x male A B ground=silver', 'y female A B'], 'S', '{S: {S: 50%, s+: 50%}}', {'traits/ground.md': GROUND, ...fell('{S: S/s+}')}))
      .toEqual([{exact: true, showing: [], birds: [['x', 0.5, 7], ['y', 0.5, null]]}])
  })
})
