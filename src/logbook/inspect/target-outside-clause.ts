import type {Trait, Wanted} from '../book.ts'
import {endsOf} from '../wanted-ends.ts'
import {clausesOf} from '../clauses-of.ts'
import {latestDraft} from '../latest-draft.ts'
import type {Linked} from '../linked.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const draft = (allows: string) => `---\ndraft: 1\non: 2024-10-01\nclauses: {general-characteristics-male/comb: {trait: comb, allows: ${allows}}}\n---\n## General characteristics, male\n\n**Comb.** Low.\n`

export const entry: ManualEntry = {
  code: 'target-outside-clause', severity: 'warning', title: 'A target that the standard does not allow',
  cause: 'A clause of the latest draft says what it allows of its trait, and the trait’s own target lies outside it: a bird bred to the target would miss the clause. A tolerance that reaches a little beyond the clause is none.',
  remedy: 'Mend what the clause allows, or the trait’s target.',
  wrong: {'standard/1.md': draft('single')},
  right: {'standard/1.md': draft('pea')},
}

/** Room for rounding in the last bit. */
const SLACK = 1e-9

/** Does a target lie outside of what is allowed? Where either names no limits it cannot be told, and is not said. */
function lies(target: Wanted, allowed: Wanted): boolean {
  if (target.kind === 'states' || allowed.kind === 'states') return target.kind === 'states' && allowed.kind === 'states' && !target.states.some(state => allowed.states.includes(state))
  const [low, high] = endsOf(target, true), [least, most] = endsOf(allowed, false)
  return low > most + SLACK * Math.abs(most) || high < least - SLACK * Math.abs(least)
}

function words(wanted: Wanted, {unit}: Trait): string {
  const amount = (value: number): string => `${Number(value.toPrecision(6))}${unit === null ? '' : ` ${unit}`}`
  switch (wanted.kind) {
    case 'states': return wanted.states.join(' or ')
    case 'at-least': return `at least ${amount(wanted.value)}`
    case 'at-most': return `at most ${amount(wanted.value)}`
    case 'between': return `${Number(wanted.low.toPrecision(6))} to ${amount(wanted.high)}`
    case 'about': return amount(wanted.value)
  }
}

export function check({bench, book}: Linked): void {
  const draft = latestDraft({bench, book})
  if (!draft) return
  for (const {id, trait, allows, ownRange, at} of clausesOf(draft)) {
    if (!trait || !ownRange) continue
    const sex = (['male', 'female'] as const).find(each => {
      const target = trait.wanted[each], allowed = allows[each]
      return target !== null && allowed !== null && lies(target, allowed)
    })
    const target = sex && trait.wanted[sex], allowed = sex && allows[sex]
    if (!target || !allowed) continue
    bench.noteAbout(trait)(slipOf(entry, at, `${id} allows ${words(allowed, trait)}, while the target of ${trait.id} for ${sex}s is ${words(target, trait)}`, 'mend what the clause allows, or the trait’s target',
      {at: trait.at, note: `${trait.id} stands here`}))
  }
}
