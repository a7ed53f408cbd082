import {shareOf} from '../../findings/share-of.ts'
import {meets} from '../../findings/wanted-look.ts'
import {shareInText} from '../estimate-words.ts'
import type {Method} from './method.ts'

const TAILS = [38, 40, 44, 50, 53]

export const clausesMethod: Method = {
  id: 'clauses',
  title: 'The standard beside the flock',
  question: 'Which clauses does the flock meet, and which not?',
  definition: 'Of the birds scored for the trait of a clause, the share that show what the clause of the latest draft allows their sex. Every chick that was scored counts, culled, sold and dead ones too, and not only those kept. A score stays with the draft it was made under: the one its record names, else the one in force on its day. What is told by eye counts only where the clause said the same words then, and allowed the same; of a trait of plain states it is enough that it allowed the same, for whether a comb is pea is one question in whatever words. What was scored under other words is counted by itself, against what that draft allowed. **What a ruler or scales told is held against today’s range whatever the draft**, since a ruler does not read the draft. The worst clause comes first: the one with the least share in the latest step.',
  formula: 'share = birds that meet the clause / birds scored that can be judged',
  letters: [],
  edges: `- An unsexed bird counts where it would meet the clause as either sex, or miss it as either; else it is counted apart.
- A clause of a colour variety looks at birds of that variety only. Where the looks that tell it were not scored, the bird is counted apart.
- What is accepted until some season is named beside those that meet the clause outright, and the share is of these; in the order of the clauses it counts as met up to that season; after it, no more.
- A score without a day is taken as made on the first day it can have been seen. Where that cannot be told, or no draft was in force, it is counted with other words.
- An earlier clause that named no trait is the same clause where its words are, unless today’s clause has a range of its own.
- A bird scored more than once counts by its latest score made by today’s words.
- Equal shares: first what it is worse to miss, then what is mandatory, then the one with more birds.
- Chicks of one sire are alike, so that Wilson’s interval is narrower than the truth. From five sire families on the figures give a second one, drawn by families ([how](#trend)).`,
  source: 'The intervals: Wilson 1927, J. Am. Stat. Assoc. 22:209–212; between two steps Newcombe 1998, Stat. Med. 17:873–890. That a score stays with the draft it was made under, and what is held against it: common practice, no source.',
  example: {
    given: 'The clause allows a tail of 40 to 50 degrees. Five males measure 38, 40, 44, 50 and 53; a sixth was not measured.',
    gives: () => `${shareInText(shareOf(TAILS.filter(tail => meets({kind: 'between', low: 40, high: 50}, tail)).length, TAILS.length))}. Unscored: 1.`,
  },
}
