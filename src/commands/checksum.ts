/** `pinfeather checksum`: which records are these, and are they those that a dossier names? Only reads. */
import {checksumLines, SHORT_DIGITS, shortChecksum} from '../records/checksum.ts'
import {folderOnDisk} from '../records/folder.ts'
import {readRecords} from '../records/read.ts'
import {folderRefusal} from './records-folder.ts'
import type {ExitCode, World} from './world.ts'

export interface ChecksumOptions {
  readonly folder: string
  /** digits as a paper has them, in any case and with any spaces; undefined: only tell */
  readonly is: string | undefined
  /** print the line of every file that the checksum is made of */
  readonly list: boolean
}

/** @returns 1 where the records are others than those named */
export function checksum({folder, is, list}: ChecksumOptions, world: World): ExitCode {
  const wanted = is === undefined ? null : digitsOf(is)
  const refused = folderRefusal(folder) ?? (is !== undefined && wanted === null ? `“${is}” is no checksum: write its first ${SHORT_DIGITS} digits or all 64, such as --is "ab12 cd34 ef56 7890".` : null)
  if (refused !== null) {
    world.err(`${refused}\n`)
    return 2
  }
  const {checksum: {whole, files}, slips} = readRecords(folderOnDisk(folder))
  const shut = slips.filter(({code, at}) => code === 'unreadable-file' && !files.some(({file}) => file === at.file)).map(({at}) => `${folder}/${at.file}`)
  if (shut.length > 0) {
    world.err(`${shut.join(', ')} cannot be opened, so these records have no checksum; look whether you may read ${shut.length === 1 ? 'it' : 'them'}.\n`)
    return 2
  }
  if (list) {
    world.out(checksumLines(files))
    return 0
  }
  const counted = `${files.length} record file${files.length === 1 ? '' : 's'} in ${folder}`
  if (wanted === null) {
    world.out(`${shortChecksum(whole)}\n${whole}\nOf ${counted}; photographs and papers are not counted in.\n`)
    return 0
  }
  const same = whole.startsWith(wanted)
  world.out(same ? `The same records: ${counted} give ${shortChecksum(whole)}.\n` : `Other records: ${counted} give ${shortChecksum(whole)}, not ${shortChecksum(wanted)}.\n`)
  return same ? 0 : 1
}

/** The digits without what stands between them; null where there are fewer than the short form has, more than the whole, or others than those of a checksum. */
function digitsOf(words: string): string | null {
  const digits = words.replace(/\s/g, '').toLowerCase()
  return /^[\da-f]+$/.test(digits) && digits.length >= SHORT_DIGITS && digits.length <= 64 ? digits : null
}
