import type {Linked} from '../linked.ts'
import {sightings} from '../sightings.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const BIRD = '---\nband: H-9\nsex: male\nstrain: holm-white\nhatched: 2022-03-20\nleft: 2024-05-01 died\n---\n'
const scores = (on: string) => `band,on,comb\nH-9,${on},single\n`

export const entry: ManualEntry = {
  code: 'scored-after-leaving', severity: 'warning', title: 'A bird seen after its death',
  cause: 'A bird was scored, weighed or shown after the day it died or was culled: a band misread, or a wrong day.',
  remedy: 'Mend the band or the day.',
  wrong: {'birds/H-9.md': BIRD, 'scores/2024-06.csv': scores('2024-06-02')},
  right: {'birds/H-9.md': BIRD, 'scores/2024-06.csv': scores('2024-04-02')},
}

const DEAD: readonly string[] = ['died', 'culled', 'taken']

/** One slip a bird: the first time it was seen after its death. */
export function check({bench, book, doubtful}: Linked): void {
  const seen = sightings(book)
  for (const bird of book.birds) {
    const gone = bird.left?.on
    if (!gone || !DEAD.includes(bird.left?.how ?? '') || doubtful.has(bird)) continue
    const late = seen(bird).find(({on}) => on.first > gone.last)
    if (late) bench.note(slipOf(entry, late.at, `${bird.band} was ${late.verb} ${late.on.text}, but had ${bird.left?.how === 'died' ? 'died' : `been ${bird.left?.how ?? ''}`} ${gone.text}`, 'mend the band or the day', {at: bird.at, note: `${bird.band} stands here`}))
  }
}
