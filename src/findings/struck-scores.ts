import type {Logbook, Score} from '../logbook/book.ts'
import {ladderChicks, type Chick} from './ladder-chicks.ts'

/** A score that its keeper struck out, with the reason. */
export interface StruckScore {
  readonly chick: Chick
  readonly score: Score
  readonly reason: string
}

/** Which scores were struck out, and why? Those of the new breed's chicks, in the book's order and of one chick oldest first. They count nowhere; nothing struck is dropped in silence. */
export function struckScores(book: Logbook): readonly StruckScore[] {
  return ladderChicks(book).flatMap(chick => book.traits.flatMap(trait =>
    (chick.looks.get(trait)?.scores ?? []).flatMap(score => (score.struck === null ? [] : [{chick, score, reason: score.struck}]))))
}
