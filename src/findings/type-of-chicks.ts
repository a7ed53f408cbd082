import type {Hatch, Logbook, Requirement, Score, Trait} from '../logbook/book.ts'
import {concerns} from './clause-counts.ts'
import type {AskedLook, LooksAsked} from './clauses-asked.ts'
import {countedValue} from './counted-value.ts'
import type {Aged} from './evidence-found.ts'
import {siftByDay} from './evidence-window.ts'
import {ladderChicks, seasonOf, seasonOfHatch, type Chick} from './ladder-chicks.ts'
import {sameName} from './same-name.ts'
import {askedFrom, oldEnough, sexShows} from './scoring-age.ts'
import type {Judged} from './true-bred.ts'
import {isOfVarieties, mayBeOf, varietyTold, type VarietyTold} from './variety-of.ts'
import {verdictOn, type Verdict} from './verdict.ts'
import {looksRight} from './wanted-look.ts'
import {scoresUnderWords} from './words-scored-under.ts'

/** The chicks that a requirement of trueness is about, held against what it asks. */
export interface TypeOfChicks extends Judged {
  readonly seasons: readonly number[]
  /** those whose unlisted chicks belong to the count; and of these the ones whose chicks, if they lived, are of an age for all that is asked */
  readonly hatches: readonly Hatch[]
  readonly ofAge: readonly Hatch[]
  /** chicks that a look could speak of and that were scored for it, whatever became of them */
  readonly scoredFor: ReadonlyMap<AskedLook, number>
  /** of these, by a score made while the clause read otherwise, which does not count */
  readonly otherWords: ReadonlyMap<AskedLook, number>
  /** of those lost before they could be judged, the ones that the keeper culled */
  readonly culledEarly: ReadonlySet<Chick>
  /** chicks of the breed that count no more, or not yet, by the days that the requirement names */
  readonly aged: Aged
}

/**
 * What do the chicks of the last seasons show of the looks asked for? All that hatched of matings inside the breed in them, kept or not.
 *
 * A chick counts once it is of an age to show all of them, had it lived: then it fails by one look that is off, and passes only where each that its sex can show was scored and is
 * right. One that left before that age, with nothing off, is lost; one that is not yet of it is too young, whatever it shows by then. A score of a clause that was made while it read otherwise is none.
 * A chick that shows no colour variety meets no clause of one. Where that cannot be told it is off if it misses a clause of every variety that it may be of, since it is then off whichever it is; it is lost if
 * it left before the age at which its variety could be seen; and else not fully scored.
 */
export function typeOfChicks(book: Logbook, asked: LooksAsked, requirement: Pick<Requirement, 'seasons' | 'varieties' | 'from' | 'by' | 'within'>, defaultSeasons: number): TypeOfChicks {
  const bred = ladderChicks(book).filter(({step}) => step.interSe >= 1), hatched = book.hatches.filter(({step}) => step.interSe >= 1)
  const all = [...new Set([...bred.map(seasonOf), ...hatched.filter(({unlisted}) => unlisted > 0).map(seasonOfHatch)])].filter(season => season !== null).sort((a, b) => a - b)
  const seasons = all.slice(-Math.max(1, requirement.seasons ?? defaultSeasons)), isIn = (season: number | null): boolean => season !== null && seasons.includes(season)
  const scoredFor = new Map(asked.looks.map(look => [look, 0])), verdicts = new Map<Chick, Verdict>()
  const about = bred.filter(chick => isIn(seasonOf(chick))).map(chick => ({chick, of: varietyAsked(chick, asked, requirement.varieties)})).filter(({of}) => of !== 'other')
  // a tally stands for each of its chicks
  const {counted, aged} = siftByDay(about.flatMap(each => Array<typeof each>(each.chick.count).fill(each)), ({chick}) => chick.hatched, ({chick}) => chick.hatch?.at ?? chick.at, requirement, book.asOf)
  const scoreOf = scoresAsked(asked, book), otherWords = new Map<AskedLook, number>(), culledEarly = new Set<Chick>()
  for (const {chick, of} of new Set(counted)) {
    const looks = asked.looks.filter(({clause}) => clause === null || clause.variety === null || (typeof of === 'object' && sameName(clause.variety, of.name)))
    for (const look of looks) {
      if (!isAskedOf(look, chick) || countedValue(chick, look.scored) === null) continue
      scoredFor.set(look, (scoredFor.get(look) ?? 0) + chick.count)
      if (scoreOf(look, chick) === null) otherWords.set(look, (otherWords.get(look) ?? 0) + chick.count)
    }
    const own = looks.filter(look => isAskedOf(look, chick)), ofVariety = asked.looks.some(look => look.clause !== null && look.clause.variety !== null && isAskedOf(look, chick))
    // a look of the other sex alone asks nothing of it
    if (own.length === 0 && !ofVariety) continue
    const shows = verdictOn(chick, looks.map(({trait}) => trait), book, trait => looks.filter(look => look.trait === trait).map(look => scoreOf(look, chick)?.value)[0] ?? null)
    const verdict = atFullAge(chick, shows, {own, of, ofVariety, ...(of === 'untold' ? untoldOf(chick, asked, requirement.varieties, scoreOf) : NO_DOUBT)}, book)
    verdicts.set(chick, verdict)
    if (verdict.is === 'lost' && chick.left?.how === 'culled') culledEarly.add(chick)
  }
  const hatches = siftByDay(hatched.filter(hatch => isIn(seasonOfHatch(hatch))), hatch => hatch.on, hatch => hatch.at, requirement, book.asOf).counted, age = Math.max(0, ...asked.looks.map(({trait}) => askedFrom(trait)))
  return {
    seasons, hatches, ofAge: hatches.filter(({on, unlisted}) => unlisted > 0 && (on === null || book.asOf - on.first >= age)), verdicts, required: asked.looks.map(({trait}) => trait), scoredFor, otherWords, culledEarly, aged,
  }
}

/** Does a look speak of birds of this sex, and can they show it? */
export const isAskedOf = ({trait}: AskedLook, chick: Chick): boolean => concerns({allows: trait.wanted}, chick.sex) && sexShows(trait, chick)

type ScoreAsked = (look: AskedLook, chick: Chick) => Score | null

/** The score of a chick that counts by what the look says today; null where there is none, or only one made while the clause read otherwise. */
export function scoresAsked({looks}: Pick<LooksAsked, 'looks'>, book: Logbook): ScoreAsked {
  const underOf = scoresUnderWords(book), read = new Map(looks.flatMap(look => (look.clause ? [[look, underOf(look.clause, look.scored)] as const] : [])))
  return (look, chick) => {
    const scoreOf = read.get(look)
    if (!scoreOf) return chick.looks.get(look.scored)?.counted ?? null
    const found = scoreOf(chick)
    return found?.under.asNow ? found.score : null
  }
}

/** The variety a chick shows, where that matters; `other` where the requirement is not about it. */
type Told = VarietyTold | 'other'

function varietyAsked(chick: Chick, {draft, looks}: LooksAsked, asked: readonly string[]): Told {
  if (asked.length === 0 && !looks.some(({clause}) => clause !== null && clause.variety !== null)) return 'none'
  if (draft === null) return 'untold'
  const is = asked.length === 0 ? true : isOfVarieties(chick, draft, asked)
  return is === null ? 'untold' : is ? varietyTold(chick, draft) : 'other'
}

/** Of a chick whose variety cannot be told. */
interface InDoubt {
  /** looks of varieties it may be of, one of each, that it misses; empty where it misses none of one of them */
  readonly missed: readonly Trait[]
  /** what would tell its variety and was not scored */
  readonly unseen: readonly Trait[]
}

const NO_DOUBT: InDoubt = {missed: [], unseen: []}

function untoldOf(chick: Chick, {draft, looks}: LooksAsked, asked: readonly string[], scoreOf: ScoreAsked): InDoubt {
  const maybe = draft === null ? [] : mayBeOf(chick, draft).filter(({name}) => asked.length === 0 || asked.some(each => sameName(each, name)))
  const unseen = [...new Set(maybe.flatMap(variety => [...variety.looks.keys()]))].filter(trait => sexShows(trait, chick) && countedValue(chick, trait) === null)
  const missed = maybe.map(({name}) => looks.find(look => {
    const {clause, trait} = look, value = scoreOf(look, chick)?.value
    return clause !== null && clause.variety !== null && sameName(clause.variety, name) && value !== undefined && looksRight(trait, chick.sex, value) === false
  })?.trait)
  // where the requirement names its varieties, a chick of none of them is none of its business
  return {unseen, missed: asked.length > 0 || missed.includes(undefined) ? [] : missed.filter(trait => trait !== undefined)}
}

interface AsAsked extends InDoubt {
  readonly own: readonly AskedLook[]
  readonly of: Told
  readonly ofVariety: boolean
}

function atFullAge(chick: Chick, verdict: Verdict, {own, of, ofVariety, missed, unseen}: AsAsked, {asOf}: Logbook): Verdict {
  const age = chick.hatched === null ? null : asOf - chick.hatched.first
  if (age !== null && [...own.map(({trait}) => trait), ...unseen].some(trait => age < askedFrom(trait))) return {...verdict, is: 'too-young'}
  if (verdict.is === 'off') return verdict
  if (missed.length > 0) return {...verdict, is: 'off', off: missed}
  if (own.some(({trait}) => !oldEnough(trait, chick, asOf) && !verdict.right.includes(trait)) || unseen.some(trait => !oldEnough(trait, chick, asOf))) return {...verdict, is: 'lost'}
  if (ofVariety && of === 'none') return {...verdict, is: 'off'}
  if (of === 'untold' || own.some(({trait}) => !verdict.right.includes(trait))) return {...verdict, is: 'part-scored'}
  return verdict
}
