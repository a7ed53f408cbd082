/** Shares of chicks that are independent, by adding up every outcome; and where they are not. */
import {clopperPearson} from '../../src/statistics/clopper-pearson.ts'
import {differenceOfEstimates} from '../../src/statistics/difference-of-estimates.ts'
import {familyShare} from '../../src/statistics/family-bootstrap.ts'
import type {Interval} from '../../src/statistics/interval.ts'
import {livabilityDifference} from '../../src/statistics/livability-difference.ts'
import {livabilityOfFamilies} from '../../src/statistics/livability-of-families.ts'
import {livability} from '../../src/statistics/livability.ts'
import {ratioOfSums} from '../../src/statistics/ratio-of-sums.ts'
import {shareDifference} from '../../src/statistics/share-difference.ts'
import {shareTrend} from '../../src/statistics/share-trend.ts'
import {wilsonInterval} from '../../src/statistics/wilson-interval.ts'
import {holds, of, sum, type Draw, type Sum, type Trial} from './coverage-trial.ts'

/** Chances of 0 to n by the binomial law. */
function chances(n: number, p: number): number[] {
  const all = [(1 - p) ** n]
  for (let k = 1; k <= n; k++) all.push(((all[k - 1] ?? 0) * (n - k + 1) * p) / (k * (1 - p)))
  return all
}

const SHARES = of(98, place => (place + 1.5) / 100)
const inside = ({low, high}: Interval, truth: number): boolean => low <= truth && truth <= high

function single(interval: string, n: number, limits: (k: number, n: number) => Interval): Sum {
  return {interval, flock: `${n} chicks`, coverages: () => {
    const all = of(n + 1, k => limits(k, n))
    return SHARES.map(p => sum(chances(n, p).filter((_, k) => inside(all[k] ?? {low: 1, high: 0}, p))))
  }}
}

function difference(n: number, m: number): Sum {
  return {interval: 'newcombe', flock: `${n} chicks and ${m}`, coverages: () => {
    const all = of(n + 1, k => of(m + 1, l => shareDifference({k, n}, {k: l, n: m}))), places = of(19, place => 0.05 * (place + 1) - 0.003)
    return places.flatMap(p => places.map(q => {
      const one = chances(n, p), other = chances(m, q - 0.003)
      return sum(all.map((row, k) => (one[k] ?? 0) * sum(other.filter((_, l) => inside(row[l] ?? {low: 1, high: 0}, p - q + 0.003)))))
    }))
  }}
}

export const SUMS: readonly Sum[] = [
  ...[8, 15, 30, 60].map(n => single('wilson', n, wilsonInterval)), ...[8, 30, 60].map(n => single('clopper-pearson', n, clopperPearson)),
  ...([[8, 8], [15, 60], [60, 60]] as const).map(([n, m]) => difference(n, m)),
]

/** Eggs of hens each with a share of her own, one in twelve of them clear throughout: hatch of set by Wilson's formula, as if eggs were independent. */
function eggs(draw: Draw, hens: number, each: number): boolean | null {
  const k = sum(of(hens, () => (draw.happens(1 / 12) ? 0 : draw.of(each, 0.6 + 0.4 * draw.part()))))
  return holds(wilsonInterval(k, hens * each), (11 / 12) * 0.8)
}

/** Chicks of which one in five dies, evenly over 140 days, and one in four is sold on some day. */
function lived(draw: Draw, n: number): boolean | null {
  const birds = of(n, () => {
    const death = draw.happens(0.2) ? 1 + draw.whole(140) : 200, sale = draw.happens(0.25) ? 1 + draw.whole(140) : 200
    return death <= sale ? {age: Math.min(death, 140), died: death <= 140} : {age: Math.min(sale, 140), died: false}
  })
  return holds(livability(birds, 140), 0.8)
}

const trendOf = (draw: Draw, n: number, p: number): boolean => shareTrend(of(4, () => ({k: draw.of(n, p), n}))).p >= 0.05

/** The same in families of four to twelve, each with a chance of death of its own from 0 to two fifths. */
const livedOfFamilies = (draw: Draw, families: number) => livabilityOfFamilies(of(families, () => {
  const dies = 0.4 * draw.part()
  return of(4 + draw.whole(9), () => ({age: draw.happens(dies) ? 1 + draw.whole(55) : 56, died: false})).map(each => ({...each, died: each.age < 56}))
}), 56)

function livedApart(draw: Draw, families: number): boolean | null {
  const one = livedOfFamilies(draw, families), other = livedOfFamilies(draw, families)
  return one && other ? holds(livabilityDifference(one, other), 0) : null
}

/** Eggs by the cock of the pen, each with four hens of which one in twelve is barren. */
const eggsByCock = (draw: Draw, cocks: number): boolean | null => holds(familyShare(of(cocks, () => {
  const laid = of(4, () => ({n: 6 + draw.whole(9), hatches: draw.happens(1 / 12) ? 0 : 0.6 + 0.4 * draw.part()}))
  return {k: sum(laid.map(({n, hatches}) => draw.of(n, hatches))), n: sum(laid.map(({n}) => n))}
}), {seed: 1, draws: 400}), (11 / 12) * 0.8)

/** Settings of the same birds, each as good or bad as its days were: half of 0.9, half of 0.6. */
const eggsBySetting = (draw: Draw, settings: number): boolean | null => holds(familyShare(of(settings, () => {
  const n = 8 + draw.whole(9)
  return {k: draw.of(n, draw.happens(0.5) ? 0.9 : 0.6), n}
}), {seed: 1, draws: 400}), 0.75)

/** Eggs of hens in 90 to 270 days, each hen with a rate of her own about 0.6. */
const laid = (draw: Draw, hens: number) => ratioOfSums(of(hens, () => {
  const days = 90 + draw.whole(181)
  return {of: draw.of(days, Math.max(0.1, Math.min(0.95, 0.6 + 0.15 * (draw.part() + draw.part() - 1)))), per: days}
}))

function laidApart(draw: Draw, hens: number): boolean | null {
  const [one, other] = [laid(draw, hens), laid(draw, hens)]
  return one?.interval && other?.interval ? holds(differenceOfEstimates({value: one.ratio, ...one.interval}, {value: other.ratio, ...other.interval}), 0) : null
}

export const SHARE_TRIALS: readonly Trial[] = [
  {interval: 'wilson-families', flock: '32 eggs of 4 hens, one hen in twelve barren', runs: 10_000, held: draw => eggs(draw, 4, 8)},
  ...([[5, 0.8], [15, 0.8], [60, 0.8]] as const).map(([n, p]): Trial => ({interval: 'trend', flock: `four steps of ${n}, ${100 * p}% right`, runs: n === 15 ? 2000 : 6000, held: draw => trendOf(draw, n, p)})),
  ...[15, 30, 60].map((n): Trial => ({interval: 'livability', flock: `${n} chicks, a fifth die, a quarter are sold`, runs: 10_000, held: draw => lived(draw, n)})),
  ...[5, 8, 12].map((families): Trial => ({interval: 'livability-families', flock: `${families} families of 4 to 12, each with its own chance`, runs: 4000, held: draw => holds(livedOfFamilies(draw, families), 0.8)})),
  ...[5, 8].map((families): Trial => ({interval: 'livability-difference', flock: `${families} families of 4 to 12 a group`, runs: 4000, held: draw => livedApart(draw, families)})),
  ...[5, 8].map((cocks): Trial => ({interval: 'eggs-families', flock: `eggs of ${cocks} cocks of four hens, one hen in twelve barren`, runs: 4000, held: draw => eggsByCock(draw, cocks)})),
  ...[5, 10].map((settings): Trial => ({interval: 'eggs-settings', flock: `${settings} settings of 8 to 16 eggs, good and bad days`, runs: 4000, held: draw => eggsBySetting(draw, settings)})),
  ...[3, 6, 12].map((hens): Trial => ({interval: 'egg-rate', flock: `${hens} hens, 90 to 270 days each`, runs: 4000, held: draw => holds(laid(draw, hens)?.interval, 0.6)})),
  ...[3, 6].map((hens): Trial => ({interval: 'egg-rate-difference', flock: `${hens} hens a group, 90 to 270 days each`, runs: 4000, held: draw => laidApart(draw, hens)})),
]
