/** Evidence of what the breeders carry unseen, and of how closely they are bred. */
import type {Bird, Requirement, Trait} from '../logbook/book.ts'
import {meanAndDeviation} from '../statistics/mean-and-deviation.ts'
import {countedValue} from './counted-value.ts'
import {judged, type Finding} from './evidence-found.ts'
import type {FixedAtLocus, Sources} from './evidence-shown.ts'
import {FIXED_AT, fixationOf} from './fixation.ts'
import {sexShows} from './scoring-age.ts'

/** From this chance on a bird counts as a carrier; and that none carries it as certain, whatever share is asked: while looks can be misread no chance is ever whole. */
const SURE = 0.999
const SLACK = 1e-12

/**
 * Are the breeders taken as pure for the trait named, or for every required one? At each of its loci the chance that not one living breeder of the breed carries an
 * unwanted allele, all together, must reach the share asked, or 95 in 100 where none is.
 *
 * Not yet: below it at one locus, or a bird carries the allele for certain. It cannot be told where no rule says which genes the look comes of, where no breeder
 * was ever scored or tested for it, and, though the chance be high, while one that could show it was not: descent alone proves nothing to an association.
 */
export function fixed({trait, atLeast}: Requirement, from: Sources): Finding {
  const asked = atLeast ?? FIXED_AT, loci = lociOf(trait, from), birds = from.census.ownBreeders.length
  const shown = {kind: 'fixed', trait, asked, birds, loci} as const
  if (loci.length === 0 || birds === 0) return judged(null, shown)
  if (loci.some(({fixation}) => fixation.inTheWay.some(({carries}) => carries > SURE))) return judged(false, shown)
  if (loci.some(({scored, fixation}) => scored > 0 && fixation.clean < Math.min(asked, SURE) - SLACK)) return judged(false, shown)
  return judged(loci.some(({scored, unscored}) => scored === 0 || unscored.length > 0) ? null : true, shown)
}

/** Traits that are not required are worked for the asking. */
function lociOf(trait: Trait | null, {fixation, livingCarriers, census: {ownBreeders}, heredity, pedigree}: Sources): readonly FixedAtLocus[] {
  const found = trait === null ? fixation : livingCarriers.filter(each => each.trait === trait)
    .map(({locus, unwanted}) => fixation.find(each => each.trait === trait && each.locus === locus) ?? fixationOf({trait, locus, unwanted}, ownBreeders, heredity, pedigree))
  return found.map(each => {
    const isScored = (bird: Bird): boolean => countedValue(bird, each.trait) !== null || bird.tested.has(each.locus)
    return {fixation: each, scored: ownBreeders.filter(isScored).length, unscored: ownBreeders.filter(bird => !isScored(bird) && sexShows(each.trait, bird))}
  })
}

/**
 * Are the breeders as little inbred as is asked? Mean F of the living breeders of the breed against the most that will do; the highest, and the mean kinship among
 * them, stand beside it.
 *
 * Above it: not yet. It cannot be told while the mean would pass the limit with the parents that may be, or an ancestor nearer than the third generation is not in the
 * book, for then F is at least what is worked.
 */
export function inbreeding({atMost}: Requirement, {census: {ownBreeders}, kinship, pedigree}: Sources): Finding {
  const each = ownBreeders.map(bird => ({bird, ...kinship.of(bird)})), mean = (values: readonly number[]): number => meanAndDeviation(values).mean
  if (each.length === 0) return judged(null, {kind: 'inbreeding', asked: atMost, of: null})
  const byF = each.toSorted((a, b) => b.f.mean - a.f.mean || (a.bird.id < b.bird.id ? -1 : 1)).map(({bird, f}) => ({bird, f: f.mean}))
  const of = {
    birds: each.length, mean: mean(each.map(({f}) => f.mean)), low: mean(each.map(({f}) => f.low)), high: mean(each.map(({f}) => f.high)), byF,
    atLeast: each.filter(({atLeast}) => atLeast).map(({bird}) => bird), kinship: kinship.autosome.meansAmong(ownBreeders.map(pedigree.numberOf)).group,
  }
  const isOver = atMost !== null && of.mean > atMost + SLACK, isOpen = atMost === null || of.high > atMost + SLACK || of.atLeast.length > 0
  return judged(isOver ? false : isOpen ? null : true, {kind: 'inbreeding', asked: atMost, of})
}
