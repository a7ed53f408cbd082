import {describe, expect, it} from 'vitest'
import {study} from '../../src/findings/study.ts'
import {expectClose} from '../expect-close.ts'
import {smallBook} from '../pages/small-logbook.ts'

describe('againstStandard(spread)', () => {
  const found = study(smallBook()).againstStandard

  it('counts every measured bird inside the limits, small classes too, and how far the mean lies off', () => {
    // males 2310 and 2455 g against 2400 g; females 1840 1905 1760 2010 1955 1875 g against 1900 g, a tenth either side
    const [male, female] = found
    expect([male?.sex, male?.n, male?.mean, male?.off, male?.offInSd]).toEqual(['male', 2, 2382.5, -17.5, null])
    expect(male?.limits).toEqual({low: 2160, high: 2640})
    expect(female?.inside).toMatchObject({kind: 'share', count: 6, total: 6})
    expectClose(female?.off ?? NaN, 11345 / 6 - 1900, 1e-9)
    // sum of squares about the mean of six, by hand: Σx² − (Σx)²/6 = 21 490 075 − 21 451 504.1667
    const squares = [1840, 1905, 1760, 2010, 1955, 1875].reduce((sum, value) => sum + value ** 2, 0) - 11345 ** 2 / 6
    expectClose(female?.offInSd ?? NaN, (11345 / 6 - 1900) / Math.sqrt(squares / 5), 1e-9)
  })

  it('has no row for both sexes together: each has a mark of its own', () => expect(found.map(({sex}) => sex)).toEqual(['male', 'female']))
})
