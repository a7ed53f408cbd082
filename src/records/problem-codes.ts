/** Every code a problem can carry: a closed list. Each has an entry in the manual (`records/manual.ts` and the rules of `logbook/inspect/`). */

/** Found while reading one file by itself. */
export const READING_CODES = [
  'unreadable-file', 'no-front-matter', 'unreadable-front-matter', 'repeated-key', 'unplaced-file',
  'unknown-key', 'missing-key', 'no-value', 'comma-in-braces', 'wrong-form', 'unreadable-value', 'impossible-date', 'wrong-unit', 'wrong-sum',
  'unreadable-table', 'unknown-column', 'missing-column', 'unclosed-comment', 'trait-unfinished',
] as const

/** Found when the files are read together. */
export const LINKING_CODES = [
  'no-project', 'same-name', 'unknown-strain', 'unknown-trait', 'unknown-keeper', 'unknown-band', 'unknown-pen', 'unknown-hatch', 'unknown-tally', 'unknown-judge', 'unknown-photo', 'no-target', 'unknown-locus',
  'band-twice', 'band-in-doubt', 'no-origin', 'two-origins', 'records-disagree',
  'parent-too-young', 'parent-dead', 'wrong-parent-sex', 'hatch-before-pen', 'hatch-counts', 'too-many-chicks', 'tally-overdrawn',
  'after-as-of', 'loop-in-descent', 'unknown-state', 'unit-mixed', 'step-contradicted', 'chances-do-not-sum',
  'left-before-hatched', 'scored-after-leaving', 'male-laid', 'incubation-odd', 'unlikely-weight', 'in-two-pens', 'too-many-eggs',
  'unknown-step', 'clause-unknown', 'photo-without-words',
] as const

export type ReadingCode = (typeof READING_CODES)[number]
export type ProblemCode = ReadingCode | (typeof LINKING_CODES)[number]
