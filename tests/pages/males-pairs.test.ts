import {describe, expect, it} from 'vitest'
import {study} from '../../src/findings/study.ts'
import {everyPair, folded, leastText, pairTable, worstFirst} from '../../src/pages/males-pairs.ts'
import {twoPens} from '../findings/breeding-book.ts'

describe('everyPair(pairings), folded(pairs)', () => {
  const {pairings, kinship} = study(twoPens()), pairs = everyPair(pairings, kinship.atLeast)
  it('puts every male with every hen, the least kin first', () => {
    expect(pairs.length).toBe(4 * 3)
    expect(pairs[0]?.mean).toBe(0)
    expect(worstFirst(pairs).map(({mean}) => mean)).toEqual([...pairs].reverse().map(({mean}) => mean))
  })
  it('loses no pair in folding', () => expect(folded(pairs).reduce((sum, {males, hens}) => sum + males.length * hens.length, 0)).toBe(pairs.length))
  it('is no table without pairs', () => expect(pairTable([], 'x', 5)).toBe(null))
  it('marks what is at least', () => expect([leastText('1.0', true), leastText('1.0', false)]).toEqual(['≥ 1.0', '1.0']))
})
