import {describe, expect, it} from 'vitest'
import {renderChart} from '../../src/charts/render.ts'
import {shareByStep} from '../../src/charts/share-by-step.ts'
import {tidySvg} from '../../src/charts/tidy-svg.ts'
import {shareRows, times, words} from './sample-rows.ts'

describe('renderChart(spec, words)', () => {
  it('gives an inline SVG with a view box, a role, and title and description by ids of its own', async () => {
    const svg = await renderChart(shareByStep(shareRows), words)
    expect(svg).toMatch(/^<svg class="marks" viewBox="0 0 320 102" role="img" aria-labelledby="figure-1-title figure-1-desc">/)
    expect(svg).toContain('<title id="figure-1-title">Pea comb by step</title>')
    expect(svg).toContain('<desc id="figure-1-desc">All of 24 in F1, 19 of 41 in BC1, none of 7 in BC3F2.</desc>')
    expect(svg.endsWith('</svg>')).toBe(true)
  })

  it('escapes what a keeper wrote', async () => {
    const svg = await renderChart(shareByStep([{label: '<b>&', count: 1, total: 2}]), {id: 'x', title: 'a < b', description: '<script>'})
    expect(svg).toContain('a &lt; b')
    expect(svg).not.toContain('<script>')
    expect(svg).not.toContain('<b>')
  })

  it('leaves the stylesheet its variables and patterns', async () => {
    const svg = await renderChart(shareByStep(shareRows), words)
    expect(svg).toContain('fill="var(--beetle)"')
    expect(svg).toContain('fill="url(#barred)"')
    expect(svg).not.toMatch(/#[0-9a-f]{6}/)
  })

  it('gives the same bytes again, and the right drawing when only the data differ', async () => {
    const first = await renderChart(shareByStep(shareRows), words)
    const other = await renderChart(shareByStep([shareRows[0], {label: 'BC1', count: 41, total: 41}, {label: 'BC3F2', count: 7, total: 7}]), words)
    const again = await renderChart(shareByStep(shareRows), words)
    expect(again).toBe(first)
    expect(times(other, /fill="var\(--beetle\)"/)).toBe(3)
    expect(other).toContain('>41/41<')
  })

  it('does not change the specification it is given', async () => {
    const spec = shareByStep(shareRows)
    const before = JSON.stringify(spec)
    await renderChart(spec, words)
    expect(JSON.stringify(spec)).toBe(before)
  })

  it('writes no number with more than two decimals', async () => {
    expect(await renderChart(shareByStep(shareRows), words)).not.toMatch(/\.\d{3}/)
  })

  it('refuses a specification that warns', async () => {
    const spec = {data: {values: [{a: 1}]}, mark: 'bar', encoding: {x: {field: 'a', type: 'quantitative'}, shape: {field: 'a', type: 'nominal'}}}
    await expect(renderChart(spec as never, words)).rejects.toThrow(/^chart: /)
  })
})

describe('tidySvg(svg, words)', () => {
  it('throws when something in the drawing is not a number', () => {
    const svg = '<svg class="marks" width="10" height="10" viewBox="0 0 10 10"><path d="M0,NaN"/></svg>'
    expect(() => tidySvg(svg, words)).toThrow(/not a number/)
  })

  it('drops groups that say nothing and keeps those that do', () => {
    const svg = '<svg class="marks" width="10" height="10" viewBox="0 0 10 10"><g><g transform="translate(1,1)"><g><path d="M0,0"/></g><g fill="red"></g></g></g></svg>'
    expect(tidySvg(svg, words)).toContain('</desc><g transform="translate(1,1)"><path d="M0,0"/></g></svg>')
  })
})
