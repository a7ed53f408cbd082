import type {Logbook} from '../logbook/book.ts'
import type {Spot} from '../records/problem.ts'

/**
 * Where a figure comes from, for a table: `scores/2025-autumn.csv:4 shows/2025-09-27-isles.md`, each once and in order; null where nothing may be named.
 * A file that may not be named, because its name holds somebody's who has not agreed to it, is left out.
 */
export function recordReferences(spots: Iterable<Spot>, {tellableFiles}: Pick<Logbook, 'tellableFiles'>): string | null {
  const named = new Map<string, readonly [file: string, line: number]>()
  for (const spot of spots) if (tellableFiles.has(spot.file)) {
    const line = 'line' in spot ? spot.line : 0
    named.set(line === 0 ? spot.file : `${spot.file}:${line}`, [spot.file, line])
  }
  const inOrder = [...named].sort(([, [a, one]], [, [b, other]]) => (a < b ? -1 : a > b ? 1 : one - other))
  return inOrder.length === 0 ? null : inOrder.map(([name]) => name.replaceAll(' ', '%20')).join(' ')
}
