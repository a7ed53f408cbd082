import type {Animal, Mating} from '../pedigree/pedigree.ts'
import type {GeneBlock} from './gene-block.ts'
import {handedOn, handedOnFromOutside} from './handed-on.ts'
import type {Held, Network, Pooled} from './network.ts'
import type {Propagation} from './what-tables-say.ts'
import {total} from './tables.ts'

/** Birds one of whom is the parent, as all chicks that may be theirs see them: one variable for what they hand on together. */
export interface Pool {
  /** in the order of the pedigree, and last, where it is one of them, a bird outside */
  readonly members: readonly PoolMember[]
  /** null where what they hand on together is known */
  readonly variable: number | null
  /** by sex of the chick, then by value: the chance of each haplotype, last of none */
  readonly handed: Readonly<Record<Animal['sex'], readonly Float64Array[]>>
}

export interface PoolMember {
  /** null: a bird outside */
  readonly animal: number | null
  readonly chance: number
  /** of its genotype; null for a bird outside, and where all its genotypes hand on alike */
  readonly variable: number | null
  /** by sex of the chick, then by value of the variable */
  readonly handed: Readonly<Record<Animal['sex'], readonly Float64Array[]>>
}

type Role = 'sire' | 'dam'

/** What each side of a chick may be, where the one says nothing of the other. */
export type Side = readonly (readonly [animal: number | null, chance: number])[]

const SEXES = ['male', 'female', 'unknown'] as const

/** Birds that together hand on more different things than this stand each for themselves: of ten hens alike it is 21. */
const MOST_VALUES = 24

/**
 * The candidates of each side and their chances; null where who the sire is depends on who the dam is.
 */
export function sidesApart(matings: readonly Mating[]): Readonly<Record<Role, Side>> | null {
  const sums = {sire: new Map<number | null, number>(), dam: new Map<number | null, number>()}
  for (const mating of matings) for (const role of ['sire', 'dam'] as const) sums[role].set(mating[role], (sums[role].get(mating[role]) ?? 0) + mating.chance)
  if (matings.length !== sums.sire.size * sums.dam.size) return null
  const apart = matings.every(({sire, dam, chance}) => Math.abs(chance - (sums.sire.get(sire) ?? 0) * (sums.dam.get(dam) ?? 0)) < 1e-9)
  return apart ? {sire: inOrder(sums.sire), dam: inOrder(sums.dam)} : null
}

const inOrder = (side: ReadonlyMap<number | null, number>): Side => [...side].sort(([a], [b]) => (a ?? Infinity) - (b ?? Infinity))

/**
 * A chick asks of its possible dams only what a hen drawn from among them hands on: Σ over hens of chance · handed on. That sum takes few values (of ten hens
 * with equal chances at two alleles it is the number of copies among them, 0 to 20), so it stands as a variable of its own, built up hen by hen, and no table
 * need ever hold the genotypes of all of them at once. All chicks of the same candidates share it.
 *
 * Only where every chick conceived hatches, for otherwise the pair matters, and where one block of loci stands alone.
 *
 * @param held of the candidates at the block
 * @param outside shares of haplotypes among birds outside
 * @returns null where there is but one, the sum takes too many values to be worth it, or one of them may be what a parent of its sex cannot be
 */
export function pooled(network: Network, block: GeneBlock, role: Role, side: Side, held: (animal: number) => Held, outside: ArrayLike<number>): Pool | null {
  if (side.length < 2) return null
  const members = side.map(([animal, chance]): PoolMember => {
    const bird = animal === null ? null : held(animal)
    const handed = bySex(sex => bird ? bird.genotypes.map(genotype => handedOn(block, genotype, role, sex)) : [handedOnFromOutside(block, outside, role, sex)])
    const varies = bird !== null && SEXES.some(sex => !areAlike(handed[sex]))
    return {animal, chance, variable: varies ? bird.variable : null, handed}
  })
  if (members.some(({handed}) => SEXES.some(sex => handed[sex].some(each => Math.abs(total(each) - 1) > 1e-9)))) return null
  const varying = members.filter(({variable}) => variable !== null)
  const fixed = members.filter(({variable}) => variable === null).reduce<Float64Array>((sum, member) => plus(sum, contribution(member, 0)), new Float64Array(SEXES.length * (block.haplotypes + 1)))

  const sums: Sums[] = [sumsOf([fixed])]
  /** by member, by sum before it, by value of it: the sum that comes of both */
  const leads: (readonly (number | undefined)[])[][] = []
  for (const member of varying) {
    const before = sums.at(-1)?.values ?? [], own = member.handed.male.map((_, value) => contribution(member, value))
    const all = before.map(sum => own.map(each => plus(sum, each))), next = sumsOf(all.flat())
    if (next.values.length > MOST_VALUES) return null
    leads.push(all.map(row => row.map(sum => next.placeOf.get(keyOf(sum)))))
    sums.push(next)
  }
  const values = sums.at(-1)?.values ?? []
  let last: number | null = null
  varying.forEach((member, place) => {
    const after = sums[place + 1]
    if (!after || member.variable === null) throw new Error('a sum for every bird that varies')
    const variable = network.variable(after.values.length), known: number | null = last
    const leadsTo = leads[place] ?? []
    network.factor([...(known === null ? [] : [known]), member.variable, variable], values => {
      const to = values.at(-1), value = values.at(-2) ?? 0, from = known === null ? 0 : values[0] ?? 0
      return leadsTo[from]?.[value] === to ? 1 : 0
    })
    last = variable
  })
  const width = block.haplotypes + 1
  return {members, variable: last, handed: bySex(sex => values.map(sum => sum.slice(SEXES.indexOf(sex) * width, (SEXES.indexOf(sex) + 1) * width)))}
}

/**
 * Which of a pool had the chick? Of each entry of the chick's own table a part is owed to each of them:
 *
 *     P(bird | seen) = Σ over its genotype and the entries  P(genotype, entry | seen) · chance · (entry had it been the bird) / entry
 *
 * @param factor the chick's table
 * @param owed by member and value of its genotype, what is owed of each entry
 */
export function pooledDoubt({members}: Pool, factor: number, owed: () => readonly (readonly Float64Array[])[]): Pooled {
  return {sources: members.map(({animal}) => animal), variables: members.map(({variable}) => variable), factor, owed}
}

/** By place in its sources, the chance of each, from what was found; they sum to 1. */
export function pooledShares({factor, variables, owed}: Pooled, found: Pick<Propagation, 'joint' | 'jointWith'>): readonly number[] {
  const shares = owed().map((parts, place) => {
    const variable = variables[place] ?? null
    // where it does not matter what the bird is, its own variable may have nothing to do with the chick
    const tables = variable === null || parts.length === 1 ? [found.joint(factor)] : found.jointWith(factor, variable)
    let share = 0
    tables.forEach((table, value) => {
      const part = parts[value]
      for (let entry = 0; entry < table.length; entry++) share += (table[entry] ?? 0) * (part?.[entry] ?? 0)
    })
    return share
  })
  const sum = shares.reduce((all, share) => all + share, 0)
  return sum > 0 ? shares.map(share => share / sum) : shares
}

/** whether all values hand on the same */
export const areAlike = (handed: readonly Float64Array[]): boolean => handed.length < 2 || handed.every((each, place) => place === 0 || keyOf(each) === keyOf(handed[0] ?? each))

/** What a bird adds for one value, all sexes of the chick one after another. */
function contribution({handed, chance}: PoolMember, value: number): Float64Array {
  const width = handed.male[value]?.length ?? 0, all = new Float64Array(SEXES.length * width)
  for (let sex = 0, at = 0; sex < SEXES.length; sex++) {
    const own = handed[SEXES[sex] ?? 'male'][value]
    for (let place = 0; place < width; place++) all[at++] = chance * (own?.[place] ?? 0)
  }
  return all
}

interface Sums {
  readonly values: readonly Float64Array[]
  readonly placeOf: ReadonlyMap<string, number>
}

function sumsOf(all: readonly Float64Array[]): Sums {
  const values: Float64Array[] = [], placeOf = new Map<string, number>()
  for (const sum of all) {
    const key = keyOf(sum)
    if (!placeOf.has(key)) placeOf.set(key, values.push(sum) - 1)
  }
  return {values, placeOf}
}

function keyOf(chances: Float64Array): string {
  let key = ''
  for (let at = 0; at < chances.length; at++) key += `${Math.round((chances[at] ?? 0) * 1e9)},`
  return key
}

function plus(a: Float64Array, b: Float64Array): Float64Array {
  const sum = new Float64Array(a.length)
  for (let at = 0; at < sum.length; at++) sum[at] = (a[at] ?? 0) + (b[at] ?? 0)
  return sum
}

const bySex = <T>(of: (sex: Animal['sex']) => T): Record<Animal['sex'], T> => ({male: of('male'), female: of('female'), unknown: of('unknown')})
