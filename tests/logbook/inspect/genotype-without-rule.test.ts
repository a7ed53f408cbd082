import {describe, expect, it} from 'vitest'
import {around, inspectFiles} from '../around.ts'

const trait = (loci: string, states: string, ...rules: string[]) => ['---', 'name: Skin', `states: [${states}]`, `loci: ${loci}`, 'shows:', ...rules.map(rule => `  - {${rule}}`), '---', ''].join('\n')
const W = '{W: {on: autosome, alleles: [W+, w]}}', S = '{S: {on: Z, alleles: [S, s+]}}'
const found = (text: string) => inspectFiles(around({'traits/skin.md': text})).problems.map(({code, reason}) => `${code}: ${reason}`)

describe('a genotype that no rule speaks of', () => {
  it('is named, at the rules, with what to add', () => {
    const {problems} = inspectFiles(around({'traits/skin.md': trait(W, 'white, yellow', 'W: W+/W+, is: white', 'W: w/w, is: yellow')}))
    expect(problems.map(({code, severity, place, reason, remedy}) => [code, severity, place.start.line, reason, remedy])).toEqual([
      ['genotype-without-rule', 'warning', 5, 'no rule of skin says what W+/w looks like', 'add a rule for it, such as {W: W+/w, is: …}, or end with {W: _/_, is: …} for all that is left'],
    ])
  })
  it('is none where the last rule takes all that is left', () => expect(found(trait(W, 'white, yellow', 'W: w/w, is: yellow', 'W: _/_, is: white'))).toEqual([]))
  it('is told of the one sex that is left out', () => {
    expect(found(trait(S, 'silver, gold', 'S: S/_, is: silver', 'S: s+/s+, is: gold'))).toEqual(['genotype-without-rule: no rule of skin says what s+/- looks like'])
    expect(found(trait(W, 'white, yellow', 'W: W+/_, is: white', 'W: w/w, is: yellow, sex: male'))).toEqual(['genotype-without-rule: no rule of skin says what w/w in females looks like'])
  })
  it('is told of the share that a rule leaves', () => {
    expect(found(trait(W, 'white, yellow', 'W: W+/_, is: white', 'W: w/w, is: yellow, penetrance: 80%'))).toEqual(['genotype-without-rule: no rule of skin says what w/w looks like where the rules for it do not show'])
  })
  it('is not said beside a state that no rule gives, which is the same slip', () => {
    expect(found(trait(W, 'white, yellow', 'W: W+/_, is: white'))).toEqual(['state-without-genotype: no genotype of W gives skin yellow'])
  })
  it('is not asked of alleles of the reference that the rules do not name', () => {
    expect(found(trait('[S]', 'silver, gold', 'S: S/_, is: silver', 'S: s+/_, is: gold'))).toEqual([])
  })
})
