import {describe, expect, it} from 'vitest'
import {showResults} from '../../src/findings/show-results.ts'
import type {Show, ShowEntry} from '../../src/logbook/book.ts'
import {at, bird, date, logbook} from '../pages/small-logbook.ts'

const [one, two] = [bird('1', 'female'), bird('2', 'male')]
const entry = (of: typeof one, more: Partial<ShowEntry> = {}): ShowEntry =>
  ({bird: of, class: 'pullet', judge: 'judge 1', place: null, shared: false, of: null, award: null, points: null, grade: null, remark: null, about: [], disqualified: false, draft: null, at, ...more})
const show = (id: string, on: string, entries: ShowEntry[], cancelled: string | null = null): Show => ({at, body: '', id, name: id, on: date(on), place: null, cancelled, entries})

describe('showResults(book)', () => {
  const found = showResults(logbook('2025-01-01', {shows: [
    show('late', '2024-10-01', [entry(one, {place: 1, remark: 'Good head.'}), entry(two, {class: null, judge: 'judge 2', disqualified: true})]),
    show('off', '2024-03', [], 'all gatherings were forbidden'), show('early', '2023-10-01', [entry(one, {remark: 'Narrow.'})]),
  ]}))

  it('takes shows oldest first, and cancelled ones apart', () => {
    expect(found.shows.map(each => each.show.id)).toEqual(['early', 'late'])
    expect(found.cancelled.map(each => each.id)).toEqual(['off'])
    expect(found.entries).toBe(3)
  })
  it('gives each bird its entries and each class its birds', () => {
    expect(found.birds.get(one)?.map(({show: where}) => where.id)).toEqual(['early', 'late'])
    expect(found.classes.map(each => [each.class, each.entries.length, each.birds, each.firsts, each.disqualified])).toEqual([['pullet', 2, 1, 1, 0], [null, 1, 1, 0, 1]])
  })
  it('names judges once, and remarks newest first', () => {
    expect(found.judges).toEqual(['judge 1', 'judge 2'])
    expect(found.remarks.map(({entry: {remark}}) => remark)).toEqual(['Good head.', 'Narrow.'])
  })
})
