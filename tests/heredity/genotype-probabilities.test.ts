import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import type {Flock} from '../../src/heredity/flock.ts'
import {genotypeProbabilities} from '../../src/heredity/genotype-probabilities.ts'
import {enumerate, keyOf} from './enumeration.ts'
import {KINDS, randomFlock} from './random-flock.ts'

const inOrder = (flock: Flock): readonly number[] => flock.pedigree.animals.map((_, index) => index)

/** the largest difference between the engine and the twin */
function furthest(flock: Flock): number {
  const twin = enumerate(flock, inOrder(flock))
  if (twin.total === 0) return 0
  const worked = genotypeProbabilities(flock)
  let most = Math.abs(worked.logLikelihood - Math.log(twin.total))
  const compare = <Key>(found: readonly {readonly is: Key; readonly probability: number}[], expected: ReadonlyMap<unknown, number>, key: (is: Key) => unknown): void => {
    const seen = new Map(found.map(({is, probability}) => [key(is), probability]))
    for (const each of new Set([...seen.keys(), ...expected.keys()])) most = Math.max(most, Math.abs((seen.get(each) ?? 0) - (expected.get(each) ?? 0)))
  }
  for (const animal of inOrder(flock)) {
    flock.loci.forEach((_, locus) => compare(worked.at(animal, locus), twin.at(animal, locus), keyOf))
    const sires = worked.sires(animal), dams = worked.dams(animal)
    if (sires) compare(sires, twin.sires(animal), is => is)
    if (dams) compare(dams, twin.dams(animal), is => is)
  }
  return most
}

describe('genotypeProbabilities', () => {
  for (const [kind, genetics] of Object.entries(KINDS)) {
    it(`agrees with laying out every history: ${kind}`, () => {
      fc.assert(fc.property(randomFlock(genetics, genetics.loci.length === 1 ? 3 : 2), flock => {
        expect(furthest(flock)).toBeLessThan(1e-9)
      }), {seed: 20261126, numRuns: genetics.loci.length === 1 ? 15 : 6})
    }, 60_000)
  }
})
