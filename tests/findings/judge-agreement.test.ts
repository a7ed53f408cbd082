import {describe, expect, it} from 'vitest'
import {judgeAgreement} from '../../src/findings/judge-agreement.ts'
import {sheetsOfPoints} from '../../src/findings/sheets-of-points.ts'
import type {Bird, Logbook, Show, Trait, Wanted} from '../../src/logbook/book.ts'
import {plainDraft} from '../paper-parts.ts'
import {entry, keeper, show} from '../pages/shown-logbook.ts'
import {at, bird, date, logbook, looks, score, trait} from '../pages/small-logbook.ts'

const wanting = (wanted: Wanted | null) => ({male: wanted, female: wanted})
const type = trait('type', 'Type', {kind: 'graded', scale: {from: 1, to: 10}, wanted: wanting({kind: 'at-least', value: 7})})
const neat = trait('neat', 'Neatness', {kind: 'ordered', states: ['coarse', 'fair', 'neat'], wanted: wanting({kind: 'states', states: ['neat']})})
const marked = (id: string, of: Trait, value: string | number | null, on = '2025-08-01'): Bird => bird(id, 'female', {looks: value === null ? new Map() : looks(score(of, value, {on: date(on)}))})
const pullets = (id: string, day: string, placed: readonly (readonly [Bird, number | null])[], judge = 'judge 1'): Show =>
  show(id, id, day, {entries: placed.map(([of, place]) => entry(of, {class: 'pullet', judge, place, of: 9}))})
const agreement = (shows: Show[], traits: readonly Trait[] = [type], more: Partial<Logbook> = {}) => {
  const book = logbook('2026-01-01', {shows, traits, ...more})
  return judgeAgreement(book, sheetsOfPoints(book))
}

describe('judgeAgreement(book, sheets)', () => {
  const [a, b, c, d] = [marked('a', type, 9), marked('b', type, 8), marked('c', type, 6), marked('d', type, 9)]

  it('holds the birds of one class of one show under one judge against our marks, worked by hand', () => {
    // a 9, b 8, c 6 placed 1, 3, 2: a above both, b and c the other way round: C 2, D 1 of 3
    const [all, judge, ...more] = agreement([pullets('x', '2025-09-01', [[a, 1], [b, 3], [c, 2]])])
    expect(all).toMatchObject({judge: null, tau: {concordant: 2, discordant: 1, pairs: 3}, leftOut: {notPlaced: 0, unscored: 0, alone: 0}})
    expect(all?.tau.tau).toBeCloseTo(1 / 3, 12)
    expect(all?.classes[0]?.birds.map(({entry: {bird: of}, mark}) => [of.id, mark])).toEqual([['a', 9], ['c', 6], ['b', 8]])
    expect([judge?.judge, more]).toEqual(['judge 1', []])
  })

  it('takes a bird that is shown again for one bird, and says so where that is too few', () => {
    // three birds placed alike four times: were they twelve, P would be 2 of 1296; three can be put in 6 orders, of which 2 are as far
    const four = ['2025-09-01', '2025-09-08', '2025-09-15', '2025-09-22'].map((day, place) => pullets(`s${place}`, day, [[a, 1], [b, 2], [c, 3]], `judge ${place}`))
    const [all] = agreement(four)
    expect(all).toMatchObject({tau: {concordant: 12, tau: 1, how: 'exact'}, verdict: 'too-few', corrected: null})
    expect(all?.tau.p).toBeCloseTo(1 / 3, 12)
  })

  it('lists of each mark the ten judges with the most pairs, and takes the tests of those in', () => {
    const of = (id: string, day: string, judge: string, n: number) => pullets(id, day, Array.from({length: n}, (_, place) => [marked(`${id}${place}`, type, 9 - place), place + 1] as const), judge)
    const found = agreement([...Array.from({length: 11}, (_, place) => of(`s${place}`, '2025-09-01', `judge ${place}`, place === 4 ? 2 : 3)), of('t', '2025-09-02', 'judge 20', 5)])
    expect(found.filter(({listed}) => !listed).map(({judge, verdict}) => [judge, verdict])).toEqual([['judge 4', null], ['judge 10', null]])
    // only all together and the last of them could be told
    expect(found.filter(({corrected}) => corrected !== null).map(({judge, verdict, tests}) => [judge, verdict, tests])).toEqual([[null, 'alike', 2], ['judge 20', 'alike', 2]])
  })

  it('makes no pair across shows, classes or judges', () => {
    const found = agreement([pullets('x', '2025-09-01', [[a, 1], [b, 2]]), pullets('y', '2025-10-01', [[c, 1], [d, 2]], 'judge 2')])
    expect(found.map(({judge, tau: {concordant, discordant}}) => [judge, concordant, discordant])).toEqual([[null, 1, 1], ['judge 1', 1, 0], ['judge 2', 0, 1]])
    const split = show('z', 'z', '2025-09-01', {entries: [entry(a, {class: 'pullet', judge: 'judge 1', place: 1}), entry(b, {class: 'hen', judge: 'judge 1', place: 2})]})
    expect(agreement([split])).toEqual([])
  })

  it('takes the last mark from before the day, and counts who has none, was not placed, or stood alone', () => {
    const late = marked('late', type, 10, '2025-09-01'), early = bird('early', 'female', {looks: looks(score(type, 4, {on: date('2025-06-01')}), score(type, 9, {on: date('2025-10-01')}), score(type, 10, {on: date('2025-07-01'), struck: 'misread'}))})
    const [all] = agreement([pullets('x', '2025-09-01', [[a, 1], [early, 2], [late, 3], [b, null]]), pullets('y', '2025-09-08', [[c, 1]], 'judge 2')])
    expect(all?.classes[0]?.birds.map(({mark}) => mark)).toEqual([9, 4])
    expect(all?.leftOut).toEqual({notPlaced: 1, unscored: 1, alone: 1})
  })

  it('knows which end of an order is better', () => {
    const shown = (trait: Trait, first: string | number, second: string | number) =>
      agreement([pullets('x', '2025-09-01', [[marked('p', trait, first), 1], [marked('q', trait, second), 2]])], [trait])[0]?.tau
    expect(shown(neat, 'neat', 'coarse')).toMatchObject({concordant: 1})
    expect(shown({...neat, wanted: wanting({kind: 'states', states: ['coarse']})}, 'neat', 'coarse')).toMatchObject({discordant: 1})
    expect(shown({...neat, wanted: wanting({kind: 'states', states: ['fair']})}, 'neat', 'coarse')).toMatchObject({tiedOther: 1})
    expect(shown({...type, wanted: wanting({kind: 'at-most', value: 3})}, 2, 5)).toMatchObject({concordant: 1})
    expect(shown({...type, wanted: wanting({kind: 'between', low: 4, high: 6})}, 5, 9)).toMatchObject({concordant: 1})
    expect(shown({...type, wanted: wanting({kind: 'between', low: 4, high: 6})}, 4, 6)).toMatchObject({tiedOther: 1})
    expect(shown({...type, wanted: wanting(null)}, 5, 9)).toBeUndefined()
  })

  it('takes the judge’s points where nobody was placed', () => {
    const pointed = (place: number | null) => [show('x', 'x', '2025-09-01', {entries: [entry(a, {class: 'hen', points: 95, place}), entry(b, {class: 'hen', points: 95}), entry(c, {class: 'hen', points: 96}), entry(d, {class: 'hen'})]})]
    // a 9, b 8, c 6: both below c, and level with each other
    expect(agreement(pointed(null))[0]).toMatchObject({tau: {concordant: 0, discordant: 2, tiedOne: 1}, leftOut: {notPlaced: 1}})
    expect(agreement(pointed(1))).toEqual([])
  })

  it('leaves cancelled shows and disqualified birds aside', () => {
    expect(agreement([{...pullets('x', '2025-09-01', [[a, 1], [c, 2]]), cancelled: 'forbidden'}])).toEqual([])
    expect(agreement([show('x', 'x', '2025-09-01', {entries: [entry(a, {class: 'hen', place: 1}), entry(c, {class: 'hen', place: 2, disqualified: true})]})])).toEqual([])
  })

  it('takes the share of points of our own whole sheets', () => {
    const draft = plainDraft(1, '2025-01-01', {points: [{name: 'Type', points: 60}, {name: 'Colour', points: 40}]}), inga = keeper('inga', 'Inga')
    const sheet = (of: Bird, type: number, colour: number | null, on = '2025-08-01') =>
      ({bird: of, by: inga, draft: 1, on: date(on), struck: null, at, headings: [{name: 'Type', points: type, of: 60}, ...(colour === null ? [] : [{name: 'Colour', points: colour, of: 40}])]})
    const found = agreement([pullets('x', '2025-09-01', [[a, 1], [b, 2], [c, 3]])], [], {drafts: [draft], sheets: [sheet(a, 50, 35), sheet(b, 52, 36), sheet(c, 40, null), sheet(c, 60, 40, '2025-09-02')]})
    expect(found[0]).toMatchObject({trait: null, tau: {discordant: 1, pairs: 1}, leftOut: {unscored: 1}})
    expect(found[0]?.classes[0]?.birds.map(({mark}) => mark)).toEqual([0.85, 0.88])
  })
})
