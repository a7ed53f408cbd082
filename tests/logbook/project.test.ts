/** What the project says of itself, and what stands in where it says nothing. */
import {describe, expect, it} from 'vitest'
import {bookOf} from './around.ts'

const paperOf = (lines: string) => bookOf({'project.md': `---\nname: Skerry Fowl\naim: Stands wind.\nstrains: {recurrent: holm-white, donors: [fell-buff]}\n${lines}---\n`}).project.paper

describe('the sheet that PDFs are set on', () => {
  it.each([
    ['', 'a4'], ['units: metric\n', 'a4'], ['units: imperial\n', 'letter'], ['units: imperial\npaper: a4\n', 'a4'], ['paper: letter\n', 'letter'],
  ])('of a project that says %j is %s', (lines, paper) => {
    expect(paperOf(lines)).toBe(paper)
  })
})
