import type {Slip, Spot} from '../../records/problem.ts'
import type {Bird} from '../book.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const bird = (band: string, sex: string, parents: string) => `---\nband: ${band}\nsex: ${sex}\n${parents}\n---\n`

export const entry: ManualEntry = {
  code: 'loop-in-descent', severity: 'error', title: 'A bird among its own ancestors',
  cause: 'Following sires and dams back from a bird, those that may be among them, leads to the bird itself: a band was mistaken for another somewhere on the way.',
  remedy: 'Look at each bird on the loop and mend the parent that cannot be right.',
  wrong: {'birds/24-901.md': bird('24-901', 'male', 'sire: 24-902\ndam: B-2'), 'birds/24-902.md': bird('24-902', 'male', 'sire: 24-901\ndam: B-2')},
  right: {'birds/24-901.md': bird('24-901', 'male', 'sire: 24-902\ndam: B-2'), 'birds/24-902.md': bird('24-902', 'male', 'sire: H-1\ndam: B-2')},
}

/** Where one bird is said to be the chick of another, and how: in words, by the pen that the parent stood in, or as perhaps the other itself. */
export interface Link {
  readonly at: Spot | null
  readonly by: 'word' | 'pen' | 'maybe'
}

/**
 * @param loop each bird the chick of the one before it, and the first the chick of the last
 * @param writtenAt where a bird is written to be the chick of another. The slip points at such a place: the one where the parent
 *   is the younger of the two, if the days tell
 */
export function loopInDescent(loop: readonly Bird[], writtenAt: (chick: Bird, parent: Bird) => Link): Slip {
  const links = loop.flatMap((chick, index) => {
    const parent = loop.at(index - 1)
    return parent ? [{chick, parent, index, ...writtenAt(chick, parent), younger: (parent.hatched?.first ?? 0) > (chick.hatched?.last ?? Infinity)}] : []
  })
  const start = links.find(link => link.younger && link.at) ?? links.find(link => link.at) ?? links[0]
  const from = start?.index ?? 0
  const inTurn = [...links.slice(from), ...links.slice(0, from)]
  const [first] = inTurn
  const reason = inTurn.length > 1 ? `${inTurn.map(({parent, by}) => `${parent.band} ${by === 'maybe' ? 'is perhaps' : 'is a parent of'} `).join('')}${start?.parent.band ?? ''}, which cannot be`
    : first?.by === 'pen' ? `${first.chick.band} stands in the pen that its own egg came from, and so among its own parents` : `${first?.chick.band ?? ''} is written as its own parent`
  return slipOf(entry, start?.at ?? start?.chick.at ?? {file: '', path: []}, reason, first?.by === 'pen' ? 'mend the band, or the pen or hatch that cannot be right' : 'mend the parent that cannot be right',
    ...inTurn.slice(1).map(({chick, at}) => ({at: at ?? chick.at, note: `${chick.band} stands here`})))
}
