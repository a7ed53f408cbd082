import {describe, expect, it} from 'vitest'
import {study} from '../../src/findings/study.ts'
import {smallBook} from '../pages/small-logbook.ts'
import {linesTogether} from './vigour-book.ts'

const seeds = Array.from({length: 30}, (_, place) => 7 + 41 * place)
const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length

describe('recovery(book)', () => {
  it('finds how far each step has come, beside its blood', () => {
    const found = seeds.map(seed => study(linesTogether(seed, {holm: 2500, fell: 1500, cross: 2000, back: 2250})).recovery)
    for (const [step, way] of [['F1', 0.5], ['BC1', 0.75]] as const) {
      const own = found.map(rows => rows.find(row => row.step === step))
      expect(Math.abs(mean(own.map(row => row?.found?.recovery ?? NaN)) - way)).toBeLessThan(0.01)
      expect(own.filter(row => row?.found?.interval && row.found.interval.low <= way && row.found.interval.high >= way).length).toBeGreaterThan(25)
      expect(own[0]?.expected).toBeCloseTo(way, 9)
      expect(own[0]?.birds).toEqual({step: 30, donor: 30, recurrent: 30})
    }
  })

  it('gives no limits where the strains do not differ', () => {
    const [row] = study(linesTogether(3, {holm: 2500, fell: 2500, cross: 2500, back: 2500})).recovery
    expect(row?.found?.interval).toBeNull()
    expect(study(smallBook()).recovery.every(({found, together}) => found === null && together === null)).toBe(true)
  })
})
