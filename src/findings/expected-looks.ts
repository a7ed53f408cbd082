import type {Alleles} from '../heredity/locus.ts'
import type {Probable} from '../heredity/genotype-probabilities.ts'
import type {Bird, Pen, Trait} from '../logbook/book.ts'
import {countedValue} from './counted-value.ts'
import {crossLoci} from './cross-loci.ts'
import {crossRatio} from './cross-ratio.ts'
import type {Heredity} from './heredity.ts'
import type {KnownApart, KnownOfBirds} from './known-apart.ts'
import type {Chick} from './ladder-chicks.ts'
import type {LocusGroup} from './locus-groups.ts'
import type {PedigreeOfBook} from './pedigree-of-book.ts'
import type {SexRow} from './shares.ts'

/** What some scored chicks should have looked like, beside what they did. */
export interface ExpectedLooks {
  readonly trait: Trait
  readonly sex: SexRow
  /** scored chicks of which it can be said, both parents being in the book: of these the rest is said */
  readonly chicks: number
  /** every state of the trait in its own order; what is seen adds up to `chicks`, and what is expected where rules say every look */
  readonly states: readonly {readonly state: string; readonly seen: number; readonly expected: number}[]
}

export interface ExpectedOfAll {
  readonly steps: readonly (ExpectedLooks & {readonly step: string})[]
  readonly pens: readonly (ExpectedLooks & {readonly pen: Pen})[]
}

interface Sum {
  readonly trait: Trait
  readonly sex: SexRow
  chicks: number
  readonly seen: number[]
  readonly expected: number[]
}

/** A genotype of a parent less likely than this is left out, and the rest made whole. */
const NEGLIGIBLE = 1e-4
/** As are those of a pair whose ratio cannot be told, up to this share. */
const UNTOLD = 0.01

/**
 * Which looks were to be expected of the chicks of each step, and of each pen?
 *
 *     expected(state) = Σ over scored chicks, Σ over genotypes of the parents  P(sire's) · P(dam's) · P(chick scored as state | both)
 *
 * Parents' genotypes are taken from all that is known but the looks of the brood itself, each parent's by itself; over the pairs that may have had the chick, each by
 * its chance in the records. Misscoring as the records state it is in, so that the sums may be held against scores. Left out: birds of pure strains, chicks with
 * a parent outside the book, and those for which the ratio rests on how linked loci lie, but for a share of one in a hundred.
 *
 * @see `knownApart`, `crossRatio`
 */
export function expectedLooks(heredity: Heredity, pedigree: PedigreeOfBook, knownApart: KnownApart): ExpectedOfAll {
  const steps = new Map<string, Sums>(), pens = new Map<Pen, Sums>()
  for (const group of heredity.groups) {
    const {broods, of} = knownApart(group)
    for (const {brood: {pen, chicks}, apart} of broods.map(of)) {
      for (const trait of group.traits) {
        const ofPair = pairs(trait, group, apart, pedigree)
        for (const chick of chicks) {
          const seen = trait.states.indexOf(String(countedValue(chick, trait)))
          const expected = seen < 0 || chick.step.kind === 'strain' ? null : expectedOf(chick, ofPair)
          if (!expected) continue
          const sums = [sumsOf(steps, chick.step.label), ...(pen ? [sumsOf(pens, pen)] : [])]
          for (const sex of [chick.sex, 'all'] as const) for (const each of sums) add(sumOf(each, trait, sex), chick.count, seen, expected)
        }
      }
    }
  }
  return {
    steps: [...steps].flatMap(([step, sums]) => [...sums.values()].map(sum => ({step, ...lookRow(sum)}))),
    pens: [...pens].flatMap(([pen, sums]) => [...sums.values()].map(sum => ({pen, ...lookRow(sum)}))),
  }
}

/** by trait and sex */
type Sums = Map<string, Sum>

function sumsOf<Of>(all: Map<Of, Sums>, of: Of): Sums {
  const found = all.get(of) ?? new Map<string, Sum>()
  all.set(of, found)
  return found
}

const lookRow = ({trait, sex, chicks, seen, expected}: Sum): ExpectedLooks =>
  ({trait, sex, chicks, states: trait.states.map((state, place) => ({state, seen: seen[place] ?? 0, expected: expected[place] ?? 0}))})

function add(sum: Sum, count: number, seen: number, expected: readonly number[]): void {
  sum.chicks += count
  sum.seen[seen] = (sum.seen[seen] ?? 0) + count
  expected.forEach((share, state) => { sum.expected[state] = (sum.expected[state] ?? 0) + share * count })
}

function sumOf(sums: Sums, trait: Trait, sex: SexRow): Sum {
  const key = `${trait.id}\n${sex}`
  const found = sums.get(key) ?? {trait, sex, chicks: 0, seen: trait.states.map(() => 0), expected: trait.states.map(() => 0)}
  sums.set(key, found)
  return found
}

type OfPair = (sire: Bird, dam: Bird, sex: 'male' | 'female') => readonly number[] | null

/** Chance of each state; null where a parent is outside the book or the pair's ratio cannot be told. */
function expectedOf({parentage, sex}: Chick, ofPair: OfPair): readonly number[] | null {
  const parts: {share: number; looks: readonly number[]}[] = []
  for (const {sire, dam, chance} of parentage.pairs) {
    for (const each of sex === 'unknown' ? (['male', 'female'] as const) : [sex]) {
      const looks = sire && dam && ofPair(sire, dam, each)
      if (!looks) return null
      parts.push({share: sex === 'unknown' ? chance / 2 : chance, looks})
    }
  }
  const [first] = parts
  return first ? first.looks.map((_, state) => parts.reduce((sum, {share, looks}) => sum + share * (looks[state] ?? 0), 0)) : null
}

/** Of each pair of birds what their chicks are scored as; each pair is worked once. */
function pairs(trait: Trait, group: LocusGroup, apart: KnownOfBirds, pedigree: PedigreeOfBook): OfPair {
  const parents = new Map<Bird, readonly Probable<readonly Alleles[]>[]>(), known = new Map<string, readonly number[] | null>()
  const genotypes = (bird: Bird) => {
    const found = parents.get(bird) ?? genotypesOf(trait, group, apart, pedigree.numberOf(bird))
    parents.set(bird, found)
    return found
  }
  return (sire, dam, sex) => {
    const key = `${sire.id}\n${dam.id}\n${sex}`, before = known.get(key)
    if (before !== undefined) return before
    const looks = trait.states.map(() => 0)
    let whole = 0, untold = 0
    for (const one of genotypes(sire)) {
      for (const other of genotypes(dam)) {
        const chance = one.probability * other.probability
        if (chance < NEGLIGIBLE) continue
        const ratio = crossRatio(trait, group, {sire: one.is, dam: other.is}, sex)
        ratio?.scored.forEach((share, state) => { looks[state] = (looks[state] ?? 0) + chance * share })
        if (ratio) whole += chance
        else untold += chance
      }
    }
    const found = whole > 0 && untold <= UNTOLD * (whole + untold) ? looks.map(sum => sum / whole) : null
    known.set(key, found)
    return found
  }
}

/** At the loci told of its crosses, each locus by itself. */
function genotypesOf(trait: Trait, group: LocusGroup, {found}: KnownOfBirds, animal: number): readonly Probable<readonly Alleles[]>[] {
  const {loci, told} = crossLoci(trait, group)
  return loci.slice(0, told).reduce<readonly Probable<readonly Alleles[]>[]>((all, locus) => {
    const here = found.at(animal, group.loci.indexOf(locus)).filter(({probability}) => probability >= NEGLIGIBLE)
    return all.flatMap(({is, probability}) => here.map(each => ({is: [...is, each.is], probability: probability * each.probability})))
  }, [{is: [], probability: 1}])
}
