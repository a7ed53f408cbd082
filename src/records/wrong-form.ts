/** Text, a list, or keys with values: what to say where one stands in the place of another. */
import type {Note, Spot} from './problem.ts'
import {isList, isMap, type Raw} from './raw.ts'

const formOf = (raw: Raw) => (isMap(raw) ? 'keys with values' : isList(raw) ? 'a list' : 'text')

/** Notes that a value has another form than its place takes, or that there is none. */
export function noteForm(raw: Raw, says: string, at: Spot, note: Note): undefined {
  if (raw === null) {
    const inList = 'path' in at && typeof at.path.at(-1) === 'number'
    note({
      code: 'no-value', severity: 'error', at,
      reason: inList ? 'an entry of the list is empty' : 'there is a key here, but no value',
      remedy: `write ${says}, or take the ${inList ? 'entry' : 'key'} out`,
    })
  } else {
    note({code: 'wrong-form', severity: 'error', at, reason: `${formOf(raw)} stands here; expected ${says}`, remedy: `write ${says}`})
  }
  return undefined
}
