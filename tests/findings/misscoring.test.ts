import fc from 'fast-check'
import {describe, expect, it} from 'vitest'
import {errorPerScoring, misscoring} from '../../src/findings/misscoring.ts'
import {bird, comb, date, logbook, looks, score} from '../pages/small-logbook.ts'
import {expectClose} from '../expect-close.ts'

const scored = (id: string, ...values: (string | null)[]) =>
  bird(id, 'male', {looks: looks(...values.map((value, index) => score(comb, value ?? 'single', {on: date(`2024-0${index + 1}-01`), struck: value === null ? 'too early' : null})))})

describe('misscoring(book)', () => {
  it('counts scorings that differ from the one before, struck ones left out', () => {
    const book = logbook('2025-01-01', {birds: [scored('1', 'pea', 'pea'), scored('2', 'pea', 'single', 'pea'), scored('3', null, 'pea'), scored('4', 'pea')]})
    const [found] = misscoring(book)
    expect(found?.disagreements).toMatchObject({kind: 'share', count: 2, total: 3})
    expect(found?.birds.map(each => each.bird.id)).toEqual(['2'])
    expect(found?.perScoring).toBeNull()
  })
  it('has no rate of a trait never scored twice', () => expect(misscoring(logbook('2025-01-01', {birds: [scored('1', 'pea')]}))).toEqual([]))
})

describe('errorPerScoring(rate)', () => {
  it('is undone by the formula it comes from', () => {
    fc.assert(fc.property(fc.double({min: 0, max: 0.49, noNaN: true}), e => {
      expectClose(errorPerScoring(2 * e * (1 - e)) ?? NaN, e, 1e-7, {e})
    }))
  })
})
