import type {Bird, Pen, Sex, Trait} from '../logbook/book.ts'
import type {Census} from './census.ts'
import {lastPens} from './last-pen.ts'
import type {PairAsked} from './heredity.ts'
import type {ForecastOfSex, MatingForecast} from './mating-forecast.ts'
import {looksRight} from './wanted-look.ts'

/** How often matings inside the line will throw a look that is not wanted. */
export interface ThrowBacks {
  readonly trait: Trait
  readonly pens: readonly ThrowBacksOfPen[]
  /** share of the next season's chicks, the pens standing as they do, each by its pairs */
  readonly share: number
  /** chicks that the season's own matings gave: so many are taken for the next season; null where none is counted */
  readonly chicks: number | null
  /** throw-backs to expect among them */
  readonly expected: number | null
  readonly exact: boolean
}

export interface ThrowBacksOfPen {
  readonly pen: Pen
  readonly pairs: number
  /** mean over the pairs of the pen */
  readonly share: number
  readonly worst: PairAsked & {readonly share: number}
}

/**
 * What share of the chicks will show a look that is not wanted of a required trait, and how many is that in a season?
 *
 * Over every living male and hen of the new breed that were last put into a pen of the latest season together, each pair alike; of each the chance of the
 * forecast, mean of the sexes that can show the trait. A trait without rules, and a season without such a pair, has no entry.
 *
 * @param forecasts of all the pairs of `pairsInPens`, in its order
 */
export function throwBacks(traits: readonly Trait[], {pens}: Census, pairs: readonly PairInPen[], forecasts: readonly MatingForecast[]): readonly ThrowBacks[] {
  if (pairs.length === 0) return []
  const counted = pens.flatMap(({hatches}) => hatches).filter((hatch, index, all) => hatch.hatched !== null && hatch.step.kind !== 'strain' && all.indexOf(hatch) === index)
  const chicks = counted.length === 0 ? null : counted.reduce((sum, {hatched}) => sum + (hatched ?? 0), 0)
  return traits.flatMap(trait => {
    const shares = forecasts.flatMap(({male, female, sire, dam}, index) => {
      const share = meanOf([offShare(trait, male, 'male'), offShare(trait, female, 'female')].filter(each => each !== null))
      const pen = pairs[index]?.pen
      return share === null || !pen ? [] : [{pen, sire, dam, share}]
    })
    const share = meanOf(shares.map(each => each.share))
    if (share === null) return []
    return [{
      trait, share, chicks, expected: chicks === null ? null : chicks * share, exact: forecasts.every(({exact}) => exact),
      pens: [...new Set(shares.map(({pen}) => pen))].flatMap((pen): ThrowBacksOfPen[] => {
        const own = shares.filter(each => each.pen === pen).toSorted((a, b) => b.share - a.share), [worst] = own
        return worst ? [{pen, pairs: own.length, share: meanOf(own.map(each => each.share)) ?? 0, worst: {sire: worst.sire, dam: worst.dam, share: worst.share}}] : []
      }),
    }]
  })
}

export interface PairInPen extends PairAsked {
  readonly pen: Pen
}

/** Every living male and hen of the new breed that stand in a pen of the latest season together. */
export function pairsInPens({pens, alive}: Census): readonly PairInPen[] {
  const living = new Set(alive), last = lastPens(pens)
  const own = (stays: Pen['males'], pen: Pen): Bird[] => [...new Set(stays.map(({bird}) => bird))].filter(bird => living.has(bird) && bird.step.kind !== 'strain' && last.get(bird) === pen)
  return pens.flatMap(pen => own(pen.males, pen).flatMap(sire => own(pen.females, pen).map(dam => ({pen, sire, dam}))))
}

/** A bird of a pen that no pair is made of, and why. */
export interface OutOfPairs {
  readonly bird: Bird
  /** gone: no longer here · strain: of a pure strain, so that its chicks are not of the line mated inside itself · moved: put into another pen of the season since */
  readonly why: 'gone' | 'strain' | 'moved'
  /** where it was put since */
  readonly to: Pen | null
}

/** Which birds of a pen of the latest season stand in none of its pairs? Those whose mates alone are missing are not named. */
export function outOfPairs({pens, alive}: Census, pen: Pen): readonly OutOfPairs[] {
  if (!pens.includes(pen)) return []
  const living = new Set(alive), last = lastPens(pens)
  return [...new Set([...pen.males, ...pen.females].map(({bird}) => bird))].flatMap((bird): OutOfPairs[] => {
    if (!living.has(bird)) return [{bird, why: 'gone', to: null}]
    if (bird.step.kind === 'strain') return [{bird, why: 'strain', to: null}]
    const now = last.get(bird) ?? null
    return now === pen ? [] : [{bird, why: 'moved', to: now}]
  })
}

/** Share of the chicks of one sex that show a look which is not wanted, of those that show any; null where none does. */
function offShare(trait: Trait, {traits}: ForecastOfSex, sex: Exclude<Sex, 'unknown'>): number | null {
  const found = traits.find(each => each.trait === trait)
  if (!found || found.unsaid >= 1 - 1e-12) return null
  return found.states.reduce((sum, {state, share}) => sum + (looksRight(trait, sex, state) === false ? share : 0), 0) / (1 - found.unsaid)
}

const meanOf = (values: readonly number[]): number | null => (values.length === 0 ? null : values.reduce((sum, value) => sum + value, 0) / values.length)
