/** A day of eggs that stands twice is told, unless eggs are gathered twice a day by habit. */
import {describe, expect, it} from 'vitest'
import {around, codesAt, linkFiles} from '../around.ts'

const found = (...rows: string[]) => linkFiles(around({'measures/e.csv': `pen,on,eggs\n${rows.map(row => `2024-A,2024-03-${row}\n`).join('')}`})).problems

describe('day-counted-twice', () => {
  it('names both rows', () => {
    const problems = found('01,2', '02,1', '02,1', '03,2')
    expect(codesAt(problems)).toEqual(['measures/e.csv:4 day-counted-twice'])
    expect(problems[0]?.reason).toBe('eggs of pen 2024-A on 2024-03-02 stand in another row too: 1 there, 1 here')
    expect(problems[0]?.related?.[0]?.place.start.line).toBe(3)
  })
  it('lets morning and evening be', () => expect(found('01,1', '01,1', '02,1', '02,0', '03,1', '03,1', '04,1')).toEqual([]))
  it('takes each sheet of a pen, and each hen, by itself', () => {
    expect(codesAt(linkFiles(around({'measures/a.csv': 'pen,on,eggs\n2024-A,2024-03-01,1\n', 'measures/b.csv': 'band,on,eggs\nB-1,2024-03-01,1\nB-2,2024-03-01,1\n'})).problems)).toEqual([])
    expect(codesAt(linkFiles(around({'measures/a.csv': 'pen,on,eggs\n2024-A,2024-03-01,1\n', 'measures/b.csv': 'pen,on,eggs\n2024-A,2024-03-01,1\n'})).problems)).toEqual(['measures/b.csv:2 day-counted-twice'])
  })
})
