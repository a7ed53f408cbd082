import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {closedAncestry} from '../../src/pedigree/closed-ancestry.ts'
import {coancestry} from '../../src/pedigree/coancestry.ts'
import {largestPaths} from '../../src/pedigree/largest-paths.ts'
import type {Pedigree} from '../../src/pedigree/pedigree.ts'
import {anyPedigree} from './pedigrees.ts'

const everything = {limit: Infinity, generations: Infinity, steps: Infinity}

function of(pedigree: Pedigree, a: number, b: number, search = everything) {
  const {flow, self} = coancestry(pedigree)
  const ancestry = closedAncestry(flow, [a, b])
  const place = (animal: number) => ancestry.ancestors.findIndex(each => each.animal === animal && each.unknown === null)
  const selves = Float64Array.from(ancestry.ancestors, ({animal, unknown}) => (unknown === null ? self(animal) : 0))
  return largestPaths(ancestry, selves, [place(a), place(b)], search)
}

/** By Wright's rule: every way up from each of the two, every pair of them that ends in one bird and has nobody else in common. */
function byHand(pedigree: Pedigree, a: number, b: number): readonly (readonly [string, number])[] {
  const {self} = coancestry(pedigree)
  const ways = (index: number): {way: number[]; weight: number}[] => {
    const {matings = [], oneOf = [], damStandIn} = pedigree.animals[index] ?? {}
    const above = new Map<number, number>()
    const add = (parent: number | null, weight: number) => { if (parent !== null) above.set(parent, (above.get(parent) ?? 0) + weight) }
    for (const {sire, dam, chance} of matings) {
      add(sire, chance / 2)
      if (damStandIn === undefined) add(dam, chance / 2)
    }
    add(damStandIn ?? null, 1 / 2)
    for (const {animal, chance} of oneOf) add(animal, chance)
    return [{way: [index], weight: 1}, ...[...above].flatMap(([parent, weight]) => ways(parent).map(further => ({way: [index, ...further.way], weight: weight * further.weight})))]
  }
  return ways(a).flatMap(one => ways(b).flatMap(other => {
    const meet = one.way.at(-1) ?? NaN
    if (meet !== other.way.at(-1) || new Set([...one.way, ...other.way]).size < one.way.length + other.way.length - 1) return []
    return [[`${one.way.join(' ')} | ${other.way.join(' ')}`, one.weight * other.weight * self(meet)] as const]
  }))
}

describe('largestPaths(ancestry, selves, pair, search)', () => {
  it('finds the paths that Wright’s rule allows, each with its part, the largest first', () => {
    fc.assert(fc.property(anyPedigree(12), fc.nat(), fc.nat(), (pedigree, p, q) => {
      const [a, b] = [p % pedigree.animals.length, q % pedigree.animals.length]
      const found = of(pedigree, a, b)
      const rule = byHand(pedigree, a, b)
      expect(found.map(({up: [one, other]}) => `${one.join(' ')} | ${other.join(' ')}`).sort()).toEqual(rule.map(([name]) => name).sort())
      const parts = new Map(rule)
      found.forEach(({up: [one, other], kinship}, index) => {
        expect(kinship).toBeCloseTo(parts.get(`${one.join(' ')} | ${other.join(' ')}`) ?? NaN, 12)
        expect(kinship).toBeLessThanOrEqual((found[index - 1]?.kinship ?? 1) + 1e-12)
      })
    }), {numRuns: 200})
  })

  it('looks no further than it is told', () => {
    fc.assert(fc.property(anyPedigree(16), fc.nat(), fc.nat(), fc.integer({min: 0, max: 4}), (pedigree, p, q, depth) => {
      const [a, b] = [p % pedigree.animals.length, q % pedigree.animals.length]
      const length = ({up: [one, other]}: ReturnType<typeof of>[number]) => Math.max(one.length, other.length) - 1
      const near = of(pedigree, a, b, {...everything, generations: depth})
      expect(near).toHaveLength(of(pedigree, a, b).filter(path => length(path) <= depth).length)
      for (const path of near) expect(length(path)).toBeLessThanOrEqual(depth)
      expect(of(pedigree, a, b, {...everything, steps: 0})).toEqual([])
    }), {numRuns: 100})
  })
})
