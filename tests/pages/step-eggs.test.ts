import {describe, expect, it} from 'vitest'
import {ratesOf} from '../../src/findings/hatch-results.ts'
import type {ReachedStep} from '../../src/findings/ladder.ts'
import {study} from '../../src/findings/study.ts'
import {eggTable} from '../../src/pages/step-eggs.ts'
import {bird, date, F2, hatch, logbook, parents} from './small-logbook.ts'

/** Two settings of a pair; of each its eggs, clear eggs and chicks. */
function tableOf(settings: readonly {readonly eggs: number | null; readonly clear: number | null; readonly chicks: number}[]) {
  const cock = bird('H-1', 'male'), hen = bird('H-2', 'female'), parentage = parents([[cock, 1]], hen)
  const hatches = settings.map(({eggs, clear, chicks: count}, number) => {
    const made = hatch(`2023-${number}`, {on: date(`2023-04-1${number}`), step: F2, eggs, clear, hatched: count, parentage})
    return Object.assign(made, {chicks: Array.from({length: count}, (_, place) => bird(`${number}-${place}`, 'female', {hatched: made.on, hatch: made, step: F2, strain: null, parentage}))})
  })
  const findings = study(logbook('2025-06-01', {birds: [cock, hen, ...hatches.flatMap(({chicks}) => chicks)], hatches}))
  const step = findings.ladder.find((each): each is ReachedStep => each.kind === 'reached' && each.label === 'F2') ?? expect.fail('no F2')
  return Object.fromEntries((eggTable(step, ratesOf(hatches))?.rows ?? []).map(([label, count, share]) => [label, `${String(count)} ${String(share)}`]))
}

describe('eggTable(step, rates)', () => {
  it('gives every stage as a share of the eggs set', () => {
    expect(tableOf([{eggs: 10, clear: 2, chicks: 5}, {eggs: 10, clear: 0, chicks: 7}])).toMatchObject({'Eggs set': '20 100.0%', 'Clear at candling': '2 10.0%', 'Hatched': '12 60.0%'})
  })

  it('gives no share where the eggs of one setting, or its clear ones, were not counted', () => {
    expect(tableOf([{eggs: 10, clear: 2, chicks: 5}, {eggs: null, clear: null, chicks: 7}])).toMatchObject({'Eggs set': '10 100.0%', 'Clear at candling': '2 20.0%', 'Hatched': '12 –'})
    expect(tableOf([{eggs: 10, clear: 2, chicks: 5}, {eggs: 10, clear: null, chicks: 7}])).toMatchObject({'Clear at candling': '2 –', 'Hatched': '12 60.0%'})
  })
})
