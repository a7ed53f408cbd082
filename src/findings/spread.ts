import {pooledVariationInterval} from '../statistics/coefficient-of-variation.ts'
import {countWithin} from '../statistics/count-within.ts'
import {pooledVariation} from '../statistics/pooled-variation.ts'
import type {Bird, Hatch, Logbook, Sex, Trait} from '../logbook/book.ts'
import {countedValue} from './counted-value.ts'
import type {CannotSay, Interval, LeftOut, Share} from './estimate.ts'
import {grouped} from './grouped.ts'
import {ladderChicks, type Chick} from './ladder-chicks.ts'
import type {LadderStep} from './ladder.ts'
import {LeftAside} from './left-out.ts'
import {shareOf} from './share-of.ts'
import {whyUnscored} from './why-unscored.ts'

/** Fewer birds than this make no class: their spread would say next to nothing. */
export const LEAST_IN_CLASS = 5
/** A tenth either side of the mean is the growers' measure of evenness; common practice, no source. */
export const WITHIN = 0.1

/** One measured value that belongs to a step, a trait and a sex. */
export interface Measured {
  /** null: weighed without a band */
  readonly bird: Bird | null
  readonly hatch: Hatch | null
  readonly sex: Sex
  /** in the trait's unit */
  readonly value: number
  /** in a class of 5 or more, and so in the figures */
  readonly counted: boolean
}

/** How even the birds of one step and sex are in one trait. */
export interface Spread {
  readonly kind: 'spread'
  readonly n: number
  /** of all birds counted, in the trait's unit */
  readonly mean: number
  /** pooled inside classes, in the trait's unit */
  readonly sd: number
  /** pooled inside classes, a share */
  readonly cv: number
  /** null: no upper limit exists */
  readonly cvInterval: Interval | null
  readonly level: number
  readonly method: string
  /** birds within a tenth of their own class's mean */
  readonly within10: Share
  readonly classes: readonly SpreadClass[]
  readonly leftOut: readonly LeftOut[]
}

/** Birds of one sex that were reared alike: one machine and day, or one broody. */
export interface SpreadClass {
  readonly sex: 'male' | 'female'
  readonly rearing: string
  readonly n: number
  readonly mean: number
  readonly sd: number
  readonly cv: number
}

export interface SpreadRow {
  readonly step: string
  readonly trait: Trait
  /** `all` pools the classes of both sexes, which stay apart in it */
  readonly sex: 'male' | 'female' | 'all'
  readonly spread: Spread | CannotSay
  /** every value in its window, counted or not, in the book's order */
  readonly values: readonly Measured[]
}

export interface SpreadOfMeasures {
  /** in the order ladder, traits, then male, female, all; a row where at least one bird was measured in its window */
  readonly rows: readonly SpreadRow[]
  /** birds measured in their window whose sex is not known: in no row's figures */
  readonly unsexed: readonly {readonly step: string; readonly trait: Trait; readonly values: readonly Measured[]}[]
}

interface Entry {
  readonly sex: Sex
  readonly bird: Bird | null
  readonly hatch: Hatch | null
  readonly value: number
  /** null: nobody knows with whom it was reared */
  readonly rearing: string | null
}

class Cell {
  readonly entries: Entry[] = []
  readonly aside = new LeftAside()
}

type BySex = Record<Sex, Cell>

/** The row of a chick, or of chicks of a hatch that were weighed without a band; undefined: in none. */
export type RowOf = (chick: Chick | Hatch) => string | undefined

const byStep: RowOf = ({step}) => step.label

function gather(book: Logbook, trait: Trait, rowOf: RowOf, cellsOf: (row: string | undefined) => BySex | null): void {
  for (const chick of ladderChicks(book)) {
    const cells = cellsOf(rowOf(chick))
    if (!cells || chick.kind === 'tally') continue
    const {sex, hatch} = chick
    const value = countedValue(chick, trait)
    // a measure of nothing is none: it has no share of a mean
    if (typeof value === 'number' && value > 0) cells[sex].entries.push({sex, bird: chick, hatch, value, rearing: hatch?.rearing ?? null})
    else if (chick.weighings.some(weighing => weighing.measure === trait.measure)) cells[sex].aside.add('outside-window', 1)
    else cells[sex].aside.add(whyUnscored(chick, trait, book) ?? 'unscored', 1)
  }
  for (const {hatch, sex, value, countsFor} of book.looseWeighings) {
    if (value > 0 && countsFor.includes(trait)) cellsOf(rowOf(hatch))?.[sex].entries.push({sex, bird: null, hatch, value, rearing: hatch.rearing})
  }
}

interface Class {
  readonly sex: 'male' | 'female'
  readonly rearing: string
  readonly entries: readonly Entry[]
  readonly values: readonly number[]
}

/** Birds of one sex reared alike; those whose rearing nobody knows are in no class. */
function classesOf(entries: readonly Entry[]): readonly Class[] {
  const classes = grouped(entries, ({sex, rearing}) => (rearing === null || sex === 'unknown' ? undefined : `${sex} ${rearing}`))
  return [...classes].sort(([a], [b]) => (a < b ? -1 : 1)).flatMap(([, own]) => {
    const [first] = own
    if (!first || first.sex === 'unknown' || first.rearing === null) return []
    return [{sex: first.sex, rearing: first.rearing, entries: own, values: own.map(({value}) => value)}]
  })
}

function spreadOf(entries: readonly Entry[], aside: LeftAside): {readonly spread: Spread | CannotSay; readonly counted: ReadonlySet<Entry>} {
  const all = classesOf(entries)
  const large = all.filter(({values}) => values.length >= LEAST_IN_CLASS)
  const counted = new Set(large.flatMap(one => one.entries))
  aside.add('small-class', entries.length - counted.size)
  const leftOut = aside.list()
  if (large.length === 0) {
    const have = Math.max(0, ...all.map(({values}) => values.length))
    return {spread: {kind: 'cannot-say', have, need: LEAST_IN_CLASS, why: 'too-few', leftOut}, counted}
  }
  const {n, mean, sd, cv, own} = pooledVariation(large.map(({values}) => values))
  let inside = 0
  const classes = large.flatMap(({sex, rearing, values}, index) => {
    const figures = own[index]
    if (!figures) return []
    inside += countWithin(values, figures.mean, WITHIN)
    return [{sex, rearing, n: figures.n, mean: figures.mean, sd: figures.sd, cv: figures.cv}]
  })
  const within10 = shareOf(inside, n, leftOut)
  if (within10.kind === 'cannot-say') throw new RangeError('a spread of nobody measured')
  return {
    spread: {
      kind: 'spread', n, mean, sd, cv, cvInterval: pooledVariationInterval(own), level: 0.95, method: 'modified McKay interval, classes pooled', within10, classes, leftOut,
    },
    counted,
  }
}

/**
 * How even are they? Mean, SD, CV = SD / mean and the share within a tenth of the mean, for each step, measured trait and sex.
 *
 * Birds are compared inside classes only: one sex, reared alike (`hatch.rearing`). Classes of fewer than 5 are left out; the
 * others are pooled by degrees of freedom, CV² = Σν_c·CV_c² / Σν_c, and each bird is held against its own class's mean for the
 * share within a tenth. A bird's value is the weighing nearest to the trait's age inside its window. Birds weighed without
 * bands count with their hatch. The mean is that of all birds counted, so with uneven classes SD / mean is not exactly CV.
 *
 * @see Vangel 1996, Am. Stat. 50:21–26 (interval of the CV)
 */
export const spreadOfMeasures = (book: Logbook, ladder: readonly LadderStep[]): SpreadOfMeasures =>
  spreadIn(book, ladder.flatMap(entry => (entry.kind === 'reached' ? [entry.label] : [])), byStep)

/** The same of other rows than steps, such as seasons, in the order given. `step` is then the row's name. */
export function spreadIn(book: Logbook, labels: readonly string[], rowOf: RowOf): SpreadOfMeasures {
  const rows: SpreadRow[] = [], unsexed: SpreadOfMeasures['unsexed'][number][] = []
  const traits = book.traits.filter(trait => trait.kind === 'measured')
  const cells = new Map<Trait, Map<string, BySex>>(traits.map(trait => [trait, new Map(labels.map(label =>
    [label, {male: new Cell(), female: new Cell(), unknown: new Cell()}] as const))]))
  for (const [trait, bySteps] of cells) gather(book, trait, rowOf, row => bySteps.get(row ?? '') ?? null)
  for (const step of labels) {
    for (const [trait, bySteps] of cells) {
      const bySex = bySteps.get(step)
      if (!bySex) continue
      for (const sex of ['male', 'female', 'all'] as const) {
        const cells = sex === 'all' ? [bySex.male, bySex.female] : [bySex[sex]]
        const entries = cells.flatMap(cell => cell.entries)
        if (entries.length === 0) continue
        const aside = new LeftAside()
        for (const cell of cells) aside.addAll(cell.aside)
        aside.add('sex-unknown', bySex.unknown.entries.length)
        const {spread, counted} = spreadOf(entries, aside)
        rows.push({step, trait, sex, spread, values: entries.map(each => measured(each, counted.has(each)))})
      }
      const {entries} = bySex.unknown
      if (entries.length > 0) unsexed.push({step, trait, values: entries.map(each => measured(each, false))})
    }
  }
  return {rows, unsexed}
}

const measured = ({bird, hatch, sex, value}: Entry, counted: boolean): Measured => ({bird, hatch, sex, value, counted})
