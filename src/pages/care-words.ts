/** What touched birds, pens or hatches, told beside their figures: what was done, what is withheld, and who decides such things. */
import type {CareEntry, CareKind} from '../logbook/book.ts'
import type {Day} from '../records/dates.ts'
import {dateWords, stayWords} from './dates.ts'
import {carePath} from './links.ts'
import {sentence} from './numbers.ts'

export interface CareWords {
  readonly when: string
  /** `Treatment` */
  readonly title: string
  readonly link: string
  readonly text: string
}

const KINDS = {
  feed: 'Feed', housing: 'Housing', vaccination: 'Vaccination', treatment: 'Treatment', illness: 'Illness', loss: 'Loss',
} as const satisfies Record<CareKind, string>

const MEDICAL: readonly CareKind[] = ['vaccination', 'treatment', 'illness', 'loss']

function withheld(entry: CareEntry, asOf: Day): readonly string[] {
  const still = (until: {last: Day}): string => (until.last >= asOf ? ', still running' : '')
  return [
    ...(entry.eggsWithheldUntil ? [`Eggs withheld until ${dateWords(entry.eggsWithheldUntil)}${still(entry.eggsWithheldUntil)}.`] : []),
    ...(entry.meatWithheldUntil ? [`Meat withheld until ${dateWords(entry.meatWithheldUntil)}${still(entry.meatWithheldUntil)}.`] : []),
  ]
}

/** Oldest first. */
export function careWords(entries: readonly CareEntry[], asOf: Day): readonly CareWords[] {
  return [...entries].sort((a, b) => a.on.first - b.on.first || (a.id < b.id ? -1 : 1)).map(entry => ({
    when: (entry.to ? stayWords(entry.on, entry.to) : null) ?? dateWords(entry.on), title: KINDS[entry.care], link: carePath(entry),
    text: [...(entry.with === null ? [] : [`${sentence(entry.with.replace(/[.]$/, ''))}.`]), ...withheld(entry, asOf)].join(' '),
  }))
}

/** The same as a dated list prints it, the kind set off with a full stop. */
export const careList = (entries: readonly CareEntry[], asOf: Day): readonly CareWords[] => careWords(entries, asOf).map(entry => ({...entry, title: `${entry.title}.`}))

/** The usual caution, wherever medicine, disease or a withholding stands beside figures; null when there is none. */
export function careCaution(entries: readonly CareEntry[]): string | null {
  if (!entries.some(entry => MEDICAL.includes(entry.care) || entry.eggsWithheldUntil || entry.meatWithheldUntil)) return null
  return 'What was given or withheld here is a record, not advice: a veterinarian and the law of your country decide about medicines, disease and what may be eaten. Read hatch and growth of these birds with it in mind.'
}
