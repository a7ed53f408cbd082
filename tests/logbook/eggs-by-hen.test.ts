/** What must hold of any setting: no hen lays more or less than was counted, and two pens have the eggs they were given. */
import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import type {Bird, Pen} from '../../src/logbook/book.ts'
import {eggsByHen} from '../../src/logbook/eggs-by-hen.ts'
import {bookOf} from './around.ts'

const book = bookOf({})
const [pattern] = book.pens
if (!pattern) throw new Error('no pen')
const hens = book.birds.filter(bird => bird.sex !== 'male')
const penOf = (those: readonly Bird[]): Pen => ({...pattern, females: those.map(bird => ({bird, from: null, to: null, chance: null, at: pattern.at}))})
const eggs = fc.nat({max: 30})

/** of each hen the eggs in the first and in the second pen; nought is not standing there */
const settings = fc.tuple(...hens.map(() => fc.tuple(eggs, eggs))).filter(laid => laid.some(([first, second]) => first + second > 0))

describe('eggsByHen', () => {
  it('keeps the eggs of every hen and, where they are given, of both pens', () => {
    fc.assert(fc.property(settings, fc.boolean(), (laid, numbered) => {
      const pens = [0, 1].map(index => {
        const there = hens.filter((_, hen) => (laid[hen]?.[index] ?? 0) > 0)
        return {pen: penOf(there), hens: there, eggs: numbered ? laid.reduce((sum, own) => sum + (own[index] ?? 0), 0) : null}
      })
      const eggsByDam = hens.flatMap((dam, hen) => (laid[hen] && laid[hen][0] + laid[hen][1] > 0 ? [{dam, eggs: laid[hen][0] + laid[hen][1]}] : []))
      const shared = eggsByHen({pens, eggs: eggsByDam.reduce((sum, each) => sum + each.eggs, 0), eggsByDam})
      for (const {dam, eggs: count} of eggsByDam) expect(shared.reduce((sum, {byHen}) => sum + (byHen.get(dam) ?? 0), 0)).toBeCloseTo(count, 9)
      shared.forEach(({byHen, others}, index) => {
        expect(others).toBeLessThan(1e-9)
        for (const dam of byHen.keys()) expect(pens[index]?.hens).toContain(dam)
        if (numbered) expect([...byHen.values()].reduce((sum, count) => sum + count, 0)).toBeCloseTo(pens[index]?.eggs ?? 0, 9)
      })
      const turned = eggsByHen({pens, eggs: null, eggsByDam: [...eggsByDam].reverse()})
      turned.forEach(({byHen}, index) => { for (const [dam, count] of byHen) expect(shared[index]?.byHen.get(dam)).toBeCloseTo(count, 9) })
    }))
  })
})
