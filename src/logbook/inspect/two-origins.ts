import {inside} from '../../records/problem.ts'
import type {Linked} from '../linked.ts'
import {told} from '../tellings.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const bird = (line: string) => `---\nband: X-1\nsex: male\n${line}\n---\n`

export const entry: ManualEntry = {
  code: 'two-origins', severity: 'error', title: 'A bird that comes from two places',
  cause: 'A bird has a founding strain and also parents or a hatch, or a hatch has both a pen and a strain.',
  remedy: 'A founder has a strain and no parents; any other bird has parents or a hatch and no strain. Take one of the two out. Where two birds are meant, give one of them another band.',
  wrong: {'birds/X-1.md': bird('strain: holm-white\nsire: H-1\ndam: H-3')},
  right: {'birds/X-1.md': bird('sire: H-1\ndam: H-3')},
}

export function check({bench, book, tellings, doubtful, records}: Linked): void {
  for (const hatch of book.hatches) {
    const data = records.hatch.get(hatch)?.data
    if (!data?.pen || !data.strain) continue
    bench.note(slipOf(entry, inside(hatch.at, 'strain'), `hatch ${hatch.id} comes from a pen and from a strain`,
      'take strain: out where the eggs are your own, pen: where they were bought', {at: inside(hatch.at, 'pen'), note: 'the pen stands here'}))
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
}
