/** The true-bred rate as a table of required traits with their intervals, of these chicks and by sire families, and what was not scored, lost or too young, in words. */
import type {CannotSay, Share} from '../findings/estimate.ts'
import type {TrueBredRate} from '../findings/true-bred.ts'
import type {Project, Trait} from '../logbook/book.ts'
import {candle} from '../charts/candle.ts'
import {FEWEST_FAMILIES, type FamilyShare} from '../statistics/family-bootstrap.ts'
import {wantedOfBoth} from './amounts.ts'
import {cannotSay, scaleOf, shareCandle, shareInText} from './estimate-words.ts'
import type {NamedCandle} from './estimate-words.ts'
import {traitPath} from './links.ts'
import {counted, countWord, figured, limits, listWords, NOTHING, ofWords, percent} from './numbers.ts'
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
  /** the same rate with the interval by sire families; null where there are too few */
  readonly families: RateRow | null
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

/** Whose chicks an interval speaks of, and which a committee should read; empty where nobody was judged. */
function whichToRead(family: FamilyShare | null): string {
  if (family === null) return ''
  return family.kind === 'families' ? `A committee should read the interval by ${family.families} sire families: it speaks of birds bred like these. The other speaks of these chicks only.`
    : `A committee should read the interval as said of these chicks only: they come of ${counted(family.families, 'sire family', 'sire families')}, and under ${countWord(FEWEST_FAMILIES)} nothing can be said of birds bred like them.`
}

function aside(rate: TrueBredRate, family: FamilyShare | null): readonly string[] {
  const apart = [
    ...(rate.partScored > 0 ? [`${figured(rate.partScored, 'chick')} not fully scored`] : []), ...(rate.lost > 0 ? [`${rate.lost} gone before scoring age`] : []),
    ...(rate.tooYoung > 0 ? [`${rate.tooYoung} too young yet`] : []), ...(rate.unlisted > 0 ? [`${rate.unlisted} hatched but not listed`] : []),
  ]
  const bounds = rate.partScored > 0 && rate.ifAllFail.kind === 'share' && rate.ifAllPass.kind === 'share'
    ? [`Were all not fully scored to fail, the rate would be ${shareInText(rate.ifAllFail)}; were all to pass, ${shareInText(rate.ifAllPass)}.`] : []
  const read = whichToRead(family), fewer = onFewerWords(rate)
  const among = [...(rate.culled > 0 ? [`${rate.culled} culled since`] : []), ...(rate.unbanded > 0 ? [`${rate.unbanded} that never wore a band`] : [])]
  const counts = [...(among.length > 0 ? [`Among those counted: ${listWords(among)}.`] : []), ...(apart.length > 0 ? [`Counted apart: ${listWords(apart)}.`] : [])].join(' ')
  return [...(read === '' ? [] : [read]), ...(fewer === '' ? [] : [fewer]), ...(counts === '' ? [] : [counts]), ...bounds]
}

/** @param family  the same chicks by their sires; null where nobody was judged */
export function trueBredView(rate: TrueBredRate, family: FamilyShare | null, units: Project['units']): TrueBredView {
  const drawn = family?.kind === 'families' ? family : null, lowest = scaleOf([...rate.traits.map(({share}) => share), rate.rate])
  const scale = drawn !== null && drawn.low < lowest.from ? {from: 0, to: 1} : lowest
  return {
    scale: `The scale runs from ${scale.from * 100} to 100.`,
    rows: rate.traits.map(({trait, share}) => row(traitHead(trait, units), traitPath(trait), share, scale)),
    all: row('All it could show', null, rate.rate, scale),
    families: drawn && {
      text: `The same, by ${drawn.families} sire families`, link: null, chicks: '', percent: percent(drawn.share), limits: limits(drawn),
      candle: {...candle(drawn.share, drawn, scale, null), label: `${percent(drawn.share)} per cent, ${limits(drawn)} by families`},
    },
    words: aside(rate, family),
  }
}
