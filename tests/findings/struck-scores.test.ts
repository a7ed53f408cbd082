import {describe, expect, it} from 'vitest'
import {struckScores} from '../../src/findings/struck-scores.ts'
import {logbook, smallBook} from '../pages/small-logbook.ts'

describe('struckScores(book)', () => {
  it('lists the one of the small yard, with its reason', () => {
    const book = smallBook(), found = struckScores(book)
    expect(found).toHaveLength(1)
    for (const {score, reason, chick} of found) {
      expect(score.struck).toBe(reason)
      expect(chick.looks.get(score.trait)?.counted).not.toBe(score)
    }
    expect(struckScores(logbook('2024-01-01'))).toEqual([])
  })
})
