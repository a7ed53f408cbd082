/** The twin's inbreeding: kinship of two birds at a time, the younger one's parents looked up again and again. */
import type {PlainBook, PlainChicks} from './plain-descent.ts'
import {plain, recordsOf} from './plain-reading.ts'

export interface PlainInbreeding {
  readonly F: number
  readonly F_low: number
  readonly F_high: number
  readonly F_z: number | null
  readonly equivalent_generations: number
}

export function plainInbreeding(files: ReadonlyMap<string, string>, book: PlainBook, sexOf: (bird: PlainChicks) => string): (bird: PlainChicks) => PlainInbreeding {
  const strains = recordsOf(files, 'strains')
  const share = (text: unknown) => (typeof text === 'string' ? Number(text.replace('%', '')) / (text.endsWith('%') ? 100 : 1) : 0)
  const flockOf = (bird: PlainChicks) => plain.map(bird.fields.flock ?? book.hatches.get(bird.hatch ?? '')?.flock)
  const isFounder = (bird: PlainChicks) => bird.strain !== null
  const find = (name: string | null) => (name === null ? undefined : book.birds.get(name))

  const generations = new Map<PlainChicks, number>()
  const depth = (bird: PlainChicks): number => {
    const known = generations.get(bird)
    if (known !== undefined) return known
    const parents = bird.pairs.flatMap(({sire, dam}) => [find(sire), find(dam)]).filter(each => each !== undefined)
    const own = parents.length === 0 ? 0 : 1 + Math.max(...parents.map(depth))
    generations.set(bird, own)
    return own
  }

  const strainF = (bird: PlainChicks) => share(strains.get(bird.strain ?? '')?.inbreeding)
  function ofFounders(a: PlainChicks, b: PlainChicks): number {
    if (a.strain === null || a.strain !== b.strain) return 0
    const strain = share(strains.get(a.strain)?.kinship)
    const [flock, other] = [flockOf(a), flockOf(b)]
    return flock.name !== undefined && flock.name === other.name ? Math.max(strain, share(flock.kinship)) : strain
  }

  const completes = new Map<PlainChicks, number>()
  const known = {autosome: new Map<string, number>(), Z: new Map<string, number>()}
  type Place = keyof typeof known
  function kinship(a: PlainChicks | undefined, b: PlainChicks | undefined, place: Place): number {
    if (a === undefined || b === undefined) return 0
    const key = a.name < b.name ? `${a.name}\n${b.name}` : `${b.name}\n${a.name}`
    const before = known[place].get(key)
    if (before !== undefined) return before
    const found = work(a, b, place)
    known[place].set(key, found)
    return found
  }
  function work(a: PlainChicks, b: PlainChicks, place: Place): number {
    if (a === b) return itself(a, place)
    const [older, younger] = depth(a) <= depth(b) ? [a, b] : [b, a]
    if (isFounder(younger)) return isFounder(older) ? ofFounders(older, younger) : 0
    const sex = sexOf(younger)
    const [fromSire, fromDam] = place === 'autosome' || sex === 'male' ? [0.5, 0.5] : sex === 'female' ? [1, 0] : [0.75, 0.25]
    return younger.pairs.reduce((sum, {sire, dam, chance}) =>
      sum + chance * (fromSire * kinship(find(sire), older, place) + fromDam * kinship(find(dam), older, place)), 0)
  }
  function itself(bird: PlainChicks, place: Place): number {
    const two = (1 + inbreeding(bird, place)) / 2
    const sex = sexOf(bird)
    return place === 'autosome' || sex === 'male' ? two : sex === 'female' ? 1 : (1 + two) / 2
  }
  const each = (bird: PlainChicks, place: Place) => bird.pairs.map(({sire, dam}) => kinship(find(sire), find(dam), place))
  function inbreeding(bird: PlainChicks, place: Place): number {
    return isFounder(bird) ? strainF(bird) : each(bird, place).reduce((sum, f, index) => sum + f * (bird.pairs[index]?.chance ?? 0), 0)
  }
  function complete(bird: PlainChicks | undefined): number {
    if (bird === undefined) return 0
    const before = completes.get(bird)
    if (before !== undefined) return before
    const one = (name: string | null) => (find(name) === undefined ? 0 : 1 + complete(find(name)))
    const found = bird.pairs.reduce((sum, {sire, dam, chance}) => sum + chance * (one(sire) + one(dam)) / 2, 0)
    completes.set(bird, found)
    return found
  }

  return bird => {
    const all = isFounder(bird) ? [strainF(bird)] : each(bird, 'autosome')
    return {
      F: inbreeding(bird, 'autosome'), F_low: Math.min(...all), F_high: Math.max(...all), F_z: sexOf(bird) === 'male' ? inbreeding(bird, 'Z') : null,
      equivalent_generations: complete(bird),
    }
  }
}
