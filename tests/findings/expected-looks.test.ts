import {describe, expect, it} from 'vitest'
import type {ExpectedLooks} from '../../src/findings/expected-looks.ts'
import {GROUND, heredityBook} from './heredity-book.ts'

/** Chicks of two strains are on the ladder, of one they are not. */
const fell = (band: string, more: string, sex = 'male') => ({[`birds/${band}.md`]: `---\nband: ${band}\nsex: ${sex}\nstrain: fell-buff\n${more}\n---\n`})

const SURE = '{P: {P: 0%, p+: 100%}}'

/** `F1 comb all pea 3/1.5, single 0/1.5`, without the step */
const told = (rows: readonly ExpectedLooks[]): readonly string[] =>
  rows.map(({trait, sex, chicks, states}) => `${trait.id} ${sex} ${chicks}: ${states.map(({state, seen, expected}) => `${state} ${seen}/${expected.toFixed(3)}`).join(', ')}`)

describe('expectedLooks(book, heredity, pedigree)', () => {
  it('expects of known parents what Mendel does, whatever came', () => {
    // by hand: P/p+ × p+/p+ gives half; P/p+ × P/p+ three of four
    const {findings} = heredityBook(['A male - -', 'B female - - tested={P:~p+/p+}', 'C female - - tested={P:~P/p+}',
      'x male A B comb=pea', 'y female A B comb=pea', 'z male A C comb=single'], undefined, fell('A', 'tested: {P: P/p+}'))
    expect(told(findings.expectedLooks.steps)).toEqual([
      'comb male 2: pea 1/1.250, single 1/0.750', 'comb all 3: pea 2/1.750, single 1/1.250', 'comb female 1: pea 1/0.500, single 0/0.500',
    ])
  })

  it('takes nothing from the looks of the brood itself, but what its own chicks tell of its parents', () => {
    // by hand: a founder of whom nothing is known is P/P, P/p+, p+/p+ by ¼, ½, ¼, and half its gametes are P, whatever its own chicks look like
    const family = ['A male - -', 'B female - - tested={P:~p+/p+}', 'x female A B comb=pea', 'y male A B comb=pea'], unknown = fell('A', 'kept: for its comb')
    const ofTwo = (lines: readonly string[]) => told(heredityBook(lines, undefined, unknown).findings.expectedLooks.steps.filter(({sex, states}) => sex === 'all' && states.some(({seen}) => seen === 2)))
    expect(ofTwo(family)).toEqual(['comb all 2: pea 2/1.000, single 0/1.000'])
    // a pea grandchild by a single-combed cock: A handed P to x, so he is P/P or P/p+ by ½ each, and three of four of his gametes are P
    expect(ofTwo([...family, 'C male - - tested={P:~p+/p+}', 'u male C x comb=pea'])).toEqual(['comb all 2: pea 2/1.500, single 0/0.500'])
  })

  it('tells the sexes apart on the Z, takes misscoring in, and leaves out chicks with a parent outside the book', () => {
    // by hand: S/s+ × s+/- gives half of either sex; one in ten silver ones is taken for gold
    const ground = GROUND.replace('required: yes\n', 'required: yes\nmisscoring: {silver: {gold: 10%}}\n')
    const {findings} = heredityBook(['A male - -', 'B female - - tested={S:~s+/-}', 'x male A B ground=gold', 'y female A B ground=silver'], '{S: {S: 50%, s+: 50%}}', {'traits/ground.md': ground, ...fell('A', 'tested: {S: S/s+}')})
    expect(told(findings.expectedLooks.steps)).toEqual([
      'ground male 1: silver 0/0.450, gold 1/0.550', 'ground all 2: silver 1/0.900, gold 1/1.100', 'ground female 1: silver 1/0.450, gold 0/0.550',
    ])
  })

  it('says nothing where no chick was scored', () => expect(heredityBook(['A male - -', 'B female - -', 'x male A B'], SURE).findings.expectedLooks).toEqual({steps: [], pens: []}))

  it('takes out chicks that never hatch, whichever trait says so, and expects nothing where linked loci would have to be known to lie so or so', () => {
    const legs = '---\nname: Legs\nstates: [short, long]\nloci: [Cp]\nshows:\n  - {Cp: Cp/_, is: short}\n  - {Cp: _/_, is: long}\n---\n'
    const build = '---\nname: Build\nstates: [good, odd]\nloci: [Cp, P]\nshows:\n  - {P: P/_, is: good}\n  - {Cp: Cp/Cp, is: lethal}\n  - {P: _/_, is: odd}\n---\n'
    const rose = '---\nname: Rose\nstates: [rose, single]\nloci: [R]\nshows:\n  - {R: R/_, is: rose}\n  - {R: r+/r+, is: single}\n---\n'
    const at = (cp: string) => `{Cp: Cp/cp+, R: R/r+}`.replace('Cp/cp+', cp)
    const {findings} = heredityBook([`B female - - tested=${at('Cp/cp+').replaceAll(' ', '~')}`, `C female - - tested=${at('cp+/cp+').replaceAll(' ', '~')}`,
      'x male A B legs=long rose=single', 'y male A B legs=short rose=rose', 'z male A C legs=long rose=rose'],
    undefined, {...fell('A', `tested: ${at('Cp/cp+')}`), 'traits/legs.md': legs, 'traits/build.md': build, 'traits/rose.md': rose})
    // by hand: 1 : 2 of two short-legged, 1 : 1 of a short- and a long-legged; the rose of the first two lies by Cp and is not told, that of the third is 3 : 1
    expect(told(findings.expectedLooks.steps.filter(({sex}) => sex === 'all'))).toEqual(['legs all 3: short 1/1.833, long 2/1.167', 'rose all 1: rose 1/0.750, single 0/0.250'])
  })
})
