/** Evidence of what the breeders carry unseen. */
import type {Bird, Requirement} from '../logbook/book.ts'
import {breedersAsked} from './breeders-asked.ts'
import {looksAsked} from './clauses-asked.ts'
import {countedValue} from './counted-value.ts'
import {judged, type Finding} from './evidence-found.ts'
import type {Sources} from './evidence-shown.ts'
import {FIXED_AT, fixationOf, type Fixation} from './fixation.ts'
import {genesOfLooks, type GenesAsked} from './genes-asked.ts'
import {inSeason, nextSeason, onDay} from './next-season.ts'
import {sexShows} from './scoring-age.ts'
import type {FixedAtLocus, ShownFixed} from './shown-of-breeding.ts'
import {unwantedInBook} from './unwanted-alleles.ts'
import {isOfVarieties} from './variety-of.ts'
import {requiredTraits} from './verdict.ts'
import type {BirdToTest} from './ways-of-breeding.ts'
import type {Way} from './ways.ts'

/** From this chance on a bird counts as a carrier; and that none carries it as certain, whatever share is asked: while looks can be misread no chance is ever whole. */
const SURE = 0.999
const SLACK = 1e-12
/** Birds to test, or to put in the place of others, that are named at a locus. */
const MOST_NAMED = 5

/**
 * Are the breeders taken as pure for the trait named, for what the clauses named allow, or for every required trait? At each locus the chance that not one living breeder of the breed carries an
 * unwanted allele, all together, must reach the share asked, or 95 in 100 where none is. A clause of a colour variety is asked of breeders of that variety only.
 *
 * Not yet: below it at one locus, or a bird carries the allele for certain. It cannot be told where no rule says which genes a look comes of, where no breeder
 * was ever scored or tested for it, and, though the chance be high, while one that could show it was not: descent alone proves nothing to an association.
 */
export function fixed(asked: Requirement, from: Sources): Finding {
  const byClause = asked.clauses.length > 0 ? looksAsked(asked, from.book) : null, untoldClauses = byClause?.untold ?? []
  const genes = byClause ? genesOfLooks(byClause.looks) : (asked.trait ? [asked.trait] : requiredTraits(from.book)).map((trait): GenesAsked => ({trait, scored: trait, variety: null}))
  const {birds, untold: untoldBirds, behind} = breedersAsked(asked, from), mark = asked.atLeast ?? FIXED_AT, loci = genes.flatMap(each => lociOf(each, birds, from))
  const untold = [...new Set([...untoldBirds, ...genes.flatMap(({variety}) => birds.filter(bird => isOf(variety, bird, from) === null))])]
  const without = [...new Set(genes.map(({scored}) => scored))].filter(trait => !loci.some(({scoredFor}) => scoredFor === trait)), [only, ...more] = byClause || asked.trait ? [...new Set(genes.map(({scored}) => scored))] : []
  const shown: ShownFixed = {kind: 'fixed', trait: only && more.length === 0 ? only : null, asked: mark, birds: birds.length, loci, without, untoldClauses, untold}
  const failing = loci.filter(each => isFailing(each, mark)), open = without.length + untoldClauses.length + untold.length > 0 || loci.some(({scored, unscored}) => scored === 0 || unscored.length > 0)
  const state = genes.length === 0 || birds.length === 0 ? null : failing.length > 0 ? false : open ? null : true
  return judged(state, shown, {behind, ways: birds.length === 0 ? [{kind: 'keep-breeders', earliest: null}] : waysOf(shown, failing, from)})
}

const isOf = (variety: string | null, bird: Bird, {book}: Sources): boolean | null => (variety === null ? true : isOfVarieties(bird, book.drafts.at(-1) ?? null, [variety]))

function isFailing({fixation, scored}: FixedAtLocus, mark: number): boolean {
  return fixation.inTheWay.some(({carries}) => carries > SURE) || (scored > 0 && fixation.clean < Math.min(mark, SURE) - SLACK)
}

/** What is not required, and birds that are not all the breeders, are worked for the asking. */
function lociOf({trait, scored: scoredFor, variety}: GenesAsked, breeders: readonly Bird[], from: Sources): readonly FixedAtLocus[] {
  const birds = breeders.filter(bird => isOf(variety, bird, from) === true), all = birds.length === from.census.ownBreeders.length
  return unwantedInBook(trait, from.allelesOfBook).map(asked => {
    const isKnown = (each: Fixation): boolean => each.trait === scoredFor && each.locus === asked.locus && each.unwanted.join() === asked.unwanted.join()
    const fixation = (all ? from.fixation.find(isKnown) : undefined) ?? fixationOf(asked, birds, from.heredity, from.pedigree), isScored = (bird: Bird): boolean => countedValue(bird, scoredFor) !== null || bird.tested.has(asked.locus)
    return {fixation, scoredFor, variety, breeders: birds, scored: birds.filter(isScored).length, unscored: birds.filter(bird => !isScored(bird) && sexShows(trait, bird))}
  })
}

function waysOf({loci, without, untoldClauses, asked}: ShownFixed, failing: readonly FixedAtLocus[], from: Sources): readonly Way[] {
  return [
    ...(untoldClauses.length > 0 ? [{kind: 'hold-clauses', clauses: untoldClauses, earliest: null} as const] : []),
    ...(without.length > 0 || (loci.length === 0 && untoldClauses.length === 0) ? [{kind: 'say-genes', traits: without, earliest: null} as const] : []),
    ...(loci.some(({fixation}) => fixation.birds === 0) ? [{kind: 'keep-breeders', earliest: null} as const] : []),
    ...failing.flatMap(each => clearing(each, Math.min(asked, SURE) - SLACK, from)),
    ...loci.filter(({unscored}) => unscored.length > 0).map(({fixation: {trait, locus}, unscored}): Way => ({kind: 'score-breeders', trait, locus, birds: unscored, earliest: onDay(from.book.asOf)})),
  ]
}

/** Sure carriers are to be left out, and one that is in the way alone may be; the others are to be tested, those most worth it first. Where a sex would be left without a breeder, others are named for its place. */
function clearing(at: FixedAtLocus, mark: number, from: Sources): readonly Way[] {
  const {fixation, breeders} = at, {trait, locus, inTheWay} = fixation, sure = inTheWay.filter(({carries}) => carries > SURE), likely = inTheWay.filter(({carries}) => carries <= SURE)
  const [first, ...more] = sure.length > 0 ? sure : likely, clean = first && (sure.length === 0 || more.length === 0) ? first.ifDropped : null, isEnough = clean !== null && clean >= mark
  const birds = sure.length > 0 ? sure.map(({bird}) => bird) : first ? [first.bird] : [], next = inSeason(nextSeason(from.book))
  const emptied = (['male', 'female'] as const).filter(sex => breeders.some(bird => bird.sex === sex) && breeders.every(bird => bird.sex !== sex || birds.includes(bird)))
  const out: readonly Way[] = birds.length === 0 || (sure.length === 0 && (!isEnough || emptied.length > 0)) ? []
    : emptied.length > 0 ? [{kind: 'put-others', trait, locus, birds, sexes: emptied, choices: emptied.flatMap(sex => others(at, sex, from)), earliest: next}] : [{kind: 'leave-out', trait, locus, birds, clean, earliest: onDay(from.book.asOf)}]
  if (likely.length === 0 || (sure.length > 0 && isEnough)) return out
  const tested = likely.slice(0, MOST_NAMED).map(({bird, carries}) => toTest(at, bird, carries, from))
  return [...out, {kind: 'test-mate', trait, locus, birds: tested, others: likely.length - tested.length + fixation.others, earliest: next}]
}

const toTest = ({fixation}: FixedAtLocus, bird: Bird, carries: number, {testMates}: Sources): BirdToTest => ({bird, carries, chicks: testMates.clearing(fixation, bird)?.chicks ?? null})

/** Living birds of the breed that are not bred from and may be without it, the likeliest first. */
function others(at: FixedAtLocus, sex: 'male' | 'female', from: Sources): readonly BirdToTest[] {
  const {fixation: {locus, unwanted}, variety} = at, {alive, ownBreeders} = from.census
  const may = alive.filter(bird => bird.sex === sex && bird.step.kind !== 'strain' && !ownBreeders.includes(bird) && isOf(variety, bird, from) !== false)
  return may.map(bird => ({bird, carries: from.heredity.of(bird, locus).genotypes.reduce((sum, {is, probability}) => sum + (is.some(allele => allele !== null && unwanted.includes(allele)) ? probability : 0), 0)}))
    .filter(({carries}) => carries <= SURE).sort((a, b) => Math.round((a.carries - b.carries) * 1e6) || (a.bird.id < b.bird.id ? -1 : 1)).slice(0, MOST_NAMED).map(({bird, carries}) => toTest(at, bird, carries, from))
}
