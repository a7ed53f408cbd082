import type {Logbook, Strain, Trait} from '../logbook/book.ts'
import type {DoubtedChick} from './impossible-families.ts'
import type {Chick} from './ladder-chicks.ts'

/** A strain that is said to breed true for a look, of which none of its birds' chicks can come. */
export interface SuspectedStrain {
  readonly strain: Strain
  readonly trait: Trait
  readonly state: string
  /** the chicks of its birds that were scored, each in doubt */
  readonly chicks: readonly Chick[]
}

/** Fewer chicks than this may each be a slip of its own. */
const FEWEST = 2

/**
 * Where every scored chick of a strain's birds has a look that its parents cannot give, and no bird of the strain itself was scored, what is said of the
 * strain is likelier to be wrong than all of them. One whose own birds were scored is spoken for, or against, by these.
 *
 * @param from a look counts as in doubt when it is wrong with this chance or more
 */
export function suspectedStrains({strains, birds, hatches}: Pick<Logbook, 'strains' | 'birds' | 'hatches'>, doubted: readonly DoubtedChick[], from: number): readonly SuspectedStrain[] {
  const inDoubt = new Map<Trait, Set<Chick>>()
  for (const {chick, doubts} of doubted) for (const {trait, wrong} of doubts) if (wrong >= from) inDoubt.set(trait, (inDoubt.get(trait) ?? new Set()).add(chick))
  const all: readonly Chick[] = [...birds, ...hatches.flatMap(({tallies}) => tallies.filter(({count}) => count > 0))]
  return strains.flatMap(strain => [...strain.trueFor].flatMap(([trait, state]): readonly SuspectedStrain[] => {
    const doubts = inDoubt.get(trait)
    if (!doubts || birds.some(bird => bird.strain === strain && bird.looks.get(trait)?.counted)) return []
    const chicks = all.filter(chick => isOf(chick, strain) && chick.looks.get(trait)?.counted)
    return chicks.reduce((sum, {count}) => sum + count, 0) >= FEWEST && chicks.every(chick => doubts.has(chick)) ? [{strain, trait, state, chicks}] : []
  }))
}

/** Whoever of its pens its parents are, one is a bird of the strain. */
const isOf = ({parentage: {pairs}}: Chick, strain: Strain): boolean => pairs.length > 0 && pairs.every(({sire, dam}) => sire?.strain === strain || dam?.strain === strain)
