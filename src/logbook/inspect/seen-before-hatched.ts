import {inside, type Spot} from '../../records/problem.ts'
import type {Bird, Hatch} from '../book.ts'
import type {Linked} from '../linked.ts'
import {sightings} from '../sightings.ts'
import {told} from '../tellings.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const HATCH = '---\npen: 2024-A\nset: 2024-03-02\non: 2024-03-23\nchicks:\n  - {band: 24-901, sex: male}\n---\n'
const show = (on: string) => `---\nname: Autumn show\non: ${on}\nentries:\n  - {bird: 24-901, class: cockerel, result: 2 of 5}\n---\n`

export const entry: ManualEntry = {
  code: 'seen-before-hatched', severity: 'error', title: 'A bird seen before it hatched',
  cause: 'A bird was shown, weighed or scored before the day it hatched: a band misread, or a wrong day. Where several birds of a hatch were, the day of the hatch may be the wrong one, and it is said once.',
  remedy: 'Mend the band, or the day that is wrong.',
  wrong: {'hatches/2024-09.md': HATCH, 'shows/2023-11-04-ternhouse.md': show('2023-11-04')},
  right: {'hatches/2024-09.md': HATCH, 'shows/2024-11-02-ternhouse.md': show('2024-11-02')},
}

export function check({bench, book, tellings, doubtful}: Linked): void {
  const seen = sightings(book)
  const ofHatch = new Map<Hatch, Bird[]>()
  for (const bird of book.birds) {
    if (!earlyOf(bird) || doubtful.has(bird)) continue
    const own = told(tellings.get(bird) ?? [], 'hatched')
    if (own || !bird.hatch) note(bird, own ? inside(own.by.at, 'hatched') : bird.at, '')
    else ofHatch.set(bird.hatch, [...(ofHatch.get(bird.hatch) ?? []), bird])
  }
  for (const [hatch, [first, ...others]] of ofHatch) {
    const also = others.length === 0 ? '' : `; so ${others.length === 1 ? 'was one other bird' : `were ${others.length} other birds`} of hatch ${hatch.id}`
    if (first) note(first, inside(hatch.at, 'on'), also)
  }

  function earlyOf(bird: Bird) {
    const {hatched} = bird
    return hatched && seen(bird).find(({on}) => on.last < hatched.first)
  }

  function note(bird: Bird, hatchedAt: Spot, also: string): void {
    const early = earlyOf(bird)
    if (!early) return
    bench.note(slipOf(entry, early.at, `${bird.band} was ${early.verb} ${early.on.text}, before it hatched (${bird.hatched?.text ?? ''})${also}`,
      'mend the band, or the day that is wrong', {at: hatchedAt, note: 'hatched here'}))
  }
}
