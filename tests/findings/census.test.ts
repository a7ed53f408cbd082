import {describe, expect, it} from 'vitest'
import {census, keeperOn} from '../../src/findings/census.ts'
import type {Keeper} from '../../src/logbook/book.ts'
import {at, bird, date, F2, hatch, logbook, pen, smallBook, stay, tally} from '../pages/small-logbook.ts'

const day = date('2024-06-15').first
const keeper = (id: string): Keeper => ({at, body: '', id, name: id, consents: true, since: null, region: null})

describe('keeperOn(bird, day)', () => {
  const [one, two] = [keeper('kelpgarth'), keeper('ternhouse')]
  const moved = bird('1', 'male', {keptAt: [{keeper: one, from: null, to: date('2024-06-15')}, {keeper: two, from: date('2024-06-15'), to: null}]})
  it('is the later of two on the day of a move', () => {
    expect([-1, 0, 1].map(off => keeperOn(moved, day + off)?.id)).toEqual(['kelpgarth', 'ternhouse', 'ternhouse'])
  })
  it('is nobody when nobody is written', () => expect(keeperOn(bird('1', 'male'), day)).toBeNull())
})

describe('census(book)', () => {
  it('counts the living and the breeders of the latest season begun', () => {
    const now = census(smallBook())
    expect(now.season).toBe(2025)
    // gone: B-2, 24-002 and 24-009; 15 chicks, 4 founders
    expect(now.aliveCount).toEqual({male: 6, female: 10, unknown: 0, all: 16})
    // the pen of 2025 has 24-001, 24-003 and 24-004; the first two are kept as well
    expect(now.breeders.map(each => each.id)).toEqual(['24-001', '24-003', '24-004'])
    expect(now.ownBreederCount).toEqual({male: 1, female: 2, unknown: 0, all: 3})
    expect(now.keepers).toEqual([{keeper: null, alive: now.aliveCount, breeders: now.breederCount}])
  })

  it('counts no bird that has died among the breeders, nor pure strains among the breed’s own', () => {
    const gone = bird('1', 'male', {left: {on: date('2024-05'), how: 'died', why: null}}), cock = bird('2', 'male'), hen = bird('3', 'female', {step: F2, strain: null})
    const book = logbook('2024-06-15', {birds: [gone, cock, hen], pens: [pen('2024-A', 2024, {males: [stay(gone), stay(cock)], females: [stay(hen)], from: date('2024-02')})]})
    const now = census(book)
    expect(now.breederCount).toEqual({male: 1, female: 1, unknown: 0, all: 2})
    expect(now.ownBreederCount).toEqual({male: 0, female: 1, unknown: 0, all: 1})
  })

  it('goes by the season that has begun, not by one laid out ahead', () => {
    const [cock, next] = [bird('1', 'male'), bird('2', 'male')]
    const book = logbook('2024-06-15', {birds: [cock, next], pens: [
      pen('2024-A', 2024, {males: [stay(cock)], from: date('2024-02')}), pen('2025-A', 2025, {males: [stay(next)], from: date('2025-02')}),
    ]})
    expect(census(book).season).toBe(2024)
    expect(census(book).breeders).toEqual([cock])
  })

  it('counts unbanded chicks that nothing says have left', () => {
    const from = hatch('1')
    const book = logbook('2024-06-15', {hatches: [Object.assign(from, {tallies: [tally(from, 4), tally(from, 3, {left: {on: null, how: 'sold', why: null}})]})]})
    expect(census(book)).toMatchObject({unbanded: 4, season: null, pens: [], breeders: []})
  })
})
