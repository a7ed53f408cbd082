import {describe, expect, it} from 'vitest'
import {showsToRead} from '../../src/commands/shows-to-read.ts'
import {study} from '../../src/findings/study.ts'
import {keeper, shownBook} from '../pages/shown-logbook.ts'
import {date, weekOld} from '../pages/small-logbook.ts'

describe('figures shows, to read', () => {
  const {above, table, beneath} = showsToRead(study(shownBook()))
  it('has the entries by year, show and class, each said once', () => {
    expect(above).toBe('')
    expect(table.rows).toEqual([
      ['2024', 'Autumn show', 'cockerel', '24-001', 'disqualified', '', 'judge 2'],
      ['', '', 'pullet', '24-003', '1 of 7', 'best pullet, 93.5 points', 'judge 1'],
      ['', '', '', '24-004', '4 of 7', '', 'judge 1'],
    ])
  })
  it('says beneath what the years were, and what was cancelled', () => {
    expect(beneath).toContain('2024: 3 entries, 1 first, 1 award.')
    expect(beneath).toContain('Winter show, 8 February 2025, was officially cancelled: All gatherings of poultry were forbidden.')
    expect(beneath).toMatch(/with --format csv or json\.\n$/)
  })
  it('keeps a name with a full stop whole', () => {
    const plain = shownBook(), [one] = plain.birds, orr = keeper('orr', 'Mr. Orr'), headings = [{name: 'Type', points: 50, of: 60}], at = {file: 'shows/y.md', path: []}
    if (!one) throw new Error('no birds in the book')
    const sheet = {bird: one, by: orr, draft: 1, headings, at, on: date('2024-10-01'), struck: null}
    const book = {...plain, sheets: [sheet, {...sheet, by: keeper('inga', 'Inga')}]}
    expect(showsToRead(study(book)).beneath).toContain('\nInga and Mr. Orr: 1 bird scored by both under one draft, too few for a mean.')
  })
  it('is empty of a book without shows', () => expect(showsToRead(study(weekOld()))).toMatchObject({table: {rows: []}, beneath: ''}))
})
