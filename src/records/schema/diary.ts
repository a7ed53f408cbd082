import {date, text} from '../scalars.ts'
import {object, required} from '../shape.ts'
import {kind} from './kind.ts'
import {photos, privateNotes} from './parts.ts'

const diary = object('a diary entry', {
  on: required(date, 'The day it is about.'),
  title: required(text('a title'), 'Its title.'),
  photos,
  private: privateNotes,
})

export const diaryKind = kind({
  id: 'diary', files: 'diary/<date>-<slug>.md', title: 'A diary entry', shape: diary,
  purpose: 'A dated entry for readers.',
  example: `---
on: 2025-10-14
title: Draft 5 of the standard
---
The comb clause now names three ridges.
`,
})
