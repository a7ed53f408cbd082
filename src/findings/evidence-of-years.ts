/** Evidence of years and generations of breeding. */
import type {Bird, Hatch, Requirement} from '../logbook/book.ts'
import {yearOf} from '../records/dates.ts'
import {breedersAsked} from './breeders-asked.ts'
import {entriesAsked} from './evidence-of-entries.ts'
import {behind, judged, nothing, reaches, type Finding} from './evidence-found.ts'
import type {GenerationsOfBird, Sources} from './evidence-shown.ts'
import {siftByDay, type Sifted} from './evidence-window.ts'
import {generationsInside} from './generations-inside.ts'
import {inSeason, nextSeason, seasonsOf} from './next-season.ts'
import type {Way} from './ways.ts'

/** Hatches of the breed's own matings: not of a pure strain, and of no cross beside the ladder, as test matings are. */
export interface HatchesBred extends Sifted<Hatch> {
  /** the crosses beside the ladder */
  readonly beside: readonly Hatch[]
}

/** Settings of the ladder from which chicks came, of the days asked about. */
export function hatchesBred(asked: Requirement, {book, ladder}: Sources): HatchesBred {
  const bred = book.hatches.filter(hatch => hatch.step.kind !== 'strain' && (hatch.hatched ?? hatch.chicks.length + hatch.tallies.length) > 0)
  const besides = new Set(ladder.filter(({beside, label}) => beside && label !== 'mixed').map(({label}) => label)), sifted = siftByDay(bred, hatch => hatch.on ?? hatch.set, hatch => hatch.at, asked, book.asOf)
  const isInside = insideOf(book), counted = sifted.counted.filter(hatch => !besides.has(hatch.step.label) || isInside(hatch))
  return {counted, aged: sifted.aged, beside: sifted.counted.filter(hatch => !counted.includes(hatch))}
}

/** Was a hatch of a mating inside the breed? By its step, or where that does not tell it by the parents of a chick. */
function insideOf(book: Sources['book']): (hatch: Hatch) => boolean {
  const inside = generationsInside(book)
  return ({step, chicks}) => step.interSe > 0 || chicks.some(bird => (inside.get(bird)?.least ?? 0) > 0)
}

/**
 * In how many seasons did the breed hatch? With `in-a-row` those since the last year without a hatch, else all of them; with `inside` only hatches of matings inside the breed. Years between the first
 * season and the last in which nothing more can hatch, without one, are gaps.
 */
export function yearsBred(asked: Requirement, from: Sources): Finding {
  const {counted, aged, beside} = hatchesBred(asked, from), inside = counted.filter(insideOf(from.book)), hatches = asked.inside ? inside : counted
  const seasons = seasonsOf(hatches), [first] = seasons, next = nextSeason(from.book, seasons), last = Math.max(seasons.at(-1) ?? 0, next - 1)
  const gaps = first === undefined ? [] : Array.from({length: last - first + 1}, (_, index) => first + index).filter(year => !seasons.includes(year))
  const run = seasons.filter(season => season > (gaps.at(-1) ?? 0)), told = seasonsOf([...inside, ...counted.filter(({step}) => step.kind === 'mixed')]), crossesOnly = seasonsOf(counted).filter(season => !told.includes(season))
  const have = asked.inARow ? run.length : seasons.length, more = asked.atLeast === null ? 0 : asked.atLeast - have
  const ways: readonly Way[] = asked.atLeast === null ? [{kind: 'name-figure', earliest: null}] : [{kind: 'seasons', more, inARow: asked.inARow, earliest: inSeason(next + more - 1)}]
  return judged(reaches(have, asked.atLeast), {kind: 'years-bred', seasons, gaps, run, have, crossesOnly, beside: beside.length}, {behind: behind([], hatches, hatches.map(hatch => (hatch.on ?? hatch.set)?.last)), aged, ways})
}

interface BirdsAsked {
  readonly of: 'shown' | 'breeders'
  readonly birds: readonly Bird[]
  readonly more: Pick<Finding, 'behind' | 'aged'>
  readonly untold: readonly Bird[]
  readonly year: number | null
  /** birds were shown, and of none do the records tell whether it is asked about: nobody knows then whether it is the breeders that are */
  readonly isOpen: boolean
}

/** The birds asked about: those shown, in the latest year with a show unless a day is named from which on they count; where none was, the living breeders. */
function birdsAsked(asked: Requirement, from: Sources): BirdsAsked {
  const {entries, untold, aged} = entriesAsked(asked, from)
  const year = Math.max(...entries.map(({show}) => yearOf(show.on.first))), latest = asked.from === null ? entries.filter(({show}) => yearOf(show.on.first) === year) : entries
  if (latest.length > 0) {
    const unsure = asked.from === null ? untold.filter(({show}) => yearOf(show.on.first) === year) : untold
    const birds = [...new Set(latest.map(({entry}) => entry.bird))]
    return {of: 'shown', birds, year: asked.from === null ? year : null, untold: [...new Set(unsure.map(({entry}) => entry.bird))], more: {behind: behind(birds, latest.map(({entry}) => entry), latest.map(({show}) => show.on.last)), aged}, isOpen: false}
  }
  const {birds, untold: unsure, behind: found} = breedersAsked(asked, from), unseen = untold.map(({entry}) => entry.bird)
  return {of: 'breeders', birds, year: null, untold: [...new Set([...unseen, ...unsure])], more: {behind: found, aged}, isOpen: unseen.length > 0}
}

/**
 * How many generations were mated inside the breed behind each bird shown, on the shortest way back to a bird from outside? The least decides. A bird that may have other parents counts with the
 * fewest it may have; where with others it would be enough, that leaves it untold.
 */
export function interSeGenerations(asked: Requirement, from: Sources): Finding {
  const {of, birds, more: found, untold, year, isOpen} = birdsAsked(asked, from), inside = generationsInside(from.book), {atLeast} = asked
  const each = birds.map((bird): GenerationsOfBird => ({bird, ...inside.get(bird) ?? {least: 0, most: 0, chain: [bird]}})).sort((a, b) => a.least - b.least || (a.bird.id < b.bird.id ? -1 : 1))
  const [worst] = each
  if (!worst) return {...nothing, aged: found.aged, ways: [{kind: 'generations', more: atLeast ?? 1, short: [], earliest: null}]}
  const short = atLeast === null ? [] : each.filter(({least}) => least < atLeast), isSure = !isOpen && short.some(({most}) => most < (atLeast ?? 0))
  const state = atLeast === null ? null : isSure ? false : short.length > 0 || untold.length > 0 ? null : true
  return judged(state, {kind: 'inter-se-generations', of, year, least: worst.least, birds: each, short, untold}, {...found, ways: waysOfGenerations(asked, from, short, inside)})
}

function waysOfGenerations({atLeast}: Requirement, {book, census}: Sources, short: readonly GenerationsOfBird[], inside: ReturnType<typeof generationsInside>): readonly Way[] {
  if (atLeast === null) return [{kind: 'name-figure', earliest: null}]
  const enough = census.alive.filter(bird => (inside.get(bird)?.least ?? 0) >= atLeast)
  if (enough.length > 0) return [{kind: 'show-these', birds: enough, earliest: null}]
  const next = nextSeason(book), parentsOf = (sex: 'male' | 'female'): readonly Bird[] => census.alive.filter(bird => bird.sex === sex && inside.has(bird) && (census.ownBreeders.includes(bird) || isOfAge(bird, next)))
  const best = (sex: 'male' | 'female'): number => Math.max(-1, ...parentsOf(sex).map(bird => inside.get(bird)?.least ?? 0))
  const parents = Math.min(best('male'), best('female')), more = parents < 0 ? atLeast : Math.max(1, atLeast - parents)
  return [{kind: 'generations', more, short: short.map(({bird}) => bird), earliest: parents < 0 ? null : inSeason(next + more - 1)}]
}

/** A bird of one season is bred from in the next: common practice, no source. Of no known day: of no season that could be too late. */
const isOfAge = ({hatched}: Bird, season: number): boolean => hatched === null || yearOf(hatched.last) < season
