import type {Trait} from '../logbook/book.ts'
import {countedValue} from './counted-value.ts'
import type {LadderStep} from './ladder.ts'

/** How the marks of a graded trait fell in one step. */
export interface GradedMarks {
  readonly step: string
  /** chicks with a counted mark */
  readonly scored: number
  /** every mark given, ascending, with the chicks that got it; counts add up to `scored` */
  readonly marks: readonly {readonly mark: number; readonly count: number}[]
}

/**
 * Which marks did the chicks of each step get? A trait scored on a scale has no mean here: its marks are an order, not a measure,
 * so they are only counted. Every chick with a counted mark is in, banded or tallied. A step with nobody scored has no entry.
 */
export function gradedMarks(trait: Trait, ladder: readonly LadderStep[]): readonly GradedMarks[] {
  return ladder.flatMap(step => {
    if (step.kind === 'planned') return []
    const counts = new Map<number, number>()
    for (const chick of [...step.birds, ...step.tallies]) {
      const value = countedValue(chick, trait)
      if (typeof value === 'number') counts.set(value, (counts.get(value) ?? 0) + chick.count)
    }
    const marks = [...counts].sort(([a], [b]) => a - b).map(([mark, count]) => ({mark, count}))
    const scored = marks.reduce((sum, {count}) => sum + count, 0)
    return scored === 0 ? [] : [{step: step.label, scored, marks}]
  })
}
