/** What a clause asks beside its words, put into words: its range, what it is to miss it, what is still accepted; and how these changed. */
import type {AskChange} from '../findings/ask-changes.ts'
import type {RangeChange} from '../findings/range-change.ts'
import type {Clause, Project, Severity, Tolerance, Trait, Wanted} from '../logbook/book.ts'
import {shownIn, wantedWords} from './amounts.ts'
import {sentence} from './numbers.ts'

type Units = Project['units']

export const SEVERITY_WORDS: Readonly<Record<Severity, string>> = {minor: 'a minor fault', serious: 'a serious fault', disqualifying: 'a disqualification'}

const words = (wanted: Wanted, trait: Trait, units: Units): string => wantedWords(wanted, shownIn(trait, units))

/** Amounts that the clause itself names; a state stands in its words already, and a mark on the keeper's own scale is none of the standard's. */
function rangeWords({ownRange, allows, trait}: Clause, units: Units): string | null {
  if (!ownRange || trait?.kind !== 'measured') return null
  const male = allows.male && words(allows.male, trait, units), female = allows.female && words(allows.female, trait, units)
  return male !== null && female !== null && male !== female ? `males ${male}, females ${female}` : male ?? female
}

/** `40 to 50°; required; a disqualification if missed.`; empty where the clause asks nothing beside its words. */
export function askedWords(clause: Clause, units: Units): string {
  const parts = [rangeWords(clause, units), clause.mandatory ? 'required' : null, clause.ifMissed && `${SEVERITY_WORDS[clause.ifMissed]} if missed`].filter(part => part !== null)
  return parts.length === 0 ? '' : `${sentence(parts.join('; '))}.`
}

const bare = (text: string): string => text.replace(/[.;]\s*$/, '')

/** `Accepted until the season of 2027: ivory shanks in young birds; afterwards a serious fault.` */
export const acceptedWords = ({what, until, then}: Tolerance): string =>
  `Accepted until the season of ${until}: ${lowerFirst(bare(what))}${then === null ? '' : `; afterwards ${SEVERITY_WORDS[then]}`}.`

/** The same when that season is over: `Ivory shanks in young birds were accepted …` would need the number; so it is named first. */
export const expiredWords = ({what, until, then}: Tolerance): string =>
  `No longer accepted since the season of ${until} ended: ${lowerFirst(bare(what))}${then === null ? '' : `; it is now ${SEVERITY_WORDS[then]}`}.`

/** A capital that only begins the sentence goes; a name of several words (`Holm White down`) or a sign of letters (`AOCC`) stays. */
const lowerFirst = (text: string): string => (/^\p{Lu}\p{Ll}\S*(?!\s+\p{Lu})(?:\s|$)/u.test(text) ? text.charAt(0).toLowerCase() + text.slice(1) : text)

const RANGES: Readonly<Record<RangeChange, string>> = {
  wider: 'Range widened', narrower: 'Range narrowed', up: 'Range shifted upwards', down: 'Range shifted downwards', other: 'Range changed', untold: 'Range changed', given: 'Range now named', gone: 'Range no longer named',
}
const LOOKS: Readonly<Record<RangeChange, string>> = {
  wider: 'More looks allowed', narrower: 'Fewer looks allowed', up: 'Other looks allowed', down: 'Other looks allowed', other: 'Other looks allowed', untold: 'Other looks allowed', given: 'Looks now named', gone: 'Looks no longer named',
}

const wasNow = (before: string | null, after: string | null): string => (before === null ? after ?? '' : after === null ? `it was ${before}` : `was ${before}, now ${after}`)

function rangeChanged({sex, is, trait, before, after}: Extract<AskChange, {what: 'range'}>, units: Units): string {
  const told = (trait.kind === 'states' || trait.kind === 'ordered' ? LOOKS : RANGES)[is]
  return `${told}${sex === null ? '' : ` for ${sex}s`}: ${wasNow(before && words(before, trait, units), after && words(after, trait, units))}.`
}

function missedChanged(before: Severity | null, after: Severity | null): string {
  if (after === null) return `No longer ${before === null ? 'a fault' : SEVERITY_WORDS[before]} if missed.`
  return `Now ${SEVERITY_WORDS[after]} if missed${before === null ? '' : `, before ${SEVERITY_WORDS[before]}`}.`
}

function toleranceChanged({is, before, after}: Extract<AskChange, {what: 'tolerance'}>): string {
  if (after === null) return before === null ? '' : `No longer accepted: ${lowerFirst(bare(before.what))}.`
  if (before === null) return acceptedWords(after)
  return is === 'longer' || is === 'shorter' ? `${is === 'longer' ? 'Accepted longer' : 'Accepted less long'}, until the season of ${after.until} instead of ${before.until}: ${lowerFirst(bare(after.what))}.`
    : `${acceptedWords(after)} Before: ${lowerFirst(bare(before.what))}, until ${before.until}.`
}

/** One change of what is asked, as a sentence. */
export function askChangeWords(ask: AskChange, units: Units): string {
  switch (ask.what) {
    case 'trait': return `Now held against ${ask.after.name.toLowerCase()}, before against ${ask.before.name.toLowerCase()}.`
    case 'range': return rangeChanged(ask, units)
    case 'mandatory': return ask.after ? 'Now required.' : 'No longer required, but desirable.'
    case 'if-missed': return missedChanged(ask.before, ask.after)
    case 'sex': return ask.after === null ? 'Now of both sexes.' : `Now of ${ask.after}s only.`
    case 'tolerance': return toleranceChanged(ask)
  }
}
