import type {SectionKind} from '../logbook/book.ts'

/** What a section of a standard is called in a sentence, whatever its heading. */
export const SECTION_WORDS: Readonly<Record<SectionKind, string>> = {
  origin: 'origin', classification: 'classification', utility: 'utility', impression: 'general impression', male: 'the male', female: 'the female', colour: 'colour', down: 'down of the chicks',
  weights: 'weights', rings: 'ring sizes', egg: 'the egg', temperament: 'temperament', faults: 'faults', 'minor-faults': 'minor faults', 'serious-faults': 'serious faults', disqualifications: 'disqualifications',
  points: 'scale of points',
}
