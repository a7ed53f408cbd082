import {describe, expect, it} from 'vitest'
import {GROUND, heredityBook, WALNUT} from './heredity-book.ts'

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

describe('livingCarriers(…).showing', () => {
  const comb = {'traits/comb.md': WALNUT}, alleles = '{P: {P: 50%, p+: 50%}, R: {R: 50%, r+: 50%}}'
  const birds = ['A male - -', 'B female - - tested={P:~P/p+,~R:~R/r+}', 'x male A B comb=rose', 'y female A B comb=pea', 'z male A B comb=single']

  it('holds at each locus those whose look cannot be without it: a rose bird shows p+ and may hide r+', () => {
    const at = (symbol: string) => carriers(birds, symbol, alleles, {...comb, ...fell('{P: P/p+, R: R/r+}')})[0]
    expect(at('R')).toEqual({exact: true, showing: ['y', 'z'], birds: [['x', expect.closeTo(2 / 3, 4)]]})
    expect(at('P')).toEqual({exact: true, showing: ['x', 'z'], birds: [['y', expect.closeTo(2 / 3, 4)]]})
  })
})
