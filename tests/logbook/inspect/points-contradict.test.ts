/** The points of an entry beside the sheet of its judge; and sheets that leave a heading out. */
import {describe, expect, it} from 'vitest'
import {around, linkFiles} from '../around.ts'

const DRAFT = '---\ndraft: 1\non: 2024-01-10\nscale: {Type: 60, Colour: 40}\n---\n## General characteristics, male\n\n**Comb.** Pea, low.\n'
const tried = (entry: string, ...sheets: string[]) => linkFiles(around({'standard/1.md': DRAFT,
  'shows/hall.md': `---\nname: Show\non: 2024-11-02\njudges: {j1: {name: A judge, consent: no}, j2: {name: Another judge, consent: no}}\nentries:\n  - {bird: H-1, class: cock, ${entry}}\nscores:\n${sheets.map(each => `  - {bird: H-1, ${each}}\n`).join('')}---\n`}))
  .problems.map(({code, place, reason}) => [code, place.start.line, reason])

describe('points-contradict', () => {
  it('holds the sheet of the judge of the entry against its points, by that judge or by nobody', () => {
    expect(tried('judge: j1, points: 95', 'by: j1, Type: 50, Colour: 38')).toEqual([['points-contradict', 6, 'H-1 has 95 points here, and 88 in all on its sheet']])
    expect(tried('points: 95', 'Type: 50, Colour: 38')).toEqual([['points-contradict', 6, 'H-1 has 95 points here, and 88 in all on its sheet']])
    expect(tried('judge: j1, points: 88', 'by: j1, Type: 50, Colour: 38')).toEqual([])
  })
  it('is none of another judge, of a keeper, or of a bird with no points', () => {
    expect(tried('judge: j1, points: 95', 'by: j2, Type: 50, Colour: 38')).toEqual([])
    expect(tried('judge: j1, points: 95', 'by: inga, Type: 50, Colour: 38')).toEqual([])
    expect(tried('judge: j1, result: 1 of 4', 'by: j1, Type: 50, Colour: 38')).toEqual([])
  })
})

describe('heading-left-out', () => {
  it('names what is missing, once a file, and then no sum is held', () => {
    expect(tried('judge: j1, points: 95', 'by: j1, Type: 50', 'by: j2, Type: 51')).toEqual([['heading-left-out', 8, 'no points under Colour, which is a heading of the scale of draft 1']])
  })
  it('leaves an empty cell of a scoring day alone, and a sheet with a heading of its own', () => {
    expect(linkFiles(around({'standard/1.md': DRAFT, 'scores/2024.csv': 'band,on,by,Type,Colour\nH-2,2024-10-02,inga,50,\n'})).problems).toEqual([])
    expect(tried('judge: j1', 'by: j1, Type: 50, Condition: 9').map(([code]) => code)).toEqual(['sheet-off-scale'])
  })
})
