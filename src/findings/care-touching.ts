import type {Bird, CareEntry, Hatch, Logbook, Pen} from '../logbook/book.ts'
import {layingOf} from '../logbook/laying.ts'
import type {Day, PartialDate} from '../records/dates.ts'

/** Days of a pen's life before its eggs were laid that may show in them. Common practice, no source. */
const BEFORE_LAYING = 14

/** Days that something lasted. */
export interface Days {
  readonly from: Day
  readonly to: Day
}

/** What was done to whom, found by those it touched. */
export interface CareTouching {
  /** what bore on the eggs of a hatch: on its breeders while they were laid, and on the setting until it hatched */
  eggsOf(hatch: Hatch): readonly CareEntry[]
  /** what bore on the chicks of a hatch from the day after they hatched to an age in days */
  chicksOf(hatch: Hatch, age: number): readonly CareEntry[]
  /** what bore on a pen, or on these birds, in these days */
  onPen(pen: Pen | null, birds: readonly Bird[], days: Days): readonly CareEntry[]
}

/** Which care entries speak of whom? One that names no pen, hatch or bird touched everybody there was. Those without a day in common with what is asked about are left out. */
export function careTouching({care, project}: Logbook): CareTouching {
  const [pens, hatches, birds] = [new Map<Pen, CareEntry[]>(), new Map<Hatch, CareEntry[]>(), new Map<Bird, CareEntry[]>()]
  const put = <Thing>(map: Map<Thing, CareEntry[]>, thing: Thing, entry: CareEntry): void => {
    const own = map.get(thing)
    if (own) {
      if (own.at(-1) !== entry) own.push(entry)
    } else map.set(thing, [entry])
  }
  const all: CareEntry[] = [], chicks = new Map<Hatch, CareEntry[]>()
  for (const entry of care) {
    for (const pen of entry.pens) put(pens, pen, entry)
    for (const hatch of entry.hatches) put(hatches, hatch, entry)
    for (const bird of entry.birds) {
      put(birds, bird, entry)
      if (bird.hatch) put(chicks, bird.hatch, entry)
    }
    if (entry.pens.length + entry.hatches.length + entry.birds.length === 0) all.push(entry)
  }
  const during = (entries: Iterable<CareEntry>, days: Days | null): CareEntry[] => [...new Set(entries)].filter(entry => days !== null && meets(entry, days))
  return {
    eggsOf(hatch) {
      const laying = layingOf(hatch, project.incubationDays), end = hatch.on?.last ?? (hatch.set ? hatch.set.last + project.incubationDays : null)
      const fromLaying = laying && end !== null ? {from: laying.from - BEFORE_LAYING, to: laying.to} : null, untilHatch = laying && end !== null ? {from: laying.from, to: end} : null
      const breeders = hatch.pens.flatMap(({pen}) => [...(pens.get(pen) ?? []), ...[...pen.males, ...pen.females].flatMap(({bird}) => birds.get(bird) ?? [])])
      const own = (hatches.get(hatch) ?? []).filter(entry => end === null || entry.on.first <= end)
      return inTurn([...during(breeders, fromLaying), ...own, ...during(all, untilHatch)])
    },
    chicksOf(hatch, age) {
      if (hatch.on === null) return []
      const days = {from: hatch.on.first + 1, to: hatch.on.last + age}
      return inTurn(during([...(hatches.get(hatch) ?? []), ...(chicks.get(hatch) ?? []), ...all], days))
    },
    onPen: (pen, own, days) => inTurn(during([...(pen ? pens.get(pen) ?? [] : []), ...own.flatMap(bird => birds.get(bird) ?? []), ...all], days)),
  }
}

const meets = ({on, to}: {readonly on: PartialDate; readonly to: PartialDate | null}, days: Days): boolean => on.first <= days.to && (to ?? on).last >= days.from

const inTurn = (entries: readonly CareEntry[]): readonly CareEntry[] => [...new Set(entries)].sort((a, b) => a.on.first - b.on.first || (a.id < b.id ? -1 : 1))
