/** Is this a folder of records at all? If not, what to name instead, or how to begin. */
import {statSync} from 'node:fs'
import {dirname} from 'node:path'
import {folderOnDisk} from '../records/folder.ts'
import {FOLDERS, ownerOf} from '../records/places.ts'

/** Why a path cannot be taken for the folder of records, in sentences; null when it can: when one file at least is where a record is looked for. */
export function folderRefusal(path: string): string | null {
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
