/** Settings that the keeper has set aside: which, how many eggs, and why. */
import type {Hatch} from '../logbook/book.ts'
import {counted, figured, listWords} from './numbers.ts'

const eggsIn = (hatches: readonly Hatch[]): string => {
  const eggs = hatches.reduce((sum, hatch) => sum + (hatch.eggs ?? 0), 0)
  return eggs === 0 ? '' : `, ${figured(eggs, 'egg')}`
}

/** `Set aside by the keeper, and in no share: hatch 2024-03, 24 eggs (the incubator stood at 35 °C).` Nothing where none is. */
export function setAsideWords(hatches: readonly Hatch[]): readonly string[] {
  const aside = hatches.flatMap(hatch => (hatch.setAside === null ? [] : [{hatch, why: hatch.setAside}])), [only] = aside
  if (!only) return []
  const [first] = aside.length === 1 ? [`hatch ${only.hatch.id}${eggsIn([only.hatch])} (${only.why})`] : [`${counted(aside.length, 'setting')}${eggsIn(aside.map(({hatch}) => hatch))}: ${listWords(aside.map(({hatch, why}) => `${hatch.id} (${why})`))}`]
  return [`Set aside by the keeper, and in no share: ${first}.`]
}
