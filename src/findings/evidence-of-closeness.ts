/** Evidence of how closely the breeders are bred. */
import type {Bird, Requirement} from '../logbook/book.ts'
import {effectiveSize} from '../pedigree/census-size.ts'
import {leastWhole} from '../statistics/least-whole.ts'
import {meanAndDeviation} from '../statistics/mean-and-deviation.ts'
import {normalQuantile} from '../statistics/normal-quantile.ts'
import {breedersAsked} from './breeders-asked.ts'
import type {ClosenessOfStep} from './closeness.ts'
import {judged, type Finding} from './evidence-found.ts'
import type {Sources} from './evidence-shown.ts'
import {maleLines} from './male-lines.ts'
import {inSeason, nextSeason, onDay} from './next-season.ts'
import type {ClosenessPart, InbreedingOfBreeders, ShownInbreeding} from './shown-of-breeding.ts'
import type {Way} from './ways.ts'

const SLACK = 1e-12
const MOST_MALES = 1000
const MOST_NAMED = 5

/**
 * Are the breeders as little inbred, and bred on as broad a base, as is asked? Whichever are asked: their mean F against the most that will do; the rise of F in a generation mated inside the breed,
 * and the effective size that it comes to, of the latest such step; and the lines of males that the breeding cocks are of.
 *
 * Any figure on the wrong side: not yet. A figure on the right side cannot be told while possible parents could take it across, or while an ancestor nearer than the third generation is not in the
 * book, for then F is at least what is worked. With `judged-on: cautious` rate and size are read at the end of the 95% interval of the birds' own rates.
 */
export function inbreeding(asked: Requirement, from: Sources): Finding {
  const {birds, untold, behind} = breedersAsked(asked, from), {atMost, rateAtMost, sizeAtLeast, maleLines: linesAsked} = asked, of = ofBreeders(birds, from)
  const lines = maleLines(birds), males = birds.filter(({sex}) => sex === 'male').length, females = birds.filter(({sex}) => sex === 'female').length
  const step = from.closeness.findLast(each => each.step !== 'mixed' && each.interSe > 0 && (each.rate !== null || (each.realised !== null && each.realised.count > 0))) ?? null
  const cautious = asked.judgedOn === 'cautious'
  const parts: readonly ClosenessPart[] = [
    ...(atMost === null ? [] : [meanPart(of, atMost)]), ...(rateAtMost === null ? [] : [ratePart(step, rateAtMost, cautious)]), ...(sizeAtLeast === null ? [] : [sizePart(step, sizeAtLeast, cautious)]),
    ...(linesAsked === null ? [] : [{of: 'male-lines', mark: linesAsked, have: lines.least, low: lines.least, high: lines.most, met: lines.least >= linesAsked ? true : lines.most < linesAsked ? false : null} as const]),
  ]
  const shown: ShownInbreeding = {
    kind: 'inbreeding', asked: atMost, of, parts, untold, lines: linesAsked === null ? [] : lines.lines, census: males > 0 && females > 0 ? effectiveSize(males, females) : null,
    step: step && (rateAtMost !== null || sizeAtLeast !== null) ? {label: step.step, since: step.rate?.since ?? null, birds: step.birds, standardError: step.realised?.standardError ?? null, atLeast: step.atLeast} : null,
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
  if (of === null) return {of: 'mean', mark, have: null, low: null, high: null, met: null}
  const isOver = of.mean > mark + SLACK, isOpen = of.high > mark + SLACK || of.atLeast.length > 0
  return {of: 'mean', mark, have: of.mean, low: of.low, high: of.high, met: isOver ? false : isOpen ? null : true}
}

/** The mean of the birds' own rates with its 95% interval; null where one bird, or none, has a rate. */
function ownRate({realised}: ClosenessOfStep): {readonly rate: number; readonly low: number; readonly high: number} | null {
  if (!realised || typeof realised.size !== 'number' || realised.standardError === null) return null
  // the error of the size, carried back by the slope of 1/(2x)
  const off = normalQuantile(0.95) * realised.standardError / (2 * realised.size ** 2)
  return {rate: realised.rate, low: Math.max(0, realised.rate - off), high: realised.rate + off}
}

function ratePart(step: ClosenessOfStep | null, mark: number, cautious: boolean): ClosenessPart {
  const have = step ? step.rate?.value ?? step.realised?.rate ?? null : null, own = step && ownRate(step)
  if (step === null || have === null) return {of: 'rate', mark, have, low: null, high: null, met: null}
  const held = cautious ? (own ? Math.max(have, own.high) : null) : have
  return {of: 'rate', mark, have, low: own?.low ?? null, high: own?.high ?? null, met: have > mark + SLACK || (held !== null && held > mark + SLACK) ? false : held === null || step.atLeast > 0 ? null : true}
}

/** Where F does not rise there is no size that it comes to. */
function sizePart(step: ClosenessOfStep | null, mark: number, cautious: boolean): ClosenessPart {
  const size = step?.realised?.size, have = typeof size === 'number' ? size : null, own = step && ownRate(step)
  const low = own ? 1 / (2 * own.high) : null, high = own && own.low > 0 ? 1 / (2 * own.low) : null, held = cautious ? low : have
  if (step === null || have === null) return {of: 'size', mark, have, low, high, met: null}
  return {of: 'size', mark, have, low, high, met: have < mark - SLACK || (held !== null && held < mark - SLACK) ? false : held === null || step.atLeast > 0 ? null : true}
}

function waysOf({parts}: ShownInbreeding, {atLeast}: InbreedingOfBreeders, {males, females}: {readonly males: number; readonly females: number}, birds: readonly Bird[], from: Sources): readonly Way[] {
  const {book, census, oneMoreMale} = from, next = inSeason(nextSeason(book)), now = onDay(book.asOf)
  const spare = census.alive.filter(bird => bird.sex === 'male' && bird.step.kind !== 'strain' && !birds.includes(bird)), choices = (oneMoreMale?.choices ?? []).map(({male}) => male)
  const over = parts.flatMap(({of, met, have, mark}) => ((of === 'mean' || of === 'rate') && met === false && have !== null ? [{of, have, mark}] : [])), least = over.length === 0 ? null : leastAkin(birds, from), ofMean = over.find(({of}) => of === 'mean')
  // chicks of the next season are bred from in the one after
  const later = ofMean === undefined ? next : least !== null && least <= ofMean.mark ? inSeason(nextSeason(book) + 1) : null
  const wider: readonly Way[] = over.length === 0 ? [] : [{kind: 'mate-wider', figures: over, least, earliest: later}]
  return [...wider, ...parts.flatMap(({of, met, have, mark}): readonly Way[] => {
    if (met === true) return []
    switch (of) {
      case 'mean': return met === false ? [] : [{kind: 'know-descent', birds: atLeast.length > 0 ? atLeast : doubtful(birds), earliest: null}]
      case 'rate': return have === null ? [{kind: 'breed-on', earliest: next}] : met === false ? [] : [{kind: 'know-descent', birds: atLeast, earliest: null}]
      case 'size': {
        if (have === null) return [{kind: 'breed-on', earliest: next}]
        if (met === null) return [{kind: 'know-descent', birds: atLeast, earliest: null}]
        const more = females === 0 ? null : leastWhole(1, MOST_MALES, extra => effectiveSize(males + extra, females) >= mark)
        return [{kind: 'more-males', more, choices: choices.slice(0, Math.min(MOST_NAMED, more ?? MOST_NAMED)), earliest: more === null ? null : choices.length >= more ? now : next}]
      }
      case 'male-lines': {
        const ours = new Set(maleLines(birds).lines.map(({founder}) => founder)), others = maleLines(spare).lines.filter(({founder}) => founder !== null && !ours.has(founder)), more = mark - (have ?? 0)
        return [{kind: 'more-lines', more, males: others.flatMap(({males: [first]}) => first ?? []), earliest: others.length >= more ? now : null}]
      }
    }
  })]
}

/** Mean F of the chicks if each hen goes to the male least akin to her, of pairs that lose no chicks by a lethal rule; null where there is no such pair. */
function leastAkin(birds: readonly Bird[], {breedingPairs: {pairs}, pairHarm}: Sources): number | null {
  const own = new Set(birds), best = new Map<Bird, number>()
  // the least first
  for (const {male, hen, mean} of pairs) if (own.has(male) && own.has(hen) && !best.has(hen) && pairHarm.lossOf(male, hen) === null) best.set(hen, mean)
  return best.size === 0 ? null : meanAndDeviation([...best.values()]).mean
}

const doubtful = (birds: readonly Bird[]): readonly Bird[] => birds.filter(({parentage: {kind}, maybe}) => kind === 'uncertain' || maybe.length > 0)
