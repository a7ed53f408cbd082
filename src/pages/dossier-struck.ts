/** The scores that were struck out, each with the reason: they count nowhere, and nothing is dropped in silence. */
import {grouped} from '../findings/grouped.ts'
import type {Findings} from '../findings/study.ts'
import type {Bird} from '../logbook/book.ts'
import type {PartialDate} from '../records/dates.ts'
import type {Spot} from '../records/problem.ts'
import {dateWords} from './dates.ts'
import type {NumberedTable, References} from './dossier-behind.ts'
import type {Naming} from './naming.ts'
import {NOTHING, rounded} from './numbers.ts'
import type {Cell} from './page.ts'

/** Of one trait, day, scorer and reason one row, with all the birds; then the sheets of points that were struck. */
export function struckTable({book, struckScores}: Findings, naming: Naming, refs: References): NumberedTable | null {
  const groups = grouped(struckScores, ({score, reason}) => `${score.trait.id}\n${String(score.value)}\n${score.on?.text ?? ''}\n${score.by?.id ?? ''}\n${reason}`)
  const sheets = book.sheets.flatMap(sheet => (sheet.struck === null ? [] : [{sheet, reason: sheet.struck}]))
  if (groups.size + sheets.length === 0) return null
  const {name, ...head} = refs.table('struck scores')
  const row = (what: string, as: string, on: PartialDate | null, by: string, reason: string, birds: readonly Bird[], records: readonly Spot[]): readonly Cell[] =>
    [what, as, on ? dateWords(on) : NOTHING, by, reason, refs.to({of: `${name}, ${[what.toLowerCase(), ...(on ? [dateWords(on)] : []), reason].join(', ')}`, birds, records})]
  return {
    ...head, columns: [{head: 'Trait'}, {head: 'Scored as'}, {head: 'On'}, {head: 'By'}, {head: 'Why struck'}, {head: 'Behind it'}],
    rows: [
      ...[...groups.values()].flatMap((group): readonly (readonly Cell[])[] => {
        const [first] = group
        if (!first) return []
        const {score, reason} = first, birds = group.flatMap(({chick}) => (chick.kind === 'bird' ? [chick] : []))
        return [row(score.trait.name, String(score.value), score.on, score.by ? naming.keeper(score.by) : NOTHING, reason, birds, group.map(each => each.score.at))]
      }),
      ...sheets.map(({sheet: {bird, by, headings, on, at}, reason}) =>
        row('Sheet of points', pointsWords(headings), on, by === null ? NOTHING : typeof by === 'string' ? naming.judge(by) : naming.keeper(by), reason, [bird], [at])),
    ],
  }
}

const pointsWords = (headings: readonly {readonly points: number}[]): string => `${rounded(headings.reduce((sum, {points}) => sum + points, 0), 1).replace(/\.0$/, '')} points`
