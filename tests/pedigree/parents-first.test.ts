import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {parentsFirst} from '../../src/pedigree/parents-first.ts'

const of = (parents: readonly (readonly number[])[]) => parentsFirst(parents.length, bird => parents[bird] ?? [])

describe('parentsFirst(count, parentsOf)', () => {
  it('puts parents before their chicks and otherwise keeps the order given', () => {
    expect(of([[1], [2], []]).order).toEqual([2, 1, 0])
    expect(of([[], [], [0, 1], []]).order).toEqual([0, 1, 2, 3])
  })

  it('names every bird on a loop, each the chick of the one before it', () => {
    const {loops} = of([[1], [2], [0], []])
    expect(loops).toHaveLength(1)
    const [loop = []] = loops
    expect([...loop].sort()).toEqual([0, 1, 2])
    const parents = [[1], [2], [0], []]
    loop.forEach((bird, index) => expect(parents[bird]).toContain(loop.at(index - 1)))
  })

  it('finds a bird that is its own parent', () => {
    expect(of([[0]]).loops).toEqual([[0]])
  })

  it('says nothing of no birds', () => {
    expect(of([])).toEqual({order: [], loops: []})
  })

  it('walks ten thousand generations without running out of stack', () => {
    const {order} = parentsFirst(10_000, bird => (bird < 9_999 ? [bird + 1] : []))
    expect(order[0]).toBe(9_999)
  })

  it('gives every bird once and, where there is no loop, no chick before its parent', () => {
    const flock = fc.integer({min: 1, max: 30}).chain(count => fc.tuple(
      fc.shuffledSubarray(Array.from({length: count}, (_, bird) => bird), {minLength: count, maxLength: count}),
      fc.array(fc.tuple(fc.nat(count - 1), fc.nat(count - 1)), {maxLength: 60})))
    fc.assert(fc.property(flock, ([ages, pairs]) => {
      const age = new Map(ages.map((bird, index) => [bird, index]))
      const parents = ages.map((): number[] => [])
      for (const [a, b] of pairs) if ((age.get(a) ?? 0) < (age.get(b) ?? 0)) parents[b]?.push(a)
      const {order, loops} = of(parents)
      expect(loops).toEqual([])
      expect([...order].sort((a, b) => a - b)).toEqual(parents.map((_, bird) => bird))
      const place = new Map(order.map((bird, index) => [bird, index]))
      parents.forEach((own, bird) => own.forEach(parent => expect(place.get(parent) ?? 0).toBeLessThan(place.get(bird) ?? 0)))
    }))
  })

  it('finds a loop exactly where a walk back from some bird returns to it (the slow way)', () => {
    const any = fc.integer({min: 1, max: 8}).chain(count => fc.array(fc.array(fc.nat(count - 1), {maxLength: 2}), {minLength: count, maxLength: count}))
    fc.assert(fc.property(any, parents => {
      const ancestors = (bird: number, seen: Set<number>): Set<number> => {
        for (const parent of parents[bird] ?? []) if (!seen.has(parent)) ancestors(parent, seen.add(parent))
        return seen
      }
      const looped = parents.some((_, bird) => ancestors(bird, new Set()).has(bird))
      expect(of(parents).loops.length > 0).toBe(looped)
    }))
  })
})
