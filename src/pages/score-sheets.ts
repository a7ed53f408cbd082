/** Score sheets of shows and of keepers, heading by heading: points of full points, who gave them and under which draft. */
import {scoreSheet} from '../findings/score-sheet.ts'
import type {KeepersSheet, Logbook, Show, ShowScore} from '../logbook/book.ts'
import {dateWords} from './dates.ts'
import {birdPath, showPath} from './links.ts'
import {rounded} from './numbers.ts'
import {draftLink} from './standard-view.ts'

export interface ScoreSheetView {
  /** the bird on a show's page, the show on a bird's, or the day of a keeper's own */
  readonly title: string
  readonly link: string | null
  readonly band: boolean
  /** `Judge 1` */
  readonly by: string
  readonly draft: {readonly words: string; readonly link: string | null} | null
  readonly headings: readonly {readonly name: string; readonly points: string}[]
  readonly sum: string | null
  /** why it was struck out; null: it stands */
  readonly struck: string | null
}

const mark = (points: number): string => rounded(points, 1).replace(/\.0$/, '')
const ofFull = (points: number, of: number | null): string => (of === null ? mark(points) : `${mark(points)} of ${mark(of)}`)
/** A heading as the keeper's key spells it: `head-and-comb` → `Head and comb`. */
const headingWords = (name: string): string => name.charAt(0).toUpperCase() + name.slice(1).replaceAll('-', ' ')

function byWords({by}: ShowScore): string {
  return by === null ? 'Who judged is not written.' : typeof by === 'string' ? `Judged by ${by}.` : `Scored by ${by.name}.`
}

function sheet(score: ShowScore, book: Logbook, about: Pick<ScoreSheetView, 'title' | 'link' | 'band'>): ScoreSheetView {
  const {headings, points, of} = scoreSheet(score, book), draft = book.drafts.find(each => each.number === score.draft)
  return {
    ...about, by: byWords(score),
    draft: draft ? {words: `draft ${draft.number}`, link: draftLink(book, draft)} : score.draft === null ? null : {words: `draft ${score.draft}`, link: null},
    headings: headings.map(each => ({name: headingWords(each.name), points: ofFull(each.points, each.of)})), sum: headings.length < 2 ? null : ofFull(points, of), struck: null,
  }
}

/** For the show's page: every bird's, in the order of the record. */
export const sheetsOfShow = (show: Show, book: Logbook): readonly ScoreSheetView[] =>
  (show.scores ?? []).filter(({headings}) => headings.length > 0).map(score => sheet(score, book, {title: score.bird.band, link: birdPath(score.bird), band: true}))

/** For a bird's page: those of all its shows and of its keepers, oldest first; of one day the show's first. */
export function sheetsOfBird(scores: readonly {readonly show: Show; readonly score: ShowScore}[], own: readonly KeepersSheet[], book: Logbook): readonly ScoreSheetView[] {
  const shown = scores.filter(({score}) => score.headings.length > 0).map(({show, score}) => ({on: show.on.first, view: sheet(score, book, {title: show.name, link: showPath(show), band: false})}))
  const kept = own.map(each => ({on: each.on?.first ?? -Infinity, view: {...sheet(each, book, {title: each.on ? dateWords(each.on) : 'On a day not written', link: null, band: false}), by: scorerWords(each), struck: each.struck?.replace(/\.$/, '') ?? null}}))
  return [...shown, ...kept].sort((a, b) => a.on - b.on).map(({view}) => view)
}

const scorerWords = ({by}: KeepersSheet): string => (by === null ? 'Which keeper scored is not written.' : `Scored by ${typeof by === 'string' ? by : by.name}.`)
