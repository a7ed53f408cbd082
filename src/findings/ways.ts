import type {Bird, Clause, Keeper, Paper, SectionKind, Strain} from '../logbook/book.ts'
import type {Day} from '../records/dates.ts'
import type {Spot} from '../records/problem.ts'
import type {WantingOfBreeding} from './ways-of-breeding.ts'

/** A step of the shortest way to meet a requirement: what is wanting, and when at the earliest it can be there, reckoned from the book's day; null where that cannot be worked. */
export type Way = Wanting & {readonly earliest: Earliest | null}

export type Earliest = {readonly kind: 'season'; readonly season: number} | {readonly kind: 'day'; readonly day: Day}

/** What is wanting, as plain data. */
export type Wanting = WantingOfWork | WantingOfBreeding

/** In years, people, stock, shows, papers and records. */
export type WantingOfWork =
  /** so many more seasons with a hatch; `inARow`: without a gap, from the season named on where a run goes on */
  | {readonly kind: 'seasons'; readonly more: number; readonly inARow: boolean}
  /** so many more generations mated inside the breed; `short`: the birds that fall short */
  | {readonly kind: 'generations'; readonly more: number; readonly short: readonly Bird[]}
  /** living birds that are far enough, to be shown in place of the others */
  | {readonly kind: 'show-these'; readonly birds: readonly Bird[]}
  /** so many more keepers with a hatch in each of so many seasons; `going`: those who have begun, with what they lack */
  | {readonly kind: 'keepers'; readonly more: number; readonly seasons: number; readonly going: readonly {readonly keeper: Keeper; readonly lacks: number}[]}
  /** birds to be bred from; `spare`: living birds of the breed that are not yet */
  | {readonly kind: 'keep'; readonly males: number; readonly females: number; readonly either: number; readonly spare: {readonly males: number; readonly females: number}}
  /** birds of a class to show; `living`: of those alive that could stand in it */
  | {readonly kind: 'show-birds'; readonly class: string; readonly more: number; readonly living: number}
  /** so many shows with that many birds in each class together */
  | {readonly kind: 'full-shows'; readonly more: number; readonly each: number; readonly classes: readonly {readonly class: string; readonly living: number}[]}
  | {readonly kind: 'shows'; readonly more: number}
  | {readonly kind: 'judges'; readonly more: number}
  /** so many more years with a show, one after the other */
  | {readonly kind: 'show-years'; readonly more: number}
  /** so many shows with as many birds by as many keepers, and the nearest so far to it */
  | {readonly kind: 'large-shows'; readonly more: number; readonly birds: number | null; readonly keepers: number | null}
  /** an entry that fell short can only be followed by others: from the day after it */
  | {readonly kind: 'show-again'; readonly birds: readonly Bird[]}
  /** the grades that judges give, in their order, the least asked for among them */
  | {readonly kind: 'name-grades'}
  /** what a judge gave and nobody wrote down */
  | {readonly kind: 'write-results'; readonly what: 'points' | 'grades'; readonly entries: readonly {readonly bird: Bird; readonly at: Spot}[]}
  /** a paper to have, or in place of one that ran out or is too old, which it did after the day it `held` to; of one of these keepers where it is a statement */
  | {readonly kind: 'paper'; readonly more: number; readonly instead: Paper | null; readonly held: Day | null; readonly keepers: readonly Keeper[]}
  /** papers that do not say whose they are */
  | {readonly kind: 'name-signers'; readonly papers: readonly Paper[]}
  | {readonly kind: 'statement'}
  /** sections that are missing or empty, by kind or as they are headed; clauses that are missing, by id */
  | {readonly kind: 'write-sections'; readonly missing: readonly SectionKind[]; readonly empty: readonly string[]; readonly clauses: readonly string[]}
  | {readonly kind: 'fill-clauses'; readonly clauses: readonly Clause[]}
  | {readonly kind: 'mend-points'; readonly have: number}
  | {readonly kind: 'first-draft'}
  /** cells of the table of distinctness */
  | {readonly kind: 'fill-cells'; readonly breed: string; readonly characters: readonly string[]; readonly more: number}
  /** so many more characters than those the table names, even were the `unfilled` ones to differ */
  | {readonly kind: 'differ'; readonly breed: string; readonly more: number; readonly unfilled: readonly string[]}
  | {readonly kind: 'first-table'}
  /** pictures wanted; of more males and females, or more of any */
  | {readonly kind: 'photographs'; readonly wanted: readonly PictureWanted[]; readonly males: number; readonly females: number; readonly all: number}
  | {readonly kind: 'date-photographs'; readonly birds: readonly Bird[]}
  /** of which variety these birds are; `varieties`: those of which no looks are given by which to tell */
  | {readonly kind: 'tell-varieties'; readonly varieties: readonly string[]; readonly birds: readonly Bird[]}
  | {readonly kind: 'founders-and-steps'; readonly founders: boolean; readonly unfounded: readonly Strain[]; readonly steps: number}
  /** chicks or birds to band, and birds whose parents to make certain; `of`: how many living */
  | {readonly kind: 'band'; readonly more: number}
  | {readonly kind: 'parents'; readonly more: number; readonly birds: readonly Bird[]}
  /** the requirement names no figure to reach */
  | {readonly kind: 'name-figure'}

export interface PictureWanted {
  readonly sex: 'male' | 'female'
  readonly age: 'young' | 'grown' | null
  readonly variety: string | null
  /** living birds of the breed that could be taken */
  readonly living: number
}
