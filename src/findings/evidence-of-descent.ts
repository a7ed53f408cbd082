/** Evidence of what the breeders carry unseen. */
import type {Bird, Requirement, Trait} from '../logbook/book.ts'
import {breedersAsked} from './breeders-asked.ts'
import {looksAsked} from './clauses-asked.ts'
import {countedValue} from './counted-value.ts'
import {judged, type Finding} from './evidence-found.ts'
import type {Sources} from './evidence-shown.ts'
import {FIXED_AT, fixationOf, type Fixation} from './fixation.ts'
import {inSeason, nextSeason, onDay} from './next-season.ts'
import {sexShows} from './scoring-age.ts'
import type {FixedAtLocus, ShownFixed} from './shown-of-breeding.ts'
import {requiredTraits} from './verdict.ts'
import type {Way} from './ways.ts'

/** From this chance on a bird counts as a carrier; and that none carries it as certain, whatever share is asked: while looks can be misread no chance is ever whole. */
const SURE = 0.999
const SLACK = 1e-12
/** Birds to test that are named at a locus. */
const MOST_TESTED = 5

/**
 * Are the breeders taken as pure for the trait named, for those of the clauses named, or for every required one? At each locus the chance that not one living breeder of the breed carries an
 * unwanted allele, all together, must reach the share asked, or 95 in 100 where none is.
 *
 * Not yet: below it at one locus, or a bird carries the allele for certain. It cannot be told where no rule says which genes a look comes of, where no breeder
 * was ever scored or tested for it, and, though the chance be high, while one that could show it was not: descent alone proves nothing to an association.
 */
export function fixed(asked: Requirement, from: Sources): Finding {
  const byClause = asked.clauses.length > 0 ? looksAsked(asked, from.book) : null, untoldClauses = byClause?.untold ?? []
  const named = byClause ? [...new Set(byClause.looks.map(({scored}) => scored))] : asked.trait ? [asked.trait] : null, traits = named ?? requiredTraits(from.book)
  const {birds, untold, behind, all} = breedersAsked(asked, from), mark = asked.atLeast ?? FIXED_AT, loci = lociOf(named, birds, all, from)
  const without = traits.filter(trait => !loci.some(({fixation}) => fixation.trait === trait)), [only, ...more] = named ?? []
  const shown: ShownFixed = {kind: 'fixed', trait: only && more.length === 0 ? only : null, asked: mark, birds: birds.length, loci, without, untoldClauses, untold}
  const failing = loci.filter(each => isFailing(each, mark)), open = without.length + untoldClauses.length + untold.length > 0 || loci.some(({scored, unscored}) => scored === 0 || unscored.length > 0)
  const state = traits.length === 0 || birds.length === 0 ? null : failing.length > 0 ? false : open ? null : true
  return judged(state, shown, {behind, ways: birds.length === 0 ? [{kind: 'keep-breeders', earliest: null}] : waysOf(shown, failing, from)})
}

function isFailing({fixation, scored}: FixedAtLocus, mark: number): boolean {
  return fixation.inTheWay.some(({carries}) => carries > SURE) || (scored > 0 && fixation.clean < Math.min(mark, SURE) - SLACK)
}

/** Traits that are not required, and birds that are not all the breeders, are worked for the asking. */
function lociOf(traits: readonly Trait[] | null, birds: readonly Bird[], all: boolean, {fixation, livingCarriers, heredity, pedigree}: Sources): readonly FixedAtLocus[] {
  const asked = traits === null ? fixation : livingCarriers.filter(each => traits.includes(each.trait))
  const found = asked.map(({trait, locus, unwanted}) => (all ? fixation.find(each => each.trait === trait && each.locus === locus) : undefined) ?? fixationOf({trait, locus, unwanted}, birds, heredity, pedigree))
  return found.map(each => {
    const isScored = (bird: Bird): boolean => countedValue(bird, each.trait) !== null || bird.tested.has(each.locus)
    return {fixation: each, scored: birds.filter(isScored).length, unscored: birds.filter(bird => !isScored(bird) && sexShows(each.trait, bird))}
  })
}

function waysOf({loci, without, untoldClauses, asked}: ShownFixed, failing: readonly FixedAtLocus[], from: Sources): readonly Way[] {
  return [
    ...(untoldClauses.length > 0 ? [{kind: 'hold-clauses', clauses: untoldClauses, earliest: null} as const] : []),
    ...(without.length > 0 || (loci.length === 0 && untoldClauses.length === 0) ? [{kind: 'say-genes', traits: without, earliest: null} as const] : []),
    ...failing.flatMap(({fixation}) => clearing(fixation, Math.min(asked, SURE) - SLACK, from)),
    ...loci.filter(({unscored}) => unscored.length > 0).map(({fixation: {trait, locus}, unscored}): Way => ({kind: 'score-breeders', trait, locus, birds: unscored, earliest: onDay(from.book.asOf)})),
  ]
}

/** Sure carriers are to be left out, and one that is in the way alone may be; the others are to be tested, those most worth it first. */
function clearing(fixation: Fixation, mark: number, {book, testMates}: Sources): readonly Way[] {
  const {trait, locus, inTheWay} = fixation, sure = inTheWay.filter(({carries}) => carries > SURE), likely = inTheWay.filter(({carries}) => carries <= SURE)
  const [first, ...more] = sure.length > 0 ? sure : likely, clean = first && (sure.length === 0 || more.length === 0) ? first.ifDropped : null, isEnough = clean !== null && clean >= mark
  const out: readonly Way[] = first && (sure.length > 0 || isEnough) ? [{kind: 'leave-out', trait, locus, birds: sure.length > 0 ? sure.map(({bird}) => bird) : [first.bird], clean, earliest: onDay(book.asOf)}] : []
  if (likely.length === 0 || (sure.length > 0 && isEnough)) return out
  const birds = likely.slice(0, MOST_TESTED).map(({bird, carries}) => ({bird, carries, chicks: testMates.clearing(fixation, bird)?.chicks ?? null}))
  return [...out, {kind: 'test-mate', trait, locus, birds, others: likely.length - birds.length + fixation.others, earliest: inSeason(nextSeason(book))}]
}
