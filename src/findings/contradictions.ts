import {matches, writePattern} from '../heredity/genotype-notation.ts'
import type {Bird, Locus, Logbook, Trait} from '../logbook/book.ts'
import {contradictedStrains, type ContradictedStrain} from '../logbook/contradicted-strains.ts'
import {contradictedTests, type ContradictedTest} from '../logbook/contradicted-tests.ts'
import {contraryScorings, type ContraryScorings} from '../logbook/contrary-scorings.ts'
import type {Chick} from './ladder-chicks.ts'
import type {LocusGroup} from './locus-groups.ts'
import {scoreDoubts, type ScoreDoubt} from './score-doubt.ts'
import type {Findings} from './study.ts'
import {comesOf, suspectedStrains} from './suspected-strains.ts'

/** What single records of a book say against each other; each is a warning of its own. */
export interface PlainContradictions {
  readonly scorings: readonly ContraryScorings[]
  readonly tests: readonly ContradictedTest[]
  readonly strains: readonly ContradictedStrain[]
  /**
   * Is the look of this chick bound up with one of them? Its own scorings or test, a parent's test, or a strain that it comes of. What heredity then
   * finds odd about it is likely the same slip, and is not to be said twice.
   */
  covers(chick: Chick, trait: Trait): boolean
}

export function plainContradictions(book: Logbook): PlainContradictions {
  const scorings = contraryScorings(book), tests = contradictedTests(book), strains = contradictedStrains(book)
  const testedAt = (bird: Chick | null, {loci}: Trait): boolean => tests.some(test => test.bird === bird && loci.includes(test.locus))
  return {
    scorings, tests, strains,
    covers: (chick, trait) =>
      scorings.some(each => each.bird === chick && each.trait === trait) ||
      testedAt(chick, trait) || chick.parentage.pairs.some(({sire, dam}) => testedAt(sire, trait) || testedAt(dam, trait)) ||
      strains.some(each => sharesLocus(each.trait, trait) && (chick.shares.get(each.strain) ?? 0) > 0),
  }
}

const sharesLocus = (one: Trait, other: Trait): boolean => one === other || one.loci.some(locus => other.loci.includes(locus))

/** A test that the whole of the flock makes likelier wrong than right, though no single record contradicts it. */
export interface UnlikelyTest {
  readonly bird: Bird
  readonly locus: Locus
  /** `P/p+` */
  readonly written: string
  /** chance that the bird is as it was tested, where one test in a thousand may be wrong */
  readonly chance: number
}

/**
 * Empty where the records do not contradict each other: then every test holds.
 *
 * @param below tests that are right with a smaller chance; by default those that are likelier wrong
 */
export function unlikelyTests({book, heredity, pedigree}: Pick<Findings, 'book' | 'heredity' | 'pedigree'>, {loci}: LocusGroup, below = 0.5): readonly UnlikelyTest[] {
  const tested = book.birds.filter(bird => loci.some(locus => bird.tested.has(locus))), [first] = loci
  if (!first || tested.length === 0) return []
  const {found} = heredity.worked(heredity.groupOf(first))
  if (found.slack === 0) return []
  const plain = plainContradictions(book).tests
  return tested.flatMap(bird => loci.flatMap((locus, place): readonly UnlikelyTest[] => {
    const pattern = bird.tested.get(locus)
    // of a test and what it contradicts, such as a parent's, one warning tells
    if (!pattern || plain.some(test => test.locus === locus && (test.bird === bird || test.against.some(each => each.kind === 'parent' && each.parent === bird)))) return []
    const chance = found.at(pedigree.numberOf(bird), place).reduce((sum, {is, probability}) => (matches(pattern, is) ? sum + probability : sum), 0)
    return chance < below ? [{bird, locus, written: writePattern(pattern, locus), chance}] : []
  }))
}

/** So many of the looks that are likeliest to be wrong are named, none below this chance. */
const NAMED = 3
export const NAMED_FROM = 0.02

/** Of a group that contradicts itself the looks that are likeliest to be wrong, the likeliest first. */
export function likeliestWrong({book, heredity, pedigree}: Pick<Findings, 'book' | 'heredity' | 'pedigree'>, group: LocusGroup): readonly ScoreDoubt[] {
  const worked = heredity.worked(group)
  if (worked.found.slack === 0) return []
  const numberOf = (chick: Chick): number | null => (chick.kind === 'bird' ? pedigree.numberOf(chick) : worked.tallies.get(chick)?.[0] ?? null)
  const doubts = scoreDoubts(book, group, worked, numberOf).filter(({wrong}) => wrong >= NAMED_FROM).toSorted((a, b) => rounded(b) - rounded(a))
  // a score that its trait allows to be wrong contradicts nothing by itself
  const never = doubts.filter(({trait, score}) => isNeverWrong(trait, String(score.value)))
  return (never.length > 0 ? never : doubts).slice(0, NAMED)
}

/** Those as likely wrong as each other stay in the book's order, whatever the last digit. */
const rounded = ({wrong}: ScoreDoubt): number => Math.round(wrong * 1e9)

const isNeverWrong = ({misscoring}: Trait, scored: string): boolean => [...misscoring].every(([state, row]) => state === scored || (row.get(scored) ?? 0) === 0)

/** Do records contradict each other plainly at one of these loci? Then that is what makes the group contradict itself. */
export const plainlyAt = ({strains, tests, scorings}: PlainContradictions, {loci, traits}: LocusGroup): boolean =>
  strains.some(({trait}) => trait.loci.some(locus => loci.includes(locus))) || tests.some(({locus}) => loci.includes(locus)) || scorings.some(({trait}) => traits.includes(trait))

/**
 * Which records make a group of loci contradict itself, in words: `22-01, scored walnut and rose in Comb`. Empty where nothing contradicts. Where no
 * record is likelier wrong than right, those that are likeliest to be wrong.
 */
export function contradictionsAt(findings: Pick<Findings, 'book' | 'heredity' | 'pedigree' | 'impossibleFamilies'>, group: LocusGroup): readonly string[] {
  const {book, heredity} = findings
  if (heredity.worked(group).found.slack === 0) return []
  const plain = plainContradictions(book), suspected = suspectedStrains(findings, 0.5, [group])
  const looks = findings.impossibleFamilies.flatMap(({chick, doubts}) => doubts.filter(({trait, wrong, impossible}) => wrong >= 0.5 && impossible && group.traits.includes(trait) && !plain.covers(chick, trait) && !suspected.some(each => comesOf(each, chick, trait))).map(lookWords))
  const found = [
    ...plain.strains.filter(({trait}) => trait.loci.some(locus => group.loci.includes(locus))).map(({strain, trait, state}) => `the strain ${strain.id}, true for ${trait.name} ${state}`),
    ...suspected.map(({strain, trait, state, orElse}) => `the strain ${[strain, ...orElse].map(({id}) => id).join(' or ')}, true for ${trait.name} ${state}`),
    ...plain.tests.filter(({locus}) => group.loci.includes(locus)).map(({bird, locus, pattern}) => `${bird.band}, tested ${locus.symbol} ${writePattern(pattern, locus)}`),
    ...plain.scorings.filter(({trait}) => group.traits.includes(trait)).map(({bird, trait, scores}) => `${bird.band}, scored ${[...new Set(scores.map(({value}) => String(value)))].join(' and ')} in ${trait.name}`),
    ...unlikelyTests(findings, group).map(({bird, locus, written}) => `${bird.band}, tested ${locus.symbol} ${written}`), ...looks,
  ]
  return found.length > 0 ? found : [
    ...likeliestWrong(findings, group).map(doubt => `${lookWords(doubt)} (wrong with ${Math.round(doubt.wrong * 100)}%)`),
    ...unlikelyTests(findings, group, 1 - NAMED_FROM).map(({bird, locus, written, chance}) => `${bird.band}, tested ${locus.symbol} ${written} (wrong with ${Math.round((1 - chance) * 100)}%)`),
  ]
}

/** `x, scored pea in Comb` */
export const lookWords = ({chick, score, trait}: Pick<ScoreDoubt, 'chick' | 'score' | 'trait'>): string => `${chickWords(chick)}, scored ${String(score.value)} in ${trait.name}`

/** `24-901`, `a chick of hatch 2024-03` */
export const chickWords = (chick: Chick): string => (chick.kind === 'bird' ? chick.band : `${chick.count === 1 ? 'a chick' : `${chick.count} chicks`} of hatch ${chick.hatch?.id ?? ''}`)
