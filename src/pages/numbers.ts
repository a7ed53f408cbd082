/** Rounding, shares, ranges and counts in words. One decimal of a per cent everywhere; `to` or an en dash between limits. */
import type {Interval} from '../findings/estimate.ts'

/** What stands in a table where nothing can be said. */
export const NOTHING = '–'

/** A number to so many decimals, never `-0`; halves go away from zero as a reader expects. */
export function rounded(value: number, decimals: number): string {
  if (!Number.isFinite(value)) return NOTHING
  const factor = 10 ** decimals
  const whole = Math.round(Math.abs(value) * factor * (1 + Number.EPSILON))
  return ((value < 0 && whole !== 0 ? -whole : whole) / factor).toFixed(decimals)
}

/** A rounded difference with its sign: `+0.11 kg`, `−0.08`; nought has none. */
export const signed = (text: string): string => (text.startsWith('-') ? text.replace('-', '−') : /[1-9]/.test(text) ? `+${text}` : text)

/** A share as per cent without the sign: 0.952 → `95.2`. */
export const percent = (share: number): string => rounded(share * 100, 1)

/** With the sign: `95.2%`. */
export const percentSign = (share: number): string => `${percent(share)}%`

/** Limits of shares in words: `86.7 to 98.3`. */
export const limits = (interval: Interval): string => `${percent(interval.low)} to ${percent(interval.high)}`

/** Limits of shares in a table: `86.7–98.3`. */
export const limitsShort = (interval: Interval): string => `${percent(interval.low)}–${percent(interval.high)}`

/** Limits already rounded, with a true minus: `−15.4 to 16.3`. */
export const sizeRange = (low: string, high: string): string => `${low.replace('-', '−')} to ${high.replace('-', '−')}`

/** The same, never broken at its dash. */
export const whole = (range: string): string => range.replace('–', '\u2060–\u2060')

/** `59 of 62` */
export const ofWords = (count: number, total: number): string => `${count} of ${total}`

const SMALL = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten', 'eleven', 'twelve']

/** A count as spoken: words to twelve, figures above; nought is `no`. */
export const countWord = (count: number): string => SMALL[count] ?? String(count)

/** A count and its thing: `one chick`, `no chicks`, `62 chicks`. */
export const counted = (count: number, one: string, many = `${one}s`): string => `${countWord(count)} ${count === 1 ? one : many}`

/** The same in figures: `1 chick`, `62 chicks`. */
export const figured = (count: number, one: string, many = `${one}s`): string => `${count} ${count === 1 ? one : many}`

/** How the counts of one sentence are said: all in words while every one is twelve or less, else all in figures. */
export const saying = (...counts: readonly number[]): typeof counted => (counts.every(count => count < SMALL.length) ? counted : figured)

/** First letter large, for the head of a sentence. */
export const sentence = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)

/** `a`, `a and b`, `a, b and c`. */
export function listWords(words: readonly string[], joint = 'and'): string {
  if (words.length < 2) return words.join('')
  return `${words.slice(0, -1).join(', ')} ${joint} ${words[words.length - 1] ?? ''}`
}
