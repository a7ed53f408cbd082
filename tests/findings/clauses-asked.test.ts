import {describe, expect, it} from 'vitest'
import {looksAsked} from '../../src/findings/clauses-asked.ts'
import {sameName} from '../../src/findings/same-name.ts'
import {plainClause, plainDraft, plainRequirement, plainSection} from '../paper-parts.ts'
import {comb, logbook, weight} from '../pages/small-logbook.ts'
import {skin} from './drawn-book.ts'

const PEA = {kind: 'states', states: ['pea']} as const
const clauses = [
  plainClause('male/comb', 'Comb', 'Pea.', {trait: comb, allows: {male: PEA, female: null}, mandatory: true}), plainClause('male/tail', 'Tail', 'Long.', {mandatory: true}),
  plainClause('colour/light/skin', 'Skin', 'White.', {trait: skin, allows: skin.wanted, variety: 'Light', mandatory: true}), plainClause('male/spurs', 'Spurs', 'Short.'),
  plainClause('male/size', 'Size', 'About right.', {trait: weight, allows: {male: {kind: 'about', value: 2400, tolerance: null}, female: null}}),
]
const book = logbook('2025-10-30', {traits: [comb, skin, weight], drafts: [plainDraft(1, '2024-01-01'), plainDraft(2, '2025-01-01', {sections: [plainSection('male', clauses)], rows: [plainClause('weights/cock', 'Cock', '', {trait: weight, allows: weight.wanted})]})]})
const of = (more: Parameters<typeof plainRequirement>[1] = {}, from = book) => {
  const {by, looks, untold} = looksAsked(plainRequirement('true-to-type', more), from)
  return {by, looks: looks.map(({clause, scored}) => `${clause?.id ?? '-'} ${scored.id}`), untold}
}

describe('looksAsked(requirement, book)', () => {
  it('takes the clauses named, rows of tables too, and names those that nothing can be held against', () => {
    expect(of({clauses: ['weights/cock', 'male/spurs', 'male/gone', 'male/comb', 'male/size']})).toEqual({by: 'clauses', looks: ['weights/cock weight-20', 'male/comb comb'], untold: ['male/spurs', 'male/gone', 'male/size']})
  })

  it('else takes the mandatory clauses of the latest draft, of all varieties or of those named', () => {
    expect(of()).toEqual({by: 'mandatory', looks: ['male/comb comb', 'colour/light/skin skin'], untold: ['male/tail']})
    expect(of({varieties: ['light ']}).looks).toEqual(['male/comb comb', 'colour/light/skin skin'])
    expect(of({varieties: ['Dark']}).looks).toEqual(['male/comb comb'])
  })

  it('else takes the required traits as they stand', () => {
    expect(of({}, {...book, drafts: book.drafts.slice(0, 1)})).toEqual({by: 'required', looks: ['- comb', '- skin'], untold: []})
    expect(of({}, {...book, drafts: []}).by).toBe('required')
  })

  it('wants of a trait what the clause allows, of the sex that it speaks of', () => {
    const [look] = looksAsked(plainRequirement('true-to-type', {clauses: ['male/comb']}), book).looks
    expect(look?.trait.wanted).toEqual({male: PEA, female: null})
    expect(look?.scored).toBe(comb)
  })

  it('reads names whatever their capitals', () => {
    expect(sameName(' Light', 'light')).toBe(true)
    expect(sameName('Light', 'Dark')).toBe(false)
  })
})
