/** Evidence of years, generations, people and stock, in words. */
import {leftOut, type Aged} from '../findings/evidence-found.ts'
import type {GenerationsOfBird, Shown} from '../findings/evidence-shown.ts'
import type {Bird, Logbook, Requirement} from '../logbook/book.ts'
import {sexesWords, yearsWords} from './count-words.ts'
import {dayWords} from './dates.ts'
import type {Naming} from './naming.ts'
import {counted, countWord, figured, listWords, sentence} from './numbers.ts'

type Of<Kind extends Shown['kind']> = Extract<Shown, {kind: Kind}>

/** Birds named in one sentence; the rest are counted. */
const MOST_NAMED = 5

/** `24-003, 24-010 and 4 more` */
export function someOf(names: readonly string[], most = MOST_NAMED): string {
  const some = names.slice(0, most), more = names.length - some.length
  return listWords([...some, ...(more > 0 ? [`${more} more`] : [])])
}

export const bandsOf = (birds: readonly Bird[]): string => someOf(birds.map(({band}) => band))

/** Birds of which the records do not tell whether the requirement is about them. */
export const untoldWords = (birds: number): string =>
  (birds === 0 ? '' : ` Of ${figured(birds, 'bird')} more the class, age or variety that is asked about is not on record.`)

/** The same of entries at shows. */
export const untoldEntries = (entries: number): string =>
  (entries === 0 ? '' : ` Of ${figured(entries, 'entry', 'entries')} more the class, age or variety that is asked about is not on record.`)

export function yearsBredWords({seasons, gaps, run, have, crossesOnly, beside}: Of<'years-bred'>, {inside}: Requirement): string {
  const besides = [...(crossesOnly.length === 0 ? [] : [`In ${yearsWords(crossesOnly)} nothing but crosses hatched${inside ? ', which do not count' : ''}.`]), ...besideWords(beside)]
  return [seasons.length === 0 ? `No season with a hatch${inside ? ' of a mating inside the breed' : ''} yet.` : seasonsWords({seasons, gaps, run, have}), ...besides].join(' ')
}

/** Test matings, and other crosses to birds from outside that the ladder does not name. */
const besideWords = (hatches: number): readonly string[] =>
  (hatches === 0 ? [] : [`${sentence(counted(hatches, 'hatch of a cross beside the ladder does', 'hatches of crosses beside the ladder do'))} not count.`])

function seasonsWords({seasons, gaps, run, have}: Pick<Of<'years-bred'>, 'seasons' | 'gaps' | 'run' | 'have'>): string {
  const said = `${sentence(counted(seasons.length, 'season'))}, ${yearsWords(seasons)}, ${gaps.length === 0 ? 'with hatches in each.' : `with no hatch in ${listWords(gaps.map(String))}.`}`
  if (have === seasons.length) return said
  return `${said} ${run.length === 0 ? 'None of them counts, since the last of these gaps none has followed.' : `Since the last gap ${counted(have, 'season')} ${have === 1 ? 'counts' : 'count'}.`}`
}

/** `Two at the least: of 14 birds shown in 2025 the fewest generations inside the breed stand behind 24-031, by 22-004, whose dam was H-3.` */
export function interSeWords({of, year, least, birds, short, untold}: Of<'inter-se-generations'>, aged: Aged): string {
  const who = of === 'shown' ? `${figured(birds.length, 'bird')} shown${year === null ? '' : ` in ${year}`}` : `${figured(birds.length, 'living breeder')}, as none ${leftOut(aged) > 0 ? 'that counts ' : ''}was shown`
  const most = Math.max(...birds.map(each => each.least)), rest = most === 0 ? '' : most === least ? ', and so has each' : `; the most are ${countWord(most)}`
  const [worst] = birds, chain = worst && worst.least > 0 ? ` ${chainWords(worst)}` : ''
  const doubt = short.filter(each => each.most > each.least)
  return [
    `${sentence(counted(least, 'generation'))} inside the breed at the least, of ${who}${rest}.${chain}`, ...(short.length === 0 || short.length === birds.length ? [] : [`Short of it: ${bandsOf(short.map(({bird}) => bird))}.`]),
    ...(doubt.length === 0 ? [] : [`${sentence(bandsOf(doubt.map(({bird}) => bird)))} may have more behind ${doubt.length === 1 ? 'it' : 'them'}, by who the parents are.`]),
  ].join(' ') + untoldWords(untold.length)
}

/** `The shortest way back to a bird from outside goes from 24-031 by 22-004 to H-3.` */
function chainWords({chain}: GenerationsOfBird): string {
  const [first, ...rest] = chain.map(({band}) => band), last = rest.pop()
  if (first === undefined || last === undefined) return ''
  return `The shortest way back goes from ${first}${rest.length === 0 ? '' : ` by ${rest.join(', ')}`} to ${last}.`
}

export function keepersWords({seasons, keepers, short, withoutConsent, withoutKeeper, beside}: Of<'independent-keepers'>, naming: Naming): string {
  const named = [...short.map(({keeper, lacks}) => `${naming.keeper(keeper)} had none in ${listWords(lacks.map(String))}`)]
  const more = [...(named.length === 0 ? [] : [`${sentence(someOf(named))}.`]), ...(withoutKeeper === 0 ? [] : [`Of ${counted(withoutKeeper, 'hatch', 'hatches')} of these seasons the keeper is not on record.`]), ...besideWords(beside)]
  if (keepers.length === 0) return [`No keeper has a hatch in ${seasons.length === 1 ? String(seasons[0]) : `each of ${listWords(seasons.map(String))}`}.`, ...more].join(' ')
  const toCommittee = naming.isConfidential ? ' to the committee' : '', unnamed = naming.isConfidential ? keepers.filter(keeper => !naming.isNamed(keeper)).length : withoutConsent
  const from = keepers.length === 1 ? 'this keeper' : unnamed === 0 ? 'all of these keepers' : `${countWord(unnamed)} of these keepers`
  const consent = `${unnamed === 0 ? 'Consent' : 'No consent'} to be named${toCommittee} is on record from ${unnamed > 1 && unnamed === keepers.length ? 'any of these keepers' : from}.`
  return [`${sentence(countWord(keepers.length))}: ${listWords(keepers.map(naming.keeper))}, with a hatch in ${listWords(seasons.map(String))}. ${consent}`, ...more].join(' ')
}

export const breedersWords = ({breeders, untold}: Of<'breeders-alive'>, {asOf}: Logbook): string => `${sentence(sexesWords(breeders))} on ${dayWords(asOf)}.${untoldWords(untold.length)}`
