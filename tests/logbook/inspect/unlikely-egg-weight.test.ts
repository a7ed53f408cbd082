/** The weight of one egg where that of all belongs is told. */
import {describe, expect, it} from 'vitest'
import {around, codesAt, linkFiles} from '../around.ts'

const found = (row: string) => linkFiles(around({'measures/e.csv': `pen,on,eggs,weighed,weight (g)\n2024-A,2024-03-01,${row}\n`})).problems

describe('unlikely-egg-weight', () => {
  it.each([['4,,56', '4 eggs of pen 2024-A with 56 g together, 14 g an egg'], ['1,,560', '1 egg of pen 2024-A with 560 g together, 560 g an egg'], ['2,3,168', '3 eggs of pen 2024-A weighed on 2024-03-01, and 2 gathered'], ['0,,56', 'a weight of pen 2024-A on 2024-03-01, and no egg']])(
    'tells of %s', (row, reason) => {
      const problems = found(row)
      expect(codesAt(problems)).toEqual(['measures/e.csv:2 unlikely-egg-weight'])
      expect(problems[0]?.reason).toBe(reason)
    })
  it.each(['4,,224', '4,1,56', '4,,'])('lets %s be', row => expect(found(row)).toEqual([]))
})
