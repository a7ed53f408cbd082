/** Egg records and feed records, each row with its pen, hen or hatch. */
import {spanOf} from './band-book.ts'
import type {Bench} from './bench.ts'
import type {Birds} from './birds.ts'
import type {EggCount, Feeding} from './book.ts'
import type {Hatches} from './hatch-shells.ts'
import type {Pens} from './pens.ts'

export function linkEggCounts({records}: Bench, birds: Birds, pens: Pens): readonly EggCount[] {
  return records.eggCounts.flatMap(({of, ...row}): readonly EggCount[] => {
    const pen = 'pen' in of ? pens.find(of.pen) : null
    const bird = 'band' in of ? birds.find(of.band, spanOf(row.on)) : null
    return pen || bird ? [{pen, bird, ...row}] : []
  })
}

export function linkFeedings({records}: Bench, hatches: Hatches, pens: Pens): readonly Feeding[] {
  return records.feedings.flatMap(({of, ...row}): readonly Feeding[] => {
    const pen = 'pen' in of ? pens.find(of.pen) : null
    const hatch = 'hatch' in of ? hatches.find(of.hatch) : null
    return pen || hatch ? [{pen, hatch, ...row}] : []
  })
}
