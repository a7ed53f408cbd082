import {describe, expect, it} from 'vitest'
import {expectClose} from '../expect-close.ts'
import {COMB, GROUND, heredityBook} from './heredity-book.ts'

const ALLELES = '{P: {P: 50%, p+: 50%}, S: {S: 50%, s+: 50%}}'
const FOUNDERS = ['A male - - tested={P:~P/P,S:~S/s+}', 'D male - - tested={P:~P/p+,S:~S/S}', 'B female - - tested={P:~p+/p+,S:~s+/-}']
const found = (chicks: readonly string[], founders = FOUNDERS) => {
  const {findings, bird} = heredityBook([...founders, ...chicks], ALLELES, {'traits/comb.md': COMB, 'traits/ground.md': GROUND})
  return {sires: findings.likeliestSires, bird}
}

describe('likeliestSires(book)', () => {
  it('names the only male that can have had the chick, and what tells it', () => {
    const {sires: {moved, unmoved}} = found(['c female {A:~50%,D:~50%} B comb=single ground=silver'])
    expect(unmoved).toEqual({sires: 0, dams: 0})
    expect(moved).toMatchObject([{role: 'sire', moved: 0.5, candidates: [
      {bird: {id: 'D'}, recorded: 0.5, now: 1, evidence: [{traits: [{id: 'comb'}], times: 2}, {traits: [{id: 'ground'}]}]}, {bird: {id: 'A'}, now: 0},
    ]}])
  })
  it('multiplies what several loci say onto the recorded chances', () => {
    // a pea silver daughter: of A 1·½, of D ½·1: as many; the records’ 80 and 20 stand
    expect(found(['c female {A:~80%,D:~20%} B comb=pea ground=silver']).sires).toEqual({moved: [], unmoved: {sires: 1, dams: 0}})
    // only comb scored: of A always pea, of D half
    const [only] = found(['c female {A:~20%,D:~80%} B comb=pea ground=silver', 'd female {A:~40%,D:~60%} B comb=pea'].slice(1)).sires.moved
    expect(only).toBeUndefined()
    const three = ['A male - - tested={P:~P/P,S:~S/S}', 'D male - - tested={P:~P/p+,S:~S/s+}', FOUNDERS[2] ?? '']
    const [moved] = found(['c female {A:~50%,D:~50%} B comb=pea ground=silver'], three).sires.moved
    // 1·1 against ½·½: four to one
    expect(moved?.candidates.map(({bird}) => bird?.id)).toEqual(['A', 'D'])
    expectClose(moved?.candidates[0]?.now ?? NaN, 0.8, 1e-12, {})
    for (const {times} of moved?.candidates[0]?.evidence ?? []) expectClose(times, 4 / 3, 1e-12, {})
  })
  it('tells dams apart likewise', () => {
    const {sires: {moved}} = found(['c male A {B:~50%,E:~50%} comb=pea ground=gold'], [...FOUNDERS, 'E female - - tested={P:~P/P,S:~S/-}'])
    expect(moved).toMatchObject([{role: 'dam', candidates: [{bird: {id: 'B'}, now: 1}, {bird: {id: 'E'}, now: 0}]}])
  })
  it('has nothing to say of chicks whose parents are known', () => expect(found(['c female A B comb=pea']).sires).toEqual({moved: [], unmoved: {sires: 0, dams: 0}}))
})
