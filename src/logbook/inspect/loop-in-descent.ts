import type {Slip, Spot} from '../../records/problem.ts'
import type {Bird} from '../book.ts'
import {slipOf, type ManualEntry} from './rule.ts'

const bird = (band: string, sex: string, parents: string) => `---\nband: ${band}\nsex: ${sex}\n${parents}\n---\n`

export const entry: ManualEntry = {
  code: 'loop-in-descent', severity: 'error', title: 'A bird among its own ancestors',
  cause: 'Following sires and dams back from a bird leads to the bird itself: a band was mistaken for another somewhere on the way.',
  remedy: 'Look at each bird on the loop and mend the parent that cannot be right.',
  wrong: {'birds/24-901.md': bird('24-901', 'male', 'sire: 24-902\ndam: B-2'), 'birds/24-902.md': bird('24-902', 'male', 'sire: 24-901\ndam: B-2')},
  right: {'birds/24-901.md': bird('24-901', 'male', 'sire: 24-902\ndam: B-2'), 'birds/24-902.md': bird('24-902', 'male', 'sire: H-1\ndam: B-2')},
}

/**
 * @param loop each bird the chick of the one before it, and the first the chick of the last
 * @param statedAt where a bird's own sire or dam is written: the slip points at the first such place
 */
export function loopInDescent(loop: readonly Bird[], statedAt: (bird: Bird) => Spot | null): Slip {
  const start = Math.max(0, loop.findIndex(bird => statedAt(bird) !== null))
  const [first, ...others] = [...loop.slice(start), ...loop.slice(0, start)]
  const at = (first && (statedAt(first) ?? first.at)) ?? {file: '', path: []}
  const names = [first, ...others].map(bird => bird?.band ?? '')
  const reason = others.length === 0 ? `${names[0] ?? ''} is written as its own parent` : `${[...names, names[0]].join(' is a parent of ')}, which cannot be`
  return slipOf(entry, at, reason, 'mend the parent that cannot be right', ...others.map(bird => ({at: statedAt(bird) ?? bird.at, note: `${bird.band} stands here`})))
}
