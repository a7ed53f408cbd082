import {describe, expect, it} from 'vitest'
import type {Alleles, Locus} from '../../src/heredity/locus.ts'
import {crossRatio, writeCross, type Cross} from '../../src/findings/cross-ratio.ts'
import type {LocusGroup} from '../../src/findings/locus-groups.ts'
import type {Trait} from '../../src/logbook/book.ts'
import {chiSquareFit} from '../../src/statistics/chi-square-fit.ts'
import {expectClose} from '../expect-close.ts'
import {rule, trait} from '../pages/small-logbook.ts'

const R: Locus = {symbol: 'R', on: 'autosome', alleles: ['R', 'r+']}, P: Locus = {symbol: 'P', on: 'autosome', alleles: ['P', 'p+']}
const S: Locus = {symbol: 'S', on: 'Z', alleles: ['S', 's+']}, Cp: Locus = {symbol: 'Cp', on: 'autosome', alleles: ['Cp', 'cp+']}
const comb = trait('comb', 'Comb', {
  states: ['walnut', 'rose', 'pea', 'single'], loci: [R, P],
  shows: [rule({R: 'R/_', P: 'P/_'}, 'walnut', [R, P]), rule({R: 'R/_'}, 'rose', [R, P]), rule({P: 'P/_'}, 'pea', [R, P]), rule({}, 'single', [R, P])],
})
const ground = trait('ground', 'Ground', {states: ['silver', 'gold'], loci: [S], shows: [rule({S: 'S/_'}, 'silver', [S]), rule({S: 's+/_'}, 'gold', [S])]})
const legs = trait('legs', 'Legs', {states: ['creeper', 'long'], loci: [Cp], shows: [rule({Cp: 'Cp/Cp'}, 'lethal', [Cp]), rule({Cp: 'Cp/_'}, 'creeper', [Cp]), rule({Cp: 'cp+/cp+'}, 'long', [Cp])]})

const group = (...traits: Trait[]): LocusGroup => ({traits, loci: traits.flatMap(({loci}) => loci), linkages: []})
const ratio = (of: Trait, sire: Cross['sire'], dam: Cross['dam'], sex: 'male' | 'female' = 'male', among = group(of)) => {
  const found = crossRatio(of, among, {sire, dam}, sex)
  if (!found) throw new Error('no ratio')
  return found
}
const mixed: Alleles = [0, 1], pure: Alleles = [0, 0], recessive: Alleles = [1, 1]

describe('crossRatio(trait, group, cross, sex)', () => {
  it('gives 9 walnut : 3 rose : 3 pea : 1 single of two walnuts that carry both', () => {
    expect(ratio(comb, [mixed, mixed], [mixed, mixed]).looks.map(share => share * 16)).toEqual([9, 3, 3, 1])
    expect(ratio(comb, [mixed, mixed], [mixed, mixed]).pureLooks).toEqual([{state: 3, alleles: [1, 1]}])
  })
  it('gives the classes of a gene on the Z, sex by sex', () => {
    const both = (sire: Alleles, dam: Alleles) => [ratio(ground, [sire], [dam], 'male').looks[0], ratio(ground, [sire], [dam], 'female').looks[0]]
    expect(both([1, 1], [0, null])).toEqual([1, 0])
    expect(both([0, 1], [0, null])).toEqual([1, 0.5])
    expect(both([0, 1], [1, null])).toEqual([0.5, 0.5])
    expect(both([0, 0], [1, null])).toEqual([1, 1])
  })
  it('so that the first count of a sex-linked gene is held against 2 : 1 : 1', () => {
    // source: Morgan 1910, Science 32:120, 2459 : 1011 : 782 : 0; in fowl read cocks for his females
    const sons = ratio(ground, [mixed], [[0, null]], 'male').looks, daughters = ratio(ground, [mixed], [[0, null]], 'female').looks
    const shares = [sons[0] ?? 0, daughters[0] ?? 0, daughters[1] ?? 0, sons[1] ?? 0].map(share => share / 2)
    expectClose(chiSquareFit([2459, 1011, 782, 0], shares).chiSquare ?? NaN, 128.983537, 1e-6, {})
  })
  it('leaves 2 creepers to 1 long of those that hatch, and a quarter dead', () => {
    const {looks, lethal} = ratio(legs, [mixed], [mixed])
    expectClose(looks[0] ?? NaN, 2 / 3, 1e-12, {})
    expect(lethal).toBe(0.25)
    expect(ratio(legs, [mixed], [recessive])).toMatchObject({looks: [0.5, 0.5], lethal: 0})
  })
  it('takes the misscoring of the records into what will be scored, and not into the looks', () => {
    const doubtful = {...ground, misscoring: new Map([['gold', new Map([['silver', 0.1]])]])}
    expect(ratio(doubtful, [recessive], [[1, null]])).toMatchObject({looks: [0, 1], scored: [0.1, 0.9]})
  })
  it('counts as unsaid what no rule tells', () => {
    const partial = {...ground, shows: ground.shows.slice(0, 1)}
    expect(ratio(partial, [mixed], [[1, null]])).toMatchObject({looks: [0.5, 0], unsaid: 0.5})
  })
  describe('takes every lethal rule of the group', () => {
    const build = trait('build', 'Build', {states: ['good', 'odd'], loci: [Cp, P], shows: [rule({P: 'P/_'}, 'good', [Cp, P]), rule({Cp: 'Cp/Cp'}, 'lethal', [Cp, P]), rule({}, 'odd', [Cp, P])]})
    const short = trait('short', 'Legs', {states: ['short', 'long'], loci: [Cp], shows: [rule({Cp: 'Cp/_'}, 'short', [Cp]), rule({}, 'long', [Cp])]})
    const rose = trait('rose', 'Comb', {states: ['rose', 'single'], loci: [R], shows: [rule({R: 'R/_'}, 'rose', [R]), rule({}, 'single', [R])]})

    it('also one that another trait states beside other loci', () => {
      const two: LocusGroup = {traits: [short, build], loci: [Cp, P], linkages: []}
      const {looks, lethal} = ratio(short, [mixed], [mixed], 'male', two)
      expectClose(looks[0] ?? NaN, 2 / 3, 1e-12)
      expect(lethal).toBe(0.25)
    })
    it('and one at a locus near by: with crossing over of r the rose that come of two short-legged in repulsion are held to no ratio, for no genotype tells how they lie', () => {
      const near: LocusGroup = {traits: [rose, legs], loci: [R, Cp], linkages: [{loci: [0, 1], recombination: 0.004}]}
      expect(crossRatio(rose, near, {sire: [mixed, mixed], dam: [mixed, mixed]}, 'male')).toBeNull()
      expect(crossRatio(rose, near, {sire: [mixed, mixed], dam: [recessive, mixed]}, 'male')).toBeNull()
      // nothing dies where one parent is free of creeper, nor rests the comb on it where neither is mixed for comb
      expect(ratio(rose, [mixed, mixed], [mixed, recessive], 'male', near)).toMatchObject({looks: [0.75, 0.25], lethal: 0})
      expect(ratio(rose, [pure, mixed], [recessive, mixed], 'male', near)).toMatchObject({looks: [1, 0], lethal: 0.25})
    })
    it('and where it is not known what stands at that locus, tells the ratio as far as it is the same whatever it is', () => {
      const near: LocusGroup = {traits: [rose, legs], loci: [R, Cp], linkages: [{loci: [0, 1], recombination: 0.1}]}
      expect(crossRatio(rose, near, {sire: [mixed, null], dam: [mixed, null]}, 'male')).toBeNull()
      expect(ratio(rose, [mixed, null], [mixed, recessive], 'male', near).looks).toEqual([0.75, 0.25])
      expect(ratio(rose, [pure, null], [recessive, null], 'male', near)).toMatchObject({looks: [1, 0], lethal: null})
    })
    it('and tells such crosses apart in writing', () => {
      const near: LocusGroup = {traits: [rose, legs], loci: [R, Cp], linkages: [{loci: [0, 1], recombination: 0.1}]}
      expect(writeCross(rose, near, {sire: [mixed, null], dam: [mixed, recessive]})).toBe('R/r+ × R/r+')
      expect(writeCross(rose, near, {sire: [mixed, null], dam: [mixed, mixed]})).toBe('R/r+ ? × R/r+ Cp/cp+')
      expect(writeCross(rose, near, {sire: [mixed, recessive], dam: [mixed, mixed]})).toBe('R/r+ × R/r+')
    })
    it('but not one of a locus that goes its own way', () => {
      const apart: LocusGroup = {traits: [rose, legs], loci: [R, Cp], linkages: []}
      expect(ratio(rose, [mixed], [mixed], 'male', apart)).toMatchObject({looks: [0.75, 0.25], lethal: 0})
    })
    it('agrees with shares counted gamete by gamete', () => {
      // chicks of a walnut-like pair where what kills asks of both loci: Cp/Cp with p+/p+ alone
      const both = trait('both', 'Both', {states: ['x', 'y'], loci: [Cp, P], shows: [rule({Cp: 'Cp/Cp', P: 'p+/p+'}, 'lethal', [Cp, P]), rule({}, 'x', [Cp, P])]})
      const two: LocusGroup = {traits: [short, both], loci: [Cp, P], linkages: []}
      const gametes = [0, 1].flatMap(cp => [0, 1].map(p => [cp, p] as const))
      let alive = 0, shortLegged = 0
      for (const [a, b] of gametes) for (const [c, d] of gametes) {
        if (a === 0 && c === 0 && b === 1 && d === 1) continue
        alive += 1 / 16
        if (a === 0 || c === 0) shortLegged += 1 / 16
      }
      expectClose(ratio(short, [mixed, mixed], [mixed, mixed], 'male', two).looks[0] ?? NaN, shortLegged / alive, 1e-12)
      expect(writeCross(short, two, {sire: [mixed, mixed], dam: [mixed, mixed]})).toBe('Cp/cp+ P/p+ × Cp/cp+ P/p+')
      expect(writeCross(short, two, {sire: [mixed, pure], dam: [mixed, pure]})).toBe('Cp/cp+ × Cp/cp+')
      // no chick can be p+/p+, and none dies
      expect(writeCross(short, two, {sire: [mixed, pure], dam: [mixed, mixed]})).toBe('Cp/cp+ × Cp/cp+')
    })
  })
  it('says which looks chicks of one genotype alone have, and what they are made of', () => {
    expect(ratio(ground, [mixed], [[0, null]], 'female').pureLooks).toEqual([{state: 0, alleles: [0]}, {state: 1, alleles: [1]}])
    expect(ratio(ground, [mixed], [[0, null]], 'male').pureLooks).toEqual([])
    expect(ratio(legs, [mixed], [mixed]).pureLooks).toEqual([{state: 1, alleles: [1]}])
  })
  it('gives no ratio where it rests on how two linked genes lie in a parent', () => {
    const linked: LocusGroup = {...group(comb), linkages: [{loci: [0, 1], recombination: 0.1}]}
    expect(crossRatio(comb, linked, {sire: [mixed, mixed], dam: [recessive, recessive]}, 'male')).toBeNull()
    expect(ratio(comb, [mixed, pure], [recessive, mixed], 'male', linked).looks).toEqual([0.5, 0, 0.5, 0])
  })
})

it('writeCross(trait, cross) writes both parents, several loci side by side', () => {
  const cross: Cross = {sire: [mixed, pure], dam: [recessive, mixed]}
  expect(writeCross(comb, group(comb), cross)).toBe('R/r+ P/P × r+/r+ P/p+')
  expect(writeCross(ground, group(ground), {sire: [mixed], dam: [[1, null]]})).toBe('S/s+ × s+/-')
})
