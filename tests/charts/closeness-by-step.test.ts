import {describe, expect, it} from 'vitest'
import {closenessByStep} from '../../src/charts/closeness-by-step.ts'
import {renderChart} from '../../src/charts/render.ts'
import {times, words} from './sample-rows.ts'

const EGG = /<path transform="translate\([^"]+\)" d="M0,-7\.52C/

describe('closenessByStep(rows, limit)', () => {
  const rows = [
    {label: 'BC3F2', inbreeding: 0.107, range: {low: 0.097, high: 0.118}, kinship: 0.188}, {label: 'BC3F3', inbreeding: 0.203, range: null, kinship: 0.225, allowed: 0.116},
  ] as const
  it('draws an egg for F and a ring for kinship in every row and in the key, ranges where there are any, the limit by name', async () => {
    const svg = await renderChart(closenessByStep([...rows], 0.125), words)
    expect(svg).toMatch(/viewBox="0 0 320 /)
    expect(times(svg, EGG)).toBe(3)
    expect(times(svg, /fill="var\(--paper\)" stroke="var\(--ink\)"/)).toBe(3)
    for (const text of ['mean F', 'mean kinship', 'limit 12.5', 'allowed']) expect(svg).toContain(`>${text}<`)
  })
  it('leaves limits out where the project has none', async () => {
    const svg = await renderChart(closenessByStep([{...rows[0]}]), words)
    expect(svg).not.toMatch(/>limit|>allowed/)
  })
})
