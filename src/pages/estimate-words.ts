/** Estimates in words and as candles: the share, its limits, its count, and what was left out and why. What cannot be said is said so. */
import {candle} from '../charts/candle.ts'
import type {Candle, CandleScale} from '../charts/candle.ts'
import type {CannotSay, LeftOut, Share} from '../findings/estimate.ts'
import {LEAST_IN_CLASS} from '../findings/spread.ts'
import {figured, limits, listWords, NOTHING, ofWords, percent, sentence} from './numbers.ts'

const WHY_NOT: Readonly<Record<CannotSay['why'], string>> = {
  'none-scored': 'none scored', 'too-few': 'too few', 'not-counted': 'not counted', 'not-finished': 'not finished yet',
}

/** `none scored`, `too few: 3 of the 5 needed` */
export function cannotSay({why, have, need}: CannotSay): string {
  return why === 'too-few' && have > 0 ? `too few: ${have} of the ${need} needed` : WHY_NOT[why]
}

/** The same in a word or two, for a table's cell. */
export const cannotSayShort = ({why}: CannotSay): string => WHY_NOT[why]

const LEFT_OUT: Readonly<Record<LeftOut['why'], string>> = {
  unscored: 'not scored', 'lost-before-scoring': 'gone before scoring age', 'not-listed': 'hatched but not listed', 'too-young': 'too young yet', struck: 'with scores struck out',
  'outside-window': 'scored or weighed outside the days that count', 'small-class': `in a class of fewer than ${LEAST_IN_CLASS}`, 'sex-unknown': 'of unknown sex', 'not-candled': 'not candled', 'not-counted': 'not counted',
  'not-finished': 'not hatched yet', 'set-aside': 'set aside by the keeper',
}

/** `3 not scored and 2 too young yet`; empty when nothing was left out. */
export const leftOutWords = (list: readonly LeftOut[]): string => listWords(list.map(({count, why}) => `${count} ${LEFT_OUT[why]}`))

/** `Left out: 3 not scored, 2 too young yet.`; empty when nothing was. */
export function leftOutSentence(list: readonly LeftOut[]): string {
  return list.length === 0 ? '' : `Left out: ${leftOutWords(list)}.`
}

/** `86.7 to 98.3, 59 of 62 chicks`, as stands beneath a statistic; or why it cannot be said. */
export function shareWords(share: Share | CannotSay, one: string, many = `${one}s`): string {
  if (share.kind === 'cannot-say') return sentence(cannotSay(share))
  return `${limits(share.interval)}, ${share.count} of ${figured(share.total, one, many)}`
}

/** For a sentence: `59 of 62 (95.2%, 86.7 to 98.3)`; or why not. */
export function shareInText(share: Share | CannotSay): string {
  if (share.kind === 'cannot-say') return cannotSay(share)
  return `${ofWords(share.count, share.total)} (${percent(share.value)}%, ${limits(share.interval)})`
}

/** Cells for tables: count of total, per cent, limits. */
export function shareCells(share: Share | CannotSay): readonly [string, string, string] {
  if (share.kind === 'cannot-say') return [cannotSayShort(share), NOTHING, NOTHING]
  return [ofWords(share.count, share.total), percent(share.value), limits(share.interval)]
}

export type NamedCandle = Candle & {readonly label: string}

/** The left end of a scale on which shares lie near the top are best told apart: 50 when none reaches below, else 0. */
export function scaleOf(shares: readonly (Share | CannotSay)[]): CandleScale {
  const lows = shares.flatMap(share => (share.kind === 'share' ? [share.interval.low] : []))
  return {from: lows.length > 0 && Math.min(...lows) >= 0.5 ? 0.5 : 0, to: 1}
}

/** The candle of a share; null where it cannot be said. */
export function shareCandle(share: Share | CannotSay, scale: CandleScale, mark: number | null = null): NamedCandle | null {
  if (share.kind === 'cannot-say') return null
  const marked = mark === null ? '' : `, mark ${percent(mark)}`
  return {...candle(share.value, share.interval, scale, mark), label: `${percent(share.value)} per cent, ${limits(share.interval)}${marked}`}
}
