/** Evidence that the chicks are true to type. */
import type {Bird, Requirement} from '../logbook/book.ts'
import {leastWhole} from '../statistics/least-whole.ts'
import {chicksToReach, figureOf} from './chicks-to-reach.ts'
import {looksAsked, type LooksAsked} from './clauses-asked.ts'
import {countedValue} from './counted-value.ts'
import {behind, judged, nothing, type Behind, type Finding} from './evidence-found.ts'
import type {Sources} from './evidence-shown.ts'
import {sumOf} from './judged-chicks.ts'
import {seasonOf, type Chick} from './ladder-chicks.ts'
import {inSeason, nextSeason, onDay} from './next-season.ts'
import {oldEnough} from './scoring-age.ts'
import type {DecidedBy, ShownOfType} from './shown-of-breeding.ts'
import {trueBredAmong} from './true-bred.ts'
import {countByFamily, type OfASire} from './sire-families.ts'
import {partOfFamilies, type TrueBredPart} from './true-bred-parts.ts'
import {isAskedOf, typeOfChicks, type TypeOfChicks} from './type-of-chicks.ts'
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
 * Met: it would be reached though every chick not fully scored, and every one that nobody listed, failed. Not yet: it would not be though they all passed. It cannot be told between the two, while nobody was scored for a clause asked
 * for, where a clause named has nothing to be held against, and by families under five of them. What decides is told by `decidedBy`.
 *
 * @see `typeOfChicks` for who counts
 */
export function trueToType(requirement: Requirement, {book}: Sources): Finding {
  const asked = looksAsked(requirement, book), type = typeOfChicks(book, asked, requirement, SEASONS), by = decidedBy(requirement), {atLeast} = requirement
  const {seasons, verdicts, hatches, scoredFor, otherWords, aged} = type, chicks = [...verdicts.keys()]
  if (seasons.length === 0) return {...nothing, aged}
  const rate = trueBredAmong(type, hatches), shape = {of: 'seasons', name: [...new Set([seasons[0], seasons.at(-1)])].join(' to '), sex: 'all'} as const
  const unlisted = type.ofAge.map(({parentage, id, unlisted: count}) => ({parentage, hatch: {id}, count})), told = new Map<OfASire, Verdict>(verdicts), all = sumChicks(chicks) + rate.unlisted
  const counted = (open: boolean | null): TrueBredPart => partOfFamilies(shape, countByFamily<OfASire & {readonly count: number}>([...chicks, ...unlisted], one => isTrue(told.get(one), open)), all)
  const part = counted(null), ifFail = counted(false), ifPass = counted(true), open = {scored: rate.partScored, unlisted: sumChicks(unlisted)}
  const worst = valueOf(ifFail, by), sure = atLeast !== null && worst !== null && worst >= atLeast - SLACK
  const looks = asked.looks.map(look => ({clause: look.clause, trait: look.scored, scored: scoredFor.get(look) ?? 0, otherWords: otherWords.get(look) ?? 0}))
  const shown: ShownOfType = {kind: 'true-to-type', by: asked.by, decidedBy: by, seasons, looks, untold: asked.untold, rate, part, ifFail, ifPass, open, sure}
  const isOpen = asked.by !== 'required' && (looks.some(({scored}) => scored === 0) || (asked.by === 'clauses' && asked.untold.length > 0))
  const state = atLeast === null || isOpen || part.share.kind === 'cannot-say' ? null : stateOf(shown, atLeast)
  return judged(state, shown, {behind: behindOf(type), aged, ways: waysOf(requirement, state, shown, asked, type, isOpen, book)})
}

/** What a chick counts for: those not fully scored, and those that nobody listed and so have no verdict, as is asked; null: it does not count. */
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
function behindOf({verdicts, required}: TypeOfChicks): Behind {
  const counted = [...verdicts].filter(([, {is}]) => is === 'right' || is === 'off' || is === 'part-scored').map(([chick]) => chick), ids = new Set(required.map(({id}) => id))
  const scores = counted.flatMap(chick => [...chick.looks].flatMap(([trait, {counted: score}]) => (score && ids.has(trait.id) ? [score] : [])))
  const files = [...new Set([...counted.map(({hatch, at}) => (hatch?.at ?? at).file), ...scores.map(({at}) => at.file)])]
  return behind(counted.flatMap(chick => (chick.kind === 'bird' ? [chick] : [])), files.map(file => ({at: {file, path: []}})), [...scores.map(({on}) => on?.last), ...counted.map(({hatched}) => hatched?.last)])
}

function waysOf({atLeast, seasons: window}: Requirement, state: boolean | null, shown: ShownOfType, asked: LooksAsked, type: TypeOfChicks, isOpen: boolean, book: Sources['book']): readonly Way[] {
  if (atLeast === null) return [{kind: 'name-figure', earliest: null}]
  const {verdicts} = type, all = [...verdicts], chicks = all.map(([chick]) => chick)
  if (isOpen) return [
    ...(asked.untold.length > 0 ? [{kind: 'hold-clauses', clauses: asked.untold, earliest: null} as const] : []),
    ...asked.looks.filter(look => (type.scoredFor.get(look) ?? 0) === 0).map((look): Way => {
      const able = chicks.filter(chick => chick.left === null && isAskedOf(look, chick)), old = able.filter(chick => oldEnough(look.trait, chick, book.asOf))
      return {kind: 'score', trait: look.scored, clause: look.clause, ...split(old.filter(chick => countedValue(chick, look.scored) === null)), earliest: old.length > 0 ? onDay(book.asOf) : firstOfAge(able, look.trait.atAge ?? look.trait.scoredFrom)}
    }),
  ]
  const of = (is: Verdict['is']): readonly Chick[] => all.filter(([, verdict]) => verdict.is === is).map(([chick]) => chick)
  const rest = of('part-scored'), {unlisted} = shown.open, right = wantedOfRest(shown, atLeast), young = of('too-young'), ages = asked.looks.map(({trait}) => trait.atAge ?? trait.scoredFrom)
  if (shown.part.share.kind === 'cannot-say' && young.length > 0) return [{kind: 'of-age', chicks: sumChicks(young), earliest: firstOfAge(young, Math.max(0, ...ages))}]
  const bySeason = shown.seasons.map(season => ({season, ...sumOf(all.filter(([chick, {is}]) => seasonOf(chick) === season && (is === 'right' || is === 'off' || is === 'part-scored'))
    .map(([{count}, {is}]) => ({n: count, k: is === 'right' ? count : 0})))}))
  const {chicks: more, season, ...rate} = chicksToReach(bySeason, Math.max(1, window ?? SEASONS), atLeast, shown.decidedBy, shown.ifFail.family, nextSeason(book, shown.seasons))
  const further: Way = {kind: 'chicks-true', more, ...rate, earliest: season === null ? null : inSeason(season)}
  const living = rest.filter(({left}) => left === null), able = sumChicks(living) + unlisted, now = onDay(book.asOf)
  // those that left can be scored no more
  if (state === false || able === 0 || right === null || right > able) return [further]
  return [
    ...(living.length === 0 ? [] : [{kind: 'score-rest', ...split(living), gone: sumChicks(rest) - sumChicks(living), right, earliest: now} as const]),
    ...(unlisted === 0 ? [] : [{kind: 'follow-chicks', chicks: unlisted, earliest: now} as const]), ...(rate.sires > 0 ? [further] : []),
  ]
}

/** How many of the chicks not fully scored, or not listed, must be right, were the others to fail; null where all of them would not be enough. */
function wantedOfRest({rate: {passes, fails}, open: {scored, unlisted}, decidedBy: by, ifFail}: ShownOfType, mark: number): number | null {
  const n = passes + fails + scored + unlisted, figure = figureOf(by, ifFail.family)
  return n === 0 ? null : leastWhole(0, scored + unlisted, more => figure(passes + more, n) >= mark - SLACK)
}

const sumChicks = (chicks: readonly Pick<Chick, 'count'>[]): number => chicks.reduce((sum, {count}) => sum + count, 0)

const split = (chicks: readonly Chick[]): {readonly birds: readonly Bird[]; readonly unbanded: number} =>
  ({birds: chicks.flatMap(chick => (chick.kind === 'bird' ? [chick] : [])), unbanded: sumChicks(chicks.filter(({kind}) => kind === 'tally'))})

function firstOfAge(chicks: readonly Chick[], age: number): Way['earliest'] {
  const days = chicks.flatMap(({hatched}) => (hatched === null ? [] : [hatched.last + age]))
  return days.length === 0 ? null : onDay(Math.min(...days))
}
