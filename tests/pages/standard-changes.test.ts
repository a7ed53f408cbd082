import {describe, expect, it} from 'vitest'
import {changesInWords, differing} from '../../src/pages/standard-changes.ts'
import type {Draft} from '../../src/logbook/book.ts'
import {shownBook} from './shown-logbook.ts'

const [first, second] = shownBook().drafts as [Draft, Draft]

describe('changesInWords(from, to)', () => {
  const changes = changesInWords(first, second)
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
    expect(changesInWords(second, {...second, number: 3})).toEqual([])
  })
})

describe('what stands in the head of a draft', () => {
  it('is told like a clause, and a moved clause is said to have moved', () => {
    const later = {...second, number: 3, egg: 'tinted, 55 g or more', sections: [second.sections[1]!, second.sections[0]!, second.sections[2]!]}
    const moved = changesInWords(second, later)
    expect(moved[0]).toMatchObject({id: 'egg', was: 'tinted, 50 g or more', now: 'tinted, 55 g or more'})
    expect(moved.slice(1).every(change => change.moved && change.was === null && change.now === null)).toBe(true)
    expect(moved.length).toBeGreaterThan(1)
  })
})

describe('differing(was, now)', () => {
  it('leaves one side empty when sentences were only added', () => {
    expect(differing('Broad. Deep.', 'Broad. Long. Deep.')).toEqual({was: '', now: 'Long.'})
  })
  it('gives the whole when nothing is alike', () => {
    expect(differing('Small and low.', 'Three ridges.')).toEqual({was: 'Small and low.', now: 'Three ridges.'})
  })
})
