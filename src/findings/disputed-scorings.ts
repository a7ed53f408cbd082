import type {Bird, Logbook, Score, Trait} from '../logbook/book.ts'
import {contraryScorings, evidenceOf, standingAlone} from '../logbook/contrary-scorings.ts'
import {scoreDoubts} from './score-doubt.ts'
import type {Findings} from './study.ts'

/** A bird whose scorings of a trait do not agree, and of which what is seen of its kin says that one of them is likely wrong. */
export interface DisputedScoring {
  readonly bird: Bird
  readonly trait: Trait
  /** those neither struck nor outside their window, in turn */
  readonly scores: readonly Score[]
  readonly counted: Score
  /** the one that differs from two or more others that agree; null where there is no such one */
  readonly alone: Score | null
  /** chance that the one that counts is wrong */
  readonly wrong: number
}

/**
 * Which scorings that do not agree are to be looked at again? Where the one that counts is likelier wrong than right; and where one stands alone against
 * the others and does not count, for it is then likelier wrong and still evidence of what the bird carries. One that was mended by a later one, which
 * the kin bear out, is not among them, nor are those that no misscoring allows for: linking has found them.
 *
 * @param from a score is likely wrong from this chance on
 */
export function disputedScorings({book, heredity, pedigree}: Pick<Findings, 'book' | 'heredity' | 'pedigree'>, from: number): readonly DisputedScoring[] {
  const plain = contraryScorings(book)
  return heredity.groups.flatMap(group => {
    const disputed = group.traits.filter(({shows}) => shows.length > 0).flatMap(trait => differing(book, trait)).filter(({bird, trait}) => !plain.some(each => each.bird === bird && each.trait === trait))
    if (disputed.length === 0) return []
    const worked = heredity.worked(group)
    const doubts = scoreDoubts(book, group, worked, chick => (chick.kind === 'bird' ? pedigree.numberOf(chick) : null))
    return disputed.flatMap(({bird, trait, scores, counted}): readonly DisputedScoring[] => {
      const wrong = doubts.find(doubt => doubt.chick === bird && doubt.trait === trait)?.wrong ?? 0, alone = standingAlone(scores)
      return wrong >= from || (alone !== null && alone !== counted) ? [{bird, trait, scores, counted, alone, wrong}] : []
    })
  })
}

function differing({birds}: Logbook, trait: Trait): readonly Omit<DisputedScoring, 'alone' | 'wrong'>[] {
  return birds.flatMap(bird => {
    const counted = bird.looks.get(trait)?.counted, scores = evidenceOf(bird, trait)
    return counted && scores.some(({value}) => value !== counted.value) ? [{bird, trait, scores, counted}] : []
  })
}
