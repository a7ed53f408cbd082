import {describe, expect, it} from 'vitest'
import {changesBetween} from '../../src/findings/standard-changes.ts'
import type {Clause, Draft} from '../../src/logbook/book.ts'
import {plainClause, plainDraft, plainSection} from '../paper-parts.ts'

const clause = (id: string, text: string): Clause => plainClause(id, id.split('/')[1] ?? id, text)
const draft = (number: number, sections: Record<string, Clause[]>, more: Partial<Draft> = {}): Draft =>
  plainDraft(number, '2024-01-01', {sections: Object.entries(sections).map(([id, clauses]) => plainSection(id, clauses)), ...more})
const [comb, tail, back] = [clause('head/comb', 'Pea, low.'), clause('body/tail', 'Carried low.'), clause('body/back', 'Broad.')]
const told = (from: Draft, to: Draft): string[] => changesBetween(from, to).clauses.map(({id, is}) => `${is} ${id}`)

describe('changesBetween(one draft, the next)', () => {
  const one = draft(1, {head: [comb], body: [tail, back]})
  it('finds nothing between equal drafts, whatever their white space', () => {
    expect(told(one, draft(2, {head: [{...comb, text: ' Pea,\n low. '}], body: [tail, back]}))).toEqual([])
  })
  it('finds what was added, reworded and dropped, with the reason', () => {
    const two = draft(2, {head: [{...comb, text: 'Pea, three ridges.'}, clause('head/eye', 'Red.')], body: [back]}, {reasons: new Map([['head/comb', 'the judge asked']])})
    expect(told(one, two)).toEqual(['reworded head/comb', 'added head/eye', 'dropped body/tail'])
    expect(changesBetween(one, two).clauses[0]).toMatchObject({why: 'the judge asked', before: {text: 'Pea, low.'}, after: {text: 'Pea, three ridges.'}})
  })
  it('finds one clause moved, not all that stood behind it', () => {
    const many = [tail, back, clause('body/breast', 'Deep.'), clause('body/wings', 'Close.')]
    expect(told(draft(1, {body: many}), draft(2, {body: [...many.slice(1), tail]}))).toEqual(['moved body/tail'])
  })
  it('knows a clause again that went to another section with its words', () => {
    expect(told(one, draft(2, {head: [comb, {...tail, id: 'head/tail'}], body: [back]}))).toEqual(['moved head/tail'])
  })
  it('finds weights and points that changed, came or went', () => {
    const before = draft(1, {}, {weights: [{class: 'cock', grams: 2700, high: null}, {class: 'hen', grams: 2200, high: null}], points: [{name: 'Type', points: 30}]})
    const after = draft(2, {}, {weights: [{class: 'cock', grams: 2700, high: null}, {class: 'pullet', grams: 1800, high: null}], points: [{name: 'Type', points: 35}]})
    const {weights, points} = changesBetween(before, after)
    expect(weights).toEqual([{name: 'pullet', before: null, after: 1800}, {name: 'hen', before: 2200, after: null}])
    expect(points).toEqual([{name: 'Type', before: 30, after: 35}])
  })
})
