import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {contributions} from '../../src/pedigree/contributions.ts'
import {effectiveAncestors} from '../../src/pedigree/effective-ancestors.ts'
import {geneFlow} from '../../src/pedigree/gene-flow.ts'
import type {Animal, Pedigree} from '../../src/pedigree/pedigree.ts'
import {anyPedigree, written} from './pedigrees.ts'

function of(text: string, group: readonly string[]) {
  const {pedigree, of: at, ids} = written(text)
  const {ancestors, low, high} = effectiveAncestors(geneFlow(pedigree, 'autosome'), group.map(at))
  expect(low).toBe(high)
  return {chosen: ancestors.map(({animal, marginal}) => [ids[animal], marginal]), fa: high}
}

describe('effectiveAncestors(flow, group)', () => {
  it('a bottleneck of two', () => {
    // computed exactly
    expect(of('1 - -\n2 - -\n3 - -\n4 - -\n5 1 2\n6 3 4\n7 5 6\n8 5 6\n9 5 6\n10 5 6', ['7', '8', '9', '10'])).toEqual({chosen: [['5', 1 / 2], ['6', 1 / 2]], fa: 2})
  })

  it('seven animals of three founders', () => {
    // pedigree of Lacy 1989, Zoo Biol. 8:111 (from memory); marginals worked by hand: D holds half, C and E a quarter each of what is left
    const {chosen, fa} = of('A - -\nB - -\nE - -\nC A B\nD A B\nF D E\nG D E', ['C', 'D', 'F', 'G'])
    expect(chosen).toEqual([['D', 1 / 2], ['E', 1 / 4], ['C', 1 / 4]])
    expect(fa).toBeCloseTo(8 / 3, 12)
  })

  it('an animal counts only for what did not come through those named before', () => {
    // worked by hand: s is the sire of a, b and c; then each dam has what is left of her chick
    const {chosen} = of('s - -\nd - -\ne - -\nf - -\na s d\nb s e\nc s f', ['a', 'b', 'c'])
    expect(chosen).toEqual([['s', 1 / 2], ['d', 1 / 6], ['e', 1 / 6], ['f', 1 / 6]])
  })

  it('unknown parents are ancestors of their own', () => {
    const founder: Animal = {sex: 'unknown', base: null, matings: []}
    const chick: Animal = {...founder, matings: [{sire: 0, dam: null, chance: 1}]}
    const {ancestors} = effectiveAncestors(geneFlow({animals: [founder, chick, chick], bases: [], kin: []}, 'autosome'), [1, 2])
    expect(ancestors).toEqual([{animal: 0, unknown: null, base: null, marginal: 0.5}, {animal: 1, unknown: 'dam', base: null, marginal: 0.25}, {animal: 2, unknown: 'dam', base: null, marginal: 0.25}])
  })

  it('no group, no ancestors', () => {
    expect(effectiveAncestors(geneFlow(written('1 - -').pedigree, 'autosome'), [])).toEqual({ancestors: [], unexplained: 0, low: 0, high: 0})
  })

  it('by strain: as if only its genes had been looked at', () => {
    const bases = [{inbreeding: 0, kinship: 0, within: null}, {inbreeding: 0, kinship: 0, within: null}]
    const from = (base: number): Animal => ({sex: 'unknown', base, matings: []})
    const chick = (sire: number, dam: number): Animal => ({sex: 'unknown', base: null, matings: [{sire, dam, chance: 1}]})
    const flow = geneFlow({animals: [from(0), from(0), from(1), chick(0, 2), chick(1, 2)], bases, kin: []}, 'autosome')
    expect(effectiveAncestors(flow, [3, 4], {base: 1})).toMatchObject({ancestors: [{animal: 2, marginal: 1}], high: 1})
    expect(effectiveAncestors(flow, [3, 4], {base: 0})).toMatchObject({ancestors: [{animal: 0, marginal: 0.5}, {animal: 1, marginal: 0.5}], high: 2})
    expect(effectiveAncestors(flow, [3, 4], {base: null})).toEqual({ancestors: [], unexplained: 0, low: 0, high: 0})
  })

  it('marginals fall, reach 1, and a search cut short bounds the figure', () => {
    fc.assert(fc.property(anyPedigree(), fc.array(fc.nat(), {minLength: 1, maxLength: 6}), (pedigree, picks) => {
      const group = picks.map(pick => pick % pedigree.animals.length)
      const flow = geneFlow(pedigree, 'autosome')
      const whole = effectiveAncestors(flow, group, {rest: 0}), cut = effectiveAncestors(flow, group, {rest: 0.3})
      const marginals = whole.ancestors.map(({marginal}) => marginal)
      expect(marginals.reduce((sum, each) => sum + each, 0)).toBeCloseTo(1, 9)
      marginals.forEach((each, index) => expect(each).toBeLessThanOrEqual((marginals[index - 1] ?? 1) + 1e-9))
      expect(new Set(whole.ancestors.map(({animal, unknown}) => `${animal} ${unknown}`)).size).toBe(marginals.length)
      expect(cut.low).toBeLessThanOrEqual(whole.high + 1e-9)
      expect(cut.high).toBeGreaterThanOrEqual(whole.high - 1e-9)
    }), {numRuns: 200})
  })

  it('each is the one that adds most to what those before explain, of all that might be named: the slow twin', () => {
    fc.assert(fc.property(anyPedigree(16), fc.array(fc.nat(), {minLength: 1, maxLength: 6}), (pedigree, picks) => {
      const group = picks.map(pick => pick % pedigree.animals.length)
      const flow = geneFlow(pedigree, 'autosome')
      const candidates = [...pedigree.animals.keys()].map(animal => `${animal}`).concat(contributions(flow, group).unknown.map(({behind, as, base}) => `${behind} ${as} ${base}`))
      const named: string[] = []
      for (const {animal, unknown, base, marginal} of effectiveAncestors(flow, group, {rest: 0}).ancestors) {
        const before = explained(pedigree, group, named)
        const adds = (name: string) => explained(pedigree, group, [...named, name]) - before
        const name = unknown === null ? `${animal}` : `${animal} ${unknown} ${base}`
        expect(adds(name)).toBeCloseTo(marginal, 9)
        for (const other of candidates) expect(adds(other)).toBeLessThanOrEqual(marginal + 1e-9)
        named.push(name)
      }
    }), {numRuns: 60})
  })

  it('fa may lie above fe where the group holds parents and their chicks', () => {
    // worked by hand: 2 holds 7/12 (4 through 3 too), then 1/4 and 1/6 are left; the founders hold 13/24 and 11/24
    const {pedigree, of: at} = written('0 - -\n1 - -\n2 1 0\n3 0 2\n4 1 3')
    const group = ['4', '2', '3'].map(at), flow = geneFlow(pedigree, 'autosome')
    expect(effectiveAncestors(flow, group).high).toBeCloseTo(1 / (49 / 144 + 1 / 16 + 1 / 36), 12)
    expect(contributions(flow, group).effective).toBeCloseTo(1 / ((13 / 24) ** 2 + (11 / 24) ** 2), 12)
  })
})

/** Share of a group's genes that came through one of those named, by its definition: from each bird up, parent by parent. Unknown birds are named `chick side base`. */
function explained({animals}: Pedigree, group: readonly number[], named: readonly string[]): number {
  const through = (index: number): number => {
    if (named.includes(`${index}`)) return 1
    const {matings = [], oneOf, damStandIn, outside} = animals[index] ?? {}
    const unknown = (side: string, base: number | null = null) => Number(named.includes(`${index} ${side} ${base}`))
    const known = (oneOf ?? matings).reduce((sum, {chance}) => sum + chance, 0)
    if (oneOf) return oneOf.reduce((sum, {animal, chance}) => sum + chance * through(animal), (1 - known) * unknown('itself'))
    if (matings.length === 0) return 0
    const side = (name: 'sire' | 'dam') =>
      matings.reduce((sum, {[name]: parent, chance}) => sum + chance * (parent === null ? unknown(name, outside?.[name]) : through(parent)), (1 - known) * unknown(name))
    return (side('sire') + (damStandIn === undefined ? side('dam') : through(damStandIn))) / 2
  }
  return group.reduce((sum, index) => sum + through(index), 0) / group.length
}
