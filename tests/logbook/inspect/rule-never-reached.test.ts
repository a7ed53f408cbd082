import {describe, expect, it} from 'vitest'
import {around, inspectFiles} from '../around.ts'

const found = (...rules: readonly string[]) => inspectFiles(around({'traits/ground.md': ['---', 'name: Ground', 'states: [silver, gold]', 'loci: [S]', 'shows:', ...rules.map(rule => `  - {${rule}}`), '---', ''].join('\n')}))
  .problems.filter(({code}) => code === 'rule-never-reached').map(({place, reason, remedy}) => `${place.start.line} ${reason} – ${remedy}`)

describe('a rule that is never reached', () => {
  it('is said to be taken by those above it', () => expect(found('S: S/_, is: silver', 'S: S/S, is: silver', 'S: _/_, is: gold')).toEqual(['7 the rule for silver is never reached: every genotype it fits is taken by the rules above it – put it above the wider rule, or take it out']))
  it('is said to fit no bird of its sex, though it stands first', () => {
    expect(found('S: S/-, sex: male, is: silver', 'S: S/_, is: silver', 'S: _/_, is: gold')).toEqual(['6 the rule for silver is never reached: no male has S/- – write sex: female, or mend the genotype'])
    expect(found('S: S/s+, sex: female, is: silver', 'S: S/_, is: silver', 'S: _/_, is: gold')).toEqual(['6 the rule for silver is never reached: no female has S/s+ – write sex: male, or mend the genotype'])
  })
})
