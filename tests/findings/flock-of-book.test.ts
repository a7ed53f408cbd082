import {describe, expect, it} from 'vitest'
import {flockOfBook, misscoringRows, type Otherwise} from '../../src/findings/flock-of-book.ts'
import {locusGroups} from '../../src/findings/locus-groups.ts'
import {pedigreeOfBook} from '../../src/findings/pedigree-of-book.ts'
import type {Bird, Logbook} from '../../src/logbook/book.ts'
import {bird, comb, fell, founder, hatch, holm, logbook, looks, parents, score, smallBook, strain, strainStep, tally} from '../pages/small-logbook.ts'

function flockOf(book: Logbook, otherwise?: Otherwise) {
  const [group] = locusGroups(book)
  if (!group) throw new Error('no loci')
  const pedigree = pedigreeOfBook(book)
  return {pedigree, ...flockOfBook(book, pedigree, group, otherwise)}
}
const birdOf = (book: Logbook, id: string): Bird => {
  const found = book.birds.find(each => each.id === id)
  if (!found) throw new Error(`no ${id}`)
  return found
}

describe('flockOfBook(book, pedigree, group)', () => {
  it('takes every unstruck score in its window as a reading of its own', () => {
    const book = smallBook(), {flock, pedigree} = flockOf(book)
    const readings = (id: string) => flock.readings(pedigree.numberOf(birdOf(book, id)))
    expect(readings('24-001')).toEqual([{trait: 0, scored: [0]}])
    expect(readings('25-002')).toEqual([{trait: 0, scored: [0, 1]}])
    // struck out, and never scored
    expect(readings('24-009')).toEqual([])
    expect(readings('H-3')).toEqual([])
  })
  it('leaves out a score outside its window', () => {
    const one = bird('1', 'male', {looks: looks(score(comb, 'pea', {outside: true}), score(comb, 'single'))})
    expect(flockOf(logbook('2025-01-01', {birds: [one]})).flock.readings(0)).toEqual([{trait: 0, scored: [1]}])
  })
  it('lets tallies enter as so many chicks, after the birds, each of the tally’s parents', () => {
    const book = smallBook(), {flock, tallies, firstMore, pedigree} = flockOf(book)
    const [three] = book.hatches[0]?.tallies ?? []
    const numbers = three ? tallies.get(three) ?? [] : []
    expect(numbers).toEqual([book.birds.length, book.birds.length + 1, book.birds.length + 2])
    expect(firstMore).toBe(book.birds.length + 3)
    for (const number of numbers) {
      expect(flock.readings(number)).toEqual([{trait: 0, scored: [0]}])
      expect(flock.pedigree.animals[number]?.matings).toEqual([
        {sire: pedigree.numberOf(birdOf(book, 'H-1')), dam: pedigree.numberOf(birdOf(book, 'B-1')), chance: 0.7},
        {sire: pedigree.numberOf(birdOf(book, 'H-3')), dam: pedigree.numberOf(birdOf(book, 'B-1')), chance: 0.3},
      ])
    }
  })
  it('leaves out tallies on which nothing was seen, or of no known origin', () => {
    const cock = bird('H-1', 'male'), hen = bird('H-2', 'female'), of = hatch('x', {parentage: parents([[cock, 1]], hen)})
    Object.assign(of, {tallies: [tally(of, 4), tally(of, 2, {looks: looks(score(comb, 'pea')), parentage: founder}), tally(of, 0, {looks: looks(score(comb, 'pea'))})]})
    const {flock, tallies} = flockOf(logbook('2025-01-01', {birds: [cock, hen], hatches: [of]}))
    expect(flock.pedigree.animals).toHaveLength(2)
    expect([...tallies.values()].flat()).toEqual([])
  })
  it('takes a strain’s alleles as stated, as its looks fix them, or all alike', () => {
    const stated = strain('stated', 'Stated', {alleles: new Map([['P', new Map([['P', 0.7], ['p+', 0.3]])]])}), fixed = strain('fixed', 'Fixed', {trueFor: new Map([[comb, 'single']])})
    const strains = [stated, fixed, fell, holm]
    const birds = strains.map((of, index) => bird(`F-${index}`, 'male', {strain: of, step: strainStep(of), shares: new Map([[of, 1]])}))
    const {flock, pedigree} = flockOf(logbook('2025-01-01', {birds, strains}))
    const shares = birds.map(each => flock.shares(pedigree.pedigree.animals[pedigree.numberOf(each)]?.base ?? null)[0])
    expect(shares).toEqual([[0.7, 0.3], [0, 1], [0.5, 0.5], [0.5, 0.5]])
    expect(flock.shares(null)).toEqual([[0.5, 0.5]])
  })
  it('changes and adds what is asked otherwise', () => {
    const book = smallBook(), first = pedigreeOfBook(book).numberOf(birdOf(book, '24-001'))
    const other = {sex: 'male', base: null, matings: []} as const
    const {flock, firstMore} = flockOf(book, {instead: new Map([[first, other]]), more: [other], tested: animal => (animal === first ? [[0, 0]] : null)})
    expect(flock.readings(first + 1)).toHaveLength(1)
    expect([flock.pedigree.animals[first], flock.pedigree.animals[firstMore]]).toEqual([other, other])
    expect(flock.pedigree.animals).toHaveLength(firstMore + 1)
    expect([flock.tested(first), flock.tested(first + 1)]).toEqual([[[0, 0]], null])
  })
})

describe('misscoringRows(trait, doubt)', () => {
  const rows = (doubt?: number) => misscoringRows({states: ['a', 'b', 'c'], misscoring: new Map([['b', new Map([['a', 0.25]])]])}, doubt).map(row => [...row])
  it('scores right what the record does not name', () => expect(rows()).toEqual([[1, 0, 0], [0.25, 0.75, 0], [0, 0, 1]]))
  it('with a doubt takes so many scores to be any state alike', () => {
    expect(rows(0.3)[0]?.map(chance => Math.round(chance * 1e12) / 1e12)).toEqual([0.8, 0.1, 0.1])
    for (const row of rows(0.3)) expect(row.reduce((sum, chance) => sum + chance, 0)).toBeCloseTo(1, 12)
  })
})
