/** The judges' placings against our own marks, and points of two who scored the same birds, in words and tables. */
import {MOST_JUDGES, type JudgeAgreement} from '../findings/judge-agreement.ts'
import {MOST_DAYS_APART, type Difference, type SheetsCompared} from '../findings/sheets-compared.ts'
import {LEAST_FOR_LIMITS} from '../statistics/limits-of-agreement.ts'
import {testChance} from './chance-words.ts'
import {dateWords} from './dates.ts'
import {birdPath, showPath} from './links.ts'
import {figured, listWords, NOTHING, rounded, signed} from './numbers.ts'
import type {Cell, Table} from './page.ts'

export interface PlacingsView {
  readonly words: readonly string[]
  readonly table: Table
}

export interface PointsView {
  readonly head: string
  readonly words: string
  /** the same where the marks themselves do not stand below */
  readonly inShort: string
  readonly table: Table | null
  readonly largest: readonly {readonly bird: {readonly band: string; readonly link: string}; readonly words: string; readonly show: {readonly words: string; readonly link: string} | null}[]
}

const nameOf = ({trait}: JudgeAgreement): string => trait?.name ?? 'Our own points'
const inHundred = (p: number): string => (p >= 0.995 ? 'nearly always' : p < 0.01 ? 'less than once in 100 times' : `${Math.round(p * 100)} in 100 times`)

/** What may be said of all judges together. */
function verdictWords({tau: {tau, p, leastP}, verdict, corrected, tests}: JudgeAgreement): string {
  if (tau === null || p === null || leastP === null) return ''
  if (verdict === 'too-few' || corrected === null) return `Too few to say: even full agreement would come of chance ${inHundred(leastP)}.`
  const amount = `Tau-b is ${signed(rounded(tau, 2))}; chance alone goes as far ${inHundred(p)}${tests > 1 ? `, and P is ${testChance(corrected)} with all ${tests} tests of the table taken in` : ''}`
  if (verdict === 'cannot-tell') return `${amount}, so no agreement is shown, nor that there is none.`
  return `${amount}: ${verdict === 'alike' ? 'the judges see it as we do, on the whole' : 'the judges see it the other way round'}.`
}

function wordsOf(agreement: JudgeAgreement): string {
  const {tau: {pairs, concordant, discordant, tiedOne, tiedOther, tiedBoth}, leftOut: {unscored, alone, notPlaced}} = agreement, level = tiedOther + tiedBoth
  const aside = [
    ...(unscored > 0 ? [`${unscored} without a mark from before the show`] : []), ...(alone > 0 ? [`${alone} with no other of ours beside it`] : []), ...(notPlaced > 0 ? [`${notPlaced} not placed`] : []),
  ]
  return [
    `${nameOf(agreement)}: of ${figured(pairs, 'pair')} of our birds, ${concordant} stood the same way round with the judge as with us and ${discordant} the other way`,
    `${level > 0 ? `; ${level} we had marked level` : ''}${tiedOne > 0 ? `; ${tiedOne} shared a place` : ''}. ${verdictWords(agreement)}`, aside.length === 0 ? '' : ` Left out: ${listWords(aside)}.`,
  ].join('')
}

/** Null where no judge placed two of our birds in one class that we had marked. */
export function placingsView(agreements: readonly JudgeAgreement[]): PlacingsView | null {
  const told = agreements.filter(({tau}) => tau.tau !== null), shown = told.filter(({listed}) => listed), all = agreements.filter(({judge}) => judge === null), level = all.filter(({tau}) => tau.tau === null)
  if (all.length === 0) return null
  return {
    words: [
      ...all.filter(({tau}) => tau.tau !== null).map(wordsOf),
      ...(level.length === 0 ? [] : [`${listWords(level.map(nameOf))}: of the few pairs both marked, one of the two put all level, so there is no order to hold.`]),
      ...(shown.length === told.length ? [] : [`Of each mark the ${MOST_JUDGES} judges with the most pairs stand here.`]),
    ],
    table: {
      columns: [{head: 'Mark of ours'}, {head: 'Judge'}, ...['Pairs', 'Same way', 'Other way', 'Tau-b', 'P'].map(head => ({head, number: true}))],
      rows: shown.map((each): readonly Cell[] => [nameOf(each), each.judge ?? 'All', String(each.tau.pairs), String(each.tau.concordant), String(each.tau.discordant), ...tauCells(each)]),
    },
  }
}

/** Where even full agreement could be chance's work, neither is given. */
function tauCells({tau: {tau}, corrected}: JudgeAgreement): readonly [string, string] {
  return tau === null || corrected === null ? ['too few', NOTHING] : [signed(rounded(tau, 2)), testChance(corrected)]
}

const mark = (points: number): string => rounded(points, 1).replace(/\.0$/, '')
const range = ({low, high}: {readonly low: number; readonly high: number}): string => `${signed(rounded(low, 1))} to ${signed(rounded(high, 1))}`

function leftOutWords({noOther, notNear, otherScale, unfinished}: SheetsCompared['leftOut']): string {
  const parts = [
    ...(noOther > 0 ? [`${figured(noOther, 'sheet')} of a bird that we did not score under that draft`] : []), ...(notNear > 0 ? [`${figured(notNear, 'sheet')} with ours only from after the day, or from over ${MOST_DAYS_APART} days before`] : []),
    ...(otherScale > 0 ? [`${figured(otherScale, 'heading')} that the other has not, or out of other points`] : []),
  ]
  const short = unfinished === 0 ? '' : `${figured(unfinished, 'sheet')} without a heading of the scale ${unfinished === 1 ? 'is' : 'are'} held heading by heading, but not as a whole.`
  return [parts.length === 0 ? '' : `Left out: ${listWords(parts)}.`, short].filter(part => part !== '').join(' ')
}

function wholeWords({whole, names: [first, second]}: SheetsCompared): string {
  if (whole === null || whole.n < 2) return ''
  const side = whole.mean > 0 ? `more than ${listWords(second)}` : `less than ${listWords(second)}`
  return `On the whole sheet ${listWords(first)} gave ${whole.mean === 0 ? `as much as ${listWords(second)}` : `${mark(Math.abs(whole.mean))} ${side}`} on average${whole.interval ? `, ${range(whole.interval)}` : ''}.`
}

function pointsView(compared: SheetsCompared): PointsView {
  const {between, names: [first, second], birds, headings} = compared, enough = headings.some(({agreed}) => agreed.n >= LEAST_FOR_LIMITS)
  const who = between === 'judges' ? 'The judges’ points against ours' : `${listWords(first)} and ${listWords(second)}`
  const what = between === 'judges' ? 'Judge less ours' : `${listWords(first)} less ${listWords(second)}`
  const pair = between === 'judges' ? 'the judge’s points, then ours, the mean where several of us scored it' : `${listWords(first)}’s points, then ${listWords(second)}’s`
  const both = `${figured(birds, 'bird')} scored by both under one draft`
  const said = (few: string): string => {
    const first = birds === 0 ? 'No bird was scored by both under one draft.' : enough ? `${both}. ${wholeWords(compared)}` : `${both}${few}.`
    return [first.trim(), leftOutWords(compared.leftOut)].filter(part => part !== '').join(' ')
  }
  return {
    head: who, words: said(`: too few for a mean, so here they stand, ${pair}`), inShort: said(', too few for a mean'),
    table: headings.length === 0 ? null : enough ? meansTable(headings, what) : plainTable(headings),
    largest: enough ? compared.largest.map(each => differenceView(each, compared)) : [],
  }
}

function meansTable(headings: SheetsCompared['headings'], what: string): Table {
  return {
    columns: [{head: 'Heading'}, {head: 'Of', number: true}, {head: 'Birds', number: true}, {head: what, number: true}, {head: '95%', number: true}, {head: 'Next bird, 95%', number: true}],
    rows: headings.map(({heading, of, agreed}): readonly Cell[] => [
      heading, of === null ? NOTHING : mark(of), String(agreed.n), signed(rounded(agreed.mean, 1)), agreed.n < LEAST_FOR_LIMITS ? 'too few' : agreed.interval ? range(agreed.interval) : 'all alike', agreed.limits ? range(agreed.limits) : NOTHING,
    ]),
  }
}

/** No line ends inside a band. */
const unbroken = (band: string): string => band.replaceAll('-', '-\u2060')

/** A column a sheet: both marks, as they are. */
function plainTable(headings: SheetsCompared['headings']): Table {
  const sheets = [...new Set(headings.flatMap(({differences}) => differences.flatMap(({sheets: [own]}) => own ?? [])))]
  return {
    columns: [{head: 'Heading'}, {head: 'Of', number: true}, ...sheets.map(({bird, score: {by}}) => ({head: typeof by === 'string' ? `${unbroken(bird.band)}, ${by}` : unbroken(bird.band), number: true}))],
    rows: headings.map(({heading, of, differences}): readonly Cell[] => [heading, of === null ? NOTHING : mark(of), ...sheets.map(sheet => {
      const own = differences.find(({sheets: [first]}) => first === sheet)
      return own ? `${mark(own.first)}, ${mark(own.second)}` : NOTHING
    })]),
  }
}

/** `Head and comb: 12 by judge 1, 14 by us` */
function differenceView({heading, bird, first, second, sheets}: Difference, {between, names: [one, other]}: SheetsCompared): PointsView['largest'][number] {
  const [own] = sheets, by = own && typeof own.score.by === 'string' ? own.score.by : listWords(one)
  return {
    bird: {band: bird.band, link: birdPath(bird)}, words: `${heading}: ${mark(first)} by ${by}, ${mark(second)} by ${between === 'judges' ? 'us' : listWords(other)}`,
    show: own?.show ? {words: dateWords(own.show.on), link: showPath(own.show)} : null,
  }
}

export const pointsViews = (compared: readonly SheetsCompared[]): readonly PointsView[] => compared.map(pointsView)
