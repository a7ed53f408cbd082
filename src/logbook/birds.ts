/** Birds, each from all that is told of it. Descent, looks and weighings are filled in by later rooms. */
import {inside, type Spot} from '../records/problem.ts'
import type {Bench} from './bench.ts'
import type {Bird, Hatch, Observation, Strain} from './book.ts'
import {bandBook, type BandBook} from './band-book.ts'
import {birdIds} from './bird-ids.ts'
import type {Directory} from './directory.ts'
import {maybeItself} from './inspect/maybe-itself.ts'
import type {Keepers} from './keepers.ts'
import {flockOf, leavingOf, sexOf} from './life.ts'
import type {Open} from './open.ts'
import {FOUNDER} from './parentage.ts'
import type {Photographs} from './photographs.ts'
import {UNPLACED} from './steps.ts'
import {told, type Told} from './tellings.ts'
import {testedOf} from './tested.ts'
import type {Traits} from './traits.ts'
import {bandsInTurn, wearings, type Wearing} from './wearing.ts'

export interface Birds extends BandBook<Open<Bird>> {
  readonly tellings: ReadonlyMap<Bird, Told>
}

interface Rooms {
  readonly strains: Directory<Strain>
  readonly keepers: Keepers
  readonly traits: Traits
  readonly photographs: Photographs
  readonly hatches: Directory<Open<Hatch>>
}

export function linkBirds(groups: readonly Told[], rooms: Rooms, bench: Bench): Birds {
  const drafts = groups.map(tellings => {
    const outOf = told(tellings, 'out-of')?.value.hatch
    const hatch = tellings.find(telling => telling.hatch)?.hatch ?? (outOf ? rooms.hatches.find(outOf) : null)
    const hatched = told(tellings, 'hatched')?.value ?? hatch?.on ?? null
    return {tellings, hatch, hatched, left: leavingOf(told(tellings, 'left')?.value), worn: bandsInTurn(tellings)}
  })
  const ids = birdIds(drafts.map(({worn, hatched}) => ({firstBand: worn[0]?.band ?? '', hatched})))
  const tellings = new Map<Bird, Told>()
  const worn: (readonly Wearing[])[] = []
  const birds = drafts.map((draft, index): Open<Bird> => {
    const at = draft.tellings.at(-1)?.at ?? NOWHERE
    const body = draft.tellings.map(telling => telling.body.trim()).filter(words => words !== '').join('\n\n')
    const bird: Open<Bird> = {
      kind: 'bird', count: 1, at, body, id: ids[index] ?? '', band: draft.worn.at(-1)?.band ?? '',
      bands: draft.worn.map(({band, from, to, lost}) => ({band, from, to, lost})),
      hatch: draft.hatch, hatched: draft.hatched, left: draft.left, ...toldOf(draft.tellings, draft.hatch, rooms),
      tested: testedOf(draft.tellings, rooms.traits.loci, bench),
      parentage: FOUNDER, step: UNPLACED, shares: new Map(), looks: new Map(), outOf: null, maybe: [], kin: [], weighings: [],
    }
    tellings.set(bird, draft.tellings)
    worn.push(wearings(draft.worn, draft.hatched, draft.left))
    return bird
  })
  const book = bandBook(birds, worn, bench)
  for (const [bird, group] of tellings) linkSame(bird, group, book, bench)
  return {...book, tellings}
}

const NOWHERE: Spot = {file: '', path: []}

/** What the tellings say that needs no other bird. */
function toldOf(tellings: Told, hatch: Bird['hatch'], {strains, keepers, traits, photographs}: Rooms) {
  const strain = told(tellings, 'strain')
  const family = told(tellings, 'family')
  const kept = told(tellings, 'kept')
  const sexings = (told(tellings, 'sex')?.value ?? []).map(({is, on, because}) => ({is, on: on ?? null, because: because ?? null}))
  const flock = told(tellings, 'flock')
  return {
    strain: strain ? strains.find(strain.value) : null,
    sexings,
    sex: sexOf(sexings),
    stepWritten: told(tellings, 'step')?.value ?? null,
    keptAt: keptAtOf(tellings, hatch, keepers),
    kept: kept ? {on: kept.value.on, why: kept.value.words} : null,
    family: family?.value ?? null,
    mark: tellings.findLast(telling => telling.mark !== null)?.mark ?? null,
    flock: flock ? flockOf(flock.value) : hatch?.flock ?? null,
    observations: observationsOf(tellings, keepers, traits),
    photos: tellings.flatMap(({told: {photos}, at}) => photographs.of(photos, inside(at, 'photos'))),
    firstEgg: told(tellings, 'first-egg')?.value ?? null,
  }
}

/** Where it was kept; a chick of which nothing is said stays where it hatched. */
function keptAtOf(tellings: Told, hatch: Bird['hatch'], keepers: Keepers): Bird['keptAt'] {
  const stays = told(tellings, 'kept-at')
  if (stays) return stays.value.map(stay => ({keeper: keepers.find(stay.keeper), from: stay.from ?? null, to: stay.to ?? null}))
  const keeper = told(tellings, 'keeper')
  if (keeper) return [{keeper: keepers.find(keeper.value), from: null, to: null}]
  return hatch?.keeper ? [{keeper: hatch.keeper, from: hatch.on, to: null}] : []
}

/** Dated notes; what names a trait is a score, and stands with the looks. */
function observationsOf(tellings: Told, keepers: Keepers, traits: Traits): readonly Observation[] {
  const observations: Observation[] = []
  for (const {note, told: {observations: read}} of tellings) {
    if (note !== null) observations.push({on: null, by: null, notes: [['note', note]]})
    for (const {on, by, others} of read ?? []) {
      const keeper = by ? keepers.find(by) : null
      const notes = others.filter(({key}) => traits.get(key) === undefined).map(({key, value}): readonly [string, string] => [key, value])
      if (notes.length > 0) observations.push({on: on ?? null, by: keeper, notes})
    }
  }
  return observations
}

/** Birds that one may be; a bird it is the same as has been joined to it already. */
function linkSame(bird: Open<Bird>, tellings: Told, book: BandBook<Open<Bird>>, bench: Bench): void {
  for (const {told: {'same-as': same}} of tellings) if (same && !book.isWorn(same.text)) book.find(same)
  const maybe = new Set<Bird>()
  for (const ref of told(tellings, 'maybe')?.value ?? []) {
    const other = book.find(ref)
    if (other === bird) bench.note(maybeItself(bird.band, ref.at))
    else if (other) maybe.add(other)
  }
  bird.maybe = [...maybe]
}

