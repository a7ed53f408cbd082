/** The book as it stood on an earlier day: what came later is left aside and counted. Only for a day asked for on the command line. */
import {yearOf, type Day, type PartialDate} from '../records/dates.ts'
import {sexOf} from './life.ts'
import type {Bird, Hatch, Logbook, Pen, Tally} from './book.ts'
import type {Open} from './open.ts'
import {lookOf} from './scores.ts'

/** Cuts the book back to a day. The things in it are the ones just linked, and are changed in place. */
export function asOfView(book: Logbook, day: Day): Logbook {
  let later = 0
  const past = (date: PartialDate | null | undefined): boolean => !date || date.first <= day
  const keep = <T>(all: readonly T[], dateOf: (one: T) => PartialDate | null | undefined): readonly T[] => {
    const kept = all.filter(one => past(dateOf(one)))
    later += all.length - kept.length
    return kept.length === all.length ? all : kept
  }
  const pastOrNull = <T extends {readonly on: PartialDate | null}>(fact: T | null): T | null => {
    if (past(fact?.on)) return fact
    later += 1
    return null
  }

  const birds = keep(book.birds, bird => bird.hatched)
  const there = new Set(birds)
  for (const bird of birds) cutBird(bird)
  const hatches = keep(book.hatches, hatch => hatch.set ?? hatch.on)
  for (const hatch of hatches) cutHatch(hatch)
  const pens = book.pens.filter(pen => (pen.from ? past(pen.from) : pen.season <= yearOf(day)))
  later += book.pens.length - pens.length
  for (const pen of pens) cutPen(pen)
  const drafts = keep(book.drafts, draft => draft.on)
  const requirements = book.requirements && {...book.requirements, papers: keep(book.requirements.papers, paper => paper.on)}
  return {
    ...book, asOf: day, birds, hatches, pens, drafts, requirements,
    looseWeighings: keep(book.looseWeighings, weighing => weighing.on), eggCounts: keep(book.eggCounts, count => count.on),
    feedings: keep(book.feedings, feeding => feeding.on), shows: keep(book.shows, show => show.on), care: keep(book.care, entry => entry.on),
    diary: keep(book.diary, entry => entry.on), later,
  }

  function cutBird(bird: Open<Bird>): void {
    const before = bird.sexings
    bird.sexings = keep(bird.sexings, sexing => sexing.on)
    if (bird.sexings !== before) bird.sex = sexOf(bird.sexings)
    bird.left = pastOrNull(bird.left)
    bird.kept = pastOrNull(bird.kept)
    bird.weighings = keep(bird.weighings, weighing => weighing.on)
    bird.observations = keep(bird.observations, observation => observation.on)
    bird.photos = keep(bird.photos, photo => photo.on)
    bird.keptAt = bird.keptAt.filter(stay => past(stay.from))
    bird.bands = bird.bands.filter((band, index) => index === 0 || past(band.from))
    bird.band = bird.bands.at(-1)?.band ?? bird.band
    bird.maybe = bird.maybe.filter(other => there.has(other))
    if (bird.firstEgg && !past(bird.firstEgg)) bird.firstEgg = null
    const looks = new Map(bird.looks)
    for (const [trait, look] of bird.looks) {
      const scores = keep(look.scores, score => score.on)
      if (scores.length === 0) looks.delete(trait)
      else if (scores !== look.scores) looks.set(trait, lookOf(trait, scores, bird))
    }
    bird.looks = looks
  }

  function cutHatch(hatch: Open<Hatch>): void {
    if (past(hatch.on)) {
      for (const tally of hatch.tallies as readonly Open<Tally>[]) tally.left = pastOrNull(tally.left)
      return
    }
    later += 1
    Object.assign(hatch, {on: null, hatched: null, clear: null, deadInGerm: null, deadInShell: null, bad: null, chicks: [], tallies: [], unlisted: 0})
  }

  function cutPen(pen: Open<Pen>): void {
    pen.males = pen.males.filter(stay => past(stay.from))
    pen.females = pen.females.filter(stay => past(stay.from))
    pen.hatches = pen.hatches.filter(hatch => hatches.includes(hatch))
  }
}
