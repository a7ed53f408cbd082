import {date, reference, text, year} from '../scalars.ts'
import {object, optional, required} from '../shape.ts'
import {kind} from './kind.ts'
import {photos, privateNotes, stays} from './parts.ts'

const pen = object('a pen', {
  season: required(year, 'The year.'),
  males: required(stays, 'The males, each for the whole time or from and to a day, with their shares of the chicks where known.'),
  females: required(stays, 'The females.'),
  from: optional(date, 'When the pen was put together.'),
  to: optional(date, 'When it was broken up.'),
  keeper: optional(reference('a keeper'), 'Whose pen it is.'),
  intends: optional(text('a step such as BC2'), 'The step it is meant to give; compared with descent.'),
  photos,
  private: privateNotes,
})

export const penKind = kind({
  id: 'pen', files: 'pens/<season>-<pen>.md', title: 'A pen', shape: pen,
  purpose: 'One mating group in one season.',
  example: `---
season: 2024
males: [{band: 22-004, to: 2024-03-15}, {band: 22-009, from: 2024-03-16}]
females: [22-017, 22-021, 22-030]
from: 2024-02-10
to: 2024-05-01
keeper: kelpgarth
intends: BC2
---
`,
})
