import type {Bird, Score, Trait} from '../book.ts'
import type {Linked} from '../linked.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const HATCH = '---\npen: 2024-A\nset: 2024-03-02\non: 2024-03-23\nchicks:\n  - {band: 24-901, sex: male}\n---\n'
const scores = (day: string) => `band,on,by,comb\n24-901,${day},inga,pea\n`

export const entry: ManualEntry = {
  code: 'scored-too-young', severity: 'warning', title: 'A score before the trait can be scored',
  cause: 'A bird was scored before the age that the trait’s scored-from names. The score is shown on the bird’s page and counts nowhere. Nothing is said where it is struck out, or where the bird was scored again in time; of several of one trait in a file the first is.',
  remedy: 'Mend the day or the band, or the trait’s scored-from; strike the score, or score the bird again when it is old enough.',
  wrong: {'hatches/2024-09.md': HATCH, 'scores/2024.csv': scores('2024-04-10')},
  right: {'hatches/2024-09.md': HATCH, 'scores/2024.csv': scores('2024-05-10')},
}

export function check({bench, book, doubtful}: Linked): void {
  const early = new Map<string, {readonly bird: Bird; readonly trait: Trait; readonly score: Score}[]>()
  for (const bird of book.birds) {
    if (bird.hatched === null || doubtful.has(bird)) continue
    for (const [trait, {counted, scores}] of bird.looks) {
      if (counted !== null || trait.scoredFrom === 0 || trait.kind === 'measured') continue
      for (const score of scores) {
        const {on, struck, at} = score
        // one from before it hatched is told of by another rule
        if (struck !== null || on === null || on.last >= bird.hatched.first + trait.scoredFrom || on.last < bird.hatched.first) continue
        const key = `${at.file}\n${trait.id}`, own = early.get(key)
        if (own) own.push({bird, trait, score})
        else early.set(key, [{bird, trait, score}])
      }
    }
  }
  for (const all of early.values()) {
    const [first] = all.sort((a, b) => lineOf(a.score) - lineOf(b.score))
    if (!first) continue
    const {bird, trait, score: {on, at}} = first, age = (on?.last ?? 0) - (bird.hatched?.first ?? 0)
    bench.note(slipOf(entry, at, `${all.length === 1 ? '' : `${all.length} scores of ${trait.id} in this file, here the first: `}${bird.band} was ${age} ${age === 1 ? 'day' : 'days'} old on ${on?.text ?? ''}, and ${trait.id} is scored from ${trait.scoredFrom} days on, so this counts nowhere`,
      'mend the day, the band or the trait’s scored-from; or score the bird again when it is old enough', {at: trait.at, note: `${trait.id} stands here`}))
  }
}

const lineOf = ({at}: Score): number => ('line' in at ? at.line : 0)
