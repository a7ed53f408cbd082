import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {componentsOf} from '../../src/heredity/components.ts'
import {someTables} from './summed.ts'

describe('componentsOf(sizes, factors)', () => {
  it('puts two variables together just when tables lead from one to the other, and turns no table about', () => {
    fc.assert(fc.property(someTables, ({sizes, factors}) => {
      const {components, componentOf, placeOf, componentOfFactor, placeOfFactor} = componentsOf(sizes, factors)
      const reach = sizes.map((_, start) => {
        const reached = new Set([start])
        for (const {of} of [...factors, ...factors, ...factors, ...factors, ...factors, ...factors, ...factors]) if (of.some(variable => reached.has(variable))) of.forEach(variable => reached.add(variable))
        return reached
      })
      sizes.forEach((size, a) => {
        const stands = factors.some(({of}) => of.includes(a)), component = components[componentOf[a]!]
        expect(stands).toBe(component !== undefined)
        if (!component) return
        expect(component.sizes[placeOf[a]!]).toBe(size)
        expect(new Set(component.variables)).toEqual(reach[a])
      })
      factors.forEach(({of, table}, index) => {
        if (of.length === 0) return expect(componentOfFactor[index]).toBe(-1)
        const component = components[componentOfFactor[index]!], there = component?.factors[placeOfFactor[index]!]
        expect(there?.of.map(variable => component?.variables[variable])).toEqual(of)
        expect(there?.table).toBe(table)
      })
    }), {seed: 5, numRuns: 60})
  })
})
