/** What only the changes from draft to draft can find wrong with the latest: reasons for what did not change. */
import type {Logbook} from '../logbook/book.ts'
import {slug} from '../logbook/draft-sections.ts'
import {reasonWithoutChange} from '../logbook/inspect/reason-without-change.ts'
import {inside, type Slip} from '../records/problem.ts'
import {changesBetween, rowId, type StandardChanges} from './standard-changes.ts'

/** Every id under which the reason of some change is looked up, and the parts that they are in. */
function idsChanged({head, sections, clauses, rows, weights, points, varieties}: StandardChanges): ReadonlySet<string> {
  const ids = [
    ...head.map(({id}) => id), ...[...sections, ...clauses].flatMap(({before, after}) => [before?.id ?? [], after?.id ?? []].flat()), ...rows.map(({id}) => id),
    ...weights.map(weight => rowId('weights', weight.class)), ...points.map(({name}) => rowId('scale', name)), ...varieties.map(({name}) => `colour/${slug(name)}`),
  ]
  return new Set(ids.flatMap(id => [id, id.split('/')[0] ?? id]))
}

export function standardWarnings({drafts}: Pick<Logbook, 'drafts'>): readonly Slip[] {
  const draft = drafts.at(-1), before = drafts.at(-2)
  if (!draft || !before || draft.reasons.size === 0) return []
  const changed = idsChanged(changesBetween(before, draft))
  return [...draft.reasons.keys()].filter(id => !changed.has(id)).map(id => reasonWithoutChange(id, before.number, inside(draft.at, 'reasons', id), before.at))
}
