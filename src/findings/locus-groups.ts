import type {Linkage, Locus} from '../heredity/locus.ts'
import type {Logbook, Trait} from '../logbook/book.ts'

/** Loci that must be worked together, since a look rests on several of them or they lie near each other; and the traits that tell of them. */
export interface LocusGroup {
  readonly loci: readonly Locus[]
  /** those with rules that name its loci */
  readonly traits: readonly Trait[]
  /** loci by their places in `loci` */
  readonly linkages: readonly Linkage[]
}

/** The loci of the book in groups, each locus in one, in the order in which the traits name them. */
export function locusGroups({traits, loci, linkages}: Pick<Logbook, 'traits' | 'loci' | 'linkages'>): readonly LocusGroup[] {
  const all = [...loci.values()].map(({locus}) => locus)
  const groupOf = new Map(all.map((locus, index) => [locus, index] as const))
  const join = (some: readonly Locus[]): void => {
    const groups = some.flatMap(locus => groupOf.get(locus) ?? [])
    const least = Math.min(...groups)
    for (const [locus, group] of groupOf) if (groups.includes(group)) groupOf.set(locus, least)
  }
  const ruled = traits.filter(({shows, loci: named}) => shows.length > 0 && named.length > 0)
  for (const trait of ruled) join(trait.loci)
  for (const linkage of linkages) if (linkage.recombination < 0.5) join(linkage.loci)
  return [...new Set(groupOf.values())].map(group => {
    const members = all.filter(locus => groupOf.get(locus) === group)
    return {
      loci: members, traits: ruled.filter(({loci: [first]}) => first !== undefined && members.includes(first)),
      linkages: linkages.filter(({loci: [one], recombination}) => members.includes(one) && recombination < 0.5)
        .map(({loci: [one, other], recombination}) => ({loci: [members.indexOf(one), members.indexOf(other)] as const, recombination})),
    }
  })
}
