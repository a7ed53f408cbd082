/** Evidence that the birds are true to type and even, in words: the share or spread, its interval, and what would change it. */
import type {Interval} from '../findings/estimate.ts'
import {valueOf} from '../findings/evidence-of-type.ts'
import type {ShownEven, ShownOfType} from '../findings/shown-of-breeding.ts'
import {LEAST_IN_CLASS, type SpreadRow} from '../findings/spread.ts'
import type {TrueBredPart} from '../findings/true-bred-parts.ts'
import type {Logbook, Requirement, Trait} from '../logbook/book.ts'
import {FEWEST_FAMILIES} from '../statistics/family-bootstrap.ts'
import {cannotSay, leftOutWords, shareInText} from './estimate-words.ts'
import {untoldWords} from './evidence-of-work-words.ts'
import {counted, countWord, figured, limits, listWords, percentSign, sentence} from './numbers.ts'
import {flockWord} from './sex-words.ts'

/** `97 of 120 (80.8%, 72.9 to 86.9) showed every required trait of their sex, in 2024 and 2025, culls counted. By 6 sire families …` */
export function trueWords(shown: ShownOfType, {atLeast}: Requirement): string {
  const {seasons, rate, part, sure, decidedBy, ifFail} = shown, when = listWords(seasons.map(String)), apart = rate.rate.leftOut.filter(({why}) => why !== 'unscored')
  const aside = [apart.length === 0 ? '' : `Apart: ${leftOutWords(apart)}.`, lookWords(shown)].filter(words => words !== '').join(' ')
  if (rate.rate.kind === 'cannot-say') return `${sentence(cannotSay(rate.rate))} in ${when}${rate.partScored > 0 ? `; ${figured(rate.partScored, 'chick')} not fully scored` : ''}${shown.open.culled > 0 ? `; ${figured(shown.open.culled, 'chick')} culled before ${shown.open.culled === 1 ? 'it' : 'they'} could be judged` : ''}. ${aside}`.trim()
  const rest = restWords(shown), unsure = rest === '' ? '' : !sure ? `Were ${rest} to fail, it would be ${shareInText(ifFail.share)}.` : atLeast !== null ? `It would still be reached if ${rest} failed.` : ''
  const exact = decidedBy === 'exact' && part.exact ? `By Clopper and Pearson the interval is ${limits(part.exact)}.` : ''
  return [`${shareInText(rate.rate)} showed ${whatWords(shown)}, in ${when}, culls counted.`, unsure, aside, familyWords(part), exact, atLeast === null ? '' : limitWords(shown, rate.rate.interval, atLeast)].filter(words => words !== '').join(' ')
}

/** `the 23 not fully scored, the 5 culled before they could be and the one that nobody listed`; empty where there is none */
function restWords({open: {scored, culled, unlisted}}: ShownOfType): string {
  const number = (count: number): string => (count === 1 ? 'one' : String(count))
  return listWords([
    ...(scored === 0 ? [] : [`the ${number(scored)} not fully scored`]), ...(culled === 0 ? [] : [`the ${number(culled)} culled before ${culled === 1 ? 'it' : 'they'} could be judged`]),
    ...(unlisted === 0 ? [] : [`the ${number(unlisted)} that nobody listed`]),
  ])
}

const whatWords = ({by, looks}: ShownOfType): string => (by === 'required' ? `every required trait of their sex (${looksList(looks)})`
  : by === 'mandatory' ? `all that the mandatory clauses ask of their sex (${looksList(looks)})` : `all that is asked of their sex (${looksList(looks)})`)

/** The traits, each once: many a clause is headed by nothing but the sex that it speaks of. */
const looksList = (looks: readonly {readonly trait: Trait}[]): string => listWords([...new Set(looks.map(nameOf))])
export const nameOf = ({trait}: {readonly trait: Trait}): string => trait.name.toLowerCase()

/** Whom nobody scored, who was scored by other words, what is only tolerated, and what could not be held against anybody. */
function lookWords({by, looks, untold}: ShownOfType): string {
  const nobody = looks.filter(({scored}) => scored === 0), other = looks.filter(({otherWords}) => otherWords > 0), tolerated = looks.filter(look => look.tolerated)
  return [
    ...(nobody.length === 0 ? [] : [`Nobody was scored for ${looksList(nobody)}.`]),
    ...(other.length === 0 ? [] : [`Scored only while the clause read otherwise, which does not count: ${other.map(look => `${nameOf(look)} ${look.otherWords} of ${look.scored}`).join(', ')}.`]),
    ...(tolerated.length === 0 ? [] : [`What is only accepted for a time in ${looksList(tolerated)} does not count as meeting it.`]),
    ...(untold.length === 0 ? [] : [by === 'clauses' ? `Nothing can be held against chicks for ${listWords(untold)}.` : `${sentence(counted(untold.length, 'mandatory clause'))} ${untold.length === 1 ? 'has' : 'have'} no trait that chicks could be scored for, and ${untold.length === 1 ? 'is' : 'are'} not in it.`]),
  ].join(' ')
}

function familyWords({family}: TrueBredPart): string {
  if (family?.kind === 'families') return `By ${family.families} sire families, as a committee should read it, the interval is ${limits(family)}.`
  return `They come of ${counted(family?.families ?? 0, 'sire family', 'sire families')}, so the interval speaks of these chicks only.`
}

/** What decides, and whether the lower limit reaches what is asked. */
function limitWords(shown: ShownOfType, plain: Interval, asked: number): string {
  const {part, ifFail, decidedBy: by} = shown, {family} = part
  if (by === 'families' && family?.kind !== 'families') return `The lower limit by families has to reach what is asked, and under ${countWord(FEWEST_FAMILIES)} families there is none.`
  const low = by === 'estimate' ? (family?.kind === 'families' ? family.low : plain.low) : valueOf(part, by) ?? 0
  if (by === 'estimate') return `The rate decides; the lower limit, ${percentSign(low)}, ${low >= asked ? 'reaches what is asked too' : 'does not reach what is asked'}.`
  const worse = valueOf(ifFail, by) ?? 0, unscored = low >= asked && worse < asked ? ` Were ${restWords(shown)} to fail, it would be ${percentSign(worse)}, and would not.` : ''
  return `The lower limit, ${percentSign(low)}, has to reach what is asked, and ${low >= asked ? 'does' : 'does not'}.${unscored}`
}

function rowWords({sex, trait, spread, values}: SpreadRow, asked: Requirement, shown: ShownEven, book: Logbook): string {
  const who = sex === 'all' ? 'all' : flockWord(sex, book.project.species, trait.atAge), within = shown.inside.find(each => each.trait === trait && each.sex === sex)
  const share = within?.share.kind === 'share' ? within.share : null, inside = within ? `, inside the target ${share ? shareInText(share) : 'no target with a tolerance to hold them against'}` : ''
  if (spread.kind === 'cannot-say') return `${who} ${cannotSay(spread)}${inside}`
  const tenth = asked.atLeast === null ? '' : `, within a tenth ${shareInText(spread.within10)}`, rest = values.length - spread.n
  const few = rest === 0 ? '' : `; ${figured(rest, 'bird')} ${rest === 1 ? 'was' : 'were'} reared with so few of ${rest === 1 ? 'its' : 'their'} sex, under ${countWord(LEAST_IN_CLASS)}, that no spread can be told of ${rest === 1 ? 'it' : 'them'}${share && share.total > spread.n ? `, but ${rest === 1 ? 'is' : 'are'} held against the target` : ''}`
  return `${who} ${percentSign(spread.cv)}${spread.cvInterval ? ` (${limits(spread.cvInterval)})` : ''} of ${spread.n}${tenth}${inside}${few}`
}

/** `Weight at 20 weeks, CV: cockerels 8.6% (6.8 to 11.8) of 27, …` */
export function evenWords(shown: ShownEven, asked: Requirement, book: Logbook): string {
  const {step, rows, missing, unknownClasses, untoldClauses, untold, decidedBy, parts} = shown, traits = [...new Set(rows.map(({trait}) => trait))]
  const said = traits.map(trait => `${trait.name}, CV: ${rows.filter(row => row.trait === trait).map(row => rowWords(row, asked, shown, book)).join('; ')}.`)
  const lacking = missing.map(({trait, sex}) => `No ${flockWord(sex, book.project.species, trait.atAge)} of it were ${trait.measure === null ? 'measured' : 'weighed'} for ${trait.name.toLowerCase()}.`)
  const unknown = unknownClasses.length === 0 ? [] : [`Which birds stand in ${listWords(unknownClasses.map(name => `“${name}”`))} is not known.`]
  const clauses = untoldClauses.length === 0 ? [] : [`Nothing measured can be held against birds for ${listWords(untoldClauses)}.`]
  return [...said, `Step ${step}.`, ...lacking, ...unknown, ...clauses, ...(decidedBy === 'cautious' && parts.length > 0 ? [cautiousWords(shown, book)] : pastWords(shown))].join(' ') + untoldWords(untold)
}

/** `The end of each interval by sire families that speaks against the breed decides: cockerels, CV 14.1% at the most (by 6 sire families). It cannot be told of pullets (3 sire families): …` */
function cautiousWords({parts}: ShownEven, book: Logbook): string {
  const several = new Set(parts.map(({trait}) => trait)).size > 1
  const said = parts.flatMap(({of, trait, sex, have, judged: end, families}) => (have === null || families === null ? []
    : [{end, of, who: `${flockWord(sex, book.project.species, trait.atAge)}${several ? ` in ${trait.name.toLowerCase()}` : ''}`, by: figured(families.count, 'sire family', 'sire families')}]))
  const told = said.flatMap(({end, of, who, by}) => (end === null ? [] : [`${who}, ${EVEN_FIGURES[of]} ${percentSign(end)} at the ${of === 'cv' ? 'most' : 'least'} (by ${by})`]))
  const untold = said.filter(({end}) => end === null), whom = [...new Set(untold.map(({who}) => who))].map(who => `${who} (${untold.findLast(each => each.who === who)?.by ?? ''})`)
  const why = untold.length === 0 ? '' : ` It cannot be told of ${listWords(whom)}: brothers and sisters are alike, and only ${countWord(FEWEST_FAMILIES)} families or more, reared together, tell what that leaves open.`
  return `The end of each interval by sire families that speaks against the breed decides${told.length === 0 ? '' : `: ${told.join('; ')}`}.${why}`
}

const EVEN_FIGURES = {'cv': 'CV', 'within-tenth': 'within a tenth', 'inside': 'inside the target'} as const

/** Where the figure decides: how many intervals reach past the mark all the same. */
function pastWords({parts}: ShownEven): readonly string[] {
  const past = parts.filter(({of, met, mark, interval}) => met === true && (interval === null || (of === 'cv' ? interval.high > mark : interval.low < mark)))
  return past.length === 0 ? [] : past.length === 1 ? ['The interval of one reaches past what is asked.'] : [`The intervals of ${counted(past.length, 'figure')} reach past what is asked.`]
}
