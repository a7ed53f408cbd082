import type {Hatch, Logbook} from '../logbook/book.ts'
import {grouped} from './grouped.ts'
import {seasonOfHatch} from './ladder-chicks.ts'
import {inLadderOrder} from './step-order.ts'

/** Hatches that are judged together. */
export interface HatchGroup {
  readonly by: 'step' | 'season' | 'way' | 'pen'
  /** a step's label, a year, `broody` or `incubator`, a pen's id; `others` for all other pens of a season */
  readonly name: string
  readonly hatches: readonly Hatch[]
}

/** Two groups that a breeder sets side by side. */
export interface HatchPair {
  readonly one: HatchGroup
  readonly other: HatchGroup
}

export interface HatchGroups {
  readonly steps: readonly HatchGroup[]
  readonly seasons: readonly HatchGroup[]
  readonly ways: readonly HatchGroup[]
  readonly pens: readonly HatchGroup[]
  /** each step with the one before it on the ladder (named and mixed steps stand beside it), each season with the one before, hens with the machines of the seasons in which hens hatched, and of the last season with several pens each pen with all the others; the later first */
  readonly pairs: readonly HatchPair[]
}

/** Which hatches belong together, and which groups ask to be compared? Pure strains are left aside: they are no part of the ladder. */
export function hatchGroups(book: Logbook): HatchGroups {
  // by name, so that what is drawn from them is the same in whatever order they were written
  const hatches = book.hatches.filter(hatch => hatch.step.kind !== 'strain').sort((a, b) => (a.id < b.id ? -1 : 1))
  const steps = [...grouped(hatches, hatch => hatch.step.label)].map(([name, own]) => ({
    name, own, rung: {label: name, step: own[0]?.step ?? null, first: own.reduce<number | null>((first, {on}) => (on && (first === null || on.first < first) ? on.first : first), null)},
  })).sort((a, b) => inLadderOrder(a.rung, b.rung)).map(({name, own}): HatchGroup => ({by: 'step', name, hatches: own}))
  const seasons = [...grouped(hatches, hatch => seasonOfHatch(hatch) ?? undefined)].sort(([a], [b]) => a - b).map(([season, own]): HatchGroup => ({by: 'season', name: String(season), hatches: own}))
  const ways = ([['broody', hatches.filter(hatch => hatch.broody)], ['incubator', hatches.filter(hatch => !hatch.broody && hatch.machine !== null)]] as const)
    .flatMap(([name, own]): HatchGroup[] => (own.length === 0 ? [] : [{by: 'way', name, hatches: own}]))
  // eggs of several pens in one setting are of neither
  const byPen = grouped(hatches, hatch => (hatch.pens.length === 1 ? hatch.pens[0]?.pen : undefined))
  const pens = [...byPen].map(([pen, own]): HatchGroup & {readonly season: number} => ({by: 'pen', name: pen.id, hatches: own, season: pen.season})).sort((a, b) => a.season - b.season || (a.name < b.name ? -1 : 1))
  const several = [...grouped(pens, ({season}) => season)].filter(([, own]) => own.length > 1).sort(([a], [b]) => b - a)[0]?.[1] ?? []
  const inTurn = (groups: readonly HatchGroup[]): HatchPair[] => groups.slice(1).flatMap((one, place) => (groups[place] ? [{one, other: groups[place]}] : []))
  const [broody, incubator] = ways
  const sameSeasons = broody && incubator ? incubator.hatches.filter(hatch => broody.hatches.some(other => seasonOfHatch(other) === seasonOfHatch(hatch))) : []
  const others = several.length === 2 ? inTurn(several) : several.map((one): HatchPair => ({one, other: {by: 'pen', name: 'others', hatches: several.filter(each => each !== one).flatMap(each => each.hatches)}}))
  return {steps, seasons, ways, pens, pairs: [...inTurn(steps.filter(({hatches: [first]}) => first?.step.kind === 'filial' || first?.step.kind === 'backcross')), ...inTurn(seasons), ...(broody && incubator && sameSeasons.length > 0 ? [{one: broody, other: {...incubator, hatches: sameSeasons}}] : []), ...others]}
}
