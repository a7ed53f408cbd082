/** Shares of chicks of few cocks, genes dropped from cock and hen to chick. */
import {familyShare} from '../../src/statistics/family-bootstrap.ts'
import {familyDifference} from '../../src/statistics/family-difference.ts'
import {familyTrend} from '../../src/statistics/family-trend.ts'
import type {Count} from '../../src/statistics/share-difference.ts'
import {wilsonInterval} from '../../src/statistics/wilson-interval.ts'
import {holds, of, sum, type Draw, type Trial} from './coverage-trial.ts'

/** `alike` no family differs · `carriers` half of all cocks and hens carry a recessive, `few-carriers` three in ten · `lines` each cock's chicks have a share of their own, evenly about the mean */
type Kind = 'alike' | 'carriers' | 'few-carriers' | 'lines'
const CARRIERS = {alike: 0, carriers: 0.5, 'few-carriers': 0.3, lines: 0} as const
const TRUTH: Readonly<Record<Kind, number>> = {alike: 0.9, carriers: 1 - 0.25 * 0.25, 'few-carriers': 1 - 0.09 * 0.25, lines: 0.8}
const WORDS: Readonly<Record<Kind, string>> = {alike: 'no cock differs', carriers: 'half carry a recessive', 'few-carriers': 'three in ten carry a recessive', lines: 'each cock his own share'}

/** A pen of so many cocks with four hens a cock and 4 to 24 chicks a cock: nobody can say whose is whose, so it is one family. Of several cocks the first treads as often as all others together. */
function pen(draw: Draw, kind: Kind, cocks: number): Count {
  const carries = (): boolean => draw.happens(CARRIERS[kind])
  const sires = of(cocks, () => ({carries: carries(), own: 0.6 + 0.4 * draw.part()})), hens = of(4 * cocks, carries), n = sum(of(cocks, () => 4 + draw.whole(21)))
  let k = 0
  for (let chick = 0; chick < n; chick++) {
    const sire = sires[cocks > 1 && draw.happens(0.5) ? 0 : draw.whole(cocks)], hen = hens[draw.whole(hens.length)] ?? false
    if (draw.happens(kind === 'alike' ? 0.9 : kind === 'lines' ? sire?.own ?? 0 : sire?.carries && hen ? 0.75 : 1)) k += 1
  }
  return {k, n}
}
const pens = (draw: Draw, kind: Kind, cocks: readonly number[]): Count[] => cocks.map(each => pen(draw, kind, each))
const all = (counts: readonly Count[]): Count => ({k: sum(counts.map(({k}) => k)), n: sum(counts.map(({n}) => n))})
const RESAMPLING = {seed: 1, draws: 400}

const ones = (count: number): number[] => of(count, () => 1)
const pairs = (count: number): number[] => of(count, () => 2)

const byFamily = (kind: Kind, cocks: readonly number[], words: string): Trial =>
  ({interval: 'family-share', flock: `${words}, ${WORDS[kind]}`, runs: 4000, held: draw => holds(familyShare(pens(draw, kind, cocks), RESAMPLING), TRUTH[kind])})
const plain = (kind: Kind, cocks: readonly number[], words: string): Trial => ({interval: 'wilson-families', flock: `${words}, ${WORDS[kind]}`, runs: 4000, held: draw => {
  const {k, n} = all(pens(draw, kind, cocks))
  return holds(wilsonInterval(k, n), TRUTH[kind])
}})
const two = (kind: Kind, one: readonly number[], other: readonly number[], words: string): Trial =>
  ({interval: 'family-difference', flock: `${words}, ${WORDS[kind]}`, runs: 3000, held: draw => holds(familyDifference(pens(draw, kind, one), pens(draw, kind, other), RESAMPLING), 0)})
const apart = (cocks: number): Trial => ({
  interval: 'family-difference', flock: `${cocks} cocks a step, 80 and 94% right`, runs: 3000,
  held: draw => holds(familyDifference(pens(draw, 'carriers', ones(cocks)), pens(draw, 'lines', ones(cocks)), RESAMPLING), TRUTH.carriers - TRUTH.lines),
})
const trend = (kind: Kind, steps: readonly (readonly number[])[], words: string): Trial => ({
  interval: 'family-trend', flock: `${words}, ${WORDS[kind]}`, runs: 3000, held: draw => {
    const found = familyTrend(steps.map(cocks => pens(draw, kind, cocks)), RESAMPLING)
    return found.kind === 'families' ? holds(found.interval, 0) : null
  },
})
const fourSteps = (kind: Kind, cocks: number): Trial => trend(kind, of(4, () => ones(cocks)), `four steps of ${cocks} cocks`)

const KINDS: readonly Kind[] = ['alike', 'carriers', 'few-carriers', 'lines']
/** four cocks whose chicks are known, three pens in which two or three may be the sire */
const MIXED = [2, 2, 3, 1, 1, 1, 1]

export const FAMILY_TRIALS: readonly Trial[] = [
  plain('carriers', ones(3), '3 cocks'), plain('carriers', ones(8), '8 cocks'), plain('lines', ones(8), '8 cocks'), plain('carriers', pairs(5), '5 pens of two cocks'),
  ...KINDS.flatMap(kind => [5, 8, 20].map(count => byFamily(kind, ones(count), `${count} cocks`))),
  ...(['carriers', 'lines'] as const).flatMap(kind => [byFamily(kind, pairs(5), '5 pens of two cocks'), byFamily(kind, of(5, () => 3), '5 pens of three cocks'), byFamily(kind, MIXED, '4 cocks and 3 pens of two or three')]),
  ...(['alike', 'carriers', 'lines'] as const).flatMap(kind => [5, 8, 12].map(count => two(kind, ones(count), ones(count), `${count} cocks a step`))), apart(8),
  ...(['carriers', 'lines'] as const).map(kind => two(kind, pairs(5), pairs(5), '5 pens of two cocks a step')),
  fourSteps('alike', 5), ...(['carriers', 'lines'] as const).flatMap(kind => [3, 5, 8].map(count => fourSteps(kind, count))), ...(['carriers', 'lines'] as const).map(kind => trend(kind, of(4, () => pairs(3)), 'four steps of 3 pens of two cocks')),
]
