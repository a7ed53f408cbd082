import {inside, type Spot} from '../../records/problem.ts'
import type {Ref} from '../../records/scalars.ts'
import type {ParentRead} from '../../records/schema/parts.ts'
import type {Hatch} from '../book.ts'
import type {Linked} from '../linked.ts'
import type {ParentLine} from '../origins.ts'
import {told} from '../tellings.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const bird = (line: string) => `---\nband: X-1\nsex: male\n${line}\n---\n`

export const entry: ManualEntry = {
  code: 'two-origins', severity: 'error', title: 'A bird that comes from two places',
  cause: 'A bird has a founding strain and also parents or a hatch, or a hatch has both a pen and a strain or names one pen twice, or a chick or tally of bought eggs names a sire, a dam or a pen.',
  remedy: 'A founder has a strain and no parents; any other bird has parents or a hatch and no strain. Take one of the two out. Where two birds are meant, give one of them another band.',
  wrong: {'birds/X-1.md': bird('strain: holm-white\nsire: H-1\ndam: H-3')},
  right: {'birds/X-1.md': bird('sire: H-1\ndam: H-3')},
}

export function check({bench, book, tellings, doubtful, records}: Linked): void {
  for (const hatch of book.hatches) {
    const data = records.hatch.get(hatch)?.data
    if (data?.pen) notePenTwice(hatch, data.pen.map(({pen}) => pen))
    if (!data?.strain) continue
    if (data.pen) {
      bench.note(slipOf(entry, inside(hatch.at, 'strain'), `hatch ${hatch.id} comes from a pen and from a strain`,
        'take strain: out where the eggs are your own, pen: where they were bought', {at: inside(hatch.at, 'pen'), note: 'the pen stands here'}))
      continue
    }
    data.tallies?.forEach((tally, index) => noteParent(hatch, parentIn(tally, inside(hatch.at, 'tallies', index)), 'the tally'))
    for (const bird of hatch.chicks) {
      const own = tellings.get(bird) ?? []
      const parent = own.flatMap(telling => parentIn(telling.told, telling.at) ?? [])[0] ?? null
      if (!told(own, 'strain') && !doubtful.has(bird)) noteParent(hatch, parent, bird.band)
    }
  }
  for (const bird of book.birds) {
    const own = tellings.get(bird) ?? []
    const strain = told(own, 'strain')
    if (!strain || doubtful.has(bird)) continue
    const at = inside(strain.by.at, 'strain')
    const parent = told(own, 'sire') ?? told(own, 'dam') ?? told(own, 'pen')
    if (parent) bench.note(slipOf(entry, at, `${bird.band} has a founding strain and parents`, 'take strain: out, or the parents', {at: parent.by.at, note: 'the parents stand here'}))
    else if (bird.hatch && !bird.hatch.strain && !bench.isFaulty(bird.hatch.at.file)) {
      bench.note(slipOf(entry, at, `${bird.band} has a founding strain, and hatch ${bird.hatch.id} lists it too`,
        'take strain: out; where two birds are meant, give one of them another band', {at: own[0]?.at ?? bird.at, note: 'listed here'}))
    }
  }

  function notePenTwice({id}: Hatch, refs: readonly Ref[]): void {
    refs.forEach((ref, index) => {
      const first = refs.slice(0, index).find(before => before.text === ref.text)
      if (first) bench.note(slipOf(entry, ref.at, `hatch ${id} names pen ${ref.text} twice`, 'name each pen once', {at: first.at, note: 'named first here'}))
    })
  }

  function noteParent(hatch: Hatch, parent: {readonly key: string; readonly at: Spot} | null, who: string): void {
    if (!parent) return
    bench.note(slipOf(entry, parent.at, `${who} has a ${parent.key}, but hatch ${hatch.id} is of bought eggs`,
      `take ${parent.key}: out; where the eggs are your own, give the hatch its pen in place of the strain`, {at: inside(hatch.at, 'strain'), note: 'the strain of the bought eggs stands here'}))
  }
}

/** The first key that names a parent; that nobody knows one names none. */
function parentIn(line: ParentLine, at: Spot): {readonly key: string; readonly at: Spot} | null {
  const named = (read: ParentRead | undefined) => read !== undefined && (read.kind === 'birds' ? read.birds.some(({band}) => band.text !== 'unknown') : read.kind === 'keeper' || read.strain !== null)
  const key = named(line.sire) ? 'sire' : named(line.dam) ? 'dam' : line.pen ? 'pen' : null
  return key && {key, at: inside(at, key)}
}
