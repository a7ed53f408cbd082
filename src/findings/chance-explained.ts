import type {Probable} from '../heredity/genotype-probabilities.ts'
import type {Alleles, Locus} from '../heredity/locus.ts'
import type {Told} from '../heredity/what-was-seen.ts'
import type {Bird, Logbook, Trait} from '../logbook/book.ts'
import {byParents} from './by-parents.ts'
import {chicksTell} from './chicks-tell.ts'
import {countedValue} from './counted-value.ts'
import type {Heredity, WorkedGroup} from './heredity.ts'
import type {Chick} from './ladder-chicks.ts'
import type {PedigreeOfBook} from './pedigree-of-book.ts'

/** Where two chances are nearer than this, a breeder takes them for the same. */
export const AS_GOOD = 0.04

/** What pulls a bird's chance away from what its parents alone would make it. */
export type Pull =
  /** the looks of its own chicks, or of chicks that may be its own: `sure` where all are */
  | {readonly kind: 'chicks'; readonly chicks: readonly Chick[]; readonly sure: boolean}
  /** what came of its chicks: of these the chicks of its chicks */
  | {readonly kind: 'descendants'; readonly chicks: readonly Chick[]}
  /** its own looks at loci that lie near */
  | {readonly kind: 'linked'; readonly looks: readonly {readonly trait: Trait; readonly state: string; readonly loci: readonly Locus[]}[]}
  /** its own looks, which not all show that could */
  | {readonly kind: 'look'; readonly looks: readonly string[]}
  /** none of these by itself: most often how its kin tie its two parents to each other */
  | {readonly kind: 'kin'}

export interface Explained {
  /** by its parents' chances as they are shown, or its strain's, and its own look; null where these cannot be gone through */
  readonly alone: number | null
  /** null: that is as good as the chance shown */
  readonly pull: Pull | null
}

export interface ChanceExplained {
  /** of having an allele at least once; `shown` by the whole flock */
  explained(bird: Bird, locus: Locus, allele: number, shown: number): Explained
  /** what its parents make of it, its own look left aside; null where they cannot be gone through */
  byParentsOnly(bird: Bird, locus: Locus): readonly Probable<Alleles>[] | null
  /** what would stand at the locus, had nobody looked at the bird itself */
  unlooked(bird: Bird, locus: Locus): readonly Probable<Alleles>[]
}

export const hasAllele = (genotypes: readonly Probable<Alleles>[], allele: number): number =>
  Math.min(1, genotypes.reduce((sum, {is, probability}) => sum + (is.includes(allele) ? probability : 0), 0))

/**
 * Why is a bird's chance not what its parents alone would make it?
 *
 * Asked in turn: its own chicks, and all that came of it, as `chicksTell` weighs them; its own looks at loci nearby, and where its parents cannot be gone through its own look, each supposed away.
 * Sibs speak through the parents, whose chances as they are shown have them in already.
 * The first that makes at least half of the way is the reason, else the one that makes most of it, and where none makes a quarter, its other kin together are.
 */
export function chanceExplained({birds, hatches}: Pick<Logbook, 'birds' | 'hatches'>, heredity: Heredity, {numberOf}: PedigreeOfBook): ChanceExplained {
  const alone = byParents(heredity)
  const chicks: readonly Chick[] = [...birds, ...hatches.flatMap(({tallies}) => tallies.filter(({count}) => count > 0))]
  const offspring = new Map<Bird, Chick[]>()
  for (const chick of chicks) {
    for (const parent of new Set(chick.parentage.pairs.flatMap(({sire, dam}) => [sire, dam]))) {
      if (!parent) continue
      const own = offspring.get(parent) ?? []
      offspring.set(parent, own)
      own.push(chick)
    }
  }
  const numbers = (worked: WorkedGroup, some: readonly Chick[]): readonly number[] => some.flatMap(chick => (chick.kind === 'bird' ? [numberOf(chick)] : worked.tallies.get(chick) ?? []))

  return {
    explained(bird, locus, allele, shown) {
      const near = (genotypes: typeof by): boolean => genotypes !== null && Math.abs(hasAllele(genotypes, allele) - shown) <= AS_GOOD
      let by = alone.of(numberOf(bird), locus, true)
      if (by && !near(by) && bird.parentage.pairs.length > 1) by = alone.of(numberOf(bird), locus, true, true)
      return {alone: by && hasAllele(by, allele), pull: near(by) ? null : pullOf(bird, locus, allele, shown, by)}
    },
    byParentsOnly: (bird, locus) => alone.of(numberOf(bird), locus, false),
    unlooked(bird, locus) {
      const group = heredity.groupOf(locus), {found, flock} = heredity.worked(group), number = numberOf(bird)
      return found.supposing(new Map([[number, {readings: [], tested: flock.tested(number)}]]), at => at(number, group.loci.indexOf(locus)))
    },
  }

  function pullOf(bird: Bird, locus: Locus, allele: number, shown: number, by: readonly Probable<Alleles>[] | null): Pull {
    const group = heredity.groupOf(locus), worked = heredity.worked(group), {flock} = worked, number = numberOf(bird), place = group.loci.indexOf(locus)
    const from = by ? hasAllele(by, allele) : shown > 0.5 ? 0 : 1, own = offspring.get(bird) ?? []
    const nearby = group.traits.filter(trait => !trait.loci.includes(locus)).flatMap(trait => {
      const state = countedValue(bird, trait), near = trait.loci.filter(other => isLinked(other, locus))
      return typeof state === 'string' && near.length > 0 ? [{trait, state, loci: near}] : []
    })
    const grand = own.flatMap(chick => (chick.kind === 'bird' ? offspring.get(chick) ?? [] : []))
    // each gives how far it pulls, from `from` towards the chance shown
    const withChicks = (all: boolean): number | null => (by && own.length > 0 ? hasAllele(chicksTell(heredity, alone, number, locus, by, numbers(worked, own), all), allele) - from : null)
    const supposed = (keeps: (trait: number) => boolean): number | null => {
      const less = lookedAt(worked, number, keeps)
      return less ? shown - worked.found.supposing(less, at => hasAllele(at(number, place), allele)) : null
    }
    const tried: readonly (readonly [Pull, () => number | null])[] = [
      [{kind: 'chicks', chicks: own, sure: own.every(chick => isSure(bird, chick))}, () => withChicks(false)],
      [{kind: 'descendants', chicks: [...new Set(grand)]}, () => withChicks(true)],
      [{kind: 'linked', looks: nearby}, () => (nearby.length === 0 ? null : supposed(trait => flock.traits[trait]?.look.loci.includes(place) ?? false))],
      ...(by ? [] : [[{kind: 'look', looks: []}, () => supposed(() => false)] as const]),
    ]
    const whole = Math.abs(shown - from)
    let best: Pull = {kind: 'kin'}, most = whole / 4
    for (const [pull, work] of tried) {
      const far = (work() ?? 0) * Math.sign(shown - from)
      if (far > most) [best, most] = [pull, far]
      if (most >= whole / 2) break
    }
    return best
  }

  function isLinked(one: Locus, other: Locus): boolean {
    const {loci, linkages} = heredity.groupOf(one), a = loci.indexOf(one), b = loci.indexOf(other)
    return (one.on === 'Z' && other.on === 'Z') || linkages.some(({loci: [x, y]}) => (x === a && y === b) || (x === b && y === a))
  }
}

/** A bird told of with some of its looks only, and the test it has; null where that takes nothing away. */
function lookedAt({flock}: WorkedGroup, animal: number, keeps: (trait: number) => boolean): ReadonlyMap<number, Told> | null {
  const readings = flock.readings(animal), kept = readings.filter(({trait}) => keeps(trait))
  return kept.length < readings.length ? new Map([[animal, {readings: kept, tested: flock.tested(animal)}]]) : null
}

const isSure = (bird: Bird, {parentage: {pairs}}: Chick): boolean => pairs.every(({sire, dam}) => sire === bird || dam === bird)
