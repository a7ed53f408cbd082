import {describe, expect, it} from 'vitest'
import {study} from '../../src/findings/study.ts'
import type {Logbook} from '../../src/logbook/book.ts'
import {contemporaryMeans} from '../../src/statistics/contemporary-means.ts'
import {smallBook} from '../pages/small-logbook.ts'
import {chosenFlock, linesTogether} from './vigour-book.ts'

const seeds = Array.from({length: 30}, (_, place) => 11 + 53 * place)
const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length
const weighed = (book: Logbook) => {
  const {selection} = study(book), [passage] = selection.passages.filter(({trait}) => trait.id === 'weight-20')
  if (!passage) throw new Error('no passage')
  return {passage, realised: selection.realised.find(({trait}) => trait.id === 'weight-20')?.found}
}

describe('selection(book)', () => {
  const chosen = seeds.map(seed => weighed(chosenFlock(seed, {h2: 0.5, choose: true}))), blind = seeds.map(seed => weighed(chosenFlock(seed, {h2: 0.5, choose: false})))

  it('finds S and R at the strength the flock was made with, R = h²·S', () => {
    // the best three of ten: 1.0653 SD (Becker) of 200 g
    expect(Math.abs(mean(chosen.map(({passage}) => passage.differential ?? NaN)) - 213)).toBeLessThan(10)
    expect(Math.abs(mean(chosen.map(({passage}) => passage.response?.value ?? NaN)) - 106.5)).toBeLessThan(20)
    expect(Math.abs(mean(chosen.map(({realised}) => (realised?.kind === 'estimated' ? realised.value : NaN))) - 0.5)).toBeLessThan(0.1)
    expect(chosen.filter(({passage}) => (passage.response?.interval.low ?? -1) > 0).length).toBeGreaterThan(22)
  })

  it('finds none where nothing was chosen', () => {
    expect(Math.abs(mean(blind.map(({passage}) => passage.response?.value ?? NaN)))).toBeLessThan(15)
    expect(blind.filter(({passage: {response}}) => response && (response.interval.low > 0 || response.interval.high < 0)).length).toBeLessThanOrEqual(5)
  })

  it('agrees with a slow twin that walks the birds', () => {
    const book = chosenFlock(9, {h2: 0.5, choose: true}), {passage} = weighed(book), chicks = new Map<string, number>()
    for (const {parentage: {pairs}, step} of book.birds) if (step.label === 'F3') for (const {sire, dam} of pairs) for (const one of [sire, dam]) if (one) chicks.set(one.id, (chicks.get(one.id) ?? 0) + 1)
    const sexes = (['male', 'female'] as const).map(sex => {
      let top = 0, whole = 0
      for (const one of book.birds) {
        const weight = chicks.get(one.id) ?? 0
        if (one.sex !== sex || one.step.label !== 'F2' || weight === 0) continue
        const mates = book.birds.filter(other => other.sex === sex && other.step.label === 'F2' && other.hatch === one.hatch).map(other => other.weighings[0]?.value ?? NaN)
        top += weight * ((one.weighings[0]?.value ?? NaN) - mean(mates))
        whole += weight
      }
      return top / whole
    })
    expect(passage.differential).toBeCloseTo(mean(sexes), 6)
    const cells = new Map<string, [number[], number[]]>()
    for (const one of book.birds) {
      if (!one.hatch || !one.weighings[0]) continue
      const cell = cells.get(`${one.sex} ${one.hatch.id}`) ?? [[], []]
      cells.set(`${one.sex} ${one.hatch.id}`, cell)
      cell[one.step.label === 'F2' ? 0 : 1].push(one.weighings[0].value)
    }
    const [old, young] = contemporaryMeans([...cells.values()])?.groups ?? []
    expect(passage.response?.value).toBeCloseTo((young?.mean ?? NaN) - (old?.mean ?? NaN), 6)
    expect(passage.birds).toEqual({from: old?.birds, to: young?.birds})
    expect(passage.families?.speaksOf).toBe('birds bred like these')
  })

  it('tells the move of a backcross apart from the response', () => {
    // the cross is half way, the backcross half way again: all of the move is blood, and none is response
    const means = {holm: 2500, fell: 1500, cross: 2000, back: 2250}
    const found = seeds.slice(0, 12).map(seed => weighed(linesTogether(seed, means)).passage)
    expect(Math.abs(mean(found.map(({move}) => move ?? NaN)) - 250)).toBeLessThan(15)
    expect(Math.abs(mean(found.map(({expected}) => expected ?? NaN)) - 250)).toBeLessThan(15)
    expect(Math.abs(mean(found.map(({response}) => response?.value ?? NaN)))).toBeLessThan(15)
    expect(found.filter(({response}) => response && response.interval.low <= 0 && response.interval.high >= 0).length).toBeGreaterThan(9)
    expect(found[0]?.passage.back?.id).toBe('holm-white')
    // 100 g over half way were chosen for
    const lifted = seeds.slice(0, 12).map(seed => weighed(linesTogether(seed, {...means, back: 2350})).passage.response)
    expect(Math.abs(mean(lifted.map(response => response?.value ?? NaN)) - 100)).toBeLessThan(15)
  })

  it('says nothing of a response where the steps were never reared together', () => {
    const {selection} = study(smallBook())
    expect(selection.passages.map(({passage, response, classes}) => [passage.from, passage.to, response, classes])).toEqual([['F1', 'F2', null, 0]])
    expect(selection.realised).toEqual([])
  })
})
