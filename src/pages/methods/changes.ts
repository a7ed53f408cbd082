/** How drafts of the standard are held against each other. */
import {rangeChange} from '../../findings/range-change.ts'
import {wordChanges} from '../../findings/word-changes.ts'
import type {Method} from './method.ts'

const was = 'Of medium length, well up; sickles curved.', is = 'Of medium length, carried at 45 degrees; sickles curved.'

const marked = (): string => wordChanges(was, is).map(({is: how, text}) => (how === 'same' ? text : how === 'out' ? ` ~~${text.trim()}~~` : ` **${text.trim()}**`)).join('')

export const changesMethod: Method = {
  id: 'draft-changes',
  title: 'What changed from draft to draft',
  question: 'Which words of the standard went, which came, and does it allow more or less than before?',
  definition: 'A clause is known again by its section and name; where these changed, by its name and words, by its name in the same section, or by its words. The words of both are then laid along the longest run that they have in common in the same order, and what is not of it is marked. A range is held against the one before as the amounts stand: wider takes in all that was allowed and more, narrower only leaves out; what does both has shifted.',
  formula: 'longest(i, j) = 1 + longest(i+1, j+1) where word i is word j, else the greater of longest(i+1, j) and longest(i, j+1)',
  letters: [['i', 'a word or sign of the older text'], ['j', 'one of the newer text']],
  edges: `- White space and marks of Markdown are no change. A single word left standing between two changes is told as part of them.
- Where less than two fifths of a sentence stayed, the old and the new are set one after the other instead.
- A range counts where the clause itself names it. One that follows a trait’s target is not written in the standard.
- What is accepted until a season is printed with its clause until that season is over.`,
  source: 'Longest common subsequence: Wagner and Fischer 1974, J. ACM 21:168–173 (from memory). How clauses are known again is our own.',
  example: {given: `“${was}” with 35 to 60 degrees allowed, then “${is}” with 40 to 50.`, gives: () => `“${marked()}” The range is ${rangeChange({kind: 'between', low: 35, high: 60}, {kind: 'between', low: 40, high: 50}, null) ?? 'the same'}.`},
}
