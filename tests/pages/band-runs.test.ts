import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {bandRuns} from '../../src/pages/band-runs.ts'
import '../seeded.ts'

/** Writes every band of a stretch out again. */
function written(out: string): string[] {
  return out === '' ? [] : out.split(', ').flatMap(part => {
    const [from = '', to] = part.split(' to ')
    if (to === undefined) return [from]
    const head = from.replace(/\d{1,9}$/, ''), width = from.length - head.length
    const first = Number(from.slice(head.length)), last = Number(to.slice(head.length))
    return Array.from({length: last - first + 1}, (_, index) => `${head}${String(first + index).padStart(width, '0')}`)
  })
}

describe('bandRuns(bands)', () => {
  it('writes three and more in a row as a stretch, and never over a gap', () => {
    expect(bandRuns(['24-003', '24-001', '24-002', '24-005', 'H21-04', 'Y-7', 'Y-8'])).toBe('24-001 to 24-003, 24-005, H21-04, Y-7, Y-8')
    expect(bandRuns(['9', '10', '11', '12'])).toBe('10 to 12, 9')
    expect(bandRuns([])).toBe('')
  })
  it('holds every band once, and no other', () => {
    const band = fc.tuple(fc.constantFrom('24-', '25-', 'H2-', ''), fc.integer({min: 0, max: 30}), fc.constantFrom(1, 3)).map(([head, number, width]) => `${head}${String(number).padStart(width, '0')}`)
    fc.assert(fc.property(fc.array(band, {maxLength: 40}), bands => {
      expect(written(bandRuns(bands)).sort()).toEqual([...new Set(bands)].sort())
    }))
  })
})
