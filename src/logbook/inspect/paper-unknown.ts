import {near, orNear} from '../../records/near.ts'
import {inside} from '../../records/problem.ts'
import type {Linked} from '../linked.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const waived = (file: string) => `---\nrequirements:
  - {kind: consecutive-shows, title: Consecutive years, asked: Four years, at-least: 4, waived: {because: All gatherings were forbidden., paper: ${file}}}
papers:
  - {file: letter-2022-12.pdf, title: Letter on the forbidden shows, on: 2022-12-03, proves: consecutive-shows}\n---\n`

export const entry: ManualEntry = {
  code: 'paper-unknown', severity: 'warning', title: 'A waiver on a paper that is not among the papers',
  cause: 'A waiver names the file of a paper that stands under no paper of the record, so that the waiver has no day and nobody is told of its paper.',
  remedy: 'Write the file as it stands under papers, or add the paper there with its day.',
  wrong: {'requirements.md': waived('letter-2022-11.pdf')},
  right: {'requirements.md': waived('letter-2022-12.pdf')},
}

export function check({bench}: Linked): void {
  for (const {data, at} of bench.records.requirements) {
    const files = (data.papers ?? []).flatMap(({file}) => file ?? [])
    data.requirements.forEach((read, index) => {
      const paper = read.waived?.paper
      if (paper === undefined || files.includes(paper)) return
      bench.note(slipOf(entry, inside(read.at ?? inside(at, 'requirements', index), 'waived', 'paper'), `no paper has the file ${paper}`, orNear(near(paper, files), 'add the paper under papers, with its day and what it proves')))
    })
  }
}
