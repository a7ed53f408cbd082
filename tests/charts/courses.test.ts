import {describe, expect, it} from 'vitest'
import {courses} from '../../src/charts/courses.ts'
import {founderShares} from '../../src/charts/founder-shares.ts'
import {renderChart} from '../../src/charts/render.ts'
import {times, words} from './sample-rows.ts'

describe('courses(list, first, limit)', () => {
  it('draws a line each with its name at the end, the first and last year, and the limit', async () => {
    const svg = await renderChart(courses([{name: 'clans', points: [0, 0.1, 0.2]}, {name: 'one flock', points: [0.1, 0.2, 0.3]}], 2026, {value: 0.125, words: 'limit'}), words)
    expect(svg).toContain('viewBox="0 0 320 ')
    for (const text of ['clans', 'one flock', '2026', '2028', 'limit']) expect(svg).toContain(`>${text}<`)
    expect(svg).not.toMatch(/NaN|undefined/)
  })

  it('keeps names apart where lines end together, and all of them inside', async () => {
    const names = ['a', 'b', 'c', 'd', 'e'].map(name => ({name: `way ${name}`, points: [0.5, 0.9] as const}))
    const svg = await renderChart(courses(names as never, 2026, null), words)
    // theirs are the texts that begin beside the plot
    const heights = [...svg.matchAll(/translate\(([\d.]+),([\d.]+)\)[^>]*>way/g)].map(match => Number(match[2])).sort((a, b) => a - b)
    expect(heights.length).toBe(5)
    heights.forEach((height, index) => { if (index > 0) expect(height - (heights[index - 1] ?? 0)).toBeGreaterThanOrEqual(18.9) })
  })

  it('draws nought and a single season without a slip', async () => {
    expect(await renderChart(courses([{name: 'a', points: [0]}], 2026, null), words)).not.toMatch(/NaN|undefined/)
  })
})

describe('founderShares(rows, strains)', () => {
  it('draws a bar each in its strain’s pattern, and names what is not known', async () => {
    const svg = await renderChart(founderShares([
      {label: 'H-1', strain: 'Holm White', share: 0.5, words: '50.0%'}, {label: 'B-1', strain: 'Fell Buff', share: 0.4, words: '40.0%'}, {label: 'X', strain: null, share: 0.1, words: '10.0%'},
    ], ['Holm White', 'Fell Buff']), words)
    for (const text of ['Holm White', 'Fell Buff', 'not known', '50.0%', 'H-1']) expect(svg).toContain(`>${text}<`)
    expect(times(svg, /fill="url\(#speckled\)"/)).toBe(2)
  })
})
