/** What every bird and tally looked like: all scorings of each trait, and the one that counts. And what points the keepers gave on the way. */
import {misplacedTable} from '../records/misplaced.ts'
import {near} from '../records/near.ts'
import type {Others} from '../records/shape.ts'
import {inside, type Spot} from '../records/problem.ts'
import {BIRD_FIELDS} from '../records/schema/parts.ts'
import {spanOf} from './band-book.ts'
import type {Bench} from './bench.ts'
import type {Birds} from './birds.ts'
import type {Bird, Draft, KeepersSheet, Look, Score, Tally, Trait} from './book.ts'
import type {Hatches} from './hatch-shells.ts'
import {unknownDraft} from './inspect/unknown-draft.ts'
import {locusForTrait, unknownKeyOfBird, unknownTrait} from './inspect/unknown-trait.ts'
import type {Keepers} from './keepers.ts'
import {nearPlaces} from './directory.ts'
import {draftsInDoubt} from './drafts-in-doubt.ts'
import type {Open} from './open.ts'
import {pointsReader} from './points-sheets.ts'
import {lookOf, readScore, type Scored} from './scores.ts'
import type {Traits} from './traits.ts'
import {weighingScores} from './weighings.ts'

type Scores = Map<Trait, Score[]>
const UNDATED = {on: null, by: null, draft: undefined}

/** @returns the sheets of points of the scoring days, in their order */
export function linkLooks(bench: Bench, birds: Birds, hatches: Hatches, traits: Traits, keepers: Keepers, drafts: readonly Draft[]): readonly KeepersSheet[] {
  const keys = keyReader(bench, traits)
  bench.records.hatch.forEach(({data}, index) => {
    hatches.all[index]?.tallies.forEach((tally: Open<Tally>, number) => {
      const scores: Scores = new Map()
      keys.read(data.tallies?.[number]?.others ?? [], UNDATED, tally, scores)
      tally.looks = looksOf(tally, scores, traits.all)
    })
  })
  const inDoubt = draftsInDoubt(bench)
  const ofBirds = new Map<Bird, Scores>(birds.birds.map(bird => [bird, new Map()]))
  const scoresOf = (bird: Bird): Scores => ofBirds.get(bird) ?? new Map()
  for (const [bird, tellings] of birds.tellings) {
    const scores = scoresOf(bird)
    for (const telling of tellings) keys.read(telling.others, UNDATED, bird, scores)
    for (const {told: {observations}} of tellings) {
      for (const {on, by, draft, others, at} of observations ?? []) {
        if (draft !== undefined && at && !inDoubt && !drafts.some(({number}) => number === draft)) bench.note(unknownDraft(draft, inside(at, 'draft'), drafts.map(({number}) => number)))
        const scored = others.filter(({key}) => traits.get(key) !== undefined)
        if (scored.length > 0) keys.read(scored, {on: on ?? null, by: by ? keepers.find(by) : null, draft}, bird, scores)
      }
    }
  }
  const sheets = readScoringDays(bench, birds, traits, keepers, drafts, scoresOf)
  for (const bird of birds.birds) bird.looks = looksOf(bird, scoresOf(bird), traits.all)
  return sheets
}

/** What a chick looked like, from what was read of it, its weighings, and what was scored on the tally it was banded from, whose looks are known already. */
export function looksOf(chick: Bird | Tally, read: ReadonlyMap<Trait, readonly Score[]>, traits: readonly Trait[]): Map<Trait, Look> {
  const looks = new Map<Trait, Look>()
  const weighed = chick.kind === 'bird' && chick.weighings.length > 0 ? chick : null
  const tally = chick.kind === 'bird' ? chick.outOf : null
  if (read.size === 0 && weighed === null && tally === null) return looks
  for (const trait of traits) {
    const scores = [...(read.get(trait) ?? []), ...(weighed ? weighingScores(trait, weighed, traits) : [])]
    const own = scores.length === 0 ? undefined : lookOf(trait, scores, chick), other = tally?.looks.get(trait)
    const look = own && other && own.counted === null ? {counted: other.counted, scores: [...other.scores, ...own.scores]} : own ?? other
    if (look) looks.set(trait, look)
  }
  return looks
}

function add(scores: Scores, score: Score): void {
  const own = scores.get(score.trait)
  if (own) own.push(score)
  else scores.set(score.trait, [score])
}

/** Reads keys of a bird's line that are traits' ids. A key that is neither one of the line's own nor a trait is a slip. */
function keyReader(bench: Bench, traits: Traits) {
  const known = [...Object.keys(BIRD_FIELDS), 'band', 'strain', 'hatched', 'kin', 'flock', 'mark', 'note', 'private']
  const places = new Map<string, Spot>(traits.all.map(trait => [trait.id, trait.at]))
  return {
    read(others: Others, when: Pick<Score, 'on' | 'by'> & {readonly draft: number | undefined}, scored: Scored, scores: Scores): void {
      for (const {key, value, at, keyAt} of others) {
        const trait = traits.get(key)
        if (!trait) {
          if (isLocus(key, traits, bench)) bench.note(locusForTrait(key, value, keyAt))
          else if (!bench.isFaulty(`traits/${key}.md`)) bench.note(unknownKeyOfBird(key, keyAt, [...nearPlaces(key, places), ...near(key, known)].slice(0, 3)))
          continue
        }
        const score = readScore({trait, text: value, ...when, struck: null, at}, scored, bench.noteAbout(trait))
        if (score) add(scores, score)
      }
    },
  }
}

const isLocus = (key: string, {loci}: Traits, {reference}: Bench): boolean => loci.get(key) !== undefined || reference.symbols.includes(key)

function readScoringDays(bench: Bench, birds: Birds, traits: Traits, keepers: Keepers, drafts: readonly Draft[], scoresOf: (bird: Bird) => Scores): readonly KeepersSheet[] {
  const places = new Map<string, Spot>(traits.all.map(trait => [trait.id, trait.at]))
  // a column may head the points of a draft that could not be read
  const strange = new Set<string>(), mayBeHeading = bench.hasFaultyIn('standard/')
  const points = pointsReader(drafts, bench.note, draftsInDoubt(bench)), sheets: KeepersSheet[] = []
  for (const row of bench.records.scorings) {
    const {band, on, by, looks, struck} = row
    const keeper = by ? keepers.find(by) : null
    const bird = birds.find(band, spanOf(on))
    const scores = bird ? scoresOf(bird) : undefined
    const draft = points.draftOf(row)
    const given = looks.filter(({key}) => !traits.get(key) && points.isHeading(key))
    const sheet = bird && given.length > 0 ? points.sheetOf(row, given, draft, bird, keeper) : null
    if (sheet) sheets.push(sheet)
    for (const {key, value, at, keyAt} of looks) {
      const trait = traits.get(key)
      if (!trait) {
        if (points.isHeading(key)) continue
        if (traits.byMeasure.has(key)) {
          if (!strange.has(at.file)) bench.note(misplacedTable(at.file, 'measures'))
          strange.add(at.file)
          continue
        }
        const named = `${at.file}\n${key}`
        if (!strange.has(named) && !mayBeHeading && !bench.isFaulty(`traits/${key}.md`)) bench.note(isLocus(key, traits, bench) ? locusForTrait(key, value, keyAt) : unknownTrait({text: key, at: keyAt}, [...nearPlaces(key, places), ...near(key, points.headings)].slice(0, 3)))
        strange.add(named)
        continue
      }
      const score = bird && scores ? readScore({trait, text: value, on, by: keeper, struck, draft: row.draft?.number, at}, bird, bench.noteAbout(trait)) : null
      if (score && scores) add(scores, score)
    }
  }
  return sheets
}
