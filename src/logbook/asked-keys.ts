/** Which keys of a requirement each kind reads. The one place for it: what is written and not read is told of, and a test follows the reading itself. */
import type {Requirement, RequirementKind} from './book.ts'

/** Every key that only some kinds read, by what it is called in the record. */
export const ASKED_KEYS = {
  'at-least': 'atLeast', 'at-most': 'atMost', males: 'males', females: 'females', seasons: 'seasons', 'in-a-row': 'inARow', inside: 'inside', 'per-class': 'perClass', judges: 'judges', exhibitors: 'exhibitors', shows: 'shows',
  'inside-at-least': 'insideAtLeast', 'rate-at-most': 'rateAtMost', 'size-at-least': 'sizeAtLeast', 'male-lines': 'maleLines', 'judged-on': 'judgedOn', interval: 'interval', trait: 'trait', clauses: 'clauses',
  classes: 'classes', ages: 'ages', varieties: 'varieties', sections: 'sections', 'to-age': 'toAge', grades: 'grades', 'least-grade': 'leastGrade', from: 'from', within: 'within', stated: 'stated',
} as const satisfies Readonly<Record<string, keyof Requirement>>

export type AskedKey = keyof typeof ASKED_KEYS

const DAYS = ['from', 'within'] as const
/** of which birds it is */
const BIRDS = ['classes', 'ages', 'varieties'] as const

/** `kind`, `title`, `asked`, `by` and `waived` are for every kind. */
export const KEYS_READ: Readonly<Record<RequirementKind, readonly AskedKey[]>> = {
  'years-bred': ['at-least', 'in-a-row', 'inside', ...DAYS],
  'inter-se-generations': ['at-least', ...BIRDS, ...DAYS],
  'independent-keepers': ['at-least', 'seasons', ...DAYS],
  'breeders-alive': ['males', 'females', 'at-least', ...BIRDS],
  'shown-per-class': ['per-class', 'at-least', 'shows', ...BIRDS, ...DAYS],
  'shows-and-judges': ['at-least', 'shows', 'judges', ...BIRDS, ...DAYS],
  'show-result': ['at-least', 'grades', 'least-grade', ...BIRDS, ...DAYS],
  'consecutive-shows': ['at-least', 'seasons', ...BIRDS, ...DAYS],
  'birds-per-show': ['at-least', 'exhibitors', 'shows', ...BIRDS, ...DAYS],
  'true-to-type': ['at-least', 'seasons', 'interval', 'judged-on', 'clauses', 'varieties', ...DAYS],
  'fixed': ['at-least', 'trait', 'clauses', ...BIRDS],
  'even-weight': ['at-most', 'at-least', 'inside-at-least', 'judged-on', 'trait', 'clauses', ...BIRDS, ...DAYS],
  'written-standard': ['sections', 'clauses'],
  'distinct': ['at-least'],
  'name-free': ['stated', ...DAYS],
  'history': ['at-least'],
  'photographs': ['males', 'females', 'at-least', 'ages', 'varieties', ...DAYS],
  'statements': ['at-least', ...DAYS],
  'veterinary': ['at-least', ...DAYS],
  'welfare': ['stated', 'at-least', 'to-age', 'seasons', 'clauses', 'judged-on', 'varieties', ...DAYS],
  'inbreeding': ['at-most', 'rate-at-most', 'size-at-least', 'male-lines', 'judged-on', ...BIRDS],
  'identity': ['at-least'],
}
