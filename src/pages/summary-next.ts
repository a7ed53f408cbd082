/** What to do next, as the findings have it: what is due, who stands in the way, which male into which pen, what else would tell. Only of the latest season and step. */
import {malesPlaced} from '../findings/males-placed.ts'
import type {Findings} from '../findings/study.ts'
import {nextSeasonWords} from './choosing-words.ts'
import {homeFixation} from './home-fixation.ts'
import {malesAnswer} from './males-answer.ts'
import {counted, listWords, sentence} from './numbers.ts'
import {remedyLine, strongerWords} from './one-more-male-words.ts'
import {comingWords} from './upcoming-words.ts'

export interface ToDo {
  readonly head: string
  readonly text: string
}

/** Things due that are named, and pens. */
const DUE = 5, PENS = 6

function due({upcoming, book}: Findings): readonly ToDo[] {
  const all = upcoming.map(entry => comingWords(entry, book.asOf)), rest = all.length - DUE
  if (all.length === 0) return []
  return [{head: 'Due.', text: `${all.slice(0, DUE).map(({when, title, text}) => `${title}, ${when}: ${text}`).join(' ')}${rest > 0 ? ` ${sentence(counted(rest, 'thing'))} more later.` : ''}`}]
}

function pens({pairings, pairReason, pairHarm}: Findings): readonly ToDo[] {
  if (pairings.males.length === 0 || pairings.pens.length === 0) return []
  const answer = malesAnswer(malesPlaced(pairings), pairReason, pairings.chicksOf, pairHarm)
  return answer.pens.slice(0, PENS).map(({title, words, avoid}) => ({head: `${title}.`, text: `${words}${avoid === '' ? '' : ` Avoid: ${avoid}`}`}))
}

function hidden(findings: Findings): readonly ToDo[] {
  const found = homeFixation(findings)
  if (found === null) return []
  const birds = found.inTheWay.map(({head, birds: own}) => `${head}: ${listWords(own.map(({text, says}) => `${text} (${says})`))}`)
  return [
    {head: 'Hidden in the breeders.', text: `${found.words}${found.warning === '' ? '' : ` ${found.warning}`}`},
    ...(birds.length === 0 ? [] : [{head: 'Test, or leave out.', text: `${birds.join('; ')}.`}]), ...(found.doubts ? [{head: 'In doubt.', text: `${found.doubts.text}: see who was in the pen, and look at the birds again.`}] : []),
  ]
}

export function toDo(findings: Findings): readonly ToDo[] {
  const remedy = remedyLine(findings.ratePassed, findings.oneMoreMale, strongerWords(findings)), tell = nextSeasonWords(findings)
  return [...due(findings), ...hidden(findings), ...(remedy === null ? [] : [{head: 'Closeness.', text: remedy}]), ...pens(findings), ...(tell === '' ? [] : [{head: 'To find out what choosing did.', text: tell}])]
}
