/** Evidence that the breed does not ask what a bird cannot bear. Local law and a veterinarian go before anything said here. */
import type {Hatch, Requirement} from '../logbook/book.ts'
import {leastWhole} from '../statistics/least-whole.ts'
import type {FamilyLivability} from '../statistics/livability-of-families.ts'
import {scoreInterval} from '../statistics/score-interval.ts'
import {behind, judged, NONE_AGED, type Behind, type Finding} from './evidence-found.ts'
import {papersFor} from './evidence-on-paper.ts'
import type {Sources} from './evidence-shown.ts'
import {siftByDay} from './evidence-window.ts'
import {seasonOfHatch} from './ladder-chicks.ts'
import {FOLLOWED} from './life-watched.ts'
import {lifeToFloor} from './life-to-floor.ts'
import {inSeason, nextSeason, onDay, seasonsOf} from './next-season.ts'
import {requiredGenes} from './required-genes.ts'
import type {LifeAsked, ShownWelfare} from './shown-of-breeding.ts'
import type {Way} from './ways.ts'

const SLACK = 1e-12
const MOST_CHICKS = 10_000

/**
 * Is the breed one that a bird can live in? All of these must hold: no look that the standard requires needs an allele that kills or harms; where a floor is asked (`at-least`), that share of the
 * chicks lives to the age (`to-age`, else eight weeks), in the latest step or in the last seasons named; and somebody says so, in a paper that holds or in the keeper's own statement.
 *
 * What kills: not yet. What only harms by a caution, and a look of which no rule says its genes, is met by a paper that proves it is borne, and cannot be told without. Chicks culled, taken or lost
 * before the age, those of which nothing is written after it, or nothing at all, or no day, count as dead before the floor is met and as living before it is missed.
 */
export function welfare(asked: Requirement, from: Sources): Finding {
  const {papers, valid, aged: agedPapers, behind: paperBehind} = papersFor(asked, from), genes = requiredGenes(asked, from.book), {life, hatches, aged} = lifeAsked(asked, from)
  const lethal = genes.harms.some(({harm}) => harm === 'lethal'), word = valid.length > 0 || asked.stated !== null
  const met: ShownWelfare['met'] = {genes: lethal ? false : genes.untoldClauses.length > 0 || (genes.harms.length + genes.withoutGenes.length > 0 && valid.length === 0) ? null : true, life: life === null ? true : floorMet(life), word: word ? true : papers.length > 0 ? false : null}
  const shown: ShownWelfare = {kind: 'welfare', ...genes, life, papers, valid, stated: asked.stated, met}
  const all = Object.values(met), lived = hatches.map(hatch => hatch.on?.last), found: Behind = behind(hatches.flatMap(({chicks}) => chicks), [...hatches, ...valid, ...(asked.stated === null ? [] : [asked])], [...lived, paperBehind.on])
  return judged(all.includes(false) ? false : all.includes(null) ? null : true, shown, {behind: found, aged: {...aged, older: aged.older + agedPapers.older, earlier: aged.earlier + agedPapers.earlier,
    later: aged.later + agedPapers.later, undated: aged.undated + agedPapers.undated, records: [...aged.records, ...agedPapers.records], last: aged.last === null ? agedPapers.last : Math.max(aged.last, agedPapers.last ?? aged.last)}, ways: waysOf(shown, from)})
}

/** The hatches asked about, and how their chicks lived; null where no floor is asked for. */
function lifeAsked(asked: Requirement, {book, ladder}: Sources): {readonly life: LifeAsked | null; readonly hatches: readonly Hatch[]; readonly aged: Finding['aged']} {
  const bred = book.hatches.filter(({step}) => step.kind !== 'strain'), {counted, aged} = siftByDay(bred, hatch => hatch.on, hatch => hatch.at, asked, book.asOf)
  if (asked.atLeast === null) return {life: null, hatches: [], aged: NONE_AGED}
  const step = ladder.findLast(each => !each.beside && each.label !== 'mixed' && counted.some(hatch => hatch.step.label === each.label))?.label ?? '', seasons = seasonsOf(counted).slice(-Math.max(1, asked.seasons ?? 1))
  const hatches = counted.filter(hatch => (asked.seasons === null ? hatch.step.label === step : seasons.includes(seasonOfHatch(hatch) ?? 0)))
  const age = asked.toAge ?? FOLLOWED
  return {aged, hatches, life: {
    of: asked.seasons === null ? step : [...new Set([seasons[0], seasons.at(-1)])].join(' to '), age, mark: asked.atLeast, decidedBy: asked.judgedOn ?? 'estimate', ...lifeToFloor(hatches, age, book),
  }}
}

/** Met where the floor would be reached though all in doubt died, missed where it would not though all lived. */
function floorMet({found, ifDied, ifLived, mark, decidedBy, undated, unlisted}: LifeAsked): boolean | null {
  if (found === null || ifDied === null || ifLived === null) return null
  const open = undated + unlisted, all = found.n + open, held = ({low, share}: FamilyLivability): number => (decidedBy === 'cautious' ? low : share)
  if ((held(ifDied) * found.n) / all >= mark - SLACK) return true
  return (held(ifLived) * found.n + open) / all < mark - SLACK ? false : null
}

function waysOf({met, life, harms, withoutGenes, valid, untoldClauses}: ShownWelfare, {book}: Sources): readonly Way[] {
  const now = onDay(book.asOf), next = inSeason(nextSeason(book)), lethal = harms.filter(({harm}) => harm === 'lethal'), untold = valid.length > 0 ? [] : withoutGenes, unwritten = life === null ? 0 : life.undated + life.unlisted + life.silent
  const byPaper = met.genes === null && harms.length + untold.length > 0
  return [
    ...(lethal.length > 0 ? [{kind: 'ask-otherwise', harms: lethal, earliest: now} as const] : byPaper ? [{kind: 'veterinary-word', harms, traits: untold, earliest: now} as const] : []),
    ...(untoldClauses.length > 0 ? [{kind: 'hold-clauses', clauses: untoldClauses, earliest: null} as const] : []),
    ...(life === null || met.life === true ? [] : met.life === null && unwritten > 0 ? [{kind: 'follow-chicks', chicks: unwritten, earliest: now} as const]
      : [{kind: 'chicks-live', more: chicksToLive(life, met.life === null), age: life.age, earliest: next} as const]),
    ...(met.word === true || byPaper ? [] : [{kind: 'statement', earliest: now} as const]),
  ]
}

/** Further chicks that would bring the figure to the floor, were every one of them to live to the age; `worst`: though all in doubt died. */
function chicksToLive({found, ifDied, undated, unlisted, mark, decidedBy}: LifeAsked, worst: boolean): number | null {
  const of = worst ? ifDied : found
  if (of === null) return null
  const all = of.n + (worst ? undated + unlisted : 0), alive = of.share * of.n, ratio = of.effective / of.n
  return leastWhole(1, MOST_CHICKS, more => {
    const share = (alive + more) / (all + more)
    return (decidedBy === 'cautious' ? scoreInterval(share, ratio * (all + more)).low : share) >= mark - SLACK
  })
}
