/** Birds whose scorings of a trait cannot all be right. */
import type {Bird, Logbook, Score, Trait} from './book.ts'

export interface ContraryScorings {
  readonly bird: Bird
  readonly trait: Trait
  /** those neither struck nor outside their window, in turn; all of them are evidence of what the bird carries */
  readonly scores: readonly Score[]
  /** the one that counts in shares and on pages */
  readonly counted: Score
}

/** The scorings of a trait that are evidence: neither struck nor outside their window. */
export const evidenceOf = (bird: Pick<Bird, 'looks'>, trait: Trait): readonly Score[] => (bird.looks.get(trait)?.scores ?? []).filter(({struck, outside}) => struck === null && !outside)

/** The scoring that differs from all the others, two or more, which agree; null where there is none. */
export function standingAlone(scores: readonly Score[]): Score | null {
  if (scores.length < 3) return null
  return scores.find(one => new Set(scores.filter(other => other !== one).map(({value}) => value)).size === 1 && scores.every(other => other === one || other.value !== one.value)) ?? null
}

/**
 * Every bird and trait with scorings that no true look allows for together, misscoring as the trait states it taken in. Only of traits with rules of
 * inheritance: there each scoring is evidence of the genotype. Of other traits the last counts and nothing rests on the rest; and where a rate of
 * misscoring covers the pair, two scorers who do not agree are what was to be expected, and the trait's page lists them.
 */
export function contraryScorings({birds, traits}: Pick<Logbook, 'birds' | 'traits'>): readonly ContraryScorings[] {
  const inherited = traits.filter(({shows}) => shows.length > 0)
  return birds.flatMap(bird => inherited.flatMap((trait): ContraryScorings[] => {
    const scores = evidenceOf(bird, trait), counted = bird.looks.get(trait)?.counted
    if (!counted || trait.states.some(state => scores.every(({value}) => mayBeScored(trait, state, String(value))))) return []
    return [{bird, trait, scores, counted}]
  }))
}

const mayBeScored = ({misscoring}: Trait, is: string, scored: string): boolean => is === scored || (misscoring.get(is)?.get(scored) ?? 0) > 0
