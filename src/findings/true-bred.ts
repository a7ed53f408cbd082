import type {Bird, Hatch, Logbook, Pen, Trait} from '../logbook/book.ts'
import type {CannotSay, LeftOut, Share} from './estimate.ts'
import {ladderChicks, seasonOf, seasonOfHatch, type Chick} from './ladder-chicks.ts'
import type {LadderStep} from './ladder.ts'
import {LeftAside} from './left-out.ts'
import {penOf} from './pen-of.ts'
import {shareOf} from './share-of.ts'
import {requiredTraits, verdictOn, type Verdict} from './verdict.ts'

/** How many chicks of a group show everything required. passes + fails + partScored + lost + tooYoung + unlisted = hatched. */
export interface TrueBredRate {
  readonly passes: number
  /** of the passes, those too young or not of the sex to show one required trait or more: judged on the others alone */
  readonly passesOnFewer: number
  readonly fails: number
  /** not fully scored, nothing off so far */
  readonly partScored: number
  /** left before they could be scored */
  readonly lost: number
  readonly tooYoung: number
  /** hatched, neither banded nor tallied */
  readonly unlisted: number
  /** of the passes and fails, those culled since, and those that never wore a band */
  readonly culled: number
  readonly unbanded: number
  /** passes of passes and fails */
  readonly rate: Share | CannotSay
  /** the same with every chick that was not fully scored failing, and passing */
  readonly ifAllFail: Share | CannotSay
  readonly ifAllPass: Share | CannotSay
  /** each required trait on its own: chicks showing what is wanted, of those scored and judged; and the passes that could not be judged by it */
  readonly traits: readonly {readonly trait: Trait; readonly share: Share | CannotSay; readonly passesWithout: number}[]
  /** sires, certain or possible, of the chicks that pass or fail: chicks of few families are not independent */
  readonly sires: number
}

export interface StepTrueBred extends TrueBredRate {
  readonly step: string
  /** both parents of the new breed: what "breeds true" is about */
  readonly interSe: boolean
}

export interface TrueBred {
  readonly required: readonly Trait[]
  /** what every banded bird and tally of the ladder shows */
  readonly verdicts: ReadonlyMap<Chick, Verdict>
  /** in the ladder's order; a step not reached has no entry */
  readonly steps: readonly StepTrueBred[]
  /** chicks whose pen is certain, in the pens' order */
  readonly pens: readonly (TrueBredRate & {readonly pen: Pen})[]
  /** every chick of a season, ascending */
  readonly seasons: readonly (TrueBredRate & {readonly season: number})[]
  /** chicks of steps mated inter se only, by season, ascending */
  readonly interSeSeasons: readonly (TrueBredRate & {readonly season: number})[]
  /** all chicks of steps mated inter se; null while there is none */
  readonly interSe: TrueBredRate | null
}

class Group {
  readonly counts = {right: 0, off: 0, 'part-scored': 0, 'too-young': 0, lost: 0}
  readonly traits: ReadonlyMap<Trait, {right: number; judged: number; passesWithout: number}>
  readonly sires = new Set<Bird>()
  passesOnFewer = 0
  unlisted = 0
  culled = 0
  unbanded = 0

  constructor(required: readonly Trait[]) {
    this.traits = new Map(required.map(trait => [trait, {right: 0, judged: 0, passesWithout: 0}]))
  }

  add(chick: Chick, verdict: Verdict): void {
    this.counts[verdict.is] += chick.count
    for (const [trait, judged] of this.traits) {
      if (verdict.right.includes(trait)) judged.right += chick.count
      if (verdict.right.includes(trait) || verdict.off.includes(trait)) judged.judged += chick.count
      else if (verdict.is === 'right') judged.passesWithout += chick.count
    }
    if (verdict.is === 'right' && verdict.right.length < this.traits.size) this.passesOnFewer += chick.count
    if (verdict.is !== 'right' && verdict.is !== 'off') return
    for (const {bird} of chick.parentage.sires) this.sires.add(bird)
    if (chick.left?.how === 'culled') this.culled += chick.count
    if (chick.kind === 'tally') this.unbanded += chick.count
  }

  rate(): TrueBredRate {
    const {right: passes, off: fails, 'part-scored': partScored, lost, 'too-young': tooYoung} = this.counts
    const aside = new LeftAside()
    aside.add('too-young', tooYoung)
    aside.add('lost-before-scoring', lost)
    aside.add('not-listed', this.unlisted)
    const apart: readonly LeftOut[] = aside.list()
    aside.add('unscored', partScored)
    // where nothing is required nothing can fail: no share is given
    const all = this.traits.size === 0 ? 0 : passes + fails + partScored
    return {
      passes, passesOnFewer: this.passesOnFewer, fails, partScored, lost, tooYoung, unlisted: this.unlisted, culled: this.culled, unbanded: this.unbanded, sires: this.sires.size,
      rate: shareOf(passes, passes + fails, aside.list()), ifAllFail: shareOf(passes, all, apart), ifAllPass: shareOf(passes + partScored, all, apart),
      traits: [...this.traits].map(([trait, {right, judged, passesWithout}]) => ({trait, share: shareOf(right, judged), passesWithout})),
    }
  }
}

function groupAt<Key>(groups: Map<Key, Group>, key: Key, required: readonly Trait[]): Group {
  const known = groups.get(key)
  if (known) return known
  const fresh = new Group(required)
  groups.set(key, fresh)
  return fresh
}

/**
 * Does it breed true? Of the chicks scored, the share that shows every required trait, by step, pen and season.
 *
 *     rate = passes / (passes + fails)
 *
 * Fails: a required trait that the chick shows is off. Passes: at least one required trait was scored, and every one that its
 * sex and age can show was scored and is right; how many of those could not show all of them is told beside. All other chicks are
 * counted apart, and the rate is given with those not fully
 * scored all failing and all passing. Culled chicks count like the kept ones. The interval is Wilson's, for chicks taken as
 * independent; under five sires read it as "these chicks only". Backcross steps cannot breed true: `interSe` tells which can.
 *
 * @see Wilson 1927, J. Am. Stat. Assoc. 22:209–212
 */
export function trueBred(book: Logbook, ladder: readonly LadderStep[]): TrueBred {
  const required = requiredTraits(book)
  const verdicts = new Map<Chick, Verdict>()
  const steps = new Map<string, Group>(), pens = new Map<Pen, Group>(), seasons = new Map<number, Group>(), bred = new Map<number, Group>()
  const interSe = new Group(required)
  const at = <Key>(groups: Map<Key, Group>, key: Key): Group => groupAt(groups, key, required)
  let anyInterSe = false
  const groupsOf = (step: Chick['step'], pen: Pen | null, season: number | null): Group[] => {
    const inLine = step.interSe >= 1
    anyInterSe ||= inLine
    return [
      at(steps, step.label), ...(pen ? [at(pens, pen)] : []), ...(season === null ? [] : [at(seasons, season)]),
      ...(inLine ? [interSe, ...(season === null ? [] : [at(bred, season)])] : []),
    ]
  }
  for (const chick of ladderChicks(book)) {
    const verdict = verdictOn(chick, required, book)
    verdicts.set(chick, verdict)
    for (const group of groupsOf(chick.step, penOf(chick), seasonOf(chick))) group.add(chick, verdict)
  }
  for (const hatch of book.hatches) {
    if (hatch.unlisted <= 0 || hatch.step.kind === 'strain') continue
    const pen = hatch.pens.length === 1 ? hatch.pens[0]?.pen ?? null : null
    for (const group of groupsOf(hatch.step, pen, seasonOfHatch(hatch))) group.unlisted += hatch.unlisted
  }
  const bySeason = (groups: ReadonlyMap<number, Group>): (TrueBredRate & {season: number})[] =>
    [...groups].sort(([a], [b]) => a - b).map(([season, group]) => ({season, ...group.rate()}))
  return {
    required, verdicts,
    steps: ladder.flatMap(entry => {
      const group = steps.get(entry.label)
      return entry.kind === 'planned' || !group ? [] : [{step: entry.label, interSe: entry.step.interSe >= 1, ...group.rate()}]
    }),
    pens: book.pens.flatMap(pen => {
      const group = pens.get(pen)
      return group ? [{pen, ...group.rate()}] : []
    }),
    seasons: bySeason(seasons), interSeSeasons: bySeason(bred), interSe: anyInterSe ? interSe.rate() : null,
  }
}

/** What some chicks are held against, and what each of them shows of it. */
export type Judged = Pick<TrueBred, 'required' | 'verdicts'>

/** The rate among chicks of matings inter se in some seasons together. */
export function trueBredOf(book: Logbook, judged: Judged, seasons: readonly number[]): TrueBredRate {
  const wanted = (season: number | null): boolean => season !== null && seasons.includes(season)
  return trueBredAmong(judged, book.hatches.filter(hatch => wanted(seasonOfHatch(hatch))), chick => wanted(seasonOf(chick)))
}

/** The same among those of them that `isOne` says, with what nobody listed of these hatches. */
export function trueBredAmong({required, verdicts}: Judged, hatches: readonly Hatch[], isOne: (chick: Chick) => boolean = () => true): TrueBredRate {
  const group = new Group(required)
  for (const [chick, verdict] of verdicts) if (chick.step.interSe >= 1 && isOne(chick)) group.add(chick, verdict)
  for (const hatch of hatches) if (hatch.step.interSe >= 1) group.unlisted += hatch.unlisted
  return group.rate()
}
