import {describe, expect, it} from 'vitest'
import {study} from '../../src/findings/study.ts'
import type {Logbook} from '../../src/logbook/book.ts'
import {foundersPage, type FoundersView} from '../../src/pages/founders.ts'
import {donorBook, twoPens} from '../findings/breeding-book.ts'
import {bird, logbook, smallBook, weekOld} from './small-logbook.ts'

const of = (book: Logbook): FoundersView => foundersPage(study(book)).view as FoundersView
const bands = (view: FoundersView) => view.figure?.table.rows.map(([cell]) => (typeof cell === 'object' ? cell.text : cell))

describe('foundersPage(findings)', () => {
  it('gives each founder’s share, the greatest first, and those with nothing left', () => {
    // five birds bred from: three of H-1 × B-1, two of H-2 × B-2; H-3 × B-3 have a cockerel that is not
    const view = of(twoPens())
    expect(view.lead).toBe('Four founders stand behind the 5 birds of the new breed that are bred from.')
    expect(bands(view)).toEqual(['B-1', 'H-1', 'B-2', 'H-2'])
    expect(view.figure?.table.rows[0]?.slice(1)).toEqual(['Fell Buff', '30.0', '2', '2'])
    expect(view.gone?.birds.map(({text}) => text).sort()).toEqual(['B-3', 'H-3'])
    expect(view.gone?.words).toBe('Nothing is left of two founders among these birds. Two of them have living descendants that are not bred from, so they could come back.')
    expect(view.shareWords[0]).toMatch(/^B-1 and H-1 have each left most: 30\.0%\. Half of all genes come from two founders\./)
    // fe = 1 / (2 · 0.3² + 2 · 0.2²)
    expect(view.stats.map(({title, value}) => [title, value])[0]).toEqual(['Effective founders', '3.8'])
    expect(view.oneSex).toBe('Only males descend from B-3 and H-3.')
  })

  it('says which line is ending and what to keep', () => {
    const view = of(twoPens())
    expect(view.ending.map(({band, words}) => [band, words])).toEqual([
      ['B-3', 'Hen, no living daughter; one living son. Keep a pullet from her.'],
    ])
  })

  it('counts the copies of the donor’s gene and says what is assumed', () => {
    const view = of({...donorBook(), pens: []})
    expect(view.genes.map(({trait}) => trait)).toEqual(['Comb'])
    expect(view.genes[0]?.words.join(' ')).toMatch(/^Two birds of Fell Buff had four crossed chicks .* stands on four copies/)
    expect(view.genes[0]?.words.at(-1)).toMatch(/^Assumed: one copy shows/)
  })

  it('marks those nearly lost, and says no false word of founders that nobody states to be kin', () => {
    const view = of(twoPens())
    expect(view.statWords[0]).toMatch(/^No kinship of the founders is stated/)
    expect(view.assumed).toBeNull()
    const found = study(twoPens()), nearly = found.founders
    if (!nearly) throw new Error('no founders')
    const words = foundersPage({...found, founders: {...nearly, founders: nearly.founders.map((each, place) => (place === 0 ? {...each, share: 0.016} : each)), unknown: {count: 2, share: 0.1}}}).view as FoundersView
    expect(words.shareWords.join(' ')).toContain('† Nearly lost, with under 2% of the genes or not two living descendants: B-1.')
    expect(words.figure?.table.rows[0]?.[2]).toBe('† 1.6')
    expect(words.statWords[1]).toContain('Each of the 2 parents outside the book counts')
  })

  it('says in words what cannot be said yet', () => {
    expect(of(logbook('2024-01-01')).wanting).toBe('No bird is in the book yet.')
    expect(of(weekOld()).wanting).toMatch(/^Four founders on record and no hatch so far/)
    for (const book of [logbook('2024-01-01'), weekOld(), smallBook(), twoPens(), donorBook(), logbook('2025-01-01', {birds: [bird('1', 'male', {strain: null})]})]) {
      expect(JSON.stringify(of(book))).not.toMatch(/NaN|undefined|Infinity/)
    }
  })
})
