import {ageFor} from '../../findings/growth-curves.ts'
import {meanAndDeviation} from '../../statistics/mean-and-deviation.ts'
import {ageWords} from '../dates.ts'
import {listWords, rounded} from '../numbers.ts'
import type {Method} from './method.ts'

export const growth: Method = {
  id: 'growth',
  title: 'Growth',
  question: 'What do they weigh at each age, and does a later step grow faster?',
  definition: 'Of every measure of the weigh days, by step and sex, the mean of all weighed about one age, with its count and, of five or more, Student’s 95% interval. A weighing within the days of a trait stands at that trait’s age; any other at the nearest of 0, 1, 2, 3, 4, 6, 8, 10, 12, 16, 20, 26, 39, 52 and 78 weeks, then of whole years. A bird weighed twice about one age counts once, on the nearer day.',
  formula: 'mean ± t × SD / √n',
  letters: [['t', 'Student’s, of n − 1'], ['n', 'birds weighed, with bands or by hatch and sex']],
  edges: `- Birds are taken one by one and not by hatch or family, so the interval is narrower than the truth.
- Later points are of those still there: where the small are culled, the line rises by that alone.
- Left out and counted: birds of unknown sex, and days or hatches not known to the day. Pure strains are on their own pages.`,
  source: 'Student 1908, Biometrika 6:1–25. The ages: common practice, no source.',
  example: {
    given: 'A trait is weighed at 20 weeks, 10 days either side; weighings after 57, 133 and 366 days. Three of one age of 720, 770 and 940 g.',
    gives: () => {
      const {mean, sd} = meanAndDeviation([720, 770, 940])
      return `They stand at ${listWords([57, 133, 366].map(days => ageWords(ageFor(days, [{atAge: 140, window: 10}]))))}. Mean ${rounded(mean, 0)} g, SD ${rounded(sd ?? NaN, 0)} g.`
    },
  },
}
