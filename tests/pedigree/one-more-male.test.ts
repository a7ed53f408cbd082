import {describe, expect, it} from 'vitest'
import {oneMoreKinship} from '../../src/pedigree/one-more-male.ts'

const rows = (...values: readonly (readonly number[])[]): readonly Float64Array[] => values.map(row => Float64Array.from(row))

/** Every two chicks of the breeders, by their parents; the slow twin. */
function slow(kinship: readonly (readonly number[])[], males: readonly number[], females: readonly number[]): number {
  const K = (a: number, b: number): number => kinship[a]?.[b] ?? NaN
  const each = males.flatMap(s => females.flatMap(d => males.flatMap(t => females.map(e => (K(s, t) + K(s, e) + K(d, t) + K(d, e)) / 4))))
  return each.reduce((sum, k) => sum + k, 0) / each.length
}

describe('oneMoreKinship(kinship, males, females)', () => {
  it('is, of strangers, what is worked by hand', () => {
    expect(oneMoreKinship(rows([0.5, 0, 0], [0, 0.5, 0], [0, 0, 0.5]), 1, 1)).toEqual({now: 0.25, withOne: [0.1875]})
  })

  it('is the mean over every two chicks, and can be worse with a male that is too near', () => {
    // a cock, two hens, the first his sister; one more brother of theirs, and a stranger
    const table = [[0.5, 0.25, 0, 0.25, 0], [0.25, 0.5, 0.125, 0.25, 0], [0, 0.125, 0.625, 0.1, 0], [0.25, 0.25, 0.1, 0.5, 0], [0, 0, 0, 0, 0.5]]
    const {now, withOne} = oneMoreKinship(rows(...table), 1, 2)
    expect(now).toBeCloseTo(slow(table, [0], [1, 2]), 14)
    expect(withOne[0]).toBeCloseTo(slow(table, [0, 3], [1, 2]), 14)
    expect(withOne[1]).toBeCloseTo(slow(table, [0, 4], [1, 2]), 14)
    expect(withOne[1]).toBeLessThan(withOne[0] ?? 0)
  })

  it('says nothing without a male or a female', () => {
    expect(oneMoreKinship(rows([0.5]), 0, 1).now).toBeNaN()
    expect(oneMoreKinship(rows([0.5]), 1, 0).now).toBeNaN()
  })
})
