import {describe, expect, it} from 'vitest'
import {hasRows, mapRows} from '../../src/charts/chart-spec.ts'
import type {ChartSpec} from '../../src/charts/chart-spec.ts'
import {axisFromZero, niceStep} from '../../src/charts/egg-rows.ts'
import {hatchResults} from '../../src/charts/hatch-results.ts'
import {renderChart} from '../../src/charts/render.ts'
import {fitText, textRoom} from '../../src/charts/row-chart.ts'
import {shareByStep} from '../../src/charts/share-by-step.ts'
import {spreadByStep} from '../../src/charts/spread-by-step.ts'
import {statePatterns, statesByStep} from '../../src/charts/states-by-step.ts'
import {strainShareByStep} from '../../src/charts/strain-share-by-step.ts'
import {literalColours, theme, themeOf} from '../../src/charts/theme.ts'
import {weightsAsBars, weightsByClass} from '../../src/charts/weights-by-class.ts'
import type {WeightClass} from '../../src/charts/weights-by-class.ts'
import {shareRows, times, words} from './sample-rows.ts'

const draw = (spec: ChartSpec): Promise<string> => renderChart(spec, words)
const EGG = /<path transform="translate\([^"]+\)" d="M0,-7\.52C/
const across = (svg: string): string | undefined => /viewBox="0 0 (\d+) /.exec(svg)?.[1]

describe('every chart', () => {
  it('is 320 units wide', async () => {
    const bird = {value: 2.1, right: true}
    const specs = [
      shareByStep(shareRows), statesByStep([{label: 'F1', counts: {pea: 1}}], [{name: 'pea', wanted: true}]),
      hatchResults([{label: '2024-01', eggs: 48, hatched: 37, clear: 5, dead: 6}]), strainShareByStep([{label: 'F1', shares: {a: 1}, words: '100%'}], ['a']),
      spreadByStep([{label: 'F1', cv: 0.1}]),
      weightsByClass([{sex: 'male', title: 'Cockerels, 1', standard: null, birds: [bird]}]),
    ]
    for (const spec of specs) expect(across(await draw(spec))).toBe('320')
  })
})

describe('shareByStep(rows)', () => {
  it('draws wanted, off type, expected and count for each step that has them', async () => {
    const svg = await draw(shareByStep(shareRows))
    expect(times(svg, /fill="var\(--beetle\)"/)).toBe(2)
    expect(times(svg, /fill="url\(#barred\)"/)).toBe(2)
    expect(times(svg, /h2v26h-2Z/)).toBe(2)
    for (const count of ['24/24', '19/41', '0/7']) expect(svg).toContain(`>${count}<`)
  })

  it('draws rows of 34 in the order given', async () => {
    const svg = await draw(shareByStep(shareRows))
    expect(svg).toContain('viewBox="0 0 320 102"')
    expect(svg.indexOf('>F1<')).toBeLessThan(svg.indexOf('>BC1<'))
    expect(svg.indexOf('>BC1<')).toBeLessThan(svg.indexOf('>BC3F2<'))
  })

  it('refuses a count that is no share of its total', () => {
    expect(() => shareByStep([{label: 'F1', count: 3, total: 2}])).toThrow(RangeError)
    expect(() => shareByStep([{label: 'F1', count: 0, total: 0}])).toThrow(RangeError)
  })

  it('shortens a label that would leave no room, with a sign', async () => {
    const svg = await draw(shareByStep([{label: 'BC2-a-donor-with-quite-a-long-name', count: 1, total: 2}]))
    expect(svg).toMatch(/>BC2-a-donor[^<]*…</)
  })
})

describe('statesByStep(rows, states)', () => {
  const states = [{name: 'neat', wanted: true}, {name: 'coarse', wanted: false}, {name: 'single', wanted: false}, {name: 'walnut', wanted: null}] as const

  it('tells states apart by pattern', () => {
    expect(statePatterns(states).map(({pattern}) => pattern)).toEqual(['self', 'barred', 'laced', 'pencilled'])
  })

  it('draws a piece for each state that was met, a key for all, and the number scored', async () => {
    const svg = await draw(statesByStep([{label: 'BC1', counts: {neat: 2, coarse: 17, single: 22}}], [...states]))
    expect(times(svg, /v14h/)).toBe(3)
    for (const {name} of states) expect(svg).toContain(`>${name}<`)
    expect(svg).toContain('>41<')
  })

  it('refuses a row with nothing scored', () => {
    expect(() => statesByStep([{label: 'F1', counts: {}}], [...states])).toThrow(RangeError)
  })
})

describe('hatchResults(rows)', () => {
  it('shows what was not counted as not told', async () => {
    const svg = await draw(hatchResults([{label: '2024-01', eggs: 48, hatched: 37, clear: null, dead: null}]))
    expect(svg).toContain('>not told<')
    expect(svg).toContain('>37/48<')
  })

  it('leaves the key without it when all is told', async () => {
    expect(await draw(hatchResults([{label: '2024-01', eggs: 48, hatched: 37, clear: 5, dead: 6}]))).not.toContain('>not told<')
  })

  it('refuses more chicks than eggs', () => {
    expect(() => hatchResults([{label: '2024-01', eggs: 10, hatched: 12, clear: 0, dead: 0}])).toThrow(RangeError)
  })
})

describe('strainShareByStep(rows, strains)', () => {
  it('draws what descent leaves open as not known', async () => {
    const svg = await draw(strainShareByStep([{label: 'mixed', shares: {'Holm White': 0.6, 'Fell Buff': 0.15}, words: '60.0%'}], ['Holm White', 'Fell Buff']))
    expect(svg).toContain('>not known<')
    expect(times(svg, /v14h/)).toBe(3)
  })

  it('does not take rounding of binary fractions for a gap', async () => {
    expect(await draw(strainShareByStep([{label: 'x', shares: {a: 0.1, b: 0.2, c: 0.7}, words: '10%'}], ['a', 'b', 'c']))).not.toContain('not known')
  })
})

describe('spreadByStep(rows, mark)', () => {
  it('draws an egg a step, an interval where there is one, words where nothing can be said, and the mark', async () => {
    const svg = await draw(spreadByStep([{label: 'F1', cv: 0.089, interval: {low: 0.062, high: 0.156}}, {label: 'BC1', cv: 0.118}, {label: 'BC2', cv: null}], 0.1))
    expect(times(svg, EGG)).toBe(2)
    expect(times(svg, /stroke="var\(--line\)"/)).toBe(1)
    expect(svg).toContain('>too few birds<')
    expect(svg).toContain('>mark 10<')
    for (const tick of [0, 5, 10, 15, 20]) expect(svg).toContain(`>${tick}<`)
  })

  it('has an axis even when nothing can be said', async () => {
    expect(await draw(spreadByStep([{label: 'F1', cv: null}]))).toContain('>too few birds<')
  })
})

describe('weightsByClass(classes)', () => {
  const pullets: WeightClass = {
    sex: 'female', title: 'Pullets, 3', standard: {mark: 1.9, low: 1.71, high: 2.09},
    birds: [{value: 1.85, right: true}, {value: 1.86, right: false}, {value: 2.3, right: null}],
  }

  it('draws a mark a bird, open when it fails, speckled when it cannot be told, before the standard', async () => {
    const svg = await draw(weightsByClass([pullets]))
    expect(times(svg, /<path transform="translate\([^"]+\)" d="M/)).toBe(3)
    expect(svg).toContain('fill="var(--paper)" stroke="var(--plum)"')
    expect(svg).toContain('fill="url(#speckled)"')
    expect(svg).toContain('fill="var(--shell)"')
    expect(svg).toContain('>Pullets, 3<')
  })

  it('draws one bird alone', async () => {
    expect(await draw(weightsByClass([{sex: 'unknown', title: 'Sex unknown, 1', standard: null, birds: [{value: 0, right: true}]}]))).toContain('<svg')
  })

  it('turns to bars when columns grow beyond counting', async () => {
    const many = Array.from({length: 400}, (_, index) => ({value: 1.8 + (index % 9) / 100, right: true as boolean | null}))
    const crowd: WeightClass = {...pullets, birds: [{value: 1.5, right: true}, ...many]}
    expect(weightsAsBars([crowd])).toBe(true)
    expect(weightsAsBars([pullets])).toBe(false)
    expect((await draw(weightsByClass([crowd]))).length).toBeLessThan(6000)
  })

  it('refuses what is not a number', () => {
    expect(() => weightsByClass([{...pullets, birds: [{value: NaN, right: true}]}])).toThrow(RangeError)
  })
})

describe('the pieces charts are made of', () => {
  it('finds axis steps of 1, 2 and 5', () => {
    expect([0.3, 1, 1.2, 3.9, 6, 27].map(niceStep)).toEqual([0.5, 1, 2, 5, 10, 50])
  })

  it('holds every number between the ends of an axis from 0', () => {
    expect(axisFromZero([15.6, 10])).toEqual({from: 0, to: 20, ticks: [0, 5, 10, 15, 20]})
    expect(axisFromZero([])).toEqual({from: 0, to: 1, ticks: [0, 1]})
    expect(axisFromZero([0.3]).ticks).toEqual([0, 0.1, 0.2, 0.3])
  })

  it('measures text without a canvas, longer for more letters', () => {
    expect(textRoom('BC3F2')).toBeGreaterThan(textRoom('BC3'))
    expect(fitText('short', 100)).toBe('short')
    expect(textRoom(fitText('a very long label indeed', 80))).toBeLessThanOrEqual(80)
  })

  it('keeps lists from being empty', () => {
    expect(hasRows([])).toBe(false)
    expect(mapRows([1, 2], each => each * 2)).toEqual([2, 4])
  })

  it('puts plain colours for variables and patterns when a drawing leaves the site', () => {
    expect(literalColours('var(--beetle) url(#barred) var(--ink)')).toBe('#0b5c4a #d9bfcd #14201c')
  })

  it('sends with a drawing the styles it names and no others', () => {
    expect(Object.keys(themeOf({layer: [{mark: {type: 'bar', style: 'self'}}, {mark: {type: 'point', style: ['male', 'open']}}]}).style ?? {})).toEqual(['self', 'open', 'male'])
    expect(themeOf({mark: 'bar'}).bar).toEqual(theme.bar)
    expect(themeOf({mark: 'bar'}).axis).toEqual(theme.axis)
    expect(themeOf({mark: 'bar'})).not.toHaveProperty('point')
  })
})
