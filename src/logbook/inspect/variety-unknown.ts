import {near, orNear} from '../../records/near.ts'
import {inside, type Slip, type Spot} from '../../records/problem.ts'
import {isUnderItsVariety} from '../clause-ids.ts'
import type {Draft} from '../book.ts'
import {latestDraft} from '../latest-draft.ts'
import type {Linked} from '../linked.ts'
import {speltAs} from '../variety-names.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const draft = (variety: string) => `---
draft: 1
on: 2024-10-01
clauses: {general-characteristics-male/comb: {trait: comb, variety: ${variety}}}
---
## General characteristics, male

**Comb.** Pea.

## Colour

### Light

White, the hackle striped.
`

export const entry: ManualEntry = {
  code: 'variety-unknown', severity: 'warning', title: 'A colour variety that the standard does not have',
  cause: 'A clause’s entry, or a requirement, names a colour variety that is neither a heading in the section on colour of the latest draft nor among its varieties:, while others are; or a heading in that section is none of those under varieties:. Where the draft has none at all, entries may name them as they like.',
  remedy: 'Write its name as the standard does, or add the variety.',
  wrong: {'standard/1.md': draft('Ligth')},
  right: {'standard/1.md': draft('Light')},
}

/** Those that have a heading, and those under `varieties:`; not those that only some entry names. */
function told(draft: Draft, stated: readonly string[]): readonly string[] {
  const headed = draft.sections.flatMap(({id, clauses}) => clauses.flatMap(clause => (clause.variety !== null && isUnderItsVariety(clause, id) ? clause.variety : [])))
  return [...new Set([...headed, ...stated])]
}

/** Every smaller heading in the section on colour begins a variety; where some are named, one that is not is likely another of them. */
export const headingOfNoVariety = (title: string, at: Spot, named: readonly string[]): Slip =>
  slipOf(entry, at, `${title} is none of the varieties named under varieties:, ${named.join(', ')}`, orNear(near(title, named), `add ${title} under varieties: with the looks that tell it`))

export function check({bench, book}: Linked): void {
  const draft = latestDraft({bench, book}), record = bench.records.draft.find(({at}) => at.file === draft?.at.file)
  if (!draft || !record) return
  const names = told(draft, (record.data.varieties ?? []).map(({key}) => key))
  if (names.length === 0) return
  const spelt = speltAs(names)
  const remedy = (name: string): string => orNear(near(name, names), `its varieties are ${names.join(', ')}`)
  for (const {key, value: {variety}} of record.data.clauses ?? []) {
    if (variety !== undefined && !names.includes(spelt(variety))) bench.note(slipOf(entry, inside(record.at, 'clauses', key, 'variety'), `the draft has no variety ${variety}`, remedy(variety)))
  }
  for (const {varieties, at} of book.requirements?.items ?? []) {
    for (const name of varieties) if (!names.includes(spelt(name))) bench.note(slipOf(entry, inside(at, 'varieties'), `the latest draft has no variety ${name}`, remedy(name), {at: draft.at, note: 'the draft stands here'}))
  }
}
