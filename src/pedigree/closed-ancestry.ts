import {HANDED, type GeneFlow} from './gene-flow.ts'
import {isFounder} from './pedigree.ts'

/** One that genes of a group may have come through: an animal of the pedigree, or an unknown bird. */
export interface Ancestor {
  /** the animal; of an unknown bird, the one behind whom it stands */
  readonly animal: number
  /** an unknown bird: as which parent it stands behind the animal, or `itself` when the animal may be none of those it is taken for */
  readonly unknown: 'sire' | 'dam' | 'itself' | null
  /** founders and unknown birds, where descent ends */
  readonly isOrigin: boolean
  /** base population of an origin where it is stated */
  readonly base: number | null
}

/** All that a group's genes may have come through, so that at every place the ways up sum to 1. */
export interface ClosedAncestry {
  /** parents before their chicks */
  readonly ancestors: readonly Ancestor[]
  /** ways up from place i: way[first[i]] … way[first[i + 1] − 1], places in `ancestors`, with the share of genes that came that way */
  readonly first: Int32Array
  readonly way: Int32Array
  readonly share: Float64Array
  /** share of the group's genes at each place before climbing; sums to 1, or to 0 for an empty group */
  readonly start: Float64Array
}

/**
 * Where did a group of birds have its genes from, when nobody may be left out?
 *
 * Founders end descent: kin and base populations are not climbed further. Every parent that is not known is a bird of its own, one for each chick
 * that it stands behind; so is what a chick's chances want to 1. A dam that is one unknown hen for several chicks is one founder.
 *
 * @param group animals; one that is named twice counts twice
 * @returns only what has a share in the group
 */
export function closedAncestry(flow: GeneFlow, group: readonly number[]): ClosedAncestry {
  const {pedigree: {animals}, bases, nodes, order, source, weight, transmission} = flow
  const met = new Uint8Array(nodes)
  for (const index of group) met[bases + index] = 1
  for (let rank = order.length - 1; rank >= 0; rank--) {
    const node = order[rank] ?? 0
    if (!met[node] || node < bases || isFounder(animals[node - bases])) continue
    for (let k = flow.first[node] ?? 0, end = flow.first[node + 1] ?? 0; k < end; k++) met[source[k] ?? 0] = 1
  }

  const ancestors: Ancestor[] = []
  const first = [0], way: number[] = [], share: number[] = []
  const places = new Int32Array(animals.length).fill(-1)
  for (const node of order) {
    const index = node - bases
    const animal = animals[index]
    if (!met[node] || !animal) continue
    const isOrigin = isFounder(animal)
    const unknown = isOrigin ? [] : unknownBirds(index)
    for (const {bird} of unknown) {
      ancestors.push(bird)
      first.push(way.length)
    }
    if (!isOrigin) {
      for (let k = flow.first[node] ?? 0, end = flow.first[node + 1] ?? 0; k < end; k++) {
        const above = source[k] ?? 0
        if (above < bases) continue
        way.push(places[above - bases] ?? 0)
        share.push(weight[k] ?? 0)
      }
      unknown.forEach((each, place) => {
        way.push(ancestors.length - unknown.length + place)
        share.push(each.share)
      })
    }
    places[index] = ancestors.length
    ancestors.push({animal: index, unknown: null, isOrigin, base: isOrigin ? animal.base : null})
    first.push(way.length)
  }
  const start = new Float64Array(ancestors.length)
  for (const index of group) start[places[index] ?? 0] = (start[places[index] ?? 0] ?? 0) + 1 / group.length
  return {ancestors, first: Int32Array.from(first), way: Int32Array.from(way), share: Float64Array.from(share), start}

  /** unknown birds behind one animal, with the share of its genes that came from each */
  function unknownBirds(index: number): readonly {readonly bird: Ancestor; readonly share: number}[] {
    const {matings = [], oneOf, outside, damStandIn, sex = 'unknown'} = animals[index] ?? {}
    const found: {bird: Ancestor; share: number}[] = []
    const find = (unknown: 'sire' | 'dam' | 'itself', base: number | null, part: number) => {
      if (part < 1e-9) return
      const same = found.find(({bird}) => bird.unknown === unknown && bird.base === base)
      if (same) same.share += part
      else found.push({bird: {animal: index, unknown, isOrigin: true, base}, share: part})
    }
    const total = (list: readonly {readonly chance: number}[]) => list.reduce((sum, {chance}) => sum + chance, 0)
    if (oneOf) find('itself', null, 1 - total(oneOf))
    else {
      const handed = HANDED[transmission][sex]
      const wanting = 1 - total(matings)
      find('sire', outside?.sire ?? null, handed.sire * total(matings.filter(({sire}) => sire === null)))
      find('sire', null, handed.sire * wanting)
      if (damStandIn === undefined) {
        find('dam', outside?.dam ?? null, handed.dam * total(matings.filter(({dam}) => dam === null)))
        find('dam', null, handed.dam * wanting)
      }
    }
    return found
  }
}

/** Spreads what stands at each place to all above it, through every way: the sum, over ways, of what stood below times the shares along the way. */
export function climb({first, way, share}: ClosedAncestry, reach: Float64Array, youngest = reach.length - 1): Float64Array {
  for (let place = youngest; place >= 0; place--) {
    const here = reach[place] ?? 0
    if (here === 0) continue
    for (let k = first[place] ?? 0, end = first[place + 1] ?? 0; k < end; k++) {
      const above = way[k] ?? 0
      reach[above] = (reach[above] ?? 0) + here * (share[k] ?? 0)
    }
  }
  return reach
}
