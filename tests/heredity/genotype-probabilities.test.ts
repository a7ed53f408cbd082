import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import type {Flock} from '../../src/heredity/flock.ts'
import {genotypeProbabilities} from '../../src/heredity/genotype-probabilities.ts'
import {enumerate, keyOf} from './enumeration.ts'
import {KINDS, randomFlock, type FlockShape} from './random-flock.ts'

const inOrder = (flock: Flock): readonly number[] => flock.pedigree.animals.map((_, index) => index)

/** the largest difference between the engine and the twin; where nothing fits at all, both must say so */
function furthest(flock: Flock): number {
  const strict = enumerate(flock, inOrder(flock)), slack = strict.total === 0 ? 1e-3 : 0
  const twin = slack === 0 ? strict : enumerate(flock, inOrder(flock), slack)
  if (twin.total === 0) {
    expect(() => genotypeProbabilities(flock)).toThrow(RangeError)
    return 0
  }
  const worked = genotypeProbabilities(flock, new Set(inOrder(flock)))
  expect([worked.slack, worked.exact]).toEqual([slack, true])
  let most = Math.abs(worked.logLikelihood - Math.log(twin.total))
  const compare = <Key>(found: readonly {readonly is: Key; readonly probability: number}[], expected: ReadonlyMap<unknown, number>, key: (is: Key) => unknown): void => {
    const seen = new Map(found.map(({is, probability}) => [key(is), probability]))
    for (const each of new Set([...seen.keys(), ...expected.keys()])) most = Math.max(most, Math.abs((seen.get(each) ?? 0) - (expected.get(each) ?? 0)))
  }
  for (const animal of inOrder(flock)) {
    flock.loci.forEach((_, locus) => compare(worked.at(animal, locus), twin.at(animal, locus), keyOf))
    compare(worked.together(animal), twin.together(animal), alleles => alleles.map(keyOf).join(' '))
    const sires = worked.sires(animal), dams = worked.dams(animal)
    if (sires) compare(sires, twin.sires(animal), is => is)
    if (dams) compare(dams, twin.dams(animal), is => is)
  }
  return most
}

const SHAPES: Readonly<Record<string, FlockShape>> = {
  'loops and doubtful parents': {},
  'tests, and records that contradict each other': {tests: true},
  'a family of one unknown hen': {and: 'family'},
  'a cock without a band': {and: 'found'},
  'a pen of hens': {and: 'pen'},
}

describe('genotypeProbabilities agrees with laying out every history', () => {
  for (const [shape, drawn] of Object.entries(SHAPES)) {
    for (const [kind, genetics] of Object.entries(KINDS)) {
      const simple = genetics.loci.length === 1
      // two linked loci with a founder more are too many histories
      if (drawn.and && (genetics.linkages || (drawn.and === 'pen' && (!simple || genetics.loci.some(({alleles}) => alleles.length > 2))))) continue
      it(`${kind}, ${shape}`, () => {
        fc.assert(fc.property(randomFlock(genetics, {...drawn, chicks: drawn.and ? 0 : simple ? 3 : 2}), flock => {
          expect(furthest(flock)).toBeLessThan(1e-9)
        }), {seed: 20261126, numRuns: drawn.and === 'pen' ? 4 : simple ? 12 : drawn.and ? 1 : 5, endOnFailure: true})
      })
    }
  }
})

describe('genotypeProbabilities(flock).supposing', () => {
  for (const [kind, genetics] of Object.entries(KINDS)) {
    it(`says what working the flock anew says, and leaves all as it was: ${kind}`, () => {
      fc.assert(fc.property(randomFlock(genetics, {chicks: 5}), fc.array(fc.boolean(), {minLength: 8, maxLength: 8}), (flock, hidden) => {
        const all = inOrder(flock), kept = genotypeProbabilities(flock), before = all.map(animal => kept.at(animal, 0))
        fc.pre(kept.slack === 0)
        const unseen = new Map(all.filter(animal => hidden[animal]).map(animal => [animal, {readings: [], tested: null}]))
        const anew = genotypeProbabilities({...flock, readings: animal => (unseen.has(animal) ? [] : flock.readings(animal))})
        kept.supposing(unseen, at => {
          for (const animal of all) flock.loci.forEach((_, locus) => {
            const expected = new Map(anew.at(animal, locus).map(({is, probability}) => [keyOf(is), probability])), found = new Map(at(animal, locus).map(({is, probability}) => [keyOf(is), probability]))
            for (const key of new Set([...expected.keys(), ...found.keys()])) expect(Math.abs((expected.get(key) ?? 0) - (found.get(key) ?? 0))).toBeLessThan(1e-6)
          })
        })
        expect(all.map(animal => kept.at(animal, 0))).toEqual(before)
      }), {seed: 20261126, numRuns: 25, endOnFailure: true})
    })
  }

  it('leaves all as it was where reading throws', () => {
    const flock = fc.sample(randomFlock(KINDS['an autosomal dominant'] ?? {loci: [], looks: []}, {chicks: 5}), {seed: 4, numRuns: 1})[0]
    if (!flock) throw new Error('no flock')
    const kept = genotypeProbabilities(flock), before = inOrder(flock).map(animal => kept.at(animal, 0))
    expect(() => kept.supposing(new Map([[1, {readings: [], tested: [[1, 1]]}]]), () => { throw new Error('while reading') })).toThrow('while reading')
    expect(inOrder(flock).map(animal => kept.at(animal, 0))).toEqual(before)
    kept.supposing(new Map(), at => { expect(inOrder(flock).map(animal => at(animal, 0))).toEqual(before) })
  })
})
