import {fitOfCounts, type FitOfCounts} from '../statistics/fit-of-counts.ts'
import {heterogeneityOf, type Heterogeneity} from '../statistics/heterogeneity.ts'
import {holm} from '../statistics/holm.ts'
import {truncatedFit, type TruncatedFit} from '../statistics/truncated-fit.ts'
import type {Bird, Logbook, Pen, Trait} from '../logbook/book.ts'
import type {Heredity} from './heredity.ts'
import type {Chick} from './ladder-chicks.ts'
import {grouped} from './grouped.ts'
import type {KnownApart} from './known-apart.ts'
import {matingsApart, type MatingApart, type Untested} from './matings-apart.ts'
import type {PedigreeOfBook} from './pedigree-of-book.ts'
import {questionsOf, type Questions} from './segregation-questions.ts'

/** After correction for the number of tests, a P below this raises questions. */
export const QUESTIONED_BELOW = 0.05

/** One mating, one trait: what came beside what should have. */
export interface MatingTest {
  readonly trait: Trait
  /** where the sexes differ, the one that is counted; null: both together */
  readonly sex: 'male' | 'female' | null
  readonly pen: Pen | null
  /** one; several where which of them it was makes no odds, all being of one genotype */
  readonly sires: readonly Bird[]
  readonly dams: readonly Bird[]
  /** `P/p+ × p+/p+` */
  readonly cross: string
  /** of each state of the trait, in its order */
  readonly counts: readonly number[]
  /** of 1, misscoring as the records state it taken in */
  readonly ratio: readonly number[]
  readonly expected: readonly number[]
  readonly p: number
  /** P with the number of tests taken in; 1 where all must look alike and do, which is no test */
  readonly adjusted: number
  readonly how: FitOfCounts['how'] | 'given one recessive'
  /** Pearson stands in with small expectations */
  readonly rough: boolean
  /** where the mating is known to segregate by its recessives alone: the place of their state, and the test given that one hatched */
  readonly conditional: {readonly state: number; readonly fit: TruncatedFit} | null
  /** where some of the germs should die: their share of the fertile eggs, beside what the hatches of the pen say */
  readonly lethal: {readonly share: number; readonly fertile: number; readonly deadInGerm: number; readonly hatches: number} | null
  readonly chicks: readonly Chick[]
  /** null: it agrees */
  readonly questions: Questions | null
}

/** All matings of one cross and trait together. */
export interface CrossTest {
  readonly trait: Trait
  readonly sex: MatingTest['sex']
  readonly cross: string
  readonly matings: readonly MatingTest[]
  /** of those known without their chicks; null where there is none */
  readonly fit: Heterogeneity | null
  /** of those known by their recessives alone; null where there is none */
  readonly conditional: TruncatedFit | null
}

export interface Segregation {
  /** in the order of the traits, then of the pens */
  readonly matings: readonly MatingTest[]
  readonly crosses: readonly CrossTest[]
  readonly untested: readonly Untested[]
  /** how many tests the correction takes in, those in which all were alike as they must be among them */
  readonly tests: number
}

/**
 * Do the chicks of each mating agree with what their parents should give? The parents' genotypes are taken from evidence other than the chicks.
 *
 * @see Holm 1979, Scand. J. Stat. 6:65–70; the order of the three questions is common practice, no source
 */
export function segregation(book: Logbook, pedigree: PedigreeOfBook, heredity: Heredity, knownApart: KnownApart): Segregation {
  const {matings, untested, passed} = matingsApart(pedigree, heredity, knownApart)
  const plain = matings.map(testOf)
  const counted = plain.filter(isTest), adjusted = holm([...counted.map(({p}) => p), ...Array.from({length: passed}, () => 1)])
  const tests = plain.map((test): MatingTest => ({...test, adjusted: adjusted[counted.indexOf(test)] ?? 1}))
  const questioned = tests.map((test, index): MatingTest => {
    const mating = matings[index]
    if (!mating || test.adjusted >= QUESTIONED_BELOW) return test
    return {...test, questions: questionsOf(book, pedigree, heredity, mating, tests.filter(other => other !== test && crossKey(other) === crossKey(test)).map(({p}) => p))}
  })
  return {matings: questioned, crosses: [...grouped(questioned, crossKey).values()].map(together), untested, tests: counted.length + passed}
}

/** Where every chick must look alike and does, nothing was tested. */
const isTest = ({how, ratio}: MatingTest): boolean => how === 'impossible' || ratio.filter(share => share > 0).length > 1

const crossKey = ({trait, sex, cross}: MatingTest): string => `${trait.id}\n${sex}\n${cross}`

function testOf(mating: MatingApart): MatingTest {
  const {trait, sex, pen, sires, dams, chicks, counts, ratio, knownBy, written} = mating
  const shape = {trait, sex, pen, sires, dams, chicks, counts, cross: written, adjusted: 1, lethal: lethalOf(mating), questions: null}
  if (knownBy === null) {
    const {how, rough, p, expected} = fitOfCounts(counts, ratio.scored)
    return {...shape, ratio: ratio.scored, expected, p, how, rough, conditional: null}
  }
  const total = counts.reduce((sum, count) => sum + count, 0)
  const fit = truncatedFit([{chicks: total, recessives: counts[knownBy] ?? 0}], ratio.looks[knownBy] ?? 0)
  const others = total - fit.expected, rest = 1 - (ratio.looks[knownBy] ?? 0)
  return {
    ...shape, ratio: ratio.looks, p: fit.p, how: 'given one recessive', rough: false, conditional: {state: knownBy, fit},
    expected: ratio.looks.map((share, state) => (state === knownBy ? fit.expected : others * share / rest)),
  }
}

/** Of the hatches all of whose chicks come of this mating, and of which eggs, clear ones and dead germs are known. */
function lethalOf({ratio, sires, dams, chicks}: MatingApart): MatingTest['lethal'] {
  if (ratio.lethal <= 0) return null
  const hatches = [...new Set(chicks.map(({hatch}) => hatch))].filter(hatch => hatch !== null)
    .filter(({parentage: {pairs}}) => pairs.length > 0 && pairs.every(({sire, dam}) => sire !== null && dam !== null && sires.includes(sire) && dams.includes(dam)))
  let fertile = 0, deadInGerm = 0, known = 0
  for (const {eggs, clear, deadInGerm: dead} of hatches) {
    if (eggs === null || clear === null || dead === null) continue
    known += 1
    fertile += eggs - clear
    deadInGerm += dead
  }
  return {share: ratio.lethal, fertile, deadInGerm, hatches: known}
}

function together(matings: readonly MatingTest[]): CrossTest {
  const [first] = matings
  if (!first) throw new RangeError('a cross is of 1 mating or more')
  const {trait, sex, cross} = first
  const known = matings.filter(({conditional}) => conditional === null), byRecessives = matings.flatMap(({conditional}) => (conditional ? [conditional] : []))
  const [one] = byRecessives
  const share = one ? matings.find(({conditional}) => conditional === one)?.ratio[one.state] ?? 0 : 0
  return {
    trait, sex, cross, matings,
    fit: known.length > 0 ? heterogeneityOf(known.map(({counts}) => counts), known[0]?.ratio ?? []) : null,
    conditional: one ? truncatedFit(byRecessives.map(({fit: {chicks, recessives}}) => ({chicks, recessives})), share) : null,
  }
}
