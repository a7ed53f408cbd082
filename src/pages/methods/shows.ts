import {clausesMeant} from '../../findings/clauses-meant.ts'
import {MOST_JUDGES} from '../../findings/judge-agreement.ts'
import {REMARKABLE} from '../../findings/remarkable.ts'
import {LEAST_PLACED, relativePlace} from '../../findings/show-years.ts'
import {MOST_DAYS_APART} from '../../findings/sheets-compared.ts'
import type {Clause, Draft} from '../../logbook/book.ts'
import {KENDALL_DRAWS} from '../../statistics/kendall-deals.ts'
import {KENDALL_SEED, kendallTau} from '../../statistics/kendall-tau.ts'
import {LEAST_FOR_LIMITS, limitsOfAgreement} from '../../statistics/limits-of-agreement.ts'
import {listWords, rounded, signed} from '../numbers.ts'
import type {Method} from './method.ts'

const places: Method = {
  id: 'show-places',
  title: 'How high they stood',
  question: 'Do the birds do better at shows than they did?',
  definition: 'Each entry’s place in its class, brought to a scale from 0, the last, to 1, the first; and the mean over the entries of a class or a year.',
  formula: 'r = (m − p) / (m − 1)',
  letters: [['p', 'place'], ['m', 'how many were shown in the class, 2 or more']],
  edges: `- Birds not placed, disqualified or alone, and classes of unknown size, have no r; they count as entries only.
- Fewer than ${LEAST_PLACED} entries give no mean.
- Whom one meets was not drawn by lot, so there is no interval: the mean tells how ours stood among those they met.
- A show that was officially cancelled counts for no bird; the year is named all the same.`,
  source: 'Own; worked from the places. The least number is a convention of ours.',
  example: {
    given: 'Second of six, first of four, seventh of seven.',
    gives: () => `${listWords([[2, 6], [1, 4], [7, 7]].map(([place = 0, of = 0]) => rounded(relativePlace({place, of, disqualified: false}) ?? 0, 2)))}.`,
  },
}

function tauWords(): string {
  const {concordant, discordant, pairs, tau, p} = kendallTau([[[-1, 9], [-2, 6], [-3, 8]], [[-1, 10], [-4, 7]]])
  return `${concordant} of ${pairs} pairs the same way, ${discordant} the other; tau-b ${signed(rounded(tau ?? 0, 2))}, P ${rounded(p ?? 0, 2)}.`
}

const order: Method = {
  id: 'judges-order',
  title: 'The judges’ order and ours',
  question: 'Do the judges see the birds as we do?',
  definition: 'Every two of our birds that one judge placed in one class of one show are a pair; where a class was given points and no places, the points are the order. Each pair is held against our own marks: of a trait scored on a scale or by ordered states, or the share of points on our own whole sheets, always the last mark from before the day of the show. Pairs the same way round speak for agreement, pairs the other way round against it. **Birds of two classes are never a pair**, since no judge held them against each other.',
  formula: 'τ_b = (C − D) / √( (N − N₁)(N − N₂) )',
  letters: [['C, D', 'pairs put the same way round by both, and the other way'], ['N', 'pairs'], ['N₁, N₂', 'pairs put level by the judge, and by us']],
  edges: `- A mark is better the higher it is where at least so much is wanted, the lower where at most; else the less it lies outside what is wanted. A trait of which nothing is wanted is not held.
- P is exact: the share of all ways to deal our marks out among the birds with C − D as far from nought. **A bird keeps what it is dealt through all its classes and judges**, since a bird liked once is liked again: three birds shown ten times are three birds. Birds that meet, or are joined by others that do, exchange their marks, as birds of one stock; one that we marked anew between two shows hands both marks on together. Where there are too many ways, the share (r + 1)/(m + 1) of m seeded draws: ${KENDALL_DRAWS.most}, or ${KENDALL_DRAWS.fewer} of over ${KENDALL_DRAWS.abovePairs} pairs; seed ${KENDALL_SEED}.
- Of many tests one looks remarkable by chance, so P in the table is corrected by Holm for all that the table tests. What is called agreement has a corrected P of ${REMARKABLE} or less.
- Where even full agreement would come of chance oftener than 5 in 100 times, it is too few to say, neither figure is given, and it is none of the tests. A judge who alone judged all pairs of a mark is no second test. Of each mark the ${MOST_JUDGES} judges with the most pairs are listed.
- Where all were put level there is no order and nothing is given. Struck and too early marks, birds without a mark, not placed, or alone in their class are counted apart.`,
  source: 'Kendall 1945, Biometrika 33:239–251. Dealing among birds: a permutation test of exchangeable units (Good 2005, from memory). Holm 1979, Scand. J. Stat. 6:65–70. The tests hold it against nine lots of tuna (Hollander and Wolfe 1973), against every way laid out, and against made-up judges who always like the same birds.',
  example: {given: 'One class: placed 1, 2, 3 and marked 9, 6, 8 by us; another: placed 1 and 4, marked 10 and 7.', gives: tauWords},
}

/** Large less small peak flow meter of 17 people, l/min: Bland & Altman 1986, from memory. */
const FLOWS = [-18, -35, -4, 6, -24, -43, 49, 62, -8, -12, -15, 30, 7, 1, -81, 73, -24]

function limitsWords(): string {
  const {mean, interval, limits} = limitsOfAgreement(FLOWS), range = (of: typeof limits): string => (of ? `${signed(rounded(of.low, 1))} to ${signed(rounded(of.high, 1))}` : '')
  return `Mean ${signed(rounded(mean, 1))}, ${range(interval)}; the next person is looked for from ${range(limits)}.`
}

const points: Method = {
  id: 'judges-points',
  title: 'Points of two who scored the same birds',
  question: 'By how much do the judges give other points than we do?',
  definition: `A judge’s sheet is held, heading by heading, against the last sheet of each of our keepers of the same bird under the same draft, from the day of the show or up to ${MOST_DAYS_APART} days before it; where several of us scored the bird, against their mean. Two keepers are held against each other likewise, on their nearest sheets.`,
  formula: 'mean d̄ ± t s / √n        next bird d̄ ± t s √(1 + 1/n)',
  letters: [['d', 'points of the one less those of the other'], ['s', 'their standard deviation'], ['n', 'birds scored by both'], ['t', 'Student’s, of n − 1']],
  edges: `- Fewer than ${LEAST_FOR_LIMITS} are listed as they are, with no mean and no limits.
- Where all differences are alike no interval is given, since it would claim too much.
- Headings that the other does not have or has with other full points, sheets of another draft, and sheets made after the day are counted apart. A sheet that nobody signed is not held.
- The limits are a prediction interval: 95 in 100 times the next bird’s difference lies inside, where differences are normal, however few there were. The source’s d̄ ± 2 s hold it 86 in 100 times of five birds; of its 17 people they were −79.7 to +75.5.
- Sheets of one bird hang together. A bird that several judges scored is one bird, by the mean of its differences, and the limits then speak of such a mean.
- A sheet without a heading of the scale is held heading by heading, but not as a whole.`,
  source: 'Bland and Altman 1986, Lancet i:307–310; with t and √(1 + 1/n) for small samples 1999, Stat. Methods Med. Res. 8:135–160, from memory. The days and the least number are conventions of ours.',
  example: {given: 'The source’s 17 people, blown into a large and a small meter: large less small, l/min.', gives: limitsWords},
}

function exampleDraft(): Draft {
  const at = {file: 'example', path: []}
  const clause = (id: string, title: string, text: string): Clause => ({id, title, text, sex: 'male', variety: null, trait: null, allows: {male: null, female: null}, ownRange: false, mandatory: false, ifMissed: null, accepted: null, at})
  return {
    at, body: '', number: 1, on: {text: '2025', first: 0, last: 0}, title: '', manner: null, classification: null, origin: null, egg: null, eggAtLeast: null, rings: {male: null, female: null}, weights: [], points: [], varieties: [], rows: [], reasons: new Map(), photos: [],
    sections: [{id: 'male', title: 'Male', kind: 'male', lead: '', clauses: [clause('Body', 'Body', 'Deep.'), clause('Tail', 'Tail', 'Well up.'), clause('Comb', 'Comb', 'Low.')]}],
  }
}

const remarks: Method = {
  id: 'judges-remarks',
  title: 'Remarks by clause',
  question: 'What did the judges say of each clause?',
  definition: 'A remark stands under the clauses that the keeper names for it (`about` in the record of the show). Where none is named, its words decide, by the draft the bird was judged by: under every clause in whose title one of its words stands; under the clause headed by a part of the fowl that it names, or else by the wider part (a saddle belongs to the back, a back to the body); failing both, under those that name the part in their text. Beside it stands whether the clause was changed since.',
  formula: null, letters: [],
  edges: `- Only clauses that describe birds of its sex, and of a hen, where she has none, the cock’s. Faults, weights and the egg only where the keeper names them.
- Words do not know what is meant: “comb stops short of the eye” names the eye. What the keeper names goes before.
- A remark may stand under several clauses; what fits none is named apart.`,
  source: 'Common practice, no source.',
  example: {given: 'Said of a cock, by a standard with Body, Tail and Comb: “Narrow saddle, tail high.”', gives: () => `${listWords(clausesMeant('Narrow saddle, tail high.', 'male', exampleDraft()))}.`},
}

export const showMethods: readonly Method[] = [places, order, points, remarks]
