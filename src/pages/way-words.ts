/** The shortest way to meet a requirement, in one sentence: what is wanting and when at the earliest it can be there. */
import type {Evidence} from '../findings/evidence.ts'
import type {Earliest, Way} from '../findings/ways.ts'
import type {Day} from '../records/dates.ts'
import {dateWords, dayWords} from './dates.ts'
import {bandsOf, someOf} from './evidence-of-work-words.ts'
import {charactersWords, pictureWords} from './evidence-on-paper-words.ts'
import {IN_PUBLIC, type Naming} from './naming.ts'
import {counted, countWord, figured, listWords} from './numbers.ts'
import {SECTION_WORDS} from './section-words.ts'
import {breedingWayWords} from './way-words-of-breeding.ts'

/** `Shortest way: two more seasons with a hatch, in 2027 at the earliest.` Empty where it is met, or nothing that could be recorded would meet it. */
export function waySentence({ways, requirement: {by}, beyond}: Pick<Evidence, 'ways' | 'requirement' | 'beyond'>, asOf: Day, naming: Naming = IN_PUBLIC): string {
  if (ways.length === 0) return ''
  const days = ways.map(({earliest}) => earliestWords(earliest, asOf)), [first = ''] = days, together = days.every(day => day === first)
  const said = ways.map((way, index) => `${wayWords(way, naming)}${together && ways.length > 1 ? '' : days[index] ?? ''}${reasonWords(way)}`)
  const after = beyond && by ? ` That is after ${dateWords(by)}, by when it must be reached.` : ''
  return `Shortest way: ${said.some(each => each.includes(',')) ? said.join('; ') : listWords(said)}${together && ways.length > 1 ? first : ''}.${after}`
}

/** `, in 2027 at the earliest`; nothing where it can be done on the book’s day, or nobody can say */
function earliestWords(earliest: Earliest | null, asOf: Day): string {
  if (earliest === null) return ''
  if (earliest.kind === 'season') return `, in ${earliest.season} at the earliest`
  return earliest.day <= asOf ? '' : `, on ${dayWords(earliest.day)} at the earliest`
}

/** Why, after the day on which it can be. */
const reasonWords = (way: Way): string => (way.kind === 'generations' && way.short.length > 0 ? `: ${bandsOf(way.short)} ${way.short.length === 1 ? 'falls' : 'fall'} short` : '')

function wayWords(way: Way, naming: Naming): string {
  switch (way.kind) {
    case 'seasons': return `${counted(way.more, 'more season')} with a hatch${way.inARow && way.more > 1 ? ', none missed' : ''}`
    case 'generations': return `${counted(way.more, 'more generation')} mated inside the breed`
    case 'show-these': return `show or breed from birds that have enough behind them, such as ${bandsOf(way.birds)}`
    case 'keepers': return keepersWay(way, naming)
    case 'keep': return keepWords(way)
    case 'show-birds': return `${counted(way.more, 'more bird')} shown as ${way.class} (${way.living === 0 ? 'none' : way.living} living could be)`
    case 'full-shows': return `${counted(way.more, 'show')} with ${countWord(way.each)} each of ${listWords(way.classes.map(each => each.class))} (living that could be: ${listWords(way.classes.map(each => `${each.class} ${each.living}`))})`
    case 'shows': return counted(way.more, 'more show')
    case 'judges': return counted(way.more, 'more judge')
    case 'show-years': return `${counted(way.more, 'more year')} with a show${way.more > 1 ? ', one after the other' : ''}`
    case 'large-shows': return `${counted(way.more, 'more show')} with ${listWords([...(way.birds === null ? [] : [counted(way.birds, 'bird')]), ...(way.keepers === null ? [] : [counted(way.keepers, 'keeper')])])}`
    case 'show-again': return way.earliest === null ? `ask from which day on shows count, for what was given to ${bandsOf(way.birds)} stays on record` : `wait until what was given to ${bandsOf(way.birds)} no longer counts`
    case 'name-grades': return 'write the judges’ grades under grades, from the least, and the least that will do as one of them'
    case 'write-results': return `write down the ${way.what} that the judge gave ${someOf(way.entries.map(({bird}) => bird.band))}`
    case 'paper': return paperWay(way, naming)
    case 'name-signers': return `write whose ${listWords(way.papers.map(({title, on}) => `${title} of ${dateWords(on)}`))} ${way.papers.length === 1 ? 'is' : 'are'}`
    case 'statement': return 'a paper that shows it, or your own statement'
    case 'write-sections': return `write ${listWords([...(way.missing.length === 0 ? [] : [`the section${way.missing.length === 1 ? '' : 's'} on ${listWords(way.missing.map(kind => SECTION_WORDS[kind]))}`]), ...way.empty.map(title => `something under ${title}`), ...(way.clauses.length === 0 ? [] : [`the clauses ${listWords(way.clauses)}`])])}`
    case 'fill-clauses': return `put words into ${listWords(way.clauses.map(({title}) => title))}`
    case 'mend-points': return `mend the scale of points, which makes ${way.have}, so that it makes 100`
    case 'first-draft': return 'write a first draft of the standard'
    case 'fill-cells': return `fill in ${charactersWords(way.characters)} beside ${way.breed}, ${way.characters.length > way.more ? `${countWord(way.more)} of which` : way.more === 1 ? 'which' : 'all of which'} must differ`
    case 'differ': return `${counted(way.more, 'more character')} that ${way.more === 1 ? 'differs' : 'differ'} from ${way.breed}${way.unfilled.length === 0 ? '' : `, and ${charactersWords(way.unfilled)} filled in and differing`}`
    case 'first-table': return 'fill in the table of distinctness, the neighbouring breeds beside this one'
    case 'photographs': return picturesWay(way)
    case 'date-photographs': return `write the date of the photographs of ${bandsOf(way.birds)}`
    case 'tell-varieties': return way.varieties.length > 0 ? `write under varieties by which looks ${listWords(way.varieties)} ${way.varieties.length === 1 ? 'is' : 'are'} told, and score ${bandsOf(way.birds)} for them` : `score ${bandsOf(way.birds)} for the looks of the varieties`
    case 'founders-and-steps': return listWords([...(way.founders ? ['record the founders'] : []), ...(way.unfounded.length === 0 ? [] : [`record the founders of ${listWords(way.unfounded.map(({name}) => name))}`]), ...(way.steps > 0 ? [`${counted(way.steps, 'more step')} with chicks`] : [])])
    case 'band': return `band ${figured(way.more, 'more bird')}`
    case 'parents': return `make certain who the parents are of ${figured(way.more, 'more bird')}, out of ${bandsOf(way.birds)}`
    case 'name-figure': return 'write in the requirement how much is asked'
    default: return breedingWayWords(way)
  }
}

type Of<Kind extends Way['kind']> = Extract<Way, {kind: Kind}>

function keepersWay({more, seasons, going}: Of<'keepers'>, naming: Naming): string {
  const began = going.map(({keeper, lacks}) => `${naming.keeper(keeper)}, who lacks ${counted(lacks, 'season')}`)
  return `${counted(more, 'more keeper')} with a hatch in ${seasons === 1 ? 'the season' : `each of ${countWord(seasons)} seasons`}${began.length === 0 ? '' : ` (${listWords(began)})`}`
}

function keepWords({males, females, either, spare}: Of<'keep'>): string {
  const more = [...(males > 0 ? [counted(males, 'more male')] : []), ...(females > 0 ? [counted(females, 'more female')] : []), ...(either > 0 ? [`${counted(either, 'more bird')} of either sex`] : [])]
  return `${listWords(more)} to breed from (living and not in a pen now: ${spare.males === 0 ? 'no males' : figured(spare.males, 'male')}, ${spare.females === 0 ? 'no females' : figured(spare.females, 'female')})`
}

function paperWay({more, instead, held, keepers}: Of<'paper'>, naming: Naming): string {
  if (keepers.length > 0) return `${counted(more, 'more signed paper')}, of ${listWords(keepers.map(naming.keeper), more < keepers.length ? 'or' : 'and')}`
  if (instead === null) return more === 1 ? 'a paper that holds' : `${countWord(more)} papers that hold`
  return `a new paper in place of that of ${dateWords(instead.on)}${held === null ? '' : `, which counted until ${dayWords(held)}`}`
}

function picturesWay({wanted, males, females, all}: Of<'photographs'>): string {
  const birds = [...(males > 0 ? [counted(males, 'more male')] : []), ...(females > 0 ? [counted(females, 'more female')] : [])]
  const none = wanted.filter(({living}) => living === 0), wait = none.length === 0 ? '' : none.length === wanted.length ? ` (none living)` : ` (none living of ${listWords(none.map(pictureWords))})`
  return [...(wanted.length === 0 ? [] : [`dated photograph${wanted.length === 1 ? '' : 's'} of ${listWords(wanted.map(pictureWords))}${wait}`]), ...(birds.length === 0 ? [] : [`photographs of ${listWords(birds)}`]), ...(all > 0 ? [counted(all, 'more photograph')] : [])].join('; ')
}
