import {describe, expect, it} from 'vitest'
import {study} from '../../src/findings/study.ts'
import {differenceTold} from '../../src/statistics/numbers-to-tell.ts'
import {logbook, smallBook, weekOld} from '../pages/small-logbook.ts'
import {chosenFlock, inbredFlock} from './vigour-book.ts'

describe('besideNextSeason(ladder, selection, spread)', () => {
  it('names the two steps that were not reared together, and what twenty of each tell', () => {
    const {besideNextSeason: found, spread} = study(smallBook()), row = spread.rows.find(each => each.step === 'F1' && each.sex === 'all')
    expect(found).toMatchObject({from: 'F1', to: 'F2', back: null, each: 20})
    expect(found?.told?.difference).toBeCloseTo((row?.spread.kind === 'spread' ? row.spread.sd : NaN) * differenceTold(20, 20), 9)
  })

  it('has nothing to ask where they were, or where nothing was chosen', () => {
    expect(study(chosenFlock(5, {h2: 0.5, choose: true})).besideNextSeason).toBeNull()
    for (const book of [logbook('2024-01-01'), weekOld()]) expect(study(book).besideNextSeason).toBeNull()
    expect(study(inbredFlock(3, {loss: 0, grams: 0})).besideNextSeason?.to).toBe('F3')
  })
})
