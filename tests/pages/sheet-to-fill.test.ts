import {describe, expect, it} from 'vitest'
import {sheetToFill} from '../../src/findings/sheet-to-fill.ts'
import {study} from '../../src/findings/study.ts'
import {csvOf} from '../../src/pages/figures-file.ts'
import {latestSheetPages, sheetTable, sheetToFillPage, type SheetView} from '../../src/pages/sheet-to-fill.ts'
import {bird, date, F1, logbook, trait} from './small-logbook.ts'
import {plainClause, plainDraft, plainSection} from '../paper-parts.ts'

const white = {male: {kind: 'states', states: ['white']}, female: {kind: 'states', states: ['white']}} as const
const traits = Array.from({length: 11}, (_, place) => trait(`t-${place}`, `Trait ${place}`, {states: ['white', 'yellow']}))
const type = trait('type', 'Type', {kind: 'graded', scale: {from: 1, to: 10}, scoredFrom: 126})
const clauses = traits.map((of, place) => plainClause(`a/${place}`, of.name, 'White.', {trait: of, allows: white}))
const graded = [plainClause('male/body', 'Body', 'Deep.', {trait: type, sex: 'male', allows: {male: {kind: 'at-least', value: 7}, female: null}}), plainClause('female/body', 'Body', 'Deep.', {trait: type, sex: 'female', allows: {male: null, female: {kind: 'at-least', value: 6}}})]
const birds = [bird('1', 'male', {step: F1, strain: null, hatched: date('2024-04-01')}), bird('2', 'unknown', {step: F1, strain: null})]
const book = logbook('2025-01-01', {birds, traits: [...traits, type], drafts: [plainDraft(3, '2024-06-01', {sections: [plainSection('a', [...graded, ...clauses])], points: [{name: 'Type', points: 60}, {name: 'colour', points: 40}]})]})
const sheet = sheetToFill(birds, book), view = sheetToFillPage(sheet, book, 'of F1').view as SheetView

describe('a sheet to fill in', () => {
  it('parts many columns over sheets of much the same breadth, the points on one of their own with a total', () => {
    expect(view.parts.map(({title, columns, told}) => [title, columns.length, told])).toEqual([['Looks, sheet 1 of 2', 6, true], ['Looks, sheet 2 of 2', 6, false], ['Points', 3, false]])
    expect(view.parts[2]?.columns.map(({name, write}) => `${name} ${write}`)).toEqual(['Type of 60', 'Colour of 40', 'Total of 100'])
  })

  it('says at the head of a column what is allowed, of each sex where they differ, and what may be written', () => {
    expect(view.parts[0]?.columns.slice(0, 2)).toEqual([{name: 'Type', asks: 'm at least 7, f at least 6', write: '1 to 10; from 18 weeks'}, {name: 'Trait 0', asks: 'white', write: 'white or yellow'}])
  })

  it('has a row a bird and three free ones', () => {
    expect(view.parts[0]?.rows.map(({band, sex, hatched}) => [band, sex, hatched.replaceAll('\u00a0', ' ')])).toEqual([['1', 'm', '1 Apr 2024'], ['2', '?', ''], ['', '', ''], ['', '', ''], ['', '', '']])
    expect(view.lead).toContain('By draft 3 of the standard, of 1 June 2024, for two birds of F1.')
  })

  it('as a table has the traits by their ids, the headings as the scale has them, and the draft in every row', () => {
    const [head = '', ...rows] = csvOf(sheetTable(sheet, null)).trim().split('\n')
    expect(head).toBe(`band,on,by,draft,type,${traits.map(({id}) => id).join(',')},Type,colour`)
    expect(rows.map(row => row.replace(/,+$/, ''))).toEqual(['1,,,3', '2,,,3'])
  })

  it('is published of the latest step where there is a draft and a bird', () => {
    expect(latestSheetPages(study(book))).toMatchObject([{path: 'score-sheet.html', selfContained: true, look: 'score', sheet: 'Skerry Fowl · score sheet, draft 3'}])
    expect(latestSheetPages(study(logbook('2025-01-01', {birds})))).toEqual([])
  })
})
