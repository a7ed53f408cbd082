import {inside} from '../../records/problem.ts'
import type {SectionKind} from '../book.ts'
import {latestDraft} from '../latest-draft.ts'
import type {Linked} from '../linked.ts'
import {MANNER_WORDS, MANNERS_OF_STANDARD} from '../manners.ts'
import {partsWanting} from '../parts-of-standard.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const draft = (end: string) => `---
draft: 1
on: 2024-10-01
manner: commonwealth
classification: "Heavy, soft feather"
origin: Bred for the holm farms.
weights: {cock: 3.2 kg, hen: 2.5 kg}
scale: {Type: 60, Colour: 40}
---
## General characteristics, male

**Tail.** Of medium length.

## General characteristics, female

As the male.

## Colour

**In both sexes.** White.

## Serious defects

A wry tail.
${end}`

export const entry: ManualEntry = {
  code: 'section-missing', severity: 'warning', title: 'A standard without a part that it needs',
  cause: 'The latest draft says in whose manner it is set, or a requirement asks for the written standard, and a part that such a standard needs is neither a section, nor a clause headed so, nor in the front matter: in the commonwealth manner origin, classification, male, female, colour, weights, points, serious defects and disqualifications. Without a manner it is male, female, colour, weights, points and faults.',
  remedy: 'Write the part. Where it stands under a heading of your own, say what the section is about: sections: {what-bars-a-bird: disqualifications}.',
  wrong: {'standard/1.md': draft('')},
  right: {'standard/1.md': draft('\n## Disqualifications\n\nAny comb but pea.\n')},
}

const CORE: Partial<Record<SectionKind, string>> = {male: 'the male', female: 'the female', colour: 'colour', weights: 'weights', points: 'a scale of points', faults: 'faults'}

export function check({bench, book}: Linked): void {
  const draft = latestDraft({bench, book})
  if (!draft) return
  const {manner} = draft
  if (manner === null && !(book.requirements?.items.some(({kind}) => kind === 'written-standard') ?? false)) return
  const names = new Map(manner === null ? [] : MANNERS_OF_STANDARD[manner].parts.map(({kind, name}) => [kind, name]))
  const wanting = partsWanting(draft).map(kind => names.get(kind) ?? CORE[kind] ?? kind)
  if (wanting.length === 0) return
  bench.note(slipOf(entry, manner === null ? draft.at : inside(draft.at, 'manner'), `draft ${draft.number} says nothing under: ${wanting.join('; ')}${manner === null ? '' : `. The ${MANNER_WORDS[manner]} manner needs ${wanting.length === 1 ? 'it' : 'them'}`}`,
    `write ${wanting.length === 1 ? 'that part' : 'those parts'}, or say under sections: which section is about ${wanting.length === 1 ? 'it' : 'them'}`))
}
