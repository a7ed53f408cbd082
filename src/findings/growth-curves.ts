import type {Logbook, Sex, Trait, Weighing} from '../logbook/book.ts'
import {isWhole, type PartialDate} from '../records/dates.ts'
import {grouped} from './grouped.ts'
import {ladderChicks} from './ladder-chicks.ts'
import type {LadderStep} from './ladder.ts'
import {meanOfBirds, type MeanOfBirds} from './mean-of-birds.ts'

/** What the birds of one step and sex weighed at one age. */
export interface GrowthPoint extends MeanOfBirds {
  /** days, the age that theirs are nearest to */
  readonly age: number
}

export interface GrowthCurve {
  readonly step: string
  readonly sex: 'male' | 'female'
  /** ascending by age; one or more */
  readonly points: readonly GrowthPoint[]
}

/** All that was weighed of one measure, in the unit of its traits. */
export interface GrowthOfMeasure {
  readonly measure: string
  /** that take their values from it, in the book's order */
  readonly traits: readonly Trait[]
  /** days, ascending: all at which anything was weighed */
  readonly ages: readonly number[]
  /** in the ladder's order, males first */
  readonly curves: readonly GrowthCurve[]
  /** weighings of birds whose sex nobody knows, and on days or of hatches not known to the day */
  readonly leftOut: {readonly sexUnknown: number; readonly ageUnknown: number}
}

/** Ages in weeks to which weighings are put together, where no trait names one; common practice, no source. */
const WEEKS = [0, 1, 2, 3, 4, 6, 8, 10, 12, 16, 20, 26, 39, 52, 78] as const
const WEEK = 7, YEAR = 52 * WEEK

/**
 * How do they grow? Of every measure of the weigh days, by step and sex, the mean at each age with its count.
 *
 * A weighing inside the window of a trait of the measure stands at that trait's age; any other at the nearest, by ratio, of 0, 1, 2, 3, 4, 6, 8, 10, 12, 16, 20, 26, 39, 52 and 78 weeks or
 * of whole years of 52 weeks after these. A bird weighed twice about one age, or a hatch weighed twice without bands, counts once, on the day nearest to it. Pure strains are left aside.
 * Later points are of those still there: where the small are culled, the curve is lifted.
 *
 *     mean ± t(n − 1) · sd / √n
 *
 * @returns one entry a measure of which something of a step was weighed
 */
export function growthCurves(book: Logbook, ladder: readonly LadderStep[]): readonly GrowthOfMeasure[] {
  const traits = book.traits.filter(({kind, measure}) => kind === 'measured' && measure !== null)
  return [...grouped(traits, ({measure}) => measure ?? undefined)].flatMap(([measure, own]): GrowthOfMeasure[] => {
    const all = weighingsOf(measure, book), known = all.flatMap(each => aged(each, own))
    const sexed = known.filter(({sex}) => sex !== 'unknown')
    if (all.length === 0) return []
    const curves = ladder.flatMap(({label}) => (['male', 'female'] as const).flatMap(sex => curveOf(label, sex, sexed.filter(each => each.step === label && each.sex === sex))))
    return [{
      measure, traits: own, curves, ages: [...new Set(curves.flatMap(({points}) => points.map(({age}) => age)))].sort((a, b) => a - b),
      leftOut: {sexUnknown: known.length - sexed.length, ageUnknown: all.length - known.length},
    }]
  })
}

interface Weighed {
  readonly step: string
  readonly sex: Sex
  /** whoever is not to be counted twice at one age */
  readonly of: object
  readonly hatched: PartialDate | null
  readonly weighing: Weighing
}

function weighingsOf(measure: string, book: Logbook): readonly Weighed[] {
  const banded = ladderChicks(book).flatMap(chick => (chick.kind === 'bird' ? chick.weighings.filter(each => each.measure === measure)
    .map((weighing): Weighed => ({step: chick.step.label, sex: chick.sex, of: chick, hatched: chick.hatched, weighing})) : []))
  const loose = book.looseWeighings.filter(each => each.measure === measure && each.hatch.step.kind !== 'strain').map((weighing): Weighed => {
    const {hatch, sex} = weighing
    return {step: hatch.step.label, sex, of: hatch, hatched: hatch.on, weighing}
  })
  return [...banded, ...loose].filter(({weighing: {value}}) => value > 0)
}

interface Aged extends Weighed {
  /** the age it stands at, and how far off it is, in days */
  readonly age: number
  readonly off: number
}

function aged(each: Weighed, traits: readonly Trait[]): Aged[] {
  const {hatched, weighing: {on}} = each
  if (hatched === null || !isWhole(hatched) || !isWhole(on) || on.first < hatched.first) return []
  const days = on.first - hatched.first, age = ageFor(days, traits)
  return [{...each, age, off: Math.abs(days - age)}]
}

/** The age, in days, that a weighing so many days after the hatch stands at. */
export function ageFor(days: number, traits: readonly Pick<Trait, 'atAge' | 'window'>[]): number {
  const named = traits.flatMap(({atAge, window}) => (atAge !== null && Math.abs(days - atAge) <= (window ?? 0) ? [atAge] : [])).sort((a, b) => Math.abs(days - a) - Math.abs(days - b) || a - b)[0]
  if (named !== undefined) return named
  const years = Math.max(2, Math.round(days / YEAR)), ages = [...WEEKS.map(weeks => weeks * WEEK), years * YEAR]
  // the day after hatching is no age of 0 weeks in ratio: one is added to both
  const apart = (age: number): number => Math.abs(Math.log((days + 1) / (age + 1)))
  return ages.reduce((best, age) => (apart(age) < apart(best) ? age : best))
}

function curveOf(step: string, sex: GrowthCurve['sex'], own: readonly Aged[]): GrowthCurve[] {
  if (own.length === 0) return []
  const points = [...grouped(own, ({age}) => age)].sort(([a], [b]) => a - b).map(([age, there]) => pointOf(age, onceEach(there).map(({weighing: {value}}) => value)))
  return [{step, sex, points}]
}

/** Of every bird, or hatch, the weighings of the day nearest to the age. */
function onceEach(there: readonly Aged[]): readonly Aged[] {
  return [...grouped(there, ({of}) => of)].flatMap(([, own]) => {
    const nearest = own.reduce((best, each) => (each.off < best.off ? each : best)), day = nearest.weighing.on.first, same = own.filter(({weighing: {on}}) => on.first === day)
    return 'hatch' in nearest.weighing ? same : [nearest]
  })
}

function pointOf(age: number, values: readonly number[]): GrowthPoint {
  return {age, ...meanOfBirds(values)}
}
