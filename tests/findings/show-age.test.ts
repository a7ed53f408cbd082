import {describe, expect, it} from 'vitest'
import {showAge, showAgeWithin} from '../../src/findings/show-age.ts'
import {date} from '../pages/small-logbook.ts'

describe('showAge(bird, day)', () => {
  const on = (hatched: string | null, day: string) => showAge({hatched: hatched === null ? null : date(hatched)}, date(day).first)
  it('goes by the calendar year', () => {
    expect(on('2024-12-20', '2024-12-31')).toBe('young')
    expect(on('2024-12-20', '2025-01-01')).toBe('grown')
    expect(on('2024', '2024-06-01')).toBe('young')
    expect(on(null, '2024-06-01')).toBeNull()
  })
})

describe('showAgeWithin(bird, a date that may be vague)', () => {
  const hatched = {hatched: date('2024-05-02')}
  it('is told where every day the date may mean says the same', () => {
    expect(showAgeWithin(hatched, date('2024-09'))).toBe('young')
    expect(showAgeWithin(hatched, date('2025'))).toBe('grown')
    expect(showAgeWithin({hatched: date('2024')}, date('2024-09-01'))).toBe('young')
    expect(showAgeWithin(hatched, null)).toBeNull()
  })
})
