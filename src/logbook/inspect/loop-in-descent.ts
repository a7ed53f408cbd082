import type {Slip, Spot} from '../../records/problem.ts'
import type {Bird} from '../book.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

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
 * @param writtenAt where a bird is written to be the chick of another, if it is. The slip points at such a place: the one where the parent
 *   is the younger of the two, if the days tell
 */
export function loopInDescent(loop: readonly Bird[], writtenAt: (chick: Bird, parent: Bird) => Spot | null): Slip {
  const links = loop.flatMap((chick, index) => {
    const parent = loop.at(index - 1)
    return parent ? [{chick, index, at: writtenAt(chick, parent), younger: (parent.hatched?.first ?? 0) > (chick.hatched?.last ?? Infinity)}] : []
  })
  const start = links.find(link => link.younger && link.at) ?? links.find(link => link.at) ?? links[0]
  const from = start?.index ?? 0
  const inTurn = [...links.slice(from), ...links.slice(0, from)]
  const names = inTurn.map(({chick}) => chick.band)
  const reason = names.length === 1 ? `${names[0] ?? ''} is written as its own parent` : `${[...names, names[0]].join(' is a parent of ')}, which cannot be`
  return slipOf(entry, start?.at ?? start?.chick.at ?? {file: '', path: []}, reason, 'mend the parent that cannot be right',
    ...inTurn.slice(1).map(({chick, at}) => ({at: at ?? chick.at, note: `${chick.band} stands here`})))
}
