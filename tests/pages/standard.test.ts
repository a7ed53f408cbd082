import {describe, expect, it} from 'vitest'
import {draftHistoryPage, type DraftHistory} from '../../src/pages/draft-history.ts'
import {draftPages} from '../../src/pages/draft.ts'
import {standardPage, type StandardPage} from '../../src/pages/standard.ts'
import {shownBook} from './shown-logbook.ts'
import {weekOld} from './small-logbook.ts'

describe('the standard', () => {
  const page = standardPage(shownBook())
  const standard = (page.view as StandardPage).standard!

  it('stands at standard.html with its number and date, and says what it replaces', () => {
    expect(page).toMatchObject({path: 'standard.html', look: 'standard', title: 'Proposed standard, draft 2'})
    expect(standard.lead).toBe('Proposed breed standard, 14 October 2025.')
    expect(standard.replaces).toBe('Replaces draft 1 of 2 November 2024.')
  })

  it('puts its title, origin and brief facts first and the faults last', () => {
    expect(standard.title).toBe('The Skerry Fowl')
    expect(standard.parts.map(({section, title}) => section?.title ?? title)).toEqual(
      ['Origin and purpose', 'General characteristics, male', 'General characteristics, female', 'Weights', 'Scale of points', 'Faults'])
    expect(standard.brief).toEqual([{id: 'egg', term: 'Egg', words: 'Tinted, 50 g or more', changed: false}])
  })

  it('bars the clauses that changed and no others', () => {
    const clauses = standard.parts.flatMap(({section}) => section?.clauses ?? []), of = (title: string) => standard.parts.find(part => part.title === title)
    expect(clauses.filter(clause => clause.changed).map(clause => clause.id)).toEqual(
      ['general-characteristics-male-tail', 'general-characteristics-male-comb', 'faults-serious'])
    expect(of('Weights')?.weights).toEqual([
      {id: 'weights-cock', name: 'Cock', amounts: ['3.2 kg', '7 lb 1 oz'], note: '', changed: false},
      {id: 'weights-pullet', name: 'Pullet', amounts: ['2.1 kg', '4 lb 10 oz'], note: '', changed: true},
    ])
    expect(of('Scale of points')?.sum).toBe(100)
  })

  it('points every change at the clause it is about, and none at a clause that is gone', () => {
    expect(standard.changes.map(change => change.anchor)).toEqual(
      ['general-characteristics-male-tail', 'general-characteristics-male-comb', 'faults-serious', null, 'weights-pullet'])
  })

  it('keeps the earlier drafts, each saying what took its place', () => {
    const [first] = draftPages(shownBook())
    expect(first).toMatchObject({path: 'standard/1.html'})
    expect((first!.view as StandardPage).standard).toMatchObject({
      replacedBy: {words: 'draft 2 of 14 October 2025', link: 'standard.html'}, changesNote: 'This is the first draft.',
    })
  })

  it('tells the whole history newest first', () => {
    const view = draftHistoryPage(shownBook())!.view as DraftHistory
    expect(view.lead).toBe('Two drafts, 2 November 2024 to 14 October 2025.')
    expect(view.drafts.map(each => each.number)).toEqual([2, 1])
  })

  it('says in words that there is none yet', () => {
    expect(standardPage(weekOld())).toMatchObject({path: 'standard.html', view: {standard: null}})
    expect(draftPages(weekOld())).toEqual([])
    expect(draftHistoryPage(weekOld())).toBeNull()
  })
})
