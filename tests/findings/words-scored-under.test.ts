import {describe, expect, it} from 'vitest'
import {saysTheSame, scoresUnderWords} from '../../src/findings/words-scored-under.ts'
import type {Clause, Draft, Score, Trait} from '../../src/logbook/book.ts'
import {bird, comb, date, logbook, looks, score, trait, weight} from '../pages/small-logbook.ts'
import {plainClause, plainDraft, plainSection} from '../paper-parts.ts'

const pea = {male: {kind: 'states', states: ['pea']}, female: {kind: 'states', states: ['pea']}} as const
// its words tell: of plain states the same question may be asked in others
const low: Trait = {...comb, id: 'low', kind: 'ordered'}
const clause = (text: string, more: Partial<Clause> = {}): Clause => plainClause('male/comb', 'Comb', text, {trait: low, allows: pea, ...more})
const draft = (number: number, on: string, ...clauses: readonly Clause[]): Draft => plainDraft(number, on, {sections: [plainSection('male', clauses)]})

const FIRST = draft(1, '2023-01-10', clause('Pea, small.')), SECOND = draft(2, '2024-01-10', clause('Pea, low.')), THIRD = draft(3, '2025-01-10', clause('Pea,\n low.'))
const book = logbook('2025-06-01', {drafts: [FIRST, SECOND, THIRD]})
const now = THIRD.sections[0]!.clauses[0]!
const read = scoresUnderWords(book)(now, low)
const hatched = date('2022-03-01')
const under = (...scores: readonly Score[]) => {
  const found = read(bird('1', 'male', {hatched, looks: looks(...scores)}))
  return found && [found.score.value, found.under.draft?.number ?? null, found.under.asNow]
}
const on = (day: string, value = 'pea', more: Partial<Score> = {}): Score => score(low, value, {on: date(day), ...more})

describe('saysTheSame(now, then)', () => {
  it('looks at the words but for white space, the trait and what is allowed of it', () => {
    expect(saysTheSame(clause('Pea, low.'), clause(' Pea,\nlow. '))).toBe(true)
    expect(saysTheSame(clause('Pea, low.'), clause('Pea, small.'))).toBe(false)
    expect(saysTheSame(clause('Pea.'), clause('Pea.', {allows: {male: pea.male, female: null}}))).toBe(false)
    expect(saysTheSame(clause('Pea.'), clause('Pea.', {trait: trait('other', 'Other')}))).toBe(false)
  })

  it('takes other words for the same question where the trait is one of plain states and as much was allowed of it', () => {
    const plainly = (text: string, more: Partial<Clause> = {}): Clause => clause(text, {trait: comb, ...more})
    expect(saysTheSame(plainly('Pea, three ridges.'), plainly('Pea.'))).toBe(true)
    expect(saysTheSame(plainly('Pea, three ridges.'), plainly('Pea.', {allows: {male: pea.male, female: {kind: 'states', states: ['pea', 'single']}}}))).toBe(false)
    expect(saysTheSame(plainly('Pea, three ridges.'), plainly('Pea.', {trait: null, allows: {male: null, female: null}}))).toBe(false)
  })

  it('takes a clause of which no entry named a trait for what its words say, unless today’s has a range of its own', () => {
    const wordsAlone = clause('Pea.', {trait: null, allows: {male: null, female: null}})
    expect(saysTheSame(clause('Pea.'), wordsAlone)).toBe(true)
    expect(saysTheSame(clause('Pea.', {ownRange: true}), wordsAlone)).toBe(false)
  })
})

describe('scoresUnderWords(book)', () => {
  it('takes the draft in force on the day, the very day too', () => {
    expect(under(on('2025-02-01'))).toEqual(['pea', 3, true])
    expect(under(on('2024-01-10'))).toEqual(['pea', 2, true])
    expect(under(on('2024-01-09'))).toEqual(['pea', 1, false])
    expect(under(on('2022-12-01'))).toEqual(['pea', null, false])
  })

  it('takes the draft that the record names, whatever its day', () => {
    expect(under(on('2025-02-01', 'pea', {draft: 1}))).toEqual(['pea', 1, false])
    expect(under(on('2022-02-01', 'pea', {draft: 3}))).toEqual(['pea', 3, true])
    expect(under(on('2025-02-01', 'pea', {draft: 9}))).toEqual(['pea', null, false])
  })

  it('takes an undated score as made when it could first be seen', () => {
    // comb can be scored from 42 days on: 2022-04-12 and 2024-02-12
    expect(under(score(low, 'pea'))).toEqual(['pea', null, false])
    expect(read(bird('1', 'male', {hatched: date('2024-01-01'), looks: looks(score(low, 'pea'))}))?.under).toMatchObject({asNow: true, draft: {number: 2}})
    expect(read(bird('1', 'male', {looks: looks(score(low, 'pea'))}))?.under).toEqual({asNow: false, clause: null, draft: null})
  })

  it('counts the latest by today’s words, though a later one was made by others', () => {
    expect(under(on('2024-06-01', 'single'), on('2025-03-01', 'pea', {draft: 1}))).toEqual(['single', 2, true])
    expect(under(on('2024-06-01', 'single'), on('2024-07-01', 'pea'), on('2025-03-01', 'single', {draft: 1}))).toEqual(['pea', 2, true])
  })

  it('passes over what is struck or outside, and gives null where nothing counts', () => {
    expect(under(on('2025-02-01', 'single', {struck: 'slip'}), on('2023-02-01'))).toEqual(['pea', 1, false])
    expect(under(on('2025-02-01', 'pea', {struck: 'slip'}))).toBeNull()
    expect(under()).toBeNull()
  })

  it('holds what was measured against today’s range whatever the draft', () => {
    const heavy = bird('1', 'male', {hatched, looks: looks(score(weight, 2400, {on: date('2022-07-19')}))})
    expect(scoresUnderWords(book)(plainClause('weights/cock', 'Weight', '', {trait: weight, allows: weight.wanted}), weight)(heavy)).toMatchObject({under: {asNow: true, draft: null}})
  })

  it('finds a clause again that was moved with its words', () => {
    const moved = {...clause('Pea, low.'), id: 'head/comb'}
    const other = logbook('2025-06-01', {drafts: [SECOND, draft(3, '2025-01-10', moved)]})
    expect(scoresUnderWords(other)(moved, low)(bird('1', 'male', {hatched, looks: looks(on('2024-06-01'))}))?.under).toMatchObject({asNow: true, draft: {number: 2}})
  })

  it('finds the only clause of the same title and trait, moved and in other words, and none where there are two', () => {
    const now = clause('Pea, low.', {id: 'head/comb', trait: comb}), then = clause('Pea.', {trait: comb}), chick = bird('1', 'male', {hatched, looks: looks(score(comb, 'pea', {on: date('2024-06-01')}))})
    const of = (...clauses: readonly Clause[]) => scoresUnderWords(logbook('2025-06-01', {drafts: [draft(2, '2024-01-10', ...clauses), draft(3, '2025-01-10', now)]}))(now, comb)(chick)?.under.asNow
    expect([of(then), of(then, {...then, id: 'female/comb'})]).toEqual([true, false])
  })
})
