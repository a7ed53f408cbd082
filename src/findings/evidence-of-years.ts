/** Evidence of years and generations of breeding. */
import type {Bird, Hatch, Requirement} from '../logbook/book.ts'
import {yearOf} from '../records/dates.ts'
import {isAbout} from './asked-about.ts'
import {entriesAsked} from './evidence-of-entries.ts'
import {behind, judged, NONE_AGED, nothing, reaches, type Finding} from './evidence-found.ts'
import type {GenerationsOfBird, Sources} from './evidence-shown.ts'
import {siftByDay, type Sifted} from './evidence-window.ts'
import {generationsInside} from './generations-inside.ts'
import {seasonOfHatch} from './ladder-chicks.ts'
import {inSeason, nextSeason, yearsInOrder} from './next-season.ts'
import type {Way} from './ways.ts'

/** Settings of the ladder from which chicks came, of the days asked about. */
export function hatchesBred(asked: Requirement, {book}: Sources): Sifted<Hatch> {
  const bred = book.hatches.filter(hatch => hatch.step.kind !== 'strain' && (hatch.hatched ?? hatch.chicks.length + hatch.tallies.length) > 0)
  return siftByDay(bred, hatch => hatch.on ?? hatch.set, hatch => hatch.at, asked, book.asOf)
}

/** Their seasons, each once. */
export const seasonsOf = (hatches: readonly Hatch[]): readonly number[] => yearsInOrder(hatches.flatMap(hatch => seasonOfHatch(hatch) ?? []))

/**
 * In how many seasons did the breed hatch? With `in-a-row` those since the last year without a hatch, else all of them. Years between the first season and the last that is over, in which nothing
 * hatched, are gaps.
 */
export function yearsBred(asked: Requirement, from: Sources): Finding {
  const {counted: hatches, aged} = hatchesBred(asked, from), seasons = seasonsOf(hatches), [first] = seasons
  const last = Math.max(seasons.at(-1) ?? 0, yearOf(from.book.asOf) - 1)
  const gaps = first === undefined ? [] : Array.from({length: last - first + 1}, (_, index) => first + index).filter(year => !seasons.includes(year))
  const run = seasons.filter(season => season > (gaps.at(-1) ?? 0))
  const have = asked.inARow ? run.length : seasons.length, more = asked.atLeast === null ? 0 : asked.atLeast - have
  const ways: readonly Way[] = asked.atLeast === null ? [{kind: 'name-figure', earliest: null}]
    : [{kind: 'seasons', more, inARow: asked.inARow, earliest: inSeason(nextSeason(from.book, seasons) + more - 1)}]
  return judged(reaches(have, asked.atLeast), {kind: 'years-bred', seasons, gaps, run, have}, {behind: behind([], hatches, hatches.map(hatch => (hatch.on ?? hatch.set)?.last)), aged, ways})
}

/** The birds asked about: those shown, in the latest year with a show unless a day is named from which on they count; where none was, the living breeders. */
function birdsAsked(asked: Requirement, from: Sources): {readonly of: 'shown' | 'breeders'; readonly birds: readonly Bird[]; readonly more: Partial<Finding>; readonly untold: readonly Bird[]; readonly year: number | null} {
  const {entries, untold, aged} = entriesAsked(asked, from), {book, census} = from
  const year = Math.max(...entries.map(({show}) => yearOf(show.on.first))), latest = asked.from === null ? entries.filter(({show}) => yearOf(show.on.first) === year) : entries
  if (latest.length > 0) {
    const unsure = asked.from === null ? untold.filter(({show}) => yearOf(show.on.first) === year) : untold
    const birds = [...new Set(latest.map(({entry}) => entry.bird))]
    return {of: 'shown', birds, year: asked.from === null ? year : null, untold: [...new Set(unsure.map(({entry}) => entry.bird))], more: {behind: behind(birds, latest.map(({entry}) => entry), latest.map(({show}) => show.on.last)), aged}}
  }
  const about = census.ownBreeders.map(bird => ({bird, is: isAbout(asked, bird, book.asOf, book)})), birds = about.filter(({is}) => is === true).map(({bird}) => bird)
  return {of: 'breeders', birds, year: null, untold: about.filter(({is}) => is === null).map(({bird}) => bird), more: {behind: behind(birds, birds, birds.length > 0 ? [book.asOf] : []), aged: entries.length > 0 ? aged : NONE_AGED}}
}

/**
 * How many generations were mated inside the breed behind each bird shown, on the shortest way back to a bird from outside? The least decides. A bird that may have other parents counts with the
 * fewest it may have; where with others it would be enough, that leaves it untold.
 */
export function interSeGenerations(asked: Requirement, from: Sources): Finding {
  const {of, birds, more: found, untold, year} = birdsAsked(asked, from), inside = generationsInside(from.book), {atLeast} = asked
  const each = birds.map((bird): GenerationsOfBird => ({bird, ...inside.get(bird) ?? {least: 0, most: 0, chain: [bird]}})).sort((a, b) => a.least - b.least || (a.bird.id < b.bird.id ? -1 : 1))
  const [worst] = each
  if (!worst) return {...nothing, ways: [{kind: 'generations', more: atLeast ?? 1, short: [], earliest: null}]}
  const short = atLeast === null ? [] : each.filter(({least}) => least < atLeast), isSure = short.some(({most}) => most < (atLeast ?? 0))
  const state = atLeast === null ? null : isSure ? false : short.length > 0 || untold.length > 0 ? null : true
  return judged(state, {kind: 'inter-se-generations', of, year, least: worst.least, birds: each, short, untold}, {...found, ways: waysOfGenerations(asked, from, short, inside)})
}

function waysOfGenerations({atLeast}: Requirement, {book, census}: Sources, short: readonly GenerationsOfBird[], inside: ReturnType<typeof generationsInside>): readonly Way[] {
  if (atLeast === null) return [{kind: 'name-figure', earliest: null}]
  const enough = census.alive.filter(bird => (inside.get(bird)?.least ?? 0) >= atLeast)
  if (enough.length > 0) return [{kind: 'show-these', birds: enough, earliest: null}]
  const best = (sex: 'male' | 'female'): number => Math.max(-1, ...census.ownBreeders.filter(bird => bird.sex === sex).map(bird => inside.get(bird)?.least ?? 0))
  const parents = Math.min(best('male'), best('female')), more = parents < 0 ? atLeast : Math.max(1, atLeast - parents)
  const earliest = parents < 0 ? null : inSeason(nextSeason(book, seasonsOf(book.hatches)) + more - 1)
  return [{kind: 'generations', more, short: short.map(({bird}) => bird), earliest}]
}
