import {keyOf, type Slip, type Spot} from '../../records/problem.ts'
import {ASKED_KEYS, KEYS_READ, type AskedKey} from '../asked-keys.ts'
import {REQUIREMENT_KINDS, type RequirementKind} from '../book.ts'
import {slipOf, type ManualEntry} from './slip-of.ts'

const asked = (line: string) => `---\nrequirements:\n  - {kind: years-bred, title: Years bred, asked: At least 5 years, at-least: 5${line}}\n---\n`

export const entry: ManualEntry = {
  code: 'asking-without-use', severity: 'warning', title: 'Something is asked that its kind of requirement does not look at',
  cause: 'A requirement has a key that says nothing for its kind: an interval for years bred, or classes for a veterinary statement. It is left aside, and the requirement may be held to less than you meant.',
  remedy: 'Take the key out, or write a requirement of the kind that it belongs to.',
  wrong: {'requirements.md': asked(', judges: 2')},
  right: {'requirements.md': asked(', in-a-row: yes')},
}

/** Keys of a requirement that its kind does not read. `read`: the requirement as its record has it. */
export function askingsWithoutUse(kind: RequirementKind, read: Readonly<Partial<Record<AskedKey, unknown>>>, at: Spot): readonly Slip[] {
  const written = Object.keys(ASKED_KEYS).filter((key): key is AskedKey => read[key as AskedKey] !== undefined)
  return written.filter(key => !KEYS_READ[kind].includes(key)).map(key => slipOf(entry, keyOf(at, key), `a requirement of the kind ${kind} does not look at ${key}`, remedyOf(key)))
}

function remedyOf(key: AskedKey): string {
  const kinds = REQUIREMENT_KINDS.filter(kind => KEYS_READ[kind].includes(key))
  return `take it out, or ask for a kind that does: ${kinds.slice(0, 3).join(', ')}${kinds.length > 3 ? ' …' : ''}`
}
