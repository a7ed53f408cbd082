import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {study} from '../../src/findings/study.ts'
import {smallBook} from '../pages/small-logbook.ts'
import {drawnBook} from './drawn-book.ts'

describe('recordsAudit(book)', () => {
  it('counts what is known of a small yard', () => {
    const {audit} = study(smallBook())
    // 15 banded, 3 tallied, 2 that nobody listed; every parentage has two candidates somewhere
    expect(audit.banded).toMatchObject({count: 15, total: 20})
    expect(audit.bothParentsKnown).toMatchObject({count: 0, total: 15})
    expect(audit.sexKnown).toMatchObject({count: 14, total: 15})
    expect(audit.hatchDayKnown).toMatchObject({count: 15, total: 15})
    expect(audit.candled).toMatchObject({count: 1, total: 2})
    expect(audit.counts).toMatchObject({birds: 19, founders: 4, hatches: 2, uncertainSire: 9, uncertainDam: 6, unlistedChicks: 2, tallied: 3, struckScores: 1, leftUndated: 1})
  })
  it('counts every chick of the ladder once', () => {
    fc.assert(fc.property(drawnBook, book => {
      const {audit, ladder} = study(book)
      const hatched = ladder.reduce((sum, step) => sum + (step.kind === 'reached' ? step.chicks.hatched : 0), 0)
      expect(audit.banded.kind === 'share' ? audit.banded.total : 0).toBe(hatched)
    }), {numRuns: 40})
  })
})
