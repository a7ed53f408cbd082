import {describe, expect, it} from 'vitest'
import {remarksByClause} from '../../src/findings/remarks-by-clause.ts'
import {showResults} from '../../src/findings/show-results.ts'
import {remarksView} from '../../src/pages/remarks-view.ts'
import {entry, show, shownBook} from './shown-logbook.ts'

const plain = shownBook(), one = plain.birds.find(({id}) => id === '24-001')
if (!one) throw new Error('no bird in the book')
const view = (...remarks: (readonly [on: string, remark: string, ...about: string[]])[]) => {
  const drafts = plain.drafts.map(draft => ({...draft, sections: draft.sections.map(section => ({...section, clauses: section.clauses.map(clause => ({...clause, sex: section.kind === 'male' || section.kind === 'female' ? section.kind : null}))}))}))
  const book = {...plain, drafts, shows: remarks.map(([on, remark, ...about]) => show(on, on, on, {entries: [entry(one, {remark, about, judge: 'judge 1'})]}))}
  return remarksView(remarksByClause(book, showResults(book)), book)
}

describe('remarksView(remarks, book)', () => {
  it('parts what was said before a clause was changed, and marks what the keeper placed', () => {
    const found = view(['2024-12-01', 'Tail high.'], ['2025-11-01', 'He squirrels.', 'general-characteristics-male/tail'], ['2025-11-08', '“Level” tail.'])
    expect(found?.clauses.map(({name, link, note}) => [name, link, note])).toEqual([['Tail, male', 'standard.html#general-characteristics-male-tail', null]])
    expect(found?.clauses[0]?.groups.map(({head, remarks}) => [head, remarks.map(({remark, byUs, when}) => [remark, byUs, when])])).toEqual([
      [null, [['‘Level’ tail.', false, {words: '2025', link: 'shows/2025-11-08.html'}], ['He squirrels.', true, {words: '2025', link: 'shows/2025-11-01.html'}]]],
      ['Before it was changed in draft 2', [['Tail high.', false, {words: '2024', link: 'shows/2024-12-01.html'}]]],
    ])
    expect(found?.words).toBe('Of 3 remarks, 3 were put under clauses: 2 by the words in them; 1 by us, and is marked so.')
  })
  it('keeps a clause that the standard no longer has, with where it stood', () => {
    expect(view(['2024-12-01', 'No crest.'])?.clauses[0]).toMatchObject({name: 'Crest', link: 'standard/1.html#general-characteristics-male-crest', note: 'no longer in draft 2', groups: [{head: 'Before it was dropped in draft 2'}]})
  })
  it('names a weight and the egg', () => {
    const drafts = plain.drafts.map(draft => ({...draft, weights: [{class: 'cock', grams: 3300, high: null}], egg: '60 g'}))
    const book = {...plain, drafts, shows: [show('x', 'x', '2025-11-01', {entries: [entry(one, {remark: 'Light, and from small eggs.', about: ['weights/cock', 'egg']})]})]}
    expect(remarksView(remarksByClause(book, showResults(book)), book)?.clauses.map(({name}) => name)).toEqual(['Weight, cock', 'Egg'])
  })
  it('has the newest twenty of a clause, and counts the others', () => {
    const found = view(...Array.from({length: 23}, (_, place): readonly [string, string] => [`2025-11-${String(place + 1).padStart(2, '0')}`, `Tail ${place}.`]))
    const remarks = found?.clauses[0]?.groups.flatMap(group => group.remarks) ?? []
    expect([remarks.length, remarks[0]?.remark, found?.clauses[0]?.more]).toEqual([20, 'Tail 22.', '3 earlier remarks on the pages of the shows.'])
    expect(view(['2025-11-01', 'Tail.'])?.clauses[0]?.more).toBeNull()
  })
  it('is nothing where nobody said anything', () => expect(view()).toBeNull())
})
