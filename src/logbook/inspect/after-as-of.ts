import {isoDay} from '../../records/dates.ts'
import {datedFacts} from '../dated-facts.ts'
import type {Linked} from '../linked.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const project = (asOf: string) => `---\nname: Skerry Fowl\naim: A fowl that stands wind and wet.\nas-of: ${asOf}\nstrains: {recurrent: holm-white, donors: [fell-buff]}\n---\n`
const DIARY = {'diary/2025-01-02-frost.md': '---\non: 2025-01-02\ntitle: A hard frost\n---\n'}

export const entry: ManualEntry = {
  code: 'after-as-of', severity: 'error', title: 'A date after the project’s as-of',
  cause: 'A record tells of something after the day the project’s figures are to be true on: a slip in the year, or an as-of that has not been moved on.',
  remedy: 'Mend the date, or move as-of in project.md on. To look at an earlier day without changing it, ask for it with --as-of.',
  wrong: {'project.md': project('2024-12-31'), ...DIARY},
  right: {'project.md': project('2025-01-31'), ...DIARY},
}

/** One slip a file, so that an as-of left behind does not fill the screen. */
export function check({bench, ownAsOf}: Linked): void {
  if (ownAsOf === null) return
  const byFile = new Map<string, ReturnType<typeof datedFacts>[number][]>()
  for (const fact of datedFacts(bench.records, ownAsOf)) byFile.set(fact.at.file, [...(byFile.get(fact.at.file) ?? []), fact])
  for (const [first, ...others] of byFile.values()) {
    if (!first) continue
    const more = others.length === 0 ? '' : others.length === 1 ? ', and one more date here is, too' : `, and ${others.length} more dates here are, too`
    bench.note(slipOf(entry, first.at, `${first.text} is after ${isoDay(ownAsOf)}, the project’s as-of${more}`, 'mend the date, or move as-of in project.md on', {at: {file: 'project.md', path: ['as-of']}, note: 'as-of stands here'}))
  }
}
