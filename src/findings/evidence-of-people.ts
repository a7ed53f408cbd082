/** Evidence of who breeds, and of the stock bred from. */
import type {Hatch, Keeper, Requirement} from '../logbook/book.ts'
import {isAbout} from './asked-about.ts'
import {breedersAsked} from './breeders-asked.ts'
import {countBySex} from './census.ts'
import {allOf, behind, judged, judgedWith, nothing, type Finding} from './evidence-found.ts'
import {hatchesBred} from './evidence-of-years.ts'
import type {Sources} from './evidence-shown.ts'
import {seasonOfHatch} from './ladder-chicks.ts'
import {inSeason, nextSeason, onDay, seasonsOf} from './next-season.ts'
import type {Way} from './ways.ts'

const keepersOf = (hatch: Hatch): readonly Keeper[] => [...new Set(hatch.keeper ? [hatch.keeper] : hatch.pens.flatMap(({pen}) => pen.keeper ?? []))]

/**
 * How many keepers had a hatch of the breed in each of the last seasons, one where the requirement names no number? The last is the latest with a hatch, or the last in which nothing more can hatch where that is later.
 * Hatches of which the keeper is not on record are counted and help nobody; where they could make the number, it cannot be told. Whether each has agreed to be named stands beside it.
 */
export function independentKeepers(asked: Requirement, from: Sources): Finding {
  const {counted: hatches, aged, beside} = hatchesBred(asked, from), {book} = from, {atLeast} = asked, length = Math.max(1, asked.seasons ?? 1), bred = seasonsOf(hatches)
  if (bred.length === 0) return {...nothing, aged, ways: waysOfKeepers(asked, from, [], [])}
  const last = Math.max(bred.at(-1) ?? 0, nextSeason(book, bred) - 1), seasons = Array.from({length}, (_, index) => last - length + 1 + index)
  const isInThem = (hatch: Hatch): boolean => seasons.includes(seasonOfHatch(hatch) ?? 0), inThem = hatches.filter(isInThem)
  const has = (keeper: Keeper, season: number): boolean => inThem.some(hatch => seasonOfHatch(hatch) === season && keepersOf(hatch).includes(keeper))
  const keepers = book.keepers.filter(keeper => seasons.every(season => has(keeper, season)))
  const short = book.keepers.filter(keeper => !keepers.includes(keeper) && seasons.some(season => has(keeper, season))).map(keeper => ({keeper, lacks: seasons.filter(season => !has(keeper, season))}))
  const withoutKeeper = inThem.filter(hatch => keepersOf(hatch).length === 0)
  // at most as many more as have a hatch, or could have been given one, in whichever season has fewest
  const could = Math.min(withoutKeeper.length, ...seasons.map(season => withoutKeeper.filter(hatch => seasonOfHatch(hatch) === season).length + short.filter(({lacks}) => !lacks.includes(season)).length))
  return judged(judgedWith(keepers.length, atLeast, could), {
    kind: 'independent-keepers', seasons, keepers, short, withoutConsent: keepers.filter(keeper => !keeper.consents).length, withoutKeeper: withoutKeeper.length, beside: beside.filter(isInThem).length,
  }, {behind: behind([], inThem.filter(hatch => keepersOf(hatch).some(keeper => keepers.includes(keeper))), inThem.map(hatch => hatch.on?.last)), aged, ways: waysOfKeepers(asked, from, bred, keepers)})
}

/** Those who have a run of seasons up to the last need only go on; whoever is new needs as many as are asked. The earliest season is that of the last one wanted. */
function waysOfKeepers(asked: Requirement, from: Sources, bred: readonly number[], keepers: readonly Keeper[]): readonly Way[] {
  const {atLeast} = asked, length = Math.max(1, asked.seasons ?? 1), {book} = from
  if (atLeast === null) return [{kind: 'name-figure', earliest: null}]
  const hatches = hatchesBred(asked, from).counted, next = nextSeason(book, bred), more = atLeast - keepers.length
  const going = book.keepers.filter(keeper => !keepers.includes(keeper)).map(keeper => {
    let run = 0
    while (run < length && hatches.some(hatch => seasonOfHatch(hatch) === next - 1 - run && keepersOf(hatch).includes(keeper))) run += 1
    return {keeper, lacks: length - run}
  }).filter(({lacks}) => lacks < length).sort((a, b) => a.lacks - b.lacks || (a.keeper.id < b.keeper.id ? -1 : 1)).slice(0, Math.max(0, more))
  const last = going.length < more ? length : Math.max(1, ...going.map(({lacks}) => lacks))
  return [{kind: 'keepers', more, seasons: length, going, earliest: inSeason(next + last - 1)}]
}

/** Living breeders of the breed itself, of the classes, ages and varieties asked about; pure strains left aside. */
export function aliveBreeders(asked: Requirement, from: Sources): Finding {
  const {males, females, atLeast} = asked, {census, book} = from, {birds, untold, behind: found} = breedersAsked(asked, from), breeders = countBySex(birds), unsure = countBySex(untold)
  const spare = countBySex(census.alive.filter(bird => bird.step.kind !== 'strain' && !census.ownBreeders.includes(bird) && isAbout(asked, bird, book.asOf, book) === true))
  const wanting = {males: Math.max(0, (males ?? 0) - breeders.male), females: Math.max(0, (females ?? 0) - breeders.female)}
  const either = Math.max(0, (atLeast ?? 0) - breeders.all - wanting.males - wanting.females)
  const isThere = spare.male >= wanting.males && spare.female >= wanting.females && spare.all >= wanting.males + wanting.females + either
  const asksNothing = males === null && females === null && atLeast === null
  const ways: readonly Way[] = asksNothing ? [{kind: 'name-figure', earliest: null}]
    : [{kind: 'keep', ...wanting, either, spare: {males: spare.male, females: spare.female}, earliest: isThere ? onDay(book.asOf) : inSeason(nextSeason(book))}]
  // a bird whose sex is not known may be of either, but not of both
  const open = breeders.unknown + unsure.unknown, sexed = Math.min(breeders.male + unsure.male, males ?? 0) + Math.min(breeders.female + unsure.female, females ?? 0)
  const state = allOf([
    judgedWith(breeders.male, males ?? 0, unsure.male + open), judgedWith(breeders.female, females ?? 0, unsure.female + open), judgedWith(breeders.all, atLeast ?? 0, untold.length),
    sexed + open >= (males ?? 0) + (females ?? 0),
  ])
  return judged(asksNothing ? null : state, {kind: 'breeders-alive', breeders, untold}, {behind: found, ways})
}
