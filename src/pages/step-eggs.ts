/** From egg to breeder: what became of a step's eggs and chicks, stage by stage, and why birds were kept or left. */
import type {CannotSay, Share} from '../findings/estimate.ts'
import type {HatchRates} from '../findings/hatch-results.ts'
import type {ReachedStep} from '../findings/ladder.ts'
import type {Chick} from '../findings/ladder-chicks.ts'
import {leftWords} from './life-words.ts'
import {NOTHING, percentSign, sentence} from './numbers.ts'
import type {Cell, Table} from './page.ts'

/** Rows of the funnel; a stage nobody counted is not shown as nought. */
export function eggTable(step: ReachedStep, rates: HatchRates | null): Table | null {
  const {chicks} = step
  const eggs = rates?.eggs ?? null
  // a share of the eggs set is told only where every setting whose eggs were counted tells of the stage too, and no other does
  const whole = (of: Share | CannotSay | undefined, total: number | null | undefined): boolean => of?.kind === 'share' && of.total === total
  const candled = whole(rates?.fertility, eggs), hatched = whole(rates?.hatchOfSet, eggs) && rates?.hatchOfSet.kind === 'share' && rates.hatchOfSet.count === chicks.hatched
  const share = (count: number, told: boolean): string => (told && eggs !== null && eggs > 0 && count <= eggs ? percentSign(count / eggs) : NOTHING)
  const egg = (label: string, count: number | null | undefined, told: boolean): readonly (readonly Cell[])[] => (count === null || count === undefined ? [] : [[label, String(count), share(count, told)]])
  const chick = (label: string, count: number, always = false): readonly (readonly Cell[])[] => (count === 0 && !always ? [] : [[label, String(count), share(count, hatched)]])
  const rows = [
    ...egg('Eggs set', eggs, true), ...egg('Clear at candling', rates?.clear, candled), ...egg('Dead in germ', rates?.deadInGerm, candled && whole(rates?.germDeath, rates?.fertile)),
    ...egg('Dead in shell', rates?.deadInShell, candled && whole(rates?.shellDeath, rates?.fertile)),
    ...egg('Bad or broken', rates?.bad, true), ...chick('Hatched', chicks.hatched, true), ...chick('Hatched but not listed', chicks.unlisted), ...chick('Banded', chicks.banded, true),
    ...chick('Listed without a band', chicks.unbanded), ...chick('Scored or measured', chicks.scored, true), ...chick('Kept, or penned to breed', chicks.kept, true),
  ]
  return {columns: [{head: 'Stage'}, {head: 'Count', number: true}, {head: 'Of eggs set', number: true}], rows}
}

/** Why chicks left, each reason once with its count, the commonest first. */
export function leavingTable(chicks: readonly Chick[]): Table | null {
  const counts = new Map<string, number>()
  for (const chick of chicks) if (chick.left) counts.set(leftWords(chick.left), (counts.get(leftWords(chick.left)) ?? 0) + chick.count)
  if (counts.size === 0) return null
  const rows = [...counts].sort(([a, many], [b, more]) => more - many || (a < b ? -1 : 1)).map(([why, count]): readonly Cell[] => [sentence(why), String(count)])
  return {columns: [{head: 'How and why'}, {head: 'Chicks', number: true}], rows}
}
