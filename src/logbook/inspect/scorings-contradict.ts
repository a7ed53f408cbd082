import type {Slip} from '../../records/problem.ts'
import type {Bird, Score, Trait} from '../book.ts'
import {contraryScorings, standingAlone} from '../contrary-scorings.ts'
import type {Linked} from '../linked.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const COMB = '---\nname: Comb\nstates: [pea, single]\nloci:\n  P: {on: autosome, alleles: [P, p+]}\nshows:\n  - {P: P/_, is: pea}\n  - {P: p+/p+, is: single}\n---\n'
const HEN = '---\nband: H-9\nsex: female\nstrain: holm-white\ncomb: single\n---\n'
const scored = (struck: string) => `band,on,by,comb,struck\nH-9,2023-05-04,inga,pea,${struck}\n`

export const entry: ManualEntry = {
  code: 'scorings-contradict', severity: 'warning', title: 'Scorings of one bird that cannot all be right',
  cause: 'A bird was scored more than once in a trait with rules of inheritance, and the scorings do not agree: though the trait states no misscoring that would allow for it; or it does, and one scoring stands alone against others, or its kin make the one that counts likelier wrong than right. In shares the last one counts; of what the bird carries every scoring is evidence, so that one slip makes its relatives doubtful too.',
  remedy: 'Look at the bird again, or at photographs of one that is dead, and strike the scoring that is wrong: in a scoring day with the reason under struck; beside the chick, mend it. If such slips are to be expected, state under misscoring how often.',
  wrong: {'traits/comb.md': COMB, 'birds/H-9.md': HEN, 'scores/2023-05-04.csv': scored('')},
  right: {'traits/comb.md': COMB, 'birds/H-9.md': HEN, 'scores/2023-05-04.csv': scored('the wrong hen')},
}

export function check({bench, book}: Linked): void {
  for (const {bird, trait, scores, counted} of contraryScorings(book)) {
    const alone = standingAlone(scores)
    bench.noteAbout(trait)(slipAt(alone ?? counted, bird, trait, scores, `which cannot all be right; ${countsWords(counted, alone)}`,
      `${again(bird)} strike what is wrong, or mend it; if one is now and then taken for the other, state it under misscoring in traits/${trait.id}.md`))
  }
}

/**
 * Scorings that misscoring allows for, of which one is likely wrong by what is seen of the bird and its kin.
 *
 * @param alone the one that differs from two or more others that agree
 * @param wrong chance that the one that counts is wrong
 */
export function scoringsDisputed({bird, trait, scores, counted, alone, wrong}: {readonly bird: Bird; readonly trait: Trait; readonly scores: readonly Score[]; readonly counted: Score; readonly alone: Score | null; readonly wrong: number}): Slip {
  return slipAt(alone ?? counted, bird, trait, scores, `${countsWords(counted, alone)}, and by all that was seen of the bird and its kin is ${wrong >= 0.5 ? `wrong with ${percent(wrong)}` : `right with ${percent(1 - wrong)}`}`,
    `${again(bird)} strike what is wrong, or mend it`)
}

function slipAt(here: Score, bird: Bird, trait: Trait, scores: readonly Score[], but: string, remedy: string): Slip {
  const values = [...new Set(scores.map(({value}) => String(value)))]
  const others = scores.filter(score => score !== here && score.value !== here.value)
  return slipOf(entry, here.at, `${bird.band} was scored ${values.slice(0, -1).join(', ')} and ${values.at(-1) ?? ''} in ${trait.name}${but.startsWith('which') ? ', ' : '; '}${but}`, remedy,
    ...others.map(score => ({at: score.at, note: `${wordsOf(score)}, stands here`})))
}

const countsWords = (counted: Score, alone: Score | null): string =>
  alone === null ? `${wordsOf(counted)}, counts` : alone === counted ? `${wordsOf(counted)}, stands alone against the others and counts` : `${wordsOf(alone)}, stands alone against the others; ${wordsOf(counted)}, counts`

const percent = (chance: number): string => (chance > 0.995 ? 'more than 99%' : `${Math.round(chance * 100)}%`)

const again = ({left}: Bird): string => (left?.how === 'died' || left?.how === 'culled' ? 'see photographs or notes of the bird and' : 'look at the bird again and')

/** `rose, scored by Bo on 2022-09-03` */
function wordsOf({value, by, on}: Score): string {
  return `${value}, ${by || on ? 'scored' : 'written with the bird'}${by ? ` by ${by.name}` : ''}${on ? ` on ${on.text}` : ''}`
}
