/** Evidence that the chicks are true to type. */
import type {Bird, Requirement} from '../logbook/book.ts'
import {yearOf} from '../records/dates.ts'
import {leastWhole} from '../statistics/least-whole.ts'
import {chicksToReach, figureOf, type SeasonReared} from './chicks-to-reach.ts'
import {acceptedIn} from './clause-counts.ts'
import {looksAsked, type LooksAsked} from './clauses-asked.ts'
import {behind, judged, nothing, type Behind, type Finding} from './evidence-found.ts'
import type {Sources} from './evidence-shown.ts'
import {sumOf} from './judged-chicks.ts'
import {seasonOf, type Chick} from './ladder-chicks.ts'
import {inSeason, nextSeason, onDay} from './next-season.ts'
import {askedFrom, oldEnough} from './scoring-age.ts'
import type {DecidedBy, ShownOfType} from './shown-of-breeding.ts'
import {trueBredAmong} from './true-bred.ts'
import {countByFamily, sireFamilies, type OfASire} from './sire-families.ts'
import {partOfFamilies, type TrueBredPart} from './true-bred-parts.ts'
import {isAskedOf, typeOfChicks, scoresAsked, type TypeOfChicks} from './type-of-chicks.ts'
import type {Verdict} from './verdict.ts'
import type {Way} from './ways.ts'

/** How many of the last seasons count where a requirement names no number. */
const SEASONS = 2
/** Room for rounding: a share exactly on the mark reaches it. */
const SLACK = 1e-12

/** Which figure decides: the share, unless an interval is named or the cautious end asked for; then the lower limit, by sire families where nothing else is named. */
export function decidedBy({judgedOn, interval}: Pick<Requirement, 'judgedOn' | 'interval'>): DecidedBy {
  if (judgedOn === 'estimate' || (judgedOn === null && interval === null)) return 'estimate'
  return interval ?? 'families'
}

/**
 * Of all chicks of matings inter se in the last seasons that were reared to the scoring age, do enough show every look asked for?
 *
 * Met: it would be reached though every chick not fully scored, every one culled before it could be, and every one that nobody listed, failed. Not yet: it would not be though they all passed. It
 * cannot be told between the two, nor while nobody was scored for a look asked for, nor, though it be reached, where a clause asked for has nothing to be held against, and by families under five of them.
 * What decides is told by `decidedBy`.
 *
 * @see `typeOfChicks` for who counts
 */
export function trueToType(requirement: Requirement, {book}: Sources): Finding {
  const asked = looksAsked(requirement, book), type = typeOfChicks(book, asked, requirement, SEASONS), by = decidedBy(requirement), {atLeast} = requirement
  const {seasons, verdicts, hatches, scoredFor, otherWords, culledEarly, aged} = type, chicks = [...verdicts.keys()]
  if (seasons.length === 0) return {...nothing, aged}
  const rate = trueBredAmong({required: type.required, verdicts: new Map([...verdicts].filter(([chick]) => !culledEarly.has(chick)))}, hatches), shape = {of: 'seasons', name: [...new Set([seasons[0], seasons.at(-1)])].join(' to '), sex: 'all'} as const
  const unlisted = type.ofAge.map(({parentage, id, unlisted: count}) => ({parentage, hatch: {id}, count})), told = new Map<OfASire, Verdict>([...verdicts].map(([chick, verdict]) => [chick, culledEarly.has(chick) ? {...verdict, is: 'part-scored'} : verdict])), all = sumChicks(chicks) + rate.unlisted
  const counted = (open: boolean | null): TrueBredPart => partOfFamilies(shape, countByFamily<OfASire & {readonly count: number}>([...chicks, ...unlisted], one => isTrue(told.get(one), open)), all)
  const part = counted(null), ifFail = counted(false), ifPass = counted(true), open = {scored: rate.partScored, culled: sumChicks([...culledEarly]), unlisted: sumChicks(unlisted)}
  const worst = valueOf(ifFail, by), sure = atLeast !== null && worst !== null && worst >= atLeast - SLACK
  const looks = asked.looks.map(look => ({clause: look.clause, trait: look.scored, scored: scoredFor.get(look) ?? 0, otherWords: otherWords.get(look) ?? 0, tolerated: look.clause !== null && acceptedIn(look.clause, yearOf(book.asOf)) !== null}))
  const shown: ShownOfType = {kind: 'true-to-type', by: asked.by, decidedBy: by, seasons, looks, untold: asked.untold, rate, part, ifFail, ifPass, open, sure}
  const isOpen = looks.some(look => look.scored === look.otherWords), reached = atLeast === null || isOpen || part.share.kind === 'cannot-say' ? null : stateOf(shown, atLeast)
  const state = reached === true && asked.untold.length > 0 ? null : reached
  return judged(state, shown, {behind: behindOf(type, asked, book), aged, ways: waysOf(requirement, reached, shown, asked, type, isOpen, book)})
}

/** What a chick counts for: those not fully scored, or culled before they could be, and those that nobody listed and so have no verdict, as is asked; null: it does not count. */
function isTrue(verdict: Verdict | undefined, open: boolean | null): boolean | null {
  if (verdict === undefined || verdict.is === 'part-scored') return open
  return verdict.is === 'right' ? true : verdict.is === 'off' ? false : null
}

function stateOf({decidedBy: by, part, ifFail, ifPass}: ShownOfType, mark: number): boolean | null {
  const reaches = (of: TrueBredPart): boolean | null => {
    const value = valueOf(of, by)
    return value === null ? null : value >= mark - SLACK
  }
  // no limit by families can lie above the share itself
  if (reaches(ifPass) === false || (valueOf(ifPass, 'estimate') ?? 1) < mark - SLACK) return false
  return reaches(ifFail) === true && reaches(part) === true ? true : null
}

/** What is held against the mark; null where it cannot be said. */
export const valueOf = ({share, exact, family}: TrueBredPart, by: DecidedBy): number | null =>
  (by === 'estimate' ? (share.kind === 'share' ? share.value : null) : by === 'exact' ? exact?.low ?? null : family?.kind === 'families' ? family.low : null)

/** The chicks that passed or failed, and the files in which their hatches and scores stand. */
function behindOf({verdicts}: TypeOfChicks, asked: LooksAsked, book: Sources['book']): Behind {
  const counted = [...verdicts].filter(([, {is}]) => is === 'right' || is === 'off' || is === 'part-scored').map(([chick]) => chick), scoreOf = scoresAsked(asked, book)
  const scores = counted.flatMap(chick => asked.looks.flatMap(look => scoreOf(look, chick) ?? []))
  const files = [...new Set([...counted.map(({hatch, at}) => (hatch?.at ?? at).file), ...scores.map(({at}) => at.file)])]
  return behind(counted.flatMap(chick => (chick.kind === 'bird' ? [chick] : [])), files.map(file => ({at: {file, path: []}})), [...scores.map(({on}) => on?.last), ...counted.map(({hatched}) => hatched?.last)])
}

/** @param reached whether the figure is, whatever else is asked for */
function waysOf({atLeast, seasons: window}: Requirement, reached: boolean | null, shown: ShownOfType, asked: LooksAsked, type: TypeOfChicks, isOpen: boolean, book: Sources['book']): readonly Way[] {
  if (atLeast === null) return [{kind: 'name-figure', earliest: null}]
  const hold: readonly Way[] = asked.untold.length === 0 ? [] : [{kind: 'hold-clauses', clauses: asked.untold, ...(asked.by === 'mandatory' ? {orName: true} : {}), earliest: null}]
  if (reached === true) return hold
  const {verdicts, culledEarly} = type, all = [...verdicts], chicks = all.map(([chick]) => chick), scoreOf = scoresAsked(asked, book)
  if (isOpen) return [
    ...hold,
    ...asked.looks.filter(look => type.scoredFor.get(look) === (type.otherWords.get(look) ?? 0)).map((look): Way => {
      const able = chicks.filter(chick => chick.left === null && isAskedOf(look, chick)), old = able.filter(chick => oldEnough(look.trait, chick, book.asOf))
      return {kind: 'score', trait: look.scored, clause: look.clause, ...split(old.filter(chick => scoreOf(look, chick) === null)), earliest: old.length > 0 ? onDay(book.asOf) : firstOfAge(able, askedFrom(look.trait))}
    }),
  ]
  const of = (is: Verdict['is']): readonly Chick[] => all.filter(([, verdict]) => verdict.is === is).map(([chick]) => chick)
  const rest = of('part-scored'), {unlisted, culled} = shown.open, right = wantedOfRest(shown, atLeast), young = of('too-young'), ages = asked.looks.map(({trait}) => askedFrom(trait))
  if (shown.part.share.kind === 'cannot-say' && young.length > 0) return [...hold, {kind: 'of-age', chicks: sumChicks(young), earliest: firstOfAge(young, Math.max(0, ...ages))}]
  const {chicks: more, season, ...rate} = chicksToReach(bySeason(shown, type), Math.max(1, window ?? SEASONS), atLeast, shown.decidedBy, nextSeason(book, shown.seasons))
  const further: Way = {kind: 'chicks-true', more, ...rate, earliest: season === null ? null : inSeason(season)}
  const living = rest.filter(({left}) => left === null), able = sumChicks(living) + unlisted, now = onDay(book.asOf)
  // those that left can be scored no more
  if (reached === false || able === 0 || right === null || right > able) return [...hold, further]
  return [
    ...hold, ...(living.length === 0 ? [] : [{kind: 'score-rest', ...split(living), gone: sumChicks(rest) - sumChicks(living) + culled, right, earliest: now} as const]),
    ...(unlisted === 0 ? [] : [{kind: 'follow-chicks', chicks: unlisted, earliest: now} as const]), ...(rate.sires > 0 ? [further] : []),
  ]

  function bySeason({seasons}: ShownOfType, {verdicts: told}: TypeOfChicks): readonly SeasonReared[] {
    const counts = (chick: Chick): boolean => culledEarly.has(chick) || ['right', 'off', 'part-scored'].includes(told.get(chick)?.is ?? ''), families = sireFamilies(chicks.filter(counts))
    return seasons.map(season => {
      const own = families.map(members => sumOf(members.filter(chick => seasonOf(chick) === season).map(chick => ({n: chick.count, k: told.get(chick)?.is === 'right' ? chick.count : 0}))))
      return {season, families: own, ...sumOf(own)}
    })
  }
}

/** How many of the chicks not fully scored, or not listed, must be right, were the others to fail; null where all of them would not be enough. */
function wantedOfRest({rate: {passes, fails}, open: {scored, culled, unlisted}, decidedBy: by, ifFail}: ShownOfType, mark: number): number | null {
  const n = passes + fails + scored + culled + unlisted, figure = figureOf(by, ifFail.family)
  return n === 0 ? null : leastWhole(0, scored + unlisted, more => figure(passes + more, n) >= mark - SLACK)
}

const sumChicks = (chicks: readonly Pick<Chick, 'count'>[]): number => chicks.reduce((sum, {count}) => sum + count, 0)

const split = (chicks: readonly Chick[]): {readonly birds: readonly Bird[]; readonly unbanded: number} =>
  ({birds: chicks.flatMap(chick => (chick.kind === 'bird' ? [chick] : [])), unbanded: sumChicks(chicks.filter(({kind}) => kind === 'tally'))})

function firstOfAge(chicks: readonly Chick[], age: number): Way['earliest'] {
  const days = chicks.flatMap(({hatched}) => (hatched === null ? [] : [hatched.last + age]))
  return days.length === 0 ? null : onDay(Math.min(...days))
}
