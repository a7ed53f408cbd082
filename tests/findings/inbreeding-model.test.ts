import {describe, expect, it} from 'vitest'
import {inbreedingOfMeasures, inbreedingOfShares, type CountedGroup, type MeasuredFamily} from '../../src/findings/inbreeding-model.ts'
import {expectClose} from '../expect-close.ts'
import {chance} from './vigour-book.ts'

/** Gauss and Jordan, for the slow twins. */
function solved(matrix: number[][], right: number[]): number[] {
  const rows = matrix.map((row, place) => [...row, right[place] ?? 0])
  rows.forEach((_, pivot) => {
    const best = rows.map((row, place) => [Math.abs(row[pivot] ?? 0), place] as const).slice(pivot).sort((a, b) => b[0] - a[0])[0]?.[1] ?? pivot
    ;[rows[pivot], rows[best]] = [rows[best] ?? [], rows[pivot] ?? []]
    const head = rows[pivot] ?? []
    rows.forEach((row, place) => {
      if (place === pivot) return
      const times = (row[pivot] ?? 0) / (head[pivot] ?? 1)
      head.forEach((value, column) => { row[column] = (row[column] ?? 0) - times * value })
    })
  })
  return rows.map((row, place) => (row.at(-1) ?? 0) / (row[place] ?? 1))
}

/** A level for every season (or class) as a column of its own, then F and heterozygosity of the chick. */
const columnsOf = (names: readonly (string | number | null)[], blood: readonly {readonly chickF: number; readonly chickH: number}[]) => {
  const levels = [...new Set(names)]
  return blood.map(({chickF, chickH}, place) => [...levels.map(level => Number(level === names[place])), chickF, chickH])
}
const weighted = (rows: readonly (readonly number[])[], values: readonly number[], weights: readonly number[]): number[] => {
  const width = rows[0]?.length ?? 0, cells = (of: (row: readonly number[], place: number) => number) => rows.reduce((sum, row, place) => sum + (weights[place] ?? 0) * of(row, place), 0)
  return solved(Array.from({length: width}, (_, i) => Array.from({length: width}, (_unused, j) => cells(row => (row[i] ?? 0) * (row[j] ?? 0)))), Array.from({length: width}, (_, i) => cells((row, place) => (row[i] ?? 0) * (values[place] ?? 0))))
}

const draw = (seed: number, count: number) => {
  const {uniform, below} = chance(seed)
  return Array.from({length: count}, () => ({chickF: below(5) / 20, damF: 0, chickH: below(5) / 4, damH: 0.5, luck: uniform()}))
}

describe('inbreedingOfShares(groups)', () => {
  it.each([3, 8, 21])('gives what a logistic regression written out gives (seed %i)', seed => {
    const groups = draw(seed, 18).map((blood, place): CountedGroup => ({blood, n: 10 + (place % 7), k: Math.round((10 + (place % 7)) * (0.5 + 0.4 * blood.luck)), season: 2020 + (place % 3), cluster: `h${place}`, pair: `p${place}`}))
    const rows = columnsOf(groups.map(({season}) => season), groups.map(({blood}) => blood)), share = (b: readonly number[], row: readonly number[]) => 1 / (1 + Math.exp(-row.reduce((sum, value, place) => sum + value * (b[place] ?? 0), 0)))
    let b = rows[0]?.map(() => 0) ?? []
    for (let turn = 0; turn < 60; turn++) {
      const fitted = rows.map(row => share(b, row)), weights = fitted.map((p, place) => (groups[place]?.n ?? 0) * p * (1 - p))
      const step = weighted(rows, groups.map(({k, n}, place) => (k - n * (fitted[place] ?? 0)) / (weights[place] ?? 1)), weights)
      b = b.map((value, place) => value + (step[place] ?? 0))
    }
    const all = groups.reduce((sum, {n}) => sum + n, 0), middle = rows[0]?.map((_, column) => rows.reduce((sum, row, place) => sum + (row[column] ?? 0) * (groups[place]?.n ?? 0), 0) / all) ?? []
    const change = (column: number, by: number) => share(b, middle.map((value, place) => value + (place === column ? by : 0))) - share(b, middle)
    const {effects, seasons} = inbreedingOfShares(groups), by = (term: string) => effects.find(each => each.term === term)
    expect(seasons).toBe('held')
    const [f, h] = [by('chickF'), by('chickH')]
    expectClose(f?.kind === 'effect' ? f.change : NaN, change(3, 0.1), 1e-7)
    expectClose(h?.kind === 'effect' ? h.change : NaN, change(4, -0.1), 1e-7)
    expect(by('damF')).toEqual({term: 'damF', kind: 'cannot-say', why: 'alike'})
  })

  it('keeps limits finite where the closely bred all fail', () => {
    const blood = (chickF: number) => ({chickF, damF: 0, chickH: 0, damH: 0}), row = (place: number, f: number, k: number): CountedGroup => ({blood: blood(f), n: 10, k, season: null, cluster: `h${place}`, pair: `p${place}`})
    const {how, effects} = inbreedingOfShares([row(0, 0, 10), row(1, 0, 10), row(2, 0, 10), row(3, 0.25, 0), row(4, 0.25, 0)]), [f] = effects
    expect(how).toBe('penalised')
    expect(f?.kind === 'effect' && f.verdict === 'harm' && f.interval && f.interval.low > -1).toBe(true)
  })

  it('tells what goes with the terms before it, and gives way where hatches are few', () => {
    const tied = Array.from({length: 9}, (_, place): CountedGroup => ({blood: {chickF: place / 20, damF: 0, chickH: 1 - place / 10, damH: 0}, n: 10, k: 8 - (place % 3), season: null, cluster: `h${place}`, pair: `p${place}`}))
    expect(inbreedingOfShares(tied).effects.find(({term}) => term === 'chickH')).toMatchObject({why: 'tied'})
    expect(inbreedingOfShares(tied.slice(0, 2)).effects.map(each => (each.kind === 'effect' ? 'effect' : each.why))).toEqual(['too-few', 'alike', 'too-few', 'alike'])
    expect(inbreedingOfShares([]).effects.every(each => each.kind === 'cannot-say' && each.why === 'too-few')).toBe(true)
  })
})

describe('what differs too little', () => {
  const group = (place: number, chickF: number, season: number): CountedGroup => ({blood: {chickF, damF: 0, chickH: 0, damH: 0}, n: 20, k: 15 + (place % 4), season, cluster: `h${place}`, pair: `p${place}`})
  const why = (groups: readonly CountedGroup[]) => inbreedingOfShares(groups).effects.map(effect => (effect.kind === 'effect' ? 'effect' : effect.why))[0]

  it('is not stretched to ten points: under two and a half throughout, or inside every season', () => {
    expect(why(Array.from({length: 9}, (_, place) => group(place, 0.02 * (place % 2), 1)))).toBe('alike')
    expect(why(Array.from({length: 9}, (_, place) => group(place, 0.025 * (place % 2), 1)))).toBe('effect')
    expect(why(Array.from({length: 9}, (_, place) => group(place, 0.1 * (place % 2) + 0.01 * (place % 3), place % 2)))).toBe('tied')
    expect(why(Array.from({length: 9}, (_, place) => group(place, 0.1 * (place % 2) + 0.03 * (place % 3), place % 2)))).toBe('effect')
    const families = Array.from({length: 9}, (_, place): MeasuredFamily => ({blood: {chickF: 0.1 * (place % 2) + 0.01 * (place % 3), damF: 0, chickH: 0, damH: 0}, group: String(place % 2), pair: String(place), value: 2000 + 7 * place}))
    expect(inbreedingOfMeasures(families).effects[0]).toMatchObject({why: 'tied'})
  })
})

describe('inbreedingOfMeasures(families)', () => {
  it.each([4, 9])('gives what least squares with a level for each class give (seed %i)', seed => {
    const families = draw(seed, 16).map((blood, place): MeasuredFamily => ({blood, group: `c${place % 4}`, pair: `p${place}`, value: 2000 + 300 * (place % 4) - 800 * blood.chickF + 100 * blood.luck}))
    const b = weighted(columnsOf(families.map(({group}) => group), families.map(({blood}) => blood)), families.map(({value}) => value), families.map(() => 1))
    const [f, , h] = inbreedingOfMeasures(families).effects
    expectClose(f?.kind === 'effect' ? f.change : NaN, 0.1 * (b[4] ?? NaN), 1e-6)
    expectClose(h?.kind === 'effect' ? h.change : NaN, -0.1 * (b[5] ?? NaN), 1e-6)
  })

  it('cannot tell of weights that are all equal', () => {
    const [f] = inbreedingOfMeasures(draw(2, 8).map((blood, place) => ({blood, group: 'a', pair: `p${place}`, value: 2000}))).effects
    expect(f).toMatchObject({change: 0, interval: null, p: null, verdict: 'cannot-tell'})
  })
})

describe('pairs that are set many times', () => {
  const blood = (pair: number) => ({chickF: [0, 0.125, 0.25][pair % 3] ?? 0, damF: 0, chickH: 0, damH: 0}), runs = Array.from({length: 60}, (_, place) => 7 + 104729 * place)
  /** nine pairs, each of its own worth: five hatches of 12 eggs, with `loss` of the logit for F from 0 to 1 */
  const set = (seed: number, spread: number, loss: number, times = 5): readonly CountedGroup[] => {
    const {uniform, normal} = chance(seed), worth = Array.from({length: 9}, () => spread * normal())
    return Array.from({length: times * 9}, (_, place): CountedGroup => {
      const pair = place % 9, share = 1 / (1 + Math.exp(-(1.4 + (worth[pair] ?? 0) + loss * blood(pair).chickF)))
      return {blood: blood(pair), n: 12, k: Array.from({length: 12}, () => uniform() < share).filter(Boolean).length, season: null, cluster: `h${place}`, pair: `p${pair}`}
    })
  }
  const weighed = (seed: number, spread: number, loss: number): readonly MeasuredFamily[] => {
    const {normal} = chance(seed), worth = Array.from({length: 9}, () => spread * normal())
    return Array.from({length: 90}, (_, place): MeasuredFamily => ({blood: blood(place % 9), group: String(Math.floor(place / 9)), pair: `p${place % 9}`, value: 2000 + (worth[place % 9] ?? 0) + loss * blood(place % 9).chickF + 60 * normal()}))
  }
  const verdicts = (found: (seed: number) => ReturnType<typeof inbreedingOfShares>) => runs.map(seed => {
    const [f] = found(seed).effects
    return f?.kind === 'effect' ? f.verdict : f?.why
  })
  const often = (all: readonly unknown[], verdict: string): number => all.filter(each => each === verdict).length / all.length

  it('are one witness each: no effect is called harm two or three times in a hundred', () => {
    expect(often(verdicts(seed => inbreedingOfShares(set(seed, 0.6, 0))), 'harm')).toBeLessThanOrEqual(0.05)
    expect(often(verdicts(seed => inbreedingOfMeasures(weighed(seed, 80, 0))), 'harm')).toBeLessThanOrEqual(0.05)
  })

  it('still tell of a loss that is there', () => {
    expect(often(verdicts(seed => inbreedingOfShares(set(seed, 0.3, -8))), 'harm')).toBeGreaterThan(0.9)
    expect(often(verdicts(seed => inbreedingOfMeasures(weighed(seed, 40, -800))), 'harm')).toBeGreaterThan(0.9)
  })

  it('say nothing where hardly more pairs than terms are there, however many their hatches', () => {
    const few = set(3, 0.3, 0, 9).filter(({pair}) => pair < 'p4')
    expect(inbreedingOfShares(few).effects[0]).toMatchObject({why: 'too-few'})
    expect(inbreedingOfShares(few.map(group => ({...group, pair: group.cluster}))).effects[0]?.kind).toBe('effect')
    expect(inbreedingOfMeasures(weighed(3, 40, 0).filter(({pair}) => pair < 'p4')).effects[0]).toMatchObject({why: 'too-few'})
  })

  it('keep the seasons apart where all were set in each, and give that up where each season has pairs of its own', () => {
    const seasons = (groups: readonly CountedGroup[]) => inbreedingOfShares(groups).seasons, all = set(5, 0.3, 0)
    expect(seasons(all.map((group, place) => ({...group, season: Math.floor(place / 9)})))).toBe('held')
    expect(seasons(all.filter(({pair}) => pair < 'p7').map(group => ({...group, season: Math.floor(Number(group.pair.slice(1)) / 2)})))).toBe('not-held')
  })
})
