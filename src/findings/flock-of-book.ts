import type {Flock, HeritableTrait, Reading} from '../heredity/flock.ts'
import {alleleShares} from '../logbook/allele-shares.ts'
import type {Locus, Logbook, Parentage, Strain, Tally, Trait} from '../logbook/book.ts'
import {lookRulesOf} from '../logbook/look-rules-of.ts'
import type {Animal} from '../pedigree/pedigree.ts'
import type {Chick} from './ladder-chicks.ts'
import type {LocusGroup} from './locus-groups.ts'
import type {PedigreeOfBook} from './pedigree-of-book.ts'

/** What is asked beyond the book as it stands. */
export interface Otherwise {
  /** chicks that might be: numbered on after the book's own animals */
  readonly more?: readonly Animal[]
  /** in place of what the book has of an animal's parents */
  readonly instead?: ReadonlyMap<number, Animal>
  /** what a test would have said */
  readonly tested?: Flock['tested']
  /** a strain that may have other alleles at these loci than its record lets it have: half as that has it, half all alike */
  readonly loosened?: {readonly strain: Strain; readonly loci: readonly Locus[]}
  /** share of scores that may be wrong in ways no record states, 0 to 1; 0 where it is not said */
  readonly doubt?: number
}

export interface FlockOfBook {
  readonly flock: Flock
  /** the chicks of tallies that tell anything, each an animal of its own after the birds: where a tally's stand */
  readonly tallies: ReadonlyMap<Tally, readonly number[]>
  /** number of the first of `Otherwise.more` */
  readonly firstMore: number
}

/**
 * The book as heredity sees it, at one group of loci. Every unstruck score within its window is a reading of its own; chicks of tallies on which something was
 * seen stand after the birds, one animal each. A strain's alleles are as stated, as its true-breeding looks fix them, or all alike where nothing is known.
 */
export function flockOfBook(book: Logbook, {pedigree, baseOf, numberOf}: PedigreeOfBook, {loci, linkages, traits}: LocusGroup, otherwise: Otherwise = {}): FlockOfBook {
  const ofBase = new Map(book.strains.map(strain => [baseOf(strain), strain] as const))
  const strainOf = (base: number | null): Strain | null => {
    for (let at = base; at !== null; at = pedigree.bases[at]?.within ?? null) {
      const strain = ofBase.get(at)
      if (strain) return strain
    }
    return null
  }
  const sharesOf = (strain: Strain, locus: Locus): readonly number[] => {
    const {shares} = alleleShares(strain, locus), {loosened} = otherwise
    return loosened?.strain === strain && loosened.loci.includes(locus) ? shares.map(share => share / 2 + 0.5 / shares.length) : shares
  }
  const alike = loci.map(({alleles}) => alleles.map(() => 1 / alleles.length))
  const shares = new Map<Strain | null, readonly (readonly number[])[]>([[null, alike], ...book.strains.map(strain => [strain, loci.map(locus => sharesOf(strain, locus))] as const)])
  const heritable = traits.flatMap((trait): {trait: Trait; is: HeritableTrait}[] => {
    const look = lookRulesOf(trait, loci)
    return look ? [{trait, is: {look, misscoring: misscoringRows(trait, otherwise.doubt)}}] : []
  })

  const animals: Animal[] = [...pedigree.animals], chicks: (Chick | null)[] = [...book.birds, ...pedigree.animals.slice(book.birds.length).map(() => null)]
  const tallies = new Map<Tally, readonly number[]>()
  for (const tally of book.hatches.flatMap(hatch => hatch.tallies)) {
    if (tally.parentage.pairs.length === 0 || !heritable.some(({trait}) => statesScored(tally, trait).length > 0)) continue
    const animal = {sex: tally.sex, base: null, ...descentOf(tally.parentage)}
    tallies.set(tally, Array.from({length: tally.count}, () => {
      chicks.push(tally)
      return animals.push(animal) - 1
    }))
  }
  const firstMore = animals.length, known: (readonly Reading[])[] = []
  const all = [...animals.map((animal, number) => otherwise.instead?.get(number) ?? animal), ...otherwise.more ?? []]

  return {
    tallies, firstMore,
    flock: {
      pedigree: {...pedigree, animals: all}, loci, linkages, traits: heritable.map(({is}) => is),
      shares: base => shares.get(strainOf(base)) ?? alike,
      readings: animal => known[animal] ??= readingsOf(chicks[animal] ?? null),
      tested(animal) {
        const chick = chicks[animal], asked = otherwise.tested?.(animal)
        if (asked || chick?.kind !== 'bird') return asked ?? null
        return chick.tested.size === 0 ? null : loci.map(locus => chick.tested.get(locus) ?? null)
      },
    },
  }

  function readingsOf(chick: Chick | null): readonly Reading[] {
    return chick === null ? [] : heritable.flatMap(({trait}, number): Reading[] => {
      const scored = statesScored(chick, trait)
      return scored.length === 0 ? [] : [{trait: number, scored}]
    })
  }

  function descentOf({pairs, outside}: Parentage): Pick<Animal, 'matings' | 'outside'> {
    return {
      matings: pairs.map(({sire, dam, chance}) => ({sire: sire && numberOf(sire), dam: dam && numberOf(dam), chance})),
      outside: {sire: outside?.sire ? baseOf(outside.sire) : null, dam: outside?.dam ? baseOf(outside.dam) : null},
    }
  }
}

/** The scorings of a trait that are neither struck nor outside their window, as numbers of its states. */
export function statesScored(chick: Chick, trait: Trait): readonly number[] {
  return (chick.looks.get(trait)?.scores ?? []).filter(({struck, outside}) => struck === null && !outside).map(({value}) => trait.states.indexOf(String(value))).filter(state => state >= 0)
}

/**
 * By true state, the chance of each state to be scored: what the record does not name is scored right.
 *
 * @param doubt share of scores that are any state alike, whatever the record says
 */
export function misscoringRows({states, misscoring}: Pick<Trait, 'states' | 'misscoring'>, doubt = 0): readonly Float64Array[] {
  return states.map(state => {
    const stated = misscoring.get(state), row = Float64Array.from(states, other => (other === state ? 0 : stated?.get(other) ?? 0))
    row[states.indexOf(state)] = Math.max(0, 1 - row.reduce((sum, chance) => sum + chance, 0))
    return doubt === 0 ? row : row.map(chance => (1 - doubt) * chance + doubt / states.length)
  })
}
