/** The likely right word for a mistyped one. */
import {distance} from 'fastest-levenshtein'

/** Up to three candidates within two slips of the keyboard (one for words of up to three letters), the nearest first. */
export function near(word: string, candidates: Iterable<string>): string[] {
  const limit = word.length <= 3 ? 1 : 2
  const found: [number, string][] = []
  const folded = word.toLowerCase()
  for (const candidate of candidates) {
    if (Math.abs(candidate.length - word.length) > limit) continue
    const off = distance(folded, candidate.toLowerCase())
    if (off <= limit) found.push([off, candidate])
  }
  found.sort((a, b) => a[0] - b[0] || (a[1] < b[1] ? -1 : a[1] > b[1] ? 1 : 0))
  return found.slice(0, 3).map(([, candidate]) => candidate)
}

/** The remedy that names near candidates, or another where there is none. */
export function orNear(candidates: readonly string[], otherwise: string): string {
  return candidates.length === 0 ? otherwise : `did you mean ${candidates.join(' or ')}?`
}
