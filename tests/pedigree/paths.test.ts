import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {coancestry} from '../../src/pedigree/coancestry.ts'
import {paths, type Paths} from '../../src/pedigree/paths.ts'
import {anyPedigree, certain, written} from './pedigrees.ts'

/** Every path between two birds of one flock, by their names: `a<A>b` for a way up to A and down again. */
function named(text: string, a: string, b: string, search?: Parameters<typeof paths>[3]): {found: Paths; ways: Readonly<Record<string, number>>} {
  const {pedigree, of, ids} = written(text)
  const found = paths(coancestry(pedigree), of(a), of(b), search)
  const name = (animal: number) => ids[animal] ?? '?'
  const ways = found.ancestors.flatMap(({paths: listed}) => listed.map(({up: [one, other], kinship}) =>
    [[...one.slice(0, -1).map(name), `(${name(one.at(-1) ?? NaN)})`, ...other.slice(0, -1).reverse().map(name)].join(' '), kinship] as const))
  return {found, ways: Object.fromEntries(ways)}
}

const everything = {limit: Infinity, generations: Infinity, steps: Infinity}

describe('paths(coancestry, a, b)', () => {
  it('full sibs: both parents', () => {
    expect(named('s - -\nd - -\na s d\nb s d', 'a', 'b').ways).toEqual({'a (s) b': 1 / 8, 'a (d) b': 1 / 8})
  })

  it('a bird and its own dam: the dam herself is the ancestor', () => {
    expect(named('s - -\nd - -\na s d', 'a', 'd').ways).toEqual({'a (d)': 1 / 4})
  })

  it('a bird with itself', () => {
    expect(named('s - -\nd - -\na s d\nb s d\nc a b', 'c', 'c').ways).toEqual({'(c)': 5 / 8})
  })

  it('no ancestor, no path', () => {
    expect(named('s - -\nd - -', 's', 'd').found).toEqual({kinship: 0, ancestors: [], unlisted: 0, fromFounders: 0})
  })

  it('eighteen animals: seven paths between the parents of X, as the book counts them', () => {
    // source: Falconer & Mackay 1996, Introduction to Quantitative Genetics, p. 84, Fig. 5.1; the paths worked by hand, F of X 31/512
    const {found, ways} = named('A - -\nB - -\nC - -\nG - -\nH - -\nI - -\nO - -\nD A B\nE A B\nF C B\nJ E F\nK G F\nL H D\nM I J\nN K J\nP L M\nQ N O\nX P Q', 'P', 'Q')
    expect(found.kinship).toBe(31 / 512)
    // F of J is 1/8, all others 0
    expect(ways).toEqual({
      'P M (J) N Q': (1 / 32) * (9 / 8),
      'P M J (F) K N Q': 1 / 128,
      'P L D (A) E J N Q': 1 / 256, 'P L D (B) E J N Q': 1 / 256, 'P L D (B) F J N Q': 1 / 256, 'P L D (B) F K N Q': 1 / 256,
      'P M J E (B) F K N Q': 1 / 512,
    })
    expect(found.unlisted).toBe(0)
  })

  it('doubtful sires: each path times the chances along it', () => {
    // source: computed by hand; two cocks of a pen, one hen: kinship of two chicks ½ (1/4 + 1/8)
    const founder = {sex: 'unknown', base: null, matings: []} as const
    const chick = {sex: 'unknown', base: null, matings: [{sire: 0, dam: 2, chance: 0.75}, {sire: 1, dam: 2, chance: 0.25}]} as const
    const found = paths(coancestry({animals: [founder, founder, founder, chick, chick], bases: [], kin: []}), 3, 4)
    expect(found.ancestors.map(({animal, kinship}) => [animal, kinship])).toEqual([[2, 1 / 8], [0, 9 / 128], [1, 1 / 128]])
    expect(found.kinship).toBe(1 / 8 + 10 / 128)
  })

  it('what founders have in common is told apart', () => {
    const founder = {sex: 'unknown', base: 0, matings: []} as const
    const chick = (dam: number) => ({sex: 'unknown', base: null, matings: [{sire: 0, dam, chance: 1}]} as const)
    const pedigree = {animals: [founder, founder, founder, chick(1), chick(2)], bases: [{inbreeding: 0, kinship: 0.1, within: null}], kin: [{animals: [1, 2] as const, kinship: 0.3}]}
    const {ancestors, fromFounders} = paths(coancestry(pedigree), 3, 4)
    expect(ancestors.map(({animal, kinship}) => [animal, kinship])).toEqual([[0, 1 / 8]])
    expect(fromFounders).toBeCloseTo((0.1 + 0.1 + 0.3) / 4, 12)
  })

  it('a short list: the largest of all paths, and what the rest sums to', () => {
    fc.assert(fc.property(anyPedigree(20), fc.nat(), fc.nat(), fc.integer({min: 1, max: 6}), (pedigree, p, q, limit) => {
      const [a, b] = [p % pedigree.animals.length, q % pedigree.animals.length]
      const kin = coancestry(pedigree)
      const sizes = (found: Paths) => found.ancestors.flatMap(ancestor => ancestor.paths.map(path => path.kinship)).sort((one, other) => other - one)
      const whole = paths(kin, a, b, everything), some = paths(kin, a, b, {limit})
      sizes(some).forEach((size, index) => expect(size).toBeCloseTo(sizes(whole)[index] ?? NaN, 12))
      expect(sizes(some)).toHaveLength(Math.min(limit, sizes(whole).length))
      expect(sizes(some).reduce((sum, size) => sum + size, 0) + some.unlisted + some.fromFounders).toBeCloseTo(some.kinship, 12)
    }), {numRuns: 200})
  })
})

describe('paths(coancestry, a, b): all of them', () => {
  it.each(['autosome', 'Z', 'dam line'] as const)('sum to the kinship, parents certain (%s)', transmission => {
    fc.assert(fc.property(anyPedigree(16), drawn => {
      const pedigree = certain(drawn)
      const kin = coancestry(pedigree, transmission)
      for (let a = 0; a < pedigree.animals.length; a++) {
        for (let b = 0; b <= a; b++) {
          const {kinship, ancestors, unlisted, fromFounders} = paths(kin, a, b, everything)
          const sum = ancestors.reduce((total, {paths: listed}) => listed.reduce((part, path) => part + path.kinship, total), 0)
          expect(sum).toBeCloseTo(kinship, 12)
          expect([unlisted, fromFounders]).toEqual([0, 0])
        }
      }
    }), {numRuns: 60})
  })

  it.each(['autosome', 'Z', 'dam line'] as const)('sum to the part of each ancestor, parents in doubt (%s)', transmission => {
    fc.assert(fc.property(anyPedigree(16), fc.nat(), fc.nat(), (pedigree, p, q) => {
      const {ancestors, kinship, unlisted, fromFounders} = paths(coancestry(pedigree, transmission), p % pedigree.animals.length, q % pedigree.animals.length, everything)
      expect(unlisted).toBe(0)
      for (const {kinship: part, paths: listed} of ancestors) {
        expect(listed.reduce((sum, path) => sum + path.kinship, 0)).toBeCloseTo(part, 12)
        for (const {up: [one, other]} of listed) {
          expect(one.at(-1)).toBe(other.at(-1))
          expect(new Set([...one, ...other])).toHaveProperty('size', one.length + other.length - 1)
        }
      }
      expect(ancestors.reduce((sum, ancestor) => sum + ancestor.kinship, fromFounders)).toBeCloseTo(kinship, 12)
      if (pedigree.kin.length === 0 && pedigree.animals.every(({base, outside}) => base === null && (outside?.sire ?? null) === null)) expect(fromFounders).toBe(0)
    }), {numRuns: 300})
  })
})
