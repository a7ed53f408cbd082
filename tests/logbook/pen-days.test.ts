import {describe, expect, it} from 'vitest'
import {penDays} from '../../src/logbook/pen-days.ts'
import {isoDay, parseDate} from '../../src/records/dates.ts'

describe('penDays(pen)', () => {
  it.each([
    [undefined, undefined, '2024-01-01', '2024-12-31'], ['2024-02-10', undefined, '2024-02-10', '2024-12-31'], [undefined, '2024-06', '2024-01-01', '2024-06-30'],
    ['2023-12', '2024-06-01', '2023-12-01', '2024-06-01'],
  ])('of 2024, from %s to %s: %s to %s', (from, to, first, last) => {
    const days = penDays({season: 2024, from: from === undefined ? null : parseDate(from), to: to === undefined ? null : parseDate(to)})
    expect([isoDay(days.from), isoDay(days.to)]).toEqual([first, last])
  })
})
