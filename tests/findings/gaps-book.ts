/** A made-up flock, written as records, of which it is known by construction what it lacks. Its gaps are told of beside the lines that make them. */
import type {Evidence} from '../../src/findings/evidence.ts'
import {study} from '../../src/findings/study.ts'
import type {Logbook} from '../../src/logbook/book.ts'
import type {LinkOptions} from '../../src/logbook/link.ts'
import {linkFiles, type Files} from '../logbook/around.ts'

const founder = (band: string, sex: string, strain: string) => `---\nband: ${band}\nsex: ${sex}\nstrain: ${strain}\nhatched: 2019-04-01\n---\n`
const keeper = (name: string, consent: string) => `---\nname: ${name}\nconsent: ${consent}\n---\n`
const pen = (season: number, male: string, female: string, keeper: string) => `---\nseason: ${season}\nmales: [${male}]\nfemales: [${female}]\nfrom: ${season}-02-01\nto: ${season}-06-01\nkeeper: ${keeper}\n---\n`
const hatch = (pen: string, chicks: readonly string[], day = '04-11') => `---\npen: ${pen}\nset: ${pen.slice(0, 4)}-${day === '04-11' ? '03-21' : '04-01'}\non: ${pen.slice(0, 4)}-${day}\neggs: 12\nhatched: ${chicks.length}\nchicks:\n${chicks.map(chick => `  - {${chick}}\n`).join('')}---\n`

export const GAPS: Files = {
  'project.md': '---\nname: Skerry Fowl\naim: A fowl that stands wind and wet.\nas-of: 2025-11-15\nstrains: {recurrent: holm-white, donors: [fell-buff]}\n---\n',
  'strains/holm-white.md': '---\nname: Holm White\nrole: recurrent\n---\n', 'strains/fell-buff.md': '---\nname: Fell Buff\nrole: donor\n---\n',
  'traits/comb.md': '---\nname: Comb\nstates: [pea, single]\ntarget: pea\nrequired: yes\n---\n',
  'keepers/north.md': keeper('The keeper in the north', '2020-01-15'), 'keepers/south.md': keeper('The keeper in the south', '2020-01-15'), 'keepers/west.md': keeper('Nobody To Be Named', 'no'),
  'birds/H-1.md': founder('H-1', 'male', 'holm-white'), 'birds/B-1.md': founder('B-1', 'female', 'fell-buff'),
  // no hatch in 2022; in the south the last was that of 2024, in the west none at all
  'pens/2021-A.md': pen(2021, 'H-1', 'B-1', 'north'), 'hatches/2021-1.md': hatch('2021-A', ['band: 21-001, sex: male', 'band: 21-002, sex: female']),
  'pens/2023-A.md': pen(2023, '21-001', '21-002', 'north'),
  'hatches/2023-1.md': hatch('2023-A', ['band: 23-001, sex: male', 'band: 23-002, sex: female', 'band: 23-003, sex: female', 'band: 23-004, sex: male']),
  'pens/2024-A.md': pen(2024, '23-001', '23-002', 'north'), 'hatches/2024-1.md': hatch('2024-A', ['band: 24-001, sex: male, photos: [{file: a.png, on: 2024-10-01, alt: A cockerel.}]', 'band: 24-002, sex: female, photos: [{file: b.png, alt: A hen.}]']),
  'pens/2024-B.md': pen(2024, '23-004', '23-003', 'south'), 'hatches/2024-2.md': hatch('2024-B', ['band: 24-101, sex: male', 'band: 24-102, sex: female, left: 2025-01-10 sold']),
  // one pair is bred from
  'pens/2025-A.md': pen(2025, '24-001', '24-002', 'north'), 'hatches/2025-1.md': hatch('2025-A', ['band: 25-001, sex: male', 'band: 25-002, sex: female']),
  // three shows, one of them cancelled; the hen was disqualified, the pullet has no points, one judge at both
  'shows/2023-11-04.md': '---\nname: First show\non: 2023-11-04\njudges: {j: {name: A judge, consent: no}}\nentries:\n  - {bird: 23-001, class: cockerel, judge: j, points: 91}\n---\n',
  'shows/2024-11-02.md': '---\nname: Second show\non: 2024-11-02\ncancelled: All gatherings were forbidden.\n---\n',
  'shows/2025-10-04.md': '---\nname: Third show\non: 2025-10-04\njudges: {j: {name: A judge, consent: no}}\nentries:\n  - {bird: 24-001, class: cock, judge: j, points: 93}\n  - {bird: 25-002, class: pullet, judge: j}\n  - {bird: 23-003, class: hen, judge: j, disqualified: yes}\n---\n',
  // nothing on the female, no weights, and the neck has no words
  'standard/1.md': '---\ndraft: 1\non: 2025-10-10\nscale: {Type: 60, Colour: 40}\nclauses: {male/neck: {mandatory: yes}, male/comb: {mandatory: yes, trait: comb}}\n---\n## Male\n\n**Comb.** Pea.\n\n**Neck.**\n\n## Colour\n\nWhite.\n\n## Faults\n\nAny comb but pea.\n',
  'photos/a.png': '', 'photos/b.png': '',
}

/** By hand: from Holm White in comb and tail, the egg not filled in; from Fell Buff in skin alone. Of three papers one ran out, and one is of spring. */
export const requirements = (lines: readonly string[]): string => `---
requirements:
${lines.map(line => `  - {title: t, asked: a, ${line}}\n`).join('')}papers:
  - {file: v1.pdf, title: Visit, on: 2024-08-12, until: 2025-08-12, proves: veterinary}
  - {file: s1.pdf, title: Statement of the north, on: 2025-03-01, proves: statements, keeper: north}
distinctness:
  - {character: Comb, Skerry Fowl: pea, Holm White: single, Fell Buff: pea}
  - {character: Skin, Skerry Fowl: white, Holm White: White, Fell Buff: yellow}
  - {character: Tail, Skerry Fowl: 45 degrees, Holm White: 40 degrees, Fell Buff: 45 degrees}
  - {character: Egg, Skerry Fowl: tinted}
---
`

export function gapsBook(lines: readonly string[], files: Files = {}, options: LinkOptions = {}): Logbook {
  const all = Object.fromEntries(Object.entries({...GAPS, 'requirements.md': requirements(lines), ...files})), {book, problems} = linkFiles(all, options)
  const errors = problems.filter(({severity}) => severity === 'error')
  if (!book || errors.length > 0) throw new Error(errors.map(({place, reason}) => `${place.file}:${place.start.line} ${reason}`).join('\n') || 'no book')
  return book
}

export const evidenceOf = (lines: readonly string[], files: Files = {}): readonly Evidence[] => study(gapsBook(lines, files)).evidence.items

/** The only requirement there is. */
export function evidenceFor(line: string, files: Files = {}): Evidence {
  const [only] = evidenceOf([line], files)
  if (!only) throw new Error('no evidence')
  return only
}
