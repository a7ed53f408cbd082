/** The likely right word for a mistyped one. */
import {distance} from 'fastest-levenshtein'
import {digitsMeant} from './letters-for-digits.ts'

/**
 * How many slips of the keyboard part two words: a letter too many, wanting or wrong. Two neighbours that changed places count half, since in a row
 * of numbers every other number is a letter away; capital letters, the signs between letters and a letter taken for a figure count for nothing. Null when there are more than
 * two (one for words of up to three letters).
 */
export function slipsBetween(word: string, other: string): number | null {
  const limit = word.length <= 3 ? 1 : 2
  if (Math.abs(other.length - word.length) > limit) return null
  const [a, b] = [word.toLowerCase(), other.toLowerCase()]
  if (a === b || bare(a) === bare(b) || figures(word) === figures(other)) return 0
  const slips = areSwapped(a, b) ? 0.5 : distance(a, b)
  return slips <= limit ? slips : null
}

const bare = (word: string) => word.replace(/[\s_./-]+/g, '')

const figures = (word: string) => bare(digitsMeant(word) ?? word).toLowerCase()

/** Do two words differ in nothing but two neighbouring letters that changed places? */
function areSwapped(a: string, b: string): boolean {
  if (a.length !== b.length) return false
  let at = 0
  while (at < a.length && a[at] === b[at]) at++
  return a[at] === b[at + 1] && a[at + 1] === b[at] && a.slice(at + 2) === b.slice(at + 2)
}

/** Up to three near candidates, the nearest first; one that differs only in capitals and signs leaves the others out. */
export function near(word: string, candidates: Iterable<string>): string[] {
  const found: [number, string][] = []
  for (const candidate of candidates) {
    const slips = slipsBetween(word, candidate)
    if (slips !== null) found.push([slips, candidate])
  }
  found.sort((a, b) => a[0] - b[0] || (a[1] < b[1] ? -1 : a[1] > b[1] ? 1 : 0))
  const [first] = found
  return found.filter(([slips]) => first?.[0] !== 0 || slips === 0).slice(0, 3).map(([, candidate]) => candidate)
}

/** Of a short list of words those that were likely meant: one slip away, or two where the first letter is right. A far-fetched one helps nobody. */
export function nearWords(word: string, words: Iterable<string>): string[] {
  return near(word, words).filter(other => word[0]?.toLowerCase() === other[0] || (slipsBetween(word, other) ?? 2) <= 1)
}

/** Of symbols of loci or names of alleles those that were likely meant: capitals and signs are what is mistaken most (`p` may be P or p+), and of two letters each is another. */
export function nearSymbols(word: string, symbols: readonly string[]): string[] {
  const letters = (symbol: string) => symbol.toLowerCase().replace(/[^a-z0-9]/g, '')
  const alike = symbols.filter(symbol => letters(symbol) === letters(word))
  return alike.length > 0 || word.length < 3 ? alike : near(word, symbols)
}

/** The remedy that names near candidates, or another where there is none. */
export function orNear(candidates: readonly string[], otherwise: string): string {
  return candidates.length === 0 ? otherwise : `did you mean ${candidates.join(' or ')}?`
}
