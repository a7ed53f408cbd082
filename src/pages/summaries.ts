/** The summaries to send on, season by season and step by step, and the list of them with the answer and the size of each. */
import type {FlockSummary} from '../findings/flock-summary.ts'
import type {Findings} from '../findings/study.ts'
import {SUMMARIES, summaryPath} from './links.ts'
import type {Page} from './page.ts'
import {answerInShort} from './summary-answer.ts'
import {toDo} from './summary-next.ts'
import {summaryPage} from './summary.ts'

interface Listed {
  readonly title: string
  readonly link: string
  readonly words: string
}

export interface SummariesView {
  readonly lead: string
  readonly seasons: readonly Listed[]
  readonly steps: readonly Listed[]
}

const besides = ({of, steps}: FlockSummary): boolean => of === 'step' && steps.some(({beside}) => beside)

/** None while nothing was ever penned, set or hatched. The list comes last: it tells the sizes of the others. */
export function summaryPages(findings: Findings): readonly Page[] {
  const {seasons, steps} = findings.summaries, all = [...seasons, ...steps]
  if (all.length === 0) return []
  const next = toDo(findings)
  // the newest first; steps beside the ladder after those on it
  const listed = (of: typeof seasons): readonly Listed[] => of.toReversed().toSorted((a, b) => Number(besides(a)) - Number(besides(b))).map(each => ({title: each.name, link: summaryPath(each), words: answerInShort(each)}))
  const view: SummariesView = {
    lead: 'Two or three sheets for each season and each step: one file that opens without the site, from a stick, in a letter or on a phone.', seasons: listed(seasons), steps: listed(steps),
  }
  return [...all.map(each => summaryPage(each, findings, next)), {path: SUMMARIES, template: 'summaries', title: 'To send on', section: null, view, search: {kind: 'index', words: 'summaries summary season step send print letter phone stick'}}]
}
