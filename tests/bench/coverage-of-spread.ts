/** Spread, grades and agreement of scorers. */
import {coefficientOfVariationInterval, pooledVariationInterval} from '../../src/statistics/coefficient-of-variation.ts'
import {meanAndDeviation} from '../../src/statistics/mean-and-deviation.ts'
import {mannKendall} from '../../src/statistics/mann-kendall.ts'
import {pooledVariation} from '../../src/statistics/pooled-variation.ts'
import {familyStraying} from '../../src/statistics/family-straying.ts'
import {familySuperiority} from '../../src/statistics/family-superiority.ts'
import {rankSum} from '../../src/statistics/rank-sum.ts'
import {spreadOfSteps, strayings} from '../../src/statistics/relative-deviations.ts'
import {senSlope} from '../../src/statistics/sen-slope.ts'
import {shiftWithin} from '../../src/statistics/shift.ts'
import {varianceRatio} from '../../src/statistics/variance-ratio.ts'
import {variationRatio} from '../../src/statistics/variation-ratio.ts'
import {weightedKappa} from '../../src/statistics/weighted-kappa.ts'
import {holds, of, type Draw, type Trial} from './coverage-trial.ts'

/** Weights of classes whose means differ as hatches' do, each about 2 kg. */
type Shape = 'normal' | 'skewed'
function classes(draw: Draw, cv: number, sizes: readonly number[], shape: Shape = 'normal'): number[][] {
  // a lognormal value of the same CV leans to the right
  const s = Math.sqrt(Math.log1p(cv ** 2))
  return sizes.map((size, place) => of(size, () => (2000 + 150 * place) * (shape === 'normal' ? 1 + cv * draw.normal() : Math.exp(s * draw.normal() - s ** 2 / 2))))
}
/** Birds of one class by so many cocks; sibs by a cock are alike by a quarter of a heritability of 0.4. */
const bySires = (draw: Draw, cv: number, cocks: number, each: number): number[] => of(cocks, () => draw.normal()).flatMap(cock => of(each, () => 2000 * (1 + cv * (Math.sqrt(0.1) * cock + Math.sqrt(0.9) * draw.normal()))))

const named = (sizes: readonly number[]): string => (sizes.length === 1 ? `${sizes[0]} birds` : new Set(sizes).size === 1 ? `${sizes.length} classes of ${sizes[0]}` : `classes of ${sizes.join(', ')}`)
const percent = (share: number): string => `${Math.round(100 * share)}%`

const variation = (cv: number, sizes: readonly number[], shape: Shape = 'normal'): Trial => ({
  interval: 'cv', flock: `${named(sizes)}, CV ${percent(cv)}${shape === 'skewed' ? ', skewed' : ''}`, runs: 10_000, held: draw => holds(pooledVariationInterval(pooledVariation(classes(draw, cv, sizes, shape)).own), cv),
})
const ofSires = (cocks: number, each: number): Trial => ({
  interval: 'cv', flock: `${cocks * each} birds of ${cocks} cocks, CV 10%, h² 0.4`, runs: 10_000, held: draw => {
    const {mean, sd} = meanAndDeviation(bySires(draw, 0.1, cocks, each))
    return holds(coefficientOfVariationInterval((sd ?? 0) / mean, cocks * each - 1), 0.1)
  },
})

const ratios = (cv: number, sizes: readonly number[], other: number, others: readonly number[], shape: Shape = 'normal'): Trial[] => {
  const flock = `CV ${percent(cv)} in ${named(sizes)}, ${percent(other)} in ${named(others)}${shape === 'skewed' ? ', skewed' : ''}`
  return [
    {interval: 'cv-ratio', flock, runs: 6000, held: draw => holds(variationRatio(pooledVariation(classes(draw, cv, sizes, shape)).own, pooledVariation(classes(draw, other, others, shape)).own)?.interval, (cv / other) ** 2)},
    ...(sizes.length === 1 && others.length === 1 ? [{interval: 'variance-ratio', flock, runs: 6000, held: (draw: Draw) => {
      const [one, two] = [classes(draw, cv, sizes, shape), classes(draw, other, others, shape)].map(each => meanAndDeviation(each.flat()))
      return holds(one && two && varianceRatio({sd: one.sd ?? 0, freedom: one.n - 1}, {sd: two.sd ?? 0, freedom: two.n - 1})?.interval, (cv / other) ** 2)
    }}] : []),
  ]
}
const even = (sizes: readonly number[], others: readonly number[], shape: Shape = 'normal', cv = 0.1): Trial => ({
  interval: 'brown-forsythe', flock: `${named(sizes)} and ${named(others)}, CV ${percent(cv)}${shape === 'skewed' ? ', skewed' : ''}`, runs: 6000, held: draw => {
    const found = spreadOfSteps([classes(draw, cv, sizes, shape), classes(draw, cv, others, shape)])
    return found.kind === 'compared' ? found.p >= 0.05 : null
  },
})

/** Birds of so many cocks, half of each cock's in either of two classes; sibs as alike as `alike`. */
function ofCocks(draw: Draw, cocks: number, each: number, alike: number): {readonly classes: readonly number[][]; readonly straying: readonly number[][]} {
  const birds = of(cocks, () => draw.normal()).flatMap((cock, family) => of(each, place => ({family, reared: place % 2, value: 2000 * (1 + 0.1 * (Math.sqrt(alike) * cock + Math.sqrt(1 - alike) * draw.normal()))})))
  const reared = [0, 1].map(which => birds.filter(bird => bird.reared === which)), values = reared.map(own => own.map(({value}) => value))
  const away = reared.flatMap((own, which) => strayings(values[which] ?? []).map((far, place) => ({family: own[place]?.family, far})))
  return {classes: values, straying: of(cocks, family => away.flatMap(each => (each.family === family && each.far !== null ? [each.far] : [])))}
}
const evenOfCocks = (cocks: number, each: number, alike: number, by: 'birds' | 'families'): Trial => ({
  interval: by === 'birds' ? 'brown-forsythe' : 'brown-forsythe-families', flock: `${cocks} cocks a step, ${each} birds each, likeness ${alike}`, runs: 4000, held: draw => {
    const one = ofCocks(draw, cocks, each, alike), other = ofCocks(draw, cocks, each, alike)
    if (by === 'families') return (familyStraying(one.straying, other.straying)?.p ?? 1) >= 0.05
    const found = spreadOfSteps([one.classes, other.classes])
    return found.kind === 'compared' ? found.p >= 0.05 : null
  },
})
/** Marks of chicks of so many cocks, the males two marks higher, half of them males in one step and a fifth in the other. */
const gradedOfCocks = (cocks: number, each: number): Trial => ({
  interval: 'grades-families', flock: `${cocks} cocks a step, ${each} chicks each, half males and a fifth, marks 1 to 10`, runs: 2000, held: draw => {
    const step = (males: number) => of(cocks, () => 0.6 * draw.normal()).map(cock => of(each, () => {
      const male = draw.happens(males)
      return {group: male ? 'male' : 'female', grade: Math.max(1, Math.min(10, Math.round((male ? 7 : 5) + cock + 1.2 * draw.normal())))}
    }))
    return (familySuperiority(step(0.5), step(0.2))?.p ?? 1) >= 0.05
  },
})

/** Marks from 1 to `to`, commonest in the middle. */
const marks = (draw: Draw, n: number, to: number, more = 0): number[] => of(n, () => Math.max(1, Math.min(to, Math.round((to + 1) / 2 + (to / 5) * draw.normal() + more))))
const ranks = (n: number, m: number, to: number): Trial => ({
  interval: 'rank-test', flock: `${n} and ${m} birds, marks 1 to ${to}`, runs: 2000, held: draw => {
    const found = rankSum(marks(draw, n, to), marks(draw, m, to))
    return found.kind === 'compared' ? found.p >= 0.05 : null
  },
})
const shifted = (n: number, m: number): Trial => ({interval: 'shift', flock: `${n} and ${m} birds, a mark apart`, runs: 3000, held: draw => holds(shiftWithin([{one: marks(draw, n, 1000, 100).map(each => each / 100), other: marks(draw, m, 1000).map(each => each / 100)}])?.interval, 1)})

/** Two scorers of five grades, each off the bird's own by up to a grade and a half. */
function agreement(draw: Draw, birds: number): number[][] {
  const counts = of(5, () => [0, 0, 0, 0, 0])
  for (let each = 0; each < birds; each++) {
    const truth = draw.part(), grade = () => Math.min(4, Math.max(0, Math.floor(5 * truth + (draw.part() + draw.part() - 1) * 1.6)))
    const row = counts[grade()] ?? [], column = grade()
    row[column] = (row[column] ?? 0) + 1
  }
  return counts
}
/** κ of 4,000,000 birds so scored; it does not change with the number of birds */
const TRUE_KAPPA = 0.635
const kappa = (n: number): Trial => ({interval: 'kappa', flock: `${n} birds, five grades`, runs: 4000, held: draw => holds(weightedKappa(agreement(draw, n))?.interval, TRUE_KAPPA)})

const slope = (steps: number): Trial => ({interval: 'sen', flock: `${steps} steps of 20 birds, CV falling`, runs: 4000, held: draw => holds(senSlope(of(steps, step => 0.12 - 0.005 * step + (0.1 / Math.sqrt(38)) * draw.normal()))?.interval, -0.005)})
const order = (steps: number): Trial => ({interval: 'mann-kendall', flock: `${steps} steps`, runs: 4000, held: draw => {
  const found = mannKendall(of(steps, () => draw.normal()))
  return found.kind === 'tested' ? found.p >= 0.05 : null
}})

export const SPREAD_TRIALS: readonly Trial[] = [
  ...[5, 8, 12, 30, 60].map(n => variation(0.1, [n])), variation(0.1, [5, 5, 5, 5]), variation(0.08, [5, 9, 14]), variation(0.3, of(6, () => 5)), variation(0.2, [60], 'skewed'), ofSires(3, 10), ofSires(6, 10),
  ...ratios(0.1, [8], 0.1, [8]), ...ratios(0.08, [15], 0.12, [30]), ...ratios(0.1, [60], 0.08, [60]), ...ratios(0.08, [5, 9, 14], 0.12, [5, 5, 5, 5]), ...ratios(0.3, [5, 5, 5, 5], 0.3, [20]), ...ratios(0.2, [30], 0.2, [30], 'skewed'),
  even([5], [5]), even([12], [30]), even([5, 5, 5], [15]), even([60], [60]), even([30], [30], 'skewed', 0.2),
  evenOfCocks(3, 16, 0.1, 'birds'), evenOfCocks(6, 8, 0.25, 'birds'), evenOfCocks(5, 8, 0.25, 'families'), evenOfCocks(8, 6, 0.25, 'families'), gradedOfCocks(6, 8),
  ranks(8, 8, 10), ranks(15, 15, 3), ranks(30, 60, 10), shifted(8, 8), shifted(15, 15), shifted(30, 60),
  ...[12, 20, 60].map(kappa), slope(6), slope(8), order(5), order(8),
]
