import {describe, expect, it} from 'vitest'
import {byParents} from '../../src/findings/by-parents.ts'
import {chicksTell} from '../../src/findings/chicks-tell.ts'
import {expectClose} from '../expect-close.ts'
import {heredityBook} from './heredity-book.ts'

/** Chance that X has p+, by her parents (½) and her chicks. */
function carries(lines: readonly string[], all = false): number {
  const {findings, book, bird} = heredityBook(['A male - - tested={P:~P/p+}', 'B female - - tested={P:~P/P}', 'D male - - tested={P:~p+/p+}', 'X female A B comb=pea', ...lines])
  const by = byParents(findings.heredity), locus = book.loci.get('P')?.locus ?? expect.fail('P'), number = findings.pedigree.numberOf(bird('X'))
  const chicks = book.birds.filter(({parentage}) => parentage.dams.some(parent => parent.bird === bird('X'))).map(findings.pedigree.numberOf)
  return chicksTell(findings.heredity, by, number, locus, by.of(number, locus, true) ?? [], chicks, all).reduce((sum, {is, probability}) => sum + (is.includes(1) ? probability : 0), 0)
}

describe('chicksTell(heredity, by, bird, locus, before, chicks, all)', () => {
  // by hand: ½ · (½)³ / (½ · (½)³ + ½)
  it('is exact where the mates are known', () => expectClose(carries(['a male D X comb=pea', 'b male D X comb=pea', 'c male D X comb=pea']), 1 / 9, 1e-9, {}))
  it('is sure where a chick shows it', () => expectClose(carries(['a male D X comb=pea', 'b male D X comb=single']), 1, 1e-9, {}))
  it('tells nothing of chicks nobody looked at, but with what came of them', () => {
    const lines = ['E male - - tested={P:~P/P}', 'a female E X comb=pea', 'b male D a comb=single']
    expectClose(carries(lines), 0.5, 1e-9, {})
    expectClose(carries(lines, true), 1, 1e-9, {})
  })
})
