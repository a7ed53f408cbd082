import {describe, expect, it} from 'vitest'
import {GROUND, heredityBook} from './heredity-book.ts'

/** A bird of another strain: its chicks are the new breed's. */
const fell = (tested: string) => ({'birds/A.md': `---\nband: A\nsex: male\nstrain: fell-buff\ntested: ${tested}\n---\n`})

const carriers = (lines: readonly string[], symbol = 'P', alleles?: string, files = {}) =>
  heredityBook(lines, alleles, files).findings.livingCarriers.filter(({locus}) => locus.symbol === symbol)
    .map(({birds, showing, exact}) => ({exact, showing: showing.map(({band}) => band), birds: birds.map(({bird, carries}) => [bird.band, Number(carries.toFixed(4))])}))

describe('livingCarriers(traits, census, heredity)', () => {
  it('names the likeliest first', () => {
    // by hand: P/p+ × P/p+, pea: ⅔; P/p+ × P/P: ½
    expect(carriers(['A male - -', 'B female - - tested={P:~P/p+}', 'C female - - tested={P:~P/P}', 'x male A C comb=pea', 'y female A B comb=pea', 'z male A B comb=single'], 'P', undefined, fell('{P: P/p+}')))
      .toEqual([{exact: true, showing: ['z'], birds: [['y', 0.6667], ['x', 0.5]]}])
  })

  it('leaves out birds that have left, and those without', () => {
    expect(carriers(['A male - -', 'B female - - tested={P:~P/p+}', 'C female - - tested={P:~P/P}', 'x male A C comb=pea', 'y female A B comb=pea left=2023-06-01~sold'], 'P', undefined, fell('{P: P/P}'))).toEqual([{exact: true, showing: [], birds: []}])
  })

  it('asks of a hen her one Z', () => {
    expect(carriers(['A male - -', 'B female - - tested={S:~S/-}', 'x male A B ground=silver', 'y female A B'], 'S', '{S: {S: 50%, s+: 50%}}', {'traits/ground.md': GROUND, ...fell('{S: S/s+}')}))
      .toEqual([{exact: true, showing: [], birds: [['x', 0.5], ['y', 0.5]]}])
  })
})
