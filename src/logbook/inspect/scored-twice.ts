import {isWhole} from '../../records/dates.ts'
import type {Spot} from '../../records/problem.ts'
import type {Bird, Keeper} from '../book.ts'
import {contraryScorings} from '../contrary-scorings.ts'
import type {Linked} from '../linked.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const scores = (...rows: string[]) => ['band,on,by,comb,struck', ...rows, ''].join('\n')

export const entry: ManualEntry = {
  code: 'scored-twice', severity: 'warning', title: 'A bird scored twice on one day by one scorer, with two results',
  cause: 'Two rows of the scoring days give one bird different marks of one trait, or different points under one heading, on the same day and by the same scorer: a band misread, a row copied, or the bird looked at again. Of marks the row that stands last counts, of sheets of points the last as well, and nothing says that it was meant to.',
  remedy: 'Mend the band, the day or the mark that is wrong; where the bird was looked at again, strike the row that is not to count, with the reason under struck.',
  wrong: {'scores/2024-10.csv': scores('H-1,2024-10-02,inga,pea,', 'H-1,2024-10-02,inga,single,')},
  right: {'scores/2024-10.csv': scores('H-1,2024-10-02,inga,pea,"a slip of the pen"', 'H-1,2024-10-02,inga,single,')},
}

interface Given {
  readonly bird: Bird
  readonly by: Keeper | null
  /** trait or heading */
  readonly of: string
  readonly on: string
  readonly words: string
  readonly at: Spot
}

export function check({bench, book, doubtful}: Linked): void {
  const first = new Map<string, Given>(), birds = new Map<Bird, number>()
  for (const given of [...marksOf(book), ...pointsOf(book)]) {
    const {bird, by, of, on, words, at} = given
    if (doubtful.has(bird)) continue
    const number = birds.get(bird) ?? birds.size, key = [number, by?.id ?? '', of.toLowerCase(), on].join('\n'), before = first.get(key)
    birds.set(bird, number)
    if (!before) first.set(key, given)
    else if (before.words !== words) {
      bench.note(slipOf(entry, at, `${bird.band}: ${of} ${words} here, ${before.words} in another row of ${on}${by ? ` by ${by.name}` : ''}`, 'the later row counts; mend the band, the day or the mark, or strike the row that is not to count with the reason under struck',
        {at: before.at, note: 'the other row stands here'}))
    }
  }
}

/** What was measured is told of with the weigh days, and what the rules of inheritance do not allow together with those. */
function marksOf(book: Linked['book']): Given[] {
  const contrary = new Set(contraryScorings(book).flatMap(({scores: all}) => all))
  return book.birds.flatMap(bird => [...bird.looks].flatMap(([trait, {scores: all}]) => (trait.kind === 'measured' ? [] : all.flatMap(score => {
    const {value, on, by, struck, outside, at} = score
    return on === null || !isWhole(on) || struck !== null || outside || contrary.has(score) ? [] : [{bird, by, of: trait.name, on: on.text, words: String(value), at}]
  }))))
}

const pointsOf = ({sheets}: Linked['book']): Given[] => sheets.flatMap(({bird, by, on, struck, headings, at}) => (on === null || !isWhole(on) || struck !== null ? [] : headings.map(({name, points}) =>
  ({bird, by: typeof by === 'string' ? null : by, of: name, on: on.text, words: String(points), at}))))
