import type {Spot} from '../records/problem.ts'

/**
 * Where in the records a figure comes from, for a program to follow: `hatches/2024-03.md scores/2025-autumn.csv:12`, each place once, in the order of their names. A line is told of tables; a file that may
 * not be named is left out. Null where nothing may be told.
 *
 * @param tellable `Logbook.tellableFiles`
 */
export function recordPlaces(spots: Iterable<Spot>, tellable: ReadonlySet<string>): string | null {
  const lines = new Map<string, Set<number>>()
  for (const spot of spots) {
    if (!tellable.has(spot.file)) continue
    const own = lines.get(spot.file) ?? new Set<number>()
    lines.set(spot.file, own)
    if ('line' in spot) own.add(spot.line)
  }
  const places = [...lines].sort(([a], [b]) => (a < b ? -1 : 1)).flatMap(([file, own]) => (own.size === 0 ? [file] : [...own].sort((a, b) => a - b).map(line => `${file}:${line}`)))
  return places.length === 0 ? null : places.join(' ')
}
