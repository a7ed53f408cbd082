import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {clausesOfFlock, type ClauseBeside, type ClausesOfFlock} from '../../src/findings/clauses.ts'
import type {ClauseShare} from '../../src/findings/clause-counts.ts'
import {ladderOf} from '../../src/findings/ladder.ts'
import {passages} from '../../src/findings/bred-from.ts'
import type {Bird, Clause, Draft, Logbook, Score, Sex} from '../../src/logbook/book.ts'
import {bird, comb, date, F1, F2, hatch, logbook, looks, parents, score, weight} from '../pages/small-logbook.ts'
import {plainClause, plainDraft, plainSection} from '../paper-parts.ts'
import {drawnBook, skin, turned} from './drawn-book.ts'

const found = (book: Logbook): ClausesOfFlock => {
  const ladder = ladderOf(book)
  return clausesOfFlock(book, ladder, passages(book, ladder))
}

const pea = {kind: 'states', states: ['pea']} as const, EITHER = {kind: 'states', states: ['pea', 'single']} as const, white = {kind: 'states', states: ['white']} as const
const combClause = (text: string, more: Partial<Clause> = {}): Clause => plainClause('male/comb', 'Comb', text, {trait: comb, allows: {male: pea, female: pea}, ...more})
const skinClause = (more: Partial<Clause> = {}): Clause => plainClause('colour/skin', 'Skin', 'White.', {trait: skin, allows: {male: white, female: null}, sex: 'male', ...more})
const draft = (number: number, on: string, clauses: readonly Clause[], more: Partial<Draft> = {}): Draft => plainDraft(number, on, {sections: [plainSection('male', clauses)], ...more})
const counts = ({share, accepted, sexUnknown, varietyUnknown, otherWords}: ClauseShare) =>
  ({...(share.kind === 'share' ? {count: share.count, total: share.total} : {count: 0, total: 0}), accepted, sexUnknown, varietyUnknown, otherWords})

let number = 0
const inF2 = (sex: Sex, scores: readonly Score[], more: Partial<Bird> = {}): Bird => bird(`c-${++number}`, sex, {hatched: date('2024-04-01'), step: F2, strain: null, looks: looks(...scores), ...more})
const of = (clause: Clause, birds: readonly Bird[], more: Partial<Logbook> = {}, about: Partial<Draft> = {}): ClauseBeside | undefined =>
  found(logbook('2025-06-01', {birds, traits: [comb, skin, weight], drafts: [draft(1, '2023-01-01', [clause], about)], ...more})).scored[0]

describe('clausesOfFlock(book, ladder, passages)', () => {
  it('gives the share and the limits that are printed for 81 of 263', () => {
    // Newcombe 1998, Stat. Med. 17:857–872, table I, method 3
    const birds = Array.from({length: 263}, (_, place) => inF2('male', [score(comb, place < 81 ? 'pea' : 'single')]))
    const share = of(combClause('Pea.'), birds)?.latest.share
    expect(share).toMatchObject({kind: 'share', count: 81, total: 263})
    expect(share?.kind === 'share' && [share.interval.low.toFixed(4), share.interval.high.toFixed(4)]).toEqual(['0.2553', '0.3662'])
  })

  it('counts the dead and the culled as it counts those kept', () => {
    const gone = {on: date('2024-09-01'), how: 'culled', why: null} as const
    expect(of(combClause('Pea.'), [inF2('male', [score(comb, 'pea')]), inF2('male', [score(comb, 'single')], {left: gone}), inF2('female', [score(comb, 'pea')], {left: {...gone, how: 'died'}})])?.latest.share).toMatchObject({count: 2, total: 3})
  })

  it('judges an unsexed bird as either sex or as neither, and counts it apart elsewhere', () => {
    const birds = [inF2('unknown', [score(comb, 'pea')]), inF2('unknown', [score(comb, 'single')])]
    expect(counts(of(combClause('Pea.'), birds)!.latest)).toMatchObject({count: 1, total: 2, sexUnknown: 0})
    expect(counts(of(combClause('Pea.', {allows: {male: pea, female: null}}), birds)!.latest)).toMatchObject({count: 0, total: 0, sexUnknown: 2})
  })

  it('counts what is still accepted as met up to its season, and says so', () => {
    const accepted = (until: number) => combClause('Pea.', {accepted: {what: 'Single combs', looks: {male: {kind: 'states', states: ['single']}, female: null}, until, then: 'serious'}})
    const birds = [inF2('male', [score(comb, 'pea')]), inF2('male', [score(comb, 'single')]), inF2('female', [score(comb, 'single')])]
    expect(of(accepted(2025), birds)).toMatchObject({tolerance: 'in-force', latest: {accepted: 1, share: {count: 2, total: 3}}})
    expect(of(accepted(2024), birds)).toMatchObject({tolerance: 'over', latest: {accepted: 0, share: {count: 1, total: 3}}})
  })

  it('looks only at birds of its variety, and counts apart those of which that cannot be told', () => {
    const varieties = [{name: 'Light', looks: new Map([[skin, white]])}, {name: 'Dark', looks: new Map([[skin, {kind: 'states', states: ['yellow']} as const]])}]
    const birds = [inF2('male', [score(comb, 'pea'), score(skin, 'white')]), inF2('male', [score(comb, 'single'), score(skin, 'yellow')]), inF2('male', [score(comb, 'pea')])]
    expect(counts(of(combClause('Pea.', {variety: 'Light'}), birds, {}, {varieties})!.latest)).toMatchObject({count: 1, total: 1, varietyUnknown: 1})
    // the only variety of a draft, told by no looks, is that of every bird
    expect(counts(of(combClause('Pea.', {variety: 'Light'}), birds, {}, {varieties: [{name: 'Light', looks: new Map()}]})!.latest)).toMatchObject({count: 2, total: 3, varietyUnknown: 0})
  })

  it('keeps scores under other words apart, each against what its draft allowed', () => {
    const single = {kind: 'states', states: ['single']} as const
    const drafts = [draft(1, '2023-01-01', [combClause('Single.', {allows: {male: single, female: single}})]), draft(2, '2024-08-01', [combClause('Pea.')])]
    const birds = [inF2('male', [score(comb, 'pea', {on: date('2024-06-01')})]), inF2('male', [score(comb, 'single', {on: date('2024-06-01')})]), inF2('male', [score(comb, 'pea', {on: date('2024-09-01')})])]
    const [one] = found(logbook('2025-06-01', {birds, drafts})).scored
    expect(one).toMatchObject({latest: {share: {count: 1, total: 1}, otherWords: 2, drafts: [2]}, otherWords: [{clause: {text: 'Single.'}, all: {share: {count: 1, total: 2}, drafts: [1], missed: [{id: birds[0]!.id}]}}]})
  })

  it('names apart the clauses that nobody scores, and why', () => {
    const clauses = [
      plainClause('a/words', 'Words', 'Broad.'), combClause('Pea, low.'), {...skinClause(), id: 'a/skin'}, plainClause('a/none', 'None', 'x', {trait: comb}),
      plainClause('a/weight', 'Weight', 'x', {trait: weight, allows: {male: {kind: 'about', value: 2400, tolerance: null}, female: null}}),
    ]
    const {scored, unscored} = found(logbook('2025-06-01', {birds: [inF2('male', [score(comb, 'pea', {on: date('2024-06-01')})])], traits: [comb, skin, weight], drafts: [draft(1, '2023-01-01', [combClause('Pea.', {allows: {male: EITHER, female: EITHER}})]), draft(2, '2025-01-01', clauses)]}))
    expect(scored).toEqual([])
    expect(unscored.map(({clause, why}) => [clause.id, why])).toEqual([['a/words', 'words-only'], ['male/comb', 'reworded'], ['a/skin', 'never-scored'], ['a/none', 'nothing-allowed'], ['a/weight', 'nothing-allowed']])
  })

  it('puts the worst first, and of equals what it is worse to miss', () => {
    const clauses = [combClause('Pea.', {id: 'a'}), combClause('Pea.', {id: 'b', ifMissed: 'serious'}), combClause('Pea.', {id: 'c', mandatory: true}), skinClause({id: 'd'}), combClause('Pea.', {id: 'e', ifMissed: 'disqualifying'})]
    const birds = [inF2('male', [score(comb, 'pea'), score(skin, 'yellow')]), inF2('male', [score(comb, 'single'), score(skin, 'yellow')])]
    expect(found(logbook('2025-06-01', {birds, traits: [comb, skin], drafts: [draft(1, '2023-01-01', clauses)]})).scored.map(({clause}) => clause.id)).toEqual(['d', 'e', 'b', 'c', 'a'])
  })

  it('puts a clause without a bird of the latest step last, and holds the step before beside it', () => {
    const first = bird('H-1', 'male', {hatched: date('2022-04-01'), step: F1, strain: null, looks: looks(score(comb, 'pea'), score(skin, 'yellow'))})
    const second = inF2('male', [score(comb, 'single')], {parentage: parents([[first, 1]], null)})
    const {scored, step, before} = found(logbook('2025-06-01', {birds: [first, second], traits: [comb, skin], drafts: [draft(1, '2021-01-01', [skinClause(), combClause('Pea.')])]}))
    expect({step, before}).toEqual({step: 'F2', before: 'F1'})
    expect(scored.map(({clause, latest, all}) => [clause.id, counts(latest).total, counts(all).total])).toEqual([['male/comb', 1, 2], ['colour/skin', 0, 1]])
    expect(scored[0]).toMatchObject({before: {share: {count: 1, total: 1}}, change: {difference: -1}})
  })

  it('says by whole sire families what five of them or more allow', () => {
    const sires = Array.from({length: 6}, (_, place) => bird(`S-${place}`, 'male'))
    const birds = sires.flatMap((sire, place) => Array.from({length: 5}, (_each, chick) => inF2('male', [score(comb, chick < place ? 'single' : 'pea')], {parentage: parents([[sire, 1]], null)})))
    expect(of(combClause('Pea.'), [...sires, ...birds])?.families).toMatchObject({kind: 'families', families: 6, n: 30})
  })

  it('is empty where nothing is drafted', () => expect(found(logbook('2025-06-01', {birds: [inF2('male', [])]}))).toMatchObject({draft: null, scored: [], unscored: []}))
})

/** Of drawn books: comb under two wordings, skin under one; drafts that change in the middle of the hatches. */
const drafted = drawnBook.map((book): Logbook => ({
  ...book, drafts: [draft(1, '2022-03-20', [combClause('Pea, low.', {allows: {male: EITHER, female: EITHER}}), skinClause()]), draft(2, '2023-05-20', [combClause('Pea, small.'), skinClause()]), draft(3, '2024-04-12', [combClause(' Pea,\n low.'), skinClause()])],
}))

/** The slow twin: by the words of the test's own drafts and nothing else. */
function recount(book: Logbook, step: string | null, sex: Sex | 'all', of: 'comb' | 'skin') {
  const all = {count: 0, total: 0, sexUnknown: 0, otherWords: 0}
  for (const one of [...book.birds, ...book.hatches.flatMap(({tallies}) => tallies)]) {
    if (one.step.kind === 'strain' || !['F1', 'F2'].includes(one.step.label) || (step !== null && one.step.label !== step) || (sex !== 'all' && one.sex !== sex)) continue
    const value = one.looks.get(of === 'comb' ? comb : skin)?.counted?.value
    if (value === undefined || (of === 'skin' && one.sex === 'female')) continue
    const day = one.hatched!.first + (of === 'comb' ? 42 : 0)
    const drafts = [...book.drafts].reverse(), inForce = drafts.find(({on}) => on.first <= day)?.number ?? 0
    if (of === 'comb' ? inForce < 2 : inForce < 1) all.otherWords += one.count
    else if (of === 'skin' && one.sex === 'unknown') all.sexUnknown += one.count
    else {
      all.total += one.count
      if (value === (of === 'comb' ? 'pea' : 'white')) all.count += one.count
    }
  }
  return all
}

describe('clausesOfFlock of any book', () => {
  it('counts what a slow recount counts', () => {
    fc.assert(fc.property(drafted, book => {
      const {scored, unscored} = found(book)
      for (const [id, name] of [['male/comb', 'comb'], ['colour/skin', 'skin']] as const) {
        const one = scored.find(({clause}) => clause.id === id)
        const whole = recount(book, null, 'all', name)
        if (!one) {
          expect(whole.total + whole.sexUnknown).toBe(0)
          expect(unscored.find(({clause}) => clause.id === id)?.why).toBe(whole.otherWords > 0 ? 'reworded' : 'never-scored')
          continue
        }
        for (const row of one.rows) expect(counts(row)).toEqual({...recount(book, row.step, row.sex, name), accepted: 0, varietyUnknown: 0})
        expect(one.otherWords.reduce((sum, {all}) => sum + counts(all).total + all.sexUnknown, 0)).toBe(whole.otherWords)
      }
    }), {numRuns: 60})
  })

  it('adds up: the sexes to all, the steps to all of them, those that meet it and those that miss it to all judged', () => {
    fc.assert(fc.property(drafted, book => {
      for (const {rows} of found(book).scored) {
        for (const row of rows.filter(({sex}) => sex === 'all')) {
          const sexes = rows.filter(each => each.step === row.step && each.sex !== 'all')
          for (const part of ['count', 'total', 'sexUnknown', 'otherWords'] as const) expect(sexes.reduce((sum, each) => sum + counts(each)[part], 0)).toBe(counts(row)[part])
          expect(counts(row).count + row.missed.reduce((sum, chick) => sum + chick.count, 0)).toBe(counts(row).total)
        }
        const whole = rows.find(({step, sex}) => step === null && sex === 'all')!
        for (const part of ['count', 'total', 'otherWords'] as const) expect(rows.filter(({step, sex}) => step !== null && sex === 'all').reduce((sum, each) => sum + counts(each)[part], 0)).toBe(counts(whole)[part])
      }
    }), {numRuns: 60})
  })

  it('does not mind the order of the records', () => {
    fc.assert(fc.property(drafted, book => {
      const plain = (all: ClausesOfFlock) => all.scored.map(({clause, rows, families, otherWords}) => ({id: clause.id, rows: rows.map(row => ({...counts(row), step: row.step, sex: row.sex, drafts: row.drafts})), families, otherWords: otherWords.map(({all: each}) => counts(each))}))
      expect(plain(found(turned(book)))).toEqual(plain(found(book)))
    }), {numRuns: 40})
  })

  it('never lets a score under other words move the share', () => {
    fc.assert(fc.property(drafted, book => {
      const {scored} = found(book)
      const without = found({...book, birds: book.birds.map(one => ({...one, looks: new Map([...one.looks].filter(([of]) => of !== comb || (one.hatched?.first ?? 0) + 42 >= date('2023-05-20').first))}))})
      const shareOf = (all: readonly ClauseBeside[]) => all.filter(({clause}) => clause.trait === comb).map(({all: {share}}) => (share.kind === 'share' ? [share.count, share.total] : null))
      expect(shareOf(without.scored)).toEqual(shareOf(scored))
    }), {numRuns: 40})
  })
})

describe('hatches of which nobody listed some', () => {
  it('count among the unscored', () => {
    const made = hatch('2024-01', {step: F2, unlisted: 3, on: date('2024-04-01')})
    expect(of(combClause('Pea.'), [inF2('male', [score(comb, 'pea')])], {hatches: [made]})?.latest.share.leftOut).toEqual([{count: 3, why: 'not-listed'}])
  })
})

