import {describe, expect, it} from 'vitest'
import {growth} from '../../src/charts/growth.ts'
import {renderChart} from '../../src/charts/render.ts'
import {spaced} from '../../src/charts/spaced.ts'
import {times, words} from './sample-rows.ts'

describe('growth(lines)', () => {
  it('draws a line a step with its name at its end, a ring at each age, and the ages at the foot', async () => {
    const svg = await renderChart(growth([{name: 'BC1', points: [{weeks: 8, value: 0.8}, {weeks: 20, value: 1.9}]}, {name: 'BC2', points: [{weeks: 8, value: 0.9}, {weeks: 20, value: 2.1}, {weeks: 52, value: 2.6}]}]), words)
    for (const text of ['BC1', 'BC2', '8', '20', '52']) expect(svg).toContain(`>${text}<`)
    expect(svg).toContain('viewBox="0 0 320 ')
    expect(svg).not.toMatch(/NaN|undefined/)
    expect(times(svg, /stroke-dasharray/)).toBeGreaterThan(0)
  })

  it('leaves out an age whose number would run into the next', async () => {
    const svg = await renderChart(growth([{name: 'F2', points: [1, 2, 4, 20, 104].map(weeks => ({weeks, value: weeks})) as never}]), words)
    expect(svg).toContain('>104<')
    expect(svg).not.toContain('>1<')
  })

  it('draws what weighs nothing, and a single age, without a slip', async () => {
    expect(await renderChart(growth([{name: 'F2', points: [{weeks: 0, value: 0}]}]), words)).not.toMatch(/NaN|undefined/)
  })
})

describe('spaced(heights, line, bottom)', () => {
  it('keeps names a line apart, in their order, and inside', () => {
    expect(spaced([50, 50, 50], 10, 100)).toEqual([50, 60, 70])
    expect(spaced([100, 99, 98], 10, 100)).toEqual([100, 90, 80])
    expect(spaced([10, 40], 10, 100)).toEqual([10, 40])
    expect(spaced([], 10, 100)).toEqual([])
  })
})
