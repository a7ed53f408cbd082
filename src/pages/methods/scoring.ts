import {limitsOf} from '../../findings/against-standard.ts'
import {errorPerScoring} from '../../findings/misscoring.ts'
import {shareOf} from '../../findings/share-of.ts'
import {shareInText} from '../estimate-words.ts'
import {percentSign, rounded} from '../numbers.ts'
import type {Method} from './method.ts'

function limitsWords(): string {
  const limits = limitsOf({kind: 'about', value: 2400, tolerance: 0.1})
  return limits ? `Inside from ${rounded(limits.low, 0)} to ${rounded(limits.high, 0)} g, both counted as inside.` : 'No limits.'
}

const againstStandard: Method = {
  id: 'against-standard',
  title: 'Against the standard',
  question: 'How many birds lie within what the standard allows?',
  definition: 'The share of birds measured in the trait’s window that lie inside the target and its tolerance, by sex; and how far their mean lies off the mark, in the trait’s unit and in standard deviations.',
  formula: 'off = mean − mark        in SD = (mean − mark) / SD',
  letters: [],
  edges: `- A bird exactly on a limit is inside.
- Every measured bird counts here, those of small classes too.
- A target with a mark and no tolerance has no inside; only the mean’s distance is given.`,
  source: 'The limits are the keeper’s own; the interval is Wilson’s.',
  example: {given: 'Wanted: 2.4 kg, a tenth either side.', gives: limitsWords},
}

function errorWords(differing: number, pairs: number): string {
  const each = errorPerScoring(differing / pairs)
  return `${shareInText(shareOf(differing, pairs))} differ, so one scoring is wrong with a chance of ${each === null ? 'nobody can say what' : percentSign(each)}.`
}

const misscoring: Method = {
  id: 'misscoring',
  title: 'How often scoring goes wrong',
  question: 'How often do we score wrongly?',
  definition: 'Where a trait of one bird was scored more than once, each scoring is held against the one before. The share of such pairs that differ tells how often one scoring is wrong.',
  formula: 'd = 2 e (1 − e)        e = (1 − √(1 − 2 d)) / 2',
  letters: [['d', 'share of pairs that differ'], ['e', 'chance of one scoring to be wrong']],
  edges: `- Struck scores and scores made too early are left out: that they were wrong is known.
- A trait never scored twice has no rate. Where half or more of the pairs differ, no chance is given.
- It is taken that every look and every scorer errs alike.`,
  source: 'Worked from the chances; no source.',
  example: {given: '6 of 100 pairs of scorings.', gives: () => errorWords(6, 100)},
}

const leastUniform: Method = {
  id: 'least-uniform',
  title: 'Where the breed is weakest',
  question: 'Which required trait is furthest from fixed?',
  definition: 'Of the required traits, the one that the fewest chicks of the step the breed stands at show as wanted. The breed is as uniform as that; no single number is made up for a step.',
  formula: null, letters: [],
  edges: '- Mixed birds are not considered.\n- Nothing required was scored in that step: the page says so, and names the last step of the ladder where something was.',
  source: 'Common practice, no source.',
  example: {given: 'Comb right in 59 of 62, skin in 61 of 62.', gives: () => `Comb, ${shareInText(shareOf(59, 62))}, before skin, ${shareInText(shareOf(61, 62))}.`},
}

export const scoringMethods: readonly Method[] = [againstStandard, misscoring, leastUniform]
