import {readFileSync} from 'node:fs'
import {describe, expect, it} from 'vitest'
import type {Wanted} from '../../src/logbook/book.ts'
import {measureRows} from '../../src/pages/bird-measures.ts'
import {bird, looks, score, trait} from './small-logbook.ts'

/** The strip of a cock of so many grams. */
function stripAt(grams: number, wanted: Wanted) {
  const weight = trait('weight', 'Weight', {kind: 'measured', unit: 'g', wanted: {male: wanted, female: wanted}})
  return measureRows(bird('C', 'male', {looks: looks(score(weight, grams))}), [weight], 'metric')[0]?.strip
}

const about: Wanted = {kind: 'about', value: 2000, tolerance: 0.1}
const between: Wanted = {kind: 'between', low: 1500, high: 2500}

describe('the strip of a measure', () => {
  it('has the mark in its middle, and what is allowed about it', () => {
    expect(stripAt(2000, about)).toEqual({allowed: 'about', at: 50, inside: true, label: 'Inside what is allowed'})
    expect(stripAt(2210, about)).toEqual({allowed: 'about', at: 75, inside: false, label: 'Over what is allowed'})
    expect(stripAt(2000, {kind: 'at-least', value: 2000})).toMatchObject({allowed: 'at-least', at: 50, inside: true})
    expect(stripAt(1900, {kind: 'at-least', value: 2000})).toMatchObject({at: 40, inside: false, label: 'Under what is allowed'})
    expect(stripAt(2100, {kind: 'at-most', value: 2000})).toMatchObject({allowed: 'at-most', at: 60, inside: false, label: 'Over what is allowed'})
  })

  it('keeps an egg beyond its ends whole', () => {
    expect([stripAt(100, about)?.at, stripAt(9000, about)?.at]).toEqual([5, 95])
  })

  it('puts an egg on the limit on the edge of what the stylesheet shades', () => {
    const style = readFileSync(new URL('../../templates/style.css', import.meta.url), 'utf8')
    const shaded = (name: string): number => Number(new RegExp(`\\.${name} \\{[^}]*--zone: ([\\d.]+)%`).exec(style)?.[1])
    expect(stripAt(2200, about)?.at).toBeCloseTo(50 + shaded('strip') / 2, 1)
    expect(stripAt(2500, between)?.at).toBeCloseTo(50 + shaded('between') / 2, 1)
    expect(stripAt(2000, {kind: 'at-least', value: 2000})?.at).toBe(100 - shaded('at-least'))
    expect(stripAt(2000, {kind: 'at-most', value: 2000})?.at).toBe(shaded('at-most'))
  })
})
