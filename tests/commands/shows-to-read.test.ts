import {describe, expect, it} from 'vitest'
import {showsToRead} from '../../src/commands/shows-to-read.ts'
import {study} from '../../src/findings/study.ts'
import {shownBook} from '../pages/shown-logbook.ts'
import {weekOld} from '../pages/small-logbook.ts'

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
  it('is empty of a book without shows', () => expect(showsToRead(study(weekOld()))).toMatchObject({table: {rows: []}, beneath: ''}))
})
