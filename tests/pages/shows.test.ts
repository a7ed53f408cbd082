import {describe, expect, it} from 'vitest'
import {study} from '../../src/findings/study.ts'
import {recordsByBird} from '../../src/pages/records-by-bird.ts'
import {sheetsOfBird} from '../../src/pages/score-sheets.ts'
import {showPages, type ShowView} from '../../src/pages/show.ts'
import {showsPage, type ShowsView} from '../../src/pages/shows.ts'
import {cancelledWords, quoted, resultWords} from '../../src/pages/show-words.ts'
import {entry, shownBook} from './shown-logbook.ts'
import {date, weekOld} from './small-logbook.ts'

describe('shows', () => {
  const view = showsPage(study(shownBook())).view as ShowsView

  it('counts the shows held and those officially cancelled apart', () => {
    expect(view.lead).toBe('One show, 2024 to 2025; one more was officially cancelled.')
    expect(view.shows[0]).toMatchObject({name: 'Winter show', cancelled: 'All gatherings of poultry were forbidden.'})
  })

  it('gives each bird a row and each year a column', () => {
    expect(view.results?.columns.map(column => column.head)).toEqual(['Bird', '2024'])
    expect(view.results?.rows).toEqual([
      [{text: '24-001', link: 'birds/24-001.html'}, 'cockerel, disqualified'],
      [{text: '24-003', link: 'birds/24-003.html'}, 'pullet, 1 of 7, best pullet'],
      [{text: '24-004', link: 'birds/24-004.html'}, 'pullet, 4 of 7'],
    ])
  })

  it('gathers what the judges said, under the clauses it is about', () => {
    expect(view.remarks).toMatchObject({words: '2 remarks fit no clause of the standard of the day.', clauses: []})
    expect(view.remarks?.unplaced.map(({bird, remark, judge}) => [bird.band, remark, judge])).toEqual([['24-003', 'Good <head>.', 'judge 1'], ['24-001', 'Comb not pea.', 'judge 2']])
  })

  it('says in words that there is none yet', () => {
    expect(showsPage(study(weekOld())).view).toMatchObject({lead: 'No show is on record yet.', shows: [], results: null, years: null, placings: null, points: [], remarks: null})
  })
})

describe('a show', () => {
  const [autumn, winter] = showPages(study(shownBook())).map(page => page.view as ShowView)

  it('lists its classes cock to pullet, the best placed first', () => {
    expect(autumn?.lead).toBe('Three birds shown in two classes.')
    expect(autumn?.classes.map(each => [each.name, each.entries.map(one => one.placing)])).toEqual([['Cockerel', ['Disqualified']], ['Pullet', ['1 of 7', '4 of 7']]])
  })

  it('keeps the draft a score was given under beside the score', () => {
    expect(autumn?.classes[1]?.entries[0]).toMatchObject({note: 'Best pullet. 93.5 points', draft: {words: 'judged by draft 1', link: 'standard/1.html'}})
  })

  it('gives the reason when it was cancelled', () => {
    expect(winter).toMatchObject({lead: 'Officially cancelled.', cancelled: 'All gatherings of poultry were forbidden.', classes: []})
    const order = {by: 'the veterinary office', on: date('2025-02-03')}
    expect(cancelledWords({cancelled: 'All gatherings were forbidden.', order})).toBe('All gatherings were forbidden. Ordered by the veterinary office, 3 February 2025.')
    expect(cancelledWords({cancelled: 'Rain', order: {by: null, on: null}})).toBe('Rain.')
  })
})

describe('a result in words', () => {
  const [one] = shownBook().birds
  if (!one) throw new Error('no bird in the book')
  it('has class, place, grade and award', () => {
    expect(resultWords(entry(one, {class: 'hen', place: 2, of: 7, shared: true, grade: 'very good', award: 'best hen'}))).toBe('hen, 2 of 7 (shared), very good, best hen')
    expect(resultWords(entry(one, {disqualified: true}))).toBe('disqualified')
  })
  it('puts a remark between marks, its own as single ones', () => expect(quoted('“Small and low” is three combs.')).toBe('‘Small and low’ is three combs.'))
})

describe('score sheets', () => {
  const plain = shownBook(), [first] = plain.shows, one = plain.birds.find(({id}) => id === '24-003')
  if (!first || !one) throw new Error('no show in the book')
  const headings = [{name: 'type', points: 28, of: 30}, {name: 'head-and-comb', points: 13.5, of: 15}]
  const book = {...plain, shows: [{...first, scores: [{bird: one, by: 'judge 1', draft: 1, headings, at: first.at}, {bird: one, by: null, draft: null, headings: [{name: 'type', points: 20, of: null}], at: first.at}]}]}
  const draft = {words: 'draft 1', link: 'standard/1.html'}

  it('print every heading on the page of the show, with judge and draft', () => {
    const [view] = showPages(study(book)).map(page => page.view as ShowView)
    expect(view?.sheets).toEqual([
      {title: '24-003', link: 'birds/24-003.html', band: true, by: 'Judged by judge 1.', draft, headings: [{name: 'Type', points: '28 of 30'}, {name: 'Head and comb', points: '13.5 of 15'}], sum: '41.5 of 45', struck: null},
      {title: '24-003', link: 'birds/24-003.html', band: true, by: 'Who judged is not written.', draft: null, headings: [{name: 'Type', points: '20'}], sum: null, struck: null},
    ])
  })

  it('print them on the bird’s page under the show', () => {
    expect(sheetsOfBird(recordsByBird(book)(one).sheets, recordsByBird(book)(one).ownSheets, book)[0]).toMatchObject({title: 'Autumn show', link: `shows/${first.id}.html`, band: false, sum: '41.5 of 45'})
  })
})
