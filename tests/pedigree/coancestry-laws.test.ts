import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {coancestry} from '../../src/pedigree/coancestry.ts'
import type {Animal, Pedigree, Transmission} from '../../src/pedigree/pedigree.ts'
import {anyPedigree} from './pedigrees.ts'

/** The same flock with its animals in another order; `to` gives each its new number. */
function reordered({animals, bases, kin}: Pedigree, to: readonly number[]): Pedigree {
  const at = (animal: number) => to[animal] ?? NaN
  const maybe = (animal: number | null) => (animal === null ? null : at(animal))
  const moved: Animal[] = []
  animals.forEach((animal, index) => {
    moved[at(index)] = {
      ...animal,
      matings: animal.matings.map(({sire, dam, chance}) => ({sire: maybe(sire), dam: maybe(dam), chance})).reverse(),
      ...(animal.damStandIn === undefined ? {} : {damStandIn: at(animal.damStandIn)}),
      ...(animal.oneOf ? {oneOf: animal.oneOf.map(one => ({...one, animal: at(one.animal)}))} : {}),
    }
  })
  return {animals: moved, bases, kin: kin.map(({animals: [a, b], kinship}) => ({animals: [at(b), at(a)], kinship}))}
}

const all = ({animals}: Pedigree) => animals.map((_, index) => index)

describe.each<Transmission>(['autosome', 'Z', 'dam line'])('coancestry(pedigree): laws (%s)', transmission => {
  const flocks = fc.tuple(anyPedigree(18), fc.array(fc.nat(), {minLength: 18, maxLength: 18}))

  it('order and names do not matter', () => {
    fc.assert(fc.property(flocks, ([pedigree, keys]) => {
      const shuffled = all(pedigree).map(index => ({index, key: keys[index] ?? 0})).sort((a, b) => a.key - b.key || a.index - b.index)
      const to: number[] = []
      shuffled.forEach(({index}, place) => { to[index] = place })
      const one = coancestry(pedigree, transmission), other = coancestry(reordered(pedigree, to), transmission)
      const rows = one.among(all(pedigree)), moved = other.among(to)
      for (const a of all(pedigree)) {
        const [f, g] = [one.inbreeding[a], other.inbreeding[to[a] ?? 0]]
        for (const figure of ['mean', 'low', 'high'] as const) expect(g?.[figure]).toBeCloseTo(f?.[figure] ?? NaN, 12)
        for (const b of all(pedigree)) expect(moved[a]?.[b]).toBeCloseTo(rows[a]?.[b] ?? NaN, 12)
      }
    }), {numRuns: 100})
  })

  it('descendants change no ancestor', () => {
    fc.assert(fc.property(anyPedigree(18), fc.nat(17), (pedigree, cut) => {
      const count = Math.min(Math.max(2, cut), pedigree.animals.length)
      const elders: Pedigree = {...pedigree, animals: pedigree.animals.slice(0, count), kin: pedigree.kin.filter(({animals: pair}) => Math.max(...pair) < count)}
      const before = coancestry(elders, transmission), after = coancestry(pedigree, transmission)
      expect(after.inbreeding.slice(0, count)).toEqual(before.inbreeding)
      const rows = after.among(all(elders))
      before.among(all(elders)).forEach((row, a) => row.forEach((kinship, b) => expect(rows[a]?.[b]).toBeCloseTo(kinship, 12)))
    }), {numRuns: 100})
  })

  it('F of a chick they might have is the kinship of two birds', () => {
    fc.assert(fc.property(anyPedigree(18), fc.nat(), fc.nat(), (pedigree, p, q) => {
      const count = pedigree.animals.length
      const [sire, dam] = [p % count, q % count]
      const chick: Animal = {sex: 'male', base: null, matings: [{sire, dam, chance: 1}]}
      const {inbreeding} = coancestry({...pedigree, animals: [...pedigree.animals, chick]}, transmission)
      const parents = coancestry(pedigree, transmission)
      expect(inbreeding[count]?.mean).toBeCloseTo(sire === dam ? parents.self(sire) : parents.between(sire, dam), 12)
    }), {numRuns: 100})
  })

  it('0 ≤ K(a, b) ≤ √(K(a, a) K(b, b))', () => {
    fc.assert(fc.property(anyPedigree(18), pedigree => {
      const rows = coancestry(pedigree, transmission).among(all(pedigree))
      rows.forEach((row, a) => row.forEach((kinship, b) => {
        expect(kinship).toBeGreaterThanOrEqual(-1e-12)
        expect(kinship).toBeLessThanOrEqual(Math.sqrt((rows[a]?.[a] ?? NaN) * (rows[b]?.[b] ?? NaN)) + 1e-12)
      }))
    }), {numRuns: 200})
  })
})
