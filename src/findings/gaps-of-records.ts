import type {Bird, Hatch, Logbook} from '../logbook/book.ts'
import {isWhole} from '../records/dates.ts'
import type {Spot} from '../records/problem.ts'
import {ladderChicks, type Chick} from './ladder-chicks.ts'
import {bothParentsCertain} from './identity-of-living.ts'

export type GapKind =
  | 'unbanded' | 'unlisted' | 'parents' | 'several-sires' | 'several-dams' | 'hatch-day' | 'sex' | 'keeper' | 'candled' | 'left-undated' | 'lost-band' | 'maybe-another' | 'outside' | 'unlike' | 'step-differs'

/** Something that the records do not say, with every bird and record that lacks it. */
export interface Gap {
  readonly kind: GapKind
  /** chicks, birds, settings or scores that lack it, and of how many */
  readonly count: number
  readonly of: number
  readonly birds: readonly Bird[]
  /** of the count, chicks without a band */
  readonly unbanded: number
  readonly records: readonly Spot[]
}

/**
 * What is missing or uncertain in the records of the breed? Each gap with its own birds and records, so that it can be followed back; none that is empty.
 *
 * All are counted over the chicks of the ladder and their settings: birds of pure strains have no parents here that could be known.
 */
export function gapsOfRecords(book: Logbook): readonly Gap[] {
  const chicks = ladderChicks(book), birds = chicks.filter(chick => chick.kind === 'bird'), tallies = chicks.filter(chick => chick.kind === 'tally')
  const hatches = book.hatches.filter(({step}) => step.kind !== 'strain'), unlistedIn = hatches.filter(({unlisted}) => unlisted > 0), set = hatches.filter(({hatched}) => hatched !== null)
  const ofBirds = (kind: GapKind, lacks: (bird: Bird) => boolean): Gap => {
    const lacking = birds.filter(lacks)
    return {kind, count: lacking.length, of: birds.length, birds: lacking, unbanded: 0, records: lacking.map(({at}) => at)}
  }
  const ofHatches = (kind: GapKind, lacking: readonly Hatch[]): Gap => ({kind, count: lacking.length, of: set.length, birds: [], unbanded: 0, records: lacking.map(({at}) => at)})
  const tallied = sum(tallies, ({count}) => count), unlisted = sum(unlistedIn, hatch => hatch.unlisted), outside = outsideScores(book, chicks)
  return [
    {kind: 'unbanded' as const, count: tallied + unlisted, of: birds.length + tallied + unlisted, birds: [], unbanded: tallied + unlisted, records: [...tallies, ...unlistedIn].map(({at}) => at)},
    {...ofHatches('unlisted', unlistedIn), count: unlisted, unbanded: unlisted},
    ofBirds('parents', bird => !bothParentsCertain(bird)),
    ofBirds('several-sires', ({parentage}) => parentage.sires.length > 1), ofBirds('several-dams', ({parentage}) => parentage.dams.length > 1),
    ofBirds('hatch-day', ({hatched}) => hatched === null || !isWhole(hatched)), ofBirds('sex', ({sex}) => sex === 'unknown'),
    {...ofBirds('keeper', ({left, keptAt}) => left === null && keptAt.length === 0), of: birds.filter(({left}) => left === null).length},
    ofHatches('candled', set.filter(({clear}) => clear === null)),
    ofBirds('left-undated', ({left}) => left !== null && left.on === null), ofBirds('lost-band', ({bands}) => bands.some(({lost}) => lost)), ofBirds('maybe-another', ({maybe}) => maybe.length > 0),
    {kind: 'outside' as const, count: outside.length, of: outside.length, birds: outside.flatMap(({chick}) => (chick.kind === 'bird' ? [chick] : [])), unbanded: sum(outside, ({chick}) => (chick.kind === 'bird' ? 0 : chick.count)), records: outside.map(({at}) => at)},
    {...ofBirds('unlike', bird => unlikeScores(book, bird).length > 0), records: birds.flatMap(bird => unlikeScores(book, bird))},
    ofBirds('step-differs', ({stepWritten, step}) => stepWritten !== null && stepWritten !== step.label),
  ].filter(({count}) => count > 0)
}

/** Where the scores of a required look stand that do not agree, none of them struck or made outside its days. */
function unlikeScores({traits}: Logbook, bird: Bird): readonly Spot[] {
  return traits.filter(({required}) => required).flatMap(trait => {
    const scores = (bird.looks.get(trait)?.scores ?? []).filter(({struck, outside}) => struck === null && !outside)
    return new Set(scores.map(({value}) => value)).size > 1 ? scores.map(({at}) => at) : []
  })
}

/** Scored too early or off the weighing window, and not struck. One weighing that several traits read is one. */
function outsideScores({traits}: Logbook, chicks: readonly Chick[]): readonly {readonly chick: Chick; readonly at: Spot}[] {
  return chicks.flatMap(chick => {
    const spots = traits.flatMap(trait => (chick.looks.get(trait)?.scores ?? []).flatMap(({struck, outside, at}) => (struck === null && outside ? [at] : [])))
    return [...new Map(spots.map(at => [JSON.stringify(at), at])).values()].map(at => ({chick, at}))
  })
}

const sum = <Thing>(things: readonly Thing[], of: (thing: Thing) => number): number => things.reduce((total, thing) => total + of(thing), 0)
