import {contraryScorings} from '../contrary-scorings.ts'
import type {Score} from '../book.ts'
import type {Linked} from '../linked.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const COMB = '---\nname: Comb\nstates: [pea, single]\nloci:\n  P: {on: autosome, alleles: [P, p+]}\nshows:\n  - {P: P/_, is: pea}\n  - {P: p+/p+, is: single}\n---\n'
const HEN = '---\nband: H-9\nsex: female\nstrain: holm-white\ncomb: single\n---\n'
const scored = (struck: string) => `band,on,by,comb,struck\nH-9,2023-05-04,inga,pea,${struck}\n`

export const entry: ManualEntry = {
  code: 'scorings-contradict', severity: 'warning', title: 'Scorings of one bird that cannot all be right',
  cause: 'A bird was scored more than once in a trait with rules of inheritance, and the scorings do not agree, though the trait states no misscoring that would allow for it. In shares the last one counts; of what the bird carries every scoring is evidence, so that one slip makes its relatives doubtful too.',
  remedy: 'Look at the bird again and strike the scoring that is wrong: in a scoring day with the reason under struck; beside the chick, mend it. If such slips are to be expected, state under misscoring how often.',
  wrong: {'traits/comb.md': COMB, 'birds/H-9.md': HEN, 'scores/2023-05-04.csv': scored('')},
  right: {'traits/comb.md': COMB, 'birds/H-9.md': HEN, 'scores/2023-05-04.csv': scored('the wrong hen')},
}

export function check({bench, book}: Linked): void {
  for (const {bird, trait, scores, counted} of contraryScorings(book)) {
    const values = [...new Set(scores.map(({value}) => String(value)))]
    const others = scores.filter(score => score !== counted && score.value !== counted.value)
    bench.noteAbout(trait)(slipOf(entry, counted.at,
      `${bird.band} was scored ${values.slice(0, -1).join(', ')} and ${values.at(-1) ?? ''} in ${trait.name}, which cannot all be right; ${wordsOf(counted)}, counts`,
      `look at the bird again and strike what is wrong, or mend it; if one is now and then taken for the other, state it under misscoring in traits/${trait.id}.md`,
      ...others.map(score => ({at: score.at, note: `${wordsOf(score)}, stands here`}))))
  }
}

/** `rose, scored by Bo on 2022-09-03` */
function wordsOf({value, by, on}: Score): string {
  return `${value}, ${by || on ? 'scored' : 'written with the bird'}${by ? ` by ${by.name}` : ''}${on ? ` on ${on.text}` : ''}`
}
