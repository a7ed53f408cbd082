import type {Bird, Strain, Trait} from '../logbook/book.ts'
import {contradictedStrains} from '../logbook/contradicted-strains.ts'
import type {DoubtedChick} from './impossible-families.ts'
import type {Chick} from './ladder-chicks.ts'
import type {LocusGroup} from './locus-groups.ts'
import {scoreDoubts} from './score-doubt.ts'
import {BRIEF} from './slips-asked.ts'
import type {Findings} from './study.ts'

/** A strain that is said to breed true for a look, though birds that come of it look as they then cannot. */
export interface SuspectedStrain {
  readonly strain: Strain
  readonly trait: Trait
  readonly state: string
  /** the birds of the strain and those that come of it whose looks are in doubt */
  readonly chicks: readonly Chick[]
  /** these are all that were scored of the chicks of its birds */
  readonly all: boolean
  /** other strains of which the same would explain it about as well */
  readonly orElse: readonly Strain[]
}

/** Fewer chicks than this may each be a slip of its own. */
const FEWEST = 2
/** So many times likelier must all that was seen be, were the strain not true for the look, as a wrong parent must make it to be told. */
const TIMES = 200
/** Another strain that comes this near to the likeliest explains it as well. */
const AS_WELL = 10

/**
 * Which strain's record is likelier to be wrong than the scores of several birds?
 *
 * Where two birds or more, none the other's parent, look as their family cannot make them, each strain they come of is tried: the flock is worked once
 * more with the strain's alleles loosened, half as its true-breeding look has them and half all alike. The likeliest is suspected if all that was seen is then
 * two hundred times likelier (of equal ones the first in the book's order), and two of these birds at least are then scored rightly, as are its own. Where every scored chick of its birds is in doubt and none of these was scored, that is enough. A chick that another
 * parent explains is left out, or a strain that its own founders contradict; so is a strain whose alleles are stated.
 *
 * @param from a look counts as in doubt when it is wrong with this chance or more
 */
export function suspectedStrains(findings: Pick<Findings, 'book' | 'heredity' | 'pedigree' | 'impossibleFamilies'>, from: number, groups: readonly LocusGroup[] = findings.heredity.groups): readonly SuspectedStrain[] {
  const contradicted = contradictedStrains(findings.book), isTold = (chick: Chick, trait: Trait): boolean => contradicted.some(each => each.trait === trait && (chick.shares.get(each.strain) ?? 0) > 0)
  return groups.flatMap(group => group.traits.flatMap(trait => {
    const doubted = findings.impossibleFamilies.filter(({doubts}) => doubts.some(each => each.trait === trait && each.wrong >= from)).map(each => ({...each, byParent: isOfOther(each)}))
    if (doubted.reduce((sum, {chick}) => sum + chick.count, 0) < FEWEST) return []
    const plainly = ofAllChicks(findings, trait, new Set(doubted.map(({chick}) => chick)))
    return plainly.length > 0 ? plainly : likeliest(findings, {group, trait, from}, doubted.filter(({chick, byParent}) => !byParent && !isTold(chick, trait)).map(({chick}) => chick))
  }))
}

/** Another sire or dam is told of instead. */
const isOfOther = ({explanations}: DoubtedChick): boolean => explanations.some(each => each.kind !== 'misscored' && (each.times === null || each.times >= TIMES))

function ofAllChicks({book: {strains, birds, hatches}}: Pick<Findings, 'book'>, trait: Trait, doubted: ReadonlySet<Chick>): readonly SuspectedStrain[] {
  const every: readonly Chick[] = [...birds, ...hatches.flatMap(({tallies}) => tallies.filter(({count}) => count > 0))]
  return strains.flatMap((strain): readonly SuspectedStrain[] => {
    const state = strain.trueFor.get(trait)
    if (state === undefined || birds.some(bird => bird.strain === strain && bird.looks.get(trait)?.counted)) return []
    const chicks = every.filter(chick => isOf(chick, strain) && chick.looks.get(trait)?.counted)
    return chicks.reduce((sum, {count}) => sum + count, 0) >= FEWEST && chicks.every(chick => doubted.has(chick)) ? [{strain, trait, state, chicks, all: true, orElse: []}] : []
  })
}

/** Whoever of its pens its parents are, one is a bird of the strain. */
const isOf = ({parentage: {pairs}}: Chick, strain: Strain): boolean => pairs.length > 0 && pairs.every(({sire, dam}) => sire?.strain === strain || dam?.strain === strain)

interface Question {
  readonly group: LocusGroup
  readonly trait: Trait
  readonly from: number
}

function likeliest({book, heredity, pedigree}: Pick<Findings, 'book' | 'heredity' | 'pedigree'>, {group, trait, from}: Question, doubted: readonly Chick[]): readonly SuspectedStrain[] {
  if (apart(doubted) < FEWEST) return []
  const {logLikelihood: asWritten, tooWideFrom} = heredity.worked(group).found, limits = {...BRIEF, tooWideFrom}
  const tried = book.strains.flatMap(strain => {
    const state = strain.trueFor.get(trait), loci = trait.loci.filter(({symbol}) => !strain.alleles.has(symbol)), ofStrain = doubted.filter(chick => (chick.shares.get(strain) ?? 0) > 0)
    if (state === undefined || loci.length === 0 || apart(ofStrain) < FEWEST) return []
    const worked = heredity.workedOtherwise(group, {loosened: {strain, loci}}, new Set(), limits), gain = worked.found.logLikelihood - asWritten
    if (gain < Math.log(TIMES)) return []
    const wrong = scoreDoubts(book, group, worked, chick => (chick.kind === 'bird' ? pedigree.numberOf(chick) : worked.tallies.get(chick)?.[0] ?? null)).filter(doubt => doubt.trait === trait && doubt.wrong >= from).map(({chick}) => chick)
    const chicks = ofStrain.filter(chick => !wrong.includes(chick))
    // one whose own birds must then be scored wrongly is no better explanation
    return wrong.some(chick => chick.kind === 'bird' && chick.strain === strain) || apart(chicks) < FEWEST ? [] : [{strain, state, chicks, gain}]
  }).toSorted((a, b) => Math.round((b.gain - a.gain) * 1e6))
  const [best, ...others] = tried
  if (!best) return []
  return [{strain: best.strain, trait, state: best.state, chicks: best.chicks, all: false, orElse: others.filter(({gain}) => gain > best.gain - Math.log(AS_WELL)).map(({strain}) => strain)}]
}

/** Is the look of a chick explained by a suspected strain? */
export const comesOf = ({strain, trait: of, chicks, all}: SuspectedStrain, chick: Chick, trait: Trait): boolean => of === trait && (all ? (chick.shares.get(strain) ?? 0) > 0 : chicks.includes(chick))

/** How many of these chicks are neither parent nor chick of one counted before. */
function apart(chicks: readonly Chick[]): number {
  const counted: Chick[] = []
  const hasParent = ({parentage: {sires, dams}}: Chick, parent: Chick): boolean => [...sires, ...dams].some(({bird}: {readonly bird: Bird}) => bird === parent)
  for (const chick of chicks) if (!counted.some(other => hasParent(chick, other) || hasParent(other, chick))) counted.push(chick)
  return counted.reduce((sum, {count}) => sum + count, 0)
}
