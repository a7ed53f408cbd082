/** From egg to breeder: what became of a step's eggs and chicks, stage by stage, and why birds were kept or left. */
import type {HatchRates} from '../findings/hatch-results.ts'
import type {ReachedStep} from '../findings/ladder.ts'
import {shareOf} from '../findings/share-of.ts'
import type {Chick} from '../findings/ladder-chicks.ts'
import {leftWords} from './life-words.ts'
import {NOTHING, percentSign, sentence} from './numbers.ts'
import type {Cell, Table} from './page.ts'

/** Rows of the funnel; a stage nobody counted is not shown as nought. */
export function eggTable(step: ReachedStep, rates: HatchRates | null): Table | null {
  const {chicks} = step
  const eggs = rates?.eggs ?? null, sameHatch = rates?.hatched === chicks.hatched
  const share = (count: number): string => {
    const of = eggs === null ? null : shareOf(count, eggs)
    return of?.kind === 'share' && count <= (eggs ?? 0) ? percentSign(of.value) : NOTHING
  }
  const egg = (label: string, count: number | null | undefined): readonly (readonly Cell[])[] => (count === null || count === undefined ? [] : [[label, String(count), share(count)]])
  const chick = (label: string, count: number, always = false): readonly (readonly Cell[])[] =>
    (count === 0 && !always ? [] : [[label, String(count), sameHatch ? share(count) : NOTHING]])
  const rows = [
    ...egg('Eggs set', eggs), ...egg('Clear at candling', rates?.clear), ...egg('Dead in germ', rates?.deadInGerm), ...egg('Dead in shell', rates?.deadInShell),
    ...egg('Bad or broken', rates?.bad), ...chick('Hatched', chicks.hatched, true), ...chick('Hatched but not listed', chicks.unlisted), ...chick('Banded', chicks.banded, true),
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
