import type {Slip, Spot} from '../../records/problem.ts'
import type {Bird} from '../book.ts'
import {percentWords} from './chances-do-not-sum.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const hen = (band: string, kin: string) => `---\nband: ${band}\nsex: female\nstrain: holm-white\nhatched: 2022-03-20\nkin: [${kin}]\n---\n`

export const entry: ManualEntry = {
  code: 'kinship-contradicts', severity: 'error', title: 'Kinships of founders that cannot all be true',
  cause: 'The kinships stated of some founders exclude each other: a bird as good as the same as two others would make these two alike; or the same two birds are given two kinships.',
  remedy: 'Mend one of the kinships, or add the one between the two that is missing. None of those named is used until then.',
  wrong: {'birds/H-4.md': hen('H-4', '{with: H-3, kinship: 45%}, {with: H-5, kinship: 45%}'), 'birds/H-5.md': hen('H-5', '{with: H-3, kinship: 2%}')},
  right: {'birds/H-4.md': hen('H-4', '{with: H-3, kinship: 45%}, {with: H-5, kinship: 45%}'), 'birds/H-5.md': hen('H-5', '{with: H-3, kinship: 40%}')},
}

interface Stated {
  readonly birds: readonly [Bird, Bird]
  readonly kinship: number
  readonly at: Spot
}

const inWords = ({birds: [one, other], kinship}: Stated): string => `${one.band} and ${other.band} ${percentWords(kinship)}`

/** @param group the statements that are tied to one another, at least two */
export function kinshipsContradict(group: readonly Stated[]): Slip {
  const at = group.at(-1)?.at ?? {file: '', path: []}
  return slipOf(entry, at, `these kinships cannot all be true: ${group.map(inWords).join(', ')}; two that are not stated count as their strains have it`,
    'mend one of them, or add the one that is missing', ...group.slice(0, -1).map(each => ({at: each.at, note: inWords(each)})))
}

export const kinshipStatedTwice = (before: Stated, again: Stated): Slip =>
  slipOf(entry, again.at, `${inWords(again)}, but elsewhere ${percentWords(before.kinship)}`, 'state it once, of either bird', {at: before.at, note: inWords(before)})

export const kinOfItself = (bird: Bird, at: Spot): Slip =>
  slipOf(entry, at, `${bird.band} is stated to be kin to itself`, 'mend the band after with:')
