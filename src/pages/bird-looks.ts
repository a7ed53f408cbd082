/** How a bird looks: the score of every trait that counts, and all that was scored differently, too early, or struck out with its reason. */
import {wantedOf} from '../findings/wanted-look.ts'
import type {Bird, Look, Project, Score, Trait} from '../logbook/book.ts'
import {amount, shownIn, wantedWords} from './amounts.ts'
import {dateShort, dateWords} from './dates.ts'
import {traitPath} from './links.ts'
import {counted, NOTHING, sentence} from './numbers.ts'
import type {Cell, Table} from './page.ts'

export interface Looks {
  readonly table: Table | null
  /** traits of the project not scored on this bird, in words; empty when none is wanting */
  readonly unscored: string
  /** scores that do not count or do not agree */
  readonly disputes: readonly {readonly when: string; readonly text: string}[]
}

export function scoreWords(score: Score, units: Project['units']): string {
  return typeof score.value === 'number' ? amount(score.value, shownIn(score.trait, units)) : score.value
}

const scoredOn = (score: Score): string => (score.on ? dateWords(score.on) : 'no date given')

/** `18 Oct 2024, Rasmus`: one column for both, since a phone has no room for two */
const scoredWhen = (score: Score): string => [score.on ? dateShort(score.on) : 'no date given', ...(score.by ? [score.by.name] : [])].join(', ')

function wantedIn(trait: Trait, bird: Bird, units: Project['units']): string {
  const wanted = wantedOf(trait, bird.sex)
  return wanted === null ? NOTHING : wantedWords(wanted, shownIn(trait, units))
}

/** Could this bird show the trait at all? */
const showable = (trait: Trait, bird: Bird): boolean => trait.seenIn === null || trait.seenIn === bird.sex || bird.sex === 'unknown'

function disputesOf(look: Look, units: Project['units']): readonly {when: string; text: string}[] {
  const {counted: counts, scores} = look
  const odd = scores.filter(score => score.struck !== null || score.outside || (score !== counts && score.value !== counts?.value))
  return odd.map(score => {
    const why = score.struck !== null ? `struck out: ${score.struck}` : score.outside ? 'too early, or off the day it is taken on, so not counted'
      : `a later score says ${counts === null ? 'nothing' : scoreWords(counts, units)}, and that one counts`
    return {when: scoredOn(score), text: `${score.trait.name} ${scoreWords(score, units)}${score.by ? `, by ${score.by.name}` : ''}; ${why}.`}
  })
}

/** Scored traits in the order the project lists them; measured ones have a table of their own. */
export function birdLooks(bird: Bird, traits: readonly Trait[], units: Project['units']): Looks {
  const scored = traits.filter(trait => trait.kind !== 'measured' && showable(trait, bird))
  const rows = scored.flatMap(trait => {
    const look = bird.looks.get(trait)
    if (!look?.counted) return []
    const score = look.counted
    const row: readonly Cell[] = [{text: trait.name, link: traitPath(trait)}, scoreWords(score, units), wantedIn(trait, bird, units), scoredWhen(score)]
    return [row]
  })
  const missing = scored.filter(trait => !bird.looks.get(trait)?.counted)
  return {
    table: rows.length === 0 ? null : {columns: [{head: 'Trait'}, {head: 'Scored'}, {head: 'Wanted'}, {head: 'On, by'}], rows},
    unscored: missing.length === 0 ? '' : rows.length === 0 ? 'Not scored for any trait yet.'
      : `${sentence(counted(missing.length, 'trait'))} not scored: ${missing.map(trait => trait.name).join(', ')}.`,
    disputes: traits.flatMap(trait => {
      const look = bird.looks.get(trait)
      return look ? disputesOf(look, units) : []
    }),
  }
}
