/** The files of records behind a number, by name: what a secretary opens to see where it comes from. */
import type {Spot} from '../records/problem.ts'
import {figured, NOTHING} from './numbers.ts'

/** More birds' files than this are not listed: each is called by its band. */
const MOST_BIRDS = 6

/**
 * `hatches/: 2024-01, 2024-03; scores/2025-autumn.csv lines 2 to 9 and 12; birds/: a file each, by band`. Files whose names would name somebody who has not agreed to it are counted.
 */
export function recordNames(spots: readonly Spot[], tellable: ReadonlySet<string>): string {
  const folders = new Map<string, Map<string, Set<number>>>()
  for (const spot of spots) {
    const folder = spot.file.slice(0, spot.file.lastIndexOf('/') + 1)
    const files = folders.get(folder) ?? new Map<string, Set<number>>()
    folders.set(folder, files)
    const lines = files.get(spot.file) ?? new Set()
    files.set(spot.file, lines)
    if ('line' in spot) lines.add(spot.line)
  }
  const told = [...folders].sort(([a], [b]) => (a < b ? -1 : 1)).map(([folder, files]) => inFolder(folder, [...files].sort(([a], [b]) => (a < b ? -1 : 1)), tellable))
  return told.length === 0 ? NOTHING : told.join('; ')
}

type File = readonly [string, ReadonlySet<number>]

function inFolder(folder: string, files: readonly File[], tellable: ReadonlySet<string>): string {
  if (folder === 'birds/' && files.length > MOST_BIRDS) return 'birds/: a file each, by band'
  const named = files.filter(([file]) => tellable.has(file)), hidden = files.length - named.length
  const names = named.map(([file, lines]) => `${named.length === 1 || folder === '' ? file : file.slice(folder.length)}${lineWords(lines)}`)
  const others = hidden === 0 ? [] : [named.length === 0 ? (folder === '' ? `${figured(hidden, 'file')} not named here` : `${folder} (${figured(hidden, 'file')})`) : `and ${figured(hidden, 'file more', 'files more')}`]
  return `${named.length > 1 && folder !== '' ? `${folder}: ` : ''}${[...names.map(name => (folder === '' ? name : name.replace(/\.md$/, ''))), ...others].join(', ')}`
}

/** ` lines 2 to 9 and 12` */
function lineWords(lines: ReadonlySet<number>): string {
  const sorted = [...lines].sort((a, b) => a - b), runs: [number, number][] = []
  for (const line of sorted) {
    const run = runs.at(-1)
    if (run && line === run[1] + 1) run[1] = line
    else runs.push([line, line])
  }
  if (runs.length === 0) return ''
  const words = runs.map(([from, to]) => (from === to ? String(from) : `${from} to ${to}`))
  return ` line${sorted.length === 1 ? '' : 's'} ${words.length === 1 ? words[0] ?? '' : `${words.slice(0, -1).join(', ')} and ${words.at(-1) ?? ''}`}`
}
