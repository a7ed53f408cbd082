/** Quotation marks as a phone writes them. They are part of the text: only straight ones hold a text together. */
import type {Slip, Spot} from './problem.ts'

const OPENING = /^[“”„‟‘’‚«»]/
const CLOSING = /[“”„‟‘’‚«»]$/

export const opensCurly = (text: string): boolean => OPENING.test(text.trim())
export const isCurly = (text: string): boolean => opensCurly(text) || CLOSING.test(text.trim())

export function curlyQuotes(text: string, at: Spot): Slip {
  const words = text.trim().replace(OPENING, '').replace(CLOSING, '').trim()
  return {
    code: 'curly-quotes', severity: 'error', at, reason: 'the quotation marks here are curly, and so part of the text',
    remedy: `write "${words}" with straight quotes${/[,:#]/.test(words) ? '' : ', or no quotes at all'}`,
  }
}
