/** The true-bred rate as a table of required traits with their intervals, and what was not scored, lost or too young, in words. */
import type {CannotSay, Share} from '../findings/estimate.ts'
import type {TrueBredRate} from '../findings/true-bred.ts'
import type {Project, Trait} from '../logbook/book.ts'
import {wantedOfBoth} from './amounts.ts'
import {cannotSay, scaleOf, shareCandle, shareInText} from './estimate-words.ts'
import type {NamedCandle} from './estimate-words.ts'
import {traitPath} from './links.ts'
import {counted, figured, limits, listWords, NOTHING, ofWords, percent} from './numbers.ts'
import {onFewerWords} from './true-bred-words.ts'

export interface RateRow {
  readonly text: string
  readonly link: string | null
  readonly chicks: string
  readonly percent: string
  readonly candle: NamedCandle | null
  readonly limits: string
}

export interface TrueBredView {
  readonly scale: string
  readonly rows: readonly RateRow[]
  readonly all: RateRow
  /** plain sentences beneath */
  readonly words: readonly string[]
}

function row(text: string, link: string | null, share: Share | CannotSay, scale: ReturnType<typeof scaleOf>): RateRow {
  if (share.kind === 'cannot-say') return {text, link, chicks: cannotSay(share), percent: NOTHING, candle: null, limits: ''}
  return {text, link, chicks: ofWords(share.count, share.total), percent: percent(share.value), candle: shareCandle(share, scale), limits: limits(share.interval)}
}

/** What is wanted, as a head for its row: `Comb: pea`. */
function traitHead(trait: Trait, units: Project['units']): string {
  const wanted = wantedOfBoth(trait, units)
  return wanted === null ? trait.name : `${trait.name}: ${wanted}`
}

function aside(rate: TrueBredRate): readonly string[] {
  const apart = [
    ...(rate.partScored > 0 ? [`${figured(rate.partScored, 'chick')} not fully scored`] : []), ...(rate.lost > 0 ? [`${rate.lost} gone before scoring age`] : []),
    ...(rate.tooYoung > 0 ? [`${rate.tooYoung} too young yet`] : []), ...(rate.unlisted > 0 ? [`${rate.unlisted} hatched but not listed`] : []),
  ]
  const bounds = rate.partScored > 0 && rate.ifAllFail.kind === 'share' && rate.ifAllPass.kind === 'share'
    ? [`Were all not fully scored to fail, the rate would be ${shareInText(rate.ifAllFail)}; were all to pass, ${shareInText(rate.ifAllPass)}.`] : []
  const few = rate.rate.kind === 'share' && rate.sires < 5 ? [`These chicks come from ${counted(rate.sires, 'sire')}; brothers and sisters are alike, so the interval speaks of these chicks only.`] : []
  const fewer = onFewerWords(rate)
  return [...(fewer === '' ? [] : [fewer]), ...(apart.length > 0 ? [`Counted apart: ${listWords(apart)}.`] : []), ...bounds, ...few]
}

export function trueBredView(rate: TrueBredRate, units: Project['units']): TrueBredView {
  const scale = scaleOf([...rate.traits.map(({share}) => share), rate.rate])
  return {
    scale: `The scale runs from ${scale.from * 100} to 100.`,
    rows: rate.traits.map(({trait, share}) => row(traitHead(trait, units), traitPath(trait), share, scale)),
    all: row('All it could show', null, rate.rate, scale), words: aside(rate),
  }
}
