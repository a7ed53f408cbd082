import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {baseKinship, contradictedFounders, founderFlow, founderInbreeding} from '../../src/pedigree/founder-flow.ts'
import type {Animal, Base, Kin, Pedigree} from '../../src/pedigree/pedigree.ts'
import {expectClose} from '../expect-close.ts'

const founder = (base: number | null = null): Animal => ({sex: 'unknown', base, matings: []})
const strain = (kinship: number, within: number | null = null, inbreeding = 0): Base => ({inbreeding, kinship, within})
const selfIn = ({animals, bases}: Pedigree) => (animal: number) => (1 + (bases[animals[animal]?.base ?? -1]?.inbreeding ?? 0)) / 2

/** Kinship of two founders put together again from the flow, the way every other figure is: K = Σ w(a) w(b) K, own on the diagonal. */
function kinshipFrom(pedigree: Pedigree): (a: number, b: number) => number {
  const {bases} = pedigree
  const flow = founderFlow(pedigree, selfIn(pedigree))
  // the independent parts each node is made of
  const parts = (node: number): Map<number, number> => {
    const made = new Map([[node, 1]])
    const within = bases[node]?.within
    const sources = node >= bases.length ? flow.get(node - bases.length)?.sources ?? [] : within === null || within === undefined ? [] : [[within, 1] as const]
    for (const [source, weight] of sources) for (const [part, share] of parts(source)) made.set(part, (made.get(part) ?? 0) + weight * share)
    return made
  }
  const own = (node: number) => (node >= bases.length ? flow.get(node - bases.length)?.own ?? NaN : (bases[node]?.kinship ?? 0) - (bases[bases[node]?.within ?? -1]?.kinship ?? 0))
  return (a, b) => {
    const other = parts(bases.length + b)
    return [...parts(bases.length + a)].reduce((sum, [part, share]) => sum + share * (other.get(part) ?? 0) * own(part), 0)
  }
}

describe('founderFlow(pedigree, selfOf)', () => {
  it('leaves a founder of no base all its own', () => {
    expect([...founderFlow({animals: [founder()], bases: [], kin: []}, () => 0.5)]).toEqual([[0, {sources: [], own: 0.5}]])
  })

  it('takes what a base gives from it, and the rest is its own', () => {
    expect([...founderFlow({animals: [founder(0), founder(0)], bases: [strain(0.04, null, 0.1)], kin: []}, () => 0.55)])
      .toEqual([[0, {sources: [[0, 1]], own: 0.51}], [1, {sources: [[0, 1]], own: 0.51}]])
  })

  it('forecasts a full sister from the brother before her, by hand', () => {
    // R of the two is ½, ¼ between: weight ¼ / ½, own ½ − ½ · ¼
    const flow = founderFlow({animals: [founder(), founder()], bases: [], kin: [{animals: [1, 0], kinship: 0.25}]}, () => 0.5)
    expect(flow.get(1)).toEqual({sources: [[0, 0.5]], own: 0.375})
  })

  it('gives kinships back as they were stated, and what is not stated as the bases have it', () => {
    const pedigree: Pedigree = {
      animals: [founder(0), founder(1), founder(1), founder(2), founder()], bases: [strain(0.05, null, 0.06), strain(0.2, 0, 0.06), strain(0)],
      kin: [{animals: [0, 1], kinship: 0.3}, {animals: [3, 2], kinship: 0.1}, {animals: [4, 0], kinship: 0.02}],
    }
    const kinship = kinshipFrom(pedigree)
    const expected = [
      [0.53, 0.3, 0.05, 0, 0.02], [0.3, 0.53, 0.2, 0, 0], [0.05, 0.2, 0.53, 0.1, 0], [0, 0, 0.1, 0.5, 0], [0.02, 0, 0, 0, 0.5],
    ]
    expected.forEach((row, a) => row.forEach((value, b) => expectClose(kinship(a, b), value, 1e-12, `${a} ${b}`)))
  })

  it('gives back any kinships that can all be true', () => {
    // founders as mixtures of hidden birds: their kinships cannot contradict each other
    const mixtures = fc.array(fc.array(fc.integer({min: 0, max: 4}), {minLength: 3, maxLength: 3}), {minLength: 2, maxLength: 6})
    fc.assert(fc.property(mixtures, all => {
      const shares = all.map(row => row.map(part => part / (1 + row.reduce((sum, each) => sum + each, 0))))
      const stated = (a: number, b: number) => (shares[a] ?? []).reduce((sum, share, k) => sum + share * (shares[b]?.[k] ?? 0), 0) / 2
      const kin = shares.flatMap((_, a) => shares.slice(a + 1).map((_each, k): Kin => ({animals: [a, a + 1 + k], kinship: stated(a, a + 1 + k)})))
      const kinship = kinshipFrom({animals: shares.map(() => founder()), bases: [], kin})
      for (const {animals: [a, b], kinship: value} of kin) expectClose(kinship(a, b), value, 1e-9)
      shares.forEach((_, a) => expectClose(kinship(a, a), 0.5, 1e-9))
    }), {numRuns: 60})
  })

  it('leaves less than nothing where kinships contradict each other', () => {
    // as good as one bird with both of two that are kin to nothing of each other
    const flow = founderFlow({animals: [founder(), founder(), founder()], bases: [], kin: [{animals: [0, 2], kinship: 0.45}, {animals: [1, 2], kinship: 0.45}]}, () => 0.5)
    expectClose(flow.get(2)?.own ?? NaN, 0.5 - 2 * 0.45 * 0.9, 1e-12)
  })

  it('lets two founders be the same bird under two names', () => {
    const flow = founderFlow({animals: [founder(), founder(), founder()], bases: [], kin: [{animals: [0, 1], kinship: 0.5}, {animals: [0, 2], kinship: 0.25}, {animals: [1, 2], kinship: 0.25}]}, () => 0.5)
    expect(flow.get(1)).toEqual({sources: [[0, 1]], own: 0})
    expect(flow.get(2)).toEqual({sources: [[0, 0.5]], own: 0.375})
  })

  it('refuses kinship of birds that are no founders', () => {
    const chick: Animal = {sex: 'unknown', base: null, matings: [{sire: 0, dam: null, chance: 1}]}
    expect(() => founderFlow({animals: [founder(), chick], bases: [], kin: [{animals: [0, 1], kinship: 0.1}]}, () => 0.5)).toThrow('not both founders')
  })
})

describe('baseKinship(bases, a, b)', () => {
  it('is that of the smallest population that holds both', () => {
    const bases = [strain(0.05), strain(0.2, 0), strain(0.3, 0), strain(0.01)]
    expect([[1, 1], [1, 2], [0, 1], [2, 2], [1, 3], [0, null]].map(([a = null, b = null]) => baseKinship(bases, a, b))).toEqual([0.2, 0.05, 0.05, 0.3, 0, 0])
  })
})

describe('contradictedFounders(pedigree)', () => {
  const three = (...kin: Kin[]): Pedigree => ({animals: [founder(), founder(), founder()], bases: [], kin})

  it('finds nothing against brothers, nor against a bird and its double', () => {
    expect(contradictedFounders(three({animals: [0, 1], kinship: 0.25}, {animals: [1, 2], kinship: 0.25}))).toEqual([])
    expect(contradictedFounders(three({animals: [0, 1], kinship: 0.5}))).toEqual([])
  })

  it('names the one that cannot be as near to both of two that are nothing to each other', () => {
    // by hand: with kinship k to each of two unrelated birds ½ − 2 · k²/½ is left, below 0 from k = 0.354 on
    expect(contradictedFounders(three({animals: [0, 2], kinship: 0.36}, {animals: [1, 2], kinship: 0.36}))).toEqual([2])
    expect(contradictedFounders(three({animals: [0, 2], kinship: 0.35}, {animals: [1, 2], kinship: 0.35}))).toEqual([])
  })
})

it('founderInbreeding: that of its base', () => {
  const pedigree: Pedigree = {animals: [founder(0), founder()], bases: [strain(0, null, 0.06)], kin: []}
  expect([0, 1].map(animal => founderInbreeding(pedigree, animal))).toEqual([0.06, 0])
})
