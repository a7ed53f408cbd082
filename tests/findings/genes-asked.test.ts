import {describe, expect, it} from 'vitest'
import type {AskedLook} from '../../src/findings/clauses-asked.ts'
import {genesOfLooks} from '../../src/findings/genes-asked.ts'
import type {Clause, Trait} from '../../src/logbook/book.ts'
import {plainClause} from '../paper-parts.ts'
import {comb} from '../pages/small-logbook.ts'
import {skin} from './drawn-book.ts'

const pea = {kind: 'states', states: ['pea']} as const, single = {kind: 'states', states: ['single']} as const
const look = (allows: Trait['wanted'], more: Partial<Clause> = {}, of = comb): AskedLook => ({clause: plainClause('x', 'X', 'x', {trait: of, allows, ...more}), trait: {...of, wanted: allows}, scored: of})
const of = (...looks: readonly AskedLook[]) => genesOfLooks(looks).map(({trait: {wanted: {male, female}}, scored, variety}) => [scored.id, male?.kind === 'states' ? male.states.join() : null, female?.kind === 'states' ? female.states.join() : null, variety])

describe('genesOfLooks(looks)', () => {
  it('makes one of a clause of the male and one of the female, and takes the trait as it stands where that is its target', () => {
    const both = [look({male: pea, female: null}), look({male: null, female: pea})]
    expect(of(...both)).toEqual([['comb', 'pea', 'pea', null]])
    expect(genesOfLooks(both)[0]?.trait).toBe(comb)
    expect(of(look({male: pea, female: null}))).toEqual([['comb', 'pea', null, null]])
  })

  it('keeps apart what asks otherwise of one sex, another variety and another trait', () => {
    expect(of(look({male: pea, female: pea}), look({male: single, female: null}))).toEqual([['comb', 'pea', 'pea', null], ['comb', 'single', null, null]])
    expect(of(look({male: pea, female: null}, {variety: 'Light'}), look({male: null, female: pea}))).toEqual([['comb', 'pea', null, 'Light'], ['comb', null, 'pea', null]])
    expect(of(look({male: pea, female: null}), look(skin.wanted, {}, skin)).map(([id]) => id)).toEqual(['comb', 'skin'])
  })
})
