/**
 * The manners a standard can be set in: in which order the sections stand, what each is called, which are needed, and in which units its weights are given.
 * Orders, names and what is needed are common practice, no source: an association's own book goes first, and a draft without a manner stands as it was written.
 */
import type {Manner, SectionKind} from './book.ts'

export interface PartOfManner {
  readonly kind: SectionKind
  /** the heading it is printed under */
  readonly name: string
  /** a standard without it is not whole */
  readonly needed: boolean
}

/** `kg`: that alone; else which of the two stands first. `lb` with quarters of a pound, where it comes out in quarters. */
export type WeightsShown = 'kg' | 'kg-then-lb' | 'lb-then-kg'

export interface MannerOfStandard {
  /** every kind there is, once */
  readonly parts: readonly PartOfManner[]
  readonly weights: WeightsShown
}

/** As it is said: `the North American manner`. */
export const MANNER_WORDS: Readonly<Record<Manner, string>> = {continental: 'continental', commonwealth: 'Commonwealth', 'north-american': 'North American'}

const needed = (kind: SectionKind, name: string): PartOfManner => ({kind, name, needed: true})
const may = (kind: SectionKind, name: string): PartOfManner => ({kind, name, needed: false})

export const MANNERS_OF_STANDARD: Readonly<Record<Manner, MannerOfStandard>> = {
  continental: {
    weights: 'kg',
    parts: [
      needed('origin', 'Origin'), may('classification', 'Classification'), needed('impression', 'General impression'), needed('male', 'Male'), needed('female', 'Female'),
      may('temperament', 'Temperament'), may('utility', 'Utility'), may('faults', 'Faults'), may('minor-faults', 'Slight faults'), needed('serious-faults', 'Serious faults'),
      may('disqualifications', 'Disqualifications'), needed('weights', 'Weights'), needed('egg', 'Egg for hatching'), needed('rings', 'Ring sizes'), needed('colour', 'Colour varieties'),
      may('down', 'Down of the chicks'), may('points', 'Scale of points'),
    ],
  },
  commonwealth: {
    weights: 'kg-then-lb',
    parts: [
      needed('origin', 'Origin'), needed('classification', 'Classification'), may('utility', 'Utility'), may('impression', 'General impression'),
      needed('male', 'General characteristics, male'), needed('female', 'General characteristics, female'), may('temperament', 'Temperament'), needed('colour', 'Colour'), may('down', 'Day-old down'),
      needed('weights', 'Weights'), may('rings', 'Ring sizes'), may('egg', 'Egg'), needed('points', 'Scale of points'), may('faults', 'Faults'), may('minor-faults', 'Minor defects'),
      needed('serious-faults', 'Serious defects'), needed('disqualifications', 'Disqualifications'),
    ],
  },
  'north-american': {
    weights: 'lb-then-kg',
    parts: [
      needed('origin', 'Origin'), may('classification', 'Classification'), needed('utility', 'Economic qualities'), may('temperament', 'Temperament'), may('faults', 'Faults'), may('minor-faults', 'Minor defects'),
      may('serious-faults', 'Defects'), needed('disqualifications', 'Disqualifications'), needed('weights', 'Weights'), may('rings', 'Band sizes'), may('egg', 'Egg'), may('impression', 'General impression'),
      needed('male', 'Shape of male'), needed('female', 'Shape of female'), needed('colour', 'Colour of male and female'), may('down', 'Down of the chicks'), may('points', 'Scale of points'),
    ],
  },
}

/** What a standard needs in whatever manner: the core. Common practice, no source. */
const CORE: readonly SectionKind[] = ['male', 'female', 'colour', 'weights', 'points', 'faults']

/** What a standard in this manner must have; without a manner, the core. */
export const neededIn = (manner: Manner | null): readonly SectionKind[] =>
  (manner === null ? CORE : MANNERS_OF_STANDARD[manner].parts.filter(part => part.needed).map(({kind}) => kind))
