/** Which birds were reared alike: those of one machine or broody, one day and one keeper. Two keepers may both call a machine `incubator`. */
import {isWhole} from '../records/dates.ts'
import type {Hatch} from './book.ts'

/** The name of a hatch's rearing class; a hatch that shares none with others is one by itself. Holds nothing of a keeper but the public id. */
export function rearingOf({id, machine, broody, on, set, keeper}: Pick<Hatch, 'id' | 'machine' | 'broody' | 'on' | 'set' | 'keeper'>): string {
  const day = on && isWhole(on) ? `hatched ${on.text}` : set && isWhole(set) ? `set ${set.text}` : null
  const under = machine ?? (broody && `broody ${broody.id}`)
  if (day === null || under === null) return id
  return [...(keeper ? [keeper.id] : []), under, day].join(', ')
}
