import type {Flock} from './flock.ts'
import {flockNetwork, type FlockNetwork} from './flock-network.ts'
import {allelesAt} from './gene-block.ts'
import type {Alleles} from './locus.ts'
import type {Doubt, Pooled} from './network.ts'
import {pooledShares} from './parents-pooled.ts'
import {LIMITS, propagate, type Limits} from './propagation.ts'
import type {Told} from './what-was-seen.ts'

export interface Probable<Of> {
  readonly is: Of
  /** above 0; over the list they sum to 1 */
  readonly probability: number
}

export interface GenotypeProbabilities {
  /** what stands at one locus of a bird, likeliest first */
  at(animal: number, locus: number): readonly Probable<Alleles>[]
  /** at every locus of the group together, likeliest first; asked for beforehand, or tied by what was seen, it is as exact as the rest, else the blocks count as independent */
  together(animal: number): readonly Probable<readonly Alleles[]>[]
  /** which bird it came from, where that is in doubt: null is a bird outside the pedigree; null in place of the list where there is no doubt */
  sires(animal: number): readonly Probable<number | null>[] | null
  dams(animal: number): readonly Probable<number | null>[] | null
  /**
   * What would stand there, were other things told of some birds? Only what changes is worked anew, and afterwards all is as it was.
   *
   * @param told by animal, in place of what the flock tells of it
   * @param read is given what then stands at a locus of a bird, and the chance of everything told
   * @param whole on to the far ends of the flock, and not only near the birds
   */
  supposing<T>(told: ReadonlyMap<number, Told>, read: (at: GenotypeProbabilities['at'], logLikelihood: () => number) => T, whole?: boolean): T
  /** natural logarithm of the chance of everything seen */
  readonly logLikelihood: number
  /** the figures of the bird at the locus are exact; otherwise messages were sent until none changed by more than `change`, or `sweeps` times */
  isExact(animal: number, locus: number): boolean
  readonly exact: boolean
  /** as `Limits` has it: what need not be tried again when the flock is worked with something otherwise */
  readonly tooWideFrom: number
  readonly change: number
  readonly sweeps: number
  /** share of scores taken to be wrong because the records contradict each other as they stand; 0 where they do not */
  readonly slack: number
}

/** Where the records contradict each other, so many scores may be wrong. */
const SLACK = 1e-3

/**
 * Given all that was seen of it and of all its relatives, how likely is every genotype of every bird?
 *
 *     P(genotypes | seen) ∝ Π over founders of P(genotype) · Π over chicks of P(genotype | parents, hatched) · Π over birds of P(seen | genotype)
 *
 * with sums over the birds that may be a parent. Exact wherever the flock's width at these loci allows; `propagate` says how it is worked.
 * Where nothing at all fits the records, one score in a thousand is taken to be wrong, and `slack` says so. Kinship of founders beyond the inbreeding
 * of their population is left aside.
 *
 * @param asked animals that `together` will be asked of
 * @throws {RangeError} where even so nothing fits: founders who must be of a genotype that never hatches
 * @see Elston & Stewart 1971, Hum. Hered. 21:523; Cannings, Thompson & Skolnick 1978, Adv. Appl. Probab. 10:26; Kerr & Kinghorn 1996, J. Anim. Breed. Genet. 113:457
 *   (likelihoods on pedigrees; all from memory)
 */
export function genotypeProbabilities(flock: Flock, asked: ReadonlySet<number> = new Set(), limits: Limits = LIMITS): GenotypeProbabilities {
  const plain = worked(flock, 0, asked, limits)
  const {network, found, slack} = plain.found.logSum === -Infinity ? worked(flock, SLACK, asked, limits) : plain
  if (found.logSum === -Infinity) throw new RangeError('no genotypes at all fit what was seen')
  const placeOf = new Map(network.blocks.flatMap((block, number) => block.loci.map((locus, place) => [locus, {block, number, place}] as const)))
  const at = (locus: number) => {
    const found_ = placeOf.get(locus)
    if (!found_) throw new RangeError(`there is no locus ${locus}`)
    return found_
  }
  const heldAt = (animal: number, number: number) => {
    const held = network.held[animal]?.[number]
    if (!held) throw new RangeError(`there is no animal ${animal}`)
    return held
  }

  /** of one block: by number of the genotype */
  function genotypes(animal: number, number: number, marginal: (variable: number) => Float64Array): Map<number, number> {
    const {genotypes: each, variable} = heldAt(animal, number), shares = marginal(variable), sums = new Map<number, number>()
    for (let value = 0; value < each.length; value++) sums.set(each[value] ?? 0, (sums.get(each[value] ?? 0) ?? 0) + (shares[value] ?? 0))
    return sums
  }

  const atWith = (marginal: (variable: number) => Float64Array): GenotypeProbabilities['at'] => (animal, locus) => {
    const {block, number, place} = at(locus)
    return likeliestFirst([...genotypes(animal, number, marginal)].map(([genotype, probability]) => {
      const held = block.genotypes[genotype]
      if (!held) throw new RangeError('a genotype of another block')
      return {is: allelesAt(block, held, place), probability}
    }), alleles => alleles.join())
  }

  const asWorked = atWith(found.marginal), known: (readonly Probable<Alleles>[])[][] = [], sourcesKnown = new Map<Doubt | Pooled, readonly Probable<number | null>[]>()
  return {
    at: (animal, locus) => (known[locus] ??= [])[animal] ??= asWorked(animal, locus),
    supposing: (told, read, whole) =>
      found.supposing(new Map([...told].flatMap(([animal, instead]) => [...network.otherwise(animal, instead)])), ({marginal, logSum}) => read(atWith(marginal), logSum), whole),
    together(animal) {
      const all = network.held[animal] ?? [], tied = network.together[animal] ?? null
      const sizes = all.map(({genotypes: each}) => each.length)
      const joint = tied === null ? productOf(all.map(({variable}) => found.marginal(variable))) : found.joint(tied)
      return likeliestFirst(Array.from(joint, (probability, entry) => {
        let rest = entry
        const values: number[] = []
        for (let number = sizes.length - 1; number >= 0; number--) {
          values[number] = rest % (sizes[number] ?? 1)
          rest = Math.floor(rest / (sizes[number] ?? 1))
        }
        return {is: allelesOf(network, animal, values), probability}
      }), alleles => alleles.map(each => each.join()).join(' '))
    },
    sires: animal => sourcesOf(network.sire[animal] ?? null),
    dams: animal => sourcesOf(network.dam[animal] ?? null),
    logLikelihood: found.logSum,
    isExact: (animal, locus) => found.isExact(heldAt(animal, at(locus).number).variable),
    exact: found.exact, tooWideFrom: found.tooWideFrom, change: found.change, sweeps: found.sweeps, slack,
  }

  function sourcesOf(doubt: Doubt | Pooled | null): readonly Probable<number | null>[] | null {
    if (!doubt) return null
    const before = sourcesKnown.get(doubt) ?? sourcesFound(doubt)
    sourcesKnown.set(doubt, before)
    return before
  }

  function sourcesFound(doubt: Doubt | Pooled): readonly Probable<number | null>[] {
    if ('owed' in doubt) return likeliestFirst(pooledShares(doubt, found).map((probability, place) => ({is: doubt.sources[place] ?? null, probability})), String)
    const shares = found.marginal(doubt.variable), sums = doubt.sources.map(() => 0)
    doubt.source.forEach((place, value) => { sums[place] = (sums[place] ?? 0) + (shares[value] ?? 0) })
    return likeliestFirst(doubt.sources.map((is, place) => ({is, probability: sums[place] ?? 0})), String)
  }
}

function worked(flock: Flock, slack: number, asked: ReadonlySet<number>, limits: Limits) {
  const network = flockNetwork(flock, slack, asked)
  return {network, found: propagate(network.sizes, network.factors, limits), slack}
}

function allelesOf({blocks, held}: FlockNetwork, animal: number, values: readonly number[]): readonly Alleles[] {
  const alleles: Alleles[] = []
  blocks.forEach((block, number) => {
    const genotype = block.genotypes[held[animal]?.[number]?.genotypes[values[number] ?? 0] ?? -1]
    if (genotype) block.loci.forEach((locus, place) => { alleles[locus] = allelesAt(block, genotype, place) })
  })
  return alleles
}

const productOf = (tables: readonly Float64Array[]): Float64Array =>
  tables.reduce((product, table) => Float64Array.from({length: product.length * table.length}, (_, at) => (product[Math.floor(at / table.length)] ?? 0) * (table[at % table.length] ?? 0)), new Float64Array([1]))

/** Like ones summed, impossible ones left out, the likeliest first; ties in the order given. */
function likeliestFirst<Of>(list: readonly Probable<Of>[], keyOf: (is: Of) => string): readonly Probable<Of>[] {
  const sums = new Map<string, {is: Of; probability: number}>()
  for (const {is, probability} of list) {
    const key = keyOf(is), known = sums.get(key)
    if (known) known.probability += probability
    else sums.set(key, {is, probability})
  }
  return [...sums.values()].filter(({probability}) => probability > 0).sort((a, b) => b.probability - a.probability)
}
