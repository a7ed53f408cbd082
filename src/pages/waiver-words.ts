import type {Evidence} from '../findings/evidence.ts'
import type {Logbook} from '../logbook/book.ts'
import {dateWords, dayWords} from './dates.ts'
import {listWords} from './numbers.ts'

/** `Waived by the secretary until 31 December 2026: all gatherings were forbidden. On paper: …`; of one that has run out that it held. Null where nothing was waived. */
export function waivedWords({requirement: {waived, kind}, lapsed}: Evidence, {requirements}: Logbook): string | null {
  if (waived === null) return null
  const papers = (requirements?.papers ?? []).filter(({proves}) => proves === kind).map(({title, on}) => `${title}, ${dateWords(on)}`), shown = papers.length === 0 ? '' : ` On paper: ${listWords(papers)}.`
  const by = waived.by === null ? '' : ` by ${waived.by}`, because = waived.because.replace(/[.]$/, '')
  if (lapsed) return `A waiver${by} held until ${waived.until ? dayWords(waived.until.last) : 'a day that is past'}: ${because}.${shown}`
  return `Waived${by}${waived.until ? ` until ${dayWords(waived.until.last)}` : ''}: ${because}.${shown}`
}
