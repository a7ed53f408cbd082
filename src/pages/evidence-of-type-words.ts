/** Evidence that the birds are true to type and even, in words: the share or spread, its interval, and what would change it. */
import type {Shown} from '../findings/evidence-shown.ts'
import type {SpreadRow} from '../findings/spread.ts'
import type {Logbook, Requirement} from '../logbook/book.ts'
import {cannotSay, shareInText} from './estimate-words.ts'
import {counted, limits, listWords, percentSign, sentence} from './numbers.ts'
import {flockWord} from './sex-words.ts'
import {ALL_THEY_COULD, onFewerWords} from './true-bred-words.ts'

/** `59 of 62 (95.2%, 86.7 to 98.3) showed every required trait that …, in 2025, culls counted.` */
export function trueWords({seasons, rate, sure}: Extract<Shown, {kind: 'true-to-type'}>): string {
  const when = listWords(seasons.map(String))
  if (rate.rate.kind === 'cannot-say') return `${sentence(cannotSay(rate.rate))} in ${when}.`
  const unsure = rate.partScored > 0 && !sure ? ` Were the ${rate.partScored} not fully scored to fail, it would be ${shareInText(rate.ifAllFail)}.` : ''
  const few = rate.sires < 5 ? ` They come from ${counted(rate.sires, 'sire')}, so the interval speaks of these chicks only.` : ''
  const fewer = onFewerWords(rate)
  return `${shareInText(rate.rate)} showed ${ALL_THEY_COULD}, in ${when}, culls counted.${fewer === '' ? '' : ` ${fewer}`}${unsure}${few}`
}

function rowWords({sex, trait, spread}: SpreadRow, asked: Requirement, book: Logbook): string {
  const who = sex === 'all' ? 'all' : flockWord(sex, book.project.species, trait.atAge)
  if (spread.kind === 'cannot-say') return `${who} ${cannotSay(spread)}`
  const within = asked.atLeast === null ? '' : `, within a tenth ${shareInText(spread.within10)}`
  return `${who} ${percentSign(spread.cv)}${spread.cvInterval ? ` (${limits(spread.cvInterval)})` : ''} of ${spread.n}${within}`
}

/** `Weight at 20 weeks in BC3F3, CV: cockerels 8.6% (6.8 to 11.8) of 27, …` */
export function evenWords({step, rows}: Extract<Shown, {kind: 'even-weight'}>, asked: Requirement, book: Logbook): string {
  const traits = [...new Set(rows.map(({trait}) => trait))]
  const said = traits.map(trait => `${trait.name}, CV: ${rows.filter(row => row.trait === trait).map(row => rowWords(row, asked, book)).join('; ')}.`)
  const {atMost} = asked
  const past = atMost === null ? [] : rows.filter(({spread}) => spread.kind === 'spread' && spread.cv <= atMost && (spread.cvInterval === null || spread.cvInterval.high > atMost))
  const reach = past.length === 0 ? '' : past.length === 1 ? ' The interval of one reaches past what is asked.' : ` The intervals of ${counted(past.length, 'class', 'classes')} reach past what is asked.`
  return `${said.join(' ')} Step ${step}.${reach}`
}
