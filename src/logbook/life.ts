/** Small things of a bird's life, from the words they are read in: its leaving, its flock, its sex. */
import type {LeavingRead} from '../records/schema/parts.ts'
import type {Bird, Flock, Leaving, Sex} from './book.ts'

export function leavingOf(read: LeavingRead | undefined): Leaving | null {
  return read ? {on: read.on, how: read.how, why: read.why} : null
}

export const flockOf = (read: {readonly name: string; readonly kinship?: number | undefined}): Flock => ({name: read.name, kinship: read.kinship ?? 0})

/** The latest sexing holds; one without a day is taken in the order written. */
export function sexOf(sexings: Bird['sexings']): Sex {
  let latest: Bird['sexings'][number] | undefined
  for (const sexing of sexings) {
    if (!latest || !sexing.on || !latest.on || sexing.on.first >= latest.on.first) latest = sexing
  }
  return latest?.is ?? 'unknown'
}
