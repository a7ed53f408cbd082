/** More hens than stood in the pen, and eggs of days on which no hen did. */
import {describe, expect, it} from 'vitest'
import {around, codesAt, linkFiles, type Files} from '../around.ts'

const found = (rows: readonly string[], more: Files = {}) => linkFiles(around({'measures/e.csv': `pen,on,eggs,hens\n${rows.map(row => `2024-A,${row}\n`).join('')}`, ...more})).problems

describe('hens-not-there', () => {
  it('tells of a count of hens once', () => {
    const problems = found(['2024-03-01,2,2', '2024-03-02,2,30', '2024-03-03,2,30'])
    expect(codesAt(problems)).toEqual(['measures/e.csv:3 hens-not-there'])
    expect(problems[0]?.reason).toBe('in 2 rows, here the first: 30 hens of pen 2024-A on 2024-03-02, and by its record it had 2 then')
  })
  it('tells of eggs after the pen was broken up, and before it stood', () => {
    expect(codesAt(found(['2024-03-01,2,2', '2024-09-02,1,']))).toEqual(['measures/e.csv:3 hens-not-there'])
    expect(codesAt(found(['2024-02-01,2,2']))).toEqual(['measures/e.csv:2 hens-not-there'])
  })
  it('lets be fewer hens, a day without an egg, and what is gathered the day after', () => {
    expect(found(['2024-03-01,1,1', '2024-06-02,1,', '2024-09-02,0,'])).toEqual([])
  })
  it('says nothing of a pen whose hens are not all known', () => {
    expect(codesAt(found(['2024-03-01,2,3'], {'pens/2024-A.md': '---\nseason: 2024\nmales: [H-1]\nfemales: [B-1, B-2, B-9]\nfrom: 2024-02-10\n---\n'}))).toEqual(['pens/2024-A.md:4 unknown-band'])
  })
})
