import {describe, expect, it} from 'vitest'
import {showResults} from '../../src/findings/show-results.ts'
import {showYears} from '../../src/findings/show-years.ts'
import type {Show} from '../../src/logbook/book.ts'
import {showYearsView} from '../../src/pages/show-years.ts'
import {entry, show} from './shown-logbook.ts'
import {bird, logbook} from './small-logbook.ts'

const hen = bird('1', 'female')
const view = (...shows: Show[]) => showYearsView(showYears(showResults(logbook('2026-01-01', {shows}))))
const hens = (...places: number[]) => places.map(place => entry(hen, {class: 'hen', place, of: 5}))

describe('showYearsView(years)', () => {
  it('counts by year, newest first, a cancelled year among them, and no column that is empty', () => {
    const found = view(show('a', 'A', '2023-09-01', {entries: hens(1, 2)}), show('b', 'B', '2024-09-01', {cancelled: 'forbidden'}), show('c', 'C', '2025-09-01', {entries: hens(3)}))
    expect(found?.years.columns.map(({head}) => head)).toEqual(['Year', 'Shows', 'Entries', 'Birds', 'Firsts'])
    expect(found?.years.rows).toEqual([['2025', '1', '1', '1', '–'], ['2024', '1 cancelled', '–', '–', '–'], ['2023', '1', '2', '1', '1']])
  })
  it('has points and grades where judges give them', () => {
    const found = view(show('a', 'A', '2023-09-01', {entries: [entry(hen, {points: 93}), entry(hen, {points: 95.5, grade: 'very good'}), entry(hen, {grade: 'good'})]}), show('b', 'B', '2024-09-01', {entries: [entry(hen, {points: 94})]}))
    expect(found?.years.columns.slice(-2)).toEqual([{head: 'Points', number: true}, {head: 'Grades'}])
    expect(found?.years.rows.map(row => row.slice(-2))).toEqual([['94', '–'], ['93 to 95.5', '1 very good, 1 good']])
  })
  it('gives a mean with its number, and says where there are only a few', () => {
    const found = view(show('a', 'A', '2023-09-01', {entries: [...hens(1, 2, 3, 4, 5), entry(hen, {class: 'cock', place: 1, of: 2})]}), show('c', 'C', '2025-09-01', {entries: hens(3)}))
    expect(found?.classes?.columns.map(({head}) => head)).toEqual(['Class', '2023', '2025', 'All years'])
    expect(found?.classes?.rows).toEqual([['Hen', '0.50 of 5', '1 only', '0.50 of 6'], ['Cock', '1 only', '–', '1 only'], ['All classes', '0.58 of 6', '1 only', '0.57 of 7']])
  })
  it('has one column for one year, and nothing where nothing was placed or shown', () => {
    expect(view(show('a', 'A', '2023-09-01', {entries: hens(1, 1, 2, 3, 5)}))?.classes).toEqual({columns: [{head: 'Class'}, {head: '2023', number: true}], rows: [['Hen', '0.65 of 5']]})
    expect(view(show('a', 'A', '2023-09-01', {entries: [entry(hen)]}))?.classes).toBeNull()
    expect(view()).toBeNull()
  })
})
