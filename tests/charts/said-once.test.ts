import {fileURLToPath} from 'node:url'
import {describe, expect, it} from 'vitest'
import {renderChart} from '../../src/charts/render.ts'
import {saidOnce} from '../../src/charts/said-once.ts'
import type {ChartSpec} from '../../src/charts/chart-spec.ts'
import {openBook} from '../../src/commands/open-book.ts'
import {progressIn} from '../../src/commands/progress.ts'
import {compose} from '../../src/pages/compose.ts'
import {figuresIn} from '../../src/site/render.ts'
import {listeningWorld} from '../folders/listening-world.ts'
import {words} from './sample-rows.ts'

const share = (field: string, channel: object = {}) => ({field, type: 'quantitative', scale: {domain: [0, 1]}, axis: {values: [0, 1], format: '.0%'}, ...channel})
const layered = (...layer: readonly object[]) => ({layer: layer.map(encoding => ({mark: 'point', encoding}))}) as unknown as ChartSpec

describe('saidOnce(spec)', () => {
  it('leaves every figure of a project as it was drawn', async () => {
    const {findings} = openBook(fileURLToPath(new URL('../folders/small-yard/records', import.meta.url)), undefined, progressIn(listeningWorld(), true))
    if (!findings) throw new Error('the small yard has records at fault')
    const figures = [...new Set(compose(findings).pages.flatMap(page => (page.fleeting ? [] : figuresIn(page.view))))]
    expect(figures.length).toBeGreaterThan(5)
    // what was rounded to two decimals may fall to the other side
    const near = (svg: string) => svg.replace(/\d+\.\d+/g, number => Number(number).toFixed(1))
    for (const {name, spec} of figures) expect(near(await renderChart(saidOnce(spec as ChartSpec) as ChartSpec, words)), name).toBe(near(await renderChart(spec as ChartSpec, words)))
  })

  it('says scale and axis of a channel in the first layer alone', () => {
    expect(saidOnce(layered({x: share('a')}, {x: share('b'), y: share('c')}))).toEqual(layered({x: share('a')}, {x: {field: 'b', type: 'quantitative'}, y: share('c')}))
  })

  it('says again what is otherwise, switched off, or leaves Vega-Lite a choice', () => {
    const other = layered({x: share('a')}, {x: share('b', {scale: {domain: [0, 2]}, axis: null})}, {x: {field: 'c', scale: null, axis: null}})
    expect(saidOnce(other)).toEqual(other)
    const unformed = layered({x: {field: 'a', axis: {values: [0, 1]}}}, {x: {field: 'b', axis: {values: [0, 1]}}})
    expect(saidOnce(unformed)).toEqual(unformed)
  })

  it('drops the noise of binary fractions', () => {
    expect(saidOnce({data: {values: [{a: 58.60000000000001, b: 1 / 3, c: '58.60000000000001'}]}, mark: 'point'})).toMatchObject({data: {values: [{a: 58.6, b: 0.333333333333, c: '58.60000000000001'}]}})
  })

  it('does not change the specification it is given', () => {
    const spec = layered({x: share('a')}, {x: share('b')}), before = JSON.stringify(spec)
    saidOnce(spec)
    expect(JSON.stringify(spec)).toBe(before)
  })
})
