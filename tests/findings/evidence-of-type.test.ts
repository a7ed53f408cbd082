import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import type {Evidence} from '../../src/findings/evidence.ts'
import {decidedBy} from '../../src/findings/evidence-of-type.ts'
import type {ShownOfType} from '../../src/findings/shown-of-breeding.ts'
import {study} from '../../src/findings/study.ts'
import type {Bird, Draft, Logbook, Requirement, Trait} from '../../src/logbook/book.ts'
import {clopperPearson} from '../../src/statistics/clopper-pearson.ts'
import {plainClause, plainDraft, plainRequirement, plainSection} from '../paper-parts.ts'
import {at, bird, comb, date, F1, F2, hatch, logbook, looks, parents, score, tally, trait, weight} from '../pages/small-logbook.ts'
import '../seeded.ts'
import {skin} from './drawn-book.ts'
import {evenBook} from './evenness-book.ts'

const tail: Trait = trait('tail', 'Tail', {kind: 'measured', unit: '°', scoredFrom: 300, wanted: {male: {kind: 'at-most', value: 50}, female: {kind: 'at-most', value: 50}}})
const held = (of: Trait, more: Parameters<typeof plainClause>[3] = {}) => plainClause(`general/${of.id}`, of.name, of.name, {trait: of, allows: of.wanted, ...more})
const draft = (...clauses: Parameters<typeof plainSection>[1]): Draft => plainDraft(1, '2023-01-01', {sections: [plainSection('general', clauses)]})
const MANDATORY = draft(held(comb, {mandatory: true}), held(skin, {mandatory: true}))

interface Chick {
  readonly comb?: string
  readonly skin?: string
  readonly tail?: number
  readonly sex?: 'male' | 'female' | 'unknown'
  readonly left?: string
  readonly how?: 'culled' | 'died' | 'lost' | 'sold'
}
/** Chicks of one hatch inside the breed, by one cock. */
function bookOf(chicks: readonly Chick[], {on = '2024-03-23', asOf = '2025-10-30', drafts = [MANDATORY], unlisted = 0, ...more}: {on?: string; asOf?: string; unlisted?: number} & Partial<Omit<Logbook, 'asOf'>> = {}): Logbook {
  const cock = bird('C', 'male'), from = hatch('2024-01', {on: date(on), step: F2, unlisted})
  const birds = chicks.map((each, index): Bird => bird(`c${index}`, each.sex ?? 'male', {
    hatched: date(on), hatch: from, step: F2, strain: null, parentage: parents([[cock, 1]], null), left: each.left === undefined ? null : {on: date(each.left), how: each.how ?? 'culled', why: null},
    looks: looks(...(each.comb ? [score(comb, each.comb, {on: date('2024-06-01')})] : []), ...(each.skin ? [score(skin, each.skin)] : []), ...(each.tail === undefined ? [] : [score(tail, each.tail)])),
  }))
  Object.assign(from, {chicks: birds, hatched: birds.length + unlisted})
  return logbook(asOf, {traits: [comb, skin, tail, weight], birds: [cock, ...birds], hatches: [from], drafts, ...more})
}
function found(book: Logbook, more: Partial<Requirement>): Evidence & {readonly shown: ShownOfType} {
  const [item] = study({...book, requirements: {at, body: '', association: null, papers: [], distinctness: null, items: [plainRequirement('true-to-type', more)]}}).evidence.items
  if (item?.shown.kind !== 'true-to-type') throw new Error(`no evidence of type: ${item?.shown.kind}`)
  return {...item, shown: item.shown}
}
const many = (count: number, each: Chick): readonly Chick[] => Array.from({length: count}, () => each)
const TRUE: Chick = {comb: 'pea', skin: 'white'}

describe('trueToType(requirement, from)', () => {
  it('counts chicks that meet all mandatory clauses, of all reared to be scored, kept or not', () => {
    const book = bookOf([...many(6, TRUE), {comb: 'single', skin: 'white'}, {comb: 'pea', skin: 'yellow', left: '2024-09-01'}, {comb: 'pea'}, {left: '2024-04-02'}], {unlisted: 2})
    const {state, shown, behind} = found(book, {atLeast: 0.5})
    // by hand: 6 of 8 scored for both, and were the one without a skin, the one culled at ten days and the two never listed to fail 6 of 12
    expect(shown).toMatchObject({by: 'mandatory', seasons: [2024], rate: {passes: 6, fails: 2, partScored: 1, lost: 0, unlisted: 2, rate: {value: 0.75}}, ifFail: {share: {count: 6, total: 12}}, ifPass: {share: {count: 10, total: 12}}, open: {scored: 1, culled: 1, unlisted: 2}})
    expect(state).toBe('met')
    expect(found(book, {atLeast: 0.6})).toMatchObject({state: 'cannot-tell', ways: [{kind: 'score-rest', right: 2, gone: 1}, {kind: 'follow-chicks', chicks: 2}]})
    expect(behind.birds.map(({id}) => id)).toEqual(['c0', 'c1', 'c2', 'c3', 'c4', 'c5', 'c6', 'c7', 'c8'])
    expect(behind.on).toBe(date('2024-06-01').last)
  })

  it('is met, not yet or untold by what those not fully scored can still change', () => {
    const book = bookOf([...many(6, TRUE), ...many(2, {comb: 'single', skin: 'white'}), ...many(2, {comb: 'pea'})])
    // by hand: between 6 and 8 of 10
    expect([0.6, 0.61, 0.8, 0.81].map(atLeast => found(book, {atLeast}).state)).toEqual(['met', 'cannot-tell', 'cannot-tell', 'not-yet'])
    expect(found(book, {atLeast: 0.7}).ways).toMatchObject([{kind: 'score-rest', right: 1, unbanded: 0, gone: 0, birds: [{id: 'c8'}, {id: 'c9'}]}])
    // (6 + m)/(10 + m) ≥ 0.81 at m = 12 by hand, more than the 10 of a season; after two only new ones count. The first may be of 2025, which has none yet
    expect(found(book, {atLeast: 0.81, seasons: 2}).ways).toMatchObject([{kind: 'chicks-true', more: 10, seasons: 2, earliest: {kind: 'season', season: 2026}}])
    expect(found(book, {}).ways).toEqual([{kind: 'name-figure', earliest: null}])
  })

  it('sends nobody to score chicks that are gone', () => {
    const book = bookOf([...many(6, TRUE), ...many(2, {comb: 'single', skin: 'white'}), {comb: 'pea'}, {comb: 'pea', left: '2025-01-01'}])
    // by hand: 6 of 10 for sure, 7 with the one that lives, 8 with the one that left
    expect(found(book, {atLeast: 0.7})).toMatchObject({state: 'cannot-tell', ways: [{kind: 'score-rest', right: 1, gone: 1, birds: [{id: 'c8'}]}]})
    expect(found(book, {atLeast: 0.8})).toMatchObject({state: 'cannot-tell', ways: [{kind: 'chicks-true', more: 10}]})
  })

  it('never takes a chick for true that is not of an age for all that is asked', () => {
    const drafts = [draft(held(comb, {mandatory: true}), held(tail, {mandatory: true}))], all = [...many(4, {comb: 'pea', tail: 45}), {comb: 'single', tail: 45}, {comb: 'pea', left: '2024-09-01'}, {comb: 'single', left: '2024-09-01'}]
    // by hand: four of six; the cull that was off counts, the one that was right so far does not
    expect(found(bookOf(all, {drafts}), {atLeast: 0.6}).shown).toMatchObject({rate: {passes: 4, fails: 2, lost: 0}, open: {culled: 1}})
    const young = found(bookOf(all, {drafts, asOf: '2024-11-01'}), {atLeast: 0.6})
    expect(young).toMatchObject({state: 'cannot-tell', shown: {rate: {passes: 0, fails: 0, tooYoung: 7}}, ways: [{kind: 'of-age', chicks: 7, earliest: {kind: 'day', day: date('2024-03-23').last + 300}}]})
  })

  it('cannot tell while nobody was scored for a clause, and names it', () => {
    const drafts = [draft(held(comb, {mandatory: true}), held(tail))], book = bookOf(many(5, {comb: 'pea'}), {drafts})
    expect(found(book, {atLeast: 0.5}).state).toBe('met')
    expect(found(book, {atLeast: 0.5, clauses: ['general/comb', 'general/tail']})).toMatchObject({
      state: 'cannot-tell', shown: {looks: [{trait: {id: 'comb'}, scored: 5}, {trait: {id: 'tail'}, scored: 0}]}, ways: [{kind: 'score', trait: {id: 'tail'}, birds: {length: 5}}],
    })
    expect(found(book, {atLeast: 0.5, clauses: ['general/comb', 'general/gone']})).toMatchObject({state: 'cannot-tell', shown: {untold: ['general/gone']}, ways: [{kind: 'hold-clauses', clauses: ['general/gone']}]})
  })

  it('takes no cull before the age of scoring for a loss, for it is the keeper’s choice', () => {
    const drafts = [draft(held(comb, {mandatory: true}))], of = (how: Chick['how']) => found(bookOf([...many(6, {comb: 'pea'}), {comb: 'single'}, ...many(3, {left: '2024-04-02', how})], {drafts}), {atLeast: 0.65})
    // by hand: 6 of 7, and 6 of 10 were the three to fail
    expect(of('culled')).toMatchObject({state: 'cannot-tell', shown: {open: {culled: 3}, ifFail: {share: {count: 6, total: 10}}, rate: {lost: 0}}, ways: [{kind: 'chicks-true'}]})
    for (const how of ['died', 'lost', 'sold'] as const) expect(of(how)).toMatchObject({state: 'met', shown: {open: {culled: 0}, rate: {lost: 3}}})
  })

  it('does not count a grade that was given while the clause read otherwise, but the same question in other words', () => {
    const type = trait('type', 'Type', {kind: 'graded', scale: {from: 1, to: 10}, wanted: {male: {kind: 'at-least', value: 7}, female: {kind: 'at-least', value: 7}}})
    const saying = (of: Trait, words: string, id = of.id) => plainClause(`general/${id}`, of.name, words, {trait: of, allows: of.wanted, mandatory: true})
    const drafts = (of: Trait) => [draft(saying(of, 'Then.')), {...draft(saying(of, 'Now.')), number: 2, on: date('2024-09-01')}]
    const graded = (book: Logbook): Logbook => ({...book, traits: [...book.traits, type], birds: book.birds.map((each, index) => (each.id === 'C' ? each : {...each, looks: looks(score(type, 8, {on: date(index > 4 ? '2024-10-01' : '2024-06-01')}))}))})
    expect(found(graded(bookOf(many(6, {}), {drafts: drafts(type)})), {atLeast: 0.5})).toMatchObject({
      state: 'cannot-tell', shown: {rate: {passes: 2, partScored: 4}, looks: [{scored: 6, otherWords: 4}]}, ways: [{kind: 'score-rest', right: 1, birds: {length: 4}}],
    })
    // what does not count stands behind nothing
    expect(found(graded(bookOf(many(4, {}), {drafts: drafts(type)})), {atLeast: 0.5}).behind.on).toBe(date('2024-03-23').last)
    expect(found(graded(bookOf(many(4, {}), {drafts: drafts(type)})), {atLeast: 0.5})).toMatchObject({state: 'cannot-tell', shown: {rate: {passes: 0, partScored: 4}}, ways: [{kind: 'score', birds: {length: 4}}]})
    expect(found(bookOf(many(6, {comb: 'pea'}), {drafts: drafts(comb)}), {atLeast: 0.5})).toMatchObject({state: 'met', shown: {rate: {passes: 6}, looks: [{scored: 6, otherWords: 0}]}})
  })

  it('is not met on those mandatory clauses alone that something can be held against, and not yet all the same', () => {
    const drafts = [draft(held(comb, {mandatory: true}), plainClause('general/gait', 'Gait', 'Free.', {mandatory: true}))], book = bookOf([...many(6, {comb: 'pea'}), ...many(4, {comb: 'single'})], {drafts})
    expect(found(book, {atLeast: 0.6})).toMatchObject({state: 'cannot-tell', shown: {untold: ['general/gait']}, ways: [{kind: 'hold-clauses', clauses: ['general/gait']}]})
    expect(found(book, {atLeast: 0.6, clauses: ['general/comb']}).state).toBe('met')
    expect(found(book, {atLeast: 0.7})).toMatchObject({state: 'not-yet', ways: [{kind: 'hold-clauses'}, {kind: 'chicks-true'}]})
  })

  it('asks for the full age of required traits too, and for a score of each of them', () => {
    const young = {drafts: [], asOf: '2024-04-20'}
    expect(found(bookOf(many(5, {skin: 'white'}), young), {atLeast: 0.5})).toMatchObject({state: 'cannot-tell', shown: {by: 'required', rate: {passes: 0, tooYoung: 5}}})
    expect(found(bookOf(many(5, {skin: 'white'}), {drafts: []}), {atLeast: 0.5})).toMatchObject({state: 'cannot-tell', shown: {rate: {passes: 0, partScored: 5}}, ways: [{kind: 'score', trait: {id: 'comb'}}]})
    expect(found(bookOf(many(5, TRUE), {drafts: []}), {atLeast: 0.5}).state).toBe('met')
  })

  it('asks of each sex what the clauses say of it, and of a chick without a sex both', () => {
    const drafts = [draft(plainClause('male/comb', 'Comb', 'Pea.', {trait: comb, allows: {male: comb.wanted.male, female: null}, mandatory: true}))]
    const {shown} = found(bookOf([{comb: 'pea'}, {comb: 'single'}, {comb: 'single', sex: 'female'}, {comb: 'pea', sex: 'unknown'}], {drafts}), {atLeast: 0.5})
    expect(shown.rate).toMatchObject({passes: 1, fails: 1, partScored: 1})
  })

  it('takes a colour variety by its looks, and does not tell one that was not scored', () => {
    const light = {name: 'Light', looks: new Map([[skin, {kind: 'states', states: ['white']} as const]])}, dark = {name: 'Dark', looks: new Map([[skin, {kind: 'states', states: ['yellow']} as const]])}
    const drafts = [{...draft(held(comb, {mandatory: true, variety: 'Light'})), varieties: [light, dark]}], all = [...many(3, TRUE), {comb: 'single', skin: 'white'}, {comb: 'single', skin: 'yellow'}, {comb: 'pea'}]
    expect(found(bookOf(all, {drafts}), {atLeast: 0.5, varieties: ['light']}).shown.rate).toMatchObject({passes: 3, fails: 1, partScored: 1})
    // of no variety asked about, the dark one is asked for nothing by a clause of the light ones
    expect(found(bookOf(all, {drafts}), {atLeast: 0.5}).shown.rate).toMatchObject({passes: 3, fails: 1, partScored: 2})
  })

  it('counts chicks of the days asked about only, and a tally by its chicks', () => {
    const made = hatch('2025-01', {on: date('2025-03-01'), step: F2}), lot = tally(made, 7, {looks: looks(score(comb, 'pea'), score(skin, 'white'))})
    Object.assign(made, {tallies: [lot], hatched: 7})
    const old = bookOf(many(3, {comb: 'single', skin: 'white'})), book = {...old, hatches: [...old.hatches, made]}
    expect(found(book, {atLeast: 0.6}).shown.rate).toMatchObject({passes: 7, fails: 3, unbanded: 7})
    expect(found(book, {atLeast: 0.6, from: date('2025-01-01')})).toMatchObject({shown: {rate: {passes: 7, fails: 0}}, aged: {earlier: 3}})
    expect(found(book, {atLeast: 0.6, within: 365})).toMatchObject({shown: {rate: {passes: 7, fails: 0}}, aged: {older: 3}})
    expect(found(book, {atLeast: 0.6, seasons: 1}).shown.seasons).toEqual([2025])
  })

  it('has nothing to go by where nothing was mated inside the breed', () => {
    const book = bookOf(many(3, TRUE)), birds = book.birds.map(each => (each.id === 'C' ? each : {...each, step: F1}))
    expect(study({...book, birds, hatches: [], requirements: {at, body: '', association: null, papers: [], distinctness: null, items: [plainRequirement('true-to-type', {atLeast: 0.5})]}}).evidence.items[0]).toMatchObject({state: 'cannot-tell', shown: {kind: 'nothing-recorded'}})
  })

  it('lets the estimate or the cautious end decide as the requirement says', () => {
    expect([[null, null], ['estimate', 'exact'], [null, 'exact'], ['cautious', null], ['cautious', 'exact'], [null, 'families']].map(([judgedOn, interval]) => decidedBy({judgedOn, interval} as Pick<Requirement, 'judgedOn' | 'interval'>)))
      .toEqual(['estimate', 'estimate', 'exact', 'families', 'exact', 'families'])
    // by Clopper and Pearson 29 of 32 are at 75.0% at the least (R 4, binom.test(29, 32), from memory)
    const book = bookOf([...many(29, TRUE), ...many(3, {comb: 'single', skin: 'white'})])
    expect([0.74, 0.76].map(atLeast => found(book, {atLeast, judgedOn: 'cautious', interval: 'exact'}).state)).toEqual(['met', 'not-yet'])
    expect(found(book, {atLeast: 0.76, judgedOn: 'estimate', interval: 'exact'}).state).toBe('met')
    // one sire: no interval by families; but above the share itself none could lie
    expect([0.5, 0.95].map(atLeast => found(book, {atLeast, judgedOn: 'cautious'}).state)).toEqual(['cannot-tell', 'not-yet'])
    expect(found(book, {atLeast: 0.5, judgedOn: 'cautious'}).ways).toMatchObject([{kind: 'chicks-true', sires: 4}])
  })

  it('is told by its slow twin over drawn books', () => {
    fc.assert(fc.property(evenBook, fc.constantFrom(0.3, 0.5, 0.7, 0.9), (book, atLeast) => {
      const own = {...book, drafts: [{...MANDATORY, on: date('2020-01-01')}]}, [item] = study({...own, requirements: {at, body: '', association: null, papers: [], distinctness: null, items: [plainRequirement('true-to-type', {atLeast, interval: 'exact', seasons: 9})]}}).evidence.items
      if (item?.shown.kind !== 'true-to-type') return
      let k = 0, f = 0, u = 0, c = 0
      const scored = new Set<string>(), unlisted = own.hatches.reduce((sum, {step, unlisted: few}) => sum + (step.interSe < 1 ? 0 : few), 0)
      for (const chick of [...own.birds, ...own.hatches.flatMap(({tallies}) => tallies)]) {
        if (chick.step.interSe < 1) continue
        const pea = chick.looks.get(comb)?.counted?.value, white = chick.looks.get(skin)?.counted?.value, gone = chick.left?.on && chick.hatched && chick.left.on.last - chick.hatched.first < 42
        if (pea !== undefined) scored.add('comb')
        if (white !== undefined) scored.add('skin')
        if (pea === 'single' || white === 'yellow') f += chick.count
        else if (pea === 'pea' && white === 'white') k += chick.count
        else if (!gone || pea === 'pea') u += chick.count
        else if (chick.left?.how === 'culled') c += chick.count
      }
      expect([item.shown.rate.passes, item.shown.rate.fails, item.shown.rate.partScored]).toEqual([k, f, u])
      const low = (right: number, of: number): number => (of === 0 ? 0 : clopperPearson(right, of).low)
      const told = k + f === 0 || scored.size < 2 ? 'cannot-tell' : low(k, k + f + u + c + unlisted) >= atLeast ? 'met' : low(k + u + c + unlisted, k + f + u + c + unlisted) < atLeast ? 'not-yet' : 'cannot-tell'
      expect(item.state).toBe(told)
    }), {numRuns: 60})
  })

  it('is never met by the dropping of scores', () => {
    const drop = fc.array(fc.boolean(), {minLength: 5, maxLength: 40})
    fc.assert(fc.property(evenBook, drop, fc.constantFrom(0.2, 0.4, 0.6, 0.8), fc.constantFrom('estimate', 'exact'), fc.constantFrom('mandatory', 'required'), (book, draws, atLeast, by, from) => {
      const own = {...book, drafts: from === 'mandatory' ? [MANDATORY] : []}
      let next = 0
      const isReared = ({left, hatched}: Pick<Bird, 'left' | 'hatched'>): boolean => left === null || left.on === null || (hatched !== null && left.on.last - hatched.first >= 42)
      const without = (chick: Bird): Bird => ({...chick, looks: new Map([...chick.looks].filter(() => !isReared(chick) || draws[next++ % draws.length]))})
      const less = {...own, birds: own.birds.map(without)}
      const stateOf = (of: Logbook): string | undefined => study({...of, requirements: {at, body: '', association: null, papers: [], distinctness: null, items: [plainRequirement('true-to-type', {atLeast, judgedOn: by === 'exact' ? 'cautious' : 'estimate', interval: 'exact'})]}}).evidence.items[0]?.state
      if (stateOf(less) === 'met') expect(stateOf(own)).toBe('met')
    }), {numRuns: 60})
  })
})
