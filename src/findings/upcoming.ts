import type {Bird, CareEntry, Hatch, Logbook, Paper, Requirement, Trait} from '../logbook/book.ts'
import {isWhole, type Day} from '../records/dates.ts'
import {SPECIES} from '../records/species.ts'
import {isAlive} from '../logbook/alive.ts'
import {countedValue} from './counted-value.ts'
import {grouped} from './grouped.ts'
import {paperHoldsUntil} from './paper-holds.ts'
import {ladderChicks} from './ladder-chicks.ts'
import type {LadderStep} from './ladder.ts'
import {requiredTraits} from './verdict.ts'
import {sexShows} from './scoring-age.ts'

/** A thing the records say is coming, or is due and not written yet. Nothing here is a plan of ours. */
export type Upcoming =
  | {readonly kind: 'stop-turning'; readonly on: Day; readonly hatch: Hatch}
  | {readonly kind: 'hatch-due'; readonly on: Day; readonly hatch: Hatch}
  /** its day has passed and nothing hatched is written */
  | {readonly kind: 'hatch-result-wanting'; readonly on: Day; readonly hatch: Hatch}
  /** `on` is the exact age; a weighing from `from` to `to` still counts. Birds: living, and not weighed in that window */
  | {readonly kind: 'weigh'; readonly on: Day; readonly from: Day; readonly to: Day; readonly trait: Trait; readonly birds: readonly Bird[]}
  /** from this day the trait can be scored. Birds: living, not scored yet */
  | {readonly kind: 'score'; readonly on: Day; readonly trait: Trait; readonly birds: readonly Bird[]}
  /** the last day eggs, or meat, must be withheld as far as the record says; local law and a veterinarian decide */
  | {readonly kind: 'eggs-withheld' | 'meat-withheld'; readonly on: Day; readonly care: CareEntry}
  /** the last day a paper holds, by its own words or by how old the rule lets it be */
  | {readonly kind: 'paper-ends'; readonly on: Day; readonly paper: Paper}
  /** the last day on which a waiver holds, or by which a requirement must be reached */
  | {readonly kind: 'waiver-ends' | 'asked-by'; readonly on: Day; readonly requirement: Requirement}
  /** a step of the project's ladder not reached; no day is known */
  | {readonly kind: 'planned-step'; readonly on: null; readonly label: string}

function ofHatches(book: Logbook): Upcoming[] {
  const {lockdownDaysBefore} = SPECIES[book.project.species]
  return book.hatches.flatMap((hatch): Upcoming[] => {
    if (hatch.set === null || !isWhole(hatch.set) || hatch.hatched !== null || hatch.on !== null) return []
    const due = hatch.set.first + book.project.incubationDays, stop = due - lockdownDaysBefore
    if (due < book.asOf) return [{kind: 'hatch-result-wanting', on: due, hatch}]
    return [...(stop >= book.asOf ? [{kind: 'stop-turning', on: stop, hatch} as const] : []), {kind: 'hatch-due', on: due, hatch}]
  })
}

/** Ages coming due, one entry a trait and day; a bird whose hatch day is not known has none. */
function ofBirds(book: Logbook): Upcoming[] {
  const entries: Upcoming[] = []
  const living = ladderChicks(book).filter(chick => chick.kind === 'bird').filter(bird => isAlive(bird, book.asOf))
  const required = new Set(requiredTraits(book))
  for (const trait of book.traits) {
    const weighed = trait.kind === 'measured' && trait.atAge !== null
    if (!weighed && !(required.has(trait) && trait.kind !== 'measured' && trait.scoredFrom > 0)) continue
    const age = trait.atAge ?? trait.scoredFrom, window = weighed ? trait.window ?? 7 : 0
    const byDay = grouped(living, bird => {
      if (bird.hatched === null || !isWhole(bird.hatched) || bird.hatched.first + age + window < book.asOf) return undefined
      if (trait.seenIn !== null && bird.sex !== 'unknown' && !sexShows(trait, bird)) return undefined
      return trait.fromFirstEgg || countedValue(bird, trait) !== null ? undefined : bird.hatched.first + age
    })
    for (const [on, birds] of byDay) {
      entries.push(weighed ? {kind: 'weigh', on, from: on - window, to: on + window, trait, birds} : {kind: 'score', on, trait, birds})
    }
  }
  return entries
}

function ofPapers(book: Logbook): Upcoming[] {
  const care = book.care.flatMap(entry => [
    {kind: 'eggs-withheld', on: entry.eggsWithheldUntil?.last ?? null, care: entry} as const,
    {kind: 'meat-withheld', on: entry.meatWithheldUntil?.last ?? null, care: entry} as const,
  ])
  const items = book.requirements?.items ?? [], withins = (kind: Paper['proves']): readonly number[] => items.flatMap(item => (item.kind === kind ? item.within ?? [] : []))
  // it ends by whichever rule lets it be least old
  const within = (kind: Paper['proves']): number | null => (withins(kind).length === 0 ? null : Math.min(...withins(kind)))
  const papers = (book.requirements?.papers ?? []).map(paper => ({kind: 'paper-ends', on: paperHoldsUntil(paper, within(paper.proves)), paper}) as const)
  const asked = items.flatMap(requirement => [{kind: 'waiver-ends', on: requirement.waived?.until?.last ?? null, requirement} as const, {kind: 'asked-by', on: requirement.by?.last ?? null, requirement} as const])
  return [...care, ...papers, ...asked].flatMap((entry): Upcoming[] => (entry.on !== null && entry.on >= book.asOf ? [{...entry, on: entry.on} as Upcoming] : []))
}

/**
 * What comes next? Everything the records themselves put on a day on or after the book's own: eggs to stop turning (three days
 * before the hatch: common practice, no source) and to hatch, ages at which living birds are to be weighed or scored, ends of
 * withholding, of papers and waivers, days by which something is asked, then the steps planned. By day; what is overdue stands first, what has no day last.
 */
export function upcoming(book: Logbook, ladder: readonly LadderStep[]): readonly Upcoming[] {
  const planned: Upcoming[] = ladder.flatMap(step => (step.kind === 'planned' ? [{kind: 'planned-step', on: null, label: step.label} as const] : []))
  const dated = [...ofHatches(book), ...ofBirds(book), ...ofPapers(book)]
  return [...dated.map((entry, index) => ({entry, index})).sort((a, b) => (a.entry.on ?? 0) - (b.entry.on ?? 0) || a.index - b.index).map(({entry}) => entry), ...planned]
}
