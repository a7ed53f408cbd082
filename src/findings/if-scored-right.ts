import type {Alleles, Locus} from '../heredity/locus.ts'
import {lostOfUnphased} from '../heredity/mating-forecast.ts'
import type {Bird, Logbook} from '../logbook/book.ts'
import {lookRulesOf} from '../logbook/look-rules-of.ts'
import {isCautioned, lethalAlleles} from './caution-alleles.ts'
import {disputedAllele, type DisputedAllele} from './disputed-alleles.ts'
import type {Heredity, PairAsked} from './heredity.ts'
import type {LocusGroup} from './locus-groups.ts'
import {WORTH_A_LOSS} from './mating-forecast.ts'
import {parentsTogether} from './parents-together.ts'
import type {PedigreeOfBook} from './pedigree-of-book.ts'

/** What a pair gives if the doubted score of one of them is right after all. */
export interface IfScoredRight extends Pick<DisputedAllele, 'trait' | 'state'> {
  /** whose score is doubted */
  readonly bird: Bird
  readonly mate: Bird
  readonly locus: Locus
  /** as it is written: `Cp` */
  readonly allele: string
  /** that the mate has the allele too, the doubted score being right */
  readonly mateCarries: number
  /** share of the germs that never hatch where both have it; null where, the mate's chance taken in, less than one in a thousand would be lost */
  readonly lost: number | null
  /** share of the chicks that hatch with the allele, mean of both sexes */
  readonly having: number
}

/**
 * What if a doubted score is right, and the allele it shows kills in the egg or hurts the bird?
 *
 * The forecast goes by what is likely, and a score that its kin make doubtful hardly counts there; where the allele is one that a lethal rule names, or a caution on what is lethal or on welfare speaks of, that is
 * too little to go by. Of what both parents may have together, P(g, h), only what agrees with the score is kept and made to sum to 1, and the losses are worked from that.
 * Where the parents as they are written leave it no such genotype they are taken to be unknown, for if the score is right they are others. Nothing is said where a test of its own leaves it none.
 */
export function ifScoredRight(book: Logbook, heredity: Heredity, {numberOf}: PedigreeOfBook, {sire, dam}: PairAsked): readonly IfScoredRight[] {
  return heredity.groups.flatMap(group => group.loci.flatMap((locus, place) => {
    const killing = lethalAlleles(group.traits, locus), isGrave = (allele: number): boolean => killing.includes(allele) || isCautioned(book, locus, allele)
    if (!locus.alleles.some((_, allele) => isGrave(allele))) return []
    return ([[sire, dam], [dam, sire]] as const).flatMap(([bird, mate]): IfScoredRight[] => {
      const disputed = disputedAllele(bird, locus, heredity)
      return disputed && isGrave(disputed.allele) ? [worked(group, place, locus, bird, mate, disputed)].filter(found => found !== null) : []
    })
  }))

  function worked(group: LocusGroup, place: number, locus: Locus, bird: Bird, mate: Bird, {allele, trait, state, fits}: DisputedAllele): IfScoredRight | null {
    const at = (genotype: readonly Alleles[]): Alleles => genotype[place] ?? [0, null]
    const pairsBy = (by: Pick<Heredity, 'workedOtherwise'>) => parentsTogether(by, group, numberOf(bird), numberOf(mate)).pairs.filter(({is: {one}}) => fits(at(one)))
    const asWritten = pairsBy(heredity), pairs = asWritten.length > 0 || bird.tested.has(locus) ? asWritten : pairsBy(ofUnknownParents(bird))
    const whole = sum(pairs, () => 1), both = pairs.filter(({is: {other}}) => at(other).includes(allele)), joint = sum(both, () => 1)
    if (whole === 0) return null
    const rules = group.traits.flatMap(each => lookRulesOf(each, group.loci) ?? []).filter(look => look.rules.some(({is}) => is === 'lethal')), {loci, linkages} = group
    const lostOf = ({one, other}: (typeof pairs)[number]['is']): number => (rules.length === 0 ? 0 : lostOfUnphased({loci, linkages, traits: rules, sire: bird === sire ? one : other, dam: bird === sire ? other : one}))
    const lost = sum(pairs, lostOf) / whole, germs = sum(pairs, ({one, other}) => (bird === sire ? havingOf(at(one), at(other), locus, allele) : havingOf(at(other), at(one), locus, allele))) / whole
    return {
      bird, mate, locus, trait, state, allele: locus.alleles[allele] ?? '', mateCarries: joint / whole,
      lost: lost >= WORTH_A_LOSS && joint > 0 ? sum(both, lostOf) / joint : null,
      // those that die have the allele, or died of another that the forecast tells of
      having: lost >= 1 ? 0 : Math.max(0, (germs - lost) / (1 - lost)),
    }
  }

  function ofUnknownParents(bird: Bird): Pick<Heredity, 'workedOtherwise'> {
    const instead = new Map([[numberOf(bird), {sex: bird.sex, base: null, matings: []}]])
    return {workedOtherwise: (group, otherwise, ...more) => heredity.workedOtherwise(group, {...otherwise, instead}, ...more)}
  }
}

function sum<P extends {readonly is: unknown; readonly probability: number}>(pairs: readonly P[], of: (is: P['is']) => number): number {
  return pairs.reduce((total, {is, probability}) => total + probability * of(is), 0)
}

/** Share of the germs of two parents that have the allele; of the Z a daughter has what her sire gives. */
function havingOf(sire: Alleles, dam: Alleles, {on}: Locus, allele: number): number {
  const gives = (parent: Alleles): number => parent.filter(each => each === allele).length / parent.filter(each => each !== null).length
  const his = gives(sire), either = 1 - (1 - his) * (1 - gives(dam))
  return on === 'Z' ? (either + his) / 2 : either
}
