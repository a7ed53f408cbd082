/** Things by the names that records call them by. A name that nothing bears is a slip with the nearest names and the files they stand in. */
import {near} from '../records/near.ts'
import type {Note, Slip, Spot} from '../records/problem.ts'
import type {Ref} from '../records/scalars.ts'

export interface Directory<T> {
  get(name: string): T | undefined
  /** the thing a reference names; null, and a slip, when there is none */
  find(ref: Ref): T | null
  readonly names: readonly string[]
}

export interface Named<T> {
  readonly name: string
  readonly thing: T
  readonly at: Spot
}

/** The nearest names with the files they stand in: `22-017 (birds/22-017.md)`. */
export function nearPlaces(word: string, places: ReadonlyMap<string, Spot>): string[] {
  return near(word, places.keys()).map(name => {
    const at = places.get(name)
    return at ? `${name} (${at.file})` : name
  })
}

/** So many further places of a missing name are listed. */
const LISTED = 5

/**
 * A name that nothing bears is said once, however many places give it.
 *
 * @param missing the slip for a name that nothing bears
 * @param excused names that a file at fault would have given: they are not missed a second time
 */
export function directory<T>(
  named: readonly Named<T>[], missing: (ref: Ref, near: readonly string[]) => Slip, excused: (name: string) => boolean, note: Note,
): Directory<T> {
  const things = new Map<string, T>()
  const places = new Map<string, Spot>()
  for (const {name, thing, at} of named) {
    if (things.has(name)) continue
    things.set(name, thing)
    places.set(name, at)
  }
  /** The further places of each missing name: the slip that names the first has the list, which grows as linking goes on. */
  const further = new Map<string, {at: Spot; note: string}[]>()
  function noteMissing(ref: Ref): void {
    const also = further.get(ref.text)
    if (also === undefined) {
      const related: {at: Spot; note: string}[] = []
      further.set(ref.text, related)
      note({...missing(ref, nearPlaces(ref.text, places)), related})
    } else if (also.length < LISTED && !also.some(({at}) => at === ref.at)) also.push({at: ref.at, note: 'also at'})
  }
  return {
    names: [...things.keys()],
    get: name => things.get(name),
    find(ref) {
      const thing = things.get(ref.text)
      if (thing !== undefined) return thing
      if (!excused(ref.text)) noteMissing(ref)
      return null
    },
  }
}
