/** Held against pixels: what is drawn is the same before and after. */
import {fileURLToPath} from 'node:url'
import sharp from 'sharp'
import {describe, expect, it} from 'vitest'
import {renderChart} from '../../src/charts/render.ts'
import {literalColours} from '../../src/charts/theme.ts'
import type {ChartSpec} from '../../src/charts/chart-spec.ts'
import {openBook} from '../../src/commands/open-book.ts'
import {progressIn} from '../../src/commands/progress.ts'
import {compose} from '../../src/pages/compose.ts'
import {figuresIn} from '../../src/site/render.ts'
import {slimDrawing} from '../../src/site/slim-drawing.ts'
import {listeningWorld} from '../folders/listening-world.ts'

/** As it looks at twice its size, in plain colours. */
async function pixels(svg: string): Promise<Uint8Array> {
  const [, width = '', height = ''] = /viewBox="0 0 ([\d.]+) ([\d.]+)"/.exec(svg) ?? []
  const alone = literalColours(svg).replace('<svg ', `<svg xmlns="http://www.w3.org/2000/svg" font-family="serif" font-size="16" width="${Number(width) * 2}" height="${Number(height) * 2}" `)
  return sharp(Buffer.from(alone)).flatten({background: '#fff'}).raw().toBuffer()
}

const drawing = (inside: string) => `<svg class="marks" viewBox="0 0 100 100" role="img"><title id="a">A b="c"</title><desc id="d">D.</desc><g fill="none">${inside}</g></svg>`
const inside = (svg: string) => /<\/desc><g fill="none">(.*)<\/g><\/svg>/.exec(svg)?.[1] ?? ''

describe('slimDrawing(svg)', () => {
  it('draws every figure of a project as it was, with fewer words', async () => {
    const {findings} = openBook(fileURLToPath(new URL('../folders/small-yard/records', import.meta.url)), undefined, progressIn(listeningWorld(), true))
    if (!findings) throw new Error('the small yard has records at fault')
    const figures = [...new Set(compose(findings).pages.flatMap(page => (page.fleeting ? [] : figuresIn(page.view))))]
    expect(figures.length).toBeGreaterThan(5)
    let before = 0, after = 0
    for (const figure of figures) {
      const whole = await renderChart(figure.spec as ChartSpec, figure), slim = slimDrawing(whole)
      const [was, is] = await Promise.all([pixels(whole), pixels(slim)])
      expect(is.length).toBe(was.length)
      let most = 0
      for (const [place, value] of was.entries()) most = Math.max(most, Math.abs(value - (is[place] ?? 0)))
      // a hundredth of a unit, which is what numbers are rounded to, shades the rim of a mark by a few in 255
      expect(most, figure.id).toBeLessThanOrEqual(24)
      expect([...slim.matchAll(/>([^<]+)</g)].map(([, text]) => text), figure.id).toEqual([...whole.matchAll(/>([^<]+)</g)].map(([, text]) => text))
      before += whole.length
      after += slim.length
    }
    expect(after).toBeLessThan(0.8 * before)
  })

  it('makes one path of marks painted alike, unless they touch or another lies between', () => {
    const mark = (x: number, fill = 'red') => `<path transform="translate(${x},0)" d="M0,0h4v4h-4Z" fill="${fill}" stroke-width="2"/>`
    expect(inside(slimDrawing(drawing(mark(0) + mark(9))))).toBe('<path d="M0,0h4v4h-4zM9,0h4v4h-4z" fill="red"/>')
    expect(inside(slimDrawing(drawing(mark(0) + mark(3))))).toBe('<g fill="red"><path d="M0,0h4v4h-4z"/><path d="M3,0h4v4h-4z"/></g>')
    expect(inside(slimDrawing(drawing(mark(0) + mark(9, 'blue') + mark(20))))).toMatch(/^<path d="M0[^>]*"red"\/><path d="M9[^>]*"blue"\/><path d="M20[^>]*"red"\/>$/)
  })

  it('keeps a stroke, and lines as lines', () => {
    expect(inside(slimDrawing(drawing('<line transform="translate(5,6)" x2="0" y2="9" stroke="red" stroke-width="2"/><line x2="7" y2="0" stroke="red" stroke-width="2"/>'))))
      .toBe('<path d="M5,6v9M0,0h7" stroke="red" stroke-width="2"/>')
  })

  it('leaves where it lies what a pattern fills', () => {
    const speckled = '<path transform="translate(3,4)" d="M0,0h4v4h-4Z" fill="url(#speckled)"/>'
    expect(inside(slimDrawing(drawing(speckled)))).toBe(speckled)
  })

  it('says once, of their group, how texts are written, and nothing of them differently', () => {
    const text = (y: number, anchor: string, words: string) => `<text${anchor} transform="translate(-6,${y})" fill="var(--soft)">${words}</text>`
    expect(inside(slimDrawing(drawing(text(1, '', 'F1') + text(9, ' text-anchor="end"', 'BC1 &lt; 2')))))
      .toBe('<g fill="var(--soft)"><text x="-6" y="1">F1</text><text x="-6" y="9" text-anchor="end">BC1 &lt; 2</text></g>')
    expect(inside(slimDrawing(drawing('<text transform="rotate(90)" fill="red">a</text>')))).toBe('<text transform="rotate(90)" fill="red">a</text>')
  })

  it('refuses what is no drawing', () => {
    expect(() => slimDrawing('<p>a</p>')).toThrow('not a drawing')
  })
})
