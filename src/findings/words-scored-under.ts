import type {Clause, Draft, Logbook, Score, Trait} from '../logbook/book.ts'
import {clausesOf} from '../logbook/clauses-of.ts'
import {bornOn} from '../logbook/as-of-chicks.ts'
import {draftInForce} from '../logbook/draft-in-force.ts'
import {countingOf, seenFrom} from '../logbook/scores.ts'
import type {Chick} from './ladder-chicks.ts'

/** The words that a score was made by, as far as a clause of the latest draft is concerned. */
export interface WordsScoredUnder {
  /** are they those of today? Of what is measured always: a ruler does not read the draft */
  readonly asNow: boolean
  /** the clause as it stood in that draft; null: that draft had none, there was no draft yet, or the day is not known */
  readonly clause: Clause | null
  /** null: measured, none yet, or the day is not known */
  readonly draft: Draft | null
}

/** A score with the words it was made by. */
export interface ScoreUnderWords {
  readonly score: Score
  readonly under: WordsScoredUnder
}

const plain = (text: string): string => text.trim().replace(/\s+/g, ' ')

/** What it allows, letter by letter. */
const allowance = ({allows}: Clause): string => JSON.stringify([allows.male, allows.female])

/**
 * Do two clauses say the same, so far as scores go? What they allow of the same trait, and their words but for white space. Of a trait of plain states the words may differ: whether a comb is pea was
 * the same question however the sentence about it ran; not so of grades, and of what is told by degrees. An older clause of which no entry names a trait asked what its words say: it is the same
 * unless today's has a range of its own.
 */
export function saysTheSame(now: Clause, then: Clause): boolean {
  const sameWords = plain(now.text) === plain(then.text)
  if (then.trait === null) return sameWords && !now.ownRange
  return then.trait === now.trait && allowance(now) === allowance(then) && (sameWords || now.trait.kind === 'states')
}

/** The clause of a draft that a later one took the place of: of the same id, else of the same title and words, else the only one of the same title and trait. */
function standingFor(now: Clause, then: Draft): Clause | null {
  const all = clausesOf(then), alike = all.filter(({title, trait}) => trait !== null && trait === now.trait && title === now.title)
  return all.find(({id}) => id === now.id) ?? all.find(({title, text}) => text !== '' && title === now.title && plain(text) === plain(now.text)) ?? (alike.length === 1 ? alike[0] : null) ?? null
}

/**
 * By which words was each score made? A score stays with the draft it was made under: the one its record names, else the one in force on its day; an undated one is taken as made on the
 * first day it can have been seen.
 *
 * @returns for a clause that has a trait: the score of a chick that counts, with the words it was made by; null where none counts. Of several that count it is the latest made by today's words
 *   (of a trait scored at an age the nearest to it), and only where there is none the one that counts everywhere else.
 */
export function scoresUnderWords({drafts, project: {incubationDays}}: Pick<Logbook, 'drafts' | 'project'>): (clause: Clause, trait: Trait) => (chick: Chick) => ScoreUnderWords | null {
  const days = new Map<number, Draft | null>()
  const inForce = (day: number): Draft | null => {
    const known = days.get(day)
    if (known !== undefined) return known
    const draft = draftInForce(drafts, null, day)
    days.set(day, draft)
    return draft
  }
  const draftOf = (score: Score, chick: Chick): Draft | null => {
    if (score.draft !== undefined) return draftInForce(drafts, score.draft, null)
    const day = score.on?.first ?? seenFrom(score.trait, bornOn(chick, incubationDays), chick.kind === 'bird' ? chick.firstEgg : null)
    return day === null ? null : inForce(day)
  }
  return (clause, trait) => {
    const measured: WordsScoredUnder = {asNow: true, clause, draft: null}
    if (trait.kind === 'measured') return chick => {
      const score = chick.looks.get(trait)?.counted
      return score ? {score, under: measured} : null
    }
    const unwritten: WordsScoredUnder = {asNow: false, clause: null, draft: null}
    const words = new Map(drafts.map(draft => {
      const then = standingFor(clause, draft)
      return [draft, {asNow: then !== null && saysTheSame(clause, then), clause: then, draft}] as const
    }))
    const underOf = (score: Score, chick: Chick): WordsScoredUnder => {
      const draft = draftOf(score, chick)
      return (draft && words.get(draft)) ?? unwritten
    }
    return chick => {
      const look = chick.looks.get(trait)
      if (!look?.counted) return null
      const under = underOf(look.counted, chick)
      if (under.asNow || look.scores.length === 1) return {score: look.counted, under}
      const asNow = look.scores.filter(score => score.struck === null && !score.outside && underOf(score, chick).asNow)
      const score = countingOf(trait, asNow, chick.hatched)
      return score ? {score, under: underOf(score, chick)} : {score: look.counted, under}
    }
  }
}
