import {inside, type Note, type Spot} from '../problem.ts'
import {parseNumber} from '../quantities.ts'
import {age, chance, count, date, reference, text, yesNo} from '../scalars.ts'
import {anything, listOf, object, oneOf, optional, required, scalar} from '../shape.ts'
import {SECTION_KINDS} from './draft.ts'
import {kind} from './kind.ts'
import {privateNotes} from './parts.ts'

/** What an association can ask for. */
export const REQUIREMENT_WORDS = [
  'years-bred', 'inter-se-generations', 'independent-keepers', 'breeders-alive', 'shown-per-class', 'shows-and-judges', 'show-result',
  'true-to-type', 'fixed', 'even-weight', 'written-standard', 'distinct', 'name-free', 'history', 'photographs', 'statements',
  'veterinary', 'welfare', 'inbreeding', 'identity', 'consecutive-shows', 'birds-per-show',
] as const

/** Kinds whose figure is a share of a whole; of every other it is a count, or points. */
const SHARE_KINDS: readonly (typeof REQUIREMENT_WORDS)[number][] = ['true-to-type', 'fixed', 'even-weight', 'welfare', 'inbreeding', 'identity']

/** `isShare`: written with a per cent sign. */
const amount = scalar('a number such as 5, or a share such as 95%', words => {
  const isShare = words.endsWith('%'), number = parseNumber(words.replace(/\s*%$/, ''))
  return number === null || number < 0 ? undefined : {value: isShare ? number / 100 : number, isShare, words}
})

/** A bare number over one is no share, and a share is no count: either would be held against figures that it was never meant for. */
function ofItsKind(asked: {readonly kind: (typeof REQUIREMENT_WORDS)[number]} & {readonly [key in 'at-least' | 'at-most']?: {readonly value: number; readonly isShare: boolean; readonly words: string}}, note: Note, at: Spot): void {
  for (const key of ['at-least', 'at-most'] as const) {
    const read = asked[key], place = inside(at, key)
    if (read === undefined) continue
    if (!SHARE_KINDS.includes(asked.kind)) {
      if (read.isShare || (asked.kind !== 'show-result' && !Number.isInteger(read.value))) note({code: 'unreadable-value', severity: 'error', at: place, reason: `“${read.words}” is no count, and ${asked.kind} counts`, remedy: 'write how many, such as 5'})
    } else if (read.value > 1) {
      const remedy = read.isShare ? 'write a share of at most 100%, such as 70% or 0.7' : read.value <= 100 ? `a share is asked: write ${read.words}%` : 'a share is asked: write it in per cent, such as 70%'
      note({code: 'unreadable-value', severity: 'error', at: place, reason: `“${read.words}” is more than the whole`, remedy})
    }
  }
}

const requirements = object('the requirements', {
  association: optional(text('a name'), 'Who asks.'),
  audience: optional(oneOf(['public', 'committee']), 'For whom the dossier is made. `public`, or nothing: it names who agreed to be named on the site. `committee`: a second one is written beside the site, which also names who agreed to that alone.'),
  requirements: required(listOf(object('a requirement', {
    kind: required(oneOf(REQUIREMENT_WORDS), 'What is asked about.'),
    title: required(text('a short title'), 'Its title.'),
    asked: required(text('a sentence'), 'What is asked, in the association’s words or yours.'),
    'at-least': optional(amount, 'The least that will do; for a kind that asks for a share with its per cent sign, such as 95%.'),
    'at-most': optional(amount, 'The most that will do; for a share with its per cent sign, such as 10%.'),
    males: optional(count, 'How many males.'),
    females: optional(count, 'How many females.'),
    seasons: optional(count, 'In how many of the last seasons.'),
    'in-a-row': optional(yesNo, 'For years bred: whether the seasons must follow one another without a gap.'),
    inside: optional(yesNo, 'For years bred: whether only hatches of matings inside the breed count, no crosses.'),
    'per-class': optional(count, 'How many in each class.'),
    judges: optional(count, 'How many judges.'),
    exhibitors: optional(count, 'How many different keepers must show, at one show.'),
    shows: optional(count, 'At how many shows.'),
    'inside-at-least': optional(chance, 'For even weights: the least share of birds inside the target and its tolerance.'),
    'rate-at-most': optional(chance, 'For inbreeding: the most it may rise in a generation.'),
    'size-at-least': optional(count, 'For inbreeding: the least effective size.'),
    'male-lines': optional(count, 'For inbreeding: how many lines of males.'),
    'judged-on': optional(oneOf(['estimate', 'cautious']), 'Whether the figure itself has to reach what is asked, or the end of its 95% interval that speaks against the breed.'),
    interval: optional(oneOf(['families', 'exact']), 'For kind `true-to-type`: whose lower limit has to reach the share. `families`: of the 95% interval by sire families; `exact`: of Clopper and Pearson’s. Without it the rate itself decides, or with `judged-on: cautious` the limit by sire families.'),
    trait: optional(reference('a trait'), 'The trait it is about.'),
    clauses: optional(listOf(reference('a clause')), 'The clauses of the standard it is about (section/clause).'),
    classes: optional(listOf(text('a class such as pullet')), 'The classes it is about: cock, cockerel, hen, pullet.'),
    ages: optional(listOf(oneOf(['young', 'grown'])), 'Young birds (in the year they hatched), grown ones, or both.'),
    varieties: optional(listOf(text('a variety')), 'The colour varieties it is about.'),
    sections: optional(listOf(oneOf(SECTION_KINDS)), 'For a written standard: the sections it must have.'),
    'to-age': optional(age, 'For welfare: the age to which chicks must live.'),
    grades: optional(listOf(text('a grade')), 'For show results: the judges’ grades, from the least.'),
    'least-grade': optional(text('a grade'), 'For show results: the least grade that will do.'),
    from: optional(date, 'Only what is of this day or later counts.'),
    by: optional(date, 'It must be reached by then.'),
    within: optional(age, 'How old evidence may be.'),
    stated: optional(text('a statement'), 'Your own statement, where only a person can say.'),
    waived: optional(object('a waiver', {
      because: required(text('a reason'), 'Why it was waived.'),
      by: optional(text('who waived it'), 'By whom.'),
      paper: optional(text('a file'), 'The paper that shows it.'),
      until: optional(date, 'Until when the waiver holds.'),
    }), 'Where it was waived.'),
  }, {check: ofItsKind})), 'What is asked, in order.'),
  papers: optional(listOf(object('a paper', {
    file: optional(text('a file'), 'The file, for yourself; it is never published.'),
    title: optional(text('a title'), 'What it is.'),
    on: required(date, 'Its date.'),
    until: optional(date, 'Until when it holds.'),
    proves: required(oneOf(REQUIREMENT_WORDS), 'What it proves.'),
    keeper: optional(reference('a keeper'), 'Whose statement it is.'),
    private: optional(anything, 'Whether it is private.'),
  }, {check: ({on, until}, note, at) => {
    if (until && until.last < on.first) note({code: 'impossible-date', severity: 'error', at: inside(at, 'until'), reason: `the paper of ${on.text} ends before it begins`, remedy: 'write the day until which it holds, or take until out'})
  }})), 'Papers that prove something, with their dates.'),
  distinctness: optional(listOf(object('a character', {
    character: required(text('a character such as Comb'), 'The character.'),
  }, {others: 'a breed with what it shows'})), 'The breed beside its neighbours, the new breed first.'),
  private: privateNotes,
})

export const requirementsKind = kind({
  id: 'requirements', files: 'requirements.md', title: 'What the association asks', shape: requirements,
  purpose: 'What the chosen association asks for. Read its own rules; these records are yours to edit.',
  example: `---
association: the national association
requirements:
  - {kind: years-bred, title: Years bred, asked: At least 5 years, at-least: 5}
  - {kind: true-to-type, title: True to type, asked: Half of all chicks reared, at-least: 50%}
papers:
  - {file: vet.pdf, title: Veterinary statement, on: 2024-08-12, until: 2025-08-12, proves: veterinary}
distinctness:
  - {character: Comb, Skerry Fowl: pea, Holm White: single}
---
`,
})
