import {YOUNGEST_BREEDER} from '../laying.ts'
import type {Linked} from '../linked.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const bird = (hatched: string) => `---\nband: H-9\nsex: male\nstrain: holm-white\nhatched: ${hatched}\n---\n`
const CHICK = '---\nband: 24-901\nsex: male\nhatched: 2024-05-01\nsire: H-9\ndam: H-3\n---\n'

export const entry: ManualEntry = {
  code: 'parent-too-young', severity: 'error', title: 'A parent younger than its chick',
  cause: 'A bird stands as a parent of eggs that were laid before it was hatched. A parent that was hatched, but under 16 weeks old (common practice, no source), is a warning.',
  remedy: 'Mend the band, or the hatch day of one of the two.',
  wrong: {'birds/H-9.md': bird('2024-05-20'), 'birds/24-901.md': CHICK},
  right: {'birds/H-9.md': bird('2022-05-20'), 'birds/24-901.md': CHICK},
}

export function check({bench, uses, doubtful}: Linked): void {
  const said = new Set<unknown>()
  for (const {bird, as, at, layings} of uses) {
    const {hatched} = bird
    if (!hatched || said.has(bird) || doubtful.has(bird)) continue
    const worst = layings.reduce<(typeof layings)[number] | null>((first, laying) => (first === null || laying.span.to < first.span.to ? laying : first), null)
    if (!worst || hatched.first + YOUNGEST_BREEDER <= worst.span.to) continue
    said.add(bird)
    const parent = as === 'male' ? 'sire' : 'dam'
    const chicks = worst.hatch ? `the eggs of hatch ${worst.hatch.id}` : 'the egg'
    const unborn = hatched.first > worst.span.to
    bench.note({
      ...slipOf(entry, at, unborn ? `${bird.band}, the ${parent}, hatched ${hatched.text}, after ${chicks} had been laid` : `${bird.band}, the ${parent}, hatched ${hatched.text}, was under 16 weeks old when ${chicks} had been laid`,
        'mend the band, or the day that is wrong', {at: bird.at, note: `${bird.band} stands here`}, {at: worst.at, note: 'its chicks stand here'}),
      severity: unborn ? 'error' : 'warning',
    })
  }
}
