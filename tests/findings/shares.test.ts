import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {ladderOf} from '../../src/findings/ladder.ts'
import {traitShares, type TraitShares} from '../../src/findings/shares.ts'
import type {Logbook, Sex, Trait} from '../../src/logbook/book.ts'
import {bird, comb, date, F2, hatch, logbook, looks, score, tally} from '../pages/small-logbook.ts'
import {drawnBook, turned} from './drawn-book.ts'

const sharesOf = (book: Logbook): readonly TraitShares[] => traitShares(book, ladderOf(book))

/** The slow twin: one look through every chick of the book for a single number. */
function recount(book: Logbook, step: string, trait: Trait, sex: Sex | 'all', state: string | null): number {
  let count = 0
  for (const one of [...book.birds, ...book.hatches.flatMap(each => each.tallies)]) {
    const value = one.looks.get(trait)?.counted?.value
    if (one.step.kind !== 'strain' && one.step.label === step && (sex === 'all' || one.sex === sex) && value !== undefined && (state === null || value === state)) count += one.count
  }
  return count
}

describe('traitShares(book)', () => {
  it('counts what a slow recount counts, and leaves no state, sex or step out', () => {
    fc.assert(fc.property(drawnBook, book => {
      const found = sharesOf(book)
      for (const {step, trait, sex, scored, states} of found) {
        expect(scored).toBe(recount(book, step, trait, sex, null))
        expect(states.map(({state}) => state)).toEqual(trait.states)
        for (const {state, count, share} of states) {
          expect(count).toBe(recount(book, step, trait, sex, state))
          expect(share.total).toBe(scored)
        }
      }
      for (const step of ['F1', 'F2', 'BC1']) {
        for (const trait of book.traits.filter(each => each.states.length > 0)) {
          for (const sex of ['male', 'female', 'unknown', 'all'] as const) {
            const rows = found.filter(row => row.step === step && row.trait === trait && row.sex === sex)
            expect(rows.length).toBe(recount(book, step, trait, sex, null) > 0 ? 1 : 0)
          }
        }
      }
    }), {numRuns: 60})
  })

  it('adds up: states to the chicks scored, the sexes to all', () => {
    fc.assert(fc.property(drawnBook, book => {
      const found = sharesOf(book)
      for (const row of found) {
        expect(row.states.reduce((sum, {count}) => sum + count, 0)).toBe(row.scored)
        if (row.sex !== 'all') continue
        const sexes = found.filter(each => each.step === row.step && each.trait === row.trait && each.sex !== 'all')
        expect(sexes.reduce((sum, each) => sum + each.scored, 0)).toBe(row.scored)
        row.states.forEach(({count}, index) => expect(sexes.reduce((sum, each) => sum + (each.states[index]?.count ?? 0), 0)).toBe(count))
      }
    }), {numRuns: 60})
  })

  it('does not mind the order of the records', () => {
    fc.assert(fc.property(drawnBook, book => {
      expect(sharesOf(turned(book))).toEqual(sharesOf(book))
    }), {numRuns: 40})
  })

  it('says why chicks were left out', () => {
    const of = hatch('2025-01', {on: date('2025-04-01'), step: F2, unlisted: 2})
    const young = {hatched: of.on, hatch: of, step: F2, strain: null}
    const chicks = [
      bird('1', 'male', {...young, looks: looks(score(comb, 'pea'))}),
      bird('2', 'male', {...young, looks: looks(score(comb, 'single', {struck: 'too early'}))}),
      bird('3', 'male', {...young, looks: looks(score(comb, 'single', {outside: true}))}),
      bird('4', 'male', {...young, left: {on: date('2025-04-20'), how: 'died', why: null}}),
      bird('5', 'female', {...young, left: {on: date('2025-09'), how: 'sold', why: null}}),
    ]
    const book = logbook('2025-10-30', {birds: chicks, hatches: [Object.assign(of, {chicks, tallies: [tally(of, 3, {looks: looks(score(comb, 'pea'))})]})]})
    const all = sharesOf(book).find(({sex}) => sex === 'all')
    expect(all?.scored).toBe(4)
    expect(all?.leftOut).toEqual([
      {count: 1, why: 'unscored'}, {count: 1, why: 'lost-before-scoring'}, {count: 2, why: 'not-listed'}, {count: 1, why: 'struck'}, {count: 1, why: 'outside-window'},
    ])
    const beforeSixWeeks = logbook('2025-05-01', {birds: [bird('6', 'male', young), ...chicks.slice(0, 1)], hatches: []})
    expect(sharesOf(beforeSixWeeks).find(({sex}) => sex === 'all')?.leftOut).toEqual([{count: 1, why: 'too-young'}])
  })

  it('gives a bird banded from a tally the tally’s look, unless it has its own', () => {
    const of = hatch('2025-01', {on: date('2025-04-01'), step: F2})
    const from = tally(of, 1, {written: 3, looks: looks(score(comb, 'pea'))})
    const banded = {hatched: of.on, hatch: of, step: F2, strain: null, outOf: from}
    const chicks = [bird('1', 'male', banded), bird('2', 'male', {...banded, looks: looks(score(comb, 'single'))})]
    const rows = sharesOf(logbook('2025-10-30', {birds: chicks, hatches: [Object.assign(of, {chicks, tallies: [from]})]}))
    expect(rows.find(({sex}) => sex === 'all')?.states.map(({state, count}) => [state, count])).toEqual([['pea', 2], ['single', 1]])
  })
})
