import type {Bird, Logbook} from '../logbook/book.ts'
import {lastDayOf, YOUNGEST_BREEDER} from '../logbook/laying.ts'
import {isWhole} from '../records/dates.ts'
import {meanAndDeviation} from '../statistics/mean-and-deviation.ts'
import {median} from '../statistics/median.ts'
import {studentQuantile} from '../statistics/student-t.ts'
import type {Interval} from './estimate.ts'
import {grouped} from './grouped.ts'
import {seasonOf} from './ladder-chicks.ts'
import {inLadderOrder} from './step-order.ts'

/** Days from hatch to first egg of the hens of a step or of those hatched in one season. */
export interface FirstEggs {
  readonly by: 'step' | 'season'
  readonly name: string
  readonly hens: number
  /** days */
  readonly mean: number
  readonly median: number
  /** null of a single hen */
  readonly sd: number | null
  /** null under three hens */
  readonly interval: Interval | null
  readonly earliest: number
  readonly latest: number
  /** hens that lived past the youngest age of laying, of which no first egg is written, or not to the day: late layers are among them, and the mean is then rather too low */
  readonly notWritten: number
}

/** Fewer hens than these have no limits. */
const LEAST_TOLD = 3

/** Hens do not lay before this age in days. Common practice, no source. */
const YOUNGEST_LAYER = YOUNGEST_BREEDER

/**
 * How old are they at their first egg?
 *
 * Of hens with both days written whole. The interval is Student's, over hens, sisters counted one by one; hens of which none is written are counted beside.
 */
export function firstEggs(book: Logbook): readonly FirstEggs[] {
  const hens = book.birds.filter(({sex, step}) => sex === 'female' && step.kind !== 'strain')
  const steps = [...grouped(hens, ({step}) => step.label)].map(([name, own]) => ({name, own, rung: {label: name, step: own[0]?.step ?? null, first: null}})).sort((a, b) => inLadderOrder(a.rung, b.rung))
  const seasons = [...grouped(hens, hen => seasonOf(hen) ?? undefined)].sort(([a], [b]) => a - b)
  return [...steps.flatMap(({name, own}) => firstOf('step', name, own, book.asOf)), ...seasons.flatMap(([season, own]) => firstOf('season', String(season), own, book.asOf))]
}

/** Days from hatch to first egg; null where either is not written to the day. */
export function ageAtFirstEgg({hatched, firstEgg}: Pick<Bird, 'hatched' | 'firstEgg'>): number | null {
  return hatched && firstEgg && isWhole(hatched) && isWhole(firstEgg) && firstEgg.first > hatched.first ? firstEgg.first - hatched.first : null
}

function firstOf(by: FirstEggs['by'], name: string, hens: readonly Bird[], asOf: number): FirstEggs[] {
  const ages = hens.flatMap(hen => ageAtFirstEgg(hen) ?? [])
  if (ages.length === 0) return []
  const {n, mean, sd} = meanAndDeviation(ages), half = sd === null || n < LEAST_TOLD ? null : (studentQuantile(0.95, n - 1) * sd) / Math.sqrt(n)
  const grown = hens.filter(hen => ageAtFirstEgg(hen) === null && hen.hatched !== null && Math.min(asOf, lastDayOf(hen)) - hen.hatched.last >= YOUNGEST_LAYER).length
  return [{by, name, hens: n, mean, median: median(ages), sd, interval: half === null ? null : {low: mean - half, high: mean + half}, earliest: Math.min(...ages), latest: Math.max(...ages), notWritten: grown}]
}
