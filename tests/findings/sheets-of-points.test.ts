import {describe, expect, it} from 'vitest'
import {sheetsOfPoints} from '../../src/findings/sheets-of-points.ts'
import type {ShowScore} from '../../src/logbook/book.ts'
import {plainDraft} from '../paper-parts.ts'
import {keeper, show} from '../pages/shown-logbook.ts'
import {at, bird, date, logbook} from '../pages/small-logbook.ts'

const hen = bird('1', 'female'), inga = keeper('inga', 'Inga')
const drafts = [plainDraft(1, '2024-01-01', {points: [{name: 'Type', points: 60}, {name: 'Colour', points: 40}]}), plainDraft(2, '2025-01-01', {points: [{name: 'Type', points: 50}, {name: 'Colour', points: 50}]})]
const score = (by: ShowScore['by'], type: number, colour: number | null, draft: number | null = null): ShowScore =>
  ({bird: hen, by, draft, at, headings: [{name: 'Type', points: type, of: null}, ...(colour === null ? [] : [{name: 'Colour', points: colour, of: null}])]})

describe('sheetsOfPoints(book)', () => {
  const found = sheetsOfPoints(logbook('2026-01-01', {
    drafts, shows: [show('b', 'b', '2025-09-01', {scores: [score('judge 1', 40, 45), score(null, 1, 1)]}), show('a', 'a', '2024-09-01', {scores: [score('judge 2', 45, 33, 2), score(inga, 30, null)]}), show('off', 'off', '2025-01-01', {cancelled: 'forbidden', scores: [score('judge 1', 1, 1)]})],
    sheets: [{...score(inga, 45, 30), on: date('2024-08-01'), struck: null}, {...score(inga, 1, 1), on: date('2024-08-02'), struck: 'misread'}],
  }))
  it('has the sheets of judges and of keepers apart, oldest first, without cancelled shows and struck sheets', () => {
    expect(found.judges.map(({score: {by}, show: at}) => [by, at?.id])).toEqual([['judge 2', 'a'], ['judge 1', 'b']])
    expect(found.keepers.map(({show: at, on}) => [at?.id ?? 'home', on?.text])).toEqual([['home', '2024-08-01'], ['a', '2024-09-01']])
    expect(found.unsigned).toBe(1)
  })
  it('takes full points of the draft named, else of the one in force, and the share of a whole sheet', () => {
    // 45 + 33 of 100 by draft 2 that it names; 40 + 45 by draft 2 of its day; 45 + 30 by draft 1
    expect(found.judges.map(({draft, share}) => [draft, share])).toEqual([[2, 0.78], [2, 0.85]])
    expect(found.keepers.map(({draft, share}) => [draft, share])).toEqual([[1, 0.75], [1, null]])
  })
})
