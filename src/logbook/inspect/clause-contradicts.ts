import {inside} from '../../records/problem.ts'
import {latestDraft} from '../latest-draft.ts'
import type {Linked} from '../linked.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const draft = (entry: string) => `---\ndraft: 1\non: 2024-10-01\nclauses: {general-characteristics-male/comb: {${entry}}}\n---\n## General characteristics, male\n\n**Comb.** Pea.\n`

export const entry: ManualEntry = {
  code: 'clause-contradicts', severity: 'warning', title: 'A clause that contradicts itself',
  cause: 'The latest draft has a clause in a section on one sex, or a weight of a class of one sex, whose entry says that it speaks of the other; or one that a bird need not meet, by its entry, and is disqualified for missing.',
  remedy: 'Mend the entry, or move the clause into the section it belongs to.',
  wrong: {'standard/1.md': draft('trait: comb, sex: female')},
  right: {'standard/1.md': draft('trait: comb')},
}

export function check({bench, book}: Linked): void {
  const draft = latestDraft({bench, book}), record = bench.records.draft.find(({at}) => at.file === draft?.at.file)
  if (!draft || !record) return
  const sexes = new Map(draft.sections.flatMap(({kind, clauses}) => (kind === 'male' || kind === 'female' ? clauses.map(clause => [clause.id, kind] as const) : [])))
  const ofClass = (id: string): 'male' | 'female' | null => (/^weights\/(?:old-|young-)?(?:cock|cockerel|male)s?$/.test(id) ? 'male' : /^weights\/(?:old-|young-)?(?:hen|pullet|female)s?$/.test(id) ? 'female' : null)
  for (const {key, value} of record.data.clauses ?? []) {
    const here = inside(record.at, 'clauses', key), sex = sexes.get(key) ?? ofClass(key)
    if (sex !== null && value.sex !== undefined && value.sex !== 'both' && value.sex !== sex) {
      bench.note(slipOf(entry, inside(here, 'sex'), `${key} stands with the ${sex}, but its entry says ${value.sex}`, `take sex: out, or move the clause to the ${value.sex}`))
    }
    if (value.mandatory === false && value['if-missed'] === 'disqualifying') {
      bench.note(slipOf(entry, inside(here, 'mandatory'), `${key} need not be met, and is disqualifying if missed`, 'write mandatory: yes, or a lesser if-missed:'))
    }
  }
}
