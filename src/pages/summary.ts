/** A summary as one page: what the breeder of one season, or of one step, sends to others. The same parts for both, each left out where there is nothing to say. */
import {candle} from '../charts/candle.ts'
import {axisFromZero} from '../charts/egg-rows.ts'
import type {FlockSummary} from '../findings/flock-summary.ts'
import type {SpreadRow} from '../findings/spread.ts'
import type {Findings} from '../findings/study.ts'
import {fact, type Fact} from './bird-lead.ts'
import {dayWords} from './dates.ts'
import {scaleOf} from './estimate-words.ts'
import type {Stat} from './hatch.ts'
import {summaryPath} from './links.ts'
import {mainMeasure} from './main-measure.ts'
import {counted, figured, limits, listWords, ofWords, percent, percentSign, sentence} from './numbers.ts'
import type {Page, Table} from './page.ts'
import {choosingWords} from './choosing-words.ts'
import {answerInShort, lastOfWay, ofWhom, pensWords, summaryAnswer, type SummaryAnswer} from './summary-answer.ts'
import {carriersIn, hiddenTable, summaryCloseness} from './summary-blood.ts'
import {HOW_TO_READ, summaryGaps} from './summary-gaps.ts'
import {EGGS_OF, summaryHatched} from './summary-hatched.ts'
import {summaryMeasured, type SummaryMeasured} from './summary-measured.ts'
import {SEX_ROWS} from './sex-words.ts'
import type {ToDo} from './summary-next.ts'
import {careTold, draftsTold, showsTold, type Told} from './summary-told.ts'

interface Section {
  readonly title: string
  readonly strips: SummaryMeasured['strips']
  readonly table: Table | null
  readonly words: readonly string[]
  readonly told: readonly Told[]
  readonly toDo: readonly ToDo[]
  readonly caution: {readonly head: string; readonly text: string} | null
}

export interface SummaryView {
  readonly title: string
  readonly facts: readonly Fact[]
  readonly lead: string
  readonly aim: string
  readonly stats: readonly Stat[]
  readonly answer: SummaryAnswer
  /** set across the sheet */
  readonly sections: readonly Section[]
  /** set in two columns on paper */
  readonly rest: readonly Section[]
}

const section = (title: string, own: Partial<Section>): readonly Section[] => {
  const whole = {title, strips: null, table: null, words: [], told: [], toDo: [], caution: null, ...own}
  return whole.strips || whole.table || whole.caution || whole.words.length + whole.told.length + whole.toDo.length > 0 ? [whole] : []
}

/** Only keepers who agreed to it are named. */
function keptBy({pens}: FlockSummary): string {
  const keepers = [...new Set(pens.flatMap(({keeper}) => keeper ?? []))], named = keepers.filter(({consents}) => consents).map(({name}) => name), others = keepers.length - named.length
  return listWords([...named, ...(others > 0 ? [counted(others, named.length > 0 ? 'other keeper' : 'keeper who is not named', named.length > 0 ? 'other keepers' : 'keepers who are not named')] : [])])
}

function facts(summary: FlockSummary, {book}: Findings): readonly Fact[] {
  const {of, steps, seasons, chicks, hatches} = summary, keepers = keptBy(summary)
  return [
    fact('Records to', dayWords(book.asOf)),
    ...(of === 'season' ? steps.length === 0 ? [] : [fact(steps.length === 1 ? 'Step' : 'Steps', listWords(steps.map(({label}) => label)))] : seasons.length === 0 ? [] : [fact(seasons.length === 1 ? 'Season' : 'Seasons', listWords(seasons.map(String)))]),
    fact('Pens', pensWords(summary)), fact('Hatches', counted(hatches.length, 'hatch', 'hatches')), fact('Chicks', `${chicks.hatched}, ${chicks.scored} scored`), ...(keepers === '' ? [] : [fact('Kept by', keepers)]),
  ]
}

/** Of the main measure the row of both sexes, else of the one told. */
function evenRow(rows: readonly SpreadRow[], {book}: Findings): SpreadRow | undefined {
  const told = rows.filter(({spread}) => spread.kind === 'spread'), trait = mainMeasure(book.traits.filter(each => told.some(row => row.trait === each))), own = told.filter(row => row.trait === trait)
  return own.find(({sex}) => sex === 'all') ?? own[0]
}

/** F on a scale from nought, the project's limit for one mating dotted. */
function closeCandle(mean: number, limit: number | null): Stat['candle'] {
  const to = axisFromZero([mean * 100, (limit ?? 0) * 100]).to / 100
  return {...candle(mean, null, {from: 0, to}, limit, limit !== null && mean > limit), label: `${percent(mean)} per cent${limit === null ? '' : `, limit ${percent(limit)}`}`}
}

/** Four figures at a glance, each beside the one before: true, even, hatched, close. */
function stats(summary: FlockSummary, findings: Findings): readonly Stat[] {
  const {before, rates, change, spread, steps} = summary, last = lastOfWay(summary), row = evenRow(spread, findings), old = before && row ? before.spread.find(each => each.trait === row.trait && each.sex === row.sex)?.spread : undefined
  const found: Stat[] = [], then = (words: string | null): string => (before === null || words === null ? '' : ` ${before.name}: ${words}.`)
  if (last?.share.kind === 'share') {
    const {share, family} = last, interval = family?.kind === 'families' ? {low: family.low, high: family.high} : share.interval, scale = scaleOf([share]), earlier = change?.shares.find(({by}) => by === 'true-bred')?.from.count
    found.push({
      title: 'True in all they could show', value: percent(share.value), unit: '%', candle: {...candle(share.value, interval, {from: Math.min(scale.from, interval.low < 0.5 ? 0 : 0.5), to: 1}), label: `${percent(share.value)} per cent, ${limits(interval)}`},
      words: `${limits(interval)}, ${ofWhom(family)}; ${ofWords(share.count, share.total)}.${then(earlier && earlier.n > 0 ? `${percentSign(earlier.k / earlier.n)} of ${earlier.n}` : null)}`,
    })
  }
  if (row?.spread.kind === 'spread') {
    const {cv, cvInterval, n} = row.spread, to = axisFromZero([(cvInterval?.high ?? cv) * 100]).to / 100
    found.push({
      title: `Spread of ${row.trait.name.toLowerCase()}${row.sex !== 'all' ? ` of ${SEX_ROWS[row.sex]}` : row.trait.seenIn === null ? ', both sexes' : ''}`, value: percent(cv), unit: '%', candle: {...candle(cv, cvInterval, {from: 0, to}), label: `CV ${percent(cv)} per cent${cvInterval ? `, ${limits(cvInterval)}` : ''}`},
      words: `CV${cvInterval ? `, ${limits(cvInterval)}` : ''}, ${figured(n, 'bird')}.${then(old?.kind === 'spread' ? `${percentSign(old.cv)}, ${figured(old.n, 'bird')}` : null)}`,
    })
  }
  if (rates.hatchOfSet.kind === 'share') {
    const share = rates.hatchOfSet, earlier = before?.rates.hatchOfSet, drawn = findings.life.hatching.find(({group}) => group.by === summary.of && group.name === summary.name)?.shares.find(({what}) => what === 'hatchOfSet')
    const interval = drawn?.drawn ? {low: drawn.drawn.low, high: drawn.drawn.high} : share.interval
    found.push({
      title: 'Hatched of eggs set', value: percent(share.value), unit: '%', candle: {...candle(share.value, interval, {from: 0, to: 1}), label: `${percent(share.value)} per cent, ${limits(interval)}`},
      words: `${limits(interval)}, ${EGGS_OF[drawn?.drawn ? drawn.speaksOf : 'these-eggs']}; ${ofWords(share.count, share.total)}.${then(earlier?.kind === 'share' ? `${percentSign(earlier.value)} of ${earlier.total}` : null)}`,
    })
  }
  const close = findings.closeness.filter(({step}) => steps.some(({label, beside}) => label === step && !beside)).at(-1)
  const limit = findings.book.project.limits.matingInbreeding
  if (close) found.push({title: `Mean F, ${close.step}`, value: percent(close.mean), unit: '%', candle: closeCandle(close.mean, limit), words: `${close.atLeast > 0 ? 'At least, as some grandparents are not on record; ' : ''}${figured(close.birds, 'bird')}; kinship among them ${percentSign(close.kinship)}${close.rate ? `; ${percentSign(close.rate.value)} lost since ${close.rate.since}` : ''}.`})
  return found
}

function sections(summary: FlockSummary, findings: Findings): readonly Section[] {
  const measured = summaryMeasured(summary, findings), hatched = summaryHatched(summary, findings)
  return [
    ...(summary.chicks.hatched === 0 ? [] : section('What they measure', {strips: measured.strips, table: measured.table, words: measured.none === '' ? [] : [measured.none]})),
    ...(summary.chicks.hatched + summary.hatches.length === 0 ? [] : section('From egg to breeder', {table: hatched.table, words: hatched.words})),
  ]
}

/** Of birds of the past nothing is to be done: where it is told what is. */
function laterWords({of}: FlockSummary, {summaries}: Findings): readonly string[] {
  const latest = (of === 'season' ? summaries.seasons : summaries.steps).find(each => each.latest)
  return latest ? [`What is to be done now stands in the summary of ${of} ${latest.name}.`] : []
}

function rest(summary: FlockSummary, findings: Findings, toDo: readonly ToDo[]): readonly Section[] {
  const close = summaryCloseness(summary, findings), care = careTold(summary, findings), hidden = hiddenTable(summary, findings)
  const chosen = summary.steps.filter(({label}) => label !== 'mixed').flatMap(({label}) => choosingWords(findings, label).map(words => (summary.steps.length > 1 ? `${label}. ${words}` : words)))
  return [
    ...section('What they hide', {table: hidden, words: hidden ? [...carriersIn(summary, findings), 'Expected from all that was seen of their kin; relatives count as independent, so the limits are too narrow.'] : []}),
    ...(close ? section('How closely bred', {table: close.table, words: [close.words], caution: close.caution}) : []),
    ...section('What choosing did', {words: chosen}), ...section('Shows', {told: showsTold(summary)}), ...section('The standard', {told: summary.of === 'season' ? draftsTold(summary, findings) : []}),
    ...section('Care', {told: care.list, words: care.more === '' ? [] : [care.more], caution: care.caution === null ? null : {head: 'Read with care.', text: care.caution}}),
    ...section('What to do next', summary.latest ? {toDo} : {words: laterWords(summary, findings)}),
    ...section('What is missing', {words: [summaryGaps(summary).join(' ')]}), ...section('How to read this', {words: HOW_TO_READ}),
  ]
}

/** @param toDo  what to do next, told of the latest alone */
export function summaryPage(summary: FlockSummary, findings: Findings, toDo: readonly ToDo[]): Page {
  const {book: {project, asOf}} = findings, title = `${sentence(summary.of)} ${summary.name}`
  const view: SummaryView = {
    title, facts: facts(summary, findings), lead: answerInShort(summary), aim: project.aim, stats: stats(summary, findings), answer: summaryAnswer(summary, findings), sections: sections(summary, findings), rest: rest(summary, findings, toDo),
  }
  return {
    path: summaryPath(summary), template: 'summary', title: `${title}, summary`, section: null, look: 'summary', selfContained: true, sheet: `${project.name} · ${title} · records to ${dayWords(asOf)}`, view,
    search: {kind: 'summary', words: `${summary.name} ${summary.of} summary to send on print`},
  }
}
