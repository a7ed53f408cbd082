import {describe, expect, it} from 'vitest'
import {candle} from '../../src/charts/candle.ts'
import {feather, plannedBarbs} from '../../src/charts/feather.ts'
import type {Barb} from '../../src/charts/feather.ts'

const barbs = (path: string): readonly string[] => path.split('M').slice(1)

describe('feather(birds)', () => {
  it('draws one barb a bird: M0 y Q L/2 y+1.6v L y+3.2v+11v²', () => {
    // by hand for v = 1, one male at y = 45: L = −64, 45 + 1.6, 45 + 3.2 + 11; one female: L = 80
    expect(feather([{sex: 'male', weight: 1, verdict: 'right'}]).right).toBe('M0 45Q-32 46.6 -64 59.2')
    expect(feather([{sex: 'female', weight: 1, verdict: 'off'}]).off).toBe('M0 45Q40 46.6 80 59.2')
    // v = 0.5: L = 40, 45 + 0.8, 45 + 1.6 + 2.75
    expect(feather([{sex: 'female', weight: 0.5, verdict: 'right'}]).right).toBe('M0 45Q20 45.8 40 49.4')
  })

  it('draws a bird that was not weighed 20 long', () => {
    expect(feather([{sex: 'male', weight: null, verdict: 'right'}]).right).toMatch(/^M0 45Q-10 \S+ -20 /)
    expect(feather([{sex: 'female', weight: null, verdict: 'right'}]).right).toMatch(/^M0 45Q10 \S+ 20 /)
  })

  it('counts every bird in the vane of its verdict, the unsexed too', () => {
    const birds: Barb[] = [
      {sex: 'male', weight: 1, verdict: 'right'}, {sex: 'male', weight: 0.9, verdict: 'off'}, {sex: 'female', weight: 1.1, verdict: 'right'},
      {sex: 'female', weight: null, verdict: 'unknown'}, {sex: 'unknown', weight: 1, verdict: 'right'},
    ]
    const drawn = feather(birds)
    expect([drawn.right, drawn.off, drawn.unknown].map(path => barbs(path).length)).toEqual([3, 1, 1])
    expect(drawn.drawn).toBe(5)
  })

  it('thins a crowd evenly and stays small', () => {
    const crowd = Array.from({length: 5000}, (): Barb => ({sex: 'female', weight: 1, verdict: 'right'}))
    const {right, drawn} = feather(crowd)
    expect(drawn).toBeLessThanOrEqual(120)
    expect(barbs(right).length).toBe(drawn)
  })

  it('draws the shaft alone when nobody was scored, and a sheath when it is planned', () => {
    expect(feather([])).toMatchObject({right: '', off: '', unknown: '', planned: '', shaft: 'M0 0V100'})
    expect(plannedBarbs.planned).not.toBe('')
  })

  it('refuses a weight that is none', () => {
    expect(() => feather([{sex: 'male', weight: NaN, verdict: 'right'}])).toThrow(RangeError)
    expect(() => feather([{sex: 'male', weight: 0, verdict: 'right'}])).toThrow(RangeError)
  })
})

describe('candle(value, interval, scale, mark)', () => {
  it('places estimate, interval and mark on 160 units', () => {
    expect(candle(0.952, {low: 0.867, high: 0.983}, {from: 0, to: 1}, 0.95)).toEqual({egg: 152.3, span: 'M140.7 10H155.3', mark: 152, off: false})
  })

  it('starts where the scale starts', () => {
    expect(candle(75, {low: 50, high: 100}, {from: 50, to: 100}).egg).toBe(80)
  })

  it('draws what lies beyond the scale at its end', () => {
    expect(candle(30, null, {from: 0, to: 20}, 25)).toEqual({egg: 160, span: '', mark: 160, off: false})
  })

  it('refuses a scale that runs nowhere and an estimate that is no number', () => {
    expect(() => candle(1, null, {from: 1, to: 1})).toThrow(RangeError)
    expect(() => candle(NaN, null, {from: 0, to: 1})).toThrow(RangeError)
  })
})
