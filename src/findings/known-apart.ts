import type {Alleles} from '../heredity/locus.ts'
import type {Bird, Logbook, Pen, Trait} from '../logbook/book.ts'
import {crossLoci} from './cross-loci.ts'
import type {Heredity, WorkedGroup} from './heredity.ts'
import type {Chick} from './ladder-chicks.ts'
import type {LocusGroup} from './locus-groups.ts'
import {penOf} from './pen-of.ts'
import type {PedigreeOfBook} from './pedigree-of-book.ts'

/** A genotype counts as known from this probability on. */
export const SURE = 0.99

/** The chicks of one pen, or of one mating where no pen tells, and every bird that may be a parent of one of them. */
export interface Brood {
  readonly pen: Pen | null
  readonly chicks: readonly Chick[]
  readonly parents: ReadonlySet<Bird>
}

/** What stands at the loci of a group in some of its birds. */
export interface KnownOfBirds {
  readonly found: Pick<WorkedGroup['found'], 'at'>
}

/** A brood, and what the flock says of its parents with the looks of its own chicks left unseen. */
export interface BroodApart {
  readonly brood: Brood
  readonly apart: KnownOfBirds
}

/** All broods with a chick that was scored for one of these traits. */
function broodsOf(book: Logbook, traits: readonly Trait[]): readonly Brood[] {
  const chicks: Chick[] = [...book.birds, ...book.hatches.flatMap(({tallies}) => tallies.filter(({count}) => count > 0))]
  const broods = new Map<string, {pen: Pen | null; chicks: Chick[]; parents: Set<Bird>}>()
  for (const chick of chicks) {
    const {pairs} = chick.parentage
    if (pairs.length === 0 || !traits.some(trait => chick.looks.get(trait)?.counted)) continue
    const pen = penOf(chick), key = pen ? `pen ${pen.id}` : chick.hatch ? `hatch ${chick.hatch.id}` : `pair ${pairs.map(({sire, dam}) => `${sire?.id ?? ''} ${dam?.id ?? ''}`).join()}`
    const brood = broods.get(key) ?? {pen, chicks: [], parents: new Set<Bird>()}
    broods.set(key, brood)
    brood.chicks.push(chick)
    for (const {sire, dam} of pairs) for (const parent of [sire, dam]) if (parent) brood.parents.add(parent)
  }
  return [...broods.values()]
}

/** Of one group of loci: its broods, and what is known of a brood's parents from evidence other than its own chicks. */
export interface GroupApart {
  readonly broods: readonly Brood[]
  of(brood: Brood): BroodApart
}

export type KnownApart = (group: LocusGroup) => GroupApart

/** Each brood is worked when it is first asked for, and kept. */
export function knownApart(book: Logbook, heredity: Heredity, pedigree: PedigreeOfBook): KnownApart {
  const groups = new Map<LocusGroup, GroupApart>()
  return group => {
    const found = groups.get(group) ?? groupApart(book, group, heredity, pedigree)
    groups.set(group, found)
    return found
  }
}

function groupApart(book: Logbook, group: LocusGroup, heredity: Heredity, pedigree: PedigreeOfBook): GroupApart {
  const {flock, found, tallies} = heredity.worked(group), loci = group.loci.map((_, locus) => locus)
  const kept = new Map<Brood, BroodApart>()
  const work = (brood: Brood): BroodApart => {
    const animals = brood.chicks.flatMap(chick => (chick.kind === 'bird' ? [pedigree.numberOf(chick)] : tallies.get(chick) ?? []))
    const unseen = new Map(animals.map(animal => [animal, {readings: [], tested: flock.tested(animal)}] as const))
    const parents = [...brood.parents].map(pedigree.numberOf)
    const known = found.supposing(unseen, at => new Map(parents.map(parent => [parent, loci.map(locus => at(parent, locus))] as const)))
    // others than its parents are seldom asked for
    return {brood, apart: {found: {at: (animal, locus) => known.get(animal)?.[locus] ?? found.supposing(unseen, at => at(animal, locus))}}}
  }
  return {
    broods: broodsOf(book, group.traits),
    of(brood) {
      const apart = kept.get(brood) ?? work(brood)
      kept.set(brood, apart)
      return apart
    },
  }
}

/**
 * What stands at the loci told of a cross (`crossLoci`), where it is as good as known: the likeliest at each of the trait's own, when all of them together are
 * sure, else null; then at each of the others as long as it is sure too, else null there.
 */
export function surely(trait: Trait, group: LocusGroup, {found}: KnownOfBirds, animal: number): readonly (Alleles | null)[] | null {
  const {loci, told} = crossLoci(trait, group)
  let chance = 1
  const alleles: (Alleles | null)[] = []
  for (const [place, locus] of loci.slice(0, told).entries()) {
    const [likeliest] = found.at(animal, group.loci.indexOf(locus)), together = chance * (likeliest?.probability ?? 0)
    const isSure = likeliest !== undefined && together >= SURE
    if (!isSure && place < trait.loci.length) return null
    if (isSure) chance = together
    alleles.push(isSure ? likeliest.is : null)
  }
  return alleles
}
