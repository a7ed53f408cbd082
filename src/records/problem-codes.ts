/** Every code a problem can carry: a closed list. Each has an entry in the manual (`records/manual.ts` and the rules of `logbook/inspect/`). */

/** Found while reading one file by itself. */
export const READING_CODES = [
  'unreadable-file', 'no-front-matter', 'unreadable-front-matter', 'repeated-key', 'misplaced-record', 'unplaced-file',
  'unknown-key', 'missing-key', 'no-value', 'comma-in-braces', 'curly-quotes', 'wrong-form', 'unreadable-value', 'impossible-date', 'wrong-unit', 'wrong-sum',
  'unreadable-table', 'unknown-column', 'missing-column', 'unclosed-comment', 'trait-unfinished',
] as const

/** Found when the files are read together. */
export const LINKING_CODES = [
  'no-project', 'same-name',
  'unknown-strain', 'unknown-trait', 'unknown-keeper', 'unknown-band', 'unknown-pen', 'unknown-hatch', 'unknown-tally', 'unknown-judge', 'unknown-photo',
  'unknown-step', 'unknown-state', 'unknown-locus', 'unknown-allele', 'no-target', 'unit-mixed', 'misscoring-over-whole', 'misscoring-high', 'clause-unknown', 'allows-without-trait', 'clause-contradicts', 'target-outside-clause', 'tolerance-over', 'accepted-anyway', 'clause-twice', 'head-unread', 'varieties-alike', 'reason-without-change', 'section-missing', 'variety-unknown', 'variety-unfinished', 'class-weights-odd', 'drafts-out-of-order', 'asking-without-use', 'class-unknown', 'grade-unknown', 'paper-unknown', 'distinctness-odd', 'unknown-draft', 'heading-not-in-scale', 'too-many-points', 'draft-after-scoring',
  'unreadable-genotype', 'hen-on-autosome', 'locus-described-twice', 'locus-elsewhere', 'linkage-impossible', 'linkage-left-aside', 'rules-wanting', 'state-without-genotype', 'genotype-without-rule', 'rule-never-reached', 'lethal-left-out', 'lethal-joined', 'lethal-fixed', 'not-fixed',
  'tested-impossible', 'test-contradicted', 'true-for-contradicted', 'scorings-contradict',
  'file-misnamed', 'band-twice', 'band-in-doubt', 'no-origin', 'two-origins', 'records-disagree',
  'loop-in-descent', 'parent-too-young', 'parent-dead', 'wrong-parent-sex', 'not-in-pen', 'chances-do-not-sum', 'chances-wanting', 'none-at-keeper', 'maybe-itself',
  'kinship-too-high', 'kinship-contradicts', 'kinship-follows', 'step-contradicted',
  'hatch-before-pen', 'no-male-then', 'laid-after-set', 'incubation-odd', 'hatch-counts', 'too-many-chicks', 'tally-overdrawn',
  'left-before-hatched', 'seen-before-hatched', 'scored-after-leaving', 'scored-too-young', 'male-laid', 'in-two-pens', 'twice-in-pen', 'too-many-eggs', 'day-counted-twice', 'hens-not-there', 'unlikely-egg-weight', 'unlikely-feed', 'unlikely-weight', 'far-from-target', 'weighed-twice', 'scored-twice',
  'entered-twice', 'placings-contradict', 'class-of-other-age', 'draft-not-then', 'sheet-off-scale', 'heading-left-out', 'points-contradict', 'shown-though-cancelled',
  'consent-contradicts', 'class-of-other-sex', 'after-as-of', 'year-far-ahead', 'photo-without-words',
  'impossible-family', 'likely-wrong-parent',
] as const

export type ReadingCode = (typeof READING_CODES)[number]
export type ProblemCode = ReadingCode | (typeof LINKING_CODES)[number]
