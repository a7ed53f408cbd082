import {aboveOf, type Animal, type Mating} from '../pedigree/pedigree.ts'
import {broodAt, conceived, type Brood} from './brood.ts'
import {chickSide, poolSide, standInSide, type ChickSide, type SideAtBlock} from './chick-side.ts'
import type {Flock} from './flock.ts'
import {foundersGenotypes, geneBlocks, genotypesOfSex, haplotypeShares, type GeneBlock} from './gene-block.ts'
import {handedOnFromOutside} from './handed-on.ts'
import type {Factor} from './join-graph.ts'
import {emptyNetwork, tableOver, type Doubt, type Held, type Pooled} from './network.ts'
import {parentsFirst} from './parents-first.ts'
import {pooled, pooledDoubt, sidesApart, type Pool} from './parents-pooled.ts'
import {makeWhole, multiplyEach} from './tables.ts'
import {whatWasSeen, type Told} from './what-was-seen.ts'

export interface FlockNetwork {
  readonly blocks: readonly GeneBlock[]
  readonly sizes: readonly number[]
  readonly factors: readonly Factor[]
  /** by animal, then by block */
  readonly held: readonly (readonly Held[])[]
  /** by animal: null where the parent is certain or altogether outside */
  readonly sire: readonly (Doubt | Pooled | null)[]
  readonly dam: readonly (Doubt | Pooled | null)[]
  /** by animal: the table over all its blocks, where what was seen ties several together; null where nothing does */
  readonly together: readonly (number | null)[]
  /** the bird's tables, were this told of it in place of what the flock tells; a trait of several blocks only where it was seen before */
  otherwise(animal: number, told: Told): ReadonlyMap<number, Float64Array>
}

type Chance = (sire: number, dam: number) => number

/** What chicks of like matings and one sex share. */
interface Family {
  readonly left: ChickSide
  readonly right: ChickSide
  /** by block */
  readonly broods: readonly Brood[]
  readonly chance: Chance
  /** of those of its chicks that had none themselves and look alike, who may have had them: they are told alike */
  readonly alike: Map<string, {readonly sire: Pooled | null; readonly dam: Pooled | null}>
}

/**
 * The flock as tables over variables: a genotype for each bird and block of loci, and for each doubt about a parent which bird it was.
 *
 * A chick of certain parents is one table over three genotypes. Where one of several birds may be the parent, a variable of source and haplotype handed on
 * stands between, so that no table ever holds all candidates at once; several blocks share a doubt by a variable of its own. Where many may be, and it can
 * be, they are pooled in what they hand on together.
 * Every chick of the flock has hatched: lethal genotypes are taken out of what its parents give, and the rest made whole.
 *
 * @param slack share of scores and tests that may be wrong in ways no record states
 * @param asked animals whose genotypes at all blocks together will be asked for
 */
export function flockNetwork(flock: Flock, slack = 0, asked: ReadonlySet<number> = new Set()): FlockNetwork {
  const {pedigree: {animals, bases}, loci, linkages} = flock
  const blocks = geneBlocks(loci, linkages), several = blocks.length > 1
  const network = emptyNetwork(), seen = whatWasSeen(flock, blocks, slack)
  const held: (readonly Held[])[] = [], sire: (Doubt | Pooled | null)[] = [], dam: (Doubt | Pooled | null)[] = [], together: (number | null)[] = []
  const itself: (Doubt | null)[] = []
  const outside = new Map<string, readonly Float64Array[]>(), pools = new Map<string, Pool | null>(), apart = new Map<readonly Mating[], ReturnType<typeof sidesApart>>()
  const families = new Map<readonly Mating[], Map<string, Family>>(), likeFamilies = new Map<string, Family>()
  const isParent = new Uint8Array(animals.length)
  for (const animal of animals) for (const above of aboveOf(animal)) isParent[above] = 1

  for (const index of parentsFirst(animals)) {
    const animal = animals[index]
    if (!animal) continue
    sire[index] = dam[index] = itself[index] = null
    held[index] = animal.oneOf ? oneOf(index, animal, animal.oneOf) : animal.matings.length === 0 ? founder(index, animal) : chick(index, animal)
    const tied = several ? seen.together(index, seen.told(index)) ?? (asked.has(index) ? () => 1 : null) : null
    const own = held[index] ?? []
    together[index] = tied && network.table(own.map(({variable}) => variable), tableOver(own, tied))
  }
  return {
    blocks, sizes: network.sizes, factors: network.factors, held, sire, dam, together,
    otherwise(animal, told) {
      const all = held[animal] ?? [], tied = together[animal] ?? null
      const tables = new Map<number, Float64Array>(all.map(({own, genotypes}, number) => {
        const likelihood = seen.alone(animal, number, told)
        return [own, Float64Array.from(genotypes, genotype => likelihood[genotype] ?? 0)] as const
      }))
      const likelihood = tied === null ? null : seen.together(animal, told) ?? (() => 1)
      if (tied !== null && likelihood) tables.set(tied, tableOver(all, likelihood))
      return tables
    },
  }

  function founder(index: number, {sex, base}: Animal): Held[] {
    return blocks.map((block, number) => {
      const shares = ofPopulation(block, number, base, sex)
      return hold(index, number, genotypesOfSex(block, sex).filter(genotype => (shares[genotype] ?? 0) > 0), genotype => shares[genotype] ?? 0)
    })
  }

  /** A variable for a bird's genotypes at a block, with what was seen of it itself in a table apart. What a test shuts out is left out. */
  function hold(index: number, number: number, possible: readonly number[], prior: ((genotype: number) => number) | null): Held {
    const told = seen.told(index), shut = seen.alone(index, number, {...told, readings: []}), left = possible.filter(genotype => (shut[genotype] ?? 0) > 0)
    const genotypes = left.length > 0 ? left : possible, variable = network.variable(genotypes.length)
    if (prior) network.factor([variable], ([value = 0]) => prior(genotypes[value] ?? 0))
    return {variable, genotypes, source: null, own: ownTable(index, number, variable, genotypes)}
  }

  function ownTable(index: number, number: number, variable: number, genotypes: readonly number[]): number {
    const likelihood = seen.alone(index, number, seen.told(index))
    return network.table([variable], Float64Array.from(genotypes, genotype => likelihood[genotype] ?? 0))
  }

  /** The bird is one of these, or none of them: a bird of its base. */
  function oneOf(index: number, {sex, base}: Animal, candidates: NonNullable<Animal['oneOf']>): Held[] {
    const rest = 1 - candidates.reduce((sum, {chance}) => sum + chance, 0)
    const sources: (number | null)[] = [...candidates.map(({animal}) => animal), ...(rest > 1e-12 ? [null] : [])], chances = [...candidates.map(({chance}) => chance), rest]
    const which = several ? network.variable(sources.length) : null
    if (which !== null) network.factor([which], ([place = 0]) => chances[place] ?? 0)
    const all = blocks.map((block, number): Held => {
      const shares = ofPopulation(block, number, base, sex)
      const birds = sources.map(source => (source === null ? null : held[source]?.[number] ?? null))
      const values = birds.flatMap((bird, place) => (bird?.genotypes ?? genotypesOfSex(block, sex)).map(genotype => ({place, genotype})))
      const variable = network.variable(values.length), at = (value = 0) => values[value] ?? {place: 0, genotype: 0}
      network.factor([variable], ([value]) => {
        const {place, genotype} = at(value)
        return (which === null ? chances[place] ?? 0 : 1) * (birds[place] ? 1 : shares[genotype] ?? 0)
      })
      if (which !== null) network.factor([which, variable], ([place, value]) => (at(value).place === place ? 1 : 0))
      birds.forEach((bird, place) => {
        if (bird) network.factor([variable, bird.variable], ([value, other = 0]) => (at(value).place !== place || at(value).genotype === bird.genotypes[other] ? 1 : 0))
      })
      const genotypes = values.map(({genotype}) => genotype)
      return {variable, genotypes, source: values.map(({place}) => place), own: ownTable(index, number, variable, genotypes)}
    })
    const [first] = all
    itself[index] = first ? {sources, variable: which ?? first.variable, source: which === null ? first.source ?? [] : sources.map((_, place) => place)} : null
    return all
  }

  function chick(index: number, animal: Animal): Held[] {
    const {sex} = animal, {left, right, broods, chance, alike} = familyOf(animal), doubtful = left.doubt !== null || right.doubt !== null
    sire[index] = left.doubt
    dam[index] = right.doubt
    if (several) tie(left.doubt, right.doubt, chance)
    return blocks.map((block, number) => {
      const a = left.at[number], b = right.at[number], brood = broods[number], hatching = seen.hatching(number, sex)
      if (!a || !b || !brood) throw new RangeError('a chick stands at every block')
      const own = hold(index, number, brood.possible, null)
      const factor = network.table([...brood.of, own.variable],
        brood.table(own.genotypes, doubtful && !several ? (one, other) => chance(a.source[one] ?? 0, b.source[other] ?? 0) : undefined))
      const {pool: sires} = left, {pool: dams} = right
      if (sires || dams) {
        const key = isParent[index] === 1 ? '' : `${own.genotypes.join()} ${network.factors[own.own]?.table.join() ?? ''}`
        const doubts = (key === '' ? undefined : alike.get(key)) ?? {
          sire: sires && pooledDoubt(sires, factor, () => brood.owed('sire', sires, own.genotypes)), dam: dams && pooledDoubt(dams, factor, () => brood.owed('dam', dams, own.genotypes)),
        }
        if (key !== '') alike.set(key, doubts)
        if (sires) sire[index] = doubts.sire
        if (dams) dam[index] = doubts.dam
      }
      if ((a.between || b.between) && hatching.some(share => share < 1)) asHatched(block, a, b, hatching)
      return own
    })
  }

  /** Chicks of like matings and one sex share all that is not a doubt of their own. */
  function familyOf({matings, sex, damStandIn, outside: bases_}: Animal): Family {
    const key = `${sex} ${damStandIn ?? ''} ${bases_?.sire ?? ''} ${bases_?.dam ?? ''}`, known = families.get(matings)?.get(key)
    if (known) return known
    // hatches of one pen each have a list of their own
    const whole = `${key} ${matings.map(({sire: one, dam: other, chance: share}) => `${one} ${other} ${share}`).join()}`, same = likeFamilies.get(whole)
    if (same) return keepFamily(matings, key, same)
    const side = (role: 'sire' | 'dam'): ChickSide => {
      const base = bases_?.[role] ?? null, pool = damStandIn === undefined ? poolOf(matings, role, base) : null
      return pool ? poolSide(pool, sex) : chickSide(network, blocks, held, sex, role, matings, fromOutside(base, role, sex))
    }
    const left = side('sire'), right = damStandIn === undefined ? side('dam') : standInSide(blocks, damStandIn, held[damStandIn] ?? [], sex, itself[damStandIn] ?? null)
    const broods = blocks.map((block, number) => {
      const a = left.at[number], b = right.at[number]
      if (!a || !b) throw new RangeError('a chick stands at every block')
      return broodAt(block, a, b, sex, seen.hatching(number, sex))
    })
    const made: Family = {left, right, broods, chance: pairChance(matings, left, right, damStandIn !== undefined), alike: new Map()}
    if (left.doubt !== null || right.doubt !== null) return made
    likeFamilies.set(whole, made)
    return keepFamily(matings, key, made)
  }

  function keepFamily(matings: readonly Mating[], key: string, family: Family): Family {
    families.set(matings, (families.get(matings) ?? new Map<string, Family>()).set(key, family))
    return family
  }

  /** Candidates stand together where one block is worked alone and all that is conceived there hatches. */
  function poolOf(matings: readonly Mating[], role: 'sire' | 'dam', base: number | null): Pool | null {
    const [block, ...others] = blocks
    if (!block || others.length > 0 || (['male', 'female'] as const).some(sex => seen.hatching(0, sex).some(share => share < 1))) return null
    const sides = apart.get(matings) ?? sidesApart(matings)
    apart.set(matings, sides)
    if (!sides) return null
    const side = sides[role], key = `${role} ${base} ${side.join(' ')}`, known = pools.get(key)
    if (known !== undefined) return known
    const pool = pooled(network, block, role, side, animal => {
      const own = held[animal]?.[0]
      if (!own) throw new RangeError(`the candidate ${animal} is not among the birds before its chicks`)
      return own
    }, haplotypeShares(block, sharesAt(block, base)))
    pools.set(key, pool)
    return pool
  }

  /** Which sire goes with which dam. */
  function tie(left: Doubt | null, right: Doubt | null, chance: Chance): void {
    const of = [...(left ? [left.variable] : []), ...(right ? [right.variable] : [])]
    if (of.length > 0) network.factor(of, values => chance(left ? left.source[values[0] ?? 0] ?? 0 : 0, right ? right.source[values.at(-1) ?? 0] ?? 0 : 0))
  }

  /** Where a parent is one of several: for each two that may be, 1/(share of their chicks that hatches), should they be the ones. */
  function asHatched(block: GeneBlock, a: SideAtBlock, b: SideAtBlock, hatching: Float64Array): void {
    a.parents.forEach((one, k) => b.parents.forEach((other, l) => {
      const of = [...new Set([...(a.between ? [a.variable] : []), ...(b.between ? [b.variable] : []), one.variable, other.variable].filter(variable => variable !== null))]
      network.factor(of, values => {
        const valueOf = (variable: number | null): number => (variable === null ? 0 : values[of.indexOf(variable)] ?? 0)
        if ((a.between && a.source[valueOf(a.variable)] !== k) || (b.between && b.source[valueOf(b.variable)] !== l)) return 1
        const share = conceived(block, one.handed[valueOf(one.variable)], other.handed[valueOf(other.variable)], hatching, false).reduce((sum, entry) => sum + entry, 0)
        return share > 0 ? 1 / share : 0
      })
    }))
  }

  /** Of the birds of a population that hatched. */
  function ofPopulation(block: GeneBlock, number: number, base: number | null, sex: Animal['sex']): Float64Array {
    const shares = foundersGenotypes(block, sharesAt(block, base), base === null ? 0 : bases[base]?.inbreeding ?? 0, sex)
    multiplyEach(shares, seen.hatching(number, sex))
    makeWhole(shares)
    return shares
  }

  function sharesAt(block: GeneBlock, base: number | null): readonly ArrayLike<number>[] {
    return block.loci.map(locus => flock.shares(base)[locus] ?? [])
  }

  function fromOutside(base: number | null, role: 'sire' | 'dam', sex: Animal['sex']): readonly Float64Array[] {
    const key = `${base} ${role} ${sex}`
    const known = outside.get(key) ?? blocks.map(block => handedOnFromOutside(block, haplotypeShares(block, sharesAt(block, base)), role, sex))
    outside.set(key, known)
    return known
  }
}

/** Chance of two places among the sources of either side. Of a family's one hen only what her mates' chances are, given which hen she is. */
function pairChance(matings: readonly Mating[], left: ChickSide, right: ChickSide, givenDam: boolean): Chance {
  // those who stand together are as one bird: their chances are in what they hand on
  const sires = left.doubt?.sources ?? (left.pool ? [undefined] : left.birds), dams = right.doubt?.sources ?? (givenDam ? [matings[0]?.dam ?? null] : right.pool ? [undefined] : right.birds)
  const is = (bird: number | null | undefined, other: number | null): boolean => bird === undefined || bird === other
  const table = sires.map(sire => dams.map(dam => matings.filter(mating => is(sire, mating.sire) && is(dam, mating.dam)).reduce((sum, {chance}) => sum + chance, 0)))
  if (!givenDam) return (k, l) => table[k]?.[l] ?? 0
  const sums = dams.map((_, l) => table.reduce((sum, row) => sum + (row[l] ?? 0), 0))
  const bySire = table.map(row => row.reduce((sum, chance) => sum + chance, 0))
  return (k, l) => ((sums[l] ?? 0) > 0 ? (table[k]?.[l] ?? 0) / (sums[l] ?? 1) : bySire[k] ?? 0)
}
