import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {dotScale, dotStrip} from '../../src/charts/dot-strip.ts'

const right = (value: number) => ({value, off: false})

describe('dotStrip(birds, scale, allowed, mark)', () => {
  it('stacks birds of one column, crosses above dots, with band and mark where they belong', () => {
    expect(dotStrip([right(5), right(5), {value: 5, off: true}, right(0)], {from: 0, to: 10}, {low: 4, high: 6}, 5)).toEqual({
      height: 20, zone: {x: 96, width: 48}, mark: 120, dots: 'M3 16h.01M123 16h.01m-.01-6h.01', crosses: 'M121 2l4 4m0-4l-4 4',
    })
  })

  it('draws an open band to the end of the scale, and none where it lies outside', () => {
    expect(dotStrip([right(5)], {from: 0, to: 10}, {low: 5, high: Infinity}, null).zone).toEqual({x: 120, width: 120})
    expect(dotStrip([right(5)], {from: 0, to: 10}, {low: 20, high: 30}, null).zone).toBeNull()
  })

  it('draws columns in place of towers of dots, and stays small', () => {
    const many = dotStrip(Array.from({length: 20_000}, (_, place) => right(place % 100)), {from: 0, to: 100}, null, null)
    expect(many.height).toBe(62)
    expect(many.dots.length).toBeLessThan(1000)
    expect(many.dots).not.toContain('h.01')
  })

  it('law: as many marks as birds while they can be counted, none outside the strip', () => {
    fc.assert(fc.property(fc.array(fc.record({value: fc.double({min: -50, max: 150, noNaN: true}), off: fc.boolean()}), {maxLength: 10}), birds => {
      const strip = dotStrip(birds, {from: 0, to: 100}, null, null)
      expect((strip.dots.match(/h\.01/g) ?? []).length).toBe(birds.filter(({off}) => !off).length)
      expect((strip.crosses.match(/m0/g) ?? []).length).toBe(birds.filter(({off}) => off).length)
      for (const [, x = '', y = ''] of (strip.dots + strip.crosses).matchAll(/M(-?[\d.]+) (-?[\d.]+)/g)) {
        expect(Number(x)).toBeGreaterThan(0)
        expect(Number(x)).toBeLessThan(240)
        expect(Number(y)).toBeGreaterThanOrEqual(0)
        expect(Number(y)).toBeLessThan(strip.height)
      }
    }))
  })

  it('refuses a scale that runs nowhere and a value that is none', () => {
    expect(() => dotStrip([], {from: 1, to: 1}, null, null)).toThrow(RangeError)
    expect(() => dotStrip([right(NaN)], {from: 0, to: 1}, null, null)).toThrow(RangeError)
  })
})

describe('dotScale(values)', () => {
  it('holds every value, also where all are equal or one has no end', () => {
    for (const values of [[1, 2, 3], [2, 2], [0, 0], [-5], [1, Infinity], []]) {
      const {from, to} = dotScale(values)
      expect(to).toBeGreaterThan(from)
      for (const value of values.filter(Number.isFinite)) expect(value > from && value < to).toBe(true)
    }
  })
})
