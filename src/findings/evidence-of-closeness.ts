/** Evidence of how closely the breeders are bred. */
import type {Bird, Requirement} from '../logbook/book.ts'
import {effectiveSize} from '../pedigree/census-size.ts'
import {FEWEST_FAMILIES} from '../statistics/family-bootstrap.ts'
import {leastWhole} from '../statistics/least-whole.ts'
import {meanAndDeviation} from '../statistics/mean-and-deviation.ts'
import {breedersAsked} from './breeders-asked.ts'
import {judged, type Finding} from './evidence-found.ts'
import type {Sources} from './evidence-shown.ts'
import {maleLines} from './male-lines.ts'
import {inSeason, nextSeason, onDay} from './next-season.ts'
import {riseInside, type RiseInside} from './rise-inside.ts'
import type {ClosenessPart, InbreedingOfBreeders, ShownInbreeding} from './shown-of-breeding.ts'
import type {Way} from './ways.ts'

const SLACK = 1e-12
const MOST_MALES = 1000
const MOST_NAMED = 5

/**
 * Are the breeders as little inbred, and bred on as broad a base, as is asked? Whichever are asked: their mean F against the most that will do; the rise in a generation mated inside the
 * breed, and the effective size that it comes to, of the latest such step; and the lines of males that the breeding cocks are of.
 *
 * Rise and size are those of F or of mean kinship, whichever rose the faster: F falls when two lines are crossed, and the flock is no broader for it. Any figure on the wrong side: not yet. A
 * figure on the right side cannot be told while possible parents could take it across, or while an ancestor nearer than the third generation is not in the book, for then F is at least what is
 * worked. With `judged-on: cautious` rate and size are read at the end of their 95% interval by sire families, and cannot be told under five of these.
 *
 * @see `riseInside` for the figures
 */
export function inbreeding(asked: Requirement, from: Sources): Finding {
  const {birds, untold, behind} = breedersAsked(asked, from), {atMost, rateAtMost, sizeAtLeast, maleLines: linesAsked} = asked, of = ofBreeders(birds, from)
  const lines = maleLines(birds), males = birds.filter(({sex}) => sex === 'male').length, females = birds.filter(({sex}) => sex === 'female').length
  const rise = rateAtMost === null && sizeAtLeast === null ? null : riseInside(from.ladder, from.kinship, from.pedigree), cautious = asked.judgedOn === 'cautious'
  const parts: readonly ClosenessPart[] = [
    ...(atMost === null ? [] : [meanPart(of, atMost)]), ...(rateAtMost === null ? [] : [ratePart(rise, rateAtMost, cautious)]), ...(sizeAtLeast === null ? [] : [sizePart(rise, sizeAtLeast, cautious)]),
    ...(linesAsked === null ? [] : [{of: 'male-lines', mark: linesAsked, have: lines.least, low: lines.least, high: lines.most, by: null, met: lines.least >= linesAsked ? true : lines.most < linesAsked ? false : null} as const]),
  ]
  const shown: ShownInbreeding = {
    kind: 'inbreeding', asked: atMost, of, parts, untold, lines: linesAsked === null ? [] : lines.lines, census: males > 0 && females > 0 ? effectiveSize(males, females) : null, rise, decidedBy: cautious ? 'cautious' : 'estimate',
  }
  const verdicts = parts.map(({met}) => met), state = of === null || parts.length === 0 ? null : verdicts.includes(false) ? false : verdicts.includes(null) || untold.length > 0 ? null : true
  return judged(state, shown, {behind, ways: parts.length === 0 ? [{kind: 'name-figure', earliest: null}] : of === null ? [{kind: 'keep-breeders', earliest: null}] : waysOf(shown, of, {males, females}, birds, from)})
}

function ofBreeders(birds: readonly Bird[], {kinship, pedigree}: Sources): InbreedingOfBreeders | null {
  const each = birds.map(bird => ({bird, ...kinship.of(bird)})), mean = (values: readonly number[]): number => meanAndDeviation(values).mean
  if (each.length === 0) return null
  return {
    birds: each.length, mean: mean(each.map(({f}) => f.mean)), low: mean(each.map(({f}) => f.low)), high: mean(each.map(({f}) => f.high)),
    byF: each.toSorted((a, b) => b.f.mean - a.f.mean || (a.bird.id < b.bird.id ? -1 : 1)).map(({bird, f}) => ({bird, f: f.mean})),
    atLeast: each.filter(({atLeast}) => atLeast).map(({bird}) => bird), generations: mean(each.map(({equivalent}) => equivalent)), kinship: kinship.autosome.meansAmong(birds.map(pedigree.numberOf)).group,
  }
}

function meanPart(of: InbreedingOfBreeders | null, mark: number): ClosenessPart {
  if (of === null) return {of: 'mean', mark, have: null, low: null, high: null, by: null, met: null}
  const isOver = of.mean > mark + SLACK, isOpen = of.high > mark + SLACK || of.atLeast.length > 0
  return {of: 'mean', mark, have: of.mean, low: of.low, high: of.high, by: null, met: isOver ? false : isOpen ? null : true}
}

/** Of F and kinship the one that rose the faster; null where neither is known. F alone, where it fell, tells nothing. */
function worse(rise: RiseInside, of: 'latest' | 'average'): {readonly by: 'inbreeding' | 'kinship'; readonly value: number; readonly low: number | null; readonly high: number | null} | null {
  const {value, interval} = rise.inbreeding[of], kin = rise.kinship?.[of] ?? null, highs = [interval, ...(kin ? [kin.interval] : [])].map(each => each?.high ?? null)
  if (kin === null && value <= 0) return null
  const by = kin !== null && kin.value > value ? 'kinship' : 'inbreeding', decides = by === 'kinship' && kin ? kin : {value, interval}
  return {by, value: decides.value, low: decides.interval?.low ?? null, high: highs.includes(null) ? null : Math.max(...highs.map(high => high ?? 0))}
}

function ratePart(rise: RiseInside | null, mark: number, cautious: boolean): ClosenessPart {
  const found = rise && worse(rise, 'latest')
  if (!rise || !found) return {of: 'rate', mark, have: null, low: null, high: null, by: null, met: null}
  const {by, value: have, low, high} = found, held = cautious ? high : have
  return {of: 'rate', mark, have, low, high, by, met: have > mark + SLACK || (held !== null && held > mark + SLACK) ? false : held === null || rise.atLeast > 0 ? null : true}
}

/** Where neither F nor kinship rises there is no size that it comes to. */
function sizePart(rise: RiseInside | null, mark: number, cautious: boolean): ClosenessPart {
  const found = rise && worse(rise, 'average')
  if (!rise || !found || found.value <= 0) return {of: 'size', mark, have: null, low: null, high: null, by: null, met: null}
  const sizeOf = (rate: number | null): number | null => (rate !== null && rate > 0 ? 1 / (2 * rate) : null)
  const {by} = found, have = 1 / (2 * found.value), low = sizeOf(found.high), held = cautious ? low : have
  return {of: 'size', mark, have, low, high: sizeOf(found.low), by, met: have < mark - SLACK || (held !== null && held < mark - SLACK) ? false : held === null || rise.atLeast > 0 ? null : true}
}

function waysOf({parts, rise, census: count}: ShownInbreeding, {atLeast}: InbreedingOfBreeders, {males, females}: {readonly males: number; readonly females: number}, birds: readonly Bird[], from: Sources): readonly Way[] {
  const {book, census, oneMoreMale} = from, season = nextSeason(book), next = inSeason(season), now = onDay(book.asOf)
  const spare = census.alive.filter(bird => bird.sex === 'male' && bird.step.kind !== 'strain' && !birds.includes(bird)), choices = (oneMoreMale?.choices ?? []).map(({male}) => male)
  const over = parts.flatMap(({of, met, have, mark, by}): readonly (Extract<Way, {readonly kind: 'mate-wider'}>['figures'][number])[] => {
    if (met !== false || have === null || of === 'male-lines') return []
    // more males would lift the count, and the size only as far as that
    if (of === 'size') return count !== null && count >= mark ? [{of, have, mark}] : []
    return [{of: of === 'rate' && by === 'kinship' ? by : of, have, mark}]
  })
  const least = over.length === 0 ? null : leastAkin(birds, from), ofMean = over.find(({of}) => of === 'mean')
  // chicks of the next season are bred from in the one after
  const later = ofMean === undefined ? next : least !== null && least <= ofMean.mark ? inSeason(season + 1) : null
  const wider: readonly Way[] = over.length === 0 ? [] : [{kind: 'mate-wider', figures: over, least, earliest: later}]
  const untold = (have: number | null): Way => (have === null || rise === null ? {kind: 'breed-on', earliest: next} : rise.atLeast > 0 ? {kind: 'know-descent', birds: atLeast, earliest: null}
    : rise.families < FEWEST_FAMILIES ? {kind: 'more-sires', more: FEWEST_FAMILIES - rise.families, earliest: next} : {kind: 'breed-on', earliest: next})
  return [...wider, ...onlyOnce(parts.flatMap(({of, met, have, mark}): readonly Way[] => {
    if (met === true) return []
    switch (of) {
      case 'mean': return met === false ? [] : [{kind: 'know-descent', birds: atLeast.length > 0 ? atLeast : doubtful(birds), earliest: null}]
      case 'rate': return met === false ? [] : [untold(have)]
      case 'size': {
        if (met === null) return [untold(have)]
        if (count !== null && count >= mark) return []
        const more = females === 0 ? null : leastWhole(1, MOST_MALES, extra => effectiveSize(males + extra, females) >= mark)
        // chicks that have hatched are as closely bred as they are: of the next season at the earliest, and where no male is at hand of the one after
        return [{kind: 'more-males', more, choices: choices.slice(0, Math.min(MOST_NAMED, more ?? MOST_NAMED)), earliest: inSeason(more === null || choices.length >= more ? season : season + 1)}]
      }
      case 'male-lines': {
        const ours = new Set(maleLines(birds).lines.map(({founder}) => founder)), others = maleLines(spare).lines.filter(({founder}) => founder !== null && !ours.has(founder)), more = mark - (have ?? 0)
        return [{kind: 'more-lines', more, males: others.flatMap(({males: [first]}) => first ?? []), earliest: others.length >= more ? now : null}]
      }
    }
  }))]
}

/** Rate and size may want the same. */
const onlyOnce = (ways: readonly Way[]): readonly Way[] => ways.filter((way, index) => !ways.slice(0, index).some(other => other.kind === way.kind))

/** Mean F of the chicks if each hen goes to the male least akin to her, of pairs that lose no chicks by a lethal rule; null where there is no such pair. */
function leastAkin(birds: readonly Bird[], {breedingPairs: {pairs}, pairHarm}: Sources): number | null {
  const own = new Set(birds), best = new Map<Bird, number>()
  // the least first
  for (const {male, hen, mean} of pairs) if (own.has(male) && own.has(hen) && !best.has(hen) && pairHarm.lossOf(male, hen) === null) best.set(hen, mean)
  return best.size === 0 ? null : meanAndDeviation([...best.values()]).mean
}

const doubtful = (birds: readonly Bird[]): readonly Bird[] => birds.filter(({parentage: {kind}, maybe}) => kind === 'uncertain' || maybe.length > 0)
