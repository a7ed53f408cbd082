import {describe, expect, it} from 'vitest'
import {chanceOf} from '../../src/statistics/chance.ts'
import {familyShare} from '../../src/statistics/family-bootstrap.ts'
import {FAMILY_COVERAGE, type FamilyCoverage} from '../../src/statistics/family-coverage.ts'
import type {Count} from '../../src/statistics/share-difference.ts'
import {wilsonInterval} from '../../src/statistics/wilson-interval.ts'
import {expectClose} from '../expect-close.ts'

const RUNS = 2000
const FLOCKS = ['alike', 'carriers', 'few-carriers', 'lines'] as const
const TRUTH = {'alike': 0.9, 'carriers': 1 - 0.5 * 0.5 * 0.25, 'few-carriers': 1 - 0.3 * 0.3 * 0.25, 'lines': 0.8}

/** A flock of so many sire families, each of four hens and 4 to 24 chicks. */
function madeUp(flock: FamilyCoverage['flock'], families: number, chance: ReturnType<typeof chanceOf>): Count[] {
  const share = () => chance.next() / 2 ** 32
  return Array.from({length: families}, () => {
    const n = 4 + chance.whole(21)
    const carriers = flock === 'few-carriers' ? 0.3 : 0.5
    const sire = share() < carriers, hens = [0, 1, 2, 3].map(() => share() < carriers), own = 0.6 + 0.4 * share()
    let k = 0
    for (let chick = 0; chick < n; chick++) {
      const hen = hens[chance.whole(4)] ?? false
      const right = flock === 'alike' ? 0.9 : flock === 'lines' ? own : sire && hen ? 0.75 : 1
      if (share() < right) k += 1
    }
    return {k, n}
  })
}

function measured(flock: FamilyCoverage['flock'], families: number): FamilyCoverage {
  const chance = chanceOf(20_260_601 + families), truth = TRUTH[flock]
  let family = 0, plain = 0
  for (let run = 0; run < RUNS; run++) {
    const drawn = madeUp(flock, families, chance)
    const got = familyShare(drawn, {seed: run, draws: 100})
    const wilson = wilsonInterval(drawn.reduce((sum, {k}) => sum + k, 0), drawn.reduce((sum, {n}) => sum + n, 0))
    if (got && got.low <= truth && truth <= got.high) family += 1
    if (wilson.low <= truth && truth <= wilson.high) plain += 1
  }
  return {flock, families, family: Math.round((family / RUNS) * 1000) / 10, plain: Math.round((plain / RUNS) * 1000) / 10}
}

describe('coverage of the interval by families', () => {
  it('has a row for each kind of flock and number of families', () => {
    expect(FAMILY_COVERAGE.map(({flock, families}) => `${flock} ${families}`)).toEqual(FLOCKS.flatMap(flock => [5, 8, 12, 20].map(families => `${flock} ${families}`)))
  })

  it.each(FLOCKS.flatMap(flock => [5, 8, 12, 20].map(families => [flock, families] as const)))('is as the table says: %s, %i families', (flock, families) => {
    const got = measured(flock, families), row = FAMILY_COVERAGE.find(each => each.flock === flock && each.families === families)
    expect(row).toEqual(got)
    // never far short, and much better than the plain interval wherever families differ
    expect(got.family).toBeGreaterThan(91)
    if (flock !== 'alike') expect(got.family).toBeGreaterThan(got.plain)
  })

  it('covers too little without it: three sires, twelve hens, half of all of them carriers', () => {
    const chance = chanceOf(3), truth = TRUTH.carriers
    let held = 0
    for (let run = 0; run < RUNS; run++) {
      const drawn = Array.from({length: 3}, () => {
        const sire = chance.whole(2) === 0, hens = [0, 1, 2, 3].map(() => chance.whole(2) === 0)
        let k = 0
        for (let chick = 0; chick < 20; chick++) if (!(sire && hens[chick % 4] && chance.whole(4) === 0)) k += 1
        return {k, n: 20}
      })
      const got = familyShare(drawn, {seed: run})
      expect(got?.kind).toBe('these-chicks')
      if (got && got.low <= truth && truth <= got.high) held += 1
    }
    expectClose(held / RUNS, 0.7, 0.12)
  })
})
