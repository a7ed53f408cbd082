import {isoDay, yearOf} from '../../records/dates.ts'
import {orNear, slipsBetween} from '../../records/near.ts'
import {datedFacts, type DatedFact} from '../dated-facts.ts'
import type {Linked} from '../linked.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const HATCH = '---\npen: 2024-A\nset: 2024-03-02\non: 2024-03-23\nchicks:\n  - {band: 24-901, sex: male}\n  - {band: 24-902, sex: male}\n---\n'
const weights = (day: string) => `band,on,weight\n24-901,2024-08-10,2310\n24-902,${day},2405\n`

export const entry: ManualEntry = {
  code: 'year-far-ahead', severity: 'warning', title: 'A date far after all others',
  cause: 'The latest date of the records stands more than a year after every date of the other files, or is alone so late: a slip in the year. Where project.md names no as-of, the whole book is held to be as old as its latest date.',
  remedy: 'Mend the year. Where the date is right, write as-of in project.md.',
  wrong: {'hatches/2024-09.md': HATCH, 'measures/2024-08-10.csv': weights('2032-08-10')},
  right: {'hatches/2024-09.md': HATCH, 'measures/2024-08-10.csv': weights('2024-08-10')},
}

const YEAR = 365
/** A year that the file's name or the pen's season has too was hardly mistyped, unless it is so many years off. */
const NAMED_YEARS = 5

export function check({bench, ownAsOf}: Linked): void {
  if (ownAsOf !== null) return
  const facts = [...datedFacts(bench.records)].sort((a, b) => b.day - a.day)
  const gap = facts.findIndex((fact, index) => (facts[index - 1]?.day ?? fact.day) - fact.day > YEAR)
  const late = facts.slice(0, Math.max(0, gap)), others = facts.slice(Math.max(0, gap))
  const [latest, ...more] = [...late].sort((a, b) => lineOf(a) - lineOf(b)), [before] = others
  if (!latest || !before || more.some(({at}) => at.file !== latest.at.file)) return
  if ((latest.at.file.includes(`${yearOf(latest.day)}`) || isOfSeason(latest)) && latest.day - before.day <= NAMED_YEARS * YEAR) return
  const also = more.length === 0 ? '' : more.length === 1 ? ' and one more date of this file' : ` and ${more.length} more dates of this file`
  bench.note(slipOf(entry, latest.at, `${latest.text}${also} stand${more.length === 0 ? 's' : ''} more than a year after every other date of the records (the next is ${before.text}), and makes the whole book as late`,
    orNear(likelyDates(latest, others), 'mend the year; where it is right, write as-of in project.md'), {at: before.at, note: `${isoDay(before.day)} stands here`}))

  function isOfSeason({at, day}: DatedFact): boolean {
    return bench.records.pen.some(({file, data}) => file === at.file && data.season === yearOf(day))
  }
}

const lineOf = ({at}: DatedFact): number => ('line' in at ? at.line : 0)

/** The date in a year of the book that a slip of the keyboard parts from the one written; its own file's years first. */
function likelyDates({text, at}: DatedFact, others: readonly DatedFact[]): readonly string[] {
  const near = (facts: readonly DatedFact[]) => [...new Set(facts.map(({day}) => `${yearOf(day)}`))].filter(year => (slipsBetween(text.slice(0, 4), year) ?? 2) <= 1)
  const own = near(others.filter(other => other.at.file === at.file))
  return (own.length > 0 ? own : near(others)).slice(0, 2).map(year => `${year}${text.slice(4)}`)
}
