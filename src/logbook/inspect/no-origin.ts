import {inside} from '../../records/problem.ts'
import type {Bird} from '../book.ts'
import {nearPlaces} from '../directory.ts'
import type {Linked} from '../linked.ts'
import {bandsTold, told} from '../tellings.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

export const entry: ManualEntry = {
  code: 'no-origin', severity: 'error', title: 'A bird that comes from nowhere',
  cause: 'A bird has neither a strain nor a hatch nor a sire or dam, or a hatch has neither a pen nor a strain. A file of a chick whose band is mistyped stands alone in the same way.',
  remedy: 'Write strain: for a founder; list other birds in their hatch, or write their sire and dam (unknown is an answer). A hatch names its pen, or the strain of eggs bought in.',
  wrong: {'birds/X-1.md': '---\nband: X-1\nsex: male\n---\n'},
  right: {'birds/X-1.md': '---\nband: X-1\nsex: male\nstrain: holm-white\n---\n'},
}

export function check(linked: Linked): void {
  const {bench, book, tellings, doubtful, records} = linked
  for (const hatch of book.hatches) {
    const data = records.hatch.get(hatch)?.data
    if (!data || data.pen || data.strain || bench.isFaulty(hatch.at.file)) continue
    const own = hatch.chicks.every(chick => hasParents(chick) || told(tellings.get(chick) ?? [], 'pen'))
    if (hatch.chicks.length === 0 || !own) {
      bench.note(slipOf(entry, hatch.at, `hatch ${hatch.id} names neither a pen nor a strain`, 'add pen: with the pen the eggs came from, or strain: for eggs bought in'))
    }
  }
  for (const bird of book.birds) {
    const own = tellings.get(bird) ?? []
    if (bird.hatch || bird.maybe.length > 0 || doubtful.has(bird) || hasParents(bird)) continue
    if ((['strain', 'sire', 'dam', 'pen', 'out-of', 'maybe', 'same-as'] as const).some(key => told(own, key))) continue
    if (own.some(telling => bench.isFaulty(telling.at.file) || bandsTold(telling).some(band => bench.mayStandInFaulty(band)))) continue
    bench.note(slipOf(entry, inside(bird.at, 'band'), `nothing says where ${bird.band} comes from`,
      remedyFor(bird, linked)))
  }
}

const hasParents = ({parentage}: Bird): boolean => parentage.sires.length > 0 || parentage.dams.length > 0 || parentage.outside !== undefined

/** A file tells more of the chick whose band it has: a band a slip away from that of a chick with no file of its own is likely mistyped. */
function remedyFor({band, bands}: Bird, {book, tellings}: Linked): string {
  const lines = new Map(book.birds.flatMap(other => {
    const own = tellings.get(other) ?? [], [row] = own
    return row?.row && own.every(telling => telling.row) ? [[other.band, row.at] as const] : []
  }))
  const likely = bands.length > 1 ? [] : nearPlaces(band, lines), write = 'write strain: for a founder; list it in its hatch, or write its sire: and dam:'
  return likely.length === 0 ? write : `did you mean ${likely.join(' or ')}? If not, ${write}`
}
