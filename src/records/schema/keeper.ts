import {date, text} from '../scalars.ts'
import {parseDate, type PartialDate} from '../dates.ts'
import {listOf, object, optional, required, scalar} from '../shape.ts'
import {kind} from './kind.ts'
import {privateNotes} from './parts.ts'

interface Consent {
  readonly given: boolean
  readonly on: PartialDate | null
}

const consent = scalar<Consent>('yes, no, or the date it was given', words => {
  if (/^(?:yes|true)$/i.test(words)) return {given: true, on: null}
  if (/^(?:no|false)$/i.test(words)) return {given: false, on: null}
  const on = parseDate(words)
  return on ? {given: true, on} : undefined
})

const keeper = object('a keeper', {
  name: required(text('a name'), 'The name. It is published only with consent.'),
  consent: optional(consent, 'Whether the keeper has agreed to be named; without it the site says keeper A.'),
  'consent-committee': optional(consent, 'Whether the keeper has agreed to be named to the committee, in a dossier that is not published.'),
  region: optional(text('a region'), 'The region, as the keeper is willing to have it known. Never an address.'),
  since: optional(date, 'Since when.'),
  'signs-as': optional(listOf(text('a short name')), 'How the keeper signs in lists of scores.'),
  private: privateNotes,
})

export const keeperKind = kind({
  id: 'keeper', files: 'keepers/<id>.md', title: 'A keeper', shape: keeper,
  purpose: 'A person who keeps birds of the project.',
  example: `---
name: The keeper at Kelpgarth
consent: 2020-01-15
signs-as: [inga]
since: 2019
---
`,
})
