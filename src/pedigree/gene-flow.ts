import {founderFlow, founderInbreeding} from './founder-flow.ts'
import {parentsFirst} from './parents-first.ts'
import type {Animal, Pedigree, Transmission} from './pedigree.ts'

/**
 * The pedigree as one sparse matrix: each node's genes are a weighted sum of earlier nodes' genes and something new of its own.
 * Base populations are the first nodes, the animals follow them in the pedigree's own order.
 */
export interface GeneFlow {
  readonly pedigree: Pedigree
  readonly transmission: Transmission
  /** node of animal a is bases + a */
  readonly bases: number
  readonly nodes: number
  /** sources of node i: source[first[i]] … source[first[i + 1] − 1], with their weights */
  readonly first: Int32Array
  readonly source: Int32Array
  readonly weight: Float64Array
  /** every node, sources before what flows from them */
  readonly order: Int32Array
  /** longest way up to a node without sources */
  readonly level: Int32Array
  /** for founders: the part of their own kinship with themselves that no source explains; NaN for other animals */
  readonly founderOwn: Float64Array
}

/** What a parent hands to a chick of this sex, of the whole that the chick has. A chick of unknown sex may be either. */
export const HANDED: Readonly<Record<Transmission, Readonly<Record<Animal['sex'], {readonly sire: number; readonly dam: number}>>>> = {
  autosome: {male: {sire: 0.5, dam: 0.5}, female: {sire: 0.5, dam: 0.5}, unknown: {sire: 0.5, dam: 0.5}},
  Z: {male: {sire: 0.5, dam: 0.5}, female: {sire: 1, dam: 0}, unknown: {sire: 0.75, dam: 0.25}},
  'dam line': {male: {sire: 0, dam: 1}, female: {sire: 0, dam: 1}, unknown: {sire: 0, dam: 1}},
}

/**
 * From whom does each bird have its genes, and in what shares?
 *
 *     autosome  chick = ½ Σ p(sire) · sire + ½ Σ p(dam) · dam
 *     Z         a cock as on the autosomes; a hen has her one Z from her sire; a bird of unknown sex is half of each
 *     dam line  chick = Σ p(dam) · dam
 *
 * Parents outside the pedigree flow from their base where it is stated, else from nowhere. Founders flow from their base.
 *
 * @throws RangeError for a loop, a chance that is not above 0, or chances of one chick that sum to more than 1
 * @see Henderson 1988, J. Anim. Sci. 66:1614 for averaged parents (from memory)
 */
export function geneFlow(pedigree: Pedigree, transmission: Transmission, selfOf = selfRule(pedigree, transmission)): GeneFlow {
  const {animals, bases} = pedigree
  const nodes = bases.length + animals.length
  const founders = founderFlow(pedigree, animal => selfOf(animal, founderInbreeding(pedigree, animal)))
  const sources: number[] = [], weights: number[] = []
  const first = new Int32Array(nodes + 1)
  const founderOwn = new Float64Array(nodes).fill(NaN)

  bases.forEach(({within, kinship}, base) => {
    if (within !== null) { sources.push(within); weights.push(1) }
    first[base + 1] = sources.length
    founderOwn[base] = kinship - (within === null ? 0 : bases[within]?.kinship ?? 0)
  })
  const blends = new Map<Animal['matings'], Map<string, Blend>>()
  animals.forEach((animal, index) => {
    const node = bases.length + index
    const founder = founders.get(index)
    if (founder) {
      for (const [source, weight] of founder.sources) { sources.push(source); weights.push(weight) }
      founderOwn[node] = founder.own
    } else {
      const blend = blendOf(animal)
      for (let k = 0; k < blend.sources.length; k++) { sources.push(blend.sources[k] ?? 0); weights.push(blend.weights[k] ?? 0) }
    }
    first[node + 1] = sources.length
  })
  return {pedigree, transmission, bases: bases.length, nodes, first, source: Int32Array.from(sources), weight: Float64Array.from(weights), ...ranked(nodes, first, sources), founderOwn}

  /** chicks of the same matings have the same blend of parents */
  function blendOf(animal: Animal): Blend {
    if (animal.oneOf) return mixed(animal.oneOf.map(({animal: source, chance}) => [bases.length + source, chance]))
    const key = `${animal.sex} ${animal.outside?.sire ?? ''} ${animal.outside?.dam ?? ''} ${animal.damStandIn ?? ''}`
    const known = blends.get(animal.matings)
    const same = known?.get(key)
    if (same) return same
    const {sire, dam} = HANDED[transmission][animal.sex]
    const parts: [number, number][] = []
    for (const mating of animal.matings) {
      if (!(mating.chance > 0)) throw new RangeError(`a chance is above 0, not ${mating.chance}`)
      const from = mating.sire === null ? animal.outside?.sire ?? null : bases.length + mating.sire
      const by = mating.dam === null ? animal.outside?.dam ?? null : bases.length + mating.dam
      if (from !== null && sire > 0) parts.push([from, sire * mating.chance])
      if (animal.damStandIn === undefined && by !== null && dam > 0) parts.push([by, dam * mating.chance])
    }
    if (animal.damStandIn !== undefined && dam > 0) parts.push([bases.length + animal.damStandIn, dam])
    const blend = mixed(parts)
    if (known) known.set(key, blend)
    else blends.set(animal.matings, new Map([[key, blend]]))
    return blend
  }
}

/** How the kinship of an animal with itself follows from its F, the kinship of its parents. */
export type SelfRule = (animal: number, inbreeding: number) => number

/** By its sex, as it is of real birds. */
export const selfRule = ({animals}: Pedigree, transmission: Transmission): SelfRule =>
  (animal, inbreeding) => selfKinship(inbreeding, animals[animal]?.sex ?? 'unknown', transmission)

/** A bird with two copies ½(1 + F), with one copy 1; a bird of unknown sex has either number on the Z. */
export function selfKinship(inbreeding: number, sex: Animal['sex'], transmission: Transmission): number {
  const two = (1 + inbreeding) / 2
  if (transmission === 'autosome') return two
  if (transmission === 'dam line') return 1
  return sex === 'male' ? two : sex === 'female' ? 1 : (two + 1) / 2
}

interface Blend {
  readonly sources: readonly number[]
  readonly weights: readonly number[]
}

function mixed(parts: readonly (readonly [number, number])[]): Blend {
  const sum = new Map<number, number>()
  let whole = 0
  for (const [source, weight] of parts) {
    sum.set(source, (sum.get(source) ?? 0) + weight)
    whole += weight
  }
  if (whole > 1 + 1e-9) throw new RangeError(`the chances of a chick's parents sum to ${whole}, above 1`)
  return {sources: [...sum.keys()], weights: [...sum.values()]}
}

/** Sources before what flows from them, and how far down each node stands. */
function ranked(nodes: number, first: Int32Array, sources: readonly number[]): Pick<GeneFlow, 'order' | 'level'> {
  const {order, loops} = parentsFirst(nodes, node => sources.slice(first[node], first[node + 1]))
  if (loops.length > 0) throw new RangeError(`a loop in descent: ${loops.map(loop => loop.join(' → ')).join('; ')}`)
  const level = new Int32Array(nodes)
  for (const node of order) {
    let deepest = -1
    for (let k = first[node] ?? 0; k < (first[node + 1] ?? 0); k++) deepest = Math.max(deepest, level[sources[k] ?? 0] ?? 0)
    level[node] = deepest + 1
  }
  return {order: Int32Array.from(order), level}
}
