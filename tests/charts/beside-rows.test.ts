import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {axisAround, besideRows} from '../../src/charts/beside-rows.ts'
import {renderChart} from '../../src/charts/render.ts'
import {times, words} from './sample-rows.ts'

const EGG = /d="M0,-7\.52C/

describe('axisAround(numbers, most, mark)', () => {
  it('holds nothing and every number that is not too far, with four labels at most', () => {
    expect(axisAround([-22.8, 7.6, -61], 30)).toEqual({from: -40, to: 20, ticks: [-40, -20, 0, 20], mark: 0})
    expect(axisAround([0, 100], 100, null)).toEqual({from: 0, to: 100, ticks: [0, 50, 100], mark: null})
    fc.assert(fc.property(fc.array(fc.double({min: -1e4, max: 1e4, noNaN: true}), {maxLength: 6}), fc.constantFrom(3, 30, 200), (numbers, most) => {
      const {from, to, ticks} = axisAround(numbers, most)
      expect(from <= 0 && to >= 0 && to > from).toBe(true)
      expect(ticks.length).toBeLessThanOrEqual(4)
      expect([ticks[0], ticks.at(-1)]).toEqual([from, to])
      for (const number of numbers) if (Math.abs(number) <= most) expect(number >= from - 1e-9 && number <= to + 1e-9).toBe(true)
    }))
  })
})

describe('besideRows(rows, axis, notSaid)', () => {
  it('draws an egg, its line, and a tick or band where there is one', async () => {
    const svg = await renderChart(besideRows([{label: 'a', value: -4, interval: {low: -9, high: 2}, band: {low: -4.4, high: -2.6}}, {label: 'b', value: null, interval: null}], axisAround([-9, 2], 30), 'beyond the scale'), words)
    expect(times(svg, EGG)).toBe(1)
    expect(svg).toContain('beyond the scale')
    expect(times(svg, /fill="var\(--paper\)"/)).toBe(1)
    const kept = await renderChart(besideRows([{label: 'pea', value: 98, interval: {low: 93, high: 100}, expected: 74}], axisAround([0, 100], 100, null)), words)
    expect(times(kept, EGG)).toBe(1)
    expect(kept).not.toContain('NaN')
  })
})
