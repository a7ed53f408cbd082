import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {scorerAgreement} from '../../src/findings/scorer-agreement.ts'
import type {Bird, Logbook, ShowScore} from '../../src/logbook/book.ts'
import {expectClose} from '../expect-close.ts'
import {at, bird, date, F2, logbook, looks, score} from '../pages/small-logbook.ts'
import {evenBook, keeper, neat, type} from './evenness-book.ts'

const inga = keeper('inga'), rasmus = keeper('rasmus')
const twice = (pairs: readonly (readonly [number, number])[]): Logbook => logbook('2025-10-30', {
  traits: [type], birds: pairs.map(([one, other], index) => bird(`${index}`, 'male', {step: F2, looks: looks(score(type, one, {by: inga}), score(type, other, {by: rasmus}))})),
})

/** κ = 1 − Σ|a − b| / mean of |a − b| over every a of the one and b of the other: from all pairs, without a table. */
function slowKappa(pairs: readonly (readonly [number, number])[]): number {
  const seen = pairs.reduce((sum, [a, b]) => sum + Math.abs(a - b), 0) / pairs.length
  const dealt = pairs.flatMap(([a]) => pairs.map(([, b]) => Math.abs(a - b))).reduce((sum, away) => sum + away, 0) / pairs.length ** 2
  return 1 - seen / dealt
}

describe('scorerAgreement(trait, book)', () => {
  it('compares two keepers of the same birds', () => {
    const pairs = [[7, 7], [7, 8], [5, 5], [9, 8], [4, 6]] as const, [found] = scorerAgreement(type, twice(pairs))
    expect(found).toMatchObject({between: 'scorers', names: ['inga', 'rasmus'], birds: 5, same: 2, higher: 2, lower: 1})
    // by hand: seen 4/5; of the 25 pairs of 7 7 5 9 4 and 7 8 5 8 6 the differences make 44: 1 − (4/5) / (44/25)
    expectClose(found?.kappa?.kappa ?? NaN, 24 / 44, 1e-12)
  })

  it('calls them as they may be called, in the order of their records', () => {
    const hidden = {...keeper('ask'), name: 'keeper A'}, one = bird('1', 'male', {looks: looks(score(type, 7, {by: inga}), score(type, 8, {by: hidden}))})
    expect(scorerAgreement(type, logbook('2025-10-30', {traits: [type], birds: [one]}))[0]).toMatchObject({names: ['keeper A', 'inga'], higher: 0, lower: 1})
  })

  it('takes the last grade of each that is neither struck nor out of its time, and none of nobody', () => {
    const one = bird('1', 'male', {looks: looks(score(type, 3, {by: inga}), score(type, 7, {by: inga}), score(type, 1, {by: inga, struck: 'slip'}), score(type, 7, {by: rasmus}), score(type, 2, {by: rasmus, outside: true}), score(type, 9))})
    expect(scorerAgreement(type, logbook('2025-10-30', {traits: [type], birds: [one]}))).toMatchObject([{birds: 1, same: 1, kappa: null}])
  })

  it('has no interval where they agree in all, no κ of one grade for all, and half marks of their own', () => {
    expect(scorerAgreement(type, twice([[7, 7], [5, 5]]))[0]?.kappa).toMatchObject({kappa: 1, interval: null})
    expect(scorerAgreement(type, twice([[7, 7], [7, 7]]))[0]?.kappa).toBeNull()
    const halves = [[7.5, 7], [6, 6.5], [5, 5]] as const
    expectClose(scorerAgreement(type, twice(halves))[0]?.kappa?.kappa ?? NaN, slowKappa(halves), 1e-12)
    expect(scorerAgreement(type, logbook('2025-10-30', {traits: [type]}))).toEqual([])
  })

  it('agrees with all pairs laid out, of marks and of states', () => {
    fc.assert(fc.property(evenBook, book => {
      for (const trait of [type, neat]) for (const {names: [one, other], birds, same, kappa} of scorerAgreement(trait, book)) {
        const last = (of: Bird, by: string | undefined) => of.looks.get(trait)?.scores.filter(each => each.by?.id === by && each.struck === null).at(-1)?.value
        const place = (value: string | number) => (typeof value === 'number' ? value : neat.states.indexOf(value))
        const pairs = book.birds.flatMap(each => {
          const [a, b] = [last(each, one), last(each, other)]
          return a === undefined || b === undefined ? [] : [[place(a), place(b)] as const]
        })
        expect([birds, same]).toEqual([pairs.length, pairs.filter(([a, b]) => a === b).length])
        if (kappa) expectClose(kappa.kappa, slowKappa(pairs), 1e-9)
      }
    }), {numRuns: 60})
  })
})

describe('scorerAgreement(trait, book) with judges', () => {
  const birds = [7, 8, 5].map((mark, index) => bird(`${index}`, 'male', {step: F2, looks: looks(score(type, mark, {by: inga}))})), bare = bird('bare', 'male')
  const sheet = (of: Bird | undefined, points: number, more: Partial<ShowScore> = {}): ShowScore =>
    ({bird: of ?? bare, by: 'judge 1', draft: null, headings: [{name: 'Colour', points: 1, of: 20}, {name: 'Type and carriage', points, of: 30}], at, ...more})
  const judged = (...scores: readonly ShowScore[]) => scorerAgreement(type, logbook('2025-10-30', {
    traits: [type], birds: [...birds, bare], shows: [{at, body: '', id: 's', name: 'A show', on: date('2025-09-01'), place: null, cancelled: null, entries: [], scores}],
  }))

  it('brings the points of a heading to the trait’s scale, of each bird its latest sheet', () => {
    // by hand: 1 + 9 · 20/30 = 7; 1 + 9 · 27/30 = 9.1, mark 9; 1 + 9 · 12/30 = 4.6, mark 5
    expect(judged(sheet(birds[0], 2), sheet(birds[0], 20), sheet(birds[1], 27), sheet(birds[2], 12))).toMatchObject([{between: 'judges', names: ['Type and carriage'], birds: 3, same: 2, higher: 1, lower: 0, leftOut: 0}])
  })

  it('leaves out and counts what cannot be compared, and asks no keeper', () => {
    const without = {headings: [{name: 'Type', points: 20, of: null}]}
    expect(judged(sheet(birds[0], 20), sheet(bare, 20), sheet(birds[1], 3, without))).toMatchObject([{names: ['Type and carriage', 'Type'], birds: 1, leftOut: 2}])
    expect(judged(sheet(bare, 3))).toMatchObject([{birds: 0, kappa: null, leftOut: 1}])
    expect(judged(sheet(birds[0], 20, {by: inga}), sheet(birds[0], 20, {by: null}), sheet(birds[1], 3, {headings: [{name: 'Typed', points: 1, of: 2}]}))).toEqual([])
  })
})
