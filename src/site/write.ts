/**
 * The only place that touches the output folder. The new site is written whole into a folder beside the old one and then put in its place by renames,
 * so there is always the old site or the new one, never half of either. A folder that is not ours is never replaced, and what somebody put beside
 * the pages of ours is carried over.
 *
 * What a run that is killed leaves behind, and what the next one makes of it. A folder with our marker is whole: the marker is written last,
 * and is the first to go when a folder is removed.
 *
 *     killed while               site/           .site.pinfeather-old    .site.pinfeather-new    the next run
 *     writing the new            old, as it was  –                       part                    begins anew
 *     about to rename            old, as it was  –                       whole                   begins anew
 *     between the two renames    –               old, marked             whole                   puts the old back, before it reads a record
 *       … and site/ made again   empty           old, marked             whole                   the same
 *       … with no old site       –               an empty folder         whole                   begins anew
 *     the new is in its place    new, marked     old, marked             –                       removes the old when it has a newer
 *     removing the old           new, marked     part, without marker    –                       the same
 *
 * This holds for a process that is killed. When the power of the whole computer fails, the system may lose files of the new site that it had said were
 * written; then the records, which are only read, make it again.
 */
import {existsSync, mkdirSync, readdirSync, realpathSync, renameSync, rmdirSync, rmSync, statSync, writeFileSync} from 'node:fs'
import {homedir} from 'node:os'
import {basename, dirname, join, parse, relative, resolve, sep} from 'node:path'
import {carryOver, markerText, ownFiles} from './own-files.ts'

/** The file by which we know a folder as our own. */
export const MARKER = '.pinfeather-site'

/** Why a folder is not replaced. */
export type Refusal =
  | {readonly kind: 'foreign-folder'; readonly target: string}
  | {readonly kind: 'not-a-folder'; readonly target: string}
  | {readonly kind: 'holds-records'; readonly target: string; readonly content: string}
  | {readonly kind: 'home-or-root'; readonly target: string}
  | {readonly kind: 'own-file-in-the-way'; readonly target: string; readonly path: string}

export interface Written {
  readonly kind: 'written'
  readonly target: string
  /** files, the marker not counted */
  readonly files: number
  readonly bytes: number
  /** files that stood in the old site and were not published with it: carried over */
  readonly kept: number
}

/** Taken one by one; a fault in the making of one leaves the old site whole. */
type Files = Iterable<readonly [string, string | Uint8Array]>

/**
 * May this folder be replaced? Asked before anything is worked out, so that nobody waits for a refusal.
 *
 * @param content  the records folder, which must never be written into
 */
export function refusalOf(target: string, content: string): Refusal | null {
  const there = real(target), records = real(content)
  if (there === parse(there).root || there === real(homedir()) || isWithin(real(homedir()), there)) return {kind: 'home-or-root', target}
  if (isWithin(records, there) || isWithin(there, records)) return {kind: 'holds-records', target, content}
  if (!existsSync(there)) return null
  if (!statSync(there).isDirectory()) return {kind: 'not-a-folder', target}
  const entries = readdirSync(there)
  return entries.length === 0 || entries.includes(MARKER) ? null : {kind: 'foreign-folder', target}
}

/** Does neither folder lie in the other, wherever links lead? */
export const liesApart = (one: string, other: string): boolean => !isWithin(real(one), real(other)) && !isWithin(real(other), real(one))

/** The refusal in words, with what to do. */
export function refusalWords(refusal: Refusal): string {
  switch (refusal.kind) {
    case 'foreign-folder': return `${refusal.target} has files in it that pinfeather did not make, and was left as it is; name another folder, or an empty one`
    case 'not-a-folder': return `${refusal.target} is a file; name a folder`
    case 'holds-records': return `${refusal.target} and the records in ${refusal.content} may not lie one inside the other, or publishing would write over records; name a folder beside them`
    case 'own-file-in-the-way': return `${refusal.target} holds ${refusal.path}, which pinfeather did not make, where a page of that name is to stand; move it away`
    case 'home-or-root': return `${refusal.target} is a home or root folder; name a folder inside it`
  }
}

/**
 * Puts the old site back in its place when an earlier run was cut off between its two renames. To be asked at the start of every run,
 * since one whose records are at fault never comes to writing.
 *
 * @returns whether there was one to put back
 */
export function putBackOld(target: string): boolean {
  const there = real(target)
  const old = besideName(there, 'old')
  const isEmpty = existsSync(there) && statSync(there).isDirectory() && readdirSync(there).length === 0
  if (!existsSync(join(old, MARKER)) || (existsSync(there) && !isEmpty)) return false
  if (isEmpty) rmdirSync(there)
  renameSync(old, there)
  return true
}

/**
 * Puts the files in the target's place.
 *
 * @param files  path → content; paths are relative, with `/`
 * @throws the system's error when a file cannot be written, and any fault in the making of one: the old site is then as it was
 */
export function replaceFolder(target: string, files: Files, {content}: {readonly content: string}): Written | Refusal {
  const refusal = refusalOf(target, content)
  if (refusal) return refusal
  const there = real(target)
  const parent = dirname(there)
  mkdirSync(parent, {recursive: true})
  putBackOld(target)
  const fresh = besideName(there, 'new'), old = besideName(there, 'old')
  discard(fresh)
  try {
    const {bytes, count} = writeAll(fresh, files)
    const hadOne = existsSync(there)
    const own = existsSync(join(there, MARKER)) ? ownFiles(there, MARKER) : []
    const inTheWay = own.find(path => existsSync(join(fresh, path)))
    if (inTheWay !== undefined) {
      discard(fresh)
      return {kind: 'own-file-in-the-way', target, path: inTheWay}
    }
    for (const path of own) carryOver(path, there, fresh)
    discard(old)
    if (hadOne) renameSync(there, old)
    try {
      renameSync(fresh, there)
    } catch (fault) {
      if (hadOne) renameSync(old, there)
      throw fault
    }
    discard(old)
    return {kind: 'written', target, files: count, bytes, kept: own.length}
  } catch (fault) {
    discard(fresh)
    throw fault
  }
}

function writeAll(folder: string, files: Files): {readonly bytes: number; readonly count: number} {
  let bytes = 0, count = 0
  const made = new Set<string>(), names: string[] = []
  mkdirSync(folder)
  for (const [path, content] of files) {
    if (!isPlainPath(path)) throw new Error(`${path} is no path inside a site`)
    const place = join(folder, path)
    const inner = dirname(place)
    if (!made.has(inner)) {
      mkdirSync(inner, {recursive: true})
      made.add(inner)
    }
    writeFileSync(place, content)
    names.push(path)
    count += 1
    bytes += typeof content === 'string' ? Buffer.byteLength(content) : content.byteLength
  }
  writeFileSync(join(folder, MARKER), markerText(names))
  return {bytes, count}
}

/** Removes a folder of ours, its marker first: what is left of it when that is cut off is never taken for a whole site. */
function discard(folder: string): void {
  rmSync(join(folder, MARKER), {force: true})
  rmSync(folder, {recursive: true, force: true})
}

/** Where a run that was cut off may have left something of a folder. */
export const besideNames = (there: string): readonly string[] => [besideName(there, 'new'), besideName(there, 'old')]

const besideName = (there: string, which: 'new' | 'old'): string => join(dirname(there), `.${basename(there)}.pinfeather-${which}`)

const isPlainPath = (path: string): boolean => path !== '' && !/^[/\\]|\\|\0|^[A-Za-z]:/.test(path) && path.split('/').every(part => part !== '' && part !== '.' && part !== '..')

/** The folder links lead to, also when its last parts do not exist yet. */
function real(path: string): string {
  const full = resolve(path)
  if (existsSync(full)) return realpathSync(full)
  const parent = dirname(full)
  return parent === full ? full : join(real(parent), basename(full))
}

/** Is `inner` the same as `outer` or inside it? */
function isWithin(inner: string, outer: string): boolean {
  const way = relative(outer, inner)
  return way === '' || (way !== '..' && !way.startsWith(`..${sep}`) && parse(way).root === '')
}
