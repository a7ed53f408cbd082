/** Reads little folders for the tests of this room. */
import {folderInMemory} from '../../src/records/folder.ts'
import {locate} from '../../src/records/locate.ts'
import type {Problem} from '../../src/records/problem.ts'
import {readRecords} from '../../src/records/read.ts'
import type {Raw} from '../../src/records/raw.ts'
import type {Shape} from '../../src/records/shape.ts'
import type {Slip} from '../../src/records/problem.ts'

export function readFiles(files: Readonly<Record<string, string>>) {
  const reading = readRecords(folderInMemory(files))
  return {...reading, problems: locate(reading.slips, file => reading.texts.get(file))}
}

/** `hatches/2024-03.md 8:10-8:12 wrong-unit` */
export function short({code, place: {file, start, end}}: Problem): string {
  return `${file} ${start.line}:${start.column}-${end.line}:${end.column} ${code}`
}

export const problemsOf = (files: Readonly<Record<string, string>>): string[] => readFiles(files).problems.map(short)

/** The one record of a file. */
export const front = (text: string): string => `---\n${text.trim()}\n---\n`

/** What a shape makes of a value, with the codes it noted. */
export function readWith<T>(shape: Shape<T>, raw: Raw): {readonly value: T | undefined; readonly codes: string[]; readonly slips: Slip[]} {
  const slips: Slip[] = []
  const value = shape.read(raw, {file: 'a.md', path: []}, slip => slips.push(slip))
  return {value, codes: slips.map(slip => slip.code), slips}
}
