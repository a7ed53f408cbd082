import {orNear} from '../../records/near.ts'
import type {Slip} from '../../records/problem.ts'
import type {Ref} from '../../records/scalars.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

export const entry: ManualEntry = {
  code: 'unknown-keeper', severity: 'warning', title: 'A keeper who has no record',
  cause: 'A record names somebody who has no file in keepers/ and signs no list. They are counted as a keeper of their own, and never named.',
  remedy: 'Write the keeper’s id as the file is called, add the file, or add the short name to signs-as in the keeper’s file.',
  wrong: {'pens/2024-B.md': '---\nseason: 2024\nmales: [H-1]\nfemales: [B-2]\nkeeper: kelpgrath\n---\n'},
  right: {'pens/2024-B.md': '---\nseason: 2024\nmales: [H-1]\nfemales: [B-2]\nkeeper: kelpgarth\n---\n'},
}

export const unknownKeeper = (ref: Ref, near: readonly string[]): Slip =>
  slipOf(entry, ref.at, `no keeper is called ${ref.text}, or signs so`, orNear(near, `add keepers/${ref.text}.md, or signs-as: [${ref.text}] to the keeper’s file`))
