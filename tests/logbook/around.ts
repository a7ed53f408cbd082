/** A small whole project for tests to put files into, and a way to link any set of files. */
import {heredityWarnings} from '../../src/findings/heredity-warnings.ts'
import {standardWarnings} from '../../src/findings/standard-warnings.ts'
import {study} from '../../src/findings/study.ts'
import type {Logbook} from '../../src/logbook/book.ts'
import {link, type LinkOptions} from '../../src/logbook/link.ts'
import {folderInMemory} from '../../src/records/folder.ts'
import {locate} from '../../src/records/locate.ts'
import type {Problem} from '../../src/records/problem.ts'
import {readRecords} from '../../src/records/read.ts'

export type Files = Readonly<Record<string, string>>

const bird = (band: string, sex: string, strain: string) => `---\nband: ${band}\nsex: ${sex}\nstrain: ${strain}\nhatched: 2022-03-20\n---\n`

/** Two strains, two traits, a keeper, three founders of each strain and one pen without a hatch. Nothing in it is at fault. */
export const AROUND: Files = {
  'project.md': '---\nname: Skerry Fowl\naim: A fowl that stands wind and wet.\nstrains: {recurrent: holm-white, donors: [fell-buff]}\n---\n',
  'strains/holm-white.md': '---\nname: Holm White\nrole: recurrent\ntrue-for: {comb: single}\n---\n',
  'strains/fell-buff.md': '---\nname: Fell Buff\nrole: donor\ntrue-for: {comb: pea}\n---\n',
  'traits/comb.md': '---\nname: Comb\nstates: [pea, single]\ntarget: pea\nrequired: yes\nscored-from: 6 weeks\nmisscoring: 1%\n---\n',
  'traits/weight-20.md': '---\nname: Weight at 20 weeks\nmeasure: weight\nunit: g\nat: 20 weeks\nwindow: 10 days\ntarget: {male: 2.4 kg, female: 1.9 kg}\ntolerance: 10%\n---\n',
  'keepers/kelpgarth.md': '---\nname: The keeper at Kelpgarth\nconsent: 2020-01-15\nsigns-as: [inga]\n---\n',
  'birds/H-1.md': bird('H-1', 'male', 'holm-white'),
  'birds/H-2.md': bird('H-2', 'male', 'holm-white'),
  'birds/H-3.md': bird('H-3', 'female', 'holm-white'),
  'birds/B-1.md': bird('B-1', 'female', 'fell-buff'),
  'birds/B-2.md': bird('B-2', 'female', 'fell-buff'),
  'birds/B-3.md': bird('B-3', 'female', 'fell-buff'),
  'pens/2024-A.md': '---\nseason: 2024\nmales: [H-1]\nfemales: [B-1, B-2]\nfrom: 2024-02-10\nto: 2024-06-01\nkeeper: kelpgarth\nintends: F1\n---\n',
}

export interface Tried {
  readonly book: Logbook | null
  readonly problems: readonly Problem[]
}

/** Reads and links exactly these files. */
export function linkFiles(files: Files, options: LinkOptions = {}): Tried {
  const reading = readRecords(folderInMemory(files))
  const {book, slips} = link(reading, options)
  return {book, problems: locate([...reading.slips, ...slips], file => reading.texts.get(file))}
}

/** The same, and where nothing is at fault what heredity finds besides. */
export function inspectFiles(files: Files): Tried {
  const reading = readRecords(folderInMemory(files)), {book, slips} = link(reading), found = [...reading.slips, ...slips]
  const warnings = book && found.every(({severity}) => severity !== 'error') ? [...standardWarnings(book), ...heredityWarnings(study(book))] : []
  return {book, problems: locate([...found, ...warnings], file => reading.texts.get(file))}
}

/** The small project with some files put in; a file without text is taken out. */
export function around(files: Files): Files {
  return Object.fromEntries(Object.entries({...AROUND, ...files}).filter(([file, text]) => text !== '' || !(file in AROUND)))
}

/** The book of the small project with some files put in, which must not be at fault. */
export function bookOf(files: Files, options: LinkOptions = {}): Logbook {
  const {book, problems} = linkFiles(around(files), options)
  const errors = problems.filter(problem => problem.severity === 'error')
  if (!book || errors.length > 0) throw new Error(errors.map(({place, reason}) => `${place.file}:${place.start.line} ${reason}`).join('\n') || 'no book')
  return book
}

/** Code and place of each problem: `birds/H-9.md:4 unknown-strain`. */
export const codesAt = (problems: readonly Problem[]): string[] => problems.map(({code, place}) => `${place.file}:${place.start.line} ${code}`)
