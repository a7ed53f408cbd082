import type {Bird} from '../book.ts'
import type {Linked} from '../linked.ts'
import type {ParentUse} from '../parent-uses.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const pen = (females: string) => `---\nseason: 2024\nmales: [H-1]\nfemales: [${females}]\n---\n`

export const entry: ManualEntry = {
  code: 'wrong-parent-sex', severity: 'error', title: 'A male that is a dam, or a female that is a sire',
  cause: 'A bird stands among the females, as a dam, or with eggs of its own in a setting though it is recorded as a male, or the other way round; or it stands on both sides.',
  remedy: 'Mend the band; or where the sex was mistaken, write the sexings in turn in the bird’s record.',
  wrong: {'pens/2024-B.md': pen('B-2, H-2')},
  right: {'pens/2024-B.md': pen('B-2, H-3')},
}

export function check({bench, uses, doubtful}: Linked): void {
  const first = new Map<Bird, ParentUse>()
  const said = new Set<Bird>()
  for (const use of uses) {
    const {bird, as, at} = use
    if (said.has(bird) || doubtful.has(bird)) continue
    const side = as === 'male' ? 'a male or a sire' : 'a female or a dam'
    const remedy = 'mend the band; where the sex was mistaken, write the sexings in turn: sex: [{is: …, on: …}, {is: …, on: …}]'
    const before = first.get(bird)
    if (bird.sex !== 'unknown' && bird.sex !== as) {
      said.add(bird)
      bench.note(slipOf(entry, at, `${bird.band} stands here as ${side}, but is recorded as ${bird.sex}`, remedy, {at: bird.at, note: `${bird.band} stands here`}))
    } else if (before && before.as !== as) {
      said.add(bird)
      bench.note(slipOf(entry, at, `${bird.band} stands here as ${side}, and elsewhere as the other`, remedy, {at: before.at, note: 'as the other here'}))
    } else if (!before) first.set(bird, use)
  }
}
