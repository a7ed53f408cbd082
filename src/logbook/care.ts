/** Care: feed, housing, vaccination, treatment, illness and losses, with the pens, birds and hatches they touched. */
import type {Bench} from './bench.ts'
import type {Birds} from './birds.ts'
import type {CareEntry} from './book.ts'
import type {Hatches} from './hatch-shells.ts'
import type {Pens} from './pens.ts'

export function linkCare({records}: Bench, birds: Birds, pens: Pens, hatches: Hatches): readonly CareEntry[] {
  const entries = records.care.map(({id, data, body, at}): CareEntry => {
    const when = {from: data.on.first, to: data.to?.last ?? data.on.last}
    return {
      at, body, id, care: data.care, on: data.on, to: data.to ?? null,
      pens: (data.pens ?? []).map(ref => pens.find(ref)).filter(pen => pen !== null),
      birds: (data.birds ?? []).map(ref => birds.find(ref, when)).filter(bird => bird !== null),
      hatches: (data.hatches ?? []).map(ref => hatches.find(ref)).filter(hatch => hatch !== null),
      with: data.with ?? null, eggsWithheldUntil: data['eggs-withheld-until'] ?? null, meatWithheldUntil: data['meat-withheld-until'] ?? null,
    }
  })
  return entries.sort((a, b) => a.on.first - b.on.first || (a.id < b.id ? -1 : 1))
}
