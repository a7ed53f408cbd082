import {clopperPearson} from '../../statistics/clopper-pearson.ts'
import {wilsonInterval} from '../../statistics/wilson-interval.ts'
import {limits, ofWords, percentSign} from '../numbers.ts'
import type {Method} from './method.ts'

const shareWords = (count: number, total: number): string => `${ofWords(count, total)} is ${percentSign(count / total)} (${limits(wilsonInterval(count, total))})`

export const share: Method = {
  id: 'share',
  title: 'A share and its interval',
  question: 'If this many chicks of this hatch showed it, how many of a much larger hatch plausibly would?',
  definition: 'The count over the total, with the Wilson score interval at 95%. Where the whole truth were known, intervals made this way would hold it about 95 times in a hundred ([measured](#coverage)). Count and total always stand beside the share. Where an association asks for it, Clopper and Pearson’s exact interval stands beside it, which never holds the truth less often than 95 times, and is wider.',
  formula: 'centre = (k + z²/2) / (n + z²)\nhalf   = z / (n + z²) × √( k (n − k) / n + z²/4 )\nlimits = centre − half, centre + half\nClopper and Pearson: low with P(k or more | low) = 0.025, high with P(k or fewer | high) = 0.025',
  letters: [['k', 'how many showed it, 0 to n'], ['n', 'how many were counted, 1 or more'], ['z', '1.96 at 95%']],
  edges: `- None counted: no share is given, and the page says that none was counted.
- None of n: the lower limit is exactly 0. All of n: the upper limit is exactly 100%.
- Chicks of few families are not independent of one another, so the true interval is wider than the printed one; with fewer than five families read it as a statement about these chicks.`,
  source: 'Wilson 1927, J. Am. Stat. Assoc. 22:209–212; Newcombe 1998, Stat. Med. 17:857–872, method 3; Clopper and Pearson 1934, Biometrika 26:404–413.',
  example: {given: '81 of 263, and none of 20.', gives: () => `${shareWords(81, 263)}; ${shareWords(0, 20)}. By Clopper and Pearson ${limits(clopperPearson(81, 263))} and ${limits(clopperPearson(0, 20))}.`},
}

export const stateShares: Method = {
  id: 'state-shares',
  title: 'How often a look is seen',
  question: 'Of the chicks of a step, how many had a pea comb?',
  definition: 'Of all chicks of a step that were scored for a trait, the share that showed each state; males and females apart and together. Every chick scored counts, kept or culled, banded or in a tally. The latest score counts that is neither struck out nor made outside the trait’s age.',
  formula: null, letters: [],
  edges: `- Birds of a pure strain are left out; they stand on their strain’s page.
- A chick lost before it could be scored is counted as lost, never as a score.
- Earlier scores and struck ones are shown on the bird’s page and counted nowhere.`,
  source: 'The interval as above; what counts as scored is common practice, no source.',
  example: {given: 'Of 62 chicks scored 59 have a pea comb.', gives: () => `${shareWords(59, 62)}.`},
}
