import type {Bird, Logbook, Pen} from '../logbook/book.ts'
import type {Heredity} from './heredity.ts'
import type {Chick} from './ladder-chicks.ts'
import type {LocusGroup} from './locus-groups.ts'
import type {PedigreeOfBook} from './pedigree-of-book.ts'
import {scoreDoubts, type ScoreDoubt} from './score-doubt.ts'
import {QUESTIONED_BELOW, type MatingTest, type Segregation} from './segregation.ts'
import {EXPLAINS_FROM, slipsAsked, type Asked} from './slips-asked.ts'

/** A score is listed when it is wrong with this chance or more … */
export const DOUBTED_FROM = 0.2
/** … and no more than this share of birds of its kin would be scored so, misscoring as the records state it taken in. */
export const HARDLY = 0.05

/** One doubt that explains a chick's looks by itself. */
export type Explanation =
  /** its doubted scores are wrong, and the parents as written */
  | {readonly kind: 'misscored'; readonly times: 1; readonly share: number}
  /** another bird that stood near is the parent, and the scores are right */
  | {
    readonly kind: 'sire' | 'dam'
    readonly bird: Bird
    /** how many times likelier all that was seen is than as written; null: as written it cannot be at all */
    readonly times: number | null
    /** of all the explanations, each thought alike beforehand */
    readonly share: number
  }

/** Slips that change more than one parent, or none; `times` and `share` as in `Explanation`. */
export type FurtherExplanation =
  /** its egg came from another pen that laid then, and both parents are others: one of its males and, likeliest, this hen */
  | {readonly kind: 'egg'; readonly pen: Pen; readonly sires: readonly Bird[]; readonly dam: Bird; readonly times: number | null; readonly share: number}
  /** it is of the other sex */
  | {readonly kind: 'sex'; readonly is: 'male' | 'female'; readonly times: number | null; readonly share: number}

/** A chick whose look its parents cannot give, or hardly. */
export interface DoubtedChick {
  readonly chick: Chick
  /** of each trait in doubt, the likeliest to be wrong first */
  readonly doubts: readonly ScoreDoubt[]
  /** as written it cannot be, unless scores are wrong where the records allow for none: one in a thousand is then taken to be */
  readonly impossible: boolean
  /** the likeliest first; with `further` their shares make 1 */
  readonly explanations: readonly Explanation[]
  /** the likeliest first */
  readonly further: readonly FurtherExplanation[]
  /** its parents, chicks and full siblings that are in doubt too: one slip may explain them all */
  readonly kin: readonly Chick[]
  /** tests in which its whole family strays from what the rules give: then a rule may be wrong */
  readonly rule: readonly MatingTest[]
}

/**
 * Which chicks look as their parents cannot make them, or hardly? And which single slip explains each: a wrong score, another sire or dam, an egg of another pen, a wrong sex?
 *
 * Each group of loci with a doubt is worked once more for each kind of slip, every doubted chick possibly of any one other parent that stood near, or of any other pen; the chances of the parents then say how
 * many times likelier each is than as written. Where a slip explains a chick the other groups are asked too, and over the groups these numbers multiply. Where two doubted chicks are kin, each is asked with the other's parents open as well.
 *
 * @param segregation asked only where several chicks of a family are in doubt
 */
export function impossibleFamilies(book: Logbook, pedigree: PedigreeOfBook, heredity: Heredity, segregation: () => Segregation): readonly DoubtedChick[] {
  const doubts = new Map<Chick, ScoreDoubt[]>()
  const doubtedIn = new Map<LocusGroup, readonly ScoreDoubt[]>()
  for (const group of heredity.groups) {
    const worked = heredity.worked(group)
    const found = scoreDoubts(book, group, worked, chick => (chick.kind === 'bird' ? pedigree.numberOf(chick) : worked.tallies.get(chick)?.[0] ?? null))
      .filter(({wrong, scoredSo}) => wrong >= DOUBTED_FROM && scoredSo <= HARDLY)
    doubtedIn.set(group, found)
    for (const doubt of found) doubts.set(doubt.chick, [...doubts.get(doubt.chick) ?? [], doubt])
  }
  if (doubts.size === 0) return []

  const asked = slipsAsked(book, pedigree, heredity, doubtedIn)
  return [...doubts].map(([chick, own]): DoubtedChick => {
    const kin = [...doubts.keys()].filter(other => areKin(chick, other))
    return {
      chick, doubts: own.sort((a, b) => b.wrong - a.wrong), impossible: own.some(({impossible}) => impossible), kin,
      ...shared(asked.get(chick) ?? []), rule: kin.some(other => other.parentage.pairs === chick.parentage.pairs || samePairs(other, chick)) ? strayingTests(chick, own) : [],
    }
  })

  function strayingTests(chick: Chick, own: readonly ScoreDoubt[]): readonly MatingTest[] {
    return segregation().matings.filter(test => test.adjusted < QUESTIONED_BELOW && test.chicks.includes(chick) && own.some(({trait}) => trait === test.trait))
  }
}

/** A wrong score, and the other slips that explain it as well. */
function shared(slips: readonly Asked[]): Pick<DoubtedChick, 'explanations' | 'further'> {
  const cannotBe = slips.some(({times}) => times === null)
  const likelier = slips.filter(({times}) => times === null || (!cannotBe && times >= EXPLAINS_FROM))
  const sum = cannotBe ? likelier.length : likelier.reduce((total, {times}) => total + (times ?? 0), 1)
  const explanations: Explanation[] = [{kind: 'misscored', times: 1, share: cannotBe ? 0 : 1 / sum}], further: FurtherExplanation[] = []
  for (const slip of likelier) {
    const share = cannotBe ? 1 / sum : (slip.times ?? 0) / sum
    if (slip.kind === 'egg' || slip.kind === 'sex') further.push({...slip, share})
    else explanations.push({...slip, share})
  }
  return {explanations: explanations.sort((a, b) => b.share - a.share), further: further.sort((a, b) => b.share - a.share)}
}

const samePairs = (one: Chick, other: Chick): boolean => one.parentage.pairs.length === other.parentage.pairs.length &&
  one.parentage.pairs.every(({sire, dam}, index) => sire === other.parentage.pairs[index]?.sire && dam === other.parentage.pairs[index]?.dam)

function areKin(one: Chick, other: Chick): boolean {
  if (one === other) return false
  const isParent = (parent: Chick, chick: Chick): boolean => chick.parentage.pairs.some(({sire, dam}) => sire === parent || dam === parent)
  return isParent(one, other) || isParent(other, one) || (one.parentage.pairs.length > 0 && samePairs(one, other))
}
