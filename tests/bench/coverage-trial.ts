/** One kind of interval tried on one kind of made-up flock, whose truth is known. */
import {chanceOf, type Chance} from '../../src/statistics/chance.ts'
import type {Interval} from '../../src/statistics/interval.ts'
import {COVERAGE_SEED, type MeasuredCoverage} from '../../src/statistics/measured-coverage.ts'

/** So many flocks of every row are drawn again by the test of the table. */
export const AGAIN = 25

export interface Trial {
  readonly interval: string
  readonly flock: string
  readonly runs: number
  /** whether the interval held the truth, or the test left a flock without an effect alone; null where there was none */
  readonly held: (draw: Draw) => boolean | null
}

/** A share that is worked by adding up all outcomes. */
export interface Sum {
  readonly interval: string
  readonly flock: string
  /** chance that the interval holds the truth, at each place of an even grid of truths */
  readonly coverages: () => readonly number[]
}

/** What flocks are drawn from. */
export interface Draw {
  /** evenly between 0 and 1, neither included */
  part(): number
  /** 0 to `below` − 1 */
  whole(below: number): number
  /** Box and Muller 1958, Ann. Math. Stat. 29:610 */
  normal(): number
  happens(probability: number): boolean
  /** how many of so many happen */
  of(n: number, probability: number): number
}

export function drawOf(chance: Chance): Draw {
  const part = (): number => (chance.next() + 0.5) / 2 ** 32
  return {
    part,
    whole: chance.whole,
    normal: () => Math.sqrt(-2 * Math.log(part())) * Math.cos(2 * Math.PI * part()),
    happens: probability => part() < probability,
    of: (n, probability) => Array.from({length: n}, () => part() < probability).filter(Boolean).length,
  }
}

export const holds = (interval: Interval | null | undefined, truth: number): boolean | null => (interval ? interval.low <= truth && truth <= interval.high : null)

/** Of the first so many flocks of a trial: how many had an interval, and how many of these held the truth. */
export function tried({held}: Trial, runs: number): {readonly with: number; readonly held: number} {
  const draw = drawOf(chanceOf(COVERAGE_SEED))
  let having = 0, holding = 0
  for (let run = 0; run < runs; run++) {
    const found = held(draw)
    if (found !== null) having += 1
    if (found === true) holding += 1
  }
  return {with: having, held: holding}
}

export const of = <Each>(count: number, make: (place: number) => Each): Each[] => Array.from({length: count}, (_, place) => make(place))
export const sum = (values: readonly number[]): number => values.reduce((all, value) => all + value, 0)

/** A row of the table in `src/statistics/measured-coverage.ts`. */
export function rowOf(trial: Trial): MeasuredCoverage {
  const {interval, flock, runs} = trial, found = tried(trial, runs)
  return {interval, flock, held: inTenths(found.held / found.with), runs, without: runs - found.with, first: tried(trial, AGAIN).held, least: null}
}
export function rowOfSum({interval, flock, coverages}: Sum): MeasuredCoverage {
  const all = coverages()
  return {interval, flock, held: inTenths(sum(all) / all.length), runs: null, without: 0, first: null, least: inTenths(Math.min(...all))}
}
const inTenths = (share: number): number => Math.round(1000 * share) / 10
