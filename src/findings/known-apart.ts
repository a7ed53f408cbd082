import type {Alleles} from '../heredity/locus.ts'
import type {Bird, Logbook, Pen, Trait} from '../logbook/book.ts'
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

/** A brood, and what the flock says with the looks of its own chicks left unseen. */
export interface BroodApart {
  readonly brood: Brood
  readonly apart: WorkedGroup
}

/** All broods with a chick that was scored for one of these traits. */
export function broodsOf(book: Logbook, traits: readonly Trait[]): readonly Brood[] {
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

/**
 * What is known of a group of loci from evidence other than a brood's own chicks. Broods that share no parent, and none of which holds a parent of the other,
 * are left unseen together: that spares working and takes no more from either than a distant relative's looks.
 */
export function knownApart(broods: readonly Brood[], group: LocusGroup, heredity: Heredity, pedigree: PedigreeOfBook): readonly BroodApart[] {
  const {tallies} = heredity.worked(group)
  const batches: Brood[][] = []
  for (const brood of broods) {
    const batch = batches.find(others => others.every(other => !touch(brood, other)))
    if (batch) batch.push(brood)
    else batches.push([brood])
  }
  return batches.flatMap(batch => {
    const unseen = new Set(batch.flatMap(({chicks}) => chicks.flatMap(chick => (chick.kind === 'bird' ? [pedigree.numberOf(chick)] : tallies.get(chick) ?? []))))
    const apart = heredity.workedOtherwise(group, {unseen: animal => unseen.has(animal)})
    return batch.map(brood => ({brood, apart}))
  })
}

function touch(one: Brood, other: Brood): boolean {
  const holds = ({chicks}: Brood, {parents}: Brood): boolean => chicks.some(chick => chick.kind === 'bird' && parents.has(chick))
  return [...one.parents].some(parent => other.parents.has(parent)) || holds(one, other) || holds(other, one)
}

/** What stands at the loci of a trait, where it is as good as known: the likeliest at each, when all of them together are sure. */
export function surely({loci}: Trait, group: LocusGroup, {found}: WorkedGroup, animal: number): readonly Alleles[] | null {
  let chance = 1
  const alleles: Alleles[] = []
  for (const locus of loci) {
    const [likeliest] = found.at(animal, group.loci.indexOf(locus))
    if (!likeliest) return null
    chance *= likeliest.probability
    alleles.push(likeliest.is)
  }
  return chance >= SURE ? alleles : null
}
