import {describe, expect, it} from 'vitest'
import {likeness} from '../../src/findings/likeness.ts'
import type {Logbook} from '../../src/logbook/book.ts'
import {parentOffspring} from '../../src/statistics/parent-offspring.ts'
import {smallBook} from '../pages/small-logbook.ts'
import {chosenFlock} from './vigour-book.ts'

const seeds = Array.from({length: 30}, (_, place) => 11 + 53 * place)
const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length
const weighed = (book: Logbook, parents: 'both' | 'sire' | 'dam') => likeness(book).find(each => each.trait.id === 'weight-20' && each.parents === parents)

describe('likeness(book)', () => {
  it('finds the heritability that the flock was made with', () => {
    for (const parents of ['both', 'sire', 'dam'] as const) {
      const found = seeds.map(seed => weighed(chosenFlock(seed, {h2: 0.5, choose: false}), parents)?.found)
      expect(Math.abs(mean(found.map(each => (each?.kind === 'estimated' ? each.heritability.value : NaN))) - 0.5)).toBeLessThan(0.12)
      for (const each of found) if (each?.kind === 'estimated') expect(each.heritability.interval.low).toBeLessThanOrEqual(each.heritability.interval.high)
    }
  })

  it('finds none where nothing is handed on', () => {
    const found = seeds.map(seed => weighed(chosenFlock(seed, {h2: 0, choose: false}), 'both')?.found)
    expect(found.filter(each => each?.kind === 'estimated' && each.heritability.interval.low > 0).length).toBeLessThanOrEqual(3)
  })

  it('agrees with a slow twin that walks the birds', () => {
    const book = chosenFlock(4, {h2: 0.5, choose: true}), value = (one: (typeof book.birds)[number]) => one.weighings[0]?.value ?? NaN
    const off = (one: (typeof book.birds)[number]) => value(one) - mean(book.birds.filter(other => other.sex === one.sex && other.hatch === one.hatch && other.step === one.step).map(value))
    const families: Record<string, {group: string; parent: number; chicks: number[]}> = {}
    for (const one of book.birds) {
      const [pair] = one.parentage.pairs
      // the base was never weighed
      if (!one.hatch || !pair?.sire?.hatch || !pair.dam?.hatch) continue
      const family = families[`${one.hatch.id} ${pair.sire.id} ${pair.dam.id}`] ??= {group: one.hatch.rearing, parent: (off(pair.sire) + off(pair.dam)) / 2, chicks: []}
      family.chicks.push(off(one))
    }
    const slow = parentOffspring(Object.values(families).map(({group, parent, chicks}) => ({group, parent, offspring: mean(chicks)})), 'both'), found = weighed(book, 'both')
    expect([found?.families, found?.chicks]).toEqual([Object.keys(families).length, Object.values(families).flatMap(({chicks}) => chicks).length])
    expect(found?.found.kind === 'estimated' && slow.kind === 'estimated' && found.found.heritability.value - slow.heritability.value).toBeCloseTo(0, 9)
  })

  it('has too few families where no parent was weighed', () => {
    expect(likeness(smallBook()).map(({parents, found, families}) => [parents, found.kind, families])).toEqual([['both', 'few', 0], ['sire', 'few', 0], ['dam', 'few', 0]])
  })
})
