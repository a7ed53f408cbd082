import type {Hatch, Logbook, Sex, Trait} from '../logbook/book.ts'
import {isUnit, UNITS} from '../records/quantities.ts'
import {isWhole, type Day} from '../records/dates.ts'

/** The mean weight of a hatch on its weigh days, oldest first, in grams. */
export type WeightCourse = readonly {readonly day: Day; readonly n: number; readonly mean: number}[]

/** One weighing of a bird of a hatch, with or without a band. */
export interface WeighedChick {
  readonly hatch: Hatch
  /** of a bird: to be weighed again as the same one; null without a band */
  readonly bird: string | null
  readonly sex: Sex
  readonly day: Day
  /** grams */
  readonly grams: number
}

/** Measures that are weights: those of traits in a unit of mass, with that unit's grams. */
export function weightMeasures(traits: readonly Trait[]): ReadonlyMap<string, number> {
  return new Map(traits.flatMap(({measure, unit}) => (measure !== null && unit !== null && isUnit(unit) && UNITS[unit].of === 'mass' ? [[measure, UNITS[unit].size] as const] : [])))
}

/** The measure that is called `weight`, else the first that is one: what growth is read from. Null where nothing is weighed. */
function growthMeasure(traits: readonly Trait[]): {readonly measure: string; readonly grams: number} | null {
  const all = weightMeasures(traits), [[measure, grams] = [undefined, undefined]] = all.has('weight') ? [['weight', all.get('weight')] as const] : [...all]
  return measure === undefined || grams === undefined ? null : {measure, grams}
}

/** Every weighing of a chick of a hatch, on a whole day, after it hatched. */
export function weighedChicks(book: Logbook): readonly WeighedChick[] {
  const growth = growthMeasure(book.traits)
  if (growth === null) return []
  const banded = book.birds.flatMap(({id, hatch, hatched, sex, weighings}): WeighedChick[] => (hatch === null || hatched === null ? [] : weighings.flatMap(({measure, value, on}) =>
    (measure === growth.measure && isWhole(on) && on.first >= hatched.first ? [{hatch, bird: id, sex, day: on.first, grams: value * growth.grams}] : []))))
  const loose = book.looseWeighings.flatMap(({hatch, sex, measure, value, on}): WeighedChick[] =>
    (measure === growth.measure && isWhole(on) && hatch.on && on.first >= hatch.on.first ? [{hatch, bird: null, sex, day: on.first, grams: value * growth.grams}] : []))
  return [...banded, ...loose]
}

/** Of each hatch, all sexes together. Days on which only one sex was weighed of two that were weighed at all would bend the line, and are left out. */
export function weightCourses(book: Logbook): ReadonlyMap<Hatch, WeightCourse> {
  const days = new Map<Hatch, Map<Day, {n: number; sum: number; sexes: Set<Sex>}>>()
  for (const {hatch, sex, day, grams} of weighedChicks(book)) {
    const own = days.get(hatch) ?? new Map<Day, {n: number; sum: number; sexes: Set<Sex>}>(), at = own.get(day) ?? {n: 0, sum: 0, sexes: new Set<Sex>()}
    days.set(hatch, own)
    own.set(day, {n: at.n + 1, sum: at.sum + grams, sexes: at.sexes.add(sex)})
  }
  return new Map([...days].map(([hatch, own]) => {
    const both = [...own.values()].some(({sexes}) => sexes.has('male') && sexes.has('female'))
    const whole = [...own].filter(([, {sexes}]) => !both || sexes.has('unknown') || (sexes.has('male') && sexes.has('female')))
    return [hatch, whole.sort(([a], [b]) => a - b).map(([day, {n, sum}]) => ({day, n, mean: sum / n}))] as const
  }))
}

/** Mean weight on a day, along straight lines from weigh day to weigh day; at the ends those of the first and last. */
export function weightAtDay(course: WeightCourse, day: Day): number {
  const next = course.findIndex(point => point.day >= day), after = course[next], before = course[next - 1]
  if (!after) return course.at(-1)?.mean ?? 0
  if (!before) return after.mean
  return before.mean + ((after.mean - before.mean) * (day - before.day)) / (after.day - before.day)
}
