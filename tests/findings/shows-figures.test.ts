import {describe, expect, it} from 'vitest'
import {showsTable} from '../../src/findings/shows-figures.ts'
import {study} from '../../src/findings/study.ts'
import type {Logbook} from '../../src/logbook/book.ts'
import {SHOWS_COLUMN_WORDS} from '../../src/pages/shows-columns.ts'
import {entry, keeper, show, shownBook} from '../pages/shown-logbook.ts'
import {date, looks, score, trait} from '../pages/small-logbook.ts'

const file = (name: string) => ({file: name, path: []})
const wanted = {kind: 'at-least', value: 7} as const
const type = trait('type', 'Type', {kind: 'graded', scale: {from: 1, to: 10}, wanted: {male: wanted, female: wanted}})

function book(): Logbook {
  const plain = shownBook(), [one, two] = plain.birds.filter(({id}) => id === '24-003' || id === '24-004')
  if (!one || !two) throw new Error('no birds in the book')
  const marked = [one, two].map((bird, place) => Object.assign(bird, {looks: looks(score(type, 9 - place, {on: date('2024-08-01'), at: {file: 'scores/a.csv', line: place + 2, column: 1, width: 1}}))}))
  const headings = [{name: 'Type and carriage', points: 50, of: 60}]
  return {
    ...plain, traits: [...plain.traits, type], tellableFiles: new Set(['shows/x.md', 'shows/off.md', 'scores/a.csv']), birds: plain.birds,
    shows: [
      show('x', 'X', '2024-12-01', {at: file('shows/x.md'), scores: [{bird: one, by: 'judge 1', draft: 1, headings, at: file('shows/x.md')}, {bird: one, by: keeper('inga', 'Inga'), draft: 1, headings: [{name: 'Type and carriage', points: 53, of: 60}], at: file('shows/x.md')}], entries: marked.map((bird, place) =>
        entry(bird, {class: 'pullet', judge: 'judge 1', place: place + 1, of: 5, shared: place === 1, award: place === 0 ? 'best pullet' : null, grade: 'good', points: 93, draft: 1, remark: 'Comb low.', at: file('shows/x.md')}))}),
      show('off', 'Off', '2025-02-08', {at: file('shows/off.md'), cancelled: 'forbidden'}),
    ],
  }
}

describe('showsTable(findings)', () => {
  const {columns, rows} = showsTable(study(book())), names = columns.map(({name}) => name)
  const read = rows.map(row => Object.fromEntries(row.flatMap((cell, place) => (cell === null ? [] : [[names[place] ?? '', cell]]))))

  it('has a row an entry, with where it stands and the clauses of its remark', () => {
    expect(read[0]).toEqual({
      what: 'entry', show: 'x', date: '2024-12-01', class: 'pullet', bird: '24-003', place: 1, of: 5, relative_place: 1, award: 'best pullet', points: 93, grade: 'good', judge: 'judge 1', draft: 1, remark: 'Comb low.',
      clauses: 'general-characteristics-male/comb', clauses_by: 'words', birds: '24-003', records: 'shows/x.md',
    })
    expect(read[1]).toMatchObject({bird: '24-004', shared: 'yes', relative_place: 0.75})
  })
  it('keeps a cancelled show, and adds what judges and we gave', () => {
    expect(read.find(({what}) => what === 'cancelled')).toEqual({what: 'cancelled', show: 'off', date: '2025-02-08', remark: 'forbidden', records: 'shows/off.md'})
    expect(read.filter(({what}) => what === 'order').map(({judge, mark, value, p, least_p, pairs, birds, records}) => [judge, mark, value, p, least_p, pairs, birds, records]))
      .toEqual(['all', 'judge 1'].map(judge => [judge, 'type', 1, 1, 1, 1, '24-003 24-004', 'scores/a.csv:2 scores/a.csv:3 shows/x.md']))
    expect(read.find(({what}) => what === 'points')).toMatchObject({judge: 'judge 1', against: 'Inga', mark: 'Type and carriage', of: 60, value: -3, held: 1, records: 'shows/x.md'})
  })
  it('explains every column, and no other', () => expect(Object.keys(SHOWS_COLUMN_WORDS)).toEqual(names))
  it('names no file that may not be named', () => {
    const hidden = showsTable(study({...book(), tellableFiles: new Set()}))
    expect(hidden.rows.map(row => row[names.indexOf('records')])).toEqual(hidden.rows.map(() => null))
  })
})
