import {describe, expect, it} from 'vitest'
import {changesInWords} from '../../src/pages/standard-changes.ts'
import type {Clause, Draft} from '../../src/logbook/book.ts'
import {comb} from './small-logbook.ts'
import {shownBook} from './shown-logbook.ts'

const book = shownBook(), [first, second] = book.drafts as [Draft, Draft]

describe('changesInWords(from, to)', () => {
  const changes = changesInWords(book, first, second)
  const of = (id: string) => changes.find(change => change.id === id)

  it('shows only the sentences that differ', () => {
    expect(of('general-characteristics-male/tail')).toMatchObject({was: 'Carried well up.', now: 'Carried at 45 degrees.', why: null})
  })

  it('tells clauses of one name apart by their place, and leaves a name alone that stands once', () => {
    expect(of('general-characteristics-male/tail')?.what).toBe('Tail, male')
    expect(of('general-characteristics-male/comb')?.what).toBe('Comb')
  })

  it('gives the reason by the clause’s id, and by the row’s id in a table', () => {
    expect(of('general-characteristics-male/comb')?.why).toBe('From the judge’s remarks.')
    expect(of('weights/pullet')).toMatchObject({what: 'Pullet, weight', was: '2.2 kg', now: '2.1 kg', quoted: false, why: 'The mean of two seasons.'})
  })

  it('names what is new and what was taken out', () => {
    expect(of('faults/serious')).toMatchObject({was: null, now: 'Coarse comb.', gone: false})
    expect(of('general-characteristics-male/crest')).toMatchObject({was: 'None.', now: null, gone: true})
  })

  it('says nothing of what stayed', () => {
    expect(changes.map(change => change.id)).toEqual([
      'general-characteristics-male/tail', 'general-characteristics-male/comb', 'faults/serious', 'general-characteristics-male/crest', 'weights/pullet',
    ])
    expect(changesInWords(book, second, {...second, number: 3})).toEqual([])
  })
})

describe('what stands in the head of a draft', () => {
  it('is told like a clause, and a moved clause is said to have moved', () => {
    const later = {...second, number: 3, egg: 'tinted, 55 g or more', sections: [second.sections[1]!, second.sections[0]!, second.sections[2]!]}
    const moved = changesInWords(book, second, later)
    expect(moved[0]).toMatchObject({id: 'egg', was: 'tinted, 50 g or more', now: 'tinted, 55 g or more'})
    expect(moved.slice(1).map(({more, was, now}) => [more, was, now])).toEqual([[['The section stands at another place.'], null, null]])
  })
})

describe('a clause that is asked otherwise', () => {
  const trait = {...comb, kind: 'measured' as const, states: [], unit: 'degrees'}
  const range = (low: number, high: number): Partial<Clause> => ({trait, ownRange: true, sex: 'male', allows: {male: {kind: 'between', low, high}, female: null}})
  const changed = (before: Partial<Clause>, after: Partial<Clause>) => {
    const with_ = (draft: Draft, number: number, more: Partial<Clause>): Draft => ({...draft, number, sections: draft.sections.map(section => ({...section, clauses: section.clauses.map(clause => (clause.title === 'Comb' ? {...clause, ...more} : clause))}))})
    return changesInWords(book, with_(second, 2, before), with_(second, 3, after)).map(({what, more}) => [what, ...more])
  }
  it('says so in sentences', () => {
    expect(changed(range(40, 50), {...range(35, 55), mandatory: true, ifMissed: 'serious'})).toEqual([['Comb', 'Range widened: was 40 to 50°, now 35 to 55°.', 'Now required.', 'Now a serious fault if missed.']])
    const accepted = {what: 'An uneven comb', looks: {male: null, female: null}, until: 2026, then: 'minor'} as const
    expect(changed({}, {accepted})).toEqual([['Comb', 'Accepted until the season of 2026: an uneven comb; afterwards a minor fault.']])
    expect(changed({accepted}, {accepted: {...accepted, until: 2028}})).toEqual([['Comb', 'Accepted longer, until the season of 2028 instead of 2026: an uneven comb.']])
  })
})
