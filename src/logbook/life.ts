/** Small things of a bird's life, from the words they are read in: its leaving, its flock, its sex. */
import type {LeavingRead} from '../records/schema/parts.ts'
import type {Bird, Flock, Leaving, Sex} from './book.ts'

export function leavingOf(read: LeavingRead | undefined): Leaving | null {
  return read ? {on: read.on, how: read.how, why: read.why} : null
}

export const flockOf = (read: {readonly name: string; readonly kinship?: number | undefined}): Flock => ({name: read.name, kinship: read.kinship ?? 0})

/** The latest sexing holds; one without a day is taken in the order written, and makes none of an earlier day the latest. */
export function sexOf(sexings: Bird['sexings']): Sex {
  let sex: Sex = 'unknown', latest = -Infinity
  for (const {is, on} of sexings) {
    if (on && on.first < latest) continue
    sex = is
    latest = on?.first ?? latest
  }
  return sex
}
