import {count, date, quantity, reference, text} from '../scalars.ts'
import {mapOf, object, optional, required} from '../shape.ts'
import {inside} from '../problem.ts'
import {kind} from './kind.ts'
import {photos, privateNotes} from './parts.ts'

const draft = object('a draft of the standard', {
  draft: required(count, 'Its number.'),
  on: required(date, 'Its date.'),
  title: optional(text('a title'), 'The title; else the breed’s name.'),
  classification: optional(text('such as heavy, soft feather'), 'How the breed is classed.'),
  origin: optional(text('a sentence'), 'Origin and purpose in a sentence.'),
  egg: optional(text('such as tinted, 55 g or more'), 'The egg.'),
  rings: optional(object('ring sizes', {
    male: optional(text('such as 20 mm'), 'For males.'),
    female: optional(text('such as 18 mm'), 'For females.'),
  }), 'Ring sizes.'),
  weights: optional(mapOf('classes with their weights', quantity('mass', '2.5 kg')), 'Weights by class: cock, cockerel, hen, pullet.'),
  scale: optional(mapOf('headings with their points', count), 'The scale of points; the points make 100.'),
  clauses: optional(mapOf('clauses with what is more to say of them', object('a clause', {
    trait: optional(reference('a trait'), 'The trait that measures it.'),
  })), 'More about clauses, by their ids (section/clause).'),
  reasons: optional(mapOf('clauses with why they were changed', text('a reason')), 'Why clauses were changed since the draft before.'),
  photos,
  private: privateNotes,
}, {
  check(value, note, at) {
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
})
