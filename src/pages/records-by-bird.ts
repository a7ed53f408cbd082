/** Which records speak of a bird: its chicks by hatch, the pens it stood in, care that touched it, shows it went to and its score sheets, of shows and of the keepers' own. Gathered once for all birds. */
import type {Bird, CareEntry, Hatch, KeepersSheet, Logbook, Pen, Show, ShowEntry, ShowScore, Stay} from '../logbook/book.ts'

export interface Offspring {
  readonly hatch: Hatch
  /** chicks of that hatch that are its own, and those that may be */
  readonly certain: readonly Bird[]
  readonly possible: readonly Bird[]
  /** unbanded chicks likewise */
  readonly tallied: number
  readonly talliedPossible: number
}

export interface RecordsOfBird {
  readonly offspring: readonly Offspring[]
  readonly stays: readonly {readonly pen: Pen; readonly stay: Stay}[]
  readonly care: readonly CareEntry[]
  readonly shows: readonly {readonly show: Show; readonly entry: ShowEntry}[]
  readonly sheets: readonly {readonly show: Show; readonly score: ShowScore}[]
  readonly ownSheets: readonly KeepersSheet[]
}

const NONE: RecordsOfBird = {offspring: [], stays: [], care: [], shows: [], sheets: [], ownSheets: []}

interface Gathering {
  offspring: Map<Hatch, {certain: Bird[]; possible: Bird[]; tallied: number; talliedPossible: number}>
  stays: {pen: Pen; stay: Stay}[]
  care: CareEntry[]
  shows: {show: Show; entry: ShowEntry}[]
  sheets: {show: Show; score: ShowScore}[]
  ownSheets: KeepersSheet[]
}

/** Was the bird in the pen on any day of the entry? Open ends count as in. */
const together = (pen: Pen, stay: Stay, entry: CareEntry): boolean =>
  (stay.from ?? pen.from ?? entry.on).first <= (entry.to ?? entry.on).last && (stay.to ?? pen.to ?? entry.on).last >= entry.on.first

const goneBefore = (bird: Bird, entry: CareEntry): boolean => (bird.left?.on ?? entry.on).last < entry.on.first

export function recordsByBird(book: Logbook): (bird: Bird) => RecordsOfBird {
  const gathered = new Map<Bird, Gathering>()
  const of = (bird: Bird): Gathering => {
    const found = gathered.get(bird) ?? {offspring: new Map(), stays: [], care: [], shows: [], sheets: [], ownSheets: []}
    gathered.set(bird, found)
    return found
  }
  for (const hatch of book.hatches) {
    for (const chicks of [...hatch.chicks, ...hatch.tallies]) {
      for (const {bird: parent, chance} of [...chicks.parentage.sires, ...chicks.parentage.dams]) {
        const all = of(parent).offspring
        const here = all.get(hatch) ?? {certain: [], possible: [], tallied: 0, talliedPossible: 0}
        all.set(hatch, here)
        const sure = chance > 0.9995
        if (chicks.kind === 'bird') (sure ? here.certain : here.possible).push(chicks)
        else if (sure) here.tallied += chicks.count
        else here.talliedPossible += chicks.count
      }
    }
  }
  for (const pen of book.pens) for (const stay of [...pen.males, ...pen.females]) of(stay.bird).stays.push({pen, stay})
  for (const show of book.shows) {
    for (const entry of show.entries) of(entry.bird).shows.push({show, entry})
    for (const score of show.scores ?? []) of(score.bird).sheets.push({show, score})
  }
  for (const sheet of book.sheets) of(sheet.bird).ownSheets.push(sheet)
  for (const entry of book.care) {
    const touched = new Set([...entry.birds, ...entry.hatches.flatMap(hatch => hatch.chicks)])
    for (const pen of entry.pens) for (const stay of [...pen.males, ...pen.females]) if (together(pen, stay, entry)) touched.add(stay.bird)
    for (const bird of touched) if (!goneBefore(bird, entry)) of(bird).care.push(entry)
  }
  return bird => {
    const found = gathered.get(bird)
    return found ? {...found, offspring: [...found.offspring].map(([hatch, chicks]) => ({hatch, ...chicks}))} : NONE
  }
}
