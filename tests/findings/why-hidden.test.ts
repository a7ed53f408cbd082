import {describe, expect, it} from 'vitest'
import {GROUND, COMB, heredityBook} from './heredity-book.ts'

function why(band: string, symbol: string, lines: readonly string[], files = {}) {
  const {findings, bird} = heredityBook(lines, '{P: {P: 50%, p+: 50%}, S: {S: 50%, s+: 50%}}', files)
  return findings.hidden(bird(band)).find(({locus}) => locus.symbol === symbol)?.why() ?? null
}
const MISREAD = {'traits/comb.md': COMB.replace('required: yes', 'required: yes\nmisscoring: 1%')}

describe('whyHidden(bird, at, heredity, explained)', () => {
  it('takes one piece of evidence where it makes the chance that is shown', () => {
    expect(why('c', 'P', ['A male - - comb=single', 'B female - - comb=pea', 'c male A B comb=pea'])).toMatchObject({kind: 'told', evidence: {kind: 'given'}})
    expect(why('c', 'P', ['A male - - tested={P:~P/p+}', 'B female - - comb=pea', 'c male A B comb=pea tested={P:~P/p+}'])).toMatchObject({kind: 'told', evidence: {kind: 'test'}})
  })

  it('and the parents with what pulls where it does not', () => {
    expect(why('c', 'P', ['A male - - tested={P:~P/p+}', 'B female - - tested={P:~P/P}', 'D female - - tested={P:~p+/p+}', 'c male A B comb=pea', 'd male c D comb=pea'])).toMatchObject({kind: 'alone', alone: 0.5, pull: {kind: 'chicks'}})
  })

  it('sets a look against its kin where these make it unlikely', () => {
    expect(why('c', 'P', ['A male - - tested={P:~P/P}', 'B female - - tested={P:~P/P}', 'c male A B comb=single'], MISREAD)).toEqual({kind: 'look', kin: 0, looks: [{trait: expect.anything(), state: 'single', scored: ['single'], passes: {state: 'pea', rate: 0.01, stated: true}}]})
  })

  it('lets the sex decide where either sex is sure', () => {
    const lines = ['A male - - tested={S:~S/S}', 'B female - - tested={S:~S/-}', 'c unknown A B']
    expect(why('c', 'S', lines, {'traits/ground.md': GROUND})).toEqual({kind: 'sex', cock: [0, 0], hen: [0, null]})
  })
})
