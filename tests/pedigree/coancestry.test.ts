import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {coancestry} from '../../src/pedigree/coancestry.ts'
import type {Animal, Transmission} from '../../src/pedigree/pedigree.ts'
import {anyPedigree, written} from './pedigrees.ts'
import {tableMethod} from './table-method.ts'

/** F of every bird that is not 0, by its name. */
function inbred(text: string): Record<string, number> {
  const {pedigree, ids} = written(text)
  const {inbreeding} = coancestry(pedigree)
  return Object.fromEntries(ids.flatMap((id, index) => (inbreeding[index]?.mean ? [[id, inbreeding[index].mean]] : [])))
}

describe('coancestry(pedigree): published pedigrees', () => {
  it('six animals', () => {
    // source: Mrode, Linear Models for the Prediction of Animal Breeding Values, Table 2.1
    const {pedigree} = written('1 - -\n2 - -\n3 1 2\n4 1 -\n5 4 3\n6 5 2')
    const {among, inbreeding} = coancestry(pedigree)
    expect(inbreeding.map(({mean}) => mean)).toEqual([0, 0, 0, 0, 1 / 8, 1 / 8])
    const relationships = among([0, 1, 2, 3, 4, 5]).map((row, index) => Array.from(row.slice(0, index + 1), kinship => 2 * kinship))
    expect(relationships).toEqual([[1], [0, 1], [0.5, 0.5, 1], [0.5, 0, 0.25, 1], [0.5, 0.25, 0.625, 0.625, 1.125], [0.25, 0.625, 0.5625, 0.3125, 0.6875, 1.125]])
  })

  it('eighteen animals', () => {
    // source: Falconer & Mackay 1996, Introduction to Quantitative Genetics, p. 84, Fig. 5.1; F recomputed
    expect(inbred('A - -\nB - -\nC - -\nG - -\nH - -\nI - -\nO - -\nD A B\nE A B\nF C B\nJ E F\nK G F\nL H D\nM I J\nN K J\nP L M\nQ N O\nX P Q'))
      .toEqual({J: 1 / 8, N: 5 / 32, P: 3 / 64, X: 31 / 512})
  })

  it('three bulls', () => {
    // source: Wright 1922, Am. Nat. 56:330 (pedigree from memory)
    expect(inbred('Duke - -\nMaynard - -\nFoljambe - -\nStrawberry Duke Maynard\nBolingbroke Foljambe Strawberry\nPhoenix Foljambe Maynard\nFavourite Bolingbroke Phoenix\nYoung Favourite Phoenix\nComet Favourite Young'))
      .toEqual({Favourite: 3 / 16, Young: 11 / 32, Comet: 15 / 32})
  })

  /** ten generations of a regular system: F of the cock of each generation */
  const courses: Readonly<Record<string, (generation: number) => string>> = {
    // F of generation g is that of a chick of generation g's pair
    'full sibs': g => `m${g} m${g - 1} f${g - 1}\nf${g} m${g - 1} f${g - 1}`,
    // hens of twelve columns have dams of their own, so that a cock's mate of the next column is always a half sister
    'half sibs': g => `m${g} m${g - 1} f${g - 1}.${g - 1}\n${Array.from({length: 14}, (_, column) => `f${g}.${column} m${g - 1} f${g - 1}.${column}`).join('\n')}`,
    'back to one cock': g => `m${g} old m${g - 1}`,
  }
  it.each([
    ['full sibs', 'm0 - -\nf0 - -', 1, [1 / 4, 3 / 8, 1 / 2, 19 / 32, 43 / 64, 47 / 64, 201 / 256, 423 / 512, 55 / 64, 1815 / 2048], 'm'],
    ['half sibs', `m0 - -\n${Array.from({length: 14}, (_, column) => `f0.${column} - -`).join('\n')}`, 1,
      [0.125, 0.21875, 0.3046875, 0.380859375, 0.448730469, 0.509155, 0.562958, 0.610863, 0.653517, 0.691495], 'm'],
    ['back to one cock', 'old - -\nm0 - -', 1, [1 / 4, 3 / 8, 7 / 16, 15 / 32, 31 / 64, 63 / 128, 127 / 256, 255 / 512, 511 / 1024, 1023 / 2048], 'm'],
  ] as const)('%s, ten generations', (system, start, before, expected, watched) => {
    // source: Wright 1921, Genetics 6:111; Falconer & Mackay 1996, Table 5.1
    const course = courses[system]
    const found = inbred([start, ...Array.from({length: 11}, (_, g) => course?.(g + 1) ?? '')].join('\n'))
    expected.forEach((f, index) => expect(found[`${watched}${index + 1 + before}`], `generation ${index + 1}`).toBeCloseTo(f, 6))
  })

  it('double first cousins, pairs exchanged, ten generations', () => {
    // source: Wright 1921, Genetics 6:111 (recurrence F''' = F''/2 + F'/4 + F/8 + 1/8)
    const rows = ['a0♂ - -', 'b0♀ - -', 'c0♂ - -', 'd0♀ - -']
    for (let g = 1; g <= 12; g++) {
      const p = g - 1
      // the cock of each pair goes to the hen of the other
      rows.push(`a${g}♂ a${p} b${p}`, `d${g}♀ a${p} b${p}`, `c${g}♂ c${p} d${p}`, `b${g}♀ c${p} d${p}`)
    }
    const found = inbred(rows.join('\n'))
    const expected = [1 / 8, 3 / 16, 1 / 4, 5 / 16, 47 / 128, 107 / 256, 119 / 256, 65 / 128, 1121 / 2048, 2391 / 4096]
    expected.forEach((f, index) => expect(found[`a${index + 3}`], `generation ${index + 1}`).toBeCloseTo(f, 12))
  })

  it('the Z: a hen has her one copy from her sire', () => {
    // computed exactly: the recursion and a listing of gene copies agree
    const {pedigree, ids} = written('1♀ - -\n2♂ - -\n3♀ 2 1\n4♂ 2 1\n5♂ - -\n6♀ - -\n7♂ 5 3\n8♀ 4 6\n10♂ 7 8')
    const {among, inbreeding} = coancestry(pedigree, 'Z')
    expect(among(ids.map((_, index) => index)).map((row, index) => Array.from(row.slice(0, index + 1)))).toEqual([
      [1], [0, 1 / 2], [0, 1 / 2, 1], [1 / 2, 1 / 4, 1 / 4, 1 / 2], [0, 0, 0, 0, 1 / 2], [0, 0, 0, 0, 0, 1], [0, 1 / 4, 1 / 2, 1 / 8, 1 / 4, 0, 1 / 2],
      [1 / 2, 1 / 4, 1 / 4, 1 / 2, 0, 0, 1 / 8, 1], [1 / 4, 1 / 4, 3 / 8, 5 / 16, 1 / 8, 0, 5 / 16, 9 / 16, 9 / 16],
    ])
    expect(inbreeding.at(-1)?.mean).toBe(1 / 8)
    expect(coancestry(pedigree).inbreeding.at(-1)?.mean).toBe(1 / 16)
  })

  it('candidate sires', () => {
    // computed exactly from Henderson 1988, J. Anim. Sci. 66:1614: averaging and listing every combination agree
    const founder = {sex: 'unknown', base: null, matings: []} as const
    const by = (dam: number) => ({sex: 'unknown', base: null, matings: [{sire: 0, dam, chance: 0.5}, {sire: 1, dam, chance: 0.5}]} as const)
    const pedigree = {animals: [founder, founder, founder, founder, by(2), by(2), by(3), {...founder, matings: [{sire: 5, dam: 4, chance: 1}]}], bases: [], kin: []}
    const {between, self} = coancestry(pedigree)
    expect([between(4, 0), between(4, 2), between(4, 5), between(4, 6), self(7), between(7, 4)].map(kinship => 2 * kinship)).toEqual([1 / 4, 1 / 2, 3 / 8, 1 / 8, 19 / 16, 11 / 16])
  })

  it.each([[1, 0.5], [2, 0.375], [3, 1 / 3], [4, 0.3125], [5, 0.3]])('%d cocks in the pen: two chicks of one hen', (cocks, relationship) => {
    const founder = {sex: 'unknown', base: null, matings: []} as const
    const chick = () => ({sex: 'unknown', base: null, matings: Array.from({length: cocks}, (_, sire) => ({sire, dam: cocks, chance: 1 / cocks}))} as const)
    const {between} = coancestry({animals: [...Array.from({length: cocks + 1}, () => founder), chick(), chick()], bases: [], kin: []})
    expect(2 * between(cocks + 1, cocks + 2)).toBeCloseTo(relationship, 12)
  })
})

describe('coancestry(pedigree): one unknown hen for a whole family', () => {
  const founder = (sex: Animal['sex']): Animal => ({sex, base: null, matings: []})
  const hens = [1, 2]
  const hen: Animal = {sex: 'female', base: null, matings: [], oneOf: hens.map(animal => ({animal, chance: 1 / 2}))}
  const outOf = (sire: number, damStandIn: number): Animal => ({sex: 'male', base: null, damStandIn, matings: hens.map(dam => ({sire, dam, chance: 1 / 2}))})

  it('her son bred back to her: a quarter, as mother and son, whichever hen she is', () => {
    // source: a parent with its own offspring gives F 1/4 (Wright 1922, Am. Nat. 56:330); both hens listed in turn agree
    const {inbreeding, between, self} = coancestry({animals: [founder('male'), founder('female'), founder('female'), hen, outOf(0, 3), outOf(4, 3)], bases: [], kin: []})
    expect(inbreeding[5]).toEqual({mean: 1 / 4, low: 1 / 4, high: 1 / 4, likeliest: 1 / 4})
    expect([between(4, 3), between(5, 3), self(5)]).toEqual([1 / 4, 3 / 8, 5 / 8])
  })

  it('another hen of the same pen, drawn anew, is his dam with one chance in two', () => {
    const {inbreeding} = coancestry({animals: [founder('male'), founder('female'), founder('female'), hen, hen, outOf(0, 3), outOf(5, 4)], bases: [], kin: []})
    expect(inbreeding[6]?.mean).toBe(1 / 8)
  })

  it('a hen of whom nothing is known is one hen too', () => {
    const chick = (sire: number): Animal => ({sex: 'male', base: null, damStandIn: 1, matings: [{sire, dam: null, chance: 1}]})
    const {inbreeding, between} = coancestry({animals: [founder('male'), founder('female'), chick(0), chick(0), chick(2)], bases: [], kin: []})
    expect([between(2, 3), inbreeding[4]?.mean]).toEqual([1 / 4, 1 / 4])
  })
})

describe('coancestry(pedigree): its slow twin', () => {
  it.each<Transmission>(['autosome', 'Z', 'dam line'])('equals the table method for every bird and pair (%s)', transmission => {
    fc.assert(fc.property(anyPedigree(), pedigree => {
      const quick = coancestry(pedigree, transmission), slow = tableMethod(pedigree, transmission)
      const all = pedigree.animals.map((_, index) => index)
      const rows = quick.among(all)
      for (const a of all) {
        expect(quick.inbreeding[a]?.mean).toBeCloseTo(slow.inbreeding(a), 12)
        expect(quick.self(a)).toBeCloseTo(slow.kinship(a, a), 12)
        for (const b of all) expect(rows[a]?.[b]).toBeCloseTo(slow.kinship(a, b), 12)
      }
    }), {numRuns: 300})
  })
})
