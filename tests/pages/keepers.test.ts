import {describe, expect, it} from 'vitest'
import {diaryEntryPages} from '../../src/pages/diary-entry.ts'
import {diaryPage} from '../../src/pages/diary.ts'
import {keepersPage, type KeepersView} from '../../src/pages/keepers.ts'
import {strainPages} from '../../src/pages/strain.ts'
import {strainsPage} from '../../src/pages/strains.ts'
import {keeper, shownBook} from './shown-logbook.ts'
import {weekOld} from './small-logbook.ts'

describe('keepers', () => {
  it('names those who agreed and leaves the others a letter, without their words', () => {
    const book = shownBook({keepers: [keeper('inga', 'Inga', {region: 'the outer isles'}), keeper('keeper-a', 'keeper A', {consents: false, body: 'Lives at the red gate.'})]})
    const view = keepersPage(book).view as KeepersView
    expect(view.lead).toBe('Two keepers. One has agreed to be named; the others stand as letters.')
    expect(view.keepers.map(({name, words, body}) => ({name, words, body}))).toEqual([
      {name: 'Inga', words: ['The outer isles.'], body: ''}, {name: 'Keeper A', words: ['Not named here: no consent is on record.'], body: ''},
    ])
  })
})

describe('the diary', () => {
  it('is told newest first, each entry with its neighbours', () => {
    expect(diaryPage(shownBook()).view).toMatchObject({lead: 'Two entries, kept since 2 November 2024.', years: [{year: '2025'}, {year: '2024'}]})
    const [first, second] = diaryEntryPages(shownBook())
    expect(first?.view).toMatchObject({title: 'The first draft', before: null, after: {title: 'Six chicks', link: 'diary/2025-03-22-chicks.html'}})
    expect(second?.view).toMatchObject({before: {title: 'The first draft'}, after: null})
  })

  it('says in words that nothing is written yet', () => {
    expect(diaryPage(weekOld()).view).toMatchObject({lead: 'Nothing has been written in the diary yet.', years: []})
  })
})

describe('strains', () => {
  it('put the one crossed back to first, with its birds', () => {
    expect(strainsPage(weekOld()).view).toMatchObject({strains: [
      {name: 'Holm White', role: 'The strain crossed back to', words: 'Two birds in the book.'}, {name: 'Fell Buff', role: 'A donor, taken for what it gives'},
    ]})
  })
  it('say what is taken for granted where no kinship is stated', () => {
    expect(strainPages(weekOld())[0]?.view).toMatchObject({name: 'Holm White', trueFor: null, kin: expect.stringContaining('both are taken as 0') as string})
  })
})
