/** One show: placings class by class, with what the judges said. */
import type {Findings} from '../findings/study.ts'
import type {Bird, Logbook, Show, ShowEntry} from '../logbook/book.ts'
import {fileName} from '../records/file-name.ts'
import {dateWords} from './dates.ts'
import {birdPath, showPath} from './links.ts'
import {listWords, saying, sentence} from './numbers.ts'
import type {Page} from './page.ts'
import {plates, type Plate} from './plates.ts'
import {sheetsOfShow, type ScoreSheetView} from './score-sheets.ts'
import {byClass, cancelledWords, placing, pointsWords, quoted} from './show-words.ts'
import {draftLink} from './standard-view.ts'

interface PlacedBird {
  readonly placing: string
  readonly bird: {readonly band: string; readonly link: string}
  /** award, grade and points, where there are any */
  readonly note: string
  readonly draft: {readonly words: string; readonly link: string} | null
  readonly remark: string | null
  readonly judge: string | null
}

export interface ShowView {
  readonly name: string
  readonly facts: readonly {readonly term: string; readonly words: string}[]
  readonly lead: string
  readonly plates: readonly Plate[]
  readonly cancelled: string | null
  /** Markdown */
  readonly body: string
  readonly classes: readonly {readonly id: string; readonly name: string; readonly entries: readonly PlacedBird[]}[]
  readonly sheets: readonly ScoreSheetView[]
}

export const bandLink = (bird: Bird): {readonly band: string; readonly link: string} => ({band: bird.band, link: birdPath(bird)})

function placed(book: Logbook, entry: ShowEntry, severalJudges: boolean): PlacedBird {
  const draft = book.drafts.find(each => each.number === entry.draft)
  return {
    placing: sentence(placing(entry)), bird: bandLink(entry.bird),
    note: [entry.award, entry.grade, pointsWords(entry)].filter(part => part !== null).map(sentence).join('. '),
    draft: draft ? {words: `judged by draft ${draft.number}`, link: draftLink(book, draft)} : null,
    remark: entry.remark === null ? null : quoted(entry.remark), judge: severalJudges ? entry.judge : null,
  }
}

function showLead(show: Show): string {
  if (show.cancelled !== null) return 'Officially cancelled.'
  if (show.entries.length === 0) return (show.scores ?? []).length > 0 ? 'No placings are on record; the score sheets stand below.' : 'No birds of ours were entered, or the entries are not on record yet.'
  const classes = byClass(show).filter(({name}) => name !== null).length
  const say = saying(show.entries.length, classes)
  return `${sentence(say(show.entries.length, 'bird'))} shown${classes === 0 ? '' : ` in ${say(classes, 'class', 'classes')}`}.`
}

export function showPages({book, shows}: Findings): readonly Page[] {
  return book.shows.map(show => {
    const judges = shows.shows.find(held => held.show === show)?.judges ?? []
    const facts = [
      {term: 'On', words: dateWords(show.on)},
      ...(show.place === null ? [] : [{term: 'At', words: show.place}]),
      ...(judges.length === 0 ? [] : [{term: judges.length === 1 ? 'Judge' : 'Judges', words: listWords(judges)}]),
    ]
    const view: ShowView = {
      name: show.name, facts, lead: showLead(show), cancelled: show.cancelled === null ? null : cancelledWords(show), body: show.body, plates: plates(show.photos ?? [], show.name, false),
      classes: byClass(show).map(({name, entries}) => ({
        id: fileName(`class-${name ?? 'none'}`), name: name === null ? 'No class on record' : sentence(name),
        entries: entries.map(entry => placed(book, entry, judges.length > 1)),
      })),
      sheets: sheetsOfShow(show, book),
    }
    return {
      path: showPath(show), template: 'show', title: `${show.name}, ${dateWords(show.on)}`, section: 'shows', view,
      search: {kind: 'show', words: [show.name, show.place ?? '', ...new Set([...show.entries, ...(show.scores ?? [])].map(({bird}) => bird.band))].join(' ')},
    }
  })
}
