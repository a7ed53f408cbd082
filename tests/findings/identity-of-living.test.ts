import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {identityOfLiving} from '../../src/findings/identity-of-living.ts'
import {study} from '../../src/findings/study.ts'
import {logbook, smallBook} from '../pages/small-logbook.ts'
import {drawnBook} from './drawn-book.ts'

const of = (book: Parameters<typeof study>[0]) => identityOfLiving(book, study(book).census)

describe('identityOfLiving(book, census)', () => {
  it('counts a small yard: of the living some without a band, and every parentage with two candidates somewhere', () => {
    const {banded, bothParents} = of(smallBook())
    expect(bothParents).toMatchObject({count: 0})
    expect(banded.kind === 'share' && bothParents.kind === 'share' ? banded.count - bothParents.total : null).toBe(0)
  })
  it('cannot say of nobody', () => {
    expect(of(logbook('2024-06-01'))).toMatchObject({banded: {kind: 'cannot-say'}, bothParents: {kind: 'cannot-say'}})
  })
  it('counts every living chick of the ladder once', () => {
    fc.assert(fc.property(drawnBook, book => {
      const {banded} = of(book), {alive} = study(book).census
      const tallied = book.hatches.flatMap(({tallies}) => tallies).reduce((sum, {left, count, step}) => sum + (left === null && step.kind !== 'strain' ? count : 0), 0)
      expect(banded.kind === 'share' ? banded.total : 0).toBe(alive.filter(({step}) => step.kind !== 'strain').length + tallied)
    }), {numRuns: 40})
  })
})
