import {describe, expect, it} from 'vitest'
import {study} from '../../src/findings/study.ts'
import type {Requirement, Trait} from '../../src/logbook/book.ts'
import {shownWords} from '../../src/pages/evidence-words.ts'
import {waySentence} from '../../src/pages/way-words.ts'
import {bookOfFamilies, type, type Family} from '../findings/evenness-book.ts'
import {plainClause, plainDraft, plainSection} from '../paper-parts.ts'
import {requirement} from './shown-logbook.ts'
import {at, comb, F2, weight} from './small-logbook.ts'

function words(families: readonly Family[], more: Partial<Requirement>): string {
  const book = bookOfFamilies(families, {requirements: {at, body: '', association: null, papers: [], distinctness: null, items: [requirement('true-to-type', 'True', 'Half', more)]}})
  const [item] = study(book).evidence.items
  return item ? shownWords(item, book) : expect.fail('no evidence')
}
const many = (count: number, family: Family): Family[] => Array.from({length: count}, () => family)

describe('the words for a requirement of trueness', () => {
  it('read it by sire families where there are five, and say that the rate decides', () => {
    expect(words(many(6, {step: F2, pea: 8, single: 2}), {atLeast: 0.5}))
      .toMatch(/^48 of 60 \(80\.0%, 68\.2 to 88\.2\) showed .*, in 2024, culls counted\. By 6 sire families, as a committee should read it, the interval is \d\d\.\d to \d\d\.\d\. The rate decides; the lower limit, \d\d\.\d%, reaches what is asked too\.$/)
  })

  it('say that it is of these chicks only where there are fewer', () => {
    expect(words([{step: F2, pea: 8, single: 2}], {atLeast: 0.5})).toMatch(/They come of one sire family, so the interval speaks of these chicks only\. The rate decides; the lower limit, 49\.0%, does not reach what is asked\.$/)
    expect(words([{step: F2, pea: 8, single: 2}], {atLeast: 0.5, interval: 'families'})).toMatch(/The lower limit by families has to reach what is asked, and under five families there is none\.$/)
  })

  it('give the interval of Clopper and Pearson where the requirement asks for it', () => {
    // R 4, binom.test(8, 10): 0.4439 to 0.9748 (from memory)
    expect(words([{step: F2, pea: 8, single: 2}], {atLeast: 0.5, interval: 'exact'})).toMatch(/By Clopper and Pearson the interval is 44\.4 to 97\.5\. The lower limit, 44\.4%, has to reach what is asked, and does not\.$/)
  })
})

describe('the words for a requirement of trueness to clauses', () => {
  const held = (of: Trait, more: Parameters<typeof plainClause>[3] = {}) => plainClause(`general/${of.id}`, 'In both sexes', of.name, {trait: of, allows: of.wanted, ...more})
  const said = (families: readonly Family[], clauses: Parameters<typeof plainSection>[1], more: Partial<Requirement>): {readonly shown: string; readonly way: string} => {
    const book = bookOfFamilies(families, {
      drafts: [plainDraft(1, '2024-01-01', {sections: [plainSection('general', clauses)]})], requirements: {at, body: '', association: null, papers: [], distinctness: null, items: [requirement('true-to-type', 'True', 'Half', more)]},
    }), [item] = study(book).evidence.items
    return item ? {shown: shownWords(item, book), way: waySentence(item, book.asOf)} : expect.fail('no evidence')
  }

  it('name what was asked, who was not fully scored and what could not be held against anybody', () => {
    const {shown, way} = said([{step: F2, pea: 8, single: 2}], [held(comb, {mandatory: true}), plainClause('general/gait', 'Gait', 'Free.', {mandatory: true})], {atLeast: 0.5})
    expect(shown).toMatch(/^8 of 10 \(80\.0%, 49\.0 to 94\.3\) showed all that the mandatory clauses ask of their sex \(comb\), in 2024, culls counted\. One mandatory clause has no trait that chicks could be scored for, and is not in it\. They come of one sire family/)
    expect(way).toBe('Shortest way: give general/gait a trait, and say what it may show, or name in the requirement the clauses it is about.')
    const graded = said([{step: F2, pea: 6, single: 2, type: [8, 8, 8, 8, 8]}], [held(comb), held(type)], {atLeast: 0.7, clauses: ['general/comb', 'general/type']})
    expect(graded.shown).toMatch(/^5 of 7 \(71\.4%, .*\) showed all that is asked of their sex \(comb and type\), in 2024, culls counted\. Were the one not fully scored to fail, it would be 5 of 8 /)
    expect(graded.way).toBe('Shortest way: score the rest: 0-5, of whom at least 1 must be right.')
  })

  it('say what is not counted: what is only accepted for a time, and those culled before they could be judged', () => {
    const accepted = {what: 'Single combs', looks: {male: {kind: 'states', states: ['single']}, female: null}, until: 2030, then: 'serious'} as const
    expect(said([{step: F2, pea: 8, single: 2}], [held(comb, {mandatory: true, accepted})], {atLeast: 0.5}).shown).toContain(' What is only accepted for a time in comb does not count as meeting it. ')
    expect(said([{step: F2, pea: 8, single: 2}], [held(comb, {mandatory: true, accepted: {...accepted, until: 2020}})], {atLeast: 0.5}).shown).not.toContain('accepted for a time')
    const book = bookOfFamilies([{step: F2, pea: 8, single: 2}], {requirements: {at, body: '', association: null, papers: [], distinctness: null, items: [requirement('true-to-type', 'True', 'Half', {atLeast: 0.75})]}})
    const early = {...book, birds: book.birds.map((each, index) => (index < book.birds.length - 2 || !each.hatched ? each : {...each, looks: new Map(), left: {on: {text: '', first: each.hatched.first + 3, last: each.hatched.first + 3}, how: 'culled' as const, why: null}}))}, [item] = study(early).evidence.items
    if (!item) throw new Error('no evidence')
    expect(shownWords(item, early)).toMatch(/^8 of 8 .* showed every required trait of their sex \(comb.*\), in 2024, culls counted\. It would still be reached if the 2 culled before they could be judged failed\./)
    const all = {...early, birds: early.birds.map(each => (each.left?.how === 'culled' ? each : {...each, looks: new Map()}))}, [none] = study(all).evidence.items
    if (!none) throw new Error('no evidence')
    expect(shownWords(none, all)).toMatch(/^None scored in 2024; 8 chicks not fully scored; 2 chicks culled before they could be judged\./)
  })

  it('count those that nobody listed among what is open', () => {
    const book = bookOfFamilies([{step: F2, pea: 8, single: 2}], {requirements: {at, body: '', association: null, papers: [], distinctness: null, items: [requirement('true-to-type', 'True', 'Half', {atLeast: 0.75})]}})
    const [item] = study({...book, hatches: book.hatches.map(each => ({...each, unlisted: 3}))}).evidence.items
    if (!item) throw new Error('no evidence')
    expect(item.state).toBe('cannot-tell')
    expect(shownWords(item, book)).toMatch(/Were the 3 that nobody listed to fail, it would be 8 of 13 \(61\.5%, .*\)\. Apart: 3 hatched but not listed\./)
    expect(waySentence(item, book.asOf)).toBe('Shortest way: write what became of 3 chicks.')
  })

  it('say that nobody was scored for a clause, and whom to score', () => {
    const {shown, way} = said([{step: F2, pea: 2}], [held(comb), held(type)], {atLeast: 0.5, clauses: ['general/comb', 'general/type', 'general/gone']})
    expect(shown).toMatch(/^None scored in 2024; 2 chicks not fully scored\. Nobody was scored for type\. Nothing can be held against chicks for general\/gone\.$/)
    expect(way).toBe('Shortest way: give general/gone a trait, and say what it may show; score type: 0-0 and 0-1.')
  })

  it('count the chicks that are wanting, with the season, the sires and the rate', () => {
    const few = [{step: F2, pea: 3, single: 7}], asked = [held(comb, {mandatory: true})]
    // by hand: (3 + m)/(10 + m) ≥ ½ at m = 4
    expect(said(few, asked, {atLeast: 0.5}).way).toBe('Shortest way: 4 more chicks, if every one is right, in 2025 at the earliest.')
    expect(said(few, asked, {atLeast: 0.2, judgedOn: 'cautious'}).way).toMatch(/^Shortest way: \d+ more chicks?, if every one is right, of four more sires at least, as 2024 then counts no more, in 20\d\d at the earliest\.$/)
    // 0.025^(1/m) ≥ 0.9 at m = 36 by hand, of two seasons of ten
    expect(said(few, asked, {atLeast: 0.9, interval: 'exact'}).way).toBe('Shortest way: 36 more chicks, if every one is right, in two seasons, where 10 were reared in the latest.')
    expect(said(few, asked, {}).way).toBe('Shortest way: write in the requirement how much is asked.')
  })
})

describe('the words for a requirement of evenness', () => {
  const said = (families: readonly Family[], more: Partial<Requirement>): {readonly shown: string; readonly way: string} => {
    const book = bookOfFamilies(families, {requirements: {at, body: '', association: null, papers: [], distinctness: null, items: [requirement('even-weight', 'Even', 'Even', {trait: weight, ...more})]}}), [item] = study(book).evidence.items
    return item ? {shown: shownWords(item, book), way: waySentence(item, book.asOf)} : expect.fail('no evidence')
  }
  const males: Family = {step: F2, grams: [2300, 2350, 2400, 2450, 2500]}, females: Family = {step: F2, sex: 'female', grams: [1500, 1700, 1900, 2100, 2300]}

  it('give every figure asked of each sex, and which sex to bring how far', () => {
    const {shown, way} = said([males, females], {atMost: 0.1, insideAtLeast: 0.5})
    expect(shown).toMatch(/^Weight at 20 weeks, CV: cockerels 3\.3% \(.*\) of 5, inside the target 5 of 5 \(100\.0%, 56\.6 to 100\.0\); pullets 16\.6% \(.*\) of 5, inside the target 1 of 5 \(20\.0%, .*\)\. Step F2\.$/)
    expect(way).toBe('Shortest way: bring the coefficient of variation of the females in weight at 20 weeks from 16.6% to 10.0%, and bring the share inside the target of the females in weight at 20 weeks from 20.0% to 50.0%.'.replace(', and', ' and'))
  })

  it('name the sex of which nobody was weighed, and the classes that nobody knows', () => {
    const {shown, way} = said([males], {atMost: 0.1, classes: ['cockerel', 'pullet', 'giants']})
    expect(shown).toMatch(/Step F2\. No pullets of it were weighed for weight at 20 weeks\. Which birds stand in “giants” is not known\.$/)
    expect(way).toBe('Shortest way: call giants cock, cockerel, hen or pullet; weigh 5 more birds of the females, reared together, for weight at 20 weeks.')
  })

  it('say why fewer birds have a spread than are held against the target', () => {
    const pair: Family = {step: F2, grams: [2350, 2450]}
    expect(said([males, pair], {atMost: 0.1, insideAtLeast: 0.5, classes: ['cockerel']}).shown).toMatch(/cockerels 3\.3% \(.*\) of 5, inside the target 7 of 7 \(.*\); 2 birds were reared with so few of their sex, under five, that no spread can be told of them, but are held against the target\. Step F2\./)
  })

  it('say by how many sire families the end of an interval is read, and what more would settle it', () => {
    const one = said([males], {atMost: 0.08, classes: ['cockerel'], judgedOn: 'cautious'})
    expect(one.shown).toMatch(/The end of each interval by sire families that speaks against the breed decides\. It cannot be told of cockerels \(1 sire family\): brothers and sisters are alike, and only five families or more, reared together, tell what that leaves open\.$/)
    expect(one.way).toBe('Shortest way: weigh males of four more sires, reared with the others, for weight at 20 weeks.')
    const five = said([0, 1, 2, 3, 4].map(place => ({...males, grams: males.grams?.map(grams => grams + 10 * place) ?? []})), {atLeast: 0.99, classes: ['cockerel'], judgedOn: 'cautious'})
    expect(five.shown).toMatch(/decides: cockerels, within a tenth \d\d\.\d% at the least \(by 5 sire families\)\.$/)
    expect(five.way).toMatch(/^Shortest way: weigh more males: with \d+ in place of 25, as even as these, no interval would reach past what is asked\.$/)
  })
})
