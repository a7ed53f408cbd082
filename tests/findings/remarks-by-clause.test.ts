import {describe, expect, it} from 'vitest'
import {remarksByClause} from '../../src/findings/remarks-by-clause.ts'
import {showResults} from '../../src/findings/show-results.ts'
import type {Draft, ShowEntry} from '../../src/logbook/book.ts'
import {plainClause, plainDraft, plainSection} from '../paper-parts.ts'
import {entry, show} from '../pages/shown-logbook.ts'
import {bird, logbook} from '../pages/small-logbook.ts'

const cock = bird('1', 'male')
const clause = (id: string, title: string, text: string) => plainClause(id, title, text, {sex: 'male'})
const draft = (number: number, on: string, clauses: readonly ReturnType<typeof clause>[], more: Partial<Draft> = {}) => plainDraft(number, on, {sections: [plainSection('male', clauses, {title: 'Male', kind: 'male'})], ...more})
const drafts = [
  draft(1, '2023-01-01', [clause('male/tail', 'Tail', 'Well up.'), clause('male/comb', 'Comb', 'Low.'), clause('male/crest', 'Crest', 'None.')], {weights: [{class: 'cock', grams: 3300, high: null}]}),
  draft(2, '2024-01-01', [clause('male/tail', 'Tail', 'Well up.'), clause('male/comb', 'Comb', 'Three low ridges.')], {weights: [{class: 'cock', grams: 3200, high: null}]}),
  draft(3, '2025-01-01', [clause('male/tail', 'Tail', 'At 45 degrees.'), clause('male/comb', 'Comb', '*Three low ridges.*')], {weights: [{class: 'cock', grams: 3200, high: null}]}),
]
const said = (remark: string | null, more: Partial<ShowEntry> = {}): ShowEntry => entry(cock, {remark, ...more})
const gathered = (shows: readonly (readonly [on: string, ...entries: ShowEntry[]])[], all: readonly Draft[] = drafts) => {
  const book = logbook('2026-01-01', {drafts: all, shows: shows.map(([on, ...entries]) => show(on, on, on, {entries}))})
  return remarksByClause(book, showResults(book))
}

describe('remarksByClause(book, results)', () => {
  const found = gathered([
    ['2023-09-01', said('Tail high, comb coarse.', {draft: 1}), said('No crest, good.', {draft: 1}), said(null)],
    ['2024-09-01', said('Tail high.', {draft: 2}), said('Light.', {draft: 1, about: ['weights/cock']}), said('A useful bird.', {draft: 2})],
    ['2025-09-01', said('Sheds water.', {draft: 3, about: ['male/comb', 'male/tail']})],
  ])

  it('puts each under its clauses, in the order of the latest draft, newest first; what is gone last', () => {
    expect(found.clauses.map(({id, stands, draft: {number}, remarks}) => [id, stands, number, remarks.map(({entry: {remark}}) => remark)])).toEqual([
      ['male/tail', true, 3, ['Sheds water.', 'Tail high.', 'Tail high, comb coarse.']], ['male/comb', true, 3, ['Sheds water.', 'Tail high, comb coarse.']],
      ['weights/cock', true, 3, ['Light.']], ['male/crest', false, 1, ['No crest, good.']],
    ])
  })
  it('says who put it there, and names apart what fits none', () => {
    expect(found.clauses[0]?.remarks.map(({by}) => by)).toEqual(['keeper', 'words', 'words'])
    expect([found.byKeeper, found.byWords, found.unplaced.map(({entry: {remark}}) => remark)]).toEqual([2, 3, ['A useful bird.']])
  })
  it('says in which draft the clause was changed or dropped after the remark; marks of writing are no change', () => {
    const since = (id: string) => found.clauses.find(each => each.id === id)?.remarks.map(each => (each.since ? `${each.since.is} in ${each.since.draft.number}` : null))
    expect([since('male/tail'), since('male/comb'), since('weights/cock'), since('male/crest')]).toEqual([[null, 'changed in 3', 'changed in 3'], [null, 'changed in 2'], ['changed in 2'], ['dropped in 2']])
  })
  it('takes the draft in force on the day where none is named, and follows a clause under a new name', () => {
    const renamed = draft(4, '2025-06-01', [clause('male/tail-and-sickles', 'Tail and sickles', 'At 45 degrees above the level of the back.')])
    const moved = [...drafts.slice(0, 2), {...renamed, number: 3, sections: [plainSection('male', [clause('male/carriage-of-tail', 'Carriage of tail', 'Well up, and so on.')], {kind: 'male'})]}]
    expect(gathered([['2024-05-01', said('Tail high.')]], [...drafts.slice(0, 2)]).clauses.map(({id, draft: {number}}) => [id, number])).toEqual([['male/tail', 2]])
    expect(gathered([['2024-05-01', said('Tail high.')]], moved).clauses[0]).toMatchObject({id: 'male/tail', stands: false, remarks: [{since: {is: 'dropped'}}]})
    const variety = draft(3, '2025-01-01', [], {sections: [plainSection('cocks', [clause('cocks/tail', 'Tail', 'Well up.')], {title: 'Cocks', kind: 'male'})]})
    expect(gathered([['2024-05-01', said('Tail high.')]], [...drafts.slice(0, 2), variety]).clauses[0]).toMatchObject({id: 'cocks/tail', stands: true, remarks: [{since: null}]})
  })
  it('has no clause where there is no draft, and takes words where a clause named is of no draft left', () => {
    expect(gathered([['2022-05-01', said('Tail high.')]])).toMatchObject({clauses: [], unplaced: [{}], byWords: 0})
    expect(gathered([['2024-05-01', said('Tail high.', {about: ['male/crest']})]]).clauses.map(({id, remarks: [first]}) => [id, first?.by])).toEqual([['male/tail', 'words']])
  })
})
