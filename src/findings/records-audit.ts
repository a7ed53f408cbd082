import type {Bird, Logbook} from '../logbook/book.ts'
import {isWhole} from '../records/dates.ts'
import type {Census} from './census.ts'
import type {CannotSay, Share} from './estimate.ts'
import {ladderChicks} from './ladder-chicks.ts'
import {shareOf} from './share-of.ts'

/** How well the records are kept: what the other figures can be trusted for. */
export interface RecordsAudit {
  /** banded, of all chicks hatched on the ladder */
  readonly banded: Share | CannotSay
  /** the same of the living ones: banded birds of the ladder against chicks alive without a band */
  readonly livingBanded: Share | CannotSay
  /** one certain sire and one certain dam, of banded birds of the ladder */
  readonly bothParentsKnown: Share | CannotSay
  readonly livingBothParentsKnown: Share | CannotSay
  /** hatched on a known day, of banded birds of the ladder */
  readonly hatchDayKnown: Share | CannotSay
  /** male or female, of banded birds of the ladder */
  readonly sexKnown: Share | CannotSay
  /** candled, of settings of the ladder that have hatched */
  readonly candled: Share | CannotSay
  readonly counts: {
    readonly birds: number
    readonly founders: number
    readonly hatches: number
    /** several possible sires, or dams */
    readonly uncertainSire: number
    readonly uncertainDam: number
    readonly unlistedChicks: number
    readonly tallied: number
    readonly struckScores: number
    /** scored too early or off the weighing window */
    readonly outsideScores: number
    readonly leftUndated: number
    readonly lostBands: number
    readonly maybeAnother: number
    readonly writtenStepDiffers: number
    /** dated after the book's day and left aside */
    readonly later: number
  }
}

/** One sire and one dam, both in the book and both certain. */
export function bothParentsCertain({parentage}: Bird): boolean {
  const [pair, other] = parentage.pairs
  return other === undefined && pair !== undefined && pair.sire !== null && pair.dam !== null
}

const part = <Thing>(things: readonly Thing[], holds: (thing: Thing) => boolean): Share | CannotSay =>
  shareOf(things.filter(holds).length, things.length, [], 'not-counted')

/** How well are the records kept? Shares and counts of what is known, over the chicks of the ladder unless said otherwise. */
export function recordsAudit(book: Logbook, {alive}: Census): RecordsAudit {
  const chicks = ladderChicks(book)
  const birds = chicks.filter(chick => chick.kind === 'bird')
  const living = alive.filter(bird => bird.step.kind !== 'strain')
  const hatches = book.hatches.filter(hatch => hatch.step.kind !== 'strain')
  const livingUnbanded = chicks.reduce((sum, chick) => sum + (chick.kind === 'tally' && chick.left === null ? chick.count : 0), 0)
  const tallied = chicks.reduce((sum, chick) => sum + (chick.kind === 'tally' ? chick.count : 0), 0)
  const unlistedChicks = hatches.reduce((sum, hatch) => sum + hatch.unlisted, 0)
  let struckScores = 0, outsideScores = 0
  for (const chick of chicks) {
    for (const trait of book.traits) {
      for (const score of chick.looks.get(trait)?.scores ?? []) {
        if (score.struck !== null) struckScores += 1
        else if (score.outside) outsideScores += 1
      }
    }
  }
  const count = (holds: (bird: Bird) => boolean): number => book.birds.filter(holds).length
  return {
    banded: shareOf(birds.length, birds.length + tallied + unlistedChicks, [], 'not-counted'),
    livingBanded: shareOf(living.length, living.length + livingUnbanded, [], 'not-counted'),
    bothParentsKnown: part(birds, bothParentsCertain), livingBothParentsKnown: part(living, bothParentsCertain),
    hatchDayKnown: part(birds, bird => bird.hatched !== null && isWhole(bird.hatched)), sexKnown: part(birds, bird => bird.sex !== 'unknown'),
    candled: part(hatches.filter(hatch => hatch.hatched !== null), hatch => hatch.clear !== null),
    counts: {
      birds: book.birds.length, founders: count(bird => bird.parentage.kind === 'founder'), hatches: book.hatches.length,
      uncertainSire: count(bird => bird.parentage.sires.length > 1), uncertainDam: count(bird => bird.parentage.dams.length > 1), unlistedChicks, tallied,
      struckScores, outsideScores, leftUndated: count(bird => bird.left !== null && bird.left.on === null),
      lostBands: count(bird => bird.bands.some(band => band.lost)), maybeAnother: count(bird => bird.maybe.length > 0),
      writtenStepDiffers: count(bird => bird.stepWritten !== null && bird.stepWritten !== bird.step.label), later: book.later,
    },
  }
}
