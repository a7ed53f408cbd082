import type {Slip, Spot} from '../../records/problem.ts'
import type {Ref} from '../../records/scalars.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const HATCHES = {
  'hatches/2022-08.md': '---\nstrain: holm-white\non: 2022-03-20\nchicks:\n  - {band: "17", sex: female, left: 2023 sold}\n---\n',
  'hatches/2023-08.md': '---\nstrain: holm-white\non: 2023-05-20\nchicks:\n  - {band: "17", sex: female}\n---\n',
}

export const entry: ManualEntry = {
  code: 'band-in-doubt', severity: 'error', title: 'A band that several birds wore',
  cause: 'A band was worn by several birds in turn, and neither the date nor the keeper tells which of them is meant.',
  remedy: 'Name the bird by another band it wore or by the name of its page (17-2022), or give the bands their dates.',
  wrong: {...HATCHES, 'care/2023-06-01-foot.md': '---\ncare: illness\non: 2023\nbirds: ["17"]\n---\n'},
  right: {...HATCHES, 'care/2023-06-01-foot.md': '---\ncare: illness\non: 2023\nbirds: [17-2023]\n---\n'},
}

export function bandInDoubt(ref: Ref, birds: readonly {readonly name: string; readonly at: Spot}[]): Slip {
  return slipOf(entry, ref.at, `band ${ref.text} was worn by ${birds.map(bird => bird.name).join(' and by ')}; nothing here tells which is meant`,
    'name the bird by another band it wore, or give the bands their dates (bands: [{band: …, from: …, to: …}])',
    ...birds.map(({name, at}) => ({at, note: `${name} stands here`})))
}
