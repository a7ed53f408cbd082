import {orNear} from '../../records/near.ts'
import type {Slip} from '../../records/problem.ts'
import type {Ref} from '../../records/scalars.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

export const entry: ManualEntry = {
  code: 'unknown-band', severity: 'error', title: 'A band that no bird wears',
  cause: 'A record names a bird by a band that no hatch and no file in birds/ gives to a bird.',
  remedy: 'Mend the band, or record the bird: a line in its hatch, or a file in birds/ for a founder.',
  wrong: {'pens/2024-B.md': '---\nseason: 2024\nmales: [H-1]\nfemales: [B-22]\n---\n'},
  right: {'pens/2024-B.md': '---\nseason: 2024\nmales: [H-1]\nfemales: [B-2]\n---\n'},
}

export const unknownBand = (ref: Ref, near: readonly string[]): Slip =>
  slipOf(entry, ref.at, `no bird wears band ${ref.text}`, orNear(near, `mend the band, or add birds/${ref.text.replaceAll('/', '-')}.md for a founder`))
