/** The answer first: is it truer and more even than the one before, can it be believed, and how true each one on the way here was. */
import {candle} from '../charts/candle.ts'
import type {FlockSummary, OnTheWay} from '../findings/flock-summary.ts'
import {scorersInDoubt} from '../findings/scorers-in-doubt.ts'
import type {Findings} from '../findings/study.ts'
import type {Project} from '../logbook/book.ts'
import type {FamilyShare} from '../statistics/family-bootstrap.ts'
import {wantedOfBoth} from './amounts.ts'
import {cannotSay, scaleOf, shareInText, type NamedCandle} from './estimate-words.ts'
import {counted, figured, limits, limitsShort, listWords, NOTHING, ofWords, percent, sentence} from './numbers.ts'
import type {Cell, Table} from './page.ts'
import {changeInShort, stepChangeView, type Said} from './step-change-words.ts'
import {stepAlikeWords} from './step-alike.ts'
import {askedWords} from './step-true-bred.ts'
import {ALL_THEY_COULD} from './true-bred-words.ts'

export interface SummaryAnswer {
  readonly title: string
  readonly said: readonly Said[]
  /** how far to believe it; may be empty */
  readonly believe: string
  /** all that was compared; else the required traits on their own; null where none was scored */
  readonly table: Table | null
  readonly words: readonly string[]
  readonly way: WayHere | null
}

/** How true each was, a row a season or step. */
export interface WayHere {
  readonly caption: string
  readonly head: string
  readonly rows: readonly {readonly name: string; readonly chicks: string; readonly percent: string; readonly candle: NamedCandle; readonly limits: string; readonly by: string}[]
}

/** `by 7 sire families`, `these chicks only` */
export const ofWhom = (family: FamilyShare | null): string => (family?.kind === 'families' ? `by ${figured(family.families, 'sire family', 'sire families')}` : 'these chicks only')

function noneBefore({of, chicks, name}: FlockSummary): Said {
  if (chicks.hatched === 0) return {head: 'Nothing hatched yet.', words: `No chick of ${name} is on record, so there is nothing to hold against another ${of}.`}
  return {head: 'Nothing to hold it against.', words: of === 'season' ? 'These are the first chicks of the project: what they show stands here for the next season to be held against.' : 'No step stands before this one that it could be held against.'}
}

/** Whose chicks they are, where a season has several kinds: `BC3F3 chicks of 2025`, `chicks of 2023 (BC3 and SG1, crosses)`. */
function whose({of, name, inside, asked, aside}: FlockSummary): string {
  if (of === 'step' || asked.length === 0) return `chicks of ${name}`
  if (inside) return aside.length === 0 ? `chicks of ${name}` : `${listWords(asked)} chicks of ${name}`
  return `chicks of ${name} (${listWords(asked)}, ${asked.length === 1 ? 'a cross' : 'crosses'})`
}

/** ` The 35 of BC4, a backcross, are not asked.` */
function notAsked({aside}: FlockSummary): string {
  const [only, another] = aside
  if (!only) return ''
  const kind = another ? 'crosses' : only.kind === 'backcross' ? 'a backcross' : 'a cross'
  return ` The ${listWords(aside.map(({step, chicks}) => `${chicks} of ${step}`))}, ${kind}, ${only.chicks === 1 && !another ? 'is' : 'are'} not asked.`
}

/** Two or three sentences for the head and for the list of summaries. */
export function answerInShort(summary: FlockSummary): string {
  const {change, rate} = summary, said = change ? changeInShort(change) : noneBefore(summary).head
  return rate?.rate.kind === 'share' ? `${sentence(ofWords(rate.rate.count, rate.rate.total))} ${whose(summary)} true in all they could show.${notAsked(summary)} ${said}` : said
}

/** Everything required together and each trait, with its count; null where nothing is required or none was scored. */
function requiredTable({rate}: FlockSummary, units: Project['units']): Table | null {
  const rows = (rate?.traits ?? []).map(({trait, share}): readonly Cell[] => {
    const wanted = wantedOfBoth(trait, units), head = wanted === null ? trait.name : `${trait.name}: ${wanted}`
    return share.kind === 'cannot-say' ? [head, cannotSay(share), NOTHING] : [head, ofWords(share.count, share.total), `${percent(share.value)} (${limitsShort(share.interval)})`]
  })
  return rows.length === 0 ? null : {columns: [{head: 'Required trait'}, {head: 'Chicks', number: true}, {head: '%', number: true}], rows}
}

function rateWords({rate, inside, of, name}: FlockSummary): readonly string[] {
  if (!rate) return []
  const told = rate.traits.flatMap(({trait, share}) => (share.kind === 'share' ? [{trait, share}] : [])), [least] = told.toSorted((a, b) => a.share.value - b.share.value)
  const apart = [
    ...(rate.partScored > 0 ? [`${rate.partScored} not fully scored`] : []), ...(rate.lost > 0 ? [`${rate.lost} gone before scoring age`] : []), ...(rate.tooYoung > 0 ? [`${rate.tooYoung} too young yet`] : []), ...(rate.unlisted > 0 ? [`${rate.unlisted} never listed`] : []),
  ]
  const bounds = rate.partScored > 0 && rate.ifAllFail.kind === 'share' && rate.ifAllPass.kind === 'share' ? ` Were those not fully scored to fail, the rate would be ${percent(rate.ifAllFail.value)}%; to pass, ${percent(rate.ifAllPass.value)}%.` : ''
  return [
    ...(least && told.length > 1 && inside ? [`Least uniform of what is required, and so the measure of the whole: ${least.trait.name.toLowerCase()}, ${shareInText(least.share)}.`] : []),
    ...(rate.rate.kind === 'share' ? [`True means: showed ${ALL_THEY_COULD}.${of === 'season' && inside ? ` Of ${name} the chicks mated inside the line count.` : ''}${apart.length === 0 ? '' : ` Counted apart: ${listWords(apart)}.${bounds}`}`] : []),
  ]
}

/** Rows of the way here at most: the last. */
const MOST = 4

function wayHere({of, way}: FlockSummary): WayHere | null {
  const told = way.slice(-MOST).flatMap(each => (each.share.kind === 'share' ? [{...each, share: each.share}] : [])), speaks = ({share, family}: (typeof told)[number]) => (family?.kind === 'families' ? family : share.interval)
  if (told.length === 0) return null
  const scale = scaleOf(told.map(({share}) => share)), crosses = told.some(({inside}) => !inside), theseOnly = told.every(({family}) => family?.kind !== 'families')
  return {
    head: sentence(of), caption: `Chicks true in all they could show, ${of} by ${of}, with the 95% interval${theseOnly ? ', of these chicks only' : ''}; the scale runs from ${percent(scale.from).replace(/\.0$/, '')} to 100.${crosses ? ' Crosses and backcrosses cannot breed true: theirs is the plan.' : ''}`,
    rows: told.map(each => {
      const {low, high} = speaks(each), interval = {low, high}, {name, share, inside, family} = each
      return {
        name: `${name}${inside ? '' : ', cross'}`, chicks: ofWords(share.count, share.total), percent: percent(share.value), limits: limits(interval), by: theseOnly ? '' : ofWhom(family),
        candle: {...candle(share.value, interval, scale), label: `${percent(share.value)} per cent, ${limits(interval)}`},
      }
    }),
  }
}

/** How true this one is, its last row on the way. */
export const lastOfWay = ({way, name}: FlockSummary): OnTheWay | null => way.find(each => each.name === name) ?? null

/** Of a step beside what is asked of it: the lower limit, and the carriers that right looks hide. */
const ofSteps = ({of, steps}: FlockSummary, findings: Findings): readonly string[] => [
  ...(of === 'step' ? steps.map(step => askedWords(step, findings)).filter(words => words !== '') : []),
]

export function summaryAnswer(summary: FlockSummary, findings: Findings): SummaryAnswer {
  const {units} = findings.book.project
  const {change, before} = summary, view = change ? stepChangeView(change, scorersInDoubt(findings.gradedScores.agreements, findings.misscoring)) : null
  const compared = view !== null && change !== null && change.outside.length === 0
  return {
    title: view?.title ?? (before ? `Truer and more even than ${before.name}?` : 'Truer and more even?'), said: view?.said ?? [noneBefore(summary)], believe: [...view?.believe ?? [], ...(change ? [stepAlikeWords(change, findings)] : [])].filter(words => words !== '').join(' '),
    table: compared ? view.table : requiredTable(summary, units),
    words: [...rateWords(summary), ...ofSteps(summary, findings), ...(view && view.left !== '' ? [view.left] : [])], way: wayHere(summary),
  }
}

/** `seven pens` */
export const pensWords = ({pens}: FlockSummary): string => counted(pens.length, 'pen')
