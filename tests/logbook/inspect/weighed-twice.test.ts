/** Two results of one bird on one day are told, with both places. */
import {describe, expect, it} from 'vitest'
import {around, codesAt, linkFiles} from '../around.ts'

const found = (...rows: string[]) => linkFiles(around({'measures/w.csv': `band,on,weight\n${rows.map(row => `${row}\n`).join('')}`})).problems

describe('weighed-twice', () => {
  it('finds one day with two results', () => {
    const problems = found('H-1,2024-08-10,2310', 'H-2,2024-08-10,2400', 'H-1,2024-08-10,2130')
    expect(codesAt(problems)).toEqual(['measures/w.csv:4 weighed-twice'])
    expect(problems[0]).toMatchObject({severity: 'warning', reason: 'H-1: weight 2130 g here, 2310 g in another row of 2024-08-10'})
    expect(problems[0]?.related?.map(({place}) => place.start.line)).toEqual([2])
  })

  it.each([
    ['another day', ['H-1,2024-08-10,2310', 'H-1,2024-08-11,2130']], ['the same result', ['H-1,2024-08-10,2310', 'H-1,2024-08-10,2.31 kg']],
    ['only a month', ['H-1,2024-08,2310', 'H-1,2024-08,2130']], ['another bird', ['H-1,2024-08-10,2310', 'H-2,2024-08-10,2130']],
  ])('lets %s be', (_, rows) => expect(found(...rows)).toEqual([]))
})
