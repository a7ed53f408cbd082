import {describe, expect, it} from 'vitest'
import {study} from '../../src/findings/study.ts'
import type {Logbook} from '../../src/logbook/book.ts'
import {logbook, smallBook, weekOld} from '../pages/small-logbook.ts'
import {inbredFlock} from './vigour-book.ts'

const verdicts = (book: Logbook) => study(book).depressionVerdicts
const ofChick = (book: Logbook) => verdicts(book).judged.filter(({effect}) => effect.term === 'chickF')

describe('depressionVerdicts(depression)', () => {
  it('calls harm what stays harm with the number of tests taken in', () => {
    const judged = ofChick(inbredFlock(3, {loss: -4, grams: -1500}))
    expect(judged.map(({verdict}) => verdict)).toEqual(['harm', 'harm', 'harm', 'harm'])
    for (const {corrected, effect, mostLost} of judged) {
      expect(corrected).toBeGreaterThanOrEqual(effect.p ?? 1)
      expect(mostLost).toBeGreaterThan(-effect.change)
    }
  })

  it('says where no harm is that none as great as others found is in the records, once there are eggs enough', () => {
    const judged = ofChick(inbredFlock(5, {loss: 0, grams: 0}, {seasons: 6, pairs: 9, eggs: 60}))
    expect(judged.find(({of}) => of.outcome === 'hatch of set')).toMatchObject({verdict: 'little', beside: 'less'})
    // nothing is published of life
    expect(judged.find(({of}) => of.outcome === 'livability')?.beside).toBeNull()
    expect(judged.every(({verdict}) => verdict !== 'harm')).toBe(true)
  })

  it('seldom calls harm where there is none', () => {
    const harm = Array.from({length: 12}, (_, seed) => ofChick(inbredFlock(seed + 40, {loss: 0, grams: 0}, {seasons: 3, pairs: 6, eggs: 12})).some(({verdict}) => verdict === 'harm')).filter(Boolean).length
    expect(harm).toBeLessThanOrEqual(2)
  })

  it('puts shares as they are and measures as parts of their mean', () => {
    for (const {of, effect, relative} of ofChick(inbredFlock(3, {loss: -4, grams: -1500}))) {
      expect(relative?.change).toBeCloseTo(of.count === null ? effect.change / (of.mean ?? NaN) : effect.change, 12)
      if (of.outcome === 'weight') expect(relative?.published?.low).toBeCloseTo(-0.008, 12)
    }
  })

  it('asks for fewer eggs side by side than along the ladder, and for more the smaller the records', () => {
    const few = study(inbredFlock(5, {loss: 0, grams: 0}, {seasons: 3, pairs: 6, eggs: 12})), many = study(inbredFlock(5, {loss: 0, grams: 0}, {seasons: 6, pairs: 9, eggs: 60}))
    const times = [few, many].map(({depression: [, set], depressionVerdicts: {toTell}}) => (set ? toTell(set)?.times ?? NaN : NaN))
    expect(times[0]).toBeGreaterThan(1)
    expect(times[1]).toBeLessThan(1)
    // by hand, shares of 80 and 69 %: some 250
    const [, set] = many.depression, told = set && many.depressionVerdicts.toTell(set)
    expect(told?.sideBySide).toBeGreaterThan(200)
    expect(told?.sideBySide).toBeLessThan(300)
  })

  it('has nothing to judge in books of nothing, a week, three birds', () => {
    expect(verdicts(logbook('2024-01-01')).judged).toEqual([])
    expect(verdicts(weekOld()).judged).toEqual([])
    const {judged, toTell} = verdicts(smallBook())
    expect(judged).toEqual([])
    for (const of of study(smallBook()).depression) expect(toTell(of)?.times ?? null).toBeNull()
  })
})
