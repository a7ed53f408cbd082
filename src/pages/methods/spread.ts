import {LEAST_IN_CLASS} from '../../findings/spread.ts'
import {coefficientOfVariationInterval} from '../../statistics/coefficient-of-variation.ts'
import {meanAndDeviation} from '../../statistics/mean-and-deviation.ts'
import {pooledVariation} from '../../statistics/pooled-variation.ts'
import {countWithin} from '../../statistics/count-within.ts'
import {countWord, limits, ofWords, percentSign, rounded, sentence} from '../numbers.ts'
import type {Method} from './method.ts'

function meanWords(values: readonly number[]): string {
  const {mean, sd} = meanAndDeviation(values)
  return `mean ${rounded(mean, 1)} g${sd === null ? ', and one bird has no spread' : `, SD ${rounded(sd, 1)} g`}`
}

export const meanAndSpread: Method = {
  id: 'mean',
  title: 'Mean and standard deviation',
  question: 'How heavy are they on average, and how far do they stray?',
  definition: 'The mean of all birds measured, and the standard deviation, which says how far a bird commonly lies from the mean.',
  formula: 'mean = sum of x / n\nSD   = √( sum of (x − mean)² / (n − 1) )',
  letters: [['x', 'one bird’s measurement'], ['n', 'how many birds, 1 or more']],
  edges: '- A single bird has a mean and no spread.\n- A bird that was not measured within the trait’s window is counted as left out.',
  source: 'Worked in two passes: Chan, Golub and LeVeque 1983, Am. Stat. 37:242–247.',
  example: {given: 'Chicks of 205, 215 and 202 g.', gives: () => `${meanWords([205, 215, 202])}.`},
}

function cvWords(cv: number, freedom: number): string {
  const interval = coefficientOfVariationInterval(cv, freedom)
  return `CV ${percentSign(cv)} ${interval ? `(${limits(interval)})` : 'with no upper limit'}`
}

const CLASSES = [[9, 10, 11], [18, 20, 22]] as const

function pooledWords(): string {
  const {n, sd, cv, freedom} = pooledVariation(CLASSES)
  return `${n} birds, SD ${rounded(sd, 2)}, CV ${percentSign(cv)} on ${freedom} degrees of freedom. Thrown together, the same six would show a CV of ${percentSign(wildCv())}`
}

/** What the spread would be if birds of different hatches were thrown together: the reason why they are not. */
function wildCv(): number {
  const {mean, sd} = meanAndDeviation(CLASSES.flat())
  return (sd ?? 0) / mean
}

export const evenness: Method = {
  id: 'evenness',
  title: 'Evenness: the coefficient of variation',
  question: 'How even are the birds, when not all were reared together?',
  definition: 'Each bird is compared with its own class: its sex, and those reared alike, from one machine and day or one broody. The spreads of the classes are then put together by their degrees of freedom, so that a cold spring in one hatch does not pass for unevenness of the breed. CV is the standard deviation as a share of the mean.',
  formula: 'CV² = sum of ν × (s / m)² / sum of ν',
  letters: [['s, m', 'a class’s own standard deviation and mean'], ['ν', 'its degrees of freedom, birds less one']],
  edges: `- Only classes of ${countWord(LEAST_IN_CLASS)} birds or more count; birds of smaller ones are counted as left out.
- Birds of unknown sex are left out and counted.
- The interval is the modified McKay interval, meant for a CV of a third or less; where birds are so uneven or few that no upper limit exists, or all weigh the same on the scale, none is printed.`,
  source: `Interval: Vangel 1996, Am. Stat. 50:21–26, equation 16, and McKay 1932, J. R. Stat. Soc. 95:695–698; neither paper was at hand, the equation is read from K. Wright’s R function (R-help, June 2007). The weighing of several classes is ours; its coverage is held by simulation. ${sentence(countWord(LEAST_IN_CLASS))} birds a class: common practice, no source.`,
  example: {
    given: 'Two classes, 9, 10 and 11 and 18, 20 and 22 (too small to count, but easy to follow); and a class of 27 with a CV of 8.6%.',
    gives: () => `${pooledWords()}. ${cvWords(0.086, 26)}.`,
  },
}

export const withinTenth: Method = {
  id: 'within-tenth',
  title: 'Within a tenth of the mean',
  question: 'How many birds lie close to the rest?',
  definition: 'The share of birds no further than a tenth from the mean of their own class. Growers call it uniformity.',
  formula: '|x − mean| at most 0.1 × mean',
  letters: [['x', 'one bird’s measurement'], ['mean', 'of its own class']],
  edges: '- A bird exactly on the limit is inside.\n- The same classes count as for evenness.',
  source: 'Common practice, no source.',
  example: {
    given: '945, 1050, 1155 and 1156 g, around 1050 g.',
    gives: () => `${ofWords(countWithin([945, 1050, 1155, 1156], 1050, 0.1), 4)} lie within a tenth: the last one is a gram outside.`,
  },
}
