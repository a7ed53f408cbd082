/** The care book: feed, housing, vaccination, treatment, illness and losses, which every figure must be read against. */
import type {CareEntry, CareKind, Logbook} from '../logbook/book.ts'
import type {Day} from '../records/dates.ts'
import {careWords} from './care-words.ts'
import {dateWords} from './dates.ts'
import {birdPath, CARE, careAnchor, hatchPath, penPath} from './links.ts'
import type {Page} from './page.ts'
import {counted, sentence} from './numbers.ts'
import {plates, type Plate} from './plates.ts'

interface CareEntryView {
  readonly id: string
  readonly when: string
  /** `Treatment` */
  readonly title: string
  /** with what, and what is withheld until when */
  readonly text: string
  readonly touched: readonly {readonly text: string; readonly link: string; readonly band: boolean}[]
  /** Markdown */
  readonly body: string
  readonly plates: readonly Plate[]
}

export interface CareView {
  readonly lead: string
  readonly running: readonly string[]
  readonly medicine: boolean
  readonly entries: readonly CareEntryView[]
}

/** What belongs to a veterinarian, and to the law, before it belongs to a keeper's book. */
const MEDICINE: readonly CareKind[] = ['vaccination', 'treatment', 'illness', 'loss']

/** `No eggs eaten or sold until 21 May 2024.`, while the time is still running on the day of the book. */
function runningWords(entry: CareEntry, asOf: Day): readonly string[] {
  const {eggsWithheldUntil: eggs, meatWithheldUntil: meat} = entry
  return [
    ...(eggs && eggs.last >= asOf ? [`No eggs eaten or sold until ${dateWords(eggs)}.`] : []),
    ...(meat && meat.last >= asOf ? [`No birds eaten until ${dateWords(meat)}.`] : []),
  ]
}

function entryViews(book: Logbook, entry: CareEntry): readonly CareEntryView[] {
  return careWords([entry], book.asOf).map(({when, title, text}) => ({
    id: careAnchor(entry), when, title, text: sentence(text), body: entry.body, plates: plates(entry.photos ?? [], title, false),
    touched: [
      ...entry.pens.map(pen => ({text: `pen ${pen.id}`, link: penPath(pen), band: false})),
      ...entry.hatches.map(hatch => ({text: `hatch ${hatch.id}`, link: hatchPath(hatch), band: false})),
      ...entry.birds.map(bird => ({text: bird.band, link: birdPath(bird), band: true})),
    ],
  }))
}

export function carePage(book: Logbook): Page {
  const newestFirst = [...book.care].sort((a, b) => b.on.first - a.on.first || (a.id < b.id ? -1 : 1))
  const entries = newestFirst.flatMap(entry => entryViews(book, entry))
  const view: CareView = {
    lead: entries.length === 0 ? 'Nothing has been written down about feed, housing or health yet.'
      : `${sentence(counted(entries.length, 'entry', 'entries'))} on feed, housing and health: what the figures must be read against.`,
    running: newestFirst.flatMap(entry => runningWords(entry, book.asOf)),
    medicine: book.care.some(entry => MEDICINE.includes(entry.care)),
    entries,
  }
  return {path: CARE, template: 'care', title: 'Care', section: 'records', view, search: {kind: 'care', words: 'feed housing vaccination treatment illness losses'}}
}
