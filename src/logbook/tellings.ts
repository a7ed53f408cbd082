/**
 * Which records speak of one bird: its line in a hatch, a file of its own, and whatever `same-as` says is the same bird.
 * Nothing is read out of them here; they are only put together.
 */
import {yearOf} from '../records/dates.ts'
import type {Spot} from '../records/problem.ts'
import type {Others} from '../records/shape.ts'
import type {Ref} from '../records/scalars.ts'
import type {BirdRecord} from '../records/schema/bird.ts'
import type {Bench} from './bench.ts'
import type {Hatch} from './book.ts'
import {bandInDoubt} from './inspect/band-in-doubt.ts'
import type {Hatches} from './hatch-shells.ts'
import type {Open} from './open.ts'

/** One place that tells of a bird. */
export interface Telling {
  /** a line in a hatch; else a file of its own */
  readonly row: boolean
  readonly band: Ref
  readonly told: Omit<BirdRecord, 'others' | 'at'>
  readonly others: Others
  readonly note: string | null
  readonly mark: string | null
  readonly hatch: Open<Hatch> | null
  readonly body: string
  readonly at: Spot
}

/** All that is told of one bird: lines of hatches first, then files; what stands later goes before what stands earlier. */
export type Told = Telling[]

type Key = keyof Telling['told']

/** What is told of a bird under a key, and by which telling. */
export function told<K extends Key>(tellings: readonly Telling[], key: K): {readonly value: NonNullable<Telling['told'][K]>; readonly by: Telling} | null {
  for (let index = tellings.length - 1; index >= 0; index--) {
    const by = tellings[index]
    const value = by?.told[key]
    if (by && value !== undefined && value !== null) return {value: value as NonNullable<Telling['told'][K]>, by}
  }
  return null
}

/** Every band a telling gives its bird. */
export const bandsTold = (telling: Telling): readonly string[] =>
  telling.told.bands === undefined ? [telling.band.text] : [telling.band.text, ...telling.told.bands.map(worn => worn.band.text)]

export function gatherTellings(bench: Bench, hatches: Hatches): readonly Told[] {
  const birds: Told[] = []
  const byBand = new Map<string, Told[]>()
  const index = (bird: Told, telling: Telling) => {
    for (const band of new Set(bandsTold(telling))) {
      const wearers = byBand.get(band)
      if (!wearers) byBand.set(band, [bird])
      else if (!wearers.includes(bird)) wearers.push(bird)
    }
  }
  for (const {data, id} of bench.records.hatch) {
    const hatch = hatches.get(id) ?? null
    for (const chick of data.chicks ?? []) {
      const telling: Telling = {row: true, band: chick.band, told: chick, others: chick.others, note: chick.note ?? null, mark: chick.mark ?? null, hatch, body: '', at: chick.at}
      const bird = [telling]
      birds.push(bird)
      index(bird, telling)
    }
  }
  for (const {data, body, at} of bench.records.bird) {
    const telling: Telling = {row: false, band: data.band, told: data, others: data.others, note: null, mark: null, hatch: null, body, at}
    const bird = rowFor(telling, byBand, bench) ?? []
    if (bird.length === 0) birds.push(bird)
    bird.push(telling)
    index(bird, telling)
  }
  return joinSame(birds, byBand, bench)
}

/** The line of a hatch that a file extends: one that shares a band, has no file yet and was not hatched in another year. */
function rowFor(file: Telling, byBand: ReadonlyMap<string, Told[]>, bench: Bench): Told | null {
  const sharing = [...new Set(bandsTold(file).flatMap(band => byBand.get(band) ?? []))]
  const open = sharing.filter(bird => bird.every(telling => telling.row) && mayBeOneHatch(file, bird))
  const [first, second] = open
  if (!first || !second) return first ?? null
  const same = open.filter(bird => bird.some(telling => telling.band.text === file.band.text))
  const [one, another] = same
  if (one && !another) return one
  bench.note(bandInDoubt(file.band, open.map(bird => ({name: nameOf(bird), at: bird[0]?.at ?? file.at}))))
  return one ?? first
}

/** `24-031 of hatch 2024-03` */
function nameOf(bird: Told): string {
  const [first] = bird
  if (!first) return ''
  return first.hatch ? `${first.band.text} of hatch ${first.hatch.id}` : first.band.text
}

function mayBeOneHatch(file: Telling, bird: Told): boolean {
  const own = file.told.hatched
  const on = bird[0]?.hatch?.on
  if (!own || !on) return true
  return yearOf(own.first) <= yearOf(on.last) && yearOf(own.last) >= yearOf(on.first)
}

/** That a bird is the one which wears a band. */
interface Link {
  readonly bird: Told
  readonly ref: Ref
}

/**
 * `same-as` makes birds one, however long the chain and in whatever order it is written. A band worn by several birds is no doubt once these have
 * proved to be one, so a link that cannot be followed yet is tried again after the others.
 */
function joinSame(birds: readonly Told[], byBand: ReadonlyMap<string, readonly Told[]>, bench: Bench): readonly Told[] {
  const open = birds.flatMap(bird => bird.flatMap(({told: {'same-as': ref}}): Link[] => (ref ? [{bird, ref}] : [])))
  if (open.length === 0) return birds
  const groups = new Map<Told, Told[]>(birds.map(bird => [bird, [bird]]))
  const groupOf = (bird: Told): Told[] => groups.get(bird) ?? [bird]
  /** one bird of each group, other than the link's own, that wears the band */
  const othersOf = ({bird, ref}: Link): readonly Told[] => [...new Map((byBand.get(ref.text) ?? []).map(each => [groupOf(each), each])).values()].filter(each => groupOf(each) !== groupOf(bird))
  const namesOf = new Map<Told, Told[]>()
  let doubtful: readonly Link[] = open
  for (let before = Infinity; doubtful.length < before;) {
    before = doubtful.length
    doubtful = doubtful.filter(link => {
      const [other, second] = othersOf(link)
      if (!other || second) return second !== undefined
      namesOf.set(link.bird, [...namesOf.get(link.bird) ?? [], other])
      const joined = [...groupOf(other), ...groupOf(link.bird)]
      for (const each of joined) groups.set(each, joined)
      return false
    })
  }
  for (const link of doubtful) bench.note(bandInDoubt(link.ref, othersOf(link).map(each => ({name: nameOf(each), at: each[0]?.at ?? link.ref.at}))))
  return [...new Set(groups.values())].map(group => (group.length === 1 ? group[0] ?? [] : asOne(group, birds, namesOf)))
}

/** The tellings of birds that are one: of a bird that is named before those of the one that names it. */
function asOne(group: readonly Told[], birds: readonly Told[], namesOf: ReadonlyMap<Told, readonly Told[]>): Told {
  const inOrder = new Set<Told>(), seen = new Set<Told>()
  const see = (bird: Told): void => {
    if (seen.has(bird)) return
    seen.add(bird)
    namesOf.get(bird)?.forEach(see)
    inOrder.add(bird)
  }
  birds.filter(bird => group.includes(bird)).forEach(see)
  return [...inOrder].flat().sort((a, b) => Number(b.row) - Number(a.row))
}
