import {describe, expect, it} from 'vitest'
import {scoreDoubts} from '../../src/findings/score-doubt.ts'
import {expectClose} from '../expect-close.ts'
import {COMB, heredityBook} from './heredity-book.ts'

const doubtsOf = (birds: readonly string[], comb: string) => {
  const {book, findings: {heredity, pedigree}} = heredityBook(birds, undefined, {'traits/comb.md': comb}), [group] = heredity.groups
  if (!group) throw new Error('no group')
  return scoreDoubts(book, group, heredity.worked(group), chick => (chick.kind === 'bird' ? pedigree.numberOf(chick) : null))
}
const withError = (rate: string) => COMB.replace('required: yes', `required: yes\nmisscoring: ${rate}`)

describe('scoreDoubts(book, group, worked)', () => {
  it('weighs the family against the rate of wrong scores', () => {
    // of a carrier and a single half are single, so a score of pea is 0.9 right of ½ and wrong of ½·0.1
    const [only] = doubtsOf(['A male - - tested={P:~P/p+}', 'B female - - tested={P:~p+/p+}', 'c male A B comb=pea'], withError('10%'))
    expectClose(only?.wrong ?? NaN, 0.1, 1e-12, {})
    expectClose(only?.given ?? NaN, 0.5, 1e-12, {})
    expectClose(only?.scoredSo ?? NaN, 0.5, 1e-12, {})
    expect(only).toMatchObject({instead: null, impossible: false, score: {value: 'pea'}})
  })
  it('is sure of a wrong score where the parents can give no other look', () => {
    const [only] = doubtsOf(['A male - - tested={P:~P/P}', 'B female - - tested={P:~p+/p+}', 'c male A B comb=single'], withError('10%'))
    expect(only).toMatchObject({instead: 'pea', wrong: 1, given: 0})
    expectClose(only?.scoredSo ?? NaN, 0.1, 1e-12, {})
  })
  it('doubts nothing where the records allow for no wrong score and nothing contradicts', () => {
    for (const {wrong, impossible} of doubtsOf(['A male - - comb=pea', 'B female - - comb=pea', 'c male A B comb=single'], COMB)) expect([wrong, impossible]).toEqual([0, false])
  })
  it('says that a score contradicts the records where these allow for no wrong one', () => {
    const [only] = doubtsOf(['A male - - tested={P:~P/P}', 'B female - - tested={P:~P/P}', 'c male A B comb=single'], COMB)
    expect(only).toMatchObject({impossible: true, instead: 'pea'})
  })
})
