import type {Probable} from '../heredity/genotype-probabilities.ts'
import type {Bird, Logbook, Trait} from '../logbook/book.ts'
import type {Heredity} from './heredity.ts'
import type {Chick} from './ladder-chicks.ts'
import type {PedigreeOfBook} from './pedigree-of-book.ts'

/** The chances of a chick's candidates count as moved when this much of the whole has gone from some to others. */
const MOVED = 0.2

/** One that may be a chick's parent. */
export interface Candidate {
  /** null: a bird outside the book */
  readonly bird: Bird | null
  /** by the records of descent */
  readonly recorded: number
  /** after everything that was seen */
  readonly now: number
  /** how many times likelier what was seen makes it than the records alone do, by what was seen; 1 where it tells nothing */
  readonly evidence: readonly {readonly traits: readonly Trait[]; readonly times: number}[]
}

/** Who had a chick, as far as looks can tell. */
export interface LikeliestParent {
  readonly chick: Chick
  readonly role: 'sire' | 'dam'
  /** the likeliest first; their chances make 1 */
  readonly candidates: readonly Candidate[]
  /** half the sum of what the chances changed by, 0 to 1 */
  readonly moved: number
}

export interface LikeliestSires {
  /** those whose chances moved notably, in the book's order, each side by itself */
  readonly moved: readonly LikeliestParent[]
  /** chicks with a parent in doubt of whom the looks say little or nothing, a tally once */
  readonly unmoved: {readonly sires: number; readonly dams: number}
}

/**
 * Which of a pen's males is the sire? For every chick whose sire or dam is in doubt:
 *
 *     P(candidate) ∝ P(recorded) · Π over groups of loci of P(candidate | seen of the group)/P(recorded)
 *
 * Groups of loci are worked apart and multiplied as if each told of the parent by itself, which leaves aside what one group tells of the other chicks' parents.
 * Chicks of one tally are alike and stand once.
 */
export function likeliestSires(book: Logbook, pedigree: PedigreeOfBook, heredity: Heredity): LikeliestSires {
  const chicks: readonly Chick[] = [...book.birds, ...book.hatches.flatMap(({tallies}) => tallies.filter(({count}) => count > 0))]
  const all = chicks.flatMap(chick => (['sire', 'dam'] as const).flatMap(role => ofSide(chick, role) ?? []))
  const unmoved = (side: 'sire' | 'dam'): number => all.filter(({role, moved}) => role === side && moved < MOVED).length
  return {moved: all.filter(({moved}) => moved >= MOVED), unmoved: {sires: unmoved('sire'), dams: unmoved('dam')}}

  function ofSide(chick: Chick, role: 'sire' | 'dam'): LikeliestParent | null {
    const recorded = recordedOf(chick, role)
    if (recorded.size < 2) return null
    const evidence = new Map([...recorded.keys()].map(bird => [bird, [] as {traits: readonly Trait[]; times: number}[]] as const))
    for (const group of heredity.groups) {
      const {found, tallies} = heredity.worked(group)
      const animal = chick.kind === 'bird' ? pedigree.numberOf(chick) : tallies.get(chick)?.[0]
      const seen = animal === undefined ? null : role === 'sire' ? found.sires(animal) : found.dams(animal)
      if (!seen) continue
      for (const [bird, before] of recorded) evidence.get(bird)?.push({traits: group.traits, times: chanceOf(seen, bird && pedigree.numberOf(bird)) / before})
    }
    const weights = new Map([...recorded].map(([bird, before]) => [bird, (evidence.get(bird) ?? []).reduce((product, {times}) => product * times, before)] as const))
    const sum = [...weights.values()].reduce((total, weight) => total + weight, 0)
    const candidates = [...recorded].map(([bird, before]): Candidate => ({bird, recorded: before, now: sum > 0 ? (weights.get(bird) ?? 0) / sum : before, evidence: evidence.get(bird) ?? []}))
    return {
      chick, role, candidates: candidates.sort((a, b) => b.now - a.now || b.recorded - a.recorded),
      moved: candidates.reduce((total, {recorded: before, now}) => total + Math.abs(now - before), 0) / 2,
    }
  }
}

/** By candidate; birds outside the book are one. */
function recordedOf({parentage: {pairs}}: Chick, role: 'sire' | 'dam'): ReadonlyMap<Bird | null, number> {
  const chances = new Map<Bird | null, number>()
  for (const pair of pairs) chances.set(pair[role], (chances.get(pair[role]) ?? 0) + pair.chance)
  return chances
}

const chanceOf = (list: readonly Probable<number | null>[], animal: number | null): number => list.find(({is}) => is === animal)?.probability ?? 0
