import {eggsToSet, type EggsToSet, type HatchStage} from '../heredity/eggs-to-set.ts'
import {chicksForWanted} from '../heredity/hatch-size.ts'
import type {Logbook, Trait} from '../logbook/book.ts'
import type {HatchRates} from './hatch-results.ts'
import {ladderChicks} from './ladder-chicks.ts'
import type {MatingForecast} from './mating-forecast.ts'
import {askedFrom} from './scoring-age.ts'
import {isJudged} from './set-aside.ts'

/** The chicks that are wanted of a mating: these looks together, and one sex where it is named. */
export interface WantedChicks {
  readonly looks: readonly {readonly trait: Trait; readonly state: string}[]
  readonly sex: 'male' | 'female' | null
}

export interface HatchPlan {
  /** of the chicks that hatch, share of the wanted kind */
  readonly share: number
  /** chicks of scoring age needed; null where more than 2000 */
  readonly chicks: number | null
  /** null where the records hold no count for a stage */
  readonly eggs: EggsToSet | null
  /** what the flock's own records say of the way from the egg; null where nothing was counted */
  readonly stages: readonly {readonly stage: 'fertility' | 'hatch of fertile' | 'hatch of set' | 'livability'; readonly counted: HatchStage | null}[]
}

/**
 * How many eggs must be set for so many chicks of the wanted kind?
 *
 * The share comes from the forecast, chicks from the binomial, eggs from the chicks through the fertility, hatch and livability of all hatches of the line, each
 * known no better than its counts tell. Livability is to the age at which the last of the wanted looks can be scored.
 *
 * @param atLeast how many of them, whole, 0 or more
 * @param assurance chance to get them, above 0 and below 1
 * @see `eggsToSet`, `chicksForWanted`
 */
export function hatchPlan(forecast: MatingForecast, wanted: WantedChicks, atLeast: number, assurance: number, book: Logbook, rates: Pick<HatchRates, 'fertility' | 'hatchOfFertile' | 'hatchOfSet'>): HatchPlan {
  const share = shareWanted(forecast, wanted)
  const stages = [...hatchStages(rates), {stage: 'livability', counted: livability(book, Math.max(0, ...wanted.looks.map(({trait}) => askedFrom(trait))))} as const]
  return {share, chicks: chicksForWanted(atLeast, share, assurance), stages, eggs: eggsToSet(atLeast, share, assurance, stages.map(({counted}) => counted))}
}

/** Share of chicks, half of them sons, with these looks together, and of the sex where one is named. */
export function shareWanted(forecast: Pick<MatingForecast, 'male' | 'female'>, {looks, sex}: WantedChicks): number {
  const traits = [...new Set(looks.map(({trait}) => trait))]
  const ofSex = (of: 'male' | 'female'): number => forecast[of].together(traits)
    .reduce((sum, {looks: seen, share}) => sum + (looks.every(({trait, state}) => seen[traits.indexOf(trait)] === state) ? share : 0), 0)
  return Math.min(1, ((sex === 'female' ? 0 : ofSex('male')) + (sex === 'male' ? 0 : ofSex('female'))) / 2)
}

function hatchStages({fertility, hatchOfFertile, hatchOfSet}: Pick<HatchRates, 'fertility' | 'hatchOfFertile' | 'hatchOfSet'>): HatchPlan['stages'] {
  const counted = (rate: HatchRates['fertility']): HatchStage | null => (rate.kind === 'share' ? {through: rate.count, of: rate.total} : null)
  if (fertility.kind === 'share' && hatchOfFertile.kind === 'share') return [{stage: 'fertility', counted: counted(fertility)}, {stage: 'hatch of fertile', counted: counted(hatchOfFertile)}]
  return [{stage: 'hatch of set', counted: counted(hatchOfSet)}]
}

/** Died or lost before an age, of those whose fate to that age is known: chicks too young yet, and those that went elsewhere before it, are left out. */
function livability(book: Logbook, age: number): HatchStage | null {
  let through = 0, of = 0
  for (const {hatched, left, count, hatch} of ladderChicks(book)) {
    if (hatched === null || (hatch && !isJudged(hatch))) continue
    const reached = hatched.last + age <= book.asOf && (left === null || (left.on !== null && left.on.first >= hatched.last + age))
    const perished = left !== null && (left.how === 'died' || left.how === 'lost' || left.how === 'taken') && (left.on === null || left.on.first < hatched.last + age)
    if (!reached && !perished) continue
    of += count
    if (reached) through += count
  }
  return of === 0 ? null : {through, of}
}
