/** Score sheets of shows, heading by heading: points of full points, who gave them and under which draft. */
import {scoreSheet} from '../findings/score-sheet.ts'
import type {Logbook, Show, ShowScore} from '../logbook/book.ts'
import {birdPath, showPath} from './links.ts'
import {rounded} from './numbers.ts'
import {draftLink} from './standard-view.ts'

export interface ScoreSheetView {
  /** the bird on a show's page, the show on a bird's */
  readonly title: string
  readonly link: string
  readonly band: boolean
  /** `Judge 1` */
  readonly by: string
  readonly draft: {readonly words: string; readonly link: string | null} | null
  readonly headings: readonly {readonly name: string; readonly points: string}[]
  readonly sum: string | null
}

const mark = (points: number): string => rounded(points, 1).replace(/\.0$/, '')
const ofFull = (points: number, of: number | null): string => (of === null ? mark(points) : `${mark(points)} of ${mark(of)}`)
/** A heading as the keeper's key spells it: `head-and-comb` → `Head and comb`. */
const headingWords = (name: string): string => name.charAt(0).toUpperCase() + name.slice(1).replaceAll('-', ' ')

function byWords({by}: ShowScore): string {
  return by === null ? 'Who judged is not written.' : `Judged by ${typeof by === 'string' ? by : by.name}.`
}

function sheet(score: ShowScore, book: Logbook, about: Pick<ScoreSheetView, 'title' | 'link' | 'band'>): ScoreSheetView {
  const {headings, points, of} = scoreSheet(score, book), draft = book.drafts.find(each => each.number === score.draft)
  return {
    ...about, by: byWords(score),
    draft: draft ? {words: `draft ${draft.number}`, link: draftLink(book, draft)} : score.draft === null ? null : {words: `draft ${score.draft}`, link: null},
    headings: headings.map(each => ({name: headingWords(each.name), points: ofFull(each.points, each.of)})), sum: headings.length < 2 ? null : ofFull(points, of),
  }
}

/** For the show's page: every bird's, in the order of the record. */
export const sheetsOfShow = (show: Show, book: Logbook): readonly ScoreSheetView[] =>
  (show.scores ?? []).filter(({headings}) => headings.length > 0).map(score => sheet(score, book, {title: score.bird.band, link: birdPath(score.bird), band: true}))

/** For a bird's page: those of all its shows, oldest first. */
export const sheetsOfBird = (scores: readonly {readonly show: Show; readonly score: ShowScore}[], book: Logbook): readonly ScoreSheetView[] =>
  scores.filter(({score}) => score.headings.length > 0).map(({show, score}) => sheet(score, book, {title: show.name, link: showPath(show), band: false}))
