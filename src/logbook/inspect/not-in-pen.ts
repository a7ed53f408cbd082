import type {Linked} from '../linked.ts'
import type {Pen} from '../book.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const hatch = (dam: string) => `---\npen: 2024-A\nset: 2024-03-02\non: 2024-03-23\nchicks:\n  - {band: 24-901, sex: male, dam: ${dam}}\n---\n`

export const entry: ManualEntry = {
  code: 'not-in-pen', severity: 'warning', title: 'A parent that was not in the pen',
  cause: 'A chick’s line names a sire or dam that the hatch’s pen does not have, and that no hen of the pen had met shortly before. The line is believed, but a band may have been misread.',
  remedy: 'Mend the band, or add the bird to the pen for its days there.',
  wrong: {'hatches/2024-09.md': hatch('B-3')},
  right: {'hatches/2024-09.md': hatch('B-1')},
}

export function check({bench, uses, staysOf, doubtful, records, matings}: Linked): void {
  const said = new Set<string>()
  /** a pen of which a bird could not be found may be the one */
  const isWhole = (pen: Pen): boolean => {
    const data = records.pen.get(pen)?.data
    return data?.males.length === pen.males.length && data.females.length === pen.females.length
  }
  for (const {bird, as, at, pen, layings} of uses) {
    const hatch = layings[0]?.hatch
    if (pen || !hatch || hatch.pens.length === 0 || doubtful.has(bird) || matings.get(hatch)?.holds(bird, as) || !hatch.pens.every(each => isWhole(each.pen))) continue
    // a hen named as a sire is found by her sex
    if (bird.sex !== 'unknown' && bird.sex !== as) continue
    const key = `${hatch.id}\n${bird.id}`
    if (said.has(key)) continue
    said.add(key)
    const where = staysOf.get(bird)?.map(stay => stay.pen.id).slice(0, 3) ?? []
    bench.note(slipOf(entry, at, `${bird.band} stands here as the ${as === 'male' ? 'sire' : 'dam'}, but was not in ${hatch.pens.map(each => `pen ${each.pen.id}`).join(' or ')}`,
      where.length > 0 ? `mend the band; ${bird.band} was in ${where.join(', ')}` : 'mend the band, or add the bird to the pen', {at: hatch.pens[0]?.pen.at ?? hatch.at, note: 'the pen stands here'}))
  }
}
