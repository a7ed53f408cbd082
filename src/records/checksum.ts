/**
 * Which records were these? The checksum of a folder of records, by which a paper made from them can be held against the folder later.
 *
 *     each record file ──SHA-256 of its bytes──▶ a line “<64 digits>  <path>”, lines in order of path ──SHA-256──▶ the whole, 64 digits
 *
 * In it: every Markdown and CSV file that reading opened, with its path inside the folder (`/` between its parts) and its bytes as they are on disk, line ends and
 * byte-order mark too; a comment or a private note counts like any other word. Not in it: photographs and papers (their names and days count where a record names them,
 * their pictures and pages do not), the project's own templates, files that begin with a dot, and the loci that come with Pinfeather. The lines
 * are those that `sha256sum` prints and checks, so that anybody can work the checksum without Pinfeather.
 *
 * The lines themselves are never published: a path may hold a person's name, and a short file can be found out from its sum by trying names.
 * The whole gives nothing away to somebody who has not every file.
 *
 * @see FIPS 180-4, Secure Hash Standard: SHA-256
 */
import {createHash} from 'node:crypto'

export interface FileSum {
  /** path inside the folder of records, with `/` */
  readonly file: string
  /** SHA-256 of its bytes, 64 hex digits */
  readonly sum: string
}

export interface Checksum {
  /** 64 hex digits */
  readonly whole: string
  /** what it is made of, in order of path by code unit */
  readonly files: readonly FileSum[]
}

export const sumOf = (bytes: Uint8Array | string): string => createHash('sha256').update(bytes).digest('hex')

/** The lines that the whole is the sum of. */
export const checksumLines = (files: readonly FileSum[]): string => files.map(({file, sum}) => `${sum}  ${file}\n`).join('')

export function checksumOf(unordered: readonly FileSum[]): Checksum {
  const files = [...unordered].sort((a, b) => (a.file < b.file ? -1 : a.file > b.file ? 1 : 0))
  return {whole: sumOf(checksumLines(files)), files}
}

/** Hex digits of the short form: enough that no two books a person meets share it, few enough to be read out. */
export const SHORT_DIGITS = 16

/** The first digits in groups of four, to be printed and read out: `ab12 cd34 ef56 7890`. */
export const shortChecksum = (whole: string): string => (whole.slice(0, SHORT_DIGITS).match(/.{1,4}/g) ?? []).join(' ')
