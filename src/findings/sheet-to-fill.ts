import {aliveOn} from '../logbook/alive.ts'
import {clausesOf} from '../logbook/clauses-of.ts'
import type {Bird, Clause, Draft, Logbook, Pen, Trait} from '../logbook/book.ts'
import {canBeHeld} from './clause-counts.ts'
import {lastPens} from './last-pen.ts'
import {currentStep, type LadderStep} from './ladder.ts'

/** What is put down on a scoring day: which birds, for which traits and under which headings of the scale of points. */
export interface SheetToFill {
  /** the latest; null: none yet, and there is nothing to score by */
  readonly draft: Draft | null
  /** in the order of their bands */
  readonly birds: readonly BirdToScore[]
  /** of those asked for, the ones that have left */
  readonly gone: number
  /** traits of the draft's clauses that are told on the day, in its order, each once with all the clauses that ask for it */
  readonly traits: readonly {readonly trait: Trait; readonly clauses: readonly Clause[]}[]
  /** those of clauses too, but taken from a weigh day's column */
  readonly weighed: readonly Trait[]
  readonly headings: Draft['points']
}

export interface BirdToScore {
  readonly bird: Bird
  /** the pen it was last put into; null where it stood in none */
  readonly pen: Pen | null
  /** traits that its sex does not show */
  readonly notShown: readonly Trait[]
}

/** Which birds are asked for: all that live of the breed, or those of a step, a pen, a hatch, or some by their bands. */
export type BirdsAsked = {readonly of: 'living' | 'step' | 'pen' | 'hatch' | 'bands'; readonly birds: readonly Bird[]}

/**
 * The birds that a word means: `living`, else a step, else a pen, else a hatch; null where it is none of these. Founders are in a pen or hatch, and among no step.
 */
export function birdsOfGroup(word: string, book: Logbook): BirdsAsked | null {
  if (word === 'living') return {of: 'living', birds: aliveOn(book, book.asOf).filter(({step}) => step.kind !== 'strain')}
  const inStep = book.birds.filter(({step}) => step.kind !== 'strain' && step.label === word)
  if (inStep.length > 0) return {of: 'step', birds: inStep}
  const pen = book.pens.find(({id}) => id === word)
  if (pen) return {of: 'pen', birds: [...new Set([...pen.males, ...pen.females].map(({bird}) => bird))]}
  const hatch = book.hatches.find(({id}) => id === word)
  return hatch ? {of: 'hatch', birds: hatch.chicks} : null
}

/** Those of the step that the breed stands at. */
export function birdsOfLatestStep(ladder: readonly LadderStep[]): BirdsAsked {
  return {of: 'step', birds: currentStep(ladder)?.birds ?? []}
}

/**
 * A sheet for a scoring day, made from the clauses of the latest draft: a row for each of the birds asked for that lives, a column for each trait that a clause is held against and that is put down among
 * scores, and one for each heading of the scale. Birds that have left are counted.
 */
export function sheetToFill(asked: readonly Bird[], book: Logbook): SheetToFill {
  const draft = book.drafts.at(-1) ?? null, living = new Set(aliveOn(book, book.asOf)), pens = lastPens(book.pens)
  const held = draft ? clausesOf(draft).flatMap(clause => (clause.trait && canBeHeld(clause) ? [{clause, trait: clause.trait}] : [])) : []
  const named = [...new Set(held.map(({trait}) => trait))], birds = [...new Set(asked)]
  const isWeighed = ({id, measure}: Trait): boolean => measure !== null && measure !== id, traits = named.filter(trait => !isWeighed(trait))
  const rows = birds.filter(bird => living.has(bird)).map((bird): BirdToScore =>
    ({bird, pen: pens.get(bird) ?? null, notShown: traits.filter(({seenIn, fromFirstEgg}) => (seenIn !== null && bird.sex !== 'unknown' && seenIn !== bird.sex) || (fromFirstEgg && bird.sex === 'male'))}))
  return {
    draft, birds: rows.sort((a, b) => (a.bird.band < b.bird.band ? -1 : a.bird.band > b.bird.band ? 1 : a.bird.id < b.bird.id ? -1 : 1)), gone: birds.length - rows.length,
    traits: traits.map(trait => ({trait, clauses: held.filter(each => each.trait === trait).map(({clause}) => clause)})), weighed: named.filter(isWeighed), headings: draft?.points ?? [],
  }
}
