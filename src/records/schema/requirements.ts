import {parseNumber} from '../quantities.ts'
import {count, date, reference, text} from '../scalars.ts'
import {anything, listOf, object, oneOf, optional, required, scalar} from '../shape.ts'
import {kind} from './kind.ts'
import {privateNotes} from './parts.ts'

/** What an association can ask for. */
export const REQUIREMENT_WORDS = [
  'years-bred', 'inter-se-generations', 'independent-keepers', 'breeders-alive', 'shown-per-class', 'shows-and-judges', 'show-result',
  'true-to-type', 'fixed', 'even-weight', 'written-standard', 'distinct', 'name-free', 'history', 'photographs', 'statements',
  'veterinary', 'welfare', 'inbreeding', 'identity', 'consecutive-shows',
] as const

const amount = scalar('a number such as 5, or a share such as 95%', words => {
  const number = parseNumber(words.replace(/\s*%$/, ''))
  return number === null ? undefined : words.endsWith('%') ? number / 100 : number
})

const requirements = object('the requirements', {
  association: optional(text('a name'), 'Who asks.'),
  audience: optional(oneOf(['public', 'committee']), 'For whom the dossier is made. `public`, or nothing: it names who agreed to be named on the site. `committee`: a second one is written beside the site, which also names who agreed to that alone.'),
  requirements: required(listOf(object('a requirement', {
    kind: required(oneOf(REQUIREMENT_WORDS), 'What is asked about.'),
    title: required(text('a short title'), 'Its title.'),
    asked: required(text('a sentence'), 'What is asked, in the association’s words or yours.'),
    'at-least': optional(amount, 'The least that will do.'),
    'at-most': optional(amount, 'The most that will do.'),
    males: optional(count, 'How many males.'),
    females: optional(count, 'How many females.'),
    seasons: optional(count, 'In how many of the last seasons.'),
    'per-class': optional(count, 'How many in each class.'),
    judges: optional(count, 'How many judges.'),
    interval: optional(oneOf(['families', 'exact']), 'For kind `true-to-type`: whose lower limit has to reach the share. `families`: of the 95% interval by sire families; `exact`: of Clopper and Pearson’s. Without it the rate itself decides.'),
    trait: optional(reference('a trait'), 'The trait it is about.'),
    stated: optional(text('a statement'), 'Your own statement, where only a person can say.'),
    waived: optional(object('a waiver', {
      because: required(text('a reason'), 'Why it was waived.'),
      by: optional(text('who waived it'), 'By whom.'),
      paper: optional(text('a file'), 'The paper that shows it.'),
    }), 'Where it was waived.'),
  })), 'What is asked, in order.'),
  papers: optional(listOf(object('a paper', {
    file: optional(text('a file'), 'The file, for yourself; it is never published.'),
    title: optional(text('a title'), 'What it is.'),
    on: required(date, 'Its date.'),
    until: optional(date, 'Until when it holds.'),
    proves: required(oneOf(REQUIREMENT_WORDS), 'What it proves.'),
    private: optional(anything, 'Whether it is private.'),
  })), 'Papers that prove something, with their dates.'),
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
