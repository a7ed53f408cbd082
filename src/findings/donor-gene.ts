import type {Bird, Logbook, Strain, Trait} from '../logbook/book.ts'
import {countedValue} from './counted-value.ts'

/** What is left of one gene that a donor strain was brought in for. */
export interface DonorGene {
  readonly trait: Trait
  readonly strain: Strain
  /** the look that the strain is true for and the breed wants */
  readonly state: string
  /** one copy shows: a bird scored otherwise has none. False where two are needed, or where the records do not say */
  readonly showsInOne: boolean
  readonly onZ: boolean
  /** donor-strain birds that had, or may have had, crossed chicks */
  readonly donors: readonly Bird[]
  /** chicks of theirs that may have got the gene: one copy drawn for each */
  readonly drawn: readonly Bird[]
  /** of those, chicks from which a way of birds that may carry it leads to a bird of the group */
  readonly still: readonly Bird[]
  /** different copies in the group at most: one a chick of `still`, two a donor bird (a hen has one on the Z) */
  readonly copies: number
  /** birds of the group that may carry it */
  readonly carriers: number
}

/**
 * On how many copies, drawn apart from the donor birds, does the gene we selected rest?
 *
 * One for each required trait and donor strain that is true for a look the breed wants and the recurrent strain is not true for. A copy is drawn when a
 * donor-strain bird has a crossed chick. It is still there when a way leads from that chick to a bird of the group, from parent to possible parent,
 * through birds none of which is denied the gene by its counted look. What a bird may carry it need not: the number is what there can be at most.
 * A chick that may be of several donor birds is one copy of one of them, given to whichever leaves most copies.
 *
 * @param group the birds asked about, such as those bred from
 */
export function donorGenes(book: Logbook, group: readonly Bird[]): readonly DonorGene[] {
  const childrenOf = children(book)
  const wanted = new Set(group)
  return book.traits.filter(trait => trait.required).flatMap(trait => book.project.donors.flatMap((strain): readonly DonorGene[] => {
    const state = strain.trueFor.get(trait)
    if (state === undefined || !isWanted(trait, state) || book.project.recurrent?.trueFor.get(trait) === state) return []
    const [locus] = trait.loci
    const onZ = trait.loci.length === 1 && locus?.on === 'Z'
    const showsInOne = showsInOneCopy(trait, state)
    const mayCarry = (bird: Bird): boolean => {
      const look = countedValue(bird, trait)
      return !showsInOne || look === null || look === state
    }
    const passes = (parent: Bird, chick: Bird): boolean => mayCarry(chick) && !(onZ && parent.sex === 'female' && chick.sex === 'female')
    const isDonor = (bird: Bird): boolean => bird.step.kind === 'strain' && (bird.strain ?? bird.step.strains[0]) === strain
    const drawn = book.birds.filter(chick => chick.step.kind !== 'strain' && donorParents(chick, isDonor).some(donor => passes(donor, chick)))
    const carries = (chick: Bird): boolean => descends(chick, bird => wanted.has(bird), bird => (childrenOf.get(bird) ?? []).filter(child => passes(bird, child)))
    const still = drawn.filter(carries)
    const reached = new Set<Bird>()
    for (const chick of drawn) descends(chick, () => false, bird => (childrenOf.get(bird) ?? []).filter(child => passes(bird, child)), reached)
    return [{
      trait, strain, state, showsInOne, onZ, drawn, still,
      donors: book.birds.filter(bird => isDonor(bird) && (childrenOf.get(bird) ?? []).some(({step}) => step.kind !== 'strain')),
      copies: mostCopies(still.map(chick => donorParents(chick, isDonor).filter(donor => passes(donor, chick))), donor => (onZ && donor.sex === 'female' ? 1 : 2)),
      carriers: group.filter(bird => reached.has(bird)).length,
    }]
  }))
}

const isWanted = ({wanted: {male, female}}: Trait, state: string): boolean => [male, female].some(wish => wish?.kind === 'states' && wish.states.includes(state))

/** Does one copy show? So it does when the first rule that gives this look asks for one allele of one gene, leaves the other open and holds for every such bird. */
function showsInOneCopy({loci, shows}: Trait, state: string): boolean {
  const [locus] = loci
  if (!locus || loci.length > 1) return false
  const place = shows.findIndex(each => each.is === state), rule = shows[place]
  const [copy, other] = rule?.patterns.get(locus) ?? []
  if (copy === undefined || copy === 'any' || other !== 'any' || rule?.penetrance !== 1 || rule.sex !== null) return false
  // an earlier rule for the same allele with another look would take some of its carriers away
  return shows.slice(0, place).every(({patterns}) => !patterns.get(locus)?.includes(copy))
}

function children(book: Logbook): ReadonlyMap<Bird, readonly Bird[]> {
  const found = new Map<Bird, Bird[]>()
  for (const bird of book.birds) {
    for (const {bird: parent} of [...bird.parentage.sires, ...bird.parentage.dams, ...bird.maybe.map(other => ({bird: other}))]) {
      const list = found.get(parent)
      if (list) list.push(bird)
      else found.set(parent, [bird])
    }
  }
  return found
}

const donorParents = ({parentage: {sires, dams}}: Bird, isDonor: (bird: Bird) => boolean): readonly Bird[] => [...sires, ...dams].map(parent => parent.bird).filter(isDonor)

/** Is a bird that is looked for reached from this one, itself included? */
function descends(from: Bird, isLookedFor: (bird: Bird) => boolean, next: (bird: Bird) => readonly Bird[], seen = new Set<Bird>()): boolean {
  const line = seen.has(from) ? [] : [from]
  for (let bird = line.pop(); bird; bird = line.pop()) {
    if (seen.has(bird)) continue
    seen.add(bird)
    if (isLookedFor(bird)) return true
    line.push(...next(bird))
  }
  return false
}

/** The most chicks that can each be given a donor parent of theirs when no donor is given more than it has copies: one chick after another, moving those before where that makes room. */
export function mostCopies<Donor>(chicks: readonly (readonly Donor[])[], copiesOf: (donor: Donor) => number): number {
  const given = new Map<Donor, number[]>()
  const place = (chick: number, tried: Set<Donor>): boolean => (chicks[chick] ?? []).some(donor => {
    if (tried.has(donor)) return false
    tried.add(donor)
    const theirs = given.get(donor) ?? []
    given.set(donor, theirs)
    const free = theirs.length < copiesOf(donor) ? theirs.length : theirs.findIndex(other => place(other, tried))
    if (free < 0) return false
    theirs[free] = chick
    return true
  })
  return chicks.filter((_, chick) => place(chick, new Set())).length
}
