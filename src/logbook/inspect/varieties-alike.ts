import {inside} from '../../records/problem.ts'
import type {Variety} from '../book.ts'
import {latestDraft} from '../latest-draft.ts'
import type {Linked} from '../linked.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const draft = (second: string) => `---
draft: 1
on: 2024-10-01
varieties: {Light: {comb: pea}, Dark: {comb: ${second}}}
---
## Colour

### Light

White.

### Dark

Black.
`

export const entry: ManualEntry = {
  code: 'varieties-alike', severity: 'warning', title: 'Two colour varieties with the same looks',
  cause: 'Under varieties: the latest draft gives two varieties the same looks. A bird that shows them is of both, so that it cannot be told which it is.',
  remedy: 'Write looks that tell the two apart, or make one variety of them.',
  wrong: {'standard/1.md': draft('pea')},
  right: {'standard/1.md': draft('single')},
}

const looksOf = ({looks}: Variety): string => JSON.stringify([...looks].map(([trait, wanted]) => [trait.id, wanted] as const).sort(([a], [b]) => (a < b ? -1 : 1)))

export function check({bench, book}: Linked): void {
  const draft = latestDraft({bench, book}), first = new Map<string, string>()
  for (const variety of draft?.varieties ?? []) {
    if (!draft || variety.looks.size === 0) continue
    const before = first.get(looksOf(variety))
    if (before === undefined) first.set(looksOf(variety), variety.name)
    else bench.note(slipOf(entry, inside(draft.at, 'varieties', variety.name), `${variety.name} has the looks of ${before}`, 'write looks that tell the two apart', {at: inside(draft.at, 'varieties', before), note: `${before} stands here`}))
  }
}
