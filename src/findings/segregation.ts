import {fitOfCounts, type FitOfCounts} from '../statistics/fit-of-counts.ts'
import {heterogeneityOf, type ChiSquare} from '../statistics/heterogeneity.ts'
import {holm} from '../statistics/holm.ts'
import {recessivesFit, type RecessivesFit} from '../statistics/recessives-fit.ts'
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
  /** where the mating is known to segregate by its recessives alone: the place of their state, and the test given that one was scored so */
  readonly conditional: {readonly state: number; readonly fit: RecessivesFit} | null
  /** where it is known that some of the germs should die: their share of the fertile eggs, beside what the hatches of the pen say */
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
  /** how many of them are known by their recessives alone */
  readonly byRecessives: number
  /** of all of them together */
  readonly p: number
  /** `summed`: where some are known by their recessives alone, of the sum of recessives of all, given one in each of those; exact */
  readonly how: FitOfCounts['how'] | 'summed'
  /** whether they agree with each other; null where that cannot be told */
  readonly heterogeneity: ChiSquare | null
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
  return {matings: questioned, crosses: [...grouped(questioned, crossKey).values()].flatMap(byState).map(together), untested, tests: counted.length + passed}
}

/** Where every chick must look alike and does, nothing was tested; nor of one chick that had to be the recessive by which its mating is known. */
const isTest = ({how, ratio, conditional}: MatingTest): boolean => how === 'impossible' || (ratio.filter(share => share > 0).length > 1 && conditional?.fit.chicks !== 1)

const crossKey = ({trait, sex, cross}: MatingTest): string => `${trait.id}\n${sex}\n${cross}`

function testOf(mating: MatingApart): MatingTest {
  const {trait, sex, pen, sires, dams, chicks, counts, ratio, knownBy, written} = mating
  const shape = {trait, sex, pen, sires, dams, chicks, counts, cross: written, adjusted: 1, lethal: lethalOf(mating), questions: null}
  const forbidden = counts.some((count, state) => count > 0 && (ratio.scored[state] ?? 0) === 0)
  if (knownBy === null || forbidden) {
    const {how, rough, p, expected} = fitOfCounts(counts, ratio.scored)
    return {...shape, ratio: ratio.scored, expected, p, how, rough, conditional: null}
  }
  const total = counts.reduce((sum, count) => sum + count, 0), share = ratio.scored[knownBy] ?? 0
  const fit = recessivesFit([{chicks: total, recessives: counts[knownBy] ?? 0, noticed: true}], share)
  return {
    ...shape, ratio: ratio.scored, p: fit.p, how: 'given one recessive', rough: false, conditional: {state: knownBy, fit},
    expected: ratio.scored.map((each, state) => (state === knownBy ? fit.expected : (total - fit.expected) * each / (1 - share))),
  }
}

/** Of the hatches all of whose chicks come of this mating, and of which eggs, clear ones and dead germs are known. */
function lethalOf({ratio, sires, dams, chicks}: MatingApart): MatingTest['lethal'] {
  if (ratio.lethal === null || ratio.lethal <= 0) return null
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

/** Matings known by recessives of two sorts, as two carriers of three looks may be, cannot be put into one sum. */
function byState(matings: readonly MatingTest[]): readonly (readonly MatingTest[])[] {
  const states = [...new Set(matings.flatMap(({conditional}) => conditional?.state ?? []))]
  return states.length < 2 ? [matings] : states.map((state, place) => matings.filter(({conditional}) => (conditional ? conditional.state === state : place === 0)))
}

function together(matings: readonly MatingTest[]): CrossTest {
  const [first] = matings
  if (!first) throw new RangeError('a cross is of 1 mating or more')
  const {trait, sex, cross} = first
  const [noticed] = matings.flatMap(({conditional}) => conditional ?? [])
  const shape = {trait, sex, cross, matings, byRecessives: matings.filter(({conditional}) => conditional !== null).length}
  if (!noticed || matings.some(({how}) => how === 'impossible')) {
    const {pooled, heterogeneity} = heterogeneityOf(matings.map(({counts}) => counts), first.ratio)
    return {...shape, p: pooled.p, how: pooled.how, heterogeneity: heterogeneity && heterogeneity.freedom > 0 ? heterogeneity : null}
  }
  const {p, heterogeneity} = recessivesFit(matings.map(({counts, conditional}) => ({
    chicks: counts.reduce((sum, count) => sum + count, 0), recessives: counts[noticed.state] ?? 0, noticed: conditional !== null,
  })), first.ratio[noticed.state] ?? 0)
  return {...shape, p, how: 'summed', heterogeneity}
}
