import type {Hatch, Logbook, Sex} from '../logbook/book.ts'
import {isWhole, type Day} from '../records/dates.ts'
import type {Interval} from './estimate.ts'
import {grouped} from './grouped.ts'
import type {HatchGroup, HatchGroups} from './hatch-groups.ts'
import {meanOfBirds, type MeanOfBirds} from './mean-of-birds.ts'
import {weighedChicks, type WeighedChick} from './weight-courses.ts'

/** The weights of one sex at one age. */
export interface GrowthPoint extends MeanOfBirds {
  /** days; of several weigh days the mean */
  readonly age: number
}

/** What birds put on between two ages. */
export interface GrowthGain {
  readonly from: number
  readonly to: number
  /** banded birds weighed at both; 0 where the means alone are set beside one another */
  readonly birds: number
  /** grams a day */
  readonly perDay: number
  /** null where fewer than five birds were weighed at both */
  readonly interval: Interval | null
}

export interface Growth {
  readonly sex: Sex
  /** youngest first */
  readonly points: readonly GrowthPoint[]
  /** one entry between each two points */
  readonly gains: readonly GrowthGain[]
}

export interface GrowthOfGroups {
  /** those with a weigh day */
  readonly hatches: ReadonlyMap<Hatch, readonly Growth[]>
  readonly pens: readonly {readonly group: HatchGroup; readonly growth: readonly Growth[]}[]
}

/** Weighings so many days of age apart are of two ages: a week of chicks, a tenth of their age of grown birds; and no two of one age lie further apart than twice that. */
const apartAt = (age: number): number => Math.max(7, age / 10)

/**
 * How do the chicks of a hatch, or of a pen, grow? (Steps stand in `growthCurves`.)
 *
 * The weights by sex and age, weighings of about one age together (a week apart, or a tenth of the age); and the gain a day from one age to the next, of the birds that were weighed at both, else of the means. Weighings count
 * whether or not they count for a trait. Sexes are never thrown together: birds not yet sexed stand by themselves.
 *
 * @see `meanOfBirds`
 */
export function growthOfGroups(book: Logbook, groups: HatchGroups): GrowthOfGroups {
  const weighed = grouped(weighedChicks(book), ({hatch}) => hatch)
  return {
    hatches: new Map([...weighed].map(([hatch, own]) => [hatch, growthOf(own)] as const)),
    pens: groups.pens.flatMap(group => {
      const own = group.hatches.flatMap(hatch => weighed.get(hatch) ?? [])
      return own.length === 0 ? [] : [{group, growth: growthOf(own)}]
    }),
  }
}

const ageOf = ({hatch, day}: WeighedChick): number | null => (hatch.on === null || !isWhole(hatch.on) ? null : day - hatch.on.first)

function growthOf(weighed: readonly WeighedChick[]): readonly Growth[] {
  return (['male', 'female', 'unknown'] as const).flatMap(sex => {
    const aged = weighed.flatMap(one => {
      const age = ageOf(one)
      return one.sex === sex && age !== null ? [{...one, age}] : []
    })
    const weeks = byAge(aged).map(lastOfEach)
    const points = weeks.map(pointOf)
    return points.length === 0 ? [] : [{sex, points, gains: weeks.slice(1).flatMap((own, place) => gainOf(weeks[place] ?? [], own, points[place], points[place + 1]))}]
  })
}

type Aged = WeighedChick & {readonly age: Day}

function byAge(aged: readonly Aged[]): readonly (readonly Aged[])[] {
  const groups: {readonly from: number; to: number; readonly own: Aged[]}[] = []
  for (const one of [...aged].sort((a, b) => a.age - b.age)) {
    const last = groups.at(-1)
    if (last && one.age - last.to < apartAt(last.from) && one.age - last.from <= 2 * apartAt(last.from)) {
      last.own.push(one)
      last.to = one.age
    } else groups.push({from: one.age, to: one.age, own: [one]})
  }
  return groups.map(({own}) => own)
}

/** A bird weighed twice at one age counts once, by the later. */
function lastOfEach(own: readonly Aged[]): readonly Aged[] {
  const banded = new Map<string, Aged>()
  for (const one of own) {
    const before = one.bird === null ? undefined : banded.get(one.bird)
    if (one.bird !== null && (before === undefined || before.age <= one.age)) banded.set(one.bird, one)
  }
  return [...own.filter(({bird}) => bird === null), ...banded.values()]
}

const pointOf = (own: readonly Aged[]): GrowthPoint => ({age: own.reduce((sum, {age}) => sum + age, 0) / own.length, ...meanOfBirds(own.map(({grams}) => grams))})

function gainOf(before: readonly Aged[], after: readonly Aged[], from: GrowthPoint | undefined, to: GrowthPoint | undefined): GrowthGain[] {
  if (!from || !to) return []
  const young = new Map(before.flatMap(one => (one.bird === null ? [] : [[one.bird, one] as const])))
  const gains = after.flatMap(one => {
    const then = one.bird === null ? undefined : young.get(one.bird)
    return then && one.age > then.age ? [(one.grams - then.grams) / (one.age - then.age)] : []
  })
  if (gains.length === 0) return [{from: from.age, to: to.age, birds: 0, perDay: (to.mean - from.mean) / (to.age - from.age), interval: null}]
  const {n, mean, interval} = meanOfBirds(gains)
  return [{from: from.age, to: to.age, birds: n, perDay: mean, interval}]
}
