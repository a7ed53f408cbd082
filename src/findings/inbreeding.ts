import type {Bird} from '../logbook/book.ts'
import {coancestry, type Coancestry, type Inbreeding} from '../pedigree/coancestry.ts'
import {completeness, type Completeness} from '../pedigree/completeness.ts'
import type {Animal} from '../pedigree/pedigree.ts'
import type {PedigreeOfBook} from './pedigree-of-book.ts'

/** How closely bred a bird is, and how much of its descent that is known from. */
export interface InbreedingOfBird extends Completeness {
  readonly f: Inbreeding
  /** on the Z: cocks only, for a hen has one */
  readonly onZ: Inbreeding | null
  /** a grandparent, or more, is not in the book: F is at least this */
  readonly atLeast: boolean
  /** what it may be of: pairs, or birds that it was found to be perhaps; and how many of them are as likely as the likeliest */
  readonly possible: {readonly as: 'pairs' | 'birds'; readonly all: number; readonly likeliest: number}
}

export interface Kinship {
  of(bird: Bird): InbreedingOfBird
  /** of two birds; what the F of their chicks would be */
  between(a: Bird, b: Bird): number
  /** a parent of either is not in the book, or may not be: F of their chicks is at least what is worked */
  atLeast(a: Bird, b: Bird): boolean
  readonly autosome: Coancestry
  readonly z: Coancestry
  /** as if every strain's founders were unrelated and not inbred: what the project's own matings have added; the same as `autosome` where no strain states anything */
  readonly since: Coancestry
}

/**
 * F of every bird, kinship of any two. What each is stands at `coancestry`.
 *
 * @see Wright 1922, Am. Nat. 56:330 for F; Maignel et al. 1996, Interbull Bull. 14:49, for equivalent complete generations (from memory)
 */
export function kinshipOfBook({pedigree, numberOf}: PedigreeOfBook): Kinship {
  const autosome = coancestry(pedigree), z = coancestry(pedigree, 'Z')
  const fresh = pedigree.bases.map(base => ({...base, inbreeding: 0, kinship: 0}))
  const since = pedigree.kin.length === 0 && pedigree.bases.every(({inbreeding, kinship}) => inbreeding === 0 && kinship === 0)
    ? autosome : coancestry({...pedigree, bases: fresh, kin: []})
  const known = completeness(pedigree)
  return {
    autosome, z, since,
    of(bird) {
      const number = numberOf(bird)
      const f = autosome.inbreeding[number], complete = known[number]
      if (!f || !complete) throw new Error(`${bird.id} was not worked`)
      return {f, onZ: bird.sex === 'male' ? z.inbreeding[number] ?? null : null, ...complete, atLeast: complete.full < 2, possible: possible(pedigree.animals[number])}
    },
    between: (a, b) => autosome.between(numberOf(a), numberOf(b)),
    atLeast: (a, b) => [a, b].some(bird => (known[numberOf(bird)]?.full ?? 0) < 1),
  }
}

function possible({matings = [], oneOf}: Partial<Animal> = {}): InbreedingOfBird['possible'] {
  const each = oneOf ?? matings, most = Math.max(...each.map(({chance}) => chance))
  return {as: oneOf ? 'birds' : 'pairs', all: each.length, likeliest: each.filter(({chance}) => chance > most - 1e-9).length}
}
