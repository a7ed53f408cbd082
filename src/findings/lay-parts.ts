import type {Bird} from '../logbook/book.ts'
import type {LaySheet, SheetRow} from './lay-sheets.ts'

/**
 * Which sheets are of the same hens, and so tell of one part and not of several?
 *
 * A hen counted over three years is one hen: what differs between her years says nothing of other hens. Her sheets make one part, and so do those of pens of which
 * more than half of the smaller one's hens are the other's as well. A pen of which no hen is on record stands alone.
 *
 * @returns the parts, in the order of their first sheet
 */
export function layParts(sheets: readonly LaySheet[]): readonly (readonly LaySheet[])[] {
  const above = new Map<LaySheet, LaySheet>(), ofHen = new Map<Bird, LaySheet[]>()
  const rootOf = (sheet: LaySheet): LaySheet => {
    const next = above.get(sheet)
    return next === undefined ? sheet : rootOf(next)
  }
  for (const sheet of sheets) {
    const shared = new Map<LaySheet, number>()
    for (const hen of sheet.hens) {
      const before = ofHen.get(hen) ?? []
      for (const other of before) shared.set(other, (shared.get(other) ?? 0) + 1)
      ofHen.set(hen, [...before, sheet])
    }
    for (const [other, hens] of shared) {
      const one = rootOf(other), own = rootOf(sheet)
      if (one !== own && 2 * hens > Math.min(other.hens.length, sheet.hens.length)) above.set(own, one)
    }
  }
  const parts = new Map<LaySheet, LaySheet[]>()
  for (const sheet of sheets) parts.set(rootOf(sheet), [...(parts.get(rootOf(sheet)) ?? []), sheet])
  return [...parts.values()]
}

/** The rows of a sheet in weeks of seven counted days from its first on; days left over at the end join the last week. */
export function weeksOf({rows}: LaySheet): readonly Pick<SheetRow, 'eggs' | 'henDays'>[] {
  const weeks: {eggs: number; henDays: number; days: number}[] = []
  for (const {eggs, henDays, from, to} of rows) {
    const last = weeks.at(-1)
    if (last && last.days < 7) {
      last.eggs += eggs
      last.henDays += henDays
      last.days += to - from + 1
    } else weeks.push({eggs, henDays, days: to - from + 1})
  }
  const last = weeks.at(-1), before = weeks.at(-2)
  if (!last || !before || last.days >= 7) return weeks
  return [...weeks.slice(0, -2), {eggs: before.eggs + last.eggs, henDays: before.henDays + last.henDays}]
}
