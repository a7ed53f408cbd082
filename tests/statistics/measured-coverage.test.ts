import {describe, expect, it} from 'vitest'
import {MEASURED_COVERAGE} from '../../src/statistics/measured-coverage.ts'
import {BREEDING_TRIALS} from '../bench/coverage-of-breeding.ts'
import {FAMILY_TRIALS} from '../bench/coverage-of-families.ts'
import {SHARE_TRIALS, SUMS} from '../bench/coverage-of-shares.ts'
import {SPREAD_TRIALS} from '../bench/coverage-of-spread.ts'
import {AGAIN, rowOfSum, tried} from '../bench/coverage-trial.ts'

const TRIALS = [...SHARE_TRIALS, ...FAMILY_TRIALS, ...SPREAD_TRIALS, ...BREEDING_TRIALS]
const written = ({interval, flock}: {readonly interval: string; readonly flock: string}) => MEASURED_COVERAGE.find(row => row.interval === interval && row.flock === flock)

describe('the table of measured coverage', () => {
  it('has a row for every trial, in order, and none besides', () => {
    const name = ({interval, flock}: {readonly interval: string; readonly flock: string}) => `${interval}: ${flock}`
    expect(MEASURED_COVERAGE.map(name)).toEqual([...SUMS, ...TRIALS].map(name))
    expect(new Set(MEASURED_COVERAGE.map(name)).size).toBe(MEASURED_COVERAGE.length)
  })

  it.each(SUMS)('adds up all outcomes again: $interval, $flock', one => expect(rowOfSum(one)).toEqual(written(one)))

  it.each(TRIALS)(`draws the first ${AGAIN} flocks again: $interval, $flock`, trial => {
    expect(tried(trial, AGAIN).held).toBe(written(trial)?.first)
    expect(written(trial)?.runs).toBe(trial.runs)
  })
})
