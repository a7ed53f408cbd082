import {describe, expect, it} from 'vitest'
import {saysTheSame, scoresUnderWords} from '../../src/findings/words-scored-under.ts'
import type {Clause, Draft, Score} from '../../src/logbook/book.ts'
import {bird, comb, date, logbook, looks, score, trait, weight} from '../pages/small-logbook.ts'
import {plainClause, plainDraft, plainSection} from '../paper-parts.ts'

const pea = {male: {kind: 'states', states: ['pea']}, female: {kind: 'states', states: ['pea']}} as const
const clause = (text: string, more: Partial<Clause> = {}): Clause => plainClause('male/comb', 'Comb', text, {trait: comb, allows: pea, ...more})
const draft = (number: number, on: string, ...clauses: readonly Clause[]): Draft => plainDraft(number, on, {sections: [plainSection('male', clauses)]})

const FIRST = draft(1, '2023-01-10', clause('Pea, small.')), SECOND = draft(2, '2024-01-10', clause('Pea, low.')), THIRD = draft(3, '2025-01-10', clause('Pea,\n low.'))
const book = logbook('2025-06-01', {drafts: [FIRST, SECOND, THIRD]})
const now = THIRD.sections[0]!.clauses[0]!
const read = scoresUnderWords(book)(now, comb)
const hatched = date('2022-03-01')
const under = (...scores: readonly Score[]) => {
  const found = read(bird('1', 'male', {hatched, looks: looks(...scores)}))
  return found && [found.score.value, found.under.draft?.number ?? null, found.under.asNow]
}
const on = (day: string, value = 'pea', more: Partial<Score> = {}): Score => score(comb, value, {on: date(day), ...more})

describe('saysTheSame(now, then)', () => {
  it('looks at the words but for white space, the trait and what is allowed of it', () => {
    expect(saysTheSame(clause('Pea, low.'), clause(' Pea,\nlow. '))).toBe(true)
    expect(saysTheSame(clause('Pea, low.'), clause('Pea, small.'))).toBe(false)
    expect(saysTheSame(clause('Pea.'), clause('Pea.', {allows: {male: pea.male, female: null}}))).toBe(false)
    expect(saysTheSame(clause('Pea.'), clause('Pea.', {trait: trait('other', 'Other')}))).toBe(false)
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
    expect(under(score(comb, 'pea'))).toEqual(['pea', null, false])
    expect(read(bird('1', 'male', {hatched: date('2024-01-01'), looks: looks(score(comb, 'pea'))}))?.under).toMatchObject({asNow: true, draft: {number: 2}})
    expect(read(bird('1', 'male', {looks: looks(score(comb, 'pea'))}))?.under).toEqual({asNow: false, clause: null, draft: null})
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
    expect(scoresUnderWords(other)(moved, comb)(bird('1', 'male', {hatched, looks: looks(on('2024-06-01'))}))?.under).toMatchObject({asNow: true, draft: {number: 2}})
  })
})
