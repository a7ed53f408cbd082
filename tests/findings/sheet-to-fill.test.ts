import {describe, expect, it} from 'vitest'
import {birdsOfGroup, birdsOfLatestStep, sheetToFill} from '../../src/findings/sheet-to-fill.ts'
import {ladderOf} from '../../src/findings/ladder.ts'
import {bird, comb, date, F1, F2, hatch, logbook, pen, stay, trait, weight} from '../pages/small-logbook.ts'
import {plainClause, plainDraft, plainSection} from '../paper-parts.ts'

const pea = {male: {kind: 'states', states: ['pea']}, female: {kind: 'states', states: ['pea']}} as const
const shell = trait('shell', 'Shell', {states: ['tinted', 'white'], seenIn: 'female', fromFirstEgg: true})
const tail = trait('tail-angle', 'Tail angle', {kind: 'measured', unit: 'degrees', measure: 'tail-angle'})
const DRAFT = plainDraft(2, '2024-01-10', {
  sections: [plainSection('male', [
    plainClause('male/tail', 'Tail', 'Up.', {trait: tail, allows: {male: {kind: 'between', low: 40, high: 50}, female: null}}), plainClause('male/comb', 'Comb', 'Pea.', {trait: comb, allows: pea}),
    plainClause('female/comb', 'Comb', 'Pea.', {trait: comb, allows: pea}), plainClause('male/neck', 'Neck', 'Long.'), plainClause('egg', 'Egg', 'Tinted.', {trait: shell, allows: {male: null, female: {kind: 'states', states: ['tinted']}}}),
  ])],
  rows: [plainClause('weights/cock', 'Weight, cock', '', {trait: weight, allows: weight.wanted})], points: [{name: 'Type', points: 60}, {name: 'Colour', points: 40}],
})
const gone = {on: date('2024-06-01'), how: 'sold', why: null} as const
const own = {strain: null, hatched: date('2024-03-20')} as const
const made = hatch('2024-01', {step: F2})
const birds = [bird('9', 'male', {...own, step: F2, hatch: made}), bird('10', 'female', {...own, step: F2}), bird('11', 'unknown', {...own, step: F2, left: gone}), bird('7', 'male', {...own, step: F1}), bird('H-1', 'male')]
const book = logbook('2025-01-01', {birds, hatches: [Object.assign(made, {chicks: [birds[0]!]})], pens: [pen('2025-A', 2025, {males: [stay(birds[0]!)], females: [stay(birds[1]!)]}), pen('2024-A', 2024, {males: [stay(birds[4]!)]})], traits: [comb, weight, shell, tail], drafts: [plainDraft(1, '2023-01-10'), DRAFT]})

describe('sheetToFill(asked, book)', () => {
  it('has a row for each bird that lives, in the order of the bands, with its pen, and counts those that have left', () => {
    const {birds: rows, gone: left} = sheetToFill(birds, book)
    expect(rows.map(({bird: {band}, pen: at, notShown}) => [band, at?.id ?? null, notShown.map(({id}) => id)])).toEqual([['10', '2025-A', []], ['7', null, ['shell']], ['9', '2025-A', ['shell']], ['H-1', '2024-A', ['shell']]])
    expect(left).toBe(1)
  })

  it('has a column for each trait of a clause, once, and one for each heading; what is taken from a weigh day has none', () => {
    const {draft, traits, weighed, headings} = sheetToFill(birds, book)
    expect([draft?.number, traits.map(({trait: {id}, clauses}) => [id, clauses.length]), weighed.map(({id}) => id), headings.map(({name}) => name)]).toEqual([2, [['tail-angle', 1], ['comb', 2], ['shell', 1]], ['weight-20'], ['Type', 'Colour']])
  })

  it('asks a bird once, however often it was named', () => expect(sheetToFill([birds[0]!, birds[0]!], book).birds).toHaveLength(1))
  it('has no columns without a draft', () => expect(sheetToFill(birds, logbook('2025-01-01', {birds}))).toMatchObject({draft: null, traits: [], headings: []}))
})

describe('birdsOfGroup(word, book)', () => {
  it.each([['living', 'living', ['9', '10', '7']], ['F2', 'step', ['9', '10', '11']], ['2025-A', 'pen', ['9', '10']], ['2024-01', 'hatch', ['9']]])('knows %s', (word, of, bands) => {
    const found = birdsOfGroup(word, book)
    expect([found?.of, found?.birds.map(({band}) => band)]).toEqual([of, bands])
  })
  it('knows nothing else', () => expect(birdsOfGroup('F9', book)).toBeNull())
})

it('birdsOfLatestStep(ladder) are those of the step the breed stands at', () => expect(birdsOfLatestStep(ladderOf(book)).birds.map(({band}) => band)).toEqual(['9', '10', '11']))
