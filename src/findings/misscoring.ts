import type {Bird, Logbook, Score, Trait} from '../logbook/book.ts'
import type {CannotSay, Share} from './estimate.ts'
import {shareOf} from './share-of.ts'

/** How often two scorings of one trait on one bird disagree. */
export interface Misscoring {
  readonly trait: Trait
  /** pairs of scorings that followed one another and differ, of all such pairs */
  readonly disagreements: Share | CannotSay
  /** chance e of one scoring to be wrong that gives this many, 2e(1 − e); null when half or more disagree */
  readonly perScoring: number | null
  /** birds whose counted scorings are not all alike, in the book's order */
  readonly birds: readonly {readonly bird: Bird; readonly scores: readonly Score[]}[]
}

/** e of d = 2e(1 − e): the chance of one scoring to be wrong that makes a share `rate` of repeated scorings differ; null at a half or more. */
export const errorPerScoring = (rate: number): number | null => (rate < 0.5 ? (1 - Math.sqrt(1 - 2 * rate)) / 2 : null)

/**
 * How often do we score wrongly? Where a trait of one bird was scored more than once, each scoring is held against the one
 * before it; the share of such pairs that differ is the flock's own rate of disagreement, with its Wilson 95 % interval.
 *
 *     d = 2e(1 − e)        e = (1 − √(1 − 2d)) / 2
 *
 * with e the chance of one scoring being wrong, the same for every state and scorer, and two wrong ones not agreeing by chance
 * beyond that. Struck scores and those outside their window are left out: that they were wrong is known. Traits told apart by
 * state only. A trait never scored twice has no entry.
 */
export function misscoring(book: Logbook): readonly Misscoring[] {
  return book.traits.flatMap(trait => {
    if (trait.states.length === 0) return []
    let pairs = 0, differing = 0
    const birds: Misscoring['birds'][number][] = []
    for (const bird of book.birds) {
      const scores = (bird.looks.get(trait)?.scores ?? []).filter(score => score.struck === null && !score.outside)
      let here = 0
      scores.forEach((score, index) => {
        const before = scores[index - 1]
        if (before && before.value !== score.value) here += 1
      })
      pairs += Math.max(0, scores.length - 1)
      differing += here
      if (here > 0) birds.push({bird, scores})
    }
    if (pairs === 0) return []
    const rate = differing / pairs
    return [{trait, disagreements: shareOf(differing, pairs), perScoring: errorPerScoring(rate), birds}]
  })
}
