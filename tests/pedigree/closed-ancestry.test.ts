import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {climb, closedAncestry} from '../../src/pedigree/closed-ancestry.ts'
import {geneFlow} from '../../src/pedigree/gene-flow.ts'
import type {Animal} from '../../src/pedigree/pedigree.ts'
import {anyPedigree, written} from './pedigrees.ts'

describe('closedAncestry(flow, group)', () => {
  it('parents before their chicks, and only those with a share', () => {
    const {pedigree, of: at} = written('x s d\ns - -\nd - -\nz - -\ny x z')
    const {ancestors, start} = closedAncestry(geneFlow(pedigree, 'autosome'), [at('x'), at('s')])
    expect(ancestors.map(({animal, isOrigin}) => [animal, isOrigin])).toEqual([[at('s'), true], [at('d'), true], [at('x'), false]])
    expect([...start]).toEqual([1 / 2, 0, 1 / 2])
  })

  it('founders end descent: neither base nor kin is climbed', () => {
    const founder: Animal = {sex: 'unknown', base: 0, matings: []}
    const flow = geneFlow({animals: [founder, founder], bases: [{inbreeding: 0, kinship: 0.1, within: null}], kin: [{animals: [0, 1], kinship: 0.25}]}, 'autosome')
    expect(closedAncestry(flow, [1])).toMatchObject({ancestors: [{animal: 1, unknown: null, isOrigin: true, base: 0}]})
  })

  it('a half-known bird has an unknown parent of its own', () => {
    const {pedigree} = written('s - -\nx s -')
    const {ancestors} = closedAncestry(geneFlow(pedigree, 'autosome'), [1])
    expect(ancestors[1]).toEqual({animal: 1, unknown: 'dam', isOrigin: true, base: null})
    // a hen has no Z from her dam
    const hen = written('s♂ - -\nx♀ s -').pedigree
    expect(closedAncestry(geneFlow(hen, 'Z'), [1]).ancestors).toHaveLength(2)
  })

  it.each(['autosome', 'Z', 'dam line'] as const)('at every place the ways up sum to 1, and all genes come to an origin (%s)', transmission => {
    fc.assert(fc.property(anyPedigree(), fc.array(fc.nat(), {minLength: 1, maxLength: 4}), (pedigree, picks) => {
      const ancestry = closedAncestry(geneFlow(pedigree, transmission), picks.map(pick => pick % pedigree.animals.length))
      const {ancestors, first, way, share, start} = ancestry
      ancestors.forEach(({isOrigin}, place) => {
        const ways = [...way.slice(first[place], first[place + 1])], shares = [...share.slice(first[place], first[place + 1])]
        expect(shares.reduce((sum, each) => sum + each, 0)).toBeCloseTo(isOrigin ? 0 : 1, 9)
        for (const above of ways) expect(above).toBeLessThan(place)
      })
      const reach = climb(ancestry, start.slice())
      expect(ancestors.reduce((sum, {isOrigin}, place) => sum + (isOrigin ? reach[place] ?? 0 : 0), 0)).toBeCloseTo(1, 9)
    }), {numRuns: 100})
  })
})
