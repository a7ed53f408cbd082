import {describe, expect, it} from 'vitest'
import {nextSeason, yearsInOrder} from '../../src/findings/next-season.ts'
import {date, hatch, project} from '../pages/small-logbook.ts'

const next = (asOf: string, seasons: readonly number[]) => nextSeason({asOf: date(asOf).first, project, hatches: []}, seasons)

describe('nextSeason(book, seasons)', () => {
  it('is this year’s while nothing has hatched in it', () => expect([next('2025-03-01', [2024]), next('2025-03-01', [2024, 2025]), next('2025-03-01', [])]).toEqual([2025, 2026, 2025]))
  // by hand: 21 days from 10 December are the 31st
  it('is the next where eggs set today would hatch in the new year', () => expect([next('2025-12-10', [2024]), next('2025-12-11', [2024])]).toEqual([2025, 2026]))
  it('is this year’s where eggs that are set are due in it, and reads the seasons of the book where none are given', () => {
    const book = (on: string | null) => ({asOf: date('2025-12-15').first, project, hatches: [hatch('1', {set: date('2025-12-05'), on: on === null ? null : date(on), hatched: on === null ? null : 3})]})
    expect([nextSeason(book(null), [2024]), nextSeason(book('2025-12-14'), [2024]), nextSeason(book('2025-12-14'))]).toEqual([2025, 2026, 2026])
  })
})

describe('yearsInOrder(years)', () => it('has each once, ascending', () => expect(yearsInOrder([2024, 2021, 2024])).toEqual([2021, 2024])))
