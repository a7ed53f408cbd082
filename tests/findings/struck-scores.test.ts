import {describe, expect, it} from 'vitest'
import {recordsAudit} from '../../src/findings/records-audit.ts'
import {struckScores} from '../../src/findings/struck-scores.ts'
import {study} from '../../src/findings/study.ts'
import {logbook, smallBook} from '../pages/small-logbook.ts'

describe('struckScores(book)', () => {
  it('lists as many as the audit counts, each with its reason', () => {
    const book = smallBook(), found = struckScores(book)
    expect(found.length).toBe(recordsAudit(book, study(book).census).counts.struckScores)
    expect(found.length).toBeGreaterThan(0)
    for (const {score, reason, chick} of found) {
      expect(score.struck).toBe(reason)
      expect(chick.looks.get(score.trait)?.counted).not.toBe(score)
    }
    expect(struckScores(logbook('2024-01-01'))).toEqual([])
  })
})
