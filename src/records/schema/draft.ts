import {inUnit, type Quantity} from '../quantities.ts'
import {count, date, quantity, reference, text, year, yesNo} from '../scalars.ts'
import {byForm, mapOf, object, oneOf, optional, refuse, required, scalar, turned} from '../shape.ts'
import {inside} from '../problem.ts'
import {kind} from './kind.ts'
import {photos, privateNotes} from './parts.ts'
import {wish} from './trait.ts'

/** In whose manner a standard is set: the order and the names of its sections, and the units that stand first. */
export const MANNERS = ['continental', 'commonwealth', 'north-american'] as const

/** What a section of a standard can be about, whatever its heading. */
export const SECTION_KINDS = [
  'origin', 'classification', 'utility', 'impression', 'male', 'female', 'colour', 'down', 'weights', 'rings', 'egg', 'temperament', 'faults', 'minor-faults', 'serious-faults',
  'disqualifications', 'points',
] as const

export const SEVERITIES = ['minor', 'serious', 'disqualifying'] as const

const mass = quantity('mass', '2.5 kg')

/** `2.5 kg`, or `2.3 to 2.7 kg`. */
const weight = scalar<{readonly low: Quantity; readonly high: Quantity}>('a weight such as 2.5 kg, or 2.3 to 2.7 kg', (words, at) => {
  const [low = '', high, ...more] = words.trim().split(/\s+(?:to)\s+|\s*–\s*/)
  if (more.length > 0) return undefined
  const unit = /[a-z]+\s*$/.exec(words)?.[0] ?? ''
  let refused: ReturnType<typeof refuse> | null = null
  const read = (amount: string) => mass.read(/[a-z]\s*$/.test(amount) ? amount : `${amount} ${unit}`.trim(), at, ({code, reason, remedy}) => { refused = refuse(code, reason, remedy) })
  const from = read(low), to = high === undefined ? from : read(high)
  if (from === undefined || to === undefined) return refused ?? undefined
  return (inUnit(from, 'g') ?? 0) <= (inUnit(to, 'g') ?? 0) ? {low: from, high: to} : refuse('unreadable-value', `“${words}” does not rise`, 'put the lighter weight first, such as 2.3 to 2.7 kg')
})

const clause = object('a clause', {
  trait: optional(reference('a trait'), 'The trait that shows whether a bird meets it.'),
  allows: optional(wish, 'What it allows of that trait, written as a trait’s target is; else that target.'),
  mandatory: optional(yesNo, 'Whether a bird must meet it to be of the breed; else it is desirable.'),
  'if-missed': optional(oneOf(SEVERITIES), 'What it is to miss it.'),
  sex: optional(oneOf(['male', 'female', 'both']), 'Of which sex it speaks, where its section or name does not tell. Where the section on the female leads in with “As the male”, his clauses speak of both, but for those she has her own of.'),
  variety: optional(text('a variety'), 'Of which colour variety it speaks, where no heading tells.'),
  accepted: optional(object('what is still accepted', {
    what: required(text('a few words'), 'What may still be shown.'),
    looks: optional(wish, 'The looks, marks or amounts that may still be shown.'),
    until: required(year, 'The last season in which it is.'),
    then: optional(oneOf(SEVERITIES), 'What it is afterwards.'),
  }), 'What is accepted for some seasons yet, though the clause asks for other things.'),
})

const draft = object('a draft of the standard', {
  draft: required(count, 'Its number.'),
  on: required(date, 'Its date.'),
  title: optional(text('a title'), 'The title; else the breed’s name.'),
  classification: optional(text('such as heavy, soft feather'), 'How the breed is classed.'),
  origin: optional(text('a sentence'), 'Origin and purpose in a sentence.'),
  manner: optional(oneOf(MANNERS), 'In whose manner it is printed: which sections stand in which order and under which names, which units first. Without it sections stand as you wrote them.'),
  sections: optional(mapOf('sections with what they are about', oneOf(SECTION_KINDS)), 'What a section is about, where its heading does not tell, by its id (general-shape: male).'),
  varieties: optional(mapOf('colour varieties with the looks that tell them', mapOf('traits with looks', reference('a look'))), 'The colour varieties, each with the looks of traits by which a bird is known to be of it.'),
  egg: optional(byForm({
    text: turned(text('such as tinted, 55 g or more'), words => ({words, least: undefined as Quantity | undefined})),
    map: turned(object('the egg', {
      shell: required(text('a colour'), 'The colour of its shell.'),
      'at-least': optional(quantity('mass', '55 g'), 'The least weight of an egg for hatching.'),
    }), egg => ({words: egg.shell, least: egg['at-least']})),
  }), 'The egg: in words, or its shell and least weight.'),
  rings: optional(object('ring sizes', {
    male: optional(text('such as 20 mm'), 'For males.'),
    female: optional(text('such as 18 mm'), 'For females.'),
  }), 'Ring sizes.'),
  weights: optional(mapOf('classes with their weights', weight), 'Weights by class: cock, cockerel, hen, pullet; one, or from one to another.'),
  scale: optional(mapOf('headings with their points', count), 'The scale of points; the points make 100.'),
  clauses: optional(mapOf('clauses with what is more to say of them', clause), 'More about clauses, by their ids (section/clause; weights/cock and egg too).'),
  reasons: optional(mapOf('clauses with why they were changed', text('a reason')), 'Why clauses were changed since the draft before.'),
  photos,
  private: privateNotes,
}, {
  check(value, note, at) {
    // what differs in capitals and signs alone has one id
    for (const table of ['weights', 'scale'] as const) {
      const first = new Map<string, string>()
      for (const {key, keyAt} of value[table] ?? []) {
        const name = key.toLowerCase().replace(/[^\p{L}\p{N}]+/gu, '-'), before = first.get(name)
        if (before === undefined) first.set(name, key)
        else note({code: 'repeated-key', severity: 'error', at: keyAt, reason: `${key} is ${before} once more`, remedy: 'keep one of the two, or give it another name'})
      }
    }
    const sum = value.scale?.reduce((points, heading) => points + heading.value, 0)
    if (sum !== undefined && sum !== 100) {
      note({
        code: 'wrong-sum', severity: 'error', at: inside(at, 'scale'),
        reason: `the scale of points makes ${sum}, not 100`, remedy: 'mend the points so that they make 100',
      })
    }
  },
})

export const draftKind = kind({
  id: 'draft', files: 'standard/<n>.md', title: 'A draft of the standard', shape: draft,
  purpose: 'One revision of the draft standard. In its body `## Section` begins a section, and a paragraph that starts with **Tail.** is a clause.',
  example: `---
draft: 1
on: 2023-01-08
classification: Heavy, soft feather
weights: {cock: 3.2 kg, hen: 2.5 kg}
scale: {Type and carriage: 60, Colour: 40}
---
## General characteristics, male

**Tail.** Of medium length, carried well up.
`,
  more: [{title: 'With clauses that are held against the flock, in one association’s manner', example: `---
draft: 2
on: 2024-01-12
manner: commonwealth
weights: {cock: 3.0 to 3.4 kg, hen: 2.5 kg}
egg: {shell: tinted, at-least: 55 g}
rings: {male: 20 mm, female: 18 mm}
scale: {Type and carriage: 60, Colour: 40}
varieties: {Light: {ground: silver}}
clauses:
  general-characteristics-male/comb: {trait: comb, mandatory: yes, if-missed: disqualifying}
  general-characteristics-male/tail: {trait: tail-angle, allows: 40 to 50, if-missed: minor}
  weights/cock: {trait: weight-adult}
  colour/light/in-both-sexes:
    trait: skin
    mandatory: yes
    accepted: {what: Ivory shanks in young birds, looks: ivory, until: 2026, then: serious}
reasons: {general-characteristics-male/tail: As measured on eleven cocks.}
---
## General characteristics, male

**Comb.** Pea, low and even.

**Tail.** Of medium length, carried at 45 degrees.

## Colour

### Light

**In both sexes.** Skin and shanks white.

**Male.** White, the hackle striped with black.

**Female.** As the male.

**Day-old down.** Pale cream.
`}],
})
