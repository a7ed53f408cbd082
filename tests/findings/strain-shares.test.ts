import {describe, expect, it} from 'vitest'
import {ladderOf} from '../../src/findings/ladder.ts'
import {strainShares} from '../../src/findings/strain-shares.ts'
import type {Strain} from '../../src/logbook/book.ts'
import {expectClose} from '../expect-close.ts'
import {bird, F1, fell, hatch, holm, logbook, tally} from '../pages/small-logbook.ts'

const of = (share: number): Map<Strain, number> => new Map([[holm, share], [fell, 1 - share]])

describe('strainShares(book)', () => {
  const from = hatch('1', {step: F1, shares: of(0.5)})
  const book = logbook('2025-01-01', {
    birds: [bird('H', 'male'), bird('1', 'male', {step: F1, strain: null, shares: of(0.5)}), bird('2', 'male', {step: F1, strain: null, shares: new Map([[holm, 0.5]])})],
    hatches: [Object.assign(from, {tallies: [tally(from, 2)]})],
  })
  const found = strainShares(book, ladderOf(book))

  it('names every strain for every bird, and what is unknown', () => {
    expect([...found.birds].map(([{id}, {shares, unknown}]) => [id, ...shares.values(), unknown])).toEqual([['H', 1, 0, 0], ['1', 0.5, 0.5, 0], ['2', 0.5, 0, 0.5]])
  })

  it('takes the mean of a step over its listed chicks', () => {
    expect(found.steps.map(({step, chicks}) => [step, chicks])).toEqual([['F1', 4]])
    expectClose(found.steps[0]?.shares.get(fell) ?? NaN, 1.5 / 4, 1e-15)
    expectClose(found.steps[0]?.unknown ?? NaN, 0.5 / 4, 1e-15)
  })

  it('calls no rounding unknown', () => {
    const thirds = logbook('2025-01-01', {birds: [bird('1', 'male', {step: F1, shares: new Map([[holm, 0.1 + 0.2], [fell, 0.7 - 1e-16]])})]})
    expect([...strainShares(thirds, ladderOf(thirds)).birds.values()][0]?.unknown).toBe(0)
  })
})
