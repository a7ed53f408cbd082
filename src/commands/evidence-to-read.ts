/** What is asked and what is there, as a reader on a terminal wants it: the states in a table, then each with its figures and the shortest way. The other formats have the records behind it. */
import type {Evidence} from '../findings/evidence.ts'
import {evidenceTable as whole} from '../findings/evidence-figures.ts'
import type {FiguresTable} from '../findings/figures.ts'
import type {Findings} from '../findings/study.ts'
import {dayWords} from '../pages/dates.ts'
import {fixedLines} from '../pages/evidence-of-genes-words.ts'
import {shownWords} from '../pages/evidence-words.ts'
import {waivedWords} from '../pages/waiver-words.ts'
import {waySentence} from '../pages/way-words.ts'
import type {ToRead} from './forecast-to-read.ts'

const STATES: Readonly<Record<Evidence['state'], string>> = {met: 'met', 'not-yet': 'not yet', 'cannot-tell': 'cannot be told', waived: 'waived'}

/** Every column, the way in words. */
export const evidenceTable = (findings: Findings): FiguresTable => whole(findings, item => waySentence(item, findings.book.asOf))

export function evidenceToRead({evidence: {items}, book}: Findings): ToRead {
  const names = ['requirement', 'state', 'latest record', 'asked']
  return {
    above: items.length === 0 ? '' : 'Nothing here is a real association’s rule: the requirements are your own records.\n\n',
    table: {columns: names.map(name => ({name, as: 'text'})), rows: items.map(({requirement, state, behind}) => [requirement.title, STATES[state], behind.on === null ? null : dayWords(behind.on), requirement.asked])},
    beneath: items.map(item => {
      const {requirement: {title}, shown} = item, waived = waivedWords(item, book), lines = shown.kind === 'fixed' ? fixedLines(shown) : [], way = waySentence(item, book.asOf)
      return `\n${title}: ${[...(waived === null ? [] : [waived]), shownWords(item, book), ...lines.map(line => `- ${line}`), ...(way === '' ? [] : [way])].join('\n  ')}\n`
    }).join(''),
  }
}
