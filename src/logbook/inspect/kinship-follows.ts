import type {Slip, Spot} from '../../records/problem.ts'
import type {Bird} from '../book.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const chick = (kin: string) => `---\nband: 24-901\nsex: male\nhatched: 2024-05-01\nsire: H-1\ndam: B-2\n${kin}---\n`

export const entry: ManualEntry = {
  code: 'kinship-follows', severity: 'warning', title: 'Kinship stated of a bird that has parents',
  cause: 'A kinship is stated of a bird that is no founder: its parents are in the records, or it may be one of several birds. What it is kin to follows from them, and the stated kinship is not used.',
  remedy: 'Take the kinship out. Where the parents are kin, state it of them, if they are founders.',
  wrong: {'birds/24-901.md': chick('kin: [{with: B-1, kinship: 12.5%}]\n')},
  right: {'birds/24-901.md': chick('')},
}

export function kinshipFollows(bird: Bird, at: Spot): Slip {
  const from = bird.maybe.length > 0 ? 'the birds it may be' : 'its parents'
  return slipOf(entry, at, `${bird.band} is no founder: its kinship follows from ${from}, and what is stated here is not used`, 'take it out, or state it of founders', {at: bird.at, note: `${bird.band} stands here`})
}
