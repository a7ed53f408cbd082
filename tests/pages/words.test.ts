import {describe, expect, it} from 'vitest'
import {amount, shownIn, wantedOfBoth, wantedWords} from '../../src/pages/amounts.ts'
import {ageWords, dateShort, dateWords, daySpan, stayWords} from '../../src/pages/dates.ts'
import {excerpt} from '../../src/pages/excerpt.ts'
import {stepPath} from '../../src/pages/links.ts'
import {counted, listWords, percent, rounded, saying} from '../../src/pages/numbers.ts'
import {birdWord, flockWord, sexSymbol} from '../../src/pages/sex-words.ts'
import {stepMeaning} from '../../src/pages/step-words.ts'
import {date, F2, trait, weight} from './small-logbook.ts'

describe('numbers', () => {
  it('rounds halves away from nought and never prints a negative nought', () => {
    expect([rounded(0.25, 1), rounded(-0.04, 1), rounded(1.005, 2), rounded(12, 0), rounded(Number.NaN, 1)]).toEqual(['0.3', '0.0', '1.01', '12', '–'])
  })
  it('prints shares to one decimal of a per cent', () => expect([percent(59 / 62), percent(1), percent(0)]).toEqual(['95.2', '100.0', '0.0']))
  it('speaks small counts', () => expect([counted(1, 'hatch', 'hatches'), counted(0, 'chick'), counted(62, 'chick')]).toEqual(['one hatch', 'no chicks', '62 chicks']))
  it('says the counts of one sentence in one style', () => {
    expect([6, 12].map(count => saying(6, 12)(count, 'male'))).toEqual(['six males', 'twelve males'])
    expect([6, 20].map(count => saying(6, 20)(count, 'male'))).toEqual(['6 males', '20 males'])
  })
  it('joins lists as one speaks', () => expect([listWords([]), listWords(['a']), listWords(['a', 'b', 'c'], 'or')]).toEqual(['', 'a', 'a, b or c']))
})

describe('dates', () => {
  it('says a date as far as it is known', () => expect(['2024-03-23', '2024-03', '2024'].map(text => dateWords(date(text)))).toEqual(['23 March 2024', 'March 2024', '2024']))
  it('has a short form', () => expect(['2024-09-03', '2024-05'].map(text => dateShort(date(text)))).toEqual(['3\u00a0Sep\u00a02024', 'May\u00a02024']))
  it('says month and year of a span once', () => {
    expect(daySpan(date('2025-03-16').first, date('2025-05-04').first)).toBe('16 March to 4 May 2025')
    expect(daySpan(date('2025-03-16').first, date('2025-03-20').first)).toBe('16 to 20 March 2025')
  })
  it('leaves ends of a stay open', () => expect([stayWords(date('2024-02'), null), stayWords(null, date('2024-05-01')), stayWords(null, null)]).toEqual(['from February 2024', 'until 1 May 2024', null]))
  it('says ages as keepers do', () => expect([1, 7, 21, 42, 140, 365, 730].map(ageWords)).toEqual(['1 day', '1 week', '3 weeks', '6 weeks', '20 weeks', '1 year', '2 years']))
})

describe('sex words', () => {
  const hen = {sex: 'female', hatched: date('2024-03-23')} as const
  it('turns a pullet into a hen at a year', () => expect(['2024-10-01', '2025-04-01'].map(day => birdWord(hen, 'chicken', date(day).first))).toEqual(['pullet', 'hen']))
  it('knows other species', () => expect([birdWord(hen, 'duck', date('2026-01-01').first), flockWord('male', 'goose', 30)]).toEqual(['duck', 'young ganders']))
  it('draws a square, a circle, a diamond', () => expect([sexSymbol('male', 'solid'), sexSymbol('female', 'speckled'), sexSymbol('unknown', 'solid')]).toEqual(['m1', 'fq', 'u1']))
})

describe('amounts', () => {
  it('shows heavy weights in kilograms, or in pounds', () => {
    expect(amount(2310, shownIn(weight, 'metric'))).toBe('2.31 kg')
    expect(amount(2268, shownIn(weight, 'imperial'))).toBe('5.00 lb')
  })
  it('shows light ones in grams, angles with their sign, marks bare', () => {
    const egg = trait('egg', 'Egg weight', {kind: 'measured', unit: 'g', wanted: {male: null, female: {kind: 'at-least', value: 55}}})
    expect(amount(57.2, shownIn(egg, 'metric'))).toBe('57 g')
    expect(amount(42, shownIn(trait('tail', 'Tail', {kind: 'measured', unit: 'degrees'}), 'metric'))).toBe('42°')
    expect(amount(10, shownIn(trait('type', 'Type', {kind: 'graded', scale: {from: 1, to: 10}}), 'metric'))).toBe('10')
  })
  it('says what is wanted', () => {
    expect(wantedOfBoth(weight, 'metric')).toBe('males 2.40 kg, 10% either side; females 1.90 kg, 10% either side')
    expect(wantedWords({kind: 'between', low: 84, high: 92}, {unit: 'mm', factor: 1, decimals: 0})).toBe('84 to 92 mm')
    expect(wantedOfBoth(trait('egg', 'Egg', {seenIn: 'female', wanted: {male: null, female: {kind: 'states', states: ['tinted', 'brown']}}}), 'metric')).toBe('tinted or brown')
    expect(wantedOfBoth(trait('none', 'None'), 'metric')).toBeNull()
  })
})

describe('links and steps', () => {
  it('makes file names of labels', () => expect([stepPath('BC1 to holm-white')]).toEqual(['steps/BC1-to-holm-white.html']))
  it('says what a step is', () => expect(stepMeaning(F2)).toBe('Mated inside the line, first generation from the cross of Holm White and Fell Buff.'))
})

describe('excerpt', () => {
  it('takes the opening sentences and stops before marks', () => expect(excerpt('Six hens went north. The *boat* was late.\n\nMore.')).toBe('Six hens went north.'))
  it('takes nothing of a heading, list or picture', () => expect(['# Head', '- a', '![a](b.jpg)'].map(excerpt)).toEqual(['', '', '']))
})
