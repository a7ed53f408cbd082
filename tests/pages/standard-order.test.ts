import {describe, expect, it} from 'vitest'
import type {Draft, SectionKind} from '../../src/logbook/book.ts'
import {standardPage, type StandardPage} from '../../src/pages/standard.ts'
import {standardOrder} from '../../src/pages/standard-order.ts'
import {plainClause, plainDraft, plainSection} from '../paper-parts.ts'
import {date, smallBook} from './small-logbook.ts'

const section = (title: string, kind: SectionKind | null) => plainSection(title.toLowerCase().replace(/\W+/g, '-'), [plainClause(`${title}/a`, 'A', 'Words.')], {title, kind})
const draft = (more: Partial<Draft> = {}): Draft => plainDraft(1, '2024-01-01', {
  classification: 'Heavy', egg: 'tinted', eggAtLeast: 55, rings: {male: '20 mm', female: null}, weights: [{class: 'cock', grams: 2494.76, high: 2721.55}], points: [{name: 'Type', points: 100}],
  sections: [
    section('Origin and purpose', 'origin'), section('General characteristics, male', 'male'), section('Voice', null), section('General characteristics, female', 'female'), section('Colour', 'colour'), section('Disqualifications', 'disqualifications'),
  ], ...more,
})
const told = (of: Draft): string[] => standardOrder(of).map(piece => (piece.is === 'section' ? piece.title : piece.is))
const view = (of: Draft, asOf = '2024-06-01') => (standardPage({...smallBook(), asOf: date(asOf).first, drafts: [of]}).view as StandardPage).standard!

describe('in which order a standard stands', () => {
  it('without a manner, as it was written, tables before faults', () => {
    expect(told(draft())).toEqual(['Origin and purpose', 'classification', 'egg', 'rings', 'General characteristics, male', 'Voice', 'General characteristics, female', 'Colour', 'weights', 'points', 'Disqualifications'])
  })
  it('in the commonwealth manner', () => {
    expect(told(draft({manner: 'commonwealth'}))).toEqual(
      ['Origin and purpose', 'classification', 'General characteristics, male', 'Voice', 'General characteristics, female', 'Colour', 'weights', 'rings', 'egg', 'points', 'Disqualifications'])
  })
  it('in the north american manner, disqualifications early', () => {
    expect(told(draft({manner: 'north-american'}))).toEqual(
      ['Origin and purpose', 'classification', 'Disqualifications', 'weights', 'rings', 'egg', 'Shape of male', 'Voice', 'Shape of female', 'Colour of male and female', 'points'])
  })
  it('in the continental manner, varieties last but for the points', () => {
    expect(told(draft({manner: 'continental'}))).toEqual(['Origin and purpose', 'classification', 'Male', 'Voice', 'Female', 'Disqualifications', 'weights', 'egg', 'rings', 'Colour varieties', 'points'])
  })
  it('keeps the headings of two sections about one thing, and what stands before all', () => {
    const two = draft({manner: 'continental', sections: [section('A word first', null), section('Colour', 'colour'), section('Markings', 'colour')]})
    expect(told(two)).toEqual(['A word first', 'origin', 'classification', 'weights', 'egg', 'rings', 'Colour', 'Markings', 'points'])
  })
  it('loses no section and no clause, and keeps their anchors, whatever the manner', () => {
    const anchors = (of: Draft) => view(of).parts.flatMap(({section: each}) => (each ? [each.id, ...each.clauses.map(({id}) => id)] : [])).sort()
    for (const manner of ['continental', 'commonwealth', 'north-american'] as const) expect(anchors(draft({manner}))).toEqual(anchors(draft()))
  })
})

// 2494.76 g is 5 lb 8 oz and 2721.55 g 6 lb, by the pound of 0.45359237 kg
describe('which units stand first', () => {
  const weights = (manner: Draft['manner']) => view(draft({manner})).parts.filter(part => part.weights.length > 0).map(({title, heads, weights: rows}) => [title, ...heads, ...rows[0]!.amounts])
  it.each([
    [null, ['Weights', 'Metric', 'Pounds and ounces', '2.49 to 2.72 kg', '5 lb 8 oz to 6 lb']], ['continental', ['Weights', 'Metric', '2.49 to 2.72 kg']],
    ['commonwealth', ['Weights', 'Metric', 'Pounds and ounces', '2.49 to 2.72 kg', '5 lb 8 oz to 6 lb']], ['north-american', ['Weights', 'Pounds and ounces', 'Metric', '5½ to 6 lb', '2.49 to 2.72 kg']],
  ] as const)('%s', (manner, amounts) => expect(weights(manner)).toEqual([amounts]))
})

describe('a table in quarters of a pound', () => {
  it('is so throughout, or not at all', () => {
    const weights = [{class: 'cock', grams: 2494.76, high: null}, {class: 'hen', grams: 2100, high: null}]
    expect(view(draft({manner: 'north-american', weights})).parts.flatMap(part => part.weights.map(({amounts}) => amounts[0]))).toEqual(['5 lb 8 oz', '4 lb 10 oz'])
  })
})

describe('facts in brief', () => {
  it('stand in the first section where they follow it, and together elsewhere', () => {
    const {brief, parts} = view(draft({manner: 'commonwealth'}))
    expect(brief.map(({term, words}) => [term, words])).toEqual([['Classification', 'Heavy']])
    expect(parts.filter(part => part.brief.length > 0).map(part => part.brief.map(({words}) => words))).toEqual([['Male 20 mm', 'Tinted, at least 55 g for hatching']])
    expect(view(draft({manner: 'north-american'})).parts.flatMap(part => part.brief.map(({words}) => words))).toEqual(['Male 20 mm', 'Tinted, at least 1.9 oz (55 g) for hatching'])
  })
})
