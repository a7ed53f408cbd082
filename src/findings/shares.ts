import type {Logbook, Sex, Trait} from '../logbook/book.ts'
import type {CannotSay, LeftOut, Share} from './estimate.ts'
import {countedValue} from './counted-value.ts'
import {ladderChicks} from './ladder-chicks.ts'
import {LeftAside} from './left-out.ts'
import type {LadderStep} from './ladder.ts'
import {shareOf} from './share-of.ts'
import {whyUnscored} from './why-unscored.ts'

export const SEX_ROWS = ['male', 'female', 'unknown', 'all'] as const
/** `all` is the three others together. */
export type SexRow = (typeof SEX_ROWS)[number]

/** How often each state of a trait was seen in the chicks of one step and sex. */
export interface TraitShares {
  readonly step: string
  readonly trait: Trait
  readonly sex: SexRow
  /** chicks with a counted score */
  readonly scored: number
  /** every state of the trait in its own order; counts add up to `scored` */
  readonly states: readonly {readonly state: string; readonly count: number; readonly share: Share}[]
  /** chicks of this step and sex that could show the trait and have no counted score, by reason */
  readonly leftOut: readonly LeftOut[]
}

class Cell {
  readonly counts = new Map<string, number>()
  readonly aside = new LeftAside()
  scored = 0
}

/**
 * How many chicks of each step show which state of a trait? Share = chicks with the state / chicks scored, in one step,
 * trait and sex, with its Wilson 95 % interval.
 *
 * Every chick with a counted look is in, banded or tallied, kept or culled; a tally counts as many as it holds. Traits that
 * have no states (measured, graded) are not here. A step, trait and sex with nobody scored has no entry.
 * Chicks of few families are not independent, so the interval is narrower than the truth (see the true-bred rate).
 *
 * @see Wilson 1927, J. Am. Stat. Assoc. 22:209–212
 */
export function traitShares(book: Logbook, ladder: readonly LadderStep[]): readonly TraitShares[] {
  const traits = book.traits.filter(trait => trait.states.length > 0)
  const cells = new Map<string, Map<Trait, Record<Sex, Cell>>>()
  for (const entry of ladder) {
    if (entry.kind === 'reached') {
      cells.set(entry.label, new Map(traits.map(trait => [trait, {male: new Cell(), female: new Cell(), unknown: new Cell()}])))
    }
  }
  for (const chick of ladderChicks(book)) {
    const row = cells.get(chick.step.label)
    if (!row) continue
    for (const [trait, bySex] of row) {
      const cell = bySex[chick.sex]
      const value = countedValue(chick, trait)
      if (typeof value === 'string') {
        cell.counts.set(value, (cell.counts.get(value) ?? 0) + chick.count)
        cell.scored += chick.count
      } else {
        const why = whyUnscored(chick, trait, book)
        if (why) cell.aside.add(why, chick.count)
      }
    }
  }
  for (const hatch of book.hatches) {
    for (const bySex of cells.get(hatch.step.label)?.values() ?? []) bySex.unknown.aside.add('not-listed', hatch.unlisted)
  }
  return [...cells].flatMap(([step, row]) => [...row].flatMap(([trait, bySex]) =>
    SEX_ROWS.flatMap(sex => {
      const parts = sex === 'all' ? [bySex.male, bySex.female, bySex.unknown] : [bySex[sex]]
      const scored = parts.reduce((sum, part) => sum + part.scored, 0)
      if (scored === 0) return []
      const aside = new LeftAside()
      for (const part of parts) aside.addAll(part.aside)
      const leftOut = aside.list()
      const states = trait.states.map(state => {
        const count = parts.reduce((sum, part) => sum + (part.counts.get(state) ?? 0), 0)
        return {state, count, share: certain(shareOf(count, scored, leftOut))}
      })
      return [{step, trait, sex, scored, states, leftOut}]
    })))
}

function certain(share: Share | CannotSay): Share {
  if (share.kind === 'cannot-say') throw new RangeError('a share of nobody scored')
  return share
}
