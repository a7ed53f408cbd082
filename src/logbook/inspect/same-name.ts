import {fileName} from '../../records/file-name.ts'
import {inside, type Spot} from '../../records/problem.ts'
import type {Linked} from '../linked.ts'
import {meantLabel} from '../step-names.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const draft = (number: number) => `---\ndraft: ${number}\non: 2024-10-0${number}\n---\n**Tail.** Of medium length.\n`

export const entry: ManualEntry = {
  code: 'same-name', severity: 'error', title: 'Two records with one name',
  cause: 'Two drafts have the same number, two steps the same name (BC2F1 is BC2), two keepers sign with one name, or two files of one kind have names so alike that their pages would be one file: they differ only in capital letters, or in signs that the name of a page cannot hold (`2024 A.md` and `2024-A.md`).',
  remedy: 'Give one of them another number or name.',
  wrong: {'standard/1.md': draft(1), 'standard/2.md': draft(1)},
  right: {'standard/1.md': draft(1), 'standard/2.md': draft(2)},
}

/** Names that differ only in case are one file on some disks. */
const pageOf = (name: string) => fileName(name).toLowerCase()

export function check({bench, steps}: Linked): void {
  const {records} = bench
  for (const kind of ['strain', 'trait', 'keeper', 'pen', 'hatch', 'show', 'care', 'diary'] as const) {
    once(records[kind].map(({id, at}) => ({name: pageOf(id), says: `${kind} ${id}`, at})))
  }
  once(records.draft.map(({data, at}) => ({name: String(data.draft), says: `draft ${data.draft}`, at: {...at, path: ['draft']} as Spot})))
  once(records.step.map(({id, data, at}) => {
    const written = data.name ?? id, label = meantLabel(written, steps.ownNames)
    return {name: pageOf(label), says: `a step called ${label}${label === written.trim() ? '' : ` (${written} is the same)`}`, at}
  }))

  onceSigned()

  /** A name that two keepers sign with would put one's scores under the other. */
  function onceSigned(): void {
    const first = new Map<string, {readonly of: string; readonly at: Spot}>(records.keeper.map(({id, at}) => [id, {of: id, at}]))
    for (const {id, data, at} of records.keeper) {
      for (const name of data['signs-as'] ?? []) {
        const signs = inside(at, 'signs-as')
        const before = first.get(name)
        if (before === undefined) first.set(name, {of: id, at: signs})
        else if (before.of !== id) {
          bench.note(slipOf(entry, signs, `keeper ${before.of} is called ${name} already`, 'let each keeper sign with a name of their own', {at: before.at, note: 'the first stands here'}))
        }
      }
    }
  }

  function once(named: readonly {readonly name: string; readonly says: string; readonly at: Spot}[]): void {
    const first = new Map<string, Spot>()
    for (const {name, says, at} of named) {
      const before = first.get(name)
      if (before) bench.note(slipOf(entry, at, `there is ${says} already`, 'give one of the two another name', {at: before, note: 'the first stands here'}))
      else first.set(name, at)
    }
  }
}
