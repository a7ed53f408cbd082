/** Evidence of what was shown, under whom, and with what result. */
import type {Bird, Requirement} from '../logbook/book.ts'
import {yearOf} from '../records/dates.ts'
import {CLASS_WORDS, classOf, standsIn} from './asked-about.ts'
import {allOf, judged, judgedWith, nothing, type Finding} from './evidence-found.ts'
import {behindEntries, entriesAsked, standing} from './evidence-of-entries.ts'
import type {ClassShown, Sources} from './evidence-shown.ts'
import {inSeason, nextSeason, onDay, yearsInOrder} from './next-season.ts'
import {sameName} from './same-name.ts'
import type {ShowResult} from './show-results.ts'
import type {Earliest, Way} from './ways.ts'

const birdsOf = (entries: readonly ShowResult[]): readonly Bird[] => [...new Set(entries.map(({entry}) => entry.bird))]

/** By show, oldest first. */
export const byShow = (entries: readonly ShowResult[]): readonly (readonly ShowResult[])[] =>
  [...new Set(entries.map(({show}) => show))].map(show => entries.filter(each => each.show === show))

/**
 * How many different birds stood in each class? The classes are those named, else those the latest draft gives weights for, else cock, cockerel, hen, pullet. Over all shows together, or with `shows`
 * at so many single shows; then those of the best of them stand there. Disqualified entries do not count.
 */
export function shownPerClass(asked: Requirement, from: Sources): Finding {
  const {entries, untold, aged} = entriesAsked(asked, from, []), {drafts} = from.book, least = asked.perClass ?? asked.atLeast
  const weights = drafts.at(-1)?.weights.map(weight => weight.class) ?? [], names = asked.classes.length > 0 ? asked.classes : weights.length > 0 ? weights : CLASS_WORDS
  const counting = standing(entries)
  const unsure = new Set([...standing(untold), ...counting.filter(({show, entry}) => names.every(name => standsIn(name, entry.class, entry.bird, show.on.first) !== true) && names.some(name => standsIn(name, entry.class, entry.bird, show.on.first) === null))])
  const ofClass = (name: string, among: readonly ShowResult[]): readonly ShowResult[] => among.filter(({show, entry}) => standsIn(name, entry.class, entry.bird, show.on.first) === true)
  const classesOf = (among: readonly ShowResult[]): readonly ClassShown[] => names.map(name => {
    const birds = birdsOf(ofClass(name, among))
    return {class: name, birds: birds.length, shown: birds}
  })
  const wanting = (classes: readonly ClassShown[]): number => classes.reduce((sum, {birds}) => sum + Math.max(0, (least ?? 0) - birds), 0)
  const each = byShow(counting).map(among => ({show: among[0]?.show ?? null, classes: classesOf(among)}))
  const enough = each.filter(({classes}) => wanting(classes) === 0).length
  const best = each.reduce<(typeof each)[number] | null>((found, one) => (found === null || wanting(one.classes) <= wanting(found.classes) ? one : found), null)
  const atOne = asked.shows !== null, classes = atOne ? best?.classes ?? classesOf([]) : classesOf(counting), met = least === null ? null : atOne ? enough >= (asked.shows ?? 1) : wanting(classes) === 0
  const could = (among: readonly ShowResult[], open: readonly ShowResult[]): boolean => couldFill(classesOf(among), open, least ?? 0)
  const open = [...unsure], atShow = (of: ShowResult['show'] | null): readonly ShowResult[] => open.filter(({show}) => show === of)
  const might = byShow([...counting, ...open]).filter(([first]) => could(counting.filter(({show}) => show === first?.show), atShow(first?.show ?? null))).length
  const state = least === null ? null : atOne ? judgedWith(enough, asked.shows ?? 1, might - enough) : met === true ? true : could(counting, open) ? null : false
  const used = counting.filter(({entry}) => classes.some(({shown}) => shown.includes(entry.bird)) && (!atOne || best === null || best.show?.entries.includes(entry)))
  const ways: readonly Way[] = least === null ? [{kind: 'name-figure', earliest: null}] : waysOfClasses(classes, least, asked.shows === null ? null : asked.shows - enough, from)
  return judged(state, {kind: 'shown-per-class', classes, atOne: atOne ? {show: best?.show ?? null, enough} : null, untold: unsure.size}, {behind: behindEntries(used), aged, ways})
}

/** Could entries of which the class, age or variety is not known make each class full? Each can stand in one of them alone. */
function couldFill(classes: readonly ClassShown[], open: readonly ShowResult[], least: number): boolean {
  const wanting = classes.map(({class: name, birds, shown}) => ({
    more: Math.max(0, least - birds), birds: birdsOf(open.filter(({show, entry}) => !shown.includes(entry.bird) && standsIn(name, entry.class, entry.bird, show.on.first) !== false)).length,
  }))
  return wanting.every(({more, birds}) => birds >= more) && wanting.reduce((sum, {more}) => sum + more, 0) <= open.length
}

/** What stood at a show that is over helps no other: each class is wanted anew there. */
function waysOfClasses(classes: readonly ClassShown[], least: number, fullShows: number | null, {book, census}: Sources): readonly Way[] {
  const own = census.alive.filter(bird => bird.step.kind !== 'strain')
  const wanted = classes.map(({class: name, birds, shown}) => {
    const more = fullShows === null ? Math.max(0, least - birds) : least, there = own.filter(bird => fullShows !== null || !shown.includes(bird))
    const living = there.filter(bird => standsIn(name, null, bird, book.asOf) === true).length, word = CLASS_WORDS.find(each => standsIn(name, each, NO_BIRD, book.asOf) === true)
    return {class: name, more, living, earliest: earliestInClass(word, more, living, there, book)}
  })
  if (fullShows === null) return wanted.filter(({more}) => more > 0).map((each): Way => ({kind: 'show-birds', ...each}))
  const years = wanted.map(({earliest}) => (earliest?.kind === 'season' ? earliest.season : null))
  return [{kind: 'full-shows', more: fullShows, each: least, classes: wanted.map(({class: name, living}) => ({class: name, living})), earliest: years.includes(null) ? null : inSeason(Math.max(...years.map(year => year ?? 0)))}]
}

/** Of which nothing but the class as written tells. */
const NO_BIRD = {sex: 'unknown', hatched: null} as const

/** This year where enough are alive; next year where enough will then be grown; else once they have hatched. */
function earliestInClass(word: string | undefined, more: number, now: number, own: readonly Bird[], book: Sources['book']): Earliest | null {
  if (word === undefined) return null
  const year = yearOf(book.asOf), next = nextSeason(book), isYoung = word === 'cockerel' || word === 'pullet', nextYear = book.asOf + 366
  if (now >= more) return inSeason(year)
  if (isYoung) return inSeason(next)
  return inSeason(own.filter(bird => classOf(bird, nextYear) === word).length >= more ? year + 1 : next + 1)
}

/** Shows with an entry that was not disqualified, and judges who placed one, each once. */
export function showsAndJudges(asked: Requirement, from: Sources): Finding {
  const all = entriesAsked(asked, from), entries = standing(all.entries), untold = standing(all.untold), held = byShow(entries), judges = judgesOf(entries)
  const least = asked.shows ?? asked.atLeast, isUnjudged = (each: readonly ShowResult[]): boolean => each.every(({entry}) => entry.judge === null), unjudged = held.filter(isUnjudged).length
  const may = byShow([...entries, ...untold]), more = {shows: Math.max(0, (least ?? 0) - held.length), judges: Math.max(0, (asked.judges ?? 0) - judges.length)}, asksNothing = least === null && asked.judges === null
  const ways: readonly Way[] = asksNothing ? [{kind: 'name-figure', earliest: null}]
    : [...(more.shows > 0 ? [{kind: 'shows', more: more.shows, earliest: null} as const] : []), ...(more.judges > 0 ? [{kind: 'judges', more: more.judges, earliest: null} as const] : [])]
  const state = allOf([
    judgedWith(held.length, least ?? 0, may.length - held.length),
    judgedWith(judges.length, asked.judges ?? 0, judgesOf([...entries, ...untold]).length - judges.length + may.filter(isUnjudged).length),
  ])
  return judged(asksNothing ? null : state, {
    kind: 'shows-and-judges', shows: held.length, judges, unjudged, years: yearsInOrder(held.map(([first]) => yearOf(first?.show.on.first ?? 0))), untold: untold.length,
  }, {behind: behindEntries(entries), aged: all.aged, ways})
}

const judgesOf = (entries: readonly ShowResult[]): readonly string[] => [...new Set(entries.flatMap(({entry}) => entry.judge ?? []))]

/**
 * Was no entry disqualified and, where they are asked, did every one reach the points and the grade? An entry of which a judge’s points or grade are not on record leaves that untold.
 */
export function showResult(asked: Requirement, from: Sources): Finding {
  const {entries, untold, aged} = entriesAsked(asked, from), {atLeast, leastGrade, grades} = asked
  if (entries.length + untold.length === 0) return {...nothing, aged, ways: [{kind: 'shows', more: 1, earliest: null}]}
  const disqualified = entries.filter(({entry}) => entry.disqualified), points = entries.flatMap(({entry}) => entry.points ?? [])
  const rank = (grade: string): number => grades.findIndex(each => sameName(each, grade)), least = leastGrade === null ? -1 : rank(leastGrade)
  const gradeOf = ({entry}: ShowResult): number | null => (entry.grade !== null && rank(entry.grade) >= 0 ? rank(entry.grade) : null)
  const below = entries.filter(result => (atLeast !== null && result.entry.points !== null && result.entry.points < atLeast) || (leastGrade !== null && (gradeOf(result) ?? least) < least))
  const unwritten = entries.filter(result => !result.entry.disqualified && ((atLeast !== null && result.entry.points === null) || (leastGrade !== null && gradeOf(result) === null)))
  const unplaced = least < 0 ? [] : unwritten.flatMap(({entry: {bird, grade}}) => (grade === null ? [] : [{bird, grade}])), wanting = unwritten.filter(({entry: {grade, points: given}}) => (atLeast !== null && given === null) || (leastGrade !== null && grade === null))
  const isOver = disqualified.length > 0 || below.length > 0, inTheWay = [...new Set([...disqualified, ...below])]
  const until = Math.max(...inTheWay.map(({show}) => show.on.last)), passes = asked.within === null || inTheWay.length === 0 ? null : onDay(until + asked.within + 1)
  const ways: readonly Way[] = [
    ...(inTheWay.length > 0 ? [{kind: 'show-again', birds: birdsOf(inTheWay), earliest: passes} as const] : []),
    ...((leastGrade !== null && least < 0) || unplaced.length > 0 ? [{kind: 'name-grades', earliest: null} as const] : []),
    ...(wanting.length > 0 && (leastGrade === null || least >= 0) ? [{kind: 'write-results', what: leastGrade === null ? 'points' : 'grades', entries: wanting.map(({entry}) => ({bird: entry.bird, at: entry.at})), earliest: null} as const] : []),
  ]
  const worst = entries.flatMap(result => gradeOf(result) ?? [])
  return judged(isOver ? false : unwritten.length > 0 || untold.length > 0 || (leastGrade !== null && least < 0) ? null : true, {
    kind: 'show-result', entries: entries.length, disqualified: disqualified.length, leastPoints: points.length === 0 ? null : Math.min(...points), firsts: entries.filter(({entry}) => entry.place === 1).length,
    awards: entries.filter(({entry}) => entry.award !== null).length, below: birdsOf(inTheWay), unwritten: unwritten.length, unplaced, worstGrade: worst.length === 0 ? null : grades[Math.min(...worst)] ?? null, untold: untold.length,
  }, {behind: behindEntries(entries), aged, ways})
}
