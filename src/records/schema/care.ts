import {date, reference, text} from '../scalars.ts'
import {listOf, object, oneOf, optional, required} from '../shape.ts'
import {kind} from './kind.ts'
import {photos, privateNotes} from './parts.ts'

export const CARE_WORDS = ['feed', 'housing', 'vaccination', 'treatment', 'illness', 'loss'] as const

const care = object('a care entry', {
  care: required(oneOf(CARE_WORDS), 'What it is about.'),
  on: required(date, 'When, or from when.'),
  to: optional(date, 'Until when.'),
  pens: optional(listOf(reference('a pen')), 'The pens it touches.'),
  birds: optional(listOf(reference('a band')), 'The birds it touches.'),
  hatches: optional(listOf(reference('a hatch')), 'The hatches it touches.'),
  with: optional(text('a word or two'), 'With what, as the label says.'),
  'eggs-withheld-until': optional(date, 'Until when no eggs are eaten or sold, as the label or the veterinarian says.'),
  'meat-withheld-until': optional(date, 'Until when no birds are eaten, as the label or the veterinarian says.'),
  photos,
  private: privateNotes,
})

export const careKind = kind({
  id: 'care', files: 'care/<date>-<slug>.md', title: 'Care', shape: care,
  purpose: 'Feed, housing, vaccination, treatment, illness and losses: what figures must be read against. Medicine and disease are for a veterinarian; local law goes before.',
  example: `---
care: treatment
on: 2024-05-02
to: 2024-05-07
pens: [2024-A]
with: as the label says
eggs-withheld-until: 2024-05-21
---
`,
})
