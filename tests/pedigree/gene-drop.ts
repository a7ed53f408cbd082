/** Another witness: let genes fall from founders to chicks many times, by chance, and count. Nothing here knows of kinship. */
import {uniformFloat64} from 'pure-rand/distribution/uniformFloat64'
import {xoroshiro128plus} from 'pure-rand/generator/xoroshiro128plus'
import type {Pedigree} from '../../src/pedigree/pedigree.ts'

export interface Dropped {
  /** share of draws, one copy of each, in which the two had the same founder copy; of a bird with itself the copy is put back */
  kinship(a: number, b: number): number
  /** share of drops in which the copies from sire and dam were the same; on the Z a hen counts as her brother would */
  inbreeding(animal: number): number
  /** mean part of a founder's two copies that is still in the group */
  retention(founder: number): number
}

/** Founders' copies are all different; base populations and stated kin are not followed. */
export function geneDrop(
  {animals}: Pedigree,
  {transmission = 'autosome', drops, seed, group = []}: {transmission?: 'autosome' | 'Z'; drops: number; seed: number; group?: readonly number[]},
): Dropped {
  const generator = xoroshiro128plus(seed)
  const chance = () => uniformFloat64(generator)
  const oneOf = (copies: readonly number[]) => copies[Math.floor(chance() * copies.length)] ?? NaN
  const draw = <T extends {readonly chance: number}>(list: readonly T[]): T | undefined => {
    let left = chance()
    return list.find(each => (left -= each.chance) < 1e-12)
  }
  const order = eldersFirst(animals)
  const size = animals.length
  const same = new Float64Array(size * size), both = new Float64Array(size), kept = new Float64Array(size)
  /** of this drop: what each bird has, and whether its copies from sire and dam are the same */
  let copies: (readonly number[])[] = [], alike: boolean[] = [], next = 0
  const fresh = () => next++

  for (let drop = 0; drop < drops; drop++) {
    copies = []
    alike = []
    next = 2 * size
    for (const index of order) fall(index)
    for (let a = 0; a < size; a++) {
      for (let b = 0; b <= a; b++) {
        const [mine, theirs] = [copies[a] ?? [], copies[b] ?? []]
        const equal = mine.reduce((sum, copy) => sum + theirs.filter(other => other === copy).length, 0)
        same[a * size + b] = (same[a * size + b] ?? 0) + equal / (mine.length * theirs.length)
      }
    }
    const alive = new Set(group.flatMap(index => copies[index] ?? []))
    for (let index = 0; index < size; index++) kept[index] = (kept[index] ?? 0) + (Number(alive.has(2 * index)) + Number(alive.has(2 * index + 1))) / 2
  }
  return {
    kinship: (a, b) => (same[Math.max(a, b) * size + Math.min(a, b)] ?? NaN) / drops,
    inbreeding: index => (both[index] ?? NaN) / drops,
    retention: index => (kept[index] ?? NaN) / drops,
  }

  function fall(index: number): void {
    const {sex = 'unknown', matings = [], oneOf: candidates, damStandIn} = animals[index] ?? {}
    const isHen = transmission === 'Z' && (sex === 'female' || (sex === 'unknown' && chance() < 0.5))
    if (candidates) {
      const one = draw(candidates)
      copies[index] = one ? copies[one.animal] ?? [] : isHen ? [fresh()] : [fresh(), fresh()]
      alike[index] = one ? alike[one.animal] ?? false : false
    } else if (matings.length === 0) {
      copies[index] = isHen ? [2 * index] : [2 * index, 2 * index + 1]
      alike[index] = false
    } else {
      const mating = draw(matings)
      const dam = damStandIn ?? mating?.dam ?? null
      const fromSire = mating && mating.sire !== null ? oneOf(copies[mating.sire] ?? []) : fresh()
      const fromDam = dam !== null ? oneOf(copies[dam] ?? []) : fresh()
      copies[index] = isHen ? [fromSire] : [fromSire, fromDam]
      alike[index] = fromSire === fromDam
    }
    both[index] = (both[index] ?? 0) + Number(alike[index])
  }
}

function eldersFirst(animals: Pedigree['animals']): readonly number[] {
  const order: number[] = [], done = new Set<number>()
  const visit = (index: number): void => {
    if (done.has(index)) return
    done.add(index)
    const {matings = [], oneOf = [], damStandIn = null} = animals[index] ?? {}
    for (const parent of [...matings.flatMap(({sire, dam}) => [sire, dam]), ...oneOf.map(({animal}) => animal), damStandIn]) if (parent !== null) visit(parent)
    order.push(index)
  }
  animals.forEach((_, index) => visit(index))
  return order
}
