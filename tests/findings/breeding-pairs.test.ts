import {describe, expect, it} from 'vitest'
import {breedingPairs} from '../../src/findings/breeding-pairs.ts'
import {census} from '../../src/findings/census.ts'
import {kinshipOfBook} from '../../src/findings/inbreeding.ts'
import {lastPens} from '../../src/findings/last-pen.ts'
import {malesForPens} from '../../src/findings/males-for-pens.ts'
import {pedigreeOfBook} from '../../src/findings/pedigree-of-book.ts'
import {penKinship} from '../../src/findings/pen-kinship.ts'
import {date, logbook, pen, stay} from '../pages/small-logbook.ts'
import {twoPens} from './breeding-book.ts'

const book = twoPens(), pedigree = pedigreeOfBook(book), kin = kinshipOfBook(pedigree), now = census(book)
const [penA] = book.pens

describe('breedingPairs(census)', () => {
  it('holds every male with every hen, the least kin first', () => {
    const {pairs, males, hens} = breedingPairs(now, pedigree, kin)
    expect([males.length, hens.length]).toEqual([2, 3])
    expect(pairs.map(({male, hen, mean}) => [male.id, hen.id, mean])).toEqual([
      ['A1', 'B2', 0], ['B1', 'A2', 0], ['B1', 'A3', 0], ['A1', 'A2', 0.25], ['A1', 'A3', 0.25], ['B1', 'B2', 0.25],
    ])
  })

  it('is empty where nobody is bred from', () => {
    const empty = logbook('2024-01-01'), none = pedigreeOfBook(empty)
    expect(breedingPairs(census(empty), none, kinshipOfBook(none)).pairs).toEqual([])
  })
})

describe('malesForPens(book)', () => {
  const found = malesForPens(book, now, pedigree, kin)

  it('tries every male against every pen’s hens, by hand', () => {
    expect(found.males.map(({id}) => id)).toEqual(['A1', 'B1', 'C1', 'C2'])
    expect(found.pens[0]?.males.map(({male, here, mean, overLimit}) => [male.id, here, mean, overLimit])).toEqual([
      ['B1', false, 0, 0], ['C2', false, 0, 0], ['A1', true, 0.25, 2], ['C1', false, 0.25, 2],
    ])
    expect(found.pens[1]?.males[0]?.worst).toMatchObject({mean: 0, low: 0, high: 0})
  })

  it('a hen belongs to the pen she was put into last', () => {
    const moved = {...book, pens: [...book.pens, pen('2026-C', 2026, {males: [], females: [stay(book.named('A2'))], from: date('2026-02-20')})]}
    const again = malesForPens(moved, census(moved), pedigree, kin)
    expect(again.pens.map(({pen: its, hens}) => [its?.id, hens.map(hen => hen.id)])).toEqual([['2026-A', ['A3']], ['2026-B', ['B2']], ['2026-C', ['A2']]])
  })
})

describe('lastPens(pens)', () => {
  it('goes by the day, then by the place in the list', () => {
    const hen = book.named('A2')
    const early = pen('1', 2026, {females: [stay(hen, {from: date('2026-02-01')})]}), late = pen('2', 2026, {females: [stay(hen, {from: date('2026-03-01')})]})
    expect(lastPens([late, early]).get(hen)?.id).toBe('2')
    expect(lastPens([early, {...late, females: [stay(hen, {from: date('2026-02-01')})]}]).get(hen)?.id).toBe('2')
    expect(lastPens([]).get(hen)).toBe(undefined)
  })
})

describe('penKinship(pen)', () => {
  it('gives the mean by male and the worst pair', () => {
    const males = [stay(book.named('B1')), stay(book.named('A1'))]
    const found = penA ? penKinship({...penA, males}, pedigree, kin) : null
    expect(found?.males.map(({male, mean}) => [male.id, mean])).toEqual([['B1', 0], ['A1', 0.25]])
    expect([found?.worst.male.id, found?.worst.hen.id, found?.worst.high]).toEqual(['A1', 'A2', 0.25])
  })

  it('is silent without a male or a female', () => {
    expect(penKinship(pen('x', 2026), pedigree, kin)).toBe(null)
  })
})
