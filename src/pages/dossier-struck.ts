/** The scores that were struck out, each with the reason: they count nowhere, and nothing is dropped in silence. */
import {grouped} from '../findings/grouped.ts'
import {struckScores} from '../findings/struck-scores.ts'
import type {Findings} from '../findings/study.ts'
import {dateWords} from './dates.ts'
import type {References} from './dossier-behind.ts'
import type {Naming} from './naming.ts'
import {NOTHING} from './numbers.ts'
import type {Cell, Table} from './page.ts'

/** Of one trait, day, scorer and reason one row, with all the birds. */
export function struckTable({book}: Findings, naming: Naming, refs: References): Table | null {
  const groups = grouped(struckScores(book), ({score, reason}) => `${score.trait.id}\n${String(score.value)}\n${score.on?.text ?? ''}\n${score.by?.id ?? ''}\n${reason}`)
  if (groups.size === 0) return null
  return {
    columns: [{head: 'Trait'}, {head: 'Scored as'}, {head: 'On'}, {head: 'By'}, {head: 'Why struck'}, {head: 'Behind it'}],
    rows: [...groups.values()].flatMap((group): readonly (readonly Cell[])[] => {
      const [first] = group
      if (!first) return []
      const {score, reason} = first, birds = group.flatMap(({chick}) => (chick.kind === 'bird' ? [chick] : []))
      return [[
        score.trait.name, String(score.value), score.on ? dateWords(score.on) : NOTHING, score.by ? naming.keeper(score.by) : NOTHING, reason,
        refs.to({of: `Struck: ${score.trait.name}, ${String(score.value)}, ${score.on?.text ?? 'no day'}, ${reason}`, birds, records: group.map(each => each.score.at)}),
      ]]
    }),
  }
}
