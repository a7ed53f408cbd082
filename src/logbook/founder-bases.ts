/** The populations that founders were drawn from, as descent sees them: strains, and bought flocks within them. */
import type {Base} from '../pedigree/pedigree.ts'
import type {Bird, Strain} from './book.ts'
import {mostKinship} from './inspect/kinship-too-high.ts'

export interface FounderBases {
  readonly bases: readonly Base[]
  ofStrain(strain: Strain): number
  /** of a founder; null where neither strain nor flock is known */
  ofFounder(bird: Bird): number | null
}

/** Birds of one flock are kin as any of them says, the most where several do; or as their strain is, where that is more. */
export function founderBases(strains: readonly Strain[], birds: readonly Bird[]): FounderBases {
  const places = new Map(strains.map((strain, index) => [strain, index] as const))
  const ofStrain = (strain: Strain): number => {
    const found = places.get(strain)
    if (found === undefined) throw new Error(`${strain.id} is not in the book`)
    return found
  }
  const flocks = new Map<string, {readonly place: number; readonly base: Base}>()
  for (const bird of birds) {
    const key = flockOf(bird)
    if (key === null) continue
    const {strain, flock} = bird
    const before = flocks.get(key)
    const stated = Math.min(flock?.kinship ?? 0, mostKinship(strain?.inbreeding ?? 0))
    const kinship = Math.max(stated, strain?.kinship ?? 0, before?.base.kinship ?? 0)
    flocks.set(key, {place: before?.place ?? strains.length + flocks.size, base: {inbreeding: strain?.inbreeding ?? 0, kinship, within: strain && ofStrain(strain)}})
  }
  return {
    bases: [...strains.map(({inbreeding, kinship}): Base => ({inbreeding, kinship, within: null})), ...[...flocks.values()].map(({base}) => base)],
    ofStrain,
    ofFounder(bird) {
      const key = flockOf(bird)
      return (key === null ? null : flocks.get(key)?.place ?? null) ?? (bird.strain && ofStrain(bird.strain))
    },
  }
}

/** A flock is known by its name, within a strain; only founders are of one. */
const flockOf = ({strain, flock, parentage}: Bird): string | null => (flock === null || parentage.kind !== 'founder' ? null : `${strain?.id ?? ''}\n${flock.name}`)
