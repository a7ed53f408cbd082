import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {withoutLeaves} from '../../src/heredity/leaves.ts'
import {LIMITS, propagate} from '../../src/heredity/propagation.ts'
import {summed, type Problem} from './summed.ts'

const entry = fc.oneof({arbitrary: fc.constant(0), weight: 1}, {arbitrary: fc.integer({min: 1, max: 9}), weight: 9})
const table = (length: number) => fc.array(entry, {minLength: length, maxLength: length}).map(entries => Float64Array.from(entries))

/** Two parents of three and two values, tied to each other, and one to four chicks of two values, each with a table of its own beside that of the parents. */
const someFamily: fc.Arbitrary<Problem> = fc.integer({min: 1, max: 4}).chain(chicks => fc.tuple(table(6), fc.array(fc.tuple(table(12), table(2), table(2)), {minLength: chicks, maxLength: chicks})).map(([pair, all]) => ({
  sizes: [3, 2, ...all.map(() => 2)],
  factors: [{of: [0, 1], table: pair}, ...all.flatMap(([tied, one, other], chick) => [{of: [0, 1, chick + 2], table: tied}, {of: [chick + 2], table: one}, {of: [chick + 2], table: other}])],
})))

const near = (found: ArrayLike<number>, twin: readonly number[]): void => { twin.forEach((share, at) => { expect(found[at]).toBeCloseTo(share, 10) }) }

describe('withoutLeaves(sizes, factors)', () => {
  it('leaves of a family the parents alone, with one table for all that its chicks tell', () => {
    fc.assert(fc.property(someFamily, ({sizes, factors}) => {
      const {factors: left, hung} = withoutLeaves(sizes, factors)
      expect(left.map(({of}) => of)).toEqual([[0, 1], [0, 1]])
      expect(hung[0]).toBe(sizes.length - 2)
    }), {numRuns: 20})
  })

  it('tells of chicks, parents and both together what summing everything does', () => {
    fc.assert(fc.property(someFamily, ({sizes, factors}) => {
      const twin = summed(sizes, factors), found = propagate(sizes, factors)
      fc.pre(twin.total > 0)
      expect(found.logSum).toBeCloseTo(Math.log(twin.total), 9)
      sizes.forEach((_, variable) => { near(found.marginal(variable), [...twin.marginals[variable]!]) })
      factors.forEach((_, factor) => { near(found.joint(factor), [...twin.joints[factor]!]) })
    }), {numRuns: 60})
  })

  it('tells them with another variable too: a parent, the chick itself, another chick', () => {
    fc.assert(fc.property(someFamily, ({sizes, factors}) => {
      fc.pre(summed(sizes, factors).total > 0)
      const found = propagate(sizes, factors)
      sizes.forEach((size, variable) => factors.forEach((_, factor) => {
        const together = found.jointWith(factor, variable)
        for (let value = 0; value < size; value++) {
          const held = {of: [variable], table: Float64Array.from({length: size}, (__, at) => (at === value ? 1 : 0))}, twin = summed(sizes, [...factors, held])
          near(together[value]!, twin.joints[factor]!.map(share => share * twin.total / summed(sizes, factors).total))
        }
      }))
    }), {numRuns: 12})
  })

  it('supposes other tables of chicks and of parents, and is then as it was', () => {
    fc.assert(fc.property(someFamily, table(2), table(12), table(6), ({sizes, factors}, own, tied, pair) => {
      fc.pre(summed(sizes, factors).total > 0)
      const found = propagate(sizes, factors), before = sizes.map((_, variable) => [...propagate(sizes, factors).marginal(variable)])
      for (const others of [new Map([[2, own]]), new Map([[1, tied], [3, own]]), new Map([[0, pair], [2, own]])]) {
        const twin = summed(sizes, factors.map(({of, table: given}, factor) => ({of, table: others.get(factor) ?? given})))
        if (twin.total === 0) continue
        found.supposing(others, ({marginal, joint, logSum}) => {
          expect(logSum()).toBeCloseTo(Math.log(twin.total), 9)
          sizes.forEach((_, variable) => { near(marginal(variable), [...twin.marginals[variable]!]) })
          factors.forEach((_, factor) => { near(joint(factor), [...twin.joints[factor]!]) })
          // what was found is still there to be asked beside it
          sizes.forEach((_, variable) => { near(found.marginal(variable), before[variable]!) })
        })
        sizes.forEach((_, variable) => { near(found.marginal(variable), before[variable]!) })
      }
    }), {numRuns: 60})
  })

  it('calls a chick as exact as its parents', () => {
    const alike = Float64Array.of(0.7, 0.3, 0.3, 0.7)
    const ring = [0, 1, 2, 3, 4].map(at => ({of: [at, (at + 1) % 5], table: alike})), found = propagate([2, 2, 2, 2, 2, 2], [...ring, {of: [0, 5], table: alike}], {...LIMITS, exactCluster: 4, looseCluster: 4})
    expect(found.isExact(5)).toBe(false)
    expect(propagate([2, 2], [{of: [0, 1], table: alike}]).isExact(1)).toBe(true)
  })

  it('keeps a thousand chicks that each are hardly likely from vanishing', () => {
    const chicks = Array.from({length: 1000}, (_, chick) => ({of: [0, chick + 1], table: Float64Array.of(1e-3, 1e-3, 2e-3, 2e-3)})), found = propagate(Array.from({length: 1001}, () => 2), chicks)
    // two values a chick: ln(0.002^1000 + 0.004^1000)
    expect(found.logSum).toBeCloseTo(1000 * Math.log(4e-3) + Math.log1p(0.5 ** 1000), 6)
  })
})
