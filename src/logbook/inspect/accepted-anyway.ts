import {inside} from '../../records/problem.ts'
import type {Wanted} from '../book.ts'
import {clausesOf} from '../clauses-of.ts'
import {latestDraft} from '../latest-draft.ts'
import type {Linked} from '../linked.ts'
import {endsOf} from '../wanted-ends.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const draft = (looks: string) => `---
draft: 1
on: 2024-10-01
clauses:
  general-characteristics-male/comb:
    trait: comb
    allows: pea
    accepted: {what: Other combs, looks: ${looks}, until: 2026}
---
## General characteristics, male

**Comb.** Pea.
`

export const entry: ManualEntry = {
  code: 'accepted-anyway', severity: 'warning', title: 'Accepted for some seasons, though allowed for good',
  cause: 'A clause of the latest draft accepts looks, marks or amounts until a season that it allows in any case, by its own range or its trait’s target.',
  remedy: 'Write under looks: what the clause does not allow, or take accepted: out.',
  wrong: {'standard/1.md': draft('pea')},
  right: {'standard/1.md': draft('single')},
}

/** Is everything that is accepted within what is allowed? Where either names no limits it cannot be told, and is not said. */
function isWithin(accepted: Wanted, allowed: Wanted): boolean {
  if (accepted.kind === 'states' || allowed.kind === 'states') return accepted.kind === 'states' && allowed.kind === 'states' && accepted.states.every(state => allowed.states.includes(state))
  if ([accepted, allowed].some(each => each.kind === 'about' && each.tolerance === null)) return false
  const [low, high] = endsOf(accepted, false), [least, most] = endsOf(allowed, false)
  return low >= least && high <= most
}

export function check({bench, book}: Linked): void {
  const draft = latestDraft({bench, book})
  for (const {id, accepted, allows, at} of draft ? clausesOf(draft) : []) {
    const sexes = (['male', 'female'] as const).filter(sex => accepted?.looks[sex])
    const isAllowed = (sex: 'male' | 'female'): boolean => {
      const looks = accepted?.looks[sex], allowed = allows[sex]
      return Boolean(looks && allowed && isWithin(looks, allowed))
    }
    if (sexes.length === 0 || !sexes.every(isAllowed)) continue
    bench.note(slipOf(entry, 'path' in at ? inside({file: at.file, path: at.path}, 'accepted', 'looks') : at, `${id} allows in any case what it accepts until ${accepted?.until ?? ''}`, 'write what the clause does not allow, or take accepted: out'))
  }
}
