import {count, text} from '../scalars.ts'
import {listOf, object, optional} from '../shape.ts'
import {kind} from './kind.ts'
import {photos, privateNotes} from './parts.ts'

const step = object('a step', {
  name: optional(text('a step such as BC2, or a name of your own'), 'Its name; else the file’s name.'),
  joins: optional(listOf(text('a step or a strain')), 'For a step that joins ladders or takes a strain in late: what it joins.'),
  'inter-se-from': optional(count, 'How many generations inter se the joined step counts as; 0 when not given.'),
  photos,
  private: privateNotes,
})

export const stepKind = kind({
  id: 'step', files: 'steps/<step>.md', title: 'A step', shape: step,
  purpose: 'Your own words on a step, or the name of a step that joins ladders.',
  example: `---
name: SY1
joins: [BC2-pea, BC2-blue]
inter-se-from: 0
---
Both lines met here.
`,
})
