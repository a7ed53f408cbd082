import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {flockNetwork} from '../../src/heredity/flock-network.ts'
import type {Flock} from '../../src/heredity/flock.ts'
import {propagate} from '../../src/heredity/propagation.ts'
import {KINDS, randomFlock} from './random-flock.ts'

const genetics = (kind: string) => {
  const found = KINDS[kind]
  if (!found) throw new Error(kind)
  return found
}
/** the same flock, of which nothing was seen */
const unseen = (flock: Flock): Flock => ({...flock, readings: () => [], tested: () => null})

describe('flockNetwork(flock)', () => {
  it('holds all there is and no more: with nothing seen everything sums to 1, whoever the parents and whatever never hatches', () => {
    for (const [kind, each] of Object.entries(KINDS)) {
      fc.assert(fc.property(fc.constantFrom(null, 'family', 'found').chain(and => randomFlock(each, {chicks: 2, and})), flock => {
        const {sizes, factors} = flockNetwork(unseen(flock))
        expect(propagate(sizes, factors).logSum, kind).toBeCloseTo(0, 9)
      }), {seed: 5, numRuns: 10})
    }
  })

  it('never lays all candidates of a chick into one table', () => {
    // thirty cocks that may be the sire
    const animals = [...Array.from({length: 30}, () => ({sex: 'male', matings: [], base: null} as const)), {sex: 'female', matings: [], base: null} as const,
      {sex: 'male', base: null, matings: Array.from({length: 30}, (_, sire) => ({sire, dam: 30, chance: 1 / 30}))} as const]
    const {loci, looks} = genetics('an autosomal dominant')
    const {factors, sire, dam} = flockNetwork({
      pedigree: {animals, bases: [], kin: []}, loci, linkages: [], traits: looks.map(look => ({look, misscoring: [[1, 0], [0, 1]]})), shares: () => [[0.5, 0.5]], readings: () => [], tested: () => null,
    })
    expect(Math.max(...factors.map(({of}) => of.length))).toBe(3)
    expect(sire[31]?.sources).toHaveLength(30)
    expect(dam[31]).toBeNull()
  })

  it('ties several blocks of a bird where one look leans on them, or where they will be asked for together', () => {
    const sampled = fc.sample(randomFlock(genetics('walnut'), {chicks: 1}), {seed: 5, numRuns: 1})[0]
    if (!sampled) throw new Error('no flock')
    expect(flockNetwork(unseen(sampled)).together).toEqual([null, null, null])
    expect(flockNetwork(unseen(sampled), 0, new Set([1])).together.map(number => number !== null)).toEqual([false, true, false])
  })
})
