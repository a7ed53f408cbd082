/** Sheets of a show against the scale of their draft: a heading it does not have, other full points, and what may stand. */
import {describe, expect, it} from 'vitest'
import {around, linkFiles} from '../around.ts'

const DRAFT = '---\ndraft: 1\non: 2024-01-10\nscale: {Type and carriage: 60, Colour: 40}\n---\n## General characteristics, male\n\n**Comb.** Pea, low.\n'
const tried = (...sheets: string[]) => linkFiles(around({'standard/1.md': DRAFT, 'shows/hall.md': `---\nname: Show\non: 2024-11-02\nscores:\n${sheets.map(each => `  - {bird: H-1, ${each}}\n`).join('')}---\n`})).problems.map(({code, place, reason, remedy}) => [code, place.start.line, reason, remedy])

describe('sheet-off-scale', () => {
  it('is an error of a heading mistyped or of another draft, once a show, as on a scoring day', () => {
    expect(tried('draft: 1, Color: 30', 'draft: 1, Color: 31')).toEqual([['heading-not-in-scale', 5, 'the scale of draft 1 has no heading “Color”', 'did you mean Colour?']])
    expect(tried('draft: 1, Colour: 41, Type and carriage: 50')).toEqual([['too-many-points', 5, '“41” under Colour, which has 40 points in draft 1', 'mend the points, or write under draft the one that was scored by']])
  })
  it('lets a heading of the judge’s own stand with a warning', () => {
    expect(tried('draft: 1, Condition: 9')).toEqual([['sheet-off-scale', 5, 'the scale of draft 1 has no heading Condition', 'it has Type and carriage, Colour']])
  })
  it('tells of other full points, by the draft in force where none is named', () => {
    expect(tried('Colour: 18 of 20, Type and carriage: 50')).toEqual([['sheet-off-scale', 5, 'Colour is out of 20 here, and of 40 in draft 1', 'mend the points or the draft']])
  })
  it('takes the headings of the scale in any case, with full points or without', () => expect(tried('draft: 1, colour: 30 of 40, Type and carriage: 50')).toEqual([]))
})
