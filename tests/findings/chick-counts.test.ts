import {describe, expect, it} from 'vitest'
import {birdsPenned, chickCounts} from '../../src/findings/chick-counts.ts'
import {bird, comb, hatch, logbook, looks, pen, score, stay, tally} from '../pages/small-logbook.ts'

describe('chickCounts(birds, tallies, unlisted, traits, penned)', () => {
  it('counts every chick once where it belongs, tallies with all of theirs', () => {
    const from = hatch('h'), cock = bird('1', 'male'), hen = bird('2', 'female', {looks: looks(score(comb, 'pea')), kept: {on: null, why: 'for breeding'}}), gone = bird('3', 'unknown', {left: {on: null, how: 'died', why: null}})
    const own = tally(from, 4, {sex: 'female', looks: looks(score(comb, 'single')), left: {on: null, how: 'sold', why: null}})
    const penned = birdsPenned(logbook('2025-01-01', {pens: [pen('A', 2024, {males: [stay(cock)]})]}))
    expect(chickCounts([cock, hen, gone], [own], 2, [comb], penned)).toEqual({
      hatched: 9, unlisted: 2, listed: 7, banded: 3, unbanded: 4, male: 1, female: 5, unknownSex: 1, scored: 5, kept: 2, left: new Map([['died', 1], ['sold', 4]]),
    })
  })

  it('is nought of nobody', () => {
    expect(chickCounts([], [], 0, [comb], new Set())).toMatchObject({hatched: 0, listed: 0, scored: 0, kept: 0, left: new Map()})
  })
})
