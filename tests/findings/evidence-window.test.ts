import {describe, expect, it} from 'vitest'
import {siftByDay} from '../../src/findings/evidence-window.ts'
import {at, date} from '../pages/small-logbook.ts'
import {plainRequirement} from '../paper-parts.ts'

const AS_OF = date('2025-11-15').first
const DATES = ['2023', '2024-06', '2024-06-10', '2025-03-01', null]
const sifted = (more: Parameters<typeof plainRequirement>[1]) => {
  const {counted, aged} = siftByDay(DATES, text => (text === null ? null : date(text)), () => at, plainRequirement('years-bred', more), AS_OF)
  return [counted, [aged.older, aged.earlier, aged.later, aged.undated]]
}

describe('siftByDay(things, dateOf, spotOf, requirement, asOf)', () => {
  it('counts all where no day is asked, dated or not', () => expect(sifted({})).toEqual([DATES, [0, 0, 0, 0]]))
  it('counts from a day on what is surely of it or later', () => {
    expect(sifted({from: date('2024-06-01')})).toEqual([['2024-06', '2024-06-10', '2025-03-01'], [0, 1, 0, 1]])
    expect(sifted({from: date('2024-06-02')})).toEqual([['2024-06-10', '2025-03-01'], [0, 2, 0, 1]])
  })
  it('counts to the day by which it must be reached what is surely not later', () => {
    expect(sifted({by: date('2024-06-29')})).toEqual([['2023', '2024-06-10'], [0, 0, 2, 1]])
    expect(sifted({by: date('2024')})).toEqual([['2023', '2024-06', '2024-06-10'], [0, 0, 1, 1]])
  })
  it('leaves out what is older at the book’s day than is allowed', () => {
    // by hand: from 1 March to 15 November are 259 days
    expect(sifted({within: 259})).toEqual([['2025-03-01'], [3, 0, 0, 1]])
    expect(sifted({within: 258})).toEqual([[], [4, 0, 0, 1]])
  })
  it('names the older and the latest of them', () => {
    const {aged} = siftByDay(['2023', '2024-06'], text => date(text), () => at, plainRequirement('years-bred', {within: 1}), AS_OF)
    expect(aged).toMatchObject({records: [at, at], last: date('2024-06').last})
  })
})
