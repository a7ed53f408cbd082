import {isAlive} from '../logbook/alive.ts'
import type {Feeding, Hatch, Logbook, Pen} from '../logbook/book.ts'
import {daysInSeason} from '../logbook/laying.ts'
import type {Day} from '../records/dates.ts'
import {grouped} from './grouped.ts'
import type {LaySheet} from './lay-sheets.ts'
import {weightAtDay, weightCourses, type WeightCourse} from './weight-courses.ts'

/** What one pen or one hatch ate, and what came of it. */
export interface FeedUse {
  /** null: of a hatch */
  readonly pen: Pen | null
  readonly hatch: Hatch | null
  /** from the day of the first record up to the day before the last */
  readonly from: Day
  readonly to: Day
  /** grams eaten in these days */
  readonly eaten: number
  /** grams given on the last day: when it was eaten up is not known */
  readonly after: number
  /** records in which it was weighed what was left; in the others the feed before is taken to be eaten up */
  readonly weighedBack: number
  readonly records: number
  /** birds there each day, males too, added up */
  readonly birdDays: number
  /** grams of a bird in a day; null where no bird is known to have been there */
  readonly perBirdDay: number | null
  readonly ofEggs: FeedOfEggs | null
  readonly ofGain: FeedOfGain | null
}

/** Over the days on which both feed and eggs are on record. */
export interface FeedOfEggs {
  readonly days: number
  readonly eggs: number
  /** grams, what the males ate among them */
  readonly eaten: number
  readonly perEgg: number
  /** grams of feed for a gram of egg; null: no egg of these was weighed */
  readonly conversion: number | null
  /** grams of an egg that it is worked with */
  readonly eggWeight: number | null
}

/** Over the days that lie between two weigh days and are on the feed record. */
export interface FeedOfGain {
  readonly from: Day
  readonly to: Day
  readonly eaten: number
  /** grams that the birds there gained, those that left in the meantime up to the day they left */
  readonly gain: number
  /** grams of feed for a gram of gain */
  readonly conversion: number
  /** fewest birds on a scale on one of the weigh days */
  readonly weighed: number
  /** hatched, and nothing is written of them: if they ate, the conversion is too high */
  readonly unlisted: number
}

/**
 * How much do they eat, and what becomes of it?
 *
 *     eaten = Σ (given − left at the next record)        spread evenly over the days between two records
 *     feed conversion = eaten / mass of the eggs, or eaten / live mass gained
 *
 * What a record gives is taken to be eaten up by the next one unless it was weighed what was left; what is spilt counts as eaten. The last record is the end and nothing of it is eaten. The gain of a hatch is the mean weight
 * between weigh days, drawn as a straight line, times the birds alive each day. A pen or a hatch is a single observation: no limits can be given.
 *
 * @param sheets of `laySheets`
 * @see both ratios: common practice, no single source
 */
export function feedUse(book: Logbook, sheets: readonly LaySheet[]): readonly FeedUse[] {
  const courses = weightCourses(book)
  const ofPens = [...grouped(book.feedings, ({pen}) => pen ?? undefined)].flatMap(([pen, own]) => useOf({pen, hatch: null}, own, birdsOfPen(pen), sheets.find(sheet => sheet.pen === pen) ?? null, null))
  const ofHatches = [...grouped(book.feedings, ({hatch}) => hatch ?? undefined)].flatMap(([hatch, own]) => useOf({pen: null, hatch}, own, birdsOfHatch(hatch), null, courses.get(hatch) ?? null))
  return [...ofPens, ...ofHatches]
}

type BirdsOn = (day: Day) => number

function birdsOfPen(pen: Pen): BirdsOn {
  const stays = [...pen.males, ...pen.females].map(stay => ({bird: stay.bird, days: daysInSeason(pen, stay)}))
  return day => stays.filter(({bird, days}) => days.from <= day && day <= days.to && isAlive(bird, day)).length
}

const birdsOfHatch = (hatch: Hatch): BirdsOn => day => [...hatch.chicks, ...hatch.tallies].reduce((sum, chick) => sum + (isAlive(chick, day) ? chick.count : 0), 0)

/** Feed of the days from one record to the day before the next. */
export interface Eaten {
  readonly from: Day
  readonly to: Day
  readonly perDay: number
}

function useOf(of: Pick<FeedUse, 'pen' | 'hatch'>, feedings: readonly Feeding[], birdsOn: BirdsOn, sheet: LaySheet | null, course: WeightCourse | null): FeedUse[] {
  const {stretches, after} = eatenOf(feedings), [first] = stretches, last = stretches.at(-1)
  if (!first || !last) return []
  let birdDays = 0
  for (let day = first.from; day <= last.to; day++) birdDays += birdsOn(day)
  const eaten = eatenIn(stretches, first.from, last.to)
  return [{
    ...of, from: first.from, to: last.to, eaten, after, weighedBack: feedings.filter(({left}) => left !== undefined).length, records: feedings.length, birdDays, perBirdDay: birdDays === 0 ? null : eaten / birdDays,
    ofEggs: sheet && feedOfEggs(stretches, sheet), ofGain: of.hatch && course && feedOfGain(stretches, of.hatch, course, birdsOn),
  }]
}

/** What was eaten between the records of one pen or hatch. Several records of a day are one; where more is left than there was nothing was eaten. `after`: what is there after the last. */
export function eatenOf(feedings: readonly Pick<Feeding, 'on' | 'feed' | 'left'>[]): {readonly stretches: readonly Eaten[]; readonly after: number} {
  const days = [...grouped(feedings, ({on}) => on.first)].sort(([a], [b]) => a - b)
    .map(([day, own]) => ({day, given: own.reduce((sum, {feed}) => sum + feed, 0), left: own.find(({left}) => left !== undefined)?.left ?? 0}))
  const stretches: Eaten[] = []
  let there = 0
  days.forEach(({day, given, left}, place) => {
    const before = days[place - 1]
    if (before) stretches.push({from: before.day, to: day - 1, perDay: Math.max(0, there - left) / (day - before.day)})
    there = left + given
  })
  return {stretches, after: there}
}

function eatenIn(stretches: readonly Eaten[], from: Day, to: Day): number {
  return stretches.reduce((sum, stretch) => sum + stretch.perDay * Math.max(0, Math.min(to, stretch.to) - Math.max(from, stretch.from) + 1), 0)
}

function feedOfEggs(stretches: readonly Eaten[], {rows}: LaySheet): FeedOfEggs | null {
  const [first] = stretches, last = stretches.at(-1)
  if (!first || !last) return null
  // a row that reaches beyond the feed cannot be parted
  const inside = rows.filter(({from, to}) => from >= first.from && to <= last.to), eggs = inside.reduce((sum, row) => sum + row.eggs, 0)
  if (eggs === 0) return null
  const eaten = inside.reduce((sum, {from, to}) => sum + eatenIn(stretches, from, to), 0), weighed = inside.flatMap(({weight}) => (weight && weight.eggs > 0 ? [weight] : []))
  const eggWeight = weighed.length === 0 ? null : weighed.reduce((sum, {grams}) => sum + grams, 0) / weighed.reduce((sum, each) => sum + each.eggs, 0)
  return {days: inside.reduce((sum, {from, to}) => sum + to - from + 1, 0), eggs, eaten, perEgg: eaten / eggs, eggWeight, conversion: eggWeight === null || eggWeight === 0 ? null : eaten / (eggs * eggWeight)}
}

function feedOfGain(stretches: readonly Eaten[], hatch: Hatch, course: WeightCourse, birdsOn: BirdsOn): FeedOfGain | null {
  const [first] = course, last = course.at(-1), begin = stretches[0], end = stretches.at(-1)
  if (!first || !last || !begin || !end) return null
  const from = Math.max(first.day, begin.from), to = Math.min(last.day, end.to + 1)
  if (to <= from) return null
  let gain = 0
  for (let day = from; day < to; day++) gain += birdsOn(day) * (weightAtDay(course, day + 1) - weightAtDay(course, day))
  const eaten = eatenIn(stretches, from, to - 1)
  return gain > 0 && eaten > 0 ? {from, to, eaten, gain, conversion: eaten / gain, weighed: Math.min(...course.filter(({day}) => day >= from && day <= to).concat(first).map(({n}) => n)), unlisted: hatch.unlisted} : null
}
