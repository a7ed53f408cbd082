/** Points by heading on a scoring day: whose, by whom, under which draft; what cannot be right is told with its place. */
import {describe, expect, it} from 'vitest'
import {draftInForce} from '../../src/logbook/draft-in-force.ts'
import {pointsIn} from '../../src/logbook/points-sheets.ts'
import {plainDraft} from '../paper-parts.ts'
import {date} from '../pages/small-logbook.ts'
import {around, bookOf, codesAt, linkFiles, type Files} from './around.ts'

const draft = (number: number, on: string, scale: string) => `---\ndraft: ${number}\non: ${on}\nscale: {${scale}}\n---\n## General characteristics, male\n\n**Comb.** Pea, low.\n`
const DRAFTS: Files = {'standard/1.md': draft(1, '2023-01-10', 'Type and carriage: 60, Colour: 40'), 'standard/2.md': draft(2, '2024-03-10', 'Type and carriage: 50, Colour: 40, Condition: 10')}
const scored = (text: string): Files => ({...DRAFTS, 'scores/2024.csv': `${text}\n`})
const sheets = (text: string, options = {}) => bookOf(scored(text), options).sheets.map(({bird, by, draft: number, on, struck, headings}) =>
  [bird.band, by === null || typeof by === 'string' ? by : by.id, number, on?.text ?? null, struck, headings.map(({name, points, of}) => `${name} ${points}/${of ?? ''}`).join(', ')])
const codes = (text: string) => codesAt(linkFiles(around(scored(text))).problems)

describe('the keepers’ sheets of points', () => {
  it('take their headings from the scale of the draft named, in any case and with hyphens', () => {
    expect(sheets('band,on,by,draft,type-and-carriage,COLOUR\nH-1,2024-10-02,inga,1,52,34 of 40')).toEqual([['H-1', 'kelpgarth', 1, '2024-10-02', null, 'Type and carriage 52/60, Colour 34/40']])
  })

  it('take the draft in force on the day where none is named; an empty cell was not scored', () => {
    expect(sheets('band,on,by,Type and carriage,Condition\nH-1,2024-10-02,inga,44,\nH-2,2024-10-02,,40,"9,5"\nH-3,2024-10-02,,,')).toEqual([
      ['H-1', 'kelpgarth', 2, '2024-10-02', null, 'Type and carriage 44/50'], ['H-2', null, 2, '2024-10-02', null, 'Type and carriage 40/50, Condition 9.5/10'],
    ])
  })

  it('stand beside looks in one row, and are struck with it', () => {
    const book = bookOf(scored('band,on,by,draft,comb,Condition,struck\nH-1,2024-10-02,inga,2,single,9,wet through'))
    expect(book.sheets).toMatchObject([{struck: 'wet through', draft: 2, headings: [{name: 'Condition', points: 9, of: 10}]}])
    expect([...book.birds.find(({band}) => band === 'H-1')!.looks].map(([{id}, {counted, scores}]) => [id, counted, scores[0]?.struck, scores[0]?.draft])).toEqual([['comb', null, 'wet through', 2]])
  })

  it('are left aside on an earlier day, and their draft where it was not written yet', () => {
    expect(sheets('band,on,by,draft,Colour\nH-1,2024-10-02,inga,2,30', {asOf: date('2024-09-01').first})).toEqual([])
    expect(sheets('band,on,by,draft,Colour\nH-1,2024-02-02,inga,2,30', {asOf: date('2024-02-20').first})).toMatchObject([['H-1', 'kelpgarth', null, '2024-02-02', null, 'Colour 30/40']])
  })

  it.each([
    ['H-1,2024-10-02,inga,9,30,', ['scores/2024.csv:2 unknown-draft']],
    ['H-1,2024-10-02,inga,1,30,8\nH-2,2024-10-02,inga,1,30,8', ['scores/2024.csv:1 heading-not-in-scale']],
    ['H-1,2024-10-02,inga,2,41,', ['scores/2024.csv:2 too-many-points']],
    ['H-1,2024-10-02,inga,2,30 of 50,', ['scores/2024.csv:2 too-many-points']],
    ['H-1,2024-10-02,inga,2,good,', ['scores/2024.csv:2 unreadable-value']],
    ['H-1,2024-01-02,inga,2,30,', ['scores/2024.csv:2 draft-after-scoring']],
    ['H-1,2022-10-02,inga,,30,', ['scores/2024.csv:1 heading-not-in-scale']],
    ['H-1,2024-10-02,inga,two,30,', ['scores/2024.csv:2 unreadable-value']],
  ])('%s is told of', (row, wanted) => expect(codes(`band,on,by,draft,Colour,Condition\n${row}`)).toEqual(wanted))

  it('name the heading that was likely meant', () => {
    const {problems} = linkFiles(around(scored('band,on,by,draft,Coluor\nH-1,2024-10-02,inga,2,30')))
    expect(problems.map(({code, remedy}) => [code, remedy])).toEqual([['unknown-trait', 'did you mean Colour?']])
  })
})

describe('pointsIn(text)', () => {
  it.each([['26', 26, null], ['26 of 30', 26, 30], [' 9,5 ', 9.5, null], ['0', 0, null]])('reads %j', (text, points, of) => expect(pointsIn(text)).toEqual({points, of}))
  it.each(['', '26/30', '-1', 'good', '26 of', '1 000'])('takes %j for no points', text => expect(pointsIn(text)).toBeNull())
})

describe('draftInForce(drafts, named, on)', () => {
  const drafts = [plainDraft(1, '2023-01-10'), plainDraft(2, '2024-03-10'), plainDraft(3, '2024-03-10')]
  const found = (named: number | null, on: string | null) => draftInForce(drafts, named, on === null ? null : date(on).first)?.number ?? null
  it('takes the one named, else the latest written by that day, of two of one day the later', () => {
    expect([found(1, '2025-01-01'), found(null, '2023-01-10'), found(null, '2024-03-09'), found(null, '2024-03-10')]).toEqual([1, 1, 1, 3])
  })
  it('gives none of an unknown number, day or time before all of them', () => expect([found(9, '2025-01-01'), found(null, null), found(null, '2023-01-09')]).toEqual([null, null, null]))
})
