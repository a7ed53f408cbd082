/** Evidence that the birds are true to type and even, in words: the share or spread, its interval, and what would change it. */
import type {Interval} from '../findings/estimate.ts'
import type {Shown} from '../findings/evidence-shown.ts'
import type {SpreadRow} from '../findings/spread.ts'
import type {TrueBredPart} from '../findings/true-bred-parts.ts'
import type {Logbook, Requirement} from '../logbook/book.ts'
import {FEWEST_FAMILIES} from '../statistics/family-bootstrap.ts'
import {cannotSay, shareInText} from './estimate-words.ts'
import {counted, countWord, limits, listWords, percentSign, sentence} from './numbers.ts'
import {flockWord} from './sex-words.ts'
import {ALL_THEY_COULD, onFewerWords} from './true-bred-words.ts'

/** `97 of 120 (80.8%, 72.9 to 86.9) showed every required trait that …, in 2024 and 2025, culls counted. By 6 sire families …` */
export function trueWords({seasons, rate, part, sure}: Extract<Shown, {kind: 'true-to-type'}>, {atLeast, interval}: Requirement): string {
  const when = listWords(seasons.map(String))
  if (rate.rate.kind === 'cannot-say') return `${sentence(cannotSay(rate.rate))} in ${when}.`
  const unsure = rate.partScored > 0 && !sure ? ` Were the ${rate.partScored} not fully scored to fail, it would be ${shareInText(rate.ifAllFail)}.` : ''
  const fewer = onFewerWords(rate), exact = interval === 'exact' && part.exact ? ` By Clopper and Pearson the interval is ${limits(part.exact)}.` : ''
  return `${shareInText(rate.rate)} showed ${ALL_THEY_COULD}, in ${when}, culls counted.${fewer === '' ? '' : ` ${fewer}`}${unsure} ${familyWords(part)}${exact}${atLeast === null ? '' : limitWords(part, rate.rate.interval, atLeast, interval)}`
}

function familyWords({family}: TrueBredPart): string {
  if (family?.kind === 'families') return `By ${family.families} sire families, as a committee should read it, the interval is ${limits(family)}.`
  return `They come of ${counted(family?.families ?? 0, 'sire family', 'sire families')}, so the interval speaks of these chicks only.`
}

/** What decides, and whether the lower limit reaches what is asked. */
function limitWords({family, exact}: TrueBredPart, plain: Interval, asked: number, interval: Requirement['interval']): string {
  if (interval === 'families' && family?.kind !== 'families') return ` The lower limit by families has to reach what is asked, and under ${countWord(FEWEST_FAMILIES)} families there is none.`
  const {low} = interval === 'exact' && exact ? exact : family?.kind === 'families' ? family : plain
  if (interval !== null) return ` The lower limit, ${percentSign(low)}, has to reach what is asked, and ${low >= asked ? 'does' : 'does not'}.`
  return ` The rate decides; the lower limit, ${percentSign(low)}, ${low >= asked ? 'reaches what is asked too' : 'does not reach what is asked'}.`
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
