import type {Bird, Logbook} from '../logbook/book.ts'
import {crossRatio, writeCross} from './cross-ratio.ts'
import type {Heredity} from './heredity.ts'
import {surely} from './known-apart.ts'
import type {Chick} from './ladder-chicks.ts'
import type {MatingApart} from './matings-apart.ts'
import {otherParents} from './other-parents.ts'
import type {PedigreeOfBook} from './pedigree-of-book.ts'
import {scoreDoubts} from './score-doubt.ts'

/** A score with less doubt than this is not asked about. */
const ASKED_FROM = 0.05

/** What a mating that strays from its ratio asks, in this order: a mis-scored bird, a wrong parent, a wrong rule? */
export interface Questions {
  /** chicks whose score is doubtful, given everything, the most doubtful first */
  readonly misscored: readonly {readonly chick: Chick; readonly chance: number}[]
  /** other birds of known genotype that stood near, with which the same counts would be likelier, the likeliest first */
  readonly parents: readonly {
    readonly bird: Bird
    readonly role: 'sire' | 'dam'
    readonly cross: string
    /** how many times likelier than with the parents as written; null where these cannot give such chicks at all */
    readonly times: number | null
  }[]
  /** do the other matings of this cross stray too? Then the rule itself is in doubt */
  readonly rule: {readonly otherMatings: number; readonly straying: number}
}

/** @param others P of the other matings of the same cross, each by itself */
export function questionsOf(book: Logbook, pedigree: PedigreeOfBook, heredity: Heredity, mating: MatingApart, others: readonly number[]): Questions {
  const {trait, group, apart, chicks, counts, cross, sex} = mating
  const worked = heredity.worked(group)
  const doubts = scoreDoubts(book, group, worked, chick => (chick.kind === 'bird' ? pedigree.numberOf(chick) : worked.tallies.get(chick)?.[0] ?? null))
  const asWritten = logLikelihood(counts, mating.ratio.scored), near = otherParents(book)
  const candidates = new Map<Bird, 'sire' | 'dam'>()
  for (const chick of chicks) {
    const {sires, dams} = near(chick)
    for (const bird of sires) if (!mating.sires.includes(bird)) candidates.set(bird, 'sire')
    for (const bird of dams) if (!mating.dams.includes(bird)) candidates.set(bird, 'dam')
  }
  const parents = [...candidates].flatMap(([bird, role]): Questions['parents'][number][] => {
    const alleles = surely(trait, group, apart, pedigree.numberOf(bird))
    if (!alleles) return []
    const instead = {...cross, [role]: alleles}, ratio = crossRatio(trait, group, instead, sex ?? 'male')
    const gain = ratio ? logLikelihood(counts, ratio.scored) - asWritten : 0
    return ratio && gain > 0 ? [{bird, role, cross: writeCross(trait, group, instead), times: asWritten === -Infinity ? null : Math.exp(gain)}] : []
  })
  return {
    misscored: doubts.filter(doubt => doubt.trait === trait && doubt.wrong >= ASKED_FROM && chicks.includes(doubt.chick)).map(({chick, wrong}) => ({chick, chance: wrong})).sort((a, b) => b.chance - a.chance),
    parents: parents.sort((a, b) => (b.times ?? Infinity) - (a.times ?? Infinity) || 0),
    rule: {otherMatings: others.length, straying: others.filter(p => p < ASKED_FROM).length},
  }
}

/** Without the coefficient that all ratios share. */
function logLikelihood(counts: readonly number[], ratio: readonly number[]): number {
  return counts.reduce((sum, count, state) => (count === 0 ? sum : sum + count * Math.log(ratio[state] ?? 0)), 0)
}
