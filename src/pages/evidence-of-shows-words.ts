/** Evidence of shows, in words: what stood where, under whom, and with what result. */
import type {Shown} from '../findings/evidence-shown.ts'
import type {Requirement} from '../logbook/book.ts'
import {yearsWords} from './count-words.ts'
import {dateWords} from './dates.ts'
import {bandsOf, untoldEntries, untoldWords} from './evidence-of-work-words.ts'
import {counted, countWord, figured, listWords, rounded, saying, sentence} from './numbers.ts'

type Of<Kind extends Shown['kind']> = Extract<Shown, {kind: Kind}>

/** Nothing that surely counts. */
const notShown = (untold: number): string => (untold === 0 ? 'Not shown yet.' : `Of ${figured(untold, 'entry', 'entries')} the class, age or variety that is asked about is not on record; nothing else was shown yet.`)

/** `Cock 2, cockerel 5, hen 1, pullet 7. Short of it: hen.` */
export function classWords({classes, atOne, untold}: Of<'shown-per-class'>, {perClass, atLeast}: Requirement): string {
  const asked = perClass ?? atLeast, short = asked === null ? [] : classes.filter(({birds}) => birds < asked).map(({class: name}) => name)
  const where = atOne === null ? '' : atOne.show === null ? ' at any show' : ` at ${atOne.show.name}, the best of the shows`
  const many = atOne === null || atOne.show === null ? '' : ` ${atOne.enough === 0 ? 'No show has' : atOne.enough === 1 ? 'One show has' : `${sentence(countWord(atOne.enough))} shows have`} as many in each.`
  return `${sentence(classes.map(({class: name, birds}) => `${name} ${birds}`).join(', '))}${where}.${short.length === 0 ? '' : ` Short of it: ${listWords(short)}.`}${many}${untoldWords(untold)}`
}

export function showsWords({shows, judges, unjudged, years, untold}: Of<'shows-and-judges'>): string {
  const say = saying(shows, judges.length)
  if (shows === 0) return notShown(untold)
  return `${sentence(say(shows, 'show'))} under ${say(judges.length, 'judge')}, ${yearsWords(years)}.${unjudged === 0 ? '' : ` Of ${counted(unjudged, 'show')} no judge is on record.`}${untoldEntries(untold)}`
}

export function resultWords({entries, disqualified, firsts, awards, leastPoints, below, unwritten, unplaced, worstGrade, untold}: Of<'show-result'>, {leastGrade, atLeast}: Requirement): string {
  const points = leastPoints === null ? (atLeast === null ? [] : ['no points on record']) : [`the least points ${rounded(leastPoints, 1).replace(/\.0$/, '')}`]
  const grade = leastGrade === null ? [] : [worstGrade === null ? 'no grade on record' : `the least grade ${worstGrade}`]
  return [
    `${figured(entries, 'entry', 'entries')}, ${disqualified === 0 ? 'none' : disqualified} disqualified; ${figured(firsts, 'first')}, ${figured(awards, 'award')}${[...points, ...grade].map(words => `; ${words}`).join('')}.`,
    ...(below.length === 0 ? [] : [`In the way: ${bandsOf(below)}.`]),
    ...(unplaced.length === 0 ? [] : [`Graded with a word that is not among those named: ${listWords(unplaced.map(({bird, grade}) => `${bird.band}, “${grade}”`))}.`]),
    ...(unwritten === unplaced.length ? [] : [`Of ${counted(unwritten - unplaced.length, 'entry', 'entries')} ${leastGrade === null ? 'no points are' : atLeast === null ? 'no grade of those asked about is' : 'points or a grade are not'} on record.`]),
  ].join(' ') + untoldEntries(untold)
}

export function yearsShownWords({years, cancelledYears, longestRun, longest, current, untold}: Of<'consecutive-shows'>): string {
  if (years.length === 0) return notShown(untold)
  const cancelled = cancelledYears.length === 0 ? '' : ` The shows of ${listWords(cancelledYears.map(String))} were officially cancelled, which breaks no run and adds nothing to it.`
  const goesOn = current.length === longestRun ? '' : current.length === 0 ? ' No run goes on.' : ` The run that goes on is ${counted(current.length, 'year')}.`
  return `Shown in ${listWords(years.map(String))}; the longest run is ${counted(longestRun, 'year')}${longest.length > 1 ? `, ${yearsWords(longest)}` : ''}.${goesOn}${cancelled}${untoldEntries(untold)}`
}

export function birdsPerShowWords({shows, enough, untold}: Of<'birds-per-show'>): string {
  const [first] = shows
  if (!first) return notShown(untold)
  const most = shows.reduce((best, each) => (each.birds > best.birds ? each : best), first), unknown = most.withoutKeeper === 0 ? '' : `; whose ${countWord(most.withoutKeeper)} of them ${most.withoutKeeper === 1 ? 'was' : 'were'} is not on record`
  return `${enough === 0 ? `None of ${counted(shows.length, 'show')} had` : `${sentence(countWord(enough))} of ${counted(shows.length, 'show')} had`} as many; the most were ${counted(most.birds, 'bird')} of ${counted(most.keepers, 'keeper')}, at ${most.show.name} of ${dateWords(most.show.on)}${unknown}.${untoldEntries(untold)}`
}
