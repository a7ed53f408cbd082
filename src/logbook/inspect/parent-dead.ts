import type {PartialDate} from '../../records/dates.ts'
import type {Spot} from '../../records/problem.ts'
import type {Bird} from '../book.ts'
import type {Linked} from '../linked.ts'
import type {ParentUse} from '../parent-uses.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const bird = (left: string) => `---\nband: H-9\nsex: male\nstrain: holm-white\nhatched: 2022\nleft: ${left}\n---\n`
const CHICK = '---\nband: 24-901\nsex: male\nhatched: 2024-05-01\nsire: H-9\ndam: H-3\n---\n'

export const entry: ManualEntry = {
  code: 'parent-dead', severity: 'error', title: 'A parent that was dead by then',
  cause: 'A bird stands as a parent of eggs that were laid after it had died (for a sire, after the hens can have kept his sperm). One that had been sold, given away or lost by then is a warning.',
  remedy: 'Mend the band, or the day that is wrong.',
  wrong: {'birds/H-9.md': bird('2023-10-01 died'), 'birds/24-901.md': CHICK},
  right: {'birds/H-9.md': bird('2024-10-01 died'), 'birds/24-901.md': CHICK},
}

const DEAD: readonly string[] = ['died', 'culled', 'taken']

export function check({bench, book, uses, doubtful}: Linked): void {
  const said = new Set<Bird>()
  for (const use of uses) {
    const {bird, at} = use
    const left = bird.left
    if (!left?.on || left.how === 'lent' || said.has(bird) || doubtful.has(bird)) continue
    const after = firstAfter(use, left.on, use.as === 'male' ? book.project.spermStoreDays : 0)
    if (!after) continue
    said.add(bird)
    bench.note({
      ...slipOf(entry, at, `${bird.band}, the ${use.as === 'male' ? 'sire' : 'dam'}, ${left.how === 'died' ? 'died' : `was ${left.how}`} ${left.on.text}, before ${after.what}`, 'mend the band, or the day that is wrong',
        {at: bird.at, note: `${bird.band} stands here`}, ...(after.at ? [{at: after.at, note: 'its chicks stand here'}] : [])),
      severity: DEAD.includes(left.how) ? 'error' : 'warning',
    })
  }
}

/** What happened only after the bird had gone, though it needs the bird. */
function firstAfter({pen, stay, layings}: ParentUse, gone: PartialDate, store: number): {readonly what: string; readonly at: Spot | null} | null {
  const came = stay?.from ?? pen?.from
  if (pen && came && came.first > gone.last) return {what: `pen ${pen.id} was put together`, at: null}
  const late = layings.find(({span}) => span.from > gone.last + store)
  return late ? {what: late.hatch ? `the eggs of hatch ${late.hatch.id} were laid` : 'the egg was laid', at: late.at} : null
}
