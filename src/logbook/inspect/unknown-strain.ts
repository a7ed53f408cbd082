import {orNear} from '../../records/near.ts'
import type {Slip} from '../../records/problem.ts'
import type {Ref} from '../../records/scalars.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

export const entry: ManualEntry = {
  code: 'unknown-strain', severity: 'error', title: 'A strain that has no record',
  cause: 'A record names a strain, but no file in strains/ bears that name.',
  remedy: 'Write the strain’s id as its file is called, or add the file.',
  wrong: {'birds/H-9.md': '---\nband: H-9\nsex: male\nstrain: holm-whit\n---\n'},
  right: {'birds/H-9.md': '---\nband: H-9\nsex: male\nstrain: holm-white\n---\n'},
}

export const unknownStrain = (ref: Ref, near: readonly string[]): Slip =>
  slipOf(entry, ref.at, `no strain is called ${ref.text}`, orNear(near, `add strains/${ref.text}.md, or write the strain’s id as its file is called`))
