import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {study} from '../../src/findings/study.ts'
import type {Logbook} from '../../src/logbook/book.ts'
import {expectClose} from '../expect-close.ts'
import {bird, F2, looks, score} from '../pages/small-logbook.ts'
import {bookOfFamilies, evenBook, neat, type} from './evenness-book.ts'

const scores = (book: Logbook) => study(book).gradedScores.steps
const males = (marks: readonly number[]) => scores(bookOfFamilies([{step: F2, type: marks}])).find(({sex}) => sex === 'male')

describe('gradedScores(book)', () => {
  it('gives how the marks fell, the middle one and the share at the mark', () => {
    const found = males([6, 7, 9, 4, 7, 8])
    expect(found?.grades.map(({is, share}) => [is, share.count])).toEqual([[4, 1], [6, 1], [7, 2], [8, 1], [9, 1]])
    expect([found?.middle, found?.scored]).toEqual([{place: 7, is: [7]}, 6])
    expect(found?.asWanted).toMatchObject({count: 4, total: 6})
    // Wilson's formula worked apart for 4 of 6
    expectClose(found?.asWanted.kind === 'share' ? found.asWanted.interval.low : NaN, 0.299993, 1e-6)
  })

  it('names two marks where the middle falls between them', () => {
    expect(males([6, 7])?.middle).toEqual({place: 6.5, is: [6, 7]})
    expect(males([3])?.middle).toEqual({place: 3, is: [3]})
  })

  it('gives every ordered state from the least, and no share of what is not wanted of a sex', () => {
    const chicks = (['male', 'female'] as const).flatMap(sex => ['coarse', 'neat', 'neat'].map((is, index) => bird(`${sex}-${index}`, sex, {step: F2, looks: looks(score(neat, is))})))
    const book = bookOfFamilies([]), found = scores({...book, traits: [neat], birds: [...chicks, bird('x', 'male', {step: F2})]})
    expect(found.map(({sex, grades, middle, leftOut}) => [sex, grades.map(({is, share}) => `${share.count} ${is}`).join(' '), middle.is, leftOut])).toEqual([
      ['male', '1 coarse 0 fair 2 neat', ['neat'], 1], ['female', '1 coarse 0 fair 2 neat', ['neat'], 0], ['all', '2 coarse 0 fair 4 neat', ['neat'], 1],
    ])
    expect(found.map(({asWanted}) => (asWanted.kind === 'share' ? asWanted.total : asWanted.why))).toEqual([3, 'not-counted', 3])
  })

  it('has no entry where nobody was graded', () => {
    expect(scores(bookOfFamilies([{step: F2, pea: 3}]))).toEqual([])
  })

  it('agrees with a slow recount', () => {
    fc.assert(fc.property(evenBook, book => {
      for (const {trait, step, sex, scored, grades, middle, asWanted, leftOut} of scores(book)) {
        const chicks = [...book.birds, ...book.hatches.flatMap(({tallies}) => tallies)].filter(each => each.step.label === step && (sex === 'all' || each.sex === sex))
        const given = chicks.flatMap(each => Array<string | number | undefined>(each.count).fill(each.looks.get(trait)?.counted?.value)), told = given.filter(value => value !== undefined)
        expect([scored, leftOut]).toEqual([told.length, given.length - told.length])
        for (const {is, share} of grades) expect(share.count).toBe(told.filter(value => value === is).length)
        const places = told.map(value => (typeof value === 'number' ? value : neat.states.indexOf(value) + 1)), above = places.filter(place => place > middle.place).length, below = places.filter(place => place < middle.place).length
        expect(Math.max(above, below)).toBeLessThanOrEqual(scored / 2)
        if (trait === type && asWanted.kind === 'share') expect([asWanted.count, asWanted.total]).toEqual([places.filter(place => place >= 7).length, scored])
      }
    }), {numRuns: 60})
  })
})
