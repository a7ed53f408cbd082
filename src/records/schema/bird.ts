import {date, reference} from '../scalars.ts'
import {object, optional, required, type ValueOf} from '../shape.ts'
import {kind} from './kind.ts'
import {BIRD_FIELDS, flock, privateNotes} from './parts.ts'

const band = reference('a band such as 24-031')

const bird = object('a bird', {
  band: required(band, 'The band it is known by.'),
  ...BIRD_FIELDS,
  strain: optional(reference('a strain such as holm-white'), 'The founding strain, for founders. Other birds come from a hatch, or name their sire and dam.'),
  hatched: optional(date, 'When it hatched; not needed for a chick that a hatch lists.'),
  flock: optional(flock, 'The flock it was bought from.'),
  private: privateNotes,
}, {others: 'a trait’s id, with what was seen'})

export type BirdRecord = ValueOf<typeof bird>

export const birdKind = kind({
  id: 'bird', files: 'birds/<band>.md', title: 'A bird', shape: bird,
  purpose: 'A founder, or a bird with a story of its own: it extends the line that its hatch gives it.',
  example: `---
band: 22-004
sex: male
strain: holm-white
hatched: 2022-03-14
comb: single
tested: {P: p+/p+}
bands: [{band: Y-118, from: 2022-03, to: 2022-05}, {band: 22-004, from: 2022-05}]
observations:
  - {on: 2022-09-01, temperament: calm, vigour: 4 of 5, note: Carries his tail low.}
  - {on: 2023-02-11, health: "frostbite on two points, healed"}
left: 2025-08-01 sold
---
A quiet bird with a broad back.
`,
})
