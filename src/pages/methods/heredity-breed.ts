import {WORTH_A_CAUTION, WORTH_A_LOSS} from '../../findings/mating-forecast.ts'
import {fitOfCounts} from '../../statistics/fit-of-counts.ts'
import {holm} from '../../statistics/holm.ts'
import {recessivesFit} from '../../statistics/recessives-fit.ts'
import {wilsonInterval} from '../../statistics/wilson-interval.ts'
import {testChance} from '../chance-words.ts'
import {limits, percentSign, rounded} from '../numbers.ts'
import {exampleFlock, founders} from './example-flock.ts'
import {exampleGenotypes, SKIN, WHITE_OR_YELLOW} from './example-heredity.ts'
import type {Method} from './method.ts'

const segregation: Method = {
  id: 'segregation',
  title: 'Came and expected',
  question: 'Do these chicks agree with what their parents should give?',
  definition: `A mating is held against a ratio only where both parents’ genotypes are known, at 99 in 100, from evidence **other than these chicks**. A mating known to carry only because a recessive hatched is tested **given that one did**, else such matings would always seem to give too many: of four chicks of two carriers 1.46 are expected single, not 1. Its P comes from what is left when the outcome without a recessive is struck out.
P is the chance of counts no more probable than those that came: exact up to 60 chicks or where fewer than five are expected of a kind, else by chi-square. Matings of one cross are also put together, with a test whether they agree. Where some of these are known by a recessive alone, P is that of the sum of recessives of all of them, worked exactly: so neither the chicks expected nor P are those of the plain ratio. Of many tests some will look strange by chance, so P is corrected for their number; what then stays below 0.05 raises three questions, in this order: a mis-scored bird, a wrong parent, a wrong rule.`,
  formula: 'χ² = Σ (came − expected)² / expected\nof a mating known by a recessive: expected = n p / (1 − (1 − p)ⁿ)\ncorrected P, smallest first = (tests left) × P',
  letters: [['n', 'chicks scored'], ['p', 'share of recessives in the ratio']],
  edges: `- A chick of a kind that the parents cannot give makes the mating impossible as written, not merely unlikely.
- Misscoring as the record states it is in the ratio, also where one recessive is given: given that one chick was scored so.
- What never hatches is taken out of the ratio, whichever trait says so. Where how linked loci lie in a parent would change the ratio, the chicks are counted and not tested.
- At a locus of the Z a cock is known by his recessive daughters, and only they are tested: of hens with the common allele sons look one way.
- Two matings of one bird may each be what makes the other known. Each is then tested as if it did not help to find the bird, which is not quite so.
- On a trait’s page the chart’s ticks are expected of all parents, known or probable; the tests take the known ones only.`,
  source: 'Holm 1979, Scandinavian Journal of Statistics 6:65–70; the counts of the first two: Davenport 1909, Inheritance of Characteristics in Domestic Fowl; given that one hatched: Emery & Rimoin 1990, Principles and Practice of Medical Genetics, table 8.1; the order of the questions is common practice, no source.',
  example: {
    given: '119 black, 55 white and 31 of wild pattern against 9 : 4 : 3; split combs 471, 289, 226 and 10 against 9 : 3 : 3 : 1; of three chicks two recessive, noticed by them, against one in four; 10 of 31, and with them 3 of 3 noticed so, against one in two; P of 0.01, 0.04, 0.03 and 0.005, corrected:',
    gives: () => `P ${testChance(fitOfCounts([119, 55, 31], [9, 4, 3]).p)}; ${testChance(fitOfCounts([471, 289, 226, 10], [9, 3, 3, 1]).p)}; ${testChance(recessivesFit([{chicks: 3, recessives: 2, noticed: true}], 1 / 4).p)}; ${testChance(recessivesFit([{chicks: 31, recessives: 10, noticed: false}, {chicks: 3, recessives: 3, noticed: true}], 1 / 2).p)}; ${holm([0.01, 0.04, 0.03, 0.005]).map(p => rounded(p, 2)).join(', ')}.`,
  },
}

/** Two white birds, strangers, each of two carriers of yellow, and a chick of theirs. */
const probablePair = () => {
  const flock = exampleFlock([...founders('a', 'b', 'c', 'd'), {name: 'cock', sire: 'a', dam: 'b'}, {name: 'hen', sire: 'c', dam: 'd'}, {name: 'chick', sire: 'cock', dam: 'hen'}])
  return exampleGenotypes(flock, {locus: SKIN, shows: WHITE_OR_YELLOW, tested: {a: 'W+/w', b: 'W+/w', c: 'W+/w', d: 'W+/w'}, scored: {cock: [0], hen: [0]}})
}

/** Brother and sister of a hen without yellow and a cock of a carrier and a bird without. */
const twoSibs = (tested: Readonly<Record<string, string>>) => {
  const flock = exampleFlock([...founders('a', 'b', 'dam'), {name: 'sire', sire: 'a', dam: 'b'}, {name: 'brother', sire: 'sire', dam: 'dam'}, {name: 'sister', sire: 'sire', dam: 'dam'}])
  return exampleGenotypes(flock, {locus: SKIN, shows: WHITE_OR_YELLOW, tested: {a: 'W+/w', b: 'W+/W+', dam: 'W+/W+', ...tested}})
}

const forecast: Method = {
  id: 'mating-forecast',
  title: 'What a mating will give',
  question: 'If I put these two together, what will hatch?',
  definition: 'A chick of each sex that has not hatched is added to the flock with these parents, and its genotype worked like any other bird’s: so everything known of either parent enters, and what the two share. The shares are of chicks that hatch and of what they will be, not of what somebody may take them for. What is lethal or hurts the bird is said first.',
  formula: 'P(look) = Σ P(genotypes of both parents | seen) × P(look | parents, hatched)', letters: [],
  edges: `- Losses in the egg are named from ${WORTH_A_LOSS * 1000} germ in a thousand on, by the loci of the rule that kills; less comes of scores that might be wrong.\n- What is known of an allele is said where ${WORTH_A_CAUTION * 100} chick in a hundred or more may have it; on the trait’s page it stands always.\n- A look that one sex cannot show is said of the other alone.\n- Different groups of loci are worked apart and multiplied.\n- Shares of a season ahead take every living pair of a pen alike.`,
  source: 'Mendel 1866; the example by hand: ⅔ × ⅔ × ¼.',
  example: {given: 'Two white birds, each of two carriers of yellow. Of their chicks will be yellow:', gives: () => `${percentSign(probablePair().chance('chick', 'w/w'))}.`},
}

const fixation: Method = {
  id: 'fixation',
  title: 'Rid of it',
  question: 'How sure are we that none of our breeders carries yellow?',
  definition: 'The chance that **not one** living breeder of the new breed carries an allele that the standard does not want, all together. It is not the product of the birds’ own chances: brothers and sisters carry it, or not, by the same parents. At 95 in 100 the trait counts as fixed. The birds in the way are ordered by what the chance would be were each not bred from.',
  formula: 'P(none carries | seen) = P(seen, and none carries) / P(seen)', letters: [],
  edges: '- A bird that carries it for certain makes the chance nil until it is gone.\n- A hen at a locus of the Z hides nothing from her own look.\n- Dropping a bird is a choice of matings. It need not cost the bird its life, and a carrier may be just the bird to keep for its other blood.',
  source: 'Bayes’ rule; own arrangement. The example by hand: ½ + ½ × ¼, and ¾ × ¾.',
  example: {
    given: 'Brother and sister of a hen without w, by a cock of whom it is even whether he carries it. That neither carries it, and what their own chances would give if one were not kin to the other:',
    gives: () => {
      const alone = twoSibs({}), brother = alone.chance('brother', 'W+/W+'), sister = twoSibs({brother: 'W+/W+'}).chance('sister', 'W+/W+')
      return `${percentSign(brother * sister)}; ${percentSign(brother * alone.chance('sister', 'W+/W+'))}.`
    },
  },
}

const likeliestSire: Method = {
  id: 'likeliest-sire',
  title: 'Which cock it was',
  question: 'Two cocks ran in the pen. Which of them had this chick?',
  definition: 'The chances of the records, times how well the chick’s looks suit each cock by all that is known of him. A look that one of them cannot give rules him out; one that both give tells nothing. How many times likelier each trait makes a cock is said beside him.',
  formula: 'P(sire | seen) ∝ P(sire by the records) × P(seen | sire)', letters: [],
  edges: '- Looks can rule a cock out; they seldom prove one. A test of blood can.\n- The records are left as they stand: the figures lean to the likelier sire, nothing is rewritten.',
  source: 'Bayes’ rule; the example by hand: 1 to ½.',
  example: {
    given: 'A yellow hen, one cock W+/W+ and one W+/w, either as likely by the records; a white chick. The first is its sire with:',
    gives: () => {
      const flock = exampleFlock([...founders('first', 'second', 'hen'), {name: 'chick', sire: {first: 0.5, second: 0.5}, dam: 'hen'}])
      return `${percentSign(exampleGenotypes(flock, {locus: SKIN, shows: WHITE_OR_YELLOW, tested: {first: 'W+/W+', second: 'W+/w', hen: 'w/w'}, scored: {chick: [0]}}).sire('chick', 'first'))}.`
    },
  },
}

const impossible: Method = {
  id: 'impossible-families',
  title: 'Chicks their parents cannot give',
  question: 'Can these two have had this chick?',
  definition: 'A chick is listed when its look is more likely wrong than one in five and hardly one bird in twenty of its kin would look so. For each the single slips that would explain it stand side by side: a wrong score; another cock that stood near, or another hen of the pen; an egg of another pen that laid then, which changes both parents, its cocks and hens taken alike; and at loci of the Z, of a bird that has not bred, a wrong sex. How many times likelier all that was seen would be with each is worked anew, and of all explanations, thought alike beforehand, each has its share. The chance that the score is wrong is another figure: it holds the parents for right. Nobody is blamed: every flock has such chicks.',
  formula: 'times = P(seen | with the slip) / P(seen | as written)', letters: [],
  edges: '- One slip may explain several chicks: kin in doubt are named together.\n- A slip that makes it less than three times likelier explains nothing and is left out.\n- The list begins at a chance of 20% that the score is wrong, the warnings of inspect at 50%.\n- A mutation is left out: it is rarer than any slip of the pen.\n- Nothing is changed in the records. Score the chick again first.',
  source: 'Own arrangement; the example by hand: P(yellow) is 1% from two birds without w and 50% with a carrier and a yellow hen.',
  example: {
    given: 'A chick scored yellow of a W+/W+ cock and a yellow hen, one score in a hundred wrong; a W+/w cock stood in the next pen. With him all that was seen is so many times likelier:',
    gives: () => {
      const seen = (sire: string): number => {
        const flock = exampleFlock([...founders('sire', 'hen'), {name: 'chick', sire: 'sire', dam: 'hen'}])
        const found = exampleGenotypes(flock, {locus: SKIN, shows: WHITE_OR_YELLOW, tested: {sire, hen: 'w/w'}})
        return found.chance('chick', 'w/w') * 0.99 + (1 - found.chance('chick', 'w/w')) * 0.01
      }
      return `${rounded(seen('W+/w') / seen('W+/W+'), 0)} times.`
    },
  },
}

const frequencies: Method = {
  id: 'frequencies',
  title: 'How common an allele is',
  question: 'Is yellow getting rarer from step to step?',
  definition: 'The copies of the allele among all genes at its locus, of every chick of a step that hatched, and of those that had or may have had chicks. Where genotypes are known they are counted; else every genotype counts by its chance. On the Z a cock has two copies and a hen one, so males and females stand apart as well as together.',
  formula: 'p = Σ copies / Σ genes        on the Z p = (2 n♂ p♂ + n♀ p♀) / (2 n♂ + n♀)',
  letters: [['n', 'birds'], ['p', 'share of the allele']],
  edges: '- The interval is Wilson’s, on as many genes as a count would need to be as sure; what is not known of the genotypes makes it wider.\n- Brothers and sisters are not independent, so the truth is wider still.\n- Birds of pure strains, and chicks of tallies on which nothing was seen, are left out.',
  source: 'A plain count; the interval after Wilson 1927, J. Am. Stat. Assoc. 22:209–212.',
  example: {
    given: 'Eight cocks with a share of 25% gold, six hens with 50%: together',
    gives: () => `${percentSign((2 * 8 * 0.25 + 6 * 0.5) / (2 * 8 + 6))}, 7 of 22 genes (${limits(wilsonInterval(7, 22))}).`,
  },
}

export const heredityBreedMethods: readonly Method[] = [forecast, segregation, frequencies, fixation, likeliestSire, impossible]
