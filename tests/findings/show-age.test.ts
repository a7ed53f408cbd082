import {describe, expect, it} from 'vitest'
import {showAge} from '../../src/findings/show-age.ts'
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
