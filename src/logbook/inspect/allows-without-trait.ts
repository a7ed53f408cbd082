import {inside} from '../../records/problem.ts'
import type {Linked} from '../linked.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const draft = (entry: string) => `---\ndraft: 1\non: 2024-10-01\nclauses: {general-characteristics-male/comb: {${entry}}}\n---\n## General characteristics, male\n\n**Comb.** Pea.\n`

export const entry: ManualEntry = {
  code: 'allows-without-trait', severity: 'error', title: 'A clause that allows something of no trait',
  cause: 'Under clauses an entry says what is allowed, or which looks are still accepted, and names no trait: there is nothing to read it by.',
  remedy: 'Name the trait too: general-characteristics-male/tail: {trait: tail-angle, allows: 40 to 50}. Or take the range out, and leave it to the words of the clause.',
  wrong: {'standard/1.md': draft('allows: pea')},
  right: {'standard/1.md': draft('trait: comb, allows: pea')},
}

export function check({bench}: Linked): void {
  for (const {data, at} of bench.records.draft) {
    for (const {key, value} of data.clauses ?? []) {
      if (value.trait !== undefined) continue
      const here = inside(at, 'clauses', key)
      if (value.allows !== undefined) bench.note(slipOf(entry, inside(here, 'allows'), `${key} says what it allows, but not of which trait`, 'name the trait, such as trait: tail-angle'))
      if (value.accepted?.looks !== undefined) bench.note(slipOf(entry, inside(here, 'accepted', 'looks'), `${key} says which looks are accepted, but not of which trait`, 'name the trait, or leave the looks to its what:'))
    }
  }
}
