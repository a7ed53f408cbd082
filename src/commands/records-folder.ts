/** Is this a folder of records at all? If not, what to name instead, or how to begin. */
import {statSync} from 'node:fs'
import {dirname} from 'node:path'
import {folderOnDisk, Unopenable} from '../records/folder.ts'
import {FOLDERS, ownerOf} from '../records/places.ts'
import {isSystemFault} from './system-fault.ts'

/** Why a path cannot be taken for the folder of records, in sentences; null when it can: when one file at least is where a record is looked for. */
export function folderRefusal(path: string): string | null {
  try {
    return wantedFolder(path)
  } catch (fault) {
    if (fault instanceof Unopenable) return `${fault.place} cannot be opened (${REASONS[fault.code] ?? fault.code}); mend that, or take it out of the records.`
    if (isSystemFault(fault)) return `${path} cannot be opened (${REASONS[fault.code] ?? fault.code}). Name the folder that holds project.md.`
    throw fault
  }
}

/** Why the system opens no folder, in words. */
const REASONS: Readonly<Record<string, string>> = {
  EACCES: 'you may not read it', EPERM: 'you may not read it', ENOENT: 'a link that leads nowhere', ELOOP: 'a link that leads round in a ring', EIO: 'its disk cannot be read',
}

function wantedFolder(path: string): string | null {
  const found = statSync(path, {throwIfNoEntry: false})
  if (found === undefined) return `There is no folder ${path}. Name the folder that holds project.md.`
  if (!found.isDirectory()) {
    const above = [dirname(path), dirname(dirname(path))].find(folder => isFile(`${folder}/project.md`))
    return `${path} is a file. ${above === undefined ? 'Name the folder that holds project.md.' : `Name the folder that holds the records: ${above}`}`
  }
  const files = folderOnDisk(path).list()
  return files.some(isRecord) ? null : noRecords(path, files)
}

/** Is there a folder at all? */
export const isFolder = (path: string): boolean => statSync(path, {throwIfNoEntry: false})?.isDirectory() === true
const isFile = (path: string): boolean => statSync(path, {throwIfNoEntry: false})?.isFile() === true

function isRecord(file: string): boolean {
  const owner = ownerOf(file)
  return owner !== null && owner.what !== 'photo' && owner.what !== 'paper'
}

function noRecords(path: string, files: readonly string[]): string {
  const [project] = files.filter(file => file.endsWith('/project.md')).sort((a, b) => a.length - b.length || (a < b ? -1 : 1))
  if (project !== undefined) return `No record was found in ${path} itself; they seem to lie in ${path}/${dirname(project)}. Name that folder.`
  const places = FOLDERS.filter(folder => folder !== 'photos' && folder !== 'papers').map(folder => `${folder}/`)
  return `No record was found in ${path}: project.md is not there, nor any file in ${places.join(', ')}.
To begin, write ${path}/project.md:

---
name: My Fowl
aim: What the breed is to be, in one sentence.
---

The README shows the next four records; the page “How records are written” of any published site shows every kind.`
}
