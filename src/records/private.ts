/** The key under which a keeper's own matters stand. */
import {near, orNear} from './near.ts'
import {keyOf, type Note, type Spot} from './problem.ts'

/** The key that every object and map takes, in any form: what stands under it goes no further. */
export const PRIVATE = 'private'

/** Is a key meant for `private`: `Private`, `privat`, `private-note`? Nothing under it may be taken for words to publish. */
export const meansPrivate = (key: string): boolean =>
  [key, ...key.split(/[^\p{L}]+/u)].some(word => near(word, [PRIVATE]).length > 0) || key.toLowerCase().startsWith(PRIVATE)

/** @param says  what it is that takes no such key */
export function noteMeantPrivate(key: string, says: string, at: Spot, note: Note): void {
  note({code: 'unknown-key', severity: 'error', at: keyOf(at, key), reason: `${says} has no key “${key}”`, remedy: orNear([PRIVATE], '')})
}
