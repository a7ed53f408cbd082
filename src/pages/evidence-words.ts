/** What the records show for a requirement, in a sentence with its numbers, and the page where they stand. */
import type {Evidence} from '../findings/evidence.ts'
import type {Shown} from '../findings/evidence-shown.ts'
import type {Logbook, Requirement} from '../logbook/book.ts'
import {sexesWords, yearsWords} from './count-words.ts'
import {dateWords, dayWords} from './dates.ts'
import {fixedWords, inbreedingWords} from './evidence-of-descent-words.ts'
import {evenWords, trueWords} from './evidence-of-type-words.ts'
import {shareInText} from './estimate-words.ts'
import {BIRDS, HATCHES, KEEPERS, LADDER, SHOWS, STANDARD, stepPath, traitPath, TRAITS} from './links.ts'
import {IN_PUBLIC, type Naming} from './naming.ts'
import {counted, countWord, figured, listWords, rounded, saying, sentence} from './numbers.ts'

type Of<Kind extends Shown['kind']> = Extract<Shown, {kind: Kind}>

const yearsBred = ({seasons, gaps}: Of<'years-bred'>): string => (seasons.length === 0 ? 'No season with a hatch yet.'
  : `${sentence(counted(seasons.length, 'season'))}, ${yearsWords(seasons)}, ${gaps.length === 0 ? 'with hatches in each.' : `with no hatch in ${listWords(gaps.map(String))}.`}`)

const interSe = ({most, steps}: Of<'inter-se-generations'>): string =>
  (most === 0 ? 'None yet: nothing has hatched from matings inside the breed.' : `${sentence(countWord(most))}: ${listWords(steps)}.`)

function keepersWords({seasons, keepers, withoutConsent}: Of<'independent-keepers'>, naming: Naming): string {
  if (keepers.length === 0) return 'No keeper has a hatch in each of the seasons asked for.'
  const toCommittee = naming.isConfidential ? ' to the committee' : '', unnamed = naming.isConfidential ? keepers.filter(keeper => !naming.isNamed(keeper)).length : withoutConsent
  const consent = unnamed === 0 ? `Consent to be named${toCommittee} is on record from all.` : `No consent to be named${toCommittee} is on record from ${counted(unnamed, 'keeper')}.`
  return `${sentence(countWord(keepers.length))}: ${listWords(keepers.map(naming.keeper))}, with a hatch in ${listWords(seasons.map(String))}. ${consent}`
}

function classWords({classes}: Of<'shown-per-class'>, {perClass, atLeast}: Requirement): string {
  const asked = perClass ?? atLeast
  const short = asked === null ? [] : classes.filter(({birds}) => birds < asked).map(({class: name}) => name)
  const said = sentence(classes.map(({class: name, birds}) => `${name} ${birds}`).join(', '))
  return `${said}.${short.length === 0 ? '' : ` Short of it: ${listWords(short)}.`}`
}

function showsWords({shows, judges, years}: Of<'shows-and-judges'>): string {
  const say = saying(shows, judges.length)
  return shows === 0 ? 'Not shown yet.' : `${sentence(say(shows, 'show'))} under ${say(judges.length, 'judge')}, ${yearsWords(years)}.`
}

function resultWords({entries, disqualified, firsts, awards, leastPoints}: Of<'show-result'>): string {
  const points = leastPoints === null ? 'no points on record' : `the least points ${rounded(leastPoints, 1).replace(/\.0$/, '')}`
  return `${figured(entries, 'entry', 'entries')}, ${disqualified === 0 ? 'none' : disqualified} disqualified; ${figured(firsts, 'first')}, ${figured(awards, 'award')}; ${points}.`
}

function standardWords({draft, clauses, emptySections, points}: Of<'written-standard'>): string {
  const empty = emptySections.length === 0 ? 'every section filled' : `nothing yet under ${listWords(emptySections)}`
  return `Draft ${draft}, ${figured(clauses, 'clause')}, ${empty}, ${figured(points, 'point')}.`
}

function distinctWords({breeds}: Of<'distinct'>): string {
  const say = saying(...breeds.map(({differing}) => differing.length))
  return `${sentence(breeds.map(({breed, differing}) =>
    `from ${breed} in ${say(differing.length, 'character')}${differing.length === 0 ? '' : ` (${listWords(differing.map(each => each.toLowerCase()))})`}`).join('; '))}.`
}

const historyWords = ({founders, steps, hatched}: Of<'history'>): string =>
  `Founders: ${listWords(founders.map(({strain, birds}) => `${birds} ${strain.name}`)) || 'none on record'}; ${figured(steps, 'step')}, ${figured(hatched, 'chick')} hatched.`

const photoWords = ({birds, photos, dated}: Of<'photographs'>): string => (photos === 0 ? 'No photograph of a bird of the breed.'
  : `${figured(photos, 'photograph')} of ${figured(birds.all, 'bird')}: ${sexesWords(birds)}; ${dated === photos ? 'all' : dated} dated to the day.`)

function paperWords({papers, valid}: Of<'papers'>): string {
  const last = papers.at(-1)
  if (!last) return 'No paper on record.'
  const told = valid.length > 0 ? valid : [last]
  const words = told.map(({title, on, until}) => `${title}, ${dateWords(on)}${until ? `, holds until ${dateWords(until)}` : ''}`).join('; ')
  return valid.length > 0 ? `${words}.` : `${words.replace('holds until', 'held until')}. None holds now.`
}

function identityWords({banded, bothParents, uncertain}: Of<'identity'>): string {
  const birds = uncertain.slice(0, 6).map(({band}) => band), more = uncertain.length - birds.length
  const who = uncertain.length === 0 ? '' : ` A parent is uncertain of ${listWords([...birds, ...(more > 0 ? [`${more} more`] : [])])}.`
  return `Of the living, banded ${shareInText(banded)}; both parents certain ${shareInText(bothParents)}.${who}`
}

function yearsShownWords({years, cancelledYears, longestRun}: Of<'consecutive-shows'>): string {
  if (years.length === 0) return 'Not shown yet.'
  const cancelled = cancelledYears.length === 0 ? '' : ` All shows of ${listWords(cancelledYears.map(String))} were officially cancelled.`
  return `Shown in ${listWords(years.map(String))}; the longest run is ${counted(longestRun, 'year')}.${cancelled}`
}

function birdsPerShowWords({shows, enough}: Of<'birds-per-show'>): string {
  if (shows.length === 0) return 'Not shown yet.'
  const most = shows.reduce((best, each) => (each.birds > best.birds ? each : best))
  return `${sentence(counted(enough, 'show'))} of ${shows.length} with as many; the most were ${counted(most.birds, 'bird')} of ${counted(most.keepers, 'keeper')}, at ${most.show.name}.`
}

/** The sentence alone. */
export function shownWords({requirement, shown}: Evidence, book: Logbook, naming: Naming = IN_PUBLIC): string {
  switch (shown.kind) {
    case 'years-bred': return yearsBred(shown)
    case 'inter-se-generations': return interSe(shown)
    case 'independent-keepers': return keepersWords(shown, naming)
    case 'breeders-alive': return `${sentence(sexesWords(shown.breeders))} on ${dayWords(book.asOf)}.`
    case 'shown-per-class': return classWords(shown, requirement)
    case 'shows-and-judges': return showsWords(shown)
    case 'show-result': return resultWords(shown)
    case 'true-to-type': return trueWords(shown, requirement)
    case 'even-weight': return evenWords(shown, requirement, book)
    case 'written-standard': return standardWords(shown)
    case 'distinct': return distinctWords(shown)
    case 'history': return historyWords(shown)
    case 'photographs': return photoWords(shown)
    case 'papers': return paperWords(shown)
    case 'stated': return `The keeper states: ${shown.stated}`
    case 'identity': return identityWords(shown)
    case 'consecutive-shows': return yearsShownWords(shown)
    case 'birds-per-show': return birdsPerShowWords(shown)
    case 'fixed': return fixedWords(shown)
    case 'inbreeding': return inbreedingWords(shown)
    case 'nothing-recorded': return 'The records hold nothing on it.'
  }
}

/** Where the numbers stand: a page of the site, or a place in the dossier itself. */
export function whereShown(shown: Shown): {readonly text: string; readonly link: string} | null {
  switch (shown.kind) {
    case 'years-bred': return {text: 'Hatches', link: HATCHES}
    case 'inter-se-generations': case 'true-to-type': return {text: 'Ladder', link: LADDER}
    case 'independent-keepers': return {text: 'Keepers', link: KEEPERS}
    case 'breeders-alive': case 'identity': case 'inbreeding': return {text: 'Birds', link: BIRDS}
    case 'shown-per-class': case 'shows-and-judges': case 'show-result': case 'consecutive-shows': case 'birds-per-show': return {text: 'Shows', link: SHOWS}
    case 'even-weight': return {text: `Step ${shown.step}`, link: stepPath(shown.step)}
    case 'written-standard': return {text: 'Standard', link: STANDARD}
    case 'distinct': return {text: 'Distinctness, below', link: '#distinctness'}
    case 'history': return {text: 'History, below', link: '#history'}
    case 'papers': return {text: 'Papers, below', link: '#papers'}
    case 'fixed': return shown.trait === null ? {text: 'Traits', link: TRAITS} : {text: shown.trait.name, link: shown.loci.length === 0 ? traitPath(shown.trait) : `${traitPath(shown.trait)}#may-hide`}
    case 'photographs': case 'stated': case 'nothing-recorded': return null
  }
}
