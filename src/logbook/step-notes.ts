/** The keeper's own words on steps, by the step's label. */
import type {Records} from '../records/records.ts'
import type {Written} from './book.ts'
import {meantLabel} from './step-names.ts'

export function linkStepNotes(records: Records): ReadonlyMap<string, Written> {
  const ownNames = records.step.flatMap(({id, data}) => (data.joins ? [data.name ?? id] : []))
  return new Map(records.step.map(({id, data, body, at}) => [meantLabel(data.name ?? id, ownNames), {at, body}]))
}
