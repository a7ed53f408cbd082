import type {Bird, Requirement} from '../logbook/book.ts'
import {isAbout} from './asked-about.ts'
import {behind, type Behind} from './evidence-found.ts'
import type {Sources} from './evidence-shown.ts'

/** The living breeders of the breed that a requirement is about, by its classes, ages and varieties; and those of which the records do not tell it. */
export interface BreedersAsked {
  readonly birds: readonly Bird[]
  readonly untold: readonly Bird[]
  /** all of the breed's own: the requirement names no class, age or variety */
  readonly all: boolean
  readonly behind: Behind
}

export function breedersAsked(asked: Requirement, {census: {ownBreeders}, book}: Pick<Sources, 'census' | 'book'>): BreedersAsked {
  const each = ownBreeders.map(bird => ({bird, is: isAbout(asked, bird, book.asOf, book)})), birds = each.filter(({is}) => is === true).map(({bird}) => bird)
  return {birds, untold: each.filter(({is}) => is === null).map(({bird}) => bird), all: birds.length === ownBreeders.length, behind: behind(birds, birds)}
}
