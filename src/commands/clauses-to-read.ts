/** Each clause beside the flock as a reader on a terminal wants it: the worst first, then what nobody scores. The other formats have every step, sex and bird. */
import type {ClauseShare} from '../findings/clause-counts.ts'
import type {ClauseBeside, UnscoredClause} from '../findings/clauses.ts'
import type {Share} from '../findings/estimate.ts'
import type {FiguresTable} from '../findings/figures.ts'
import type {Findings} from '../findings/study.ts'
import {limitsShort, listWords, ofWords, percentSign} from '../pages/numbers.ts'
import {dateWords} from '../pages/dates.ts'
import type {ToRead} from './forecast-to-read.ts'

const text = (names: readonly string[], rows: readonly (readonly (string | null)[])[]): FiguresTable => ({columns: names.map(name => ({name, as: 'text'})), rows})

const NOT_SCORED: Readonly<Record<UnscoredClause['why'], string>> = {
  'never-scored': 'Its trait was scored on no bird of these steps', reworded: 'Scored only under other words, and not since', 'nothing-allowed': 'Nothing says what is allowed of its trait', 'words-only': 'Words alone, no trait shows them',
}

export function clausesToRead({clauses: {draft, step, steps, scored, unscored}}: Findings): ToRead {
  if (!draft) return {above: '', table: text(['clause'], []), beneath: ''}
  return {
    above: `Draft ${draft.number} of ${dateWords(draft.on)}, held beside ${step === null ? 'no birds yet' : `${step}, and all of ${listWords(steps)}`}. Every chick that was scored counts, kept or not.\n\n`,
    table: text(['clause', 'if missed', 'sex', 'meet it', 'share', '95%', 'all steps', 'other words'], scored.flatMap(one => bySex(one, step).map((row, place) => [
      place === 0 ? one.clause.id : '', place === 0 ? severity(one) : '', row.sex, ...shown(row), place === 0 && one.all.outright.kind === 'share' ? metWords(one.all.outright, one.all.accepted) : null,
      place === 0 && one.all.otherWords > 0 ? String(one.all.otherWords) : null,
    ]))),
    beneath: `\n${(['never-scored', 'reworded', 'nothing-allowed', 'words-only'] as const).flatMap(why => {
      const own = unscored.filter(each => each.why === why)
      return own.length === 0 ? [] : [`${NOT_SCORED[why]}: ${own.map(({clause}) => clause.id).join(', ')}.`]
    }).join('\n')}\nOther words: scored under a draft in which the clause said something else, and counted apart. Steps, drafts, birds and records with --format csv or json.\n`,
  }
}

/** Of the latest step, each sex that the clause speaks of, and those whose sex is not known. */
function bySex({rows, latest}: ClauseBeside, step: string | null): readonly ClauseShare[] {
  const own = rows.filter(row => row.step === step && row.sex !== 'all' && row.share.kind === 'share')
  return own.length === 0 ? [latest] : own
}

const severity = ({clause}: ClauseBeside): string => clause.ifMissed ?? (clause.mandatory ? 'mandatory' : '')

const metWords = ({count, total}: Share, accepted: number): string => `${ofWords(count, total)}${accepted > 0 ? `, ${accepted} more accepted` : ''}`

const shown = ({outright, accepted}: ClauseShare): (string | null)[] =>
  (outright.kind === 'cannot-say' ? ['none scored', null, null] : [metWords(outright, accepted), percentSign(outright.value), limitsShort(outright.interval)])
