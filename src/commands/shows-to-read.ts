/** Shows as a reader on a terminal wants them: entries by year and class, then the years, the judges beside us, and cancelled shows. The other formats have all of it. */
import type {FiguresTable} from '../findings/figures.ts'
import type {Findings} from '../findings/study.ts'
import {yearOf} from '../records/dates.ts'
import {dateWords} from '../pages/dates.ts'
import {placingsView, pointsViews} from '../pages/judges-against-keepers.ts'
import {figured, rounded} from '../pages/numbers.ts'
import {byClass, cancelledWords, placing, pointsWords} from '../pages/show-words.ts'
import type {ToRead} from './forecast-to-read.ts'

const text = (names: readonly string[], rows: readonly (readonly (string | null)[])[]): FiguresTable => ({columns: names.map(name => ({name, as: 'text'})), rows})

export function showsToRead(findings: Findings): ToRead {
  const {shows: {shows}} = findings
  const rows = shows.flatMap(({show}) => byClass(show).flatMap(({name, entries}, at) => entries.map((entry, place) => [
    at === 0 && place === 0 ? String(yearOf(show.on.first)) : '', at === 0 && place === 0 ? show.name : '', place === 0 ? name ?? 'no class' : '',
    entry.bird.band, placing(entry), [entry.grade, entry.award, pointsWords(entry)].filter(part => part !== null).join(', '), entry.judge,
  ])))
  return {above: '', table: text(['year', 'show', 'class', 'bird', 'place', 'won', 'judge'], rows), beneath: beneath(findings)}
}

function beneath({shows: {cancelled}, showYears, judgeAgreement, sheetsCompared}: Findings): string {
  const years = showYears.years.filter(({entries}) => entries > 0).map(({year, entries, firsts, awards, place: {mean}}) =>
    `${year}: ${figured(entries, 'entry', 'entries')}, ${figured(firsts, 'first')}, ${figured(awards, 'award')}${mean === null ? '' : `, mean place ${rounded(mean, 2)} of 1`}.`)
  const blocks = [
    years, cancelled.map(show => `${show.name}, ${dateWords(show.on)}, was officially cancelled: ${cancelledWords(show)}`), placingsView(judgeAgreement)?.words ?? [],
    pointsViews(sheetsCompared).map(({head, inShort}) => `${head}: ${inShort}`),
  ].filter(block => block.length > 0)
  return blocks.length === 0 ? '' : `\n${blocks.map(block => block.join('\n')).join('\n\n')}\n\nEvery entry with its remark, clauses and record, and each judge by himself, with --format csv or json.\n`
}
