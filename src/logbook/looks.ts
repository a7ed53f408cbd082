/** What every bird and tally looked like: all scorings of each trait, and the one that counts. */
import {near} from '../records/near.ts'
import type {Others} from '../records/shape.ts'
import type {Spot} from '../records/problem.ts'
import {BIRD_FIELDS} from '../records/schema/parts.ts'
import {spanOf} from './band-book.ts'
import type {Bench} from './bench.ts'
import type {Birds} from './birds.ts'
import type {Bird, Look, Score, Tally, Trait} from './book.ts'
import type {Hatches} from './hatch-shells.ts'
import {unknownKeyOfBird, unknownTrait} from './inspect/unknown-trait.ts'
import type {Keepers} from './keepers.ts'
import {nearPlaces} from './directory.ts'
import type {Open} from './open.ts'
import {lookOf, readScore, type Scored} from './scores.ts'
import type {Traits} from './traits.ts'
import {weighingScores} from './weighings.ts'

type Scores = Map<Trait, Score[]>
const UNDATED = {on: null, by: null}

export function linkLooks(bench: Bench, birds: Birds, hatches: Hatches, traits: Traits, keepers: Keepers): void {
  const keys = keyReader(bench, traits)
  const ofBirds = new Map<Bird, Scores>()
  const scoresOf = (bird: Bird): Scores => {
    const known = ofBirds.get(bird) ?? new Map<Trait, Score[]>()
    ofBirds.set(bird, known)
    return known
  }
  for (const [bird, tellings] of birds.tellings) {
    const scores = scoresOf(bird)
    for (const telling of tellings) keys.read(telling.others, UNDATED, bird, scores)
    for (const {told: {observations}} of tellings) {
      for (const {on, by, others} of observations ?? []) {
        const scored = others.filter(({key}) => traits.get(key) !== undefined)
        if (scored.length > 0) keys.read(scored, {on: on ?? null, by: by ? keepers.find(by) : null}, bird, scores)
      }
    }
  }
  readScoringDays(bench, birds, traits, keepers, scoresOf)
  const sharing = (trait: Trait) => traits.byMeasure.get(trait.measure ?? trait.id) ?? []
  bench.records.hatch.forEach(({data}, index) => {
    hatches.all[index]?.tallies.forEach((tally, number) => {
      const scores: Scores = new Map()
      keys.read(data.tallies?.[number]?.others ?? [], UNDATED, {...tally, firstEgg: null}, scores)
      ;(tally as Open<Tally>).looks = looksOf(scores, traits, {...tally, firstEgg: null})
    })
  })
  const measured = traits.all.filter(trait => trait.kind === 'measured')
  for (const bird of birds.birds) {
    const scores = scoresOf(bird)
    for (const trait of measured) if (bird.weighings.length > 0) addAll(scores, trait, weighingScores(trait, bird, sharing(trait)))
    const looks = looksOf(scores, traits, bird)
    for (const [trait, look] of bird.outOf?.looks ?? []) if (!looks.has(trait)) looks.set(trait, look)
    bird.looks = looks
  }
}

function looksOf(scores: Scores, traits: Traits, scored: Scored): Map<Trait, Look> {
  const looks = new Map<Trait, Look>()
  if (scores.size === 0) return looks
  for (const trait of traits.all) {
    const own = scores.get(trait)
    if (own) looks.set(trait, lookOf(trait, own, scored))
  }
  return looks
}

function addAll(scores: Scores, trait: Trait, more: readonly Score[]): void {
  if (more.length === 0) return
  const own = scores.get(trait)
  if (own) own.push(...more)
  else scores.set(trait, [...more])
}

/** Reads keys of a bird's line that are traits' ids. A key that is neither one of the line's own nor a trait is a slip. */
function keyReader(bench: Bench, traits: Traits) {
  const known = [...Object.keys(BIRD_FIELDS), 'band', 'strain', 'hatched', 'kin', 'flock', 'mark', 'note', 'private']
  const places = new Map<string, Spot>(traits.all.map(trait => [trait.id, trait.at]))
  return {
    read(others: Others, when: Pick<Score, 'on' | 'by'>, scored: Scored, scores: Scores): void {
      for (const {key, value, at, keyAt} of others) {
        const trait = traits.get(key)
        if (!trait) {
          if (!bench.isFaulty(`traits/${key}.md`)) bench.note(unknownKeyOfBird(key, keyAt, [...nearPlaces(key, places), ...near(key, known)].slice(0, 3)))
          continue
        }
        const score = readScore({trait, text: value, ...when, struck: null, at}, scored, bench.noteAbout(trait))
        if (score) addAll(scores, trait, [score])
      }
    },
  }
}

function readScoringDays(bench: Bench, birds: Birds, traits: Traits, keepers: Keepers, scoresOf: (bird: Bird) => Scores): void {
  const places = new Map<string, Spot>(traits.all.map(trait => [trait.id, trait.at]))
  const strange = new Set<string>()
  for (const {band, on, by, looks, struck} of bench.records.scorings) {
    const keeper = by ? keepers.find(by) : null
    const bird = birds.find(band, spanOf(on))
    const scores = bird ? scoresOf(bird) : undefined
    for (const {key, value, at, keyAt} of looks) {
      const trait = traits.get(key)
      if (!trait) {
        const named = `${at.file}\n${key}`
        if (!strange.has(named) && !bench.isFaulty(`traits/${key}.md`)) bench.note(unknownTrait({text: key, at: keyAt}, nearPlaces(key, places)))
        strange.add(named)
        continue
      }
      const score = bird && scores ? readScore({trait, text: value, on, by: keeper, struck, at}, bird, bench.noteAbout(trait)) : null
      if (score && scores) addAll(scores, trait, [score])
    }
  }
}
