/** Evidence of years, generations, people, stock and shows. Each gives the numbers and whether they reach what is asked. */
import type {Hatch, Keeper, Requirement} from '../logbook/book.ts'
import {yearOf} from '../records/dates.ts'
import {keeperOn} from './census.ts'
import {judged, nothing, reaches, type Finding} from './evidence-found.ts'
import type {Sources} from './evidence-shown.ts'
import {seasonOfHatch} from './ladder-chicks.ts'

const CLASSES = ['cock', 'cockerel', 'hen', 'pullet']

const sorted = (numbers: Iterable<number>): number[] => [...new Set(numbers)].sort((a, b) => a - b)

/** Settings of the ladder from which chicks came. */
const hatchesBred = ({book}: Sources): readonly Hatch[] =>
  book.hatches.filter(hatch => hatch.step.kind !== 'strain' && (hatch.hatched ?? hatch.chicks.length + hatch.tallies.length) > 0)

const seasonsBred = (from: Sources): number[] => sorted(hatchesBred(from).flatMap(hatch => seasonOfHatch(hatch) ?? []))

export function yearsBred({atLeast}: Requirement, from: Sources): Finding {
  const seasons = seasonsBred(from)
  const [first, last] = [seasons[0], seasons.at(-1)]
  const gaps: number[] = []
  if (first !== undefined && last !== undefined) for (let year = first; year <= last; year++) if (!seasons.includes(year)) gaps.push(year)
  return judged(reaches(seasons.length, atLeast), {kind: 'years-bred', seasons, gaps})
}

export function interSeGenerations({atLeast}: Requirement, {ladder}: Sources): Finding {
  const reached = ladder.flatMap(step => (step.kind === 'reached' && step.step.kind !== 'mixed' && step.step.interSe >= 1 ? [step] : []))
  const most = Math.max(0, ...reached.map(({step}) => step.interSe))
  return judged(reaches(most, atLeast), {kind: 'inter-se-generations', most, steps: reached.map(({label}) => label)})
}

/** Keepers with a hatch of the ladder in each of the last seasons, one season when the requirement names no number. */
export function independentKeepers({atLeast, seasons: asked}: Requirement, from: Sources): Finding {
  const seasons = seasonsBred(from).slice(-Math.max(1, asked ?? 1))
  const bred = new Map<Keeper, Set<number>>()
  for (const hatch of hatchesBred(from)) {
    const season = seasonOfHatch(hatch)
    const keepers = new Set([hatch.keeper, ...(hatch.keeper ? [] : hatch.pens.map(({pen}) => pen.keeper))])
    for (const keeper of keepers) if (keeper && season !== null && seasons.includes(season)) bred.set(keeper, (bred.get(keeper) ?? new Set()).add(season))
  }
  const keepers = from.book.keepers.filter(keeper => bred.get(keeper)?.size === seasons.length)
  const enough = seasons.length < (asked ?? 1) ? false : reaches(keepers.length, atLeast)
  return judged(atLeast === null ? null : enough, {kind: 'independent-keepers', seasons, keepers, withoutConsent: keepers.filter(keeper => !keeper.consents).length})
}

/** Living breeders of the breed itself, pure strains left aside. */
export function aliveBreeders({males, females, atLeast}: Requirement, {census}: Sources): Finding {
  const breeders = census.ownBreederCount
  const asks = [reaches(breeders.male, males), reaches(breeders.female, females), reaches(breeders.all, atLeast)].filter(met => met !== null)
  return judged(asks.length === 0 ? null : asks.every(met => met), {kind: 'breeders-alive', breeders})
}

/** Different birds shown in each class; the classes are those the latest draft gives weights for, else cock, cockerel, hen, pullet. */
export function shownPerClass({perClass, atLeast}: Requirement, {book, shows}: Sources): Finding {
  const weights = book.drafts.at(-1)?.weights.map(weight => weight.class) ?? []
  const classes = (weights.length > 0 ? weights : CLASSES).map(name => {
    const entries = shows.classes.filter(one => one.class?.toLowerCase() === name.toLowerCase()).flatMap(one => one.entries)
    return {class: name, birds: new Set(entries.filter(({entry}) => !entry.disqualified).map(({entry}) => entry.bird)).size}
  })
  const asked = perClass ?? atLeast
  return judged(asked === null ? null : classes.every(({birds}) => birds >= asked), {kind: 'shown-per-class', classes})
}

export function showsAndJudges({atLeast, judges: asked}: Requirement, {shows}: Sources): Finding {
  const held = shows.shows.filter(({show}) => show.entries.length > 0)
  const asks = [reaches(held.length, atLeast), reaches(shows.judges.length, asked)].filter(met => met !== null)
  return judged(asks.length === 0 ? null : asks.every(met => met), {
    kind: 'shows-and-judges', shows: held.length, judges: shows.judges, years: sorted(held.map(({show}) => yearOf(show.on.first))),
  })
}

/** No entry disqualified and, where a number is asked, no entry with fewer points than that; entries without points leave that open. */
export function showResult({atLeast}: Requirement, {shows}: Sources): Finding {
  const entries = shows.shows.flatMap(({show}) => show.entries)
  if (entries.length === 0) return nothing
  const points = entries.flatMap(entry => entry.points ?? [])
  const disqualified = entries.filter(entry => entry.disqualified).length
  const leastPoints = points.length === 0 ? null : Math.min(...points)
  const enough = atLeast === null ? true : leastPoints === null ? null : leastPoints >= atLeast
  return judged(disqualified > 0 ? false : enough, {
    kind: 'show-result', entries: entries.length, disqualified, leastPoints, firsts: entries.filter(entry => entry.place === 1).length,
    awards: entries.filter(entry => entry.award !== null).length,
  })
}

/** The longest run of years with a show; a year in which every show was officially cancelled does not break it and does not count. */
export function consecutiveShows({atLeast, seasons}: Requirement, {shows}: Sources): Finding {
  const years = sorted(shows.shows.filter(({show}) => show.entries.length > 0).map(({show}) => yearOf(show.on.first)))
  const cancelledYears = sorted(shows.cancelled.map(show => yearOf(show.on.first))).filter(year => !years.includes(year))
  let longestRun = 0, run = 0
  const [first, last] = [years[0], years.at(-1)]
  if (first !== undefined && last !== undefined) {
    for (let year = first; year <= last; year++) {
      if (years.includes(year)) run += 1
      else if (!cancelledYears.includes(year)) run = 0
      longestRun = Math.max(longestRun, run)
    }
  }
  return judged(reaches(longestRun, atLeast ?? seasons), {kind: 'consecutive-shows', years, cancelledYears, longestRun})
}

/** At how many shows were there as many birds of the breed, by as many keepers, as are asked? Disqualified ones do not count. One show must reach it unless the requirement says how many. */
export function birdsPerShow({atLeast, exhibitors, shows: asked}: Requirement, {shows}: Sources): Finding {
  const each = shows.shows.filter(({show}) => show.entries.length > 0).map(({show}) => {
    const birds = [...new Set(show.entries.filter(({disqualified}) => !disqualified).map(({bird}) => bird))]
    return {show, birds: birds.length, keepers: new Set(birds.flatMap(bird => keeperOn(bird, show.on.first) ?? [])).size}
  })
  const enough = each.filter(({birds, keepers}) => birds >= (atLeast ?? 1) && keepers >= (exhibitors ?? 1)).length
  return judged(atLeast === null && exhibitors === null ? null : enough >= (asked ?? 1), {kind: 'birds-per-show', shows: each, enough})
}
