/** What is missing from the records behind a summary, counted, and how its figures are read. */
import type {FlockSummary} from '../findings/flock-summary.ts'
import {figured, ofWords, sentence} from './numbers.ts'

/** What the records do not tell; one sentence where they tell all that is asked here. */
export function summaryGaps({chicks, birds, tallies, hatches, rates, spread, rate}: FlockSummary): readonly string[] {
  const doubtful = birds.filter(({parentage}) => parentage.kind === 'uncertain').length, undated = birds.filter(({hatched}) => hatched === null).length
  const candled = hatches.filter(({clear}) => clear !== null).length, aside = new Set(spread.flatMap(({values}) => values.flatMap(({bird, counted}) => (bird && !counted ? [bird] : [])))).size
  const uncounted = hatches.filter(({eggs}) => eggs === null).length
  const lines: readonly (readonly [number, string])[] = [
    [chicks.unlisted, `${figured(chicks.unlisted, 'chick')} hatched and ${chicks.unlisted === 1 ? 'was' : 'were'} never listed.`], [chicks.unbanded, `${ofWords(chicks.unbanded, chicks.hatched)} chicks never wore a band; ${tallies.length === 1 ? 'they count' : 'they all count'} in what they were scored for.`],
    [chicks.listed - chicks.scored, `${ofWords(chicks.listed - chicks.scored, chicks.listed)} listed chicks ${chicks.listed - chicks.scored === 1 ? 'was' : 'were'} never scored or measured.`], [rate?.partScored ?? 0, `${figured(rate?.partScored ?? 0, 'chick was', 'chicks were')} not scored for all that is required.`],
    [chicks.unknownSex, `${figured(chicks.unknownSex, 'chick')} of unknown sex.`], [doubtful, `Of ${ofWords(doubtful, birds.length)} banded birds a parent is in doubt.`], [undated, `Of ${ofWords(undated, birds.length)} banded birds the hatch day is not known.`],
    [uncounted, `Of ${ofWords(uncounted, hatches.length)} settings the eggs were not counted.`], [rates.settings - candled, `${ofWords(rates.settings - candled, rates.settings)} settings ${rates.settings - candled === 1 ? 'was not candled, so its' : 'were not candled, so their'} fertility cannot be told.`],
    [aside, `${figured(aside, 'bird')} measured in too small a class to tell of evenness.`],
  ]
  const told = lines.flatMap(([count, words]) => (count > 0 ? [sentence(words)] : []))
  return told.length === 0 ? ['Nothing that is asked here.'] : told
}

export const HOW_TO_READ = [
  'Figures in brackets are 95% intervals: anything between them fits the records.',
  'Chicks of one cock are alike: “by sire families” reckons with it and speaks of birds bred like these, “these chicks only” has too few families for that.',
  'CV is the spread among hatch mates of one sex as a share of their mean, the smaller the more even; F the chance that both copies of a gene are one copy handed down twice.',
] as const
