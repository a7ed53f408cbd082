/** The care book: feed, housing, vaccination, treatment, illness and losses, which every figure must be read against. */
import type {CareEntry, CareKind, Logbook} from '../logbook/book.ts'
import {dateWords, stayWords} from './dates.ts'
import {birdPath, CARE, fileName, hatchPath, penPath} from './links.ts'
import type {Page} from './page.ts'
import {counted, sentence} from './numbers.ts'

interface CareEntryView {
  readonly id: string
  readonly when: string
  readonly care: string
  readonly means: string | null
  readonly touched: readonly {readonly text: string; readonly link: string; readonly band: boolean}[]
  /** `No eggs eaten or sold until 21 May 2024.` */
  readonly withheld: readonly string[]
  /** the withholding is still running on the day of the book */
  readonly running: boolean
  /** Markdown */
  readonly body: string
}

export interface CareView {
  readonly lead: string
  readonly running: readonly string[]
  readonly medicine: boolean
  readonly entries: readonly CareEntryView[]
}

const KIND_WORDS = {
  feed: 'Feed', housing: 'Housing', vaccination: 'Vaccination', treatment: 'Treatment', illness: 'Illness', loss: 'Loss',
} as const satisfies Record<CareKind, string>

/** What belongs to a veterinarian, and to the law, before it belongs to a keeper's book. */
const MEDICINE: readonly CareKind[] = ['vaccination', 'treatment', 'illness', 'loss']

function withheldWords(entry: CareEntry): readonly string[] {
  return [
    ...(entry.eggsWithheldUntil ? [`No eggs eaten or sold until ${dateWords(entry.eggsWithheldUntil)}.`] : []),
    ...(entry.meatWithheldUntil ? [`No birds eaten until ${dateWords(entry.meatWithheldUntil)}.`] : []),
  ]
}

function entryView(book: Logbook, entry: CareEntry): CareEntryView {
  const running = [entry.eggsWithheldUntil, entry.meatWithheldUntil].some(until => until !== null && until.last >= book.asOf)
  return {
    id: fileName(entry.id), when: (entry.to ? stayWords(entry.on, entry.to) : null) ?? dateWords(entry.on), care: KIND_WORDS[entry.care], means: entry.with,
    touched: [
      ...entry.pens.map(pen => ({text: `pen ${pen.id}`, link: penPath(pen), band: false})),
      ...entry.hatches.map(hatch => ({text: `hatch ${hatch.id}`, link: hatchPath(hatch), band: false})),
      ...entry.birds.map(bird => ({text: bird.band, link: birdPath(bird), band: true})),
    ],
    withheld: withheldWords(entry), running, body: entry.body,
  }
}

export function carePage(book: Logbook): Page {
  const entries = [...book.care].sort((a, b) => b.on.first - a.on.first || (a.id < b.id ? -1 : 1)).map(entry => entryView(book, entry))
  const view: CareView = {
    lead: entries.length === 0 ? 'Nothing has been written down about feed, housing or health yet.'
      : `${sentence(counted(entries.length, 'entry', 'entries'))} on feed, housing and health: what the figures must be read against.`,
    running: entries.filter(entry => entry.running).flatMap(entry => entry.withheld),
    medicine: book.care.some(entry => MEDICINE.includes(entry.care)),
    entries,
  }
  return {path: CARE, template: 'care', title: 'Care', section: 'records', view, search: {kind: 'care', words: 'feed housing vaccination treatment illness losses'}}
}
