import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {expectedResponse, selectionDifferential} from '../../src/statistics/selection-differential.ts'
import {selectionIntensity} from '../../src/statistics/selection-intensity.ts'
import {chanceOf} from '../../src/statistics/chance.ts'
import {expectClose} from '../expect-close.ts'

const oneClass = fc.array(fc.tuple(fc.integer({min: 1000, max: 3000}), fc.integer({min: 0, max: 9})), {minLength: 1, maxLength: 12})
  .map(birds => ({all: birds.map(([value]) => value), bred: birds.filter(([, chicks]) => chicks > 0).map(([value, weight]) => ({value, weight}))}))

describe('selectionDifferential(classes)', () => {
  it('is what the best two of ten come to on average: the printed intensity 1.27', () => {
    // Becker 1984, Manual of Quantitative Genetics, table of intensities: 2 of 10, 1.2701 (from memory)
    const chance = chanceOf(9), share = () => (chance.next() + 0.5) / 2 ** 32
    let sum = 0
    for (let hatch = 0; hatch < 8000; hatch++) {
      const all = Array.from({length: 10}, () => 2000 + 200 * Math.sqrt(-2 * Math.log(share())) * Math.cos(2 * Math.PI * share())).sort((a, b) => b - a)
      sum += (selectionDifferential([{all, bred: all.slice(0, 2).map(value => ({value, weight: 1}))}])?.differential ?? NaN) / 200
    }
    expectClose(sum / 8000, 1.2701, 0.025)
    expectClose(sum / 8000, selectionIntensity(2, 10), 0.025)
  })

  it('is the mean over all chicks of how far their parent stood above its class', () => {
    fc.assert(fc.property(fc.array(oneClass, {minLength: 1, maxLength: 4}), classes => {
      const got = selectionDifferential(classes)
      const each = classes.flatMap(({all, bred}) => bred.flatMap(({value, weight}) => Array.from({length: weight}, () => value - all.reduce((sum, other) => sum + other, 0) / all.length)))
      if (each.length === 0) expect(got).toBeNull()
      else expectClose(got?.differential ?? NaN, each.reduce((sum, value) => sum + value, 0) / each.length, 1e-9)
    }))
  })

  it('is nought when all are bred from alike, and does not see a good hatch', () => {
    fc.assert(fc.property(fc.array(fc.integer({min: 1000, max: 3000}), {minLength: 2, maxLength: 12}), all => {
      expectClose(selectionDifferential([{all, bred: all.map(value => ({value, weight: 3}))}])?.differential ?? NaN, 0, 1e-9)
      const best = Math.max(...all), alone = selectionDifferential([{all, bred: [{value: best, weight: 2}]}])
      const fed = selectionDifferential([{all: all.map(value => value + 500), bred: [{value: best + 500, weight: 2}]}])
      expectClose(fed?.differential ?? NaN, alone?.differential ?? NaN, 1e-9)
    }))
  })

  it('gives the value of its example', () => {
    expect(selectionDifferential([{all: [2000, 2200, 2400], bred: [{value: 2400, weight: 8}, {value: 2200, weight: 2}]}])).toEqual({differential: 160, intensity: 0.8, bred: 2, measured: 3})
  })
  it('has no intensity where all are alike, and is nothing where none was bred from', () => {
    expect(selectionDifferential([{all: [5, 5], bred: [{value: 5, weight: 1}]}])).toMatchObject({differential: 0, intensity: null})
    expect(selectionDifferential([{all: [7], bred: [{value: 7, weight: 1}]}])).toMatchObject({differential: 0, intensity: null})
    expect(selectionDifferential([{all: [5, 6], bred: []}])).toBeNull()
    expect(selectionDifferential([])).toBeNull()
  })
  it('refuses what cannot be', () => {
    expect(() => selectionDifferential([{all: [], bred: [{value: 1, weight: 1}]}])).toThrow(RangeError)
    expect(() => selectionDifferential([{all: [1], bred: [{value: 1, weight: 0}]}])).toThrow(RangeError)
    expect(() => selectionDifferential([{all: [1], bred: [{value: NaN, weight: 1}]}])).toThrow(RangeError)
  })
})

describe('expectedResponse(cocks, hens, heritability)', () => {
  it('is h²S, with limits the right way round for either sign of S', () => {
    // the breeder's equation, Falconer & Mackay 1996, ch. 11: cocks +300, hens +100, h² 0.4
    expect(expectedResponse(300, 100, {value: 0.4, low: 0.2, high: 0.6})).toEqual({differential: 200, response: 80, interval: {low: 40, high: 120}})
    fc.assert(fc.property(fc.integer({min: -500, max: 500}), fc.integer({min: -500, max: 500}), (cocks, hens) => {
      const {response, interval} = expectedResponse(cocks, hens, {value: 0.3, low: 0.1, high: 0.5})
      expect(interval.low).toBeLessThanOrEqual(response)
      expect(interval.high).toBeGreaterThanOrEqual(response)
    }))
  })
  it('refuses a heritability beyond 1', () => expect(() => expectedResponse(1, 1, {value: 0.4, low: 0, high: 1.2})).toThrow(RangeError))
  it('refuses what is not finite', () => expect(() => expectedResponse(NaN, 1, {value: 0.4, low: 0, high: 1})).toThrow(RangeError))
})
