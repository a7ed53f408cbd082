/** Files that somebody put beside the pages of a published site, such as the address of a host or the folder of a version control. They are kept. */
import {copyFileSync, lstatSync, mkdirSync, readdirSync, readFileSync, readlinkSync, symlinkSync} from 'node:fs'
import {dirname, join} from 'node:path'

/** The marker's text: a word to whoever opens it, and every file of the site. */
export const markerText = (files: readonly string[]): string =>
  `pinfeather publish made the files named below, and replaces them. Others in this folder are left as they are.\n\n${files.join('\n')}\n`

/** The files that a site's marker names; null for a marker that names none. */
function namedIn(marker: string): ReadonlySet<string> | null {
  const [, list] = marker.split('\n\n')
  return list === undefined ? null : new Set(list.trimEnd().split('\n'))
}

/** Paths, with `/`, of what stands in a site and was not published with it. None where the marker does not tell. */
export function ownFiles(site: string, marker: string): readonly string[] {
  const named = namedIn(readFileSync(join(site, marker), 'utf8'))
  if (named === null) return []
  return readdirSync(site, {recursive: true, withFileTypes: true})
    .filter(entry => !entry.isDirectory())
    .map(entry => join(entry.parentPath, entry.name).slice(site.length + 1).replaceAll('\\', '/'))
    .filter(path => path !== marker && !named.has(path))
    .sort()
}

/** Copies one file, or the link itself, keeping its place. */
export function carryOver(path: string, from: string, to: string): void {
  const source = join(from, path), place = join(to, path)
  mkdirSync(dirname(place), {recursive: true})
  if (lstatSync(source).isSymbolicLink()) symlinkSync(readlinkSync(source), place)
  else copyFileSync(source, place)
}
