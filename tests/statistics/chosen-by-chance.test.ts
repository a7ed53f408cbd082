import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {chosenByChance, type ChosenClass} from '../../src/statistics/chosen-by-chance.ts'

const one = fc.integer({min: 0, max: 6}).chain(all => fc.record({all: fc.constant(all), kept: fc.integer({min: 0, max: all}), showing: fc.integer({min: 0, max: all})}))
  .chain(({all, kept, showing}) => fc.record({all: fc.constant(all), kept: fc.constant(kept), showing: fc.constant(showing), keptShowing: fc.integer({min: Math.max(0, kept + showing - all), max: Math.min(kept, showing)})}))

/** The slow twin: every way to keep so many of each class, one by one; the first birds of a class show it. */
function twin(classes: readonly ChosenClass[]): number {
  let sums = new Map<number, number>([[0, 1]])
  for (const {all, kept, showing} of classes) {
    const ways = new Map<number, number>()
    for (let choice = 0; choice < 2 ** all; choice++) {
      const birds = Array.from({length: all}, (_, bird) => (choice >> bird) & 1)
      if (birds.filter(Boolean).length !== kept) continue
      const shown = birds.slice(0, showing).filter(Boolean).length
      ways.set(shown, (ways.get(shown) ?? 0) + 1)
    }
    const next = new Map<number, number>()
    for (const [a, m] of sums) for (const [b, n] of ways) next.set(a + b, (next.get(a + b) ?? 0) + m * n)
    sums = next
  }
  const seen = classes.reduce((sum, {keptShowing}) => sum + keptShowing, 0), own = sums.get(seen) ?? 0
  const whole = [...sums.values()].reduce((a, b) => a + b, 0)
  return [...sums.values()].filter(ways => ways <= own).reduce((a, b) => a + b, 0) / whole
}

describe('chosenByChance(classes)', () => {
  it('is Fisher’s exact test in a single class', () => {
    // Fisher 1935, The Design of Experiments: eight cups, three of four told right; two-sided 34/70 (from memory)
    expect(chosenByChance([{all: 8, kept: 4, showing: 4, keptShowing: 3}]).p).toBeCloseTo(34 / 70, 12)
    expect(chosenByChance([{all: 4, kept: 2, showing: 2, keptShowing: 2}])).toEqual({seen: 2, expected: 1, p: expect.closeTo(1 / 3, 12) as number})
  })

  it('agrees with every choice laid out', () => {
    fc.assert(fc.property(fc.array(one, {maxLength: 4}), classes => {
      expect(chosenByChance(classes).p).toBeCloseTo(twin(classes), 9)
    }), {numRuns: 150})
  })

  it('gives every sum of a large flock a chance between 0 and 1', () => {
    const {p, expected} = chosenByChance(Array.from({length: 40}, () => ({all: 60, kept: 20, showing: 30, keptShowing: 12})))
    expect(expected).toBe(400)
    expect(p).toBeGreaterThan(0)
    expect(p).toBeLessThan(1e-6)
  })

  it('learns nothing of classes all kept, and refuses counts that cannot be', () => {
    expect(chosenByChance([]).p).toBe(1)
    expect(chosenByChance([{all: 3, kept: 3, showing: 2, keptShowing: 2}]).p).toBe(1)
    for (const wrong of [{all: 3, kept: 4, showing: 0, keptShowing: 0}, {all: 3, kept: 3, showing: 1, keptShowing: 0}, {all: 3, kept: 1, showing: 1.5, keptShowing: 1}]) expect(() => chosenByChance([wrong])).toThrow(RangeError)
  })
})
